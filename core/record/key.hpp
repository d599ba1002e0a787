// One person's signing key: EC P-256, encrypted PKCS#8, and its self-signed X.509 certificate.
#pragma once

#include "base/result.hpp"
#include "base/time.hpp"

#include <functional>
#include <memory>
#include <string>
#include <string_view>

namespace ambit::record {

/// What a certificate says, read from its DER.
struct Certificate {
    std::string der;
    std::string name;   ///< subject common name
    std::string point;  ///< the public key: 65 bytes, uncompressed
    std::string sha256; ///< of the DER, hex: shown to people as the key's fingerprint
    Instant notBefore;
    Instant notAfter;

    /// Only a P-256 key; a self-signed certificate's own signature must hold.
    [[nodiscard]] static Result<Certificate> fromDer(std::string_view der);
};

/// What signs. A phone's key store can stand behind the callback: the key itself never has to leave it.
class Signer {
public:
    using SignDigest = std::function<Result<std::string>(std::string_view digest)>; ///< 32 bytes in, R‖S (64
                                                                                    ///< bytes, low S) out
    Signer(Certificate certificate, SignDigest sign);
    [[nodiscard]] const Certificate& certificate() const { return cert; }
    [[nodiscard]] Result<std::string> signDigest(std::string_view digest) const { return sign(digest); }

private:
    Certificate cert;
    SignDigest sign;
};

/// A key file's text: the encrypted private key (PKCS#8, PBES2: scrypt N=16384 r=8 p=8, AES-256-CBC) and the
/// certificate, both PEM. `at` is the start of the certificate's life, 20 years long. Passphrase: at least 8
/// bytes.
[[nodiscard]] Result<std::string> newKeyFile(const std::string& name, std::string_view passphrase,
                                             Instant at);

/// Error passphrase: it doesn't unlock; syntax: not a key file.
[[nodiscard]] Result<Signer> unlock(std::string_view keyFile, std::string_view passphrase);

/// The certificate of a key file, without unlocking.
[[nodiscard]] Result<Certificate> certificateOf(std::string_view keyFile);

} // namespace ambit::record
