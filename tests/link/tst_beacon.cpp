// Announcements: heard, ignored where they aren't any, and the way back to a walker that has moved. On a
// network of this test's own where the machine allows that, else on the one that is there.
#include "base/canonical.hpp"
#include "fleet/keys.hpp"
#include "link/beacon.hpp"
#include "link/walker_link.hpp"
#include "link/watcher_link.hpp"
#include "own_network.hpp"
#include "watch/invitation.hpp"

#include <QElapsedTimer>
#include <QNetworkInterface>
#include <QSignalSpy>
#include <QTcpServer>
#include <QTemporaryDir>
#include <QTest>
#include <nlohmann/json.hpp>
#include <unistd.h>

using namespace ambit;

namespace {

bool isAlone = false;
const std::string someone(64, 'a');

/// An address of this machine's from which broadcasts can be sent.
std::optional<watch::Address> broadcasting() {
    for (const QNetworkInterface& card : QNetworkInterface::allInterfaces())
        for (const QNetworkAddressEntry& entry : card.addressEntries())
            if (!entry.broadcast().isNull()) return link::addressOf(entry.ip());
    return std::nullopt;
}

QByteArray announcement(const std::string& certificate, const Json& port, const Json& version = 1) {
    return QByteArray::fromStdString(
        canonicalJson(Json{{"ambit", version}, {"certificateSha256", certificate}, {"port", port}}));
}

/// What was heard of others doesn't count, should this not be a network of the test's own.
std::vector<std::pair<watch::Address, int>> heardOf(const QSignalSpy& spy, const std::string& certificate) {
    std::vector<std::pair<watch::Address, int>> list;
    for (const auto& one : spy)
        if (one.at(0).value<std::string>() == certificate)
            list.emplace_back(one.at(1).value<watch::Address>(), one.at(2).value<std::uint16_t>());
    return list;
}

record::Signer signer(const char* name) {
    return fleet::derivedKey(7, name, name, {1'700'000'000'000}).value();
}

} // namespace

class BeaconTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() {
        const auto address = broadcasting();
        if (!address) QSKIP("No network of its own is allowed here, and no other one that broadcasts.");
        here = *address;
        QVERIFY(folder.isValid());
    }

    /// By every program that listens, two on one machine, too; at once, and again and again.
    void heard() {
        link::BeaconEar ear, other;
        QSignalSpy spy(&ear, &link::BeaconEar::heard), others(&other, &link::BeaconEar::heard);
        const link::Beacon beacon(someone, 4711);
        QVERIFY(QTest::qWaitFor([&] { return !heardOf(spy, someone).empty(); }, 1000));
        QVERIFY(QTest::qWaitFor([&] { return !heardOf(others, someone).empty(); }, 1000));
        QVERIFY(heardOf(spy, someone).front() == std::pair(here, 4711));
        link::BeaconEar late;
        QSignalSpy lately(&late, &link::BeaconEar::heard);
        QVERIFY(QTest::qWaitFor([&] { return !heardOf(lately, someone).empty(); }, 5000));
    }

    void ignored_data() {
        QTest::addColumn<QByteArray>("datagram");
        const QByteArray good = announcement(someone, 4711);
        QTest::newRow("empty") << QByteArray();
        QTest::newRow("garbage") << QByteArray("\x00\xff\x7f{\"ambit\":", 12);
        QTest::newRow("no object") << QByteArray("4711");
        QTest::newRow("cut off") << good.chopped(1);
        QTest::newRow("and more") << good + 'x';
        QTest::newRow("blanks behind it") << good + QByteArray(400, ' ');
        QTest::newRow("too long: blanks") << good + QByteArray(1000, ' ');
        QTest::newRow("too long: a wall") << QByteArray(60000, '[');
        QTest::newRow("another version") << announcement(someone, 4711, 2);
        QTest::newRow("a version in words") << announcement(someone, 4711, "1");
        QTest::newRow("a hash too short") << announcement(someone.substr(1), 4711);
        QTest::newRow("a hash too long") << announcement(someone + 'a', 4711);
        QTest::newRow("no hash") << announcement(std::string(64, 'g'), 4711);
        QTest::newRow("capitals") << announcement(std::string(64, 'A'), 4711);
        QTest::newRow("port 0") << announcement(someone, 0);
        QTest::newRow("port 65536") << announcement(someone, 65536);
        QTest::newRow("port 2^32 + 1") << announcement(someone, std::int64_t{4294967297});
        QTest::newRow("a port in words") << announcement(someone, "4711");
        QTest::newRow("a field more") << good.chopped(1) + ",\"x\":1}";
        QTest::newRow("a field twice") << good.chopped(1) + ",\"port\":4711}";
    }
    /// And the next good one is heard.
    void ignored() {
        QFETCH(QByteArray, datagram);
        link::BeaconEar ear;
        QSignalSpy spy(&ear, &link::BeaconEar::heard);
        QUdpSocket mouth;
        const std::string known(64, 'b');
        for (const QByteArray& one : {datagram, datagram, announcement(known, 1)})
            QCOMPARE(mouth.writeDatagram(one, link::hostOf(here), watch::usualPort), one.size());
        QVERIFY(QTest::qWaitFor([&] { return !heardOf(spy, known).empty(); }, 2000));
        for (const auto& one : spy)
            QVERIFY2(!isAlone || one.at(0).value<std::string>() == known, "It was taken for one.");
        QVERIFY(heardOf(spy, someone).empty());
    }

    void moved_data() {
        QTest::addColumn<bool>("isSilent");
        QTest::newRow("another port: refused where it was") << false;
        QTest::newRow("another address: nothing answers where it was") << true;
    }
    /// Who is known is found where they say they are, and remembered there; whoever else speaks is not
    /// believed.
    void moved() {
        QFETCH(bool, isSilent);
        if (isSilent && !isAlone) QSKIP("Needs a network of its own.");
        const auto robin = signer("Robin Example"), sam = signer("Sam Fictive");
        const auto at = [&](const char* name) {
            return folder.filePath(QLatin1String(name) + (isSilent ? "-2" : "-1")).toStdString();
        };
        watch::Walker known{{robin.certificate().sha256, "Robin Example"}, {here}, freePort()};
        if (isSilent) {
            QVERIFY(knowNeighbour("10.77.0.9"));
            known.addresses = {watch::Address::v4({10, 77, 0, 9})};
        }
        const auto watcher = link::WatcherLink::open({at("watched.sqlite"), at("walkers.json")}, sam, now());
        QVERIFY(watcher);
        QSignalSpy states(watcher->get(), &link::WatcherLink::stateChanged);
        QSignalSpy walkers(watcher->get(), &link::WatcherLink::walkersChanged);
        const auto isIn = [&] {
            return !states.empty() && states.back().at(1).value<watch::LinkState>() == watch::LinkState::in;
        };
        (*watcher)->join(known);
        QUdpSocket mouth;
        const link::Beacon somebody(signer("Jo Demo").certificate().sha256, freePort());
        mouth.writeDatagram(announcement(robin.certificate().sha256, freePort()), link::hostOf(here),
                            watch::usualPort); // a lie
        QVERIFY(!QTest::qWaitFor(isIn, 1000));

        QVERIFY(link::writeWatchers(at("watchers.json"), {{sam.certificate().sha256, "Sam Fictive"}}));
        link::WalkerSettings settings;
        settings.archive = at("walked.sqlite");
        settings.watchers = at("watchers.json");
        settings.port = 0;
        const auto walker = link::WalkerLink::open(settings, robin, now());
        QVERIFY(walker);
        QElapsedTimer since;
        since.start();
        QVERIFY(QTest::qWaitFor(isIn, 12000));
        qInfo("in after %lld ms", since.elapsed());
        const auto list = walkers.back().at(0).value<std::vector<watch::Walker>>();
        QCOMPARE(list.size(), std::size_t{1});
        QVERIFY(list.front().addresses.front() == here);
        QCOMPARE(list.front().port, (*walker)->port());
    }

private:
    static Instant now() { return {QDateTime::currentMSecsSinceEpoch()}; }
    /// Nobody listens there any more.
    static std::uint16_t freePort() {
        QTcpServer server;
        return server.listen() ? server.serverPort() : 0;
    }

    watch::Address here;
    QTemporaryDir folder;
};

int main(int count, char** arguments) {
    // Before Qt starts a thread.
    if (access("/dev/net/tun", R_OK | W_OK) == 0 && moveOut())
        isAlone = newCard("10.77.0.1", Card::ethernet) >= 0;
    const QCoreApplication application(count, arguments);
    BeaconTest test;
    return QTest::qExec(&test, count, arguments);
}
#include "tst_beacon.moc"
