#include "link/watcher_link.hpp"

#include "archive/unflushed.hpp"
#include "link/watcher_side.hpp"

namespace ambit::link {

WatcherSide::WatcherSide(WatcherLink& outside, WatcherSettings itsSettings, std::string itsName,
                         const QSslConfiguration& its)
    : link(outside), settings(std::move(itsSettings)), name(std::move(itsName)), tls(its), ear(this) {
    connect(&ear, &BeaconEar::heard, this,
            [this](const std::string& certificate, const watch::Address& address, std::uint16_t port) {
                for (const auto& [number, one] : followed)
                    if (one->isAnnouncedBy(certificate)) one->maybeAt(address, port);
            });
}

Result<void> WatcherSide::open() {
    auto opened = archive::Archive::open(settings.archive);
    if (!opened) return tl::unexpected(opened.error());
    archive = std::move(*opened);
    // A copy: what a power cut takes from its end, the walker sends again.
    if (auto set = archive::commitUnflushed(*archive); !set) return set;
    auto known = readWalkers(settings.walkers);
    if (!known) return tl::unexpected(known.error());
    walkers = std::move(*known);
    shared.emplace(
        Shared{link, *archive, tls, name, [this](watch::Walker walker) { remember(std::move(walker)); }});
    emit link.walkersChanged(walkers);
    return {};
}

void WatcherSide::join(std::uint64_t number, const watch::Invitation& invitation) {
    const auto made =
        followed.emplace(number, std::make_unique<Following>(*shared, number, invitation, nullptr)).first;
    made->second->begin();
}

void WatcherSide::leave(std::uint64_t number) {
    const auto known = followed.find(number);
    if (known == followed.end()) return;
    known->second->leave();
    followed.erase(known);
}

void WatcherSide::forget(const std::string& certificateSha256) {
    std::erase_if(walkers,
                  [&](const watch::Walker& one) { return one.who.certificateSha256 == certificateSha256; });
    store();
}

Following* WatcherSide::find(std::uint64_t number) {
    const auto known = followed.find(number);
    return known == followed.end() ? nullptr : known->second.get();
}

void WatcherSide::remember(watch::Walker walker) {
    if (!walkers.empty() && walkers.front() == walker) return;
    link::remember(walkers, std::move(walker));
    store();
}

void WatcherSide::store() {
    // Without the file a code is needed next time: nothing is lost that a person can't say again.
    (void)writeWalkers(settings.walkers, walkers);
    emit link.walkersChanged(walkers);
}

Result<std::unique_ptr<WatcherLink>> WatcherLink::open(const WatcherSettings& settings,
                                                       const record::Signer& me, Instant now) {
    const auto tls = tlsFor(me, now);
    if (!tls) return tl::unexpected(tls.error());
    std::unique_ptr<WatcherLink> link(new WatcherLink);
    link->thread.setObjectName(QStringLiteral("watcher's link"));
    link->thread.start();
    auto context = std::make_unique<QObject>();
    context->moveToThread(&link->thread);
    Result<void> opened;
    QMetaObject::invokeMethod(
        context.get(),
        [&] {
            link->side = std::make_unique<WatcherSide>(*link, settings, me.certificate().name, *tls);
            opened = link->side->open();
            link->walkers = link->side->known();
        },
        Qt::BlockingQueuedConnection);
    context.release()->deleteLater(); // NOLINT(bugprone-unused-return-value): the thread's
    if (!opened) return tl::unexpected(opened.error());
    return link;
}

WatcherLink::~WatcherLink() {
    if (side)
        QMetaObject::invokeMethod(
            side.get(), [this] { side.release()->deleteLater(); }, // NOLINT
            Qt::BlockingQueuedConnection);
    thread.quit(); // what is to be deleted later is, first
    thread.wait();
}

template<class Do> void WatcherLink::post(Do what) {
    QMetaObject::invokeMethod(side.get(), std::move(what), Qt::QueuedConnection);
}

std::uint64_t WatcherLink::join(const watch::Invitation& invitation) {
    const std::uint64_t number = ++lastNumber;
    post([this, number, invitation] { side->join(number, invitation); });
    return number;
}

std::uint64_t WatcherLink::join(const watch::Walker& walker) {
    return join(watch::Invitation{walker.addresses, walker.port, walker.who.certificateSha256, {}});
}

void WatcherLink::leave(std::uint64_t walker) {
    post([this, walker] { side->leave(walker); });
}

void WatcherLink::forget(const std::string& certificateSha256) {
    post([this, certificateSha256] { side->forget(certificateSha256); });
}

void WatcherLink::say(std::uint64_t walker, const watch::Say& what) {
    post([this, walker, what] {
        if (Following* its = side->find(walker)) its->say(what);
    });
}

void WatcherLink::offer(std::uint64_t walker, const std::string& id, const watch::RecordHere& record) {
    post([this, walker, id, record] {
        if (Following* its = side->find(walker)) its->offer(id, record);
    });
}

} // namespace ambit::link
