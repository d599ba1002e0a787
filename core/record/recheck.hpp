// Looks again at records that verifyRecord let pass once, many of them: are their bytes still those that were
// signed? What they say isn't judged again, so it is faster.
#pragma once

#include "record/parts.hpp"
#include "record/record.hpp"

#include <memory>
#include <span>

namespace ambit::record {

/// What a content says at its top, read without reading all of it. Only of a content that checkContent let
/// pass once: of another it may say anything, but nothing that makes a signature hold.
struct Top {
    std::string_view registration;
    std::string_view at;       ///< concluded, or said
    std::string_view previous; ///< the JSON list
};

class Recheck {
public:
    Recheck();
    Recheck(const Recheck&) = delete;
    Recheck& operator=(const Recheck&) = delete;
    ~Recheck();

    /// `identity`: 32 bytes. Error signature: the content's hash is another, a signature doesn't hold, or the
    /// first isn't the signer's; countersignatures are checked as verifyRecord does.
    [[nodiscard]] Result<Top> operator()(std::string_view identity, std::string_view content,
                                         std::span<const SignatureText> signatures);

private:
    struct Keys; ///< of the headers seen, ready for use
    std::unique_ptr<Keys> keys;
};

} // namespace ambit::record
