// Keys of a connection: made for one, vouched for by a person's key, which need not leave its store for it.
#pragma once

#include "record/key.hpp"

#include <string>
#include <string_view>

namespace ambit::record {

/// A new P-256 key with an X.509 certificate that the person's key has signed: what TLS is given, together
/// with the person's own certificate. It can't sign records: it is nobody's.
struct LinkKey {
    std::string keyPem;         ///< PKCS#8, not encrypted: not to be stored
    std::string certificateDer; ///< one day to either side of its making: clocks differ
};

/// Error signature: the person's key didn't sign.
[[nodiscard]] Result<LinkKey> newLinkKey(const Signer& person, Instant at);

/// Whose key vouches for the certificate that TLS has proved a key of: the person's certificate, both in DER.
/// Error signature: it is no person's key, or it doesn't vouch. Who that person is and whether they are
/// welcome is for the caller to know; the certificates' dates aren't judged, since clocks differ.
[[nodiscard]] Result<Certificate> vouchedFor(std::string_view linkDer, std::string_view personDer);

} // namespace ambit::record
