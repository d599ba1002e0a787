#include "link/walker_side.hpp"

#include "base/canonical.hpp"

#include <QRandomGenerator>
#include <QSslSocket>
#include <nlohmann/json.hpp>
#include <openssl/rand.h>

namespace ambit::link {

namespace {

constexpr std::size_t mostConnections = 96;
constexpr std::size_t mostStrangers = 16; ///< of which nothing was heard yet
constexpr int helloMs = 30000;            ///< a bad network sends a packet again several times
constexpr int handshakeMs = 30000;
constexpr std::size_t mostRecent = 256; ///< events
constexpr int progressMs = 500;

QString addressText(const QHostAddress& address, quint16 port) {
    const auto plain = addressOf(address);
    return (plain ? QString::fromStdString(toText(*plain)) : address.toString()) + u':' +
           QString::number(port);
}

} // namespace

WalkerSide::WalkerSide(WalkerLink& outside, WalkerSettings itsSettings, record::Certificate its,
                       const QSslConfiguration& itsTls)
    : link(outside), settings(std::move(itsSettings)), me(std::move(its)),
      files([this](const std::string& sha256) { return fileBytes(sha256); }), tcp(this),
      upgrades(QStringLiteral("Ambit"), QWebSocketServer::NonSecureMode, this), progress(this) {
    clock.start();
    tcp.setSslConfiguration(itsTls);
    tcp.setHandshakeTimeout(handshakeMs);
    upgrades.setHandshakeTimeout(handshakeMs);
    connect(&tcp, &QTcpServer::pendingConnectionAvailable, this, [this] { takeEncrypted(); });
    connect(&tcp, &QSslServer::errorOccurred, this, [this](QSslSocket* socket) {
        tellRefused(addressText(socket->peerAddress(), socket->peerPort()),
                    {ErrorCode::signature, "No encrypted connection came about.", "",
                     socket->errorString().toStdString()});
    });
    connect(&upgrades, &QWebSocketServer::newConnection, this, [this] { takeUpgraded(); });
    progress.setSingleShot(true);
    connect(&progress, &QTimer::timeout, this, [this] { tellWatching(); });
}

WalkerSide::~WalkerSide() {
    for (auto& [number, one] : connections) {
        one->channel->disconnect(this);
        one->sender->end("The walker's device has stopped sharing the walk.");
        one->channel->pump();
        one->channel->webSocket().flush();
    }
}

Result<std::uint16_t> WalkerSide::listen() {
    auto opened = archive::Archive::open(settings.archive);
    if (!opened) return tl::unexpected(opened.error());
    archive = std::move(*opened);
    auto known = readWatchers(settings.watchers);
    if (!known) return tl::unexpected(known.error());
    stored = *known;
    door = watch::Door(std::move(*known));
    if (!tcp.listen(settings.address, settings.port))
        return fail(ErrorCode::storage,
                    "No connections can be taken: " + tcp.errorString().toStdString() + '.',
                    "port " + std::to_string(settings.port),
                    say("Another program may use the port; close it, or choose another port."));
    beacon = std::make_unique<Beacon>(me.sha256, tcp.serverPort());
    return tcp.serverPort();
}

// --- the round
// -------------------------------------------------------------------------------------------------------

void WalkerSide::goOn(const std::string& roundId) {
    const auto events = archive->events(roundId);
    if (!events) return tellRefused({}, events.error());
    for (const round::Event& event : *events)
        committed(event);
}

void WalkerSide::committed(const round::Event& event) {
    const bool opens = event.seq == 1;
    if (opens && round::roundId(event) == inHand.round()) return; // told of already
    if (!opens && event.seq != inHand.events() + 1) return;       // goOn has read it from the archive
    if (opens) recent.clear();
    recent.push_back(canonicalJson(toJson(event)));
    if (recent.size() > mostRecent) recent.pop_front();
    inHand.append(event);
    if (const auto* its = std::get_if<round::Signed>(&event.what)) sealed(its->recordSha256);
    pumpAll();
}

void WalkerSide::sealed(const std::string& recordSha256) {
    const auto json = archive->recordJson(recordSha256);
    if (!json) return; // not on disk yet; told again when it is
    std::vector<watch::File> list{
        {watch::FileKind::json, sha256Hex(*json), static_cast<std::int64_t>(json->size())}};
    const auto pdf = archive->recordPdf(recordSha256);
    if (pdf && !pdf->empty() && pdf->size() <= static_cast<std::size_t>(watch::largestPdf))
        list.push_back({watch::FileKind::pdf, sha256Hex(*pdf), static_cast<std::int64_t>(pdf->size())});
    inHand.seal({inHand.round(), recordSha256, std::move(list)});
    pumpAll();
}

std::optional<std::string> WalkerSide::eventText(const std::string& round, std::int64_t seq) {
    const std::int64_t first = inHand.events() - static_cast<std::int64_t>(recent.size()) + 1;
    if (round == inHand.round() && seq >= first && seq <= inHand.events())
        return recent[static_cast<std::size_t>(seq - first)];
    auto text = archive->eventText(round, seq);
    if (!text || text->empty()) return std::nullopt;
    return std::move(*text);
}

Result<std::string> WalkerSide::fileBytes(const std::string& sha256) {
    if (const auto& record = inHand.sealed())
        for (const watch::File& file : record->files)
            if (file.sha256 == sha256)
                return file.kind == watch::FileKind::json ? archive->recordJson(record->recordSha256)
                                                          : archive->recordPdf(record->recordSha256);
    if (auto photo = archive->photo(sha256)) return photo;
    return archive->airframeText(sha256);
}

// --- who comes in
// ----------------------------------------------------------------------------------------------------

Result<watch::Invitation> WalkerSide::invite() {
    std::array<std::uint8_t, watch::Door::wordBytes> random{};
    if (RAND_bytes(random.data(), static_cast<int>(random.size())) != 1)
        return fail(ErrorCode::unsupported, say("This device has no good randomness now."), "",
                    say("Try again."));
    auto word = door.invite(random, now());
    if (!word) return tl::unexpected(word.error());
    QTimer::singleShot(watch::Door::wordLivesMs + 100, this, [this] {
        if (door.openForMs(now()) == 0) emit link.invitationEnded();
    });
    watch::Invitation invitation;
    invitation.addresses = settings.shown.empty() ? ownAddresses() : settings.shown;
    invitation.port = tcp.serverPort();
    invitation.fingerprint = me.sha256;
    invitation.word = std::move(*word);
    if (invitation.addresses.empty())
        return fail(ErrorCode::notFound, say("This device is on no network."), "",
                    say("Join a wireless network, or open a hotspot on one of the devices."));
    return invitation;
}

void WalkerSide::takeEncrypted() {
    while (auto* next = tcp.nextPendingConnection()) {
        std::unique_ptr<QSslSocket> socket(qobject_cast<QSslSocket*>(next));
        if (!socket) {
            next->deleteLater();
            continue;
        }
        const QString from = addressText(socket->peerAddress(), socket->peerPort());
        auto certificate = peerOf(socket->peerCertificateChain());
        if (certificate && (connections.size() >= mostConnections || upgrading.size() >= mostStrangers))
            certificate = fail(ErrorCode::refused, say("Too many devices are connected."), "",
                               say("Try again in a moment."));
        if (!certificate) {
            tellRefused(from, certificate.error());
            socket->disconnectFromHost();
            socket.release()->deleteLater(); // NOLINT(bugprone-unused-return-value)
            continue;
        }
        socket->setSocketOption(QAbstractSocket::LowDelayOption, 1);
        const std::pair key(socket->peerAddress().toString(), socket->peerPort());
        upgrading.emplace(key, std::move(*certificate));
        connect(socket.get(), &QObject::destroyed, this, [this, key] { upgrading.erase(key); });
        upgrades.handleConnection(socket.release());
    }
}

void WalkerSide::takeUpgraded() {
    while (upgrades.hasPendingConnections()) {
        std::unique_ptr<QWebSocket> socket(upgrades.nextPendingConnection());
        const auto known = upgrading.find({socket->peerAddress().toString(), socket->peerPort()});
        if (known == upgrading.end()) continue;
        record::Certificate certificate = std::move(known->second);
        upgrading.erase(known);
        serve(std::move(socket), std::move(certificate));
    }
}

void WalkerSide::serve(std::unique_ptr<QWebSocket> socket, record::Certificate certificate) {
    const std::uint64_t number = ++lastNumber;
    auto made = std::make_unique<Connection>();
    Connection& one = *made;
    one.number = number;
    one.certificate = std::move(certificate);
    one.from = addressText(socket->peerAddress(), socket->peerPort());
    one.channel = std::make_unique<Channel>(std::move(socket));
    one.sender = std::make_unique<watch::Sender>(
        me.name, inHand,
        watch::Sender::Reads{
            [this](const std::string& round, std::int64_t seq) { return eventText(round, seq); },
            [this, &one](const std::string& sha256, std::int64_t from, std::size_t most) {
                auto chunk = files.read(sha256, from, most);
                if (chunk) one.served += static_cast<std::int64_t>(chunk->bytes.size());
                if (chunk && !progress.isActive()) progress.start(progressMs);
                return chunk;
            }});
    one.channel->feed([sender = one.sender.get()] { return sender->next(); },
                      [sender = one.sender.get()] { return sender->isOver(); });
    connect(one.channel.get(), &Channel::message, this, [this, number](const std::string& text) {
        if (Connection* its = find(number)) take(*its, text);
    });
    connect(one.channel.get(), &Channel::gone, this, [this, number] { drop(number); });
    one.channel->begin();
    connections.emplace(number, std::move(made));
    QTimer::singleShot(helloMs, this, [this, number] {
        Connection* its = find(number);
        if (its == nullptr || its->hasGreeted) return;
        const Error why{ErrorCode::refused, "No greeting came within thirty seconds.", "", ""};
        its->sender->refuse(why);
        tellRefused(its->from, why);
        its->channel->pump();
    });
}

void WalkerSide::greet(Connection& connection, const watch::Hello& hello) {
    connection.hasGreeted = true;
    const watch::Peer who{connection.certificate.sha256, connection.certificate.name};
    const watch::Answer answer = door.knock({who, hello.word}, now());
    if (const auto* admitted = std::get_if<watch::Admitted>(&answer)) {
        connection.sender->admit();
        if (admitted->isNew) {
            storeKnown();
            emit link.invitationEnded();
        }
        tellWatching();
        pumpAll();
        return;
    }
    const auto& refused = std::get<watch::Refused>(answer);
    tellRefused(connection.from + u' ' + QString::fromStdString(who.name), refused.why);
    if (door.openForMs(now()) == 0) emit link.invitationEnded();
    const auto wait = std::max<std::int64_t>(0, refused.notBefore.ms - now().ms);
    QTimer::singleShot(std::chrono::milliseconds(wait), this,
                       [this, number = connection.number, why = refused.why] {
                           Connection* its = find(number);
                           if (its == nullptr) return;
                           its->sender->refuse(why);
                           its->channel->pump();
                       });
}

void WalkerSide::takeBack(const std::string& certificateSha256) {
    if (!door.takeBack(certificateSha256)) return;
    storeKnown();
    for (auto& [number, one] : connections) {
        if (one->certificate.sha256 != certificateSha256) continue;
        one->sender->refuse(
            {ErrorCode::refused, say("The walker no longer shares the walk with you."), "", ""});
        one->channel->pump();
    }
    tellWatching();
}

void WalkerSide::storeKnown() {
    if (door.known() == stored) return;
    stored = door.known();
    if (auto written = writeWatchers(settings.watchers, stored); !written) tellRefused({}, written.error());
    emit link.knownChanged(stored);
}

// --- what they say
// ---------------------------------------------------------------------------------------------------

void WalkerSide::take(Connection& connection, const std::string& text) {
    auto news = connection.sender->take(text);
    if (news)
        act(connection, std::move(*news));
    else
        tellRefused(connection.from + u' ' + QString::fromStdString(connection.certificate.name),
                    news.error());
    connection.channel->pump();
}

void WalkerSide::act(Connection& connection, watch::FromWatcher&& news) {
    if (const auto* hello = std::get_if<watch::Hello>(&news)) {
        greet(connection, *hello);
    } else if (const auto* say = std::get_if<watch::Say>(&news)) {
        emit link.said(connection.number, *say, connection.certificate);
    } else if (auto* offer = std::get_if<watch::Offer>(&news)) {
        connection.offered = Offered{std::move(*offer), {}, false};
        fetchOffered();
    } else if (auto* part = std::get_if<watch::Part>(&news)) {
        takePart(connection, std::move(*part));
    } else if (std::holds_alternative<watch::Gone>(news)) {
        connection.offered.reset();
        fetchOffered();
    } else if (!progress.isActive()) {
        progress.start(progressMs); // a `have`, mostly
    }
}

/// One offer at a time, whoever offers: so that memory holds one record, not fifty.
void WalkerSide::fetchOffered() {
    Connection* next = nullptr;
    for (auto& [number, one] : connections) {
        if (one->offered && one->offered->isFetching) return;
        if (one->offered && (next == nullptr || number < next->number)) next = one.get();
    }
    if (next == nullptr) return;
    Offered& offered = *next->offered;
    const watch::File& file = offered.what.files[offered.files.size()];
    offered.files.emplace_back();
    offered.isFetching = next->sender->fetch(watch::Fetching::ofSize(file.sha256, file.size)).has_value();
    if (!offered.isFetching) next->offered.reset();
    next->channel->pump();
}

void WalkerSide::takePart(Connection& connection, watch::Part&& part) {
    if (!connection.offered) return;
    Offered& offered = *connection.offered;
    offered.files.back() += part.bytes;
    if (!part.isWhole) return;
    offered.isFetching = false;
    if (offered.files.size() == offered.what.files.size()) {
        emit link.offered(connection.number, offered.what.id, offered.what.recordSha256, offered.files);
        connection.offered.reset();
    }
    fetchOffered();
}

void WalkerSide::heard(std::uint64_t connection, const std::string& id, const std::string& why) {
    Connection* its = find(connection);
    if (its == nullptr) return;
    its->sender->heard(id, why);
    its->channel->pump();
}

// --- connections
// -----------------------------------------------------------------------------------------------------

WalkerSide::Connection* WalkerSide::find(std::uint64_t number) {
    const auto known = connections.find(number);
    return known == connections.end() ? nullptr : known->second.get();
}

void WalkerSide::drop(std::uint64_t number) {
    const auto known = connections.find(number);
    if (known == connections.end()) return;
    // Its channel tells of this; it goes when that has returned.
    Connection& one = *known->second;
    one.channel->disconnect(this);
    one.channel->feed(nullptr, nullptr);
    one.channel.release()->deleteLater(); // NOLINT(bugprone-unused-return-value)
    connections.erase(known);
    fetchOffered();
    tellWatching();
}

void WalkerSide::pumpAll() {
    for (auto& [number, one] : connections)
        one->channel->pump();
}

void WalkerSide::tellWatching() {
    std::vector<watch::Watcher> list;
    std::vector<std::string> names;
    for (const auto& [number, one] : connections)
        if (one->sender->isIn())
            list.push_back(
                {number, one->certificate.name, one->certificate.sha256, one->sender->kept(), one->served});
    std::sort(list.begin(), list.end(),
              [](const watch::Watcher& a, const watch::Watcher& b) { return a.connection < b.connection; });
    names.reserve(list.size());
    for (const watch::Watcher& one : list)
        names.push_back(one.name);
    if (names != inHand.watching()) {
        inHand.watch(std::move(names));
        pumpAll();
    }
    if (list == told) return;
    told = list;
    emit link.watchingChanged(told);
}

void WalkerSide::tellRefused(const QString& who, const Error& why) {
    emit link.refused(who, why);
}

} // namespace ambit::link
