#include "link/tls.hpp"

#include <QSsl>
#include <QSslKey>

namespace ambit::link {

namespace {

QByteArray bytesOf(const std::string& text) {
    return QByteArray(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace

Result<QSslConfiguration> tlsFor(const record::Signer& me, Instant now) {
    const auto link = record::newLinkKey(me, now);
    if (!link) return tl::unexpected(link.error());
    QSslConfiguration tls = QSslConfiguration::defaultConfiguration();
    tls.setProtocol(QSsl::TlsV1_3OrLater);
    tls.setPrivateKey(QSslKey(bytesOf(link->keyPem), QSsl::Ec, QSsl::Pem));
    tls.setLocalCertificateChain({QSslCertificate(bytesOf(link->certificateDer), QSsl::Der),
                                  QSslCertificate(bytesOf(me.certificate().der), QSsl::Der)});
    tls.setCaCertificates({});
    // Asks for a certificate, and leaves the judging to peerOf. That the peer holds its key, TLS has proved.
    tls.setPeerVerifyMode(QSslSocket::QueryPeer);
    tls.setSslOption(QSsl::SslOptionDisableSessionTickets, true);
    if (tls.privateKey().isNull() || tls.localCertificateChain().size() != 2)
        return fail(ErrorCode::unsupported, say("This device's TLS can't use the key."), {},
                    say("Install Qt's OpenSSL backend."));
    return tls;
}

Result<record::Certificate> peerOf(const QList<QSslCertificate>& chain) {
    if (chain.size() < 2)
        return fail(ErrorCode::signature, say("The other device showed no person's certificate."),
                    "certificate", say("Both devices need a key."));
    return record::vouchedFor(chain[0].toDer().toStdString(), chain[1].toDer().toStdString());
}

} // namespace ambit::link
