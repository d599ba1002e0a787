#include "link/walker_link.hpp"

#include "link/walker_side.hpp"

namespace ambit::link {

Result<std::unique_ptr<WalkerLink>> WalkerLink::open(const WalkerSettings& settings, const record::Signer& me,
                                                     Instant now) {
    const auto tls = tlsFor(me, now);
    if (!tls) return tl::unexpected(tls.error());
    std::unique_ptr<WalkerLink> link(new WalkerLink);
    link->thread.setObjectName(QStringLiteral("walker's link"));
    link->thread.start();
    auto context = std::make_unique<QObject>();
    context->moveToThread(&link->thread);
    Result<std::uint16_t> port;
    QMetaObject::invokeMethod(
        context.get(),
        [&] {
            link->side = std::make_unique<WalkerSide>(*link, settings, me.certificate(), *tls);
            port = link->side->listen();
            link->known = link->side->known();
        },
        Qt::BlockingQueuedConnection);
    context.release()->deleteLater(); // NOLINT(bugprone-unused-return-value): the thread's
    if (!port) return tl::unexpected(port.error());
    link->ownPort = *port;
    return link;
}

WalkerLink::~WalkerLink() {
    if (side)
        QMetaObject::invokeMethod(
            side.get(), [this] { side.release()->deleteLater(); }, // NOLINT
            Qt::BlockingQueuedConnection);
    thread.quit(); // what is to be deleted later is, first
    thread.wait();
}

template<class Do> void WalkerLink::post(Do what) {
    QMetaObject::invokeMethod(side.get(), std::move(what), Qt::QueuedConnection);
}

void WalkerLink::goOn(const std::string& roundId) {
    post([this, roundId] { side->goOn(roundId); });
}

void WalkerLink::committed(const round::Event& event) {
    post([this, event] { side->committed(event); });
}

void WalkerLink::sealed(const std::string& recordSha256) {
    post([this, recordSha256] { side->sealed(recordSha256); });
}

Result<watch::Invitation> WalkerLink::invite() {
    Result<watch::Invitation> invitation;
    QMetaObject::invokeMethod(
        side.get(), [&] { invitation = side->invite(); }, Qt::BlockingQueuedConnection);
    return invitation;
}

void WalkerLink::closeInvitation() {
    post([this] { side->closeInvitation(); });
}

void WalkerLink::takeBack(const std::string& certificateSha256) {
    post([this, certificateSha256] { side->takeBack(certificateSha256); });
}

void WalkerLink::heard(std::uint64_t connection, const std::string& id, const std::string& why) {
    post([this, connection, id, why] { side->heard(connection, id, why); });
}

} // namespace ambit::link
