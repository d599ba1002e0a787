// TLS 1.3 between two devices, both certified by their own people's keys (record/link.hpp).
#pragma once

#include "record/link.hpp"

#include <QList>
#include <QSslCertificate>
#include <QSslConfiguration>

namespace ambit::link {

/// TLS 1.3 and nothing older. The peer shows a certificate, too; whose it is, is not for TLS to judge: ask
/// `peerOf` once the connection is encrypted, before anything is said on it.
[[nodiscard]] Result<QSslConfiguration> tlsFor(const record::Signer& me, Instant now);

/// The person whose key vouches for the connection's certificate. `chain`: as the peer showed it. Error
/// signature: none, or nobody's.
[[nodiscard]] Result<record::Certificate> peerOf(const QList<QSslCertificate>& chain);

} // namespace ambit::link
