// Both sides of a link in one process, and between them a relay that cuts wherever a test wants.
#include "airframe/read.hpp"
#include "archive/archive.hpp"
#include "base/canonical.hpp"
#include "base/files.hpp"
#include "link/walker_link.hpp"
#include "link/watcher_link.hpp"
#include "script/player.hpp"

#include <QSignalSpy>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTemporaryDir>
#include <QTest>
#include <nlohmann/json.hpp>

using namespace ambit;

namespace {

/// Passes bytes on, and cuts each connection after so many from the walker; 0: never.
class Relay : public QTcpServer {
public:
    Relay(quint16 to, qint64 bytes) : most(bytes) {
        listen(QHostAddress::LocalHost);
        connect(this, &QTcpServer::newConnection, this, [this, to] {
            QTcpSocket* near = nextPendingConnection();
            auto* far = new QTcpSocket(near);
            far->connectToHost(QHostAddress::LocalHost, to);
            ++connections;
            auto passed = std::make_shared<qint64>(0);
            connect(near, &QTcpSocket::readyRead, far, [near, far] { far->write(near->readAll()); });
            connect(far, &QTcpSocket::readyRead, near, [this, near, far, passed] {
                const QByteArray part = far->readAll();
                near->write(part);
                *passed += part.size();
                if (most == 0 || *passed < most) return;
                near->flush();
                far->abort();
                near->abort();
            });
            connect(near, &QTcpSocket::disconnected, near, &QObject::deleteLater);
        });
    }
    int connections = 0;
    qint64 most;
};

record::Signer newSigner(const char* name) {
    const Instant at{QDateTime::currentMSecsSinceEpoch()};
    return record::unlock(record::newKeyFile(name, "a test passphrase", at).value(), "a test passphrase")
        .value();
}

} // namespace

class LinkTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() {
        QVERIFY(folder.isValid());
        const std::string machine = AMBIT_ROOT "/demo-aircraft/helicopter/airframe.json";
        text = readFile(machine).value();
        const auto airframe = airframe::read(text);
        QVERIFY(airframe);
        auto archive = archive::Archive::open(path("walked.sqlite"));
        QVERIFY(archive);
        const auto script = script::readScriptFrom(AMBIT_ROOT "/demo-aircraft/helicopter/round.jsonl");
        QVERIFY(script);
        const auto round = script::walkScript(*archive, *airframe, text, *script, {});
        QVERIFY(round);
        roundId = round->state().id;
        for (const round::Event& event : round->events())
            log.push_back(canonicalJson(toJson(event)));
        QVERIFY(log.size() > 100);
    }

    /// The airframe's description is longer than what passes before a cut, and so is the log: both come in
    /// the end, from where they stood.
    void cutAgainAndAgain_data() {
        QTest::addColumn<qint64>("bytes");
        for (const qint64 bytes : {qint64{0}, qint64{5'000}, qint64{12'000}, qint64{15'000}})
            QTest::addRow("%lld", bytes) << bytes;
    }
    void cutAgainAndAgain() {
        QFETCH(qint64, bytes);
        const auto walker = openWalker("watchers.json");
        walker->goOn(roundId);
        Relay relay(walker->port(), 0);
        auto invitation = walker->invite().value();
        invitation.addresses = {watch::Address::v4({127, 0, 0, 1})};
        invitation.port = relay.serverPort();
        const auto name = QStringLiteral("watched-%1.sqlite").arg(bytes);
        const auto watcher = link::WatcherLink::open(
            {path(qPrintable(name)), path(qPrintable(name + ".json"))}, newSigner("Sam Fictive"), now());
        QVERIFY(watcher);
        QSignalSpy in(watcher->get(), &link::WatcherLink::stateChanged);
        QSignalSpy kept(walker.get(), &link::WalkerLink::watchingChanged);
        // The first meeting uses the word up; from then on it is cut.
        relay.most = bytes;
        if (bytes > 0 && bytes < 10'000) relay.most = 10'000; // a handshake must fit
        (*watcher)->join(invitation);
        const auto watched = archive::Archive::open(path(qPrintable(name)));
        QVERIFY(watched);
        QVERIFY(QTest::qWaitFor([&] { return logOf(*watched).size() == log.size(); }, 60000));
        QCOMPARE(logOf(*watched), log);
        // The walker knows it, too, once nothing more comes.
        QVERIFY(QTest::qWaitFor(
            [&] {
                const auto all = kept.isEmpty() ? std::vector<watch::Watcher>()
                                                : kept.back().at(0).value<std::vector<watch::Watcher>>();
                return all.size() == 1 && all.front().kept == static_cast<std::int64_t>(log.size());
            },
            20000));
        QVERIFY(bytes == 0 ? relay.connections == 1 : relay.connections > 1);
        for (const auto& change : in)
            QVERIFY(change.at(1).value<watch::LinkState>() != watch::LinkState::over);
    }

    /// Who is known is found again where the network says they are now.
    void knownElsewhere() {
        const auto sam = newSigner("Sam Fictive");
        const auto walkersFile = path("found.json");
        {
            const auto walker = openWalker("found-watchers.json");
            walker->goOn(roundId);
            auto invitation = walker->invite().value();
            invitation.addresses = {watch::Address::v4({127, 0, 0, 1})};
            const auto watcher = link::WatcherLink::open({path("found.sqlite"), walkersFile}, sam, now());
            QVERIFY(watcher);
            QSignalSpy known(watcher->get(), &link::WatcherLink::walkersChanged);
            (*watcher)->join(invitation);
            QVERIFY(QTest::qWaitFor([&] { return !known.empty(); }, 20000));
        }
        const auto walkers = link::readWalkers(walkersFile).value();
        QCOMPARE(walkers.size(), std::size_t{1});
        QCOMPARE(walkers.front().who.name, std::string("Robin Example"));
        // Without a word, at the port where it is now.
        const auto walker = openWalker("found-watchers.json");
        walker->goOn(roundId);
        watch::Walker moved = walkers.front();
        moved.port = walker->port();
        const auto watcher = link::WatcherLink::open({path("again.sqlite"), walkersFile}, sam, now());
        QVERIFY(watcher);
        QSignalSpy logged(watcher->get(), &link::WatcherLink::logged);
        (*watcher)->join(moved);
        QVERIFY(QTest::qWaitFor([&] { return !logged.empty(); }, 20000));
        // Taken back, it is a stranger.
        QSignalSpy states(watcher->get(), &link::WatcherLink::stateChanged);
        walker->takeBack(sam.certificate().sha256);
        QVERIFY(QTest::qWaitFor(
            [&] {
                return !states.empty() &&
                       states.back().at(1).value<watch::LinkState>() == watch::LinkState::over;
            },
            20000));
        QVERIFY(link::readWatchers(path("found-watchers.json")).value().empty());
    }

    void peersFilesAreReadOrRefused() {
        const std::filesystem::path file = path("peers.json");
        QVERIFY(link::readWatchers(file).value().empty());
        const std::vector<watch::Peer> peers{{std::string(64, 'a'), "Sam Fictive"},
                                             {std::string(64, 'b'), "Jo “J” Demo"}};
        QVERIFY(link::writeWatchers(file, peers));
        QCOMPARE(link::readWatchers(file).value(), peers);
        QVERIFY(!link::readWalkers(file)); // the other list
        const std::vector<watch::Walker> walkers{
            {peers[0], {watch::Address::v4({192, 168, 1, 7}), watch::Address::v4({10, 0, 0, 1})}, 4711}};
        QVERIFY(link::writeWalkers(file, walkers));
        QCOMPARE(link::readWalkers(file).value(), walkers);
        for (const char* bad : {"", "{}", R"({"known":1})", R"({"known":[{"name":"x"}]})"}) {
            QVERIFY(writeFile(file, bad));
            const auto read = link::readWatchers(file);
            QVERIFY2(!read && !read.error().remedy.empty(), bad);
        }
    }

private:
    [[nodiscard]] std::string path(const char* name) const {
        return folder.filePath(QLatin1String(name)).toStdString();
    }
    static Instant now() { return {QDateTime::currentMSecsSinceEpoch()}; }
    [[nodiscard]] std::unique_ptr<link::WalkerLink> openWalker(const char* watchers) {
        link::WalkerSettings settings;
        settings.archive = path("walked.sqlite");
        settings.watchers = path(watchers);
        settings.address = QHostAddress(QHostAddress::LocalHost);
        settings.port = 0;
        return std::move(link::WalkerLink::open(settings, me, now()).value());
    }
    [[nodiscard]] std::vector<std::string> logOf(const archive::Archive& archive) const {
        std::vector<std::string> list;
        for (std::int64_t seq = 1;; ++seq) {
            const auto one = archive.eventText(roundId, seq);
            if (!one || one->empty()) return list;
            list.push_back(*one);
        }
    }

    QTemporaryDir folder;
    std::string text, roundId;
    std::vector<std::string> log;
    record::Signer me = newSigner("Robin Example");
};

QTEST_GUILESS_MAIN(LinkTest)
#include "tst_link.moc"
