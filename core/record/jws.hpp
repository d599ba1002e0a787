// One signature of a record: a JWS (RFC 7515) detached from its payload (appendix F), ES256. Inside
// core/record only.
#pragma once

#include "base/parse.hpp"
#include "record/record.hpp"

#include <string>
#include <string_view>

namespace ambit::record {

/// {"protected": …, "signature": …} over the payload's bytes.
[[nodiscard]] Result<Json> signJws(std::string_view payload, const Signer& signer);

/// Checks such an entry. `where` stands before the pointers of what is wrong.
[[nodiscard]] Result<SignatureReport> verifyJws(const Json& entry, std::string_view payload,
                                                const std::string& where);

} // namespace ambit::record
