// One signature of a record: a JWS (RFC 7515) detached from its payload (appendix F), ES256. Inside
// core/record only.
#pragma once

#include "base/hash.hpp"
#include "base/tape.hpp"
#include "record/record.hpp"

#include <string>
#include <string_view>

namespace ambit::record {

/// {"protected": …, "signature": …} over the payload's bytes. `more`: what the protected header says beside
/// algorithm, low S and certificate.
[[nodiscard]] Result<Json> signJws(std::string_view payload, const Signer& signer, const Json& more);

/// The name by which a later signature binds an entry: SHA-256 of its canonical form, hex.
[[nodiscard]] std::string hashOf(JsonView entry);

/// What a countersignature's protected header says of itself: the signature before it, who signs, when.
[[nodiscard]] Json countersigning(const std::string& after, const round::Person& who, Instant at);

/// Checks such an entry. `after` is the name of the one before it, empty for the first, which has no header
/// fields of a countersignature and whose `who` is left empty: the content names it. `where` stands before
/// the pointers of what is wrong.
[[nodiscard]] Result<SignatureReport> verifyJws(JsonView entry, std::string_view payload,
                                                const std::string& after, const std::string& where);

/// The protected header of a first signature, as verifyJws reads it; `who` is left empty.
[[nodiscard]] Result<SignatureReport> firstHeader(std::string_view text);

/// What is signed: SHA-256 over header, a dot, and the payload's base64url.
[[nodiscard]] Digest signedDigest(std::string_view header, std::string_view payload);

} // namespace ambit::record
