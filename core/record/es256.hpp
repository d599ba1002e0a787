// ES256 (RFC 7518, 3.4): ECDSA on P-256 over SHA-256, signatures as R‖S. Inside core/record only.
#pragma once

#include "base/result.hpp"
#include "record/openssl.hpp"

#include <string>
#include <string_view>

namespace ambit::record {

/// The 65-byte uncompressed point of a certificate's or key's SubjectPublicKeyInfo; refused unless it is
/// P-256 in exactly that form.
[[nodiscard]] Result<std::string> pointOf(std::string_view subjectPublicKeyInfo);

/// The key of a point, ready to check many signatures.
class Es256Key {
public:
    explicit Es256Key(std::string_view point);
    /// Does R‖S (64 bytes) hold over the digest (32 bytes)? Never with a point that isn't on the curve.
    [[nodiscard]] bool verifies(std::string_view digest, std::string_view signature) const;

private:
    OwnedKeyContext context; ///< empty where the point isn't on the curve
};

/// Does R‖S (64 bytes) hold over the digest (32 bytes) with the key of that point?
[[nodiscard]] bool verifyEs256(std::string_view point, std::string_view digest, std::string_view signature);

/// S at most half the group's order. Of the two signatures that hold (R, S) and (R, n-S), the house writes
/// this one only.
[[nodiscard]] bool isLowS(std::string_view signature);
[[nodiscard]] std::string withLowS(std::string_view signature);

/// R‖S from and to the DER that X.509, CMS and OpenSSL use. From: refused unless it is exactly the one
/// encoding.
[[nodiscard]] Result<std::string> fromDerSignature(std::string_view der);
[[nodiscard]] std::string toDerSignature(std::string_view signature);

} // namespace ambit::record
