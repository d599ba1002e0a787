// The signature in a PDF: CMS SignedData (RFC 5652) as PAdES B-B wants it (ETSI EN 319 142-1), in one form
// only. Inside core/record only.
//
// One certificate, one signer named by issuer and serial number, SHA-256, ES256; signed attributes
// content-type, message-digest and signing-certificate-v2 (RFC 5035); no signing-time, nothing unsigned, DER
// throughout. What is signed and the certificate decide every byte but the signature's own, so a check
// rebuilds it and compares.
#pragma once

#include "record/key.hpp"

#include <string>
#include <string_view>

namespace ambit::record {

/// No CMS of ours with this certificate is longer.
[[nodiscard]] std::size_t longestCms(const Certificate& certificate);

/// The CMS of a signature (R‖S) made already.
[[nodiscard]] std::string cmsOf(std::string_view digest, std::string_view certificateDer,
                                std::string_view signature);

/// Signs what has this SHA-256 digest (32 bytes).
[[nodiscard]] Result<std::string> signCms(std::string_view digest, const Signer& signer);

/// The signer's certificate, if all of `der` is exactly what signCms makes of that digest and the signature
/// holds.
[[nodiscard]] Result<Certificate> verifyCms(std::string_view der, std::string_view digest);

} // namespace ambit::record
