#include "link_sides.hpp"

#include "airframe/read.hpp"
#include "base/files.hpp"
#include "fleet/keys.hpp"
#include "script/player.hpp"

#include <QEventLoop>
#include <QSslSocket>
#include <QTimer>
#include <QWebSocket>
#include <chrono>
#include <filesystem>
#include <fstream>

namespace ambit::bench {

namespace {

constexpr std::uint64_t seed = 26;

Instant wallClock() {
    return {QDateTime::currentMSecsSinceEpoch()};
}

std::string baseOf(const QString& folder, const char* what, int number) {
    return (folder + QStringLiteral("/%1-%2").arg(QLatin1String(what)).arg(number)).toStdString();
}

watch::Peer peerOf(const record::Signer& key) {
    return {key.certificate().sha256, key.certificate().name};
}

void atOnce(QWebSocket& socket) {
    if (auto* tcp = socket.findChild<QSslSocket*>()) tcp->setSocketOption(QAbstractSocket::LowDelayOption, 1);
}

} // namespace

std::int64_t nanoseconds() {
    return std::chrono::duration_cast<std::chrono::nanoseconds>(
               std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

double residentMb() {
    std::ifstream status("/proc/self/status");
    std::string line;
    while (std::getline(status, line))
        if (line.starts_with("VmRSS:")) return std::atof(line.c_str() + 6) / 1024;
    return 0;
}

double threadsMs(const std::string& name) {
    double sum = 0;
    for (const auto& task : std::filesystem::directory_iterator("/proc/self/task")) {
        std::string its;
        std::getline(std::ifstream(task.path() / "comm"), its);
        if (its != name.substr(0, 15)) continue; // as much as the kernel keeps
        double spent = 0;
        std::ifstream(task.path() / "schedstat") >> spent;
        sum += spent / 1e6;
    }
    return sum;
}

bool spinUntil(const std::function<bool()>& done, int mostMs) {
    QElapsedTimer since;
    since.start();
    while (!done()) {
        if (since.elapsed() > mostMs) return false;
        QEventLoop loop;
        QTimer::singleShot(10, &loop, &QEventLoop::quit);
        loop.exec();
    }
    return true;
}

Result<DemoRound> DemoRound::walked(const std::string& folder) {
    DemoRound demo;
    auto text = readFile(folder + "/airframe.json");
    if (!text) return tl::unexpected(text.error());
    auto airframe = airframe::readFrom(folder + "/airframe.json");
    if (!airframe) return tl::unexpected(airframe.error().front());
    auto script = script::readScriptFrom(folder + "/round.jsonl");
    if (!script) return tl::unexpected(script.error());
    auto memory = archive::Archive::open(":memory:");
    if (!memory) return tl::unexpected(memory.error());
    auto round = script::walkScript(*memory, *airframe, *text, *script, {});
    if (!round) return tl::unexpected(round.error());
    for (const round::Event& event : round->events())
        if (const auto* settled = std::get_if<round::Settled>(&event.what))
            for (const round::Photo& photo : settled->photos) {
                auto bytes = memory->photo(photo.sha256);
                if (!bytes) return tl::unexpected(bytes.error());
                demo.photos[photo.sha256] = {photo, std::move(*bytes)};
            }
    demo.events = round->events();
    demo.airframe = std::move(*airframe);
    demo.text = std::move(*text);
    return demo;
}

// --- who walks

Walker::Walker(const DemoRound& its, archive::Archive store, record::Signer key, std::string path)
    : demo(&its), archive(std::move(store)), me(std::move(key)), base(std::move(path)) {}

Result<std::unique_ptr<Walker>> Walker::open(const DemoRound& demo, const QString& folder, int number) {
    const std::string base = baseOf(folder, "walker", number);
    auto archive = archive::Archive::open(base + ".sqlite");
    if (!archive) return tl::unexpected(archive.error());
    const std::string name = "Walker " + std::to_string(number);
    auto key = fleet::derivedKey(seed, name, name, demo.events.front().at);
    if (!key) return tl::unexpected(key.error());
    std::unique_ptr<Walker> walker(new Walker(demo, std::move(*archive), std::move(*key), base));
    walker->registration = "OX-W" + std::to_string(number);
    if (auto added = walker->archive.addAircraft({walker->registration, "BENCH-" + std::to_string(number),
                                                  demo.airframe.sha256, demo.airframe.name},
                                                 demo.text);
        !added)
        return tl::unexpected(added.error());
    return walker;
}

Result<void> Walker::share(const std::vector<watch::Peer>& watchers) {
    if (auto known = link::writeWatchers(base + ".json", watchers); !known) return known;
    link::WalkerSettings settings;
    settings.archive = base + ".sqlite";
    settings.watchers = base + ".json";
    settings.address = QHostAddress(QHostAddress::LocalHost);
    settings.port = 0;
    auto opened = link::WalkerLink::open(settings, me, wallClock());
    if (!opened) return tl::unexpected(opened.error());
    link = std::move(*opened);
    return {};
}

watch::Walker Walker::address() const {
    return {peerOf(me), {watch::Address::v4({127, 0, 0, 1})}, link->port()};
}

Result<void> Walker::begin() {
    round.reset();
    ++days;
    auto opened = std::get<round::Opened>(demo->events.front().what);
    opened.registration = registration;
    opened.serial = "BENCH-" + registration.substr(4);
    auto begun = archive::OpenRound::begin(archive, demo->airframe, std::move(opened),
                                           {demo->events.front().at.ms + days * 86'400'000});
    if (!begun) return tl::unexpected(begun.error());
    round = std::move(*begun);
    return {};
}

Result<void> Walker::act(const round::Event& event) {
    std::vector<archive::PhotoBytes> photos;
    if (const auto* settled = std::get_if<round::Settled>(&event.what))
        for (const round::Photo& photo : settled->photos)
            photos.push_back(demo->photos.at(photo.sha256));
    return round->act(event.what, {event.at.ms + days * 86'400'000}, photos);
}

Result<Moment> Walker::step() {
    const bool begins = !round || round->events().size() == demo->events.size();
    const std::int64_t from = nanoseconds();
    if (auto done = begins ? begin() : act(demo->events[round->events().size()]); !done)
        return tl::unexpected(done.error());
    const round::Event& last = round->events().back();
    Moment moment{round->state().id, last.seq, nanoseconds(), 0, 0};
    moment.actMs = static_cast<double>(moment.at - from) / 1e6;
    if (link) link->committed(last);
    moment.toldMs = static_cast<double>(nanoseconds() - from) / 1e6;
    return moment;
}

// --- who watches

void Arrivals::add(const std::string& round, const std::vector<round::Event>& events) {
    const std::int64_t now = nanoseconds();
    const std::lock_guard lock(mutex);
    for (const round::Event& event : events)
        moments[{round, event.seq}].push_back(now);
    number += events.size();
}

std::vector<double> Arrivals::since(const std::vector<Moment>& committed, std::size_t all) const {
    const std::lock_guard lock(mutex);
    std::vector<double> list;
    for (const Moment& one : committed) {
        const auto known = moments.find({one.round, one.seq});
        if (known == moments.end() || known->second.size() < all) continue;
        const auto last = *std::max_element(known->second.begin(), known->second.end());
        list.push_back(static_cast<double>(last - one.at) / 1e6);
    }
    return list;
}

void Arrivals::clear() {
    const std::lock_guard lock(mutex);
    moments.clear();
    number = 0;
}

Result<record::Signer> Watcher::key(int number) {
    const std::string name = "Watcher " + std::to_string(number);
    return fleet::derivedKey(seed, name, name, {1'700'000'000'000});
}

Result<std::vector<watch::Peer>> peers(int count) {
    std::vector<watch::Peer> list;
    for (int number = 0; number < count; ++number) {
        const auto key = Watcher::key(number);
        if (!key) return tl::unexpected(key.error());
        list.push_back(peerOf(*key));
    }
    return list;
}

Result<std::unique_ptr<Watcher>> Watcher::open(const QString& folder, int number, Arrivals& arrivals,
                                               Told where) {
    const auto me = key(number);
    if (!me) return tl::unexpected(me.error());
    const std::string base = baseOf(folder, "watcher", number);
    auto link = link::WatcherLink::open({base + ".sqlite", base + ".json"}, *me, wallClock());
    if (!link) return tl::unexpected(link.error());
    auto watcher = std::make_unique<Watcher>();
    watcher->link = std::move(*link);
    link::WatcherLink* its = watcher->link.get();
    const auto note = [&arrivals](std::uint64_t, const std::string& round,
                                  const std::vector<round::Event>& events) { arrivals.add(round, events); };
    QObject::connect(its, &link::WatcherLink::logged, its, note,
                     where == Told::mainThread ? Qt::QueuedConnection : Qt::DirectConnection);
    QObject::connect(
        its, &link::WatcherLink::stateChanged, its,
        [ins = &watcher->ins](std::uint64_t, watch::LinkState state, const Error&) {
            if (state == watch::LinkState::in) ++*ins;
        },
        Qt::DirectConnection);
    return watcher;
}

// --- nothing but a WebSocket

Echo::Echo() {
    serverThread.start();
    clientThread.start();
}

Echo::~Echo() {
    const auto drop = [](auto& one) {
        if (one)
            QMetaObject::invokeMethod(
                one.get(), [&one] { one.release()->deleteLater(); }, // NOLINT
                Qt::BlockingQueuedConnection);
    };
    drop(client);
    drop(server);
    for (QThread* thread : {&clientThread, &serverThread}) {
        thread->quit();
        thread->wait();
    }
}

bool Echo::open(const QSslConfiguration& tls) {
    server = std::make_unique<QWebSocketServer>(QStringLiteral("echo"), QWebSocketServer::SecureMode);
    server->setSslConfiguration(tls);
    QObject::connect(server.get(), &QWebSocketServer::newConnection, server.get(), [its = server.get()] {
        QWebSocket* socket = its->nextPendingConnection();
        socket->setParent(its);
        atOnce(*socket);
        QObject::connect(socket, &QWebSocket::textMessageReceived, socket,
                         [socket](const QString& text) { socket->sendTextMessage(text); });
    });
    server->moveToThread(&serverThread);
    quint16 port = 0;
    QMetaObject::invokeMethod(
        server.get(),
        [&] { port = server->listen(QHostAddress(QHostAddress::LocalHost)) ? server->serverPort() : 0; },
        Qt::BlockingQueuedConnection);
    if (port == 0) return false;
    client = std::make_unique<QWebSocket>();
    client->moveToThread(&clientThread);
    std::atomic<bool> isIn{false};
    QObject::connect(
        client.get(), &QWebSocket::connected, client.get(),
        [&] {
            atOnce(*client);
            isIn = true;
        },
        Qt::DirectConnection);
    QMetaObject::invokeMethod(client.get(), [&] {
        client->setSslConfiguration(tls);
        client->open(QUrl(QStringLiteral("wss://127.0.0.1:%1/").arg(port)));
    });
    QObject::connect(client.get(), &QWebSocket::textMessageReceived, client.get(), [this] {
        list.push_back(static_cast<double>(nanoseconds() - underWay.front()) / 1e6);
        underWay.pop_front();
        ++back;
    });
    const bool opened = spinUntil([&] { return isIn.load(); }, 10000);
    QObject::disconnect(client.get(), &QWebSocket::connected, client.get(), nullptr);
    return opened;
}

void Echo::send(const std::string& text) {
    QMetaObject::invokeMethod(client.get(), [this, text = QString::fromStdString(text)] {
        underWay.push_back(nanoseconds());
        client->sendTextMessage(text);
    });
}

std::vector<double> Echo::roundTrips(std::size_t all) {
    if (!spinUntil([&] { return back == all; }, 60000)) return {};
    return list; // nobody writes to it now
}

} // namespace ambit::bench
