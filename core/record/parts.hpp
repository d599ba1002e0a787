// A record's JSON taken apart into content and signatures, and put together again: for whoever keeps many.
#pragma once

#include "base/result.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace ambit::record {

struct SignatureText {
    std::string header; ///< protected, base64url as it stands
    std::string value;  ///< R‖S: 64 bytes
    friend auto operator<=>(const SignatureText&, const SignatureText&) = default;
};

struct Parts {
    std::string_view content; ///< in the bytes given; canonical if they are
    std::vector<SignatureText> signatures;
};

/// Errors: invalid, unless `assembled` of the parts gives exactly `recordJson`. Nothing is verified.
[[nodiscard]] Result<Parts> partsOf(std::string_view recordJson);

[[nodiscard]] std::string assembled(std::string_view content, const std::vector<SignatureText>& signatures);

} // namespace ambit::record
