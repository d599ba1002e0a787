// A walker who begins a round on another machine while a file of the one before is still on its way to the
// watcher.
#include "../round/rounds.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"
#include "link/watcher_link.hpp"
#include "watch/frames.hpp"

#include <QSslServer>
#include <QSslSocket>
#include <QTemporaryDir>
#include <QTest>
#include <QWebSocket>
#include <QWebSocketServer>
#include <nlohmann/json.hpp>

using namespace ambit;

namespace {

record::Signer newSigner(const char* name) {
    const Instant at{QDateTime::currentMSecsSinceEpoch()};
    return record::unlock(record::newKeyFile(name, "a test passphrase", at).value(), "a test passphrase")
        .value();
}

/// Says what the test wants, when it wants.
class Walker : public QObject {
public:
    explicit Walker(const record::Signer& me) : upgrades(QString(), QWebSocketServer::NonSecureMode) {
        tcp.setSslConfiguration(link::tlsFor(me, {QDateTime::currentMSecsSinceEpoch()}).value());
        connect(&tcp, &QTcpServer::pendingConnectionAvailable, this,
                [this] { upgrades.handleConnection(tcp.nextPendingConnection()); });
        connect(&upgrades, &QWebSocketServer::newConnection, this, [this] {
            socket.reset(upgrades.nextPendingConnection());
            connect(socket.get(), &QWebSocket::textMessageReceived, this, [this](const QString& text) {
                heard.push_back(watch::frameFrom(text.toStdString(), watch::Side::watcher).value());
            });
        });
        if (!tcp.listen(QHostAddress::LocalHost)) qFatal("no port");
    }
    [[nodiscard]] quint16 port() const { return tcp.serverPort(); }
    void say(const watch::Frame& frame) { socket->sendTextMessage(QString::fromStdString(toText(frame))); }
    /// Waits for the next frame of this kind that satisfies; what came before it is passed over.
    template<class Kind, class Is> bool hears(const Is& is) {
        return QTest::qWaitFor(
            [&] {
                for (; at < heard.size(); ++at)
                    if (const auto* one = std::get_if<Kind>(&heard[at]); one != nullptr && is(*one))
                        return true;
                return false;
            },
            5000);
    }

private:
    QSslServer tcp;
    QWebSocketServer upgrades;
    std::unique_ptr<QWebSocket> socket;
    std::vector<watch::Frame> heard;
    std::size_t at = 0;
};

/// A machine of that name, and the first event of a round on it.
struct Begun {
    explicit Begun(const std::string& name) {
        Json json = Json::parse(readFile(AMBIT_ROOT "/tests/airframe/good.json").value());
        json["name"] = name;
        text = json.dump();
        const auto airframe = airframe::read(text).value();
        round::Opened opened = test::opening(airframe);
        opened.registration = "OX-" + name;
        const round::Event event{1, {1750000000000}, opened};
        id = round::roundId(event);
        first = canonicalJson(toJson(event));
        sha256 = airframe.sha256;
    }
    std::string text, sha256; ///< of the description
    std::string id, first;
};

} // namespace

class LinkRoundsTest : public QObject {
    Q_OBJECT
private slots:
    void anotherRoundMeanwhile_data() {
        QTest::addColumn<bool>("isGone");
        QTest::newRow("the file comes all the same") << false;
        QTest::newRow("the walker doesn't give it any more") << true;
    }
    void anotherRoundMeanwhile() {
        QFETCH(bool, isGone);
        const QTemporaryDir folder;
        const auto robin = newSigner("Robin Example");
        Walker walker(robin);
        const auto watcher = link::WatcherLink::open(
            {folder.filePath("watched.sqlite").toStdString(), folder.filePath("walkers.json").toStdString()},
            newSigner("Sam Fictive"), {QDateTime::currentMSecsSinceEpoch()});
        QVERIFY(watcher);
        // No QSignalSpy: Qt 6.4's takes the signal on the link's own thread.
        std::string logged;
        const QObject here; // with it goes what is still on its way to it
        connect(watcher->get(), &link::WatcherLink::logged, &here,
                [&](std::uint64_t, const std::string& round) { logged = round; });
        watch::Invitation invitation;
        invitation.addresses = {watch::Address::v4({127, 0, 0, 1})};
        invitation.port = walker.port();
        invitation.fingerprint = robin.certificate().sha256;
        invitation.word = "00000000";
        (*watcher)->join(invitation);
        QVERIFY(walker.hears<watch::Hello>([](const auto&) { return true; }));
        walker.say(watch::Welcome{"Robin Example"});

        const Begun one("ONE");
        const Begun other("OTHER");
        const auto begin = [&](const Begun& round) {
            walker.say(watch::Round{round.id, 1});
            if (!walker.hears<watch::Have>([&](const auto& have) { return have.round == round.id; }))
                return false;
            walker.say(watch::Logged{round.id, round.first, {}});
            return true;
        };
        const auto wants = [&](const Begun& round) {
            return walker.hears<watch::Want>([&](const auto& want) { return want.sha256 == round.sha256; });
        };
        const auto give = [&](const Begun& round) {
            walker.say(
                watch::Piece{round.sha256, 0, static_cast<std::int64_t>(round.text.size()), round.text});
        };
        QVERIFY(begin(one));
        QVERIFY(wants(one)); // and isn't given it until the other round has begun
        QVERIFY(begin(other));
        QTest::qWait(100); // the event is taken in
        if (isGone)
            walker.say(watch::Gone{one.sha256});
        else
            give(one);
        QVERIFY(wants(other));
        give(other);
        QVERIFY(QTest::qWaitFor([&] { return !logged.empty(); }, 5000));
        QCOMPARE(logged, other.id);
    }
};

QTEST_GUILESS_MAIN(LinkRoundsTest)
#include "tst_link_rounds.moc"
