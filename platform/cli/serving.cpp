#include "cli/serving.hpp"

#include "archive/hearing.hpp"
#include "archive/import.hpp"
#include "base/files.hpp"
#include "cli/talk.hpp"

#include <QCoreApplication>
#include <QEventLoop>
#include <QTimer>
#include <algorithm>
#include <iostream>

namespace ambit::cli {

Result<std::unique_ptr<Serving>> Serving::open(const ServeOptions& options, const std::string& folder,
                                               const record::Signer& me) {
    std::unique_ptr<Serving> serving(new Serving(options));
    link::WalkerSettings settings;
    settings.archive = std::filesystem::path(folder) / "archive.sqlite";
    settings.watchers = options.known.empty() ? std::filesystem::path(folder) / "watchers.json"
                                              : std::filesystem::path(options.known);
    settings.port = options.port;
    if (!options.address.empty() && !settings.address.setAddress(QString::fromStdString(options.address)))
        return fail(ErrorCode::invalid, "This is not an address to listen on.", options.address,
                    "Write it like 192.168.1.7.");
    if (!options.shown.empty()) {
        auto shown = watch::Address::v4From(options.shown);
        if (!shown) return tl::unexpected(shown.error());
        settings.shown.push_back(*shown);
    }
    auto link = link::WalkerLink::open(settings, me, now().at);
    if (!link) return tl::unexpected(link.error());
    serving->link = std::move(*link);
    serving->listen();
    const auto invitation = serving->link->invite();
    if (!invitation) return tl::unexpected(invitation.error());
    const auto text = watch::qrText(*invitation);
    if (!text) return tl::unexpected(text.error());
    std::cerr << "Served on port " << serving->link->port()
              << ". Within five minutes one new device may join with:\n"
              << *text << '\n';
    if (const auto code = watch::typedCode(*invitation)) std::cerr << *code << '\n';
    if (!options.invitation.empty())
        if (auto written = writeFile(options.invitation, *text + '\n', true); !written)
            return tl::unexpected(written.error());
    return serving;
}

void Serving::listen() {
    // The link's thread speaks; this one listens when it rests.
    connect(link.get(), &link::WalkerLink::watchingChanged, this,
            [this](const std::vector<watch::Watcher>& now) {
                watching = now;
                for (const watch::Watcher& one : now)
                    kept[one.certificateSha256] = std::max(kept[one.certificateSha256], one.kept);
                quiet.start();
            });
    connect(link.get(), &link::WalkerLink::refused, this, [](const QString& who, const Error& why) {
        std::cerr << "ambit: not let in: " << who.toStdString() << ": " << toText(why) << std::endl;
    });
    connect(link.get(), &link::WalkerLink::said, this,
            [this](std::uint64_t connection, const watch::Say& what, const record::Certificate& by) {
                said.push_back({connection, what, by});
            });
    connect(link.get(), &link::WalkerLink::offered, this,
            [this](std::uint64_t connection, const std::string& id, const std::string& record,
                   const std::vector<std::string>& files) {
                offers.push_back({connection, id, record, files});
            });
}

void Serving::spin(int ms) {
    QEventLoop loop;
    QTimer::singleShot(ms, Qt::PreciseTimer, &loop, &QEventLoop::quit);
    loop.exec();
}

void Serving::awaitWatchers() {
    while (watching.size() < static_cast<std::size_t>(std::max(options.await, 0)))
        spin(20);
}

void Serving::committed(const round::Event& event) {
    events = event.seq;
    link->committed(event);
}

void Serving::rest() {
    if (options.paceMs > 0)
        spin(options.paceMs);
    else
        QCoreApplication::processEvents();
}

Result<void> Serving::hear(archive::OpenRound& round, const std::function<void(const round::Event&)>& told) {
    const auto tellSince = [&](std::size_t from) {
        for (std::size_t i = from; i < round.events().size(); ++i)
            told(round.events()[i]);
    };
    for (const Said& one : std::exchange(said, {})) {
        const std::size_t before = round.events().size();
        auto heard = archive::hear(round, one.by, one.what.statement, one.what.jws, round.state().lastAt);
        tellSince(before);
        link->heard(one.connection, one.what.id, heard ? std::string() : toText(heard.error()));
        if (!heard && heard.error().code == ErrorCode::storage) return heard;
    }
    if (options.decline.empty()) return {};
    for (std::size_t i = 0; i < round.state().asks.size(); ++i) {
        if (!round.state().asks[i].isOpen()) continue;
        const std::size_t before = round.events().size();
        auto done = round.actAndReplan(round::Declined{static_cast<std::int64_t>(i) + 1, options.decline},
                                       round.state().lastAt);
        tellSince(before);
        if (!done) return done;
    }
    return {};
}

void Serving::keepOffered(archive::Archive& archive) {
    for (const Offered& one : std::exchange(offers, {})) {
        const auto taken = archive::takeRecord(archive, one.recordSha256, one.files);
        const std::string why = taken ? std::string() : toText(taken.error());
        link->heard(one.connection, one.id, why);
        if (why.empty()) link->sealed(one.recordSha256);
        std::cerr << (why.empty() ? "The record was countersigned." : "Not kept: " + why) << std::endl;
    }
}

void Serving::linger(archive::Archive& archive) {
    QElapsedTimer since;
    since.start();
    const auto allHave = [&] {
        return !kept.empty() &&
               std::all_of(kept.begin(), kept.end(), [&](const auto& one) { return one.second >= events; });
    };
    constexpr int enoughMs = 3000; // of quiet: the record, and a signature, may be on their way
    quiet.start();
    while (since.elapsed() < std::int64_t{1000} * options.lingerSeconds) {
        if (!allHave()) quiet.start();
        if (!offers.empty()) {
            keepOffered(archive);
            quiet.start();
        }
        if (quiet.elapsed() > enoughMs) break;
        spin(20);
    }
}

} // namespace ambit::cli
