// Whoever isn't welcome at a walk that is served, or breaks the protocol's rules (core/watch/WATCH.md): each
// is refused and the refusal is on the walker's stderr; the round, and the one who may watch it, never
// notice.
#include "base/files.hpp"
#include "link/tls.hpp"
#include "program.hpp"
#include "watch/frames.hpp"
#include "watch/invitation.hpp"

#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QSignalSpy>
#include <QSslSocket>
#include <QTcpServer>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QWebSocket>

using namespace ambit;

namespace {

/// A client of ours that keeps no rules.
class Client : public QObject {
public:
    explicit Client(const QSslConfiguration& tls) {
        socket.setSslConfiguration(tls);
        connect(&socket, &QWebSocket::textMessageReceived, this,
                [this](const QString& text) { heard.push_back(text.toUtf8()); });
    }
    bool open(quint16 port) {
        QSignalSpy connected(&socket, &QWebSocket::connected);
        socket.open(QUrl(QStringLiteral("wss://127.0.0.1:%1/").arg(port)));
        return connected.wait(5000);
    }
    void say(const watch::Frame& frame) { socket.sendTextMessage(QString::fromStdString(toText(frame))); }
    [[nodiscard]] bool isEnded(int ms = 10000) {
        return QTest::qWaitFor([this] { return socket.state() == QAbstractSocket::UnconnectedState; }, ms);
    }
    [[nodiscard]] QByteArray last() const { return heard.empty() ? QByteArray() : heard.back(); }
    [[nodiscard]] bool hasHeard(const char* kind) const {
        const QByteArray wanted = QByteArray("\"kind\":\"") + kind + '"';
        return std::any_of(heard.begin(), heard.end(),
                           [&](const QByteArray& one) { return one.contains(wanted); });
    }

    QWebSocket socket;
    std::vector<QByteArray> heard;
};

QSslConfiguration tlsOf(const record::Signer& who) {
    return link::tlsFor(who, Instant{QDateTime::currentMSecsSinceEpoch()}).value();
}

} // namespace

class LinkHostileTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() {
        QVERIFY(folder.isValid());
        for (const char* name : {"Robin Example", "Sam Fictive", "Nobody Invented"}) {
            const Ran made = runAmbit({"key", "new", path(name), "--name", name});
            QVERIFY2(made.code == 0, made.err.constData());
        }
        friendly = unlocked("Sam Fictive");
        stranger = unlocked("Nobody Invented");
        qputenv("AMBIT_PASSPHRASE", "a test passphrase");

        walker.setStandardErrorFile(path("walker.err"));
        walker.setStandardOutputFile(path("walker.log"));
        walker.start(QStringLiteral(AMBIT_PROGRAM), {"round",
                                                     "--airframe",
                                                     demo("helicopter/airframe.json"),
                                                     "--script",
                                                     demo("helicopter/round.jsonl"),
                                                     "--key",
                                                     path("Robin Example"),
                                                     "--out",
                                                     path("walked"),
                                                     "--json",
                                                     "--serve",
                                                     "--listen",
                                                     "127.0.0.1",
                                                     "--shown",
                                                     "127.0.0.1",
                                                     "--port",
                                                     "0",
                                                     "--invitation",
                                                     path("code"),
                                                     "--await",
                                                     "1",
                                                     "--pace",
                                                     "150",
                                                     "--linger",
                                                     "120"});
        QVERIFY(QTest::qWaitFor([this] { return QFile::exists(path("code")); }, 30000));
        const auto text = readFile(path("code").toStdString());
        invitation = watch::readInvitation(QString::fromStdString(*text).trimmed().toStdString()).value();
    }

    /// TLS 1.3 and nothing else, as OpenSSL's own client sees it (openssl s_client, RFC 8446).
    void tls13Only() {
        const auto ask = [&](const char* version) {
            QProcess client;
            client.start("openssl", {"s_client", "-connect",
                                     QStringLiteral("127.0.0.1:%1").arg(invitation.port), version});
            client.closeWriteChannel();
            client.waitForFinished(20000);
            return client.readAllStandardOutput();
        };
        QVERIFY(ask("-tls1_3").contains("New, TLSv1.3"));
        for (const char* older : {"-tls1_2", "-tls1_1", "-tls1"})
            QVERIFY2(!ask(older).contains("Verification error: self-signed") || ask(older).contains("(NONE)"),
                     older);
        QVERIFY(ask("-tls1_2").contains("no peer certificate available"));
    }

    void noCertificate() {
        QSslConfiguration none = QSslConfiguration::defaultConfiguration();
        none.setPeerVerifyMode(QSslSocket::VerifyNone);
        Client client(none);
        QVERIFY(!client.open(invitation.port));
        QVERIFY(isLogged("showed no person's certificate"));
    }

    /// A connection's own certificate beside somebody's whose key hasn't vouched for it.
    void anothersCertificate() {
        QSslConfiguration stolen = tlsOf(*stranger);
        QList<QSslCertificate> chain = stolen.localCertificateChain();
        chain[1] = QSslCertificate(QByteArray::fromStdString(friendly->certificate().der), QSsl::Der);
        stolen.setLocalCertificateChain(chain);
        Client client(stolen);
        QVERIFY(!client.open(invitation.port));
        QVERIFY(isLogged("is not vouched for by Sam Fictive"));
    }

    void wrongWord() {
        Client client(tlsOf(*stranger));
        QVERIFY(client.open(invitation.port));
        QElapsedTimer since;
        since.start();
        client.say(watch::Hello{"Nobody Invented", "00000000"});
        QVERIFY(client.isEnded());
        QVERIFY2(since.elapsed() >= 1000, "the answer to a wrong word waits");
        QVERIFY(client.hasHeard("bye"));
        QVERIFY(!client.hasHeard("welcome"));
        QVERIFY(isLogged("Nobody Invented"));
    }

    void noWord() {
        Client client(tlsOf(*stranger));
        QVERIFY(client.open(invitation.port));
        client.say(watch::Hello{"Nobody Invented", ""});
        QVERIFY(client.isEnded());
        QVERIFY(client.hasHeard("bye") && !client.hasHeard("welcome"));
    }

    /// The good one comes in: from here on the walk is under way.
    void theInvitedOne() {
        watcher.setStandardErrorFile(path("watcher.err"));
        watcher.setStandardOutputFile(path("watcher.log"));
        watcher.start(QStringLiteral(AMBIT_PROGRAM),
                      {"watch", QString::fromStdString(qrText(invitation).value()), "--key",
                       path("Sam Fictive"), "--data", path("watched")});
        QVERIFY(QTest::qWaitFor([this] { return contents("watcher.log").count('\n') > 2; }, 30000));
    }

    void usedWord() {
        Client client(tlsOf(*stranger));
        QVERIFY(client.open(invitation.port));
        client.say(watch::Hello{"Nobody Invented", invitation.word});
        QVERIFY(client.isEnded(70000));
        QVERIFY(client.hasHeard("bye") && !client.hasHeard("welcome"));
    }

    void manyGuesses() {
        const QSslConfiguration tls = tlsOf(*stranger);
        for (int i = 0; i < 60; ++i) {
            Client client(tls);
            QVERIFY(client.open(invitation.port));
            client.say(
                watch::Hello{"Nobody Invented", QString("%1").arg(i, 8, 10, QChar('0')).toStdString()});
            QVERIFY(client.isEnded(70000));
            QVERIFY(!client.hasHeard("welcome"));
        }
    }

    /// Whatever comes before a welcome, and isn't a hello.
    void saysWalkersEvents_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("event") << QByteArray(
            R"({"event":{},"kind":"event","round":"00000000000000000000000000000000"})");
        QTest::newRow("round") << QByteArray(
            R"({"events":1,"kind":"round","round":"00000000000000000000000000000000"})");
        QTest::newRow("not JSON") << QByteArray("hello");
        QTest::newRow("not canonical") << QByteArray(R"({ "kind":"hello","name":"N","version":1})");
        QTest::newRow("later version") << QByteArray(R"({"kind":"hello","name":"N","version":2})");
        QTest::newRow("deep") << QByteArray(1000, '[');
        QTest::newRow("empty") << QByteArray("{}");
    }
    void saysWalkersEvents() {
        QFETCH(QByteArray, text);
        Client client(tlsOf(*stranger));
        QVERIFY(client.open(invitation.port));
        client.socket.sendTextMessage(QString::fromUtf8(text));
        QVERIFY(client.isEnded());
        QVERIFY(client.hasHeard("bye") && !client.hasHeard("welcome"));
    }

    void oversizedFrame() {
        Client client(tlsOf(*stranger));
        QVERIFY(client.open(invitation.port));
        client.socket.sendTextMessage(QString(300'000, QChar('a')));
        QVERIFY(client.isEnded());
        QVERIFY(!client.hasHeard("welcome"));
    }

    void bytesForText() {
        Client client(tlsOf(*stranger));
        QVERIFY(client.open(invitation.port));
        client.socket.sendBinaryMessage("hello");
        QVERIFY(client.isEnded());
    }

    /// A message that never ends, a byte at a time, and one that stops half way. Neither may stay for long.
    void slowAndHalfFrames() {
        const auto upgraded = [&](QSslSocket& socket) {
            QSslConfiguration tls = tlsOf(*stranger);
            socket.setSslConfiguration(tls);
            socket.setPeerVerifyMode(QSslSocket::QueryPeer);
            socket.ignoreSslErrors();
            socket.connectToHostEncrypted("127.0.0.1", invitation.port);
            if (!socket.waitForEncrypted(5000)) return false;
            socket.write("GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n"
                         "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\nSec-WebSocket-Version: 13\r\n\r\n");
            return QTest::qWaitFor([&] { return socket.readAll().contains("101"); }, 5000);
        };
        QSslSocket half, slow;
        QVERIFY(upgraded(half));
        QVERIFY(upgraded(slow));
        // RFC 6455, 5.2: final text frame, masked, 126: sixteen bits of length follow; then the mask.
        const QByteArray head("\x81\xFE\x40\x00\x00\x00\x00\x00", 8);
        half.write(head + "{\"kind\":");
        slow.write(head);
        QTimer drip;
        connect(&drip, &QTimer::timeout, this, [&] { slow.write("x"); });
        drip.start(200);
        QVERIFY(QTest::qWaitFor(
            [&] {
                return half.state() == QAbstractSocket::UnconnectedState &&
                       slow.state() == QAbstractSocket::UnconnectedState;
            },
            40000));
    }

    /// What the good one's device once sent, sent again: TLS takes no byte of it.
    void recordedSession() {
        QTcpServer between;
        QVERIFY(between.listen(QHostAddress::LocalHost));
        QByteArray recorded;
        QTcpSocket onward;
        connect(&between, &QTcpServer::newConnection, this, [&] {
            QTcpSocket* from = between.nextPendingConnection();
            onward.connectToHost("127.0.0.1", invitation.port);
            connect(from, &QTcpSocket::readyRead, this, [&, from] {
                const QByteArray bytes = from->readAll();
                recorded += bytes;
                onward.write(bytes);
            });
            connect(&onward, &QTcpSocket::readyRead, from, [&, from] { from->write(onward.readAll()); });
        });
        Client client(tlsOf(*friendly));
        QVERIFY(client.open(between.serverPort()));
        client.say(watch::Hello{"Sam Fictive", ""});
        QVERIFY(QTest::qWaitFor([&] { return client.hasHeard("welcome"); }, 10000));
        client.socket.abort();
        onward.abort();
        QVERIFY(recorded.size() > 1000);

        const auto before = contents("walker.err").count("No encrypted connection came about");
        QTcpSocket again;
        again.connectToHost("127.0.0.1", invitation.port);
        QVERIFY(again.waitForConnected(5000));
        again.write(recorded);
        QVERIFY(QTest::qWaitFor([&] { return again.state() == QAbstractSocket::UnconnectedState; }, 40000));
        QVERIFY(QTest::qWaitFor(
            [&] { return contents("walker.err").count("No encrypted connection came about") > before; },
            10000));
    }

    /// One who is welcome, but breaks the rules from then on: gone, and nothing of it in the log.
    void welcomeAndThen() {
        for (
            const char* text :
            {R"({"event":{"at":"2026-06-20T05:30:00.000Z","kind":"note","seq":2,"words":"forged"},"kind":"event","round":"00000000000000000000000000000000"})",
             R"({"kind":"have","room":1,"round":"00000000000000000000000000000000","upTo":0})",
             R"({"kind":"sealed","files":[],"recordSha256":"","round":""})", "x"}) {
            Client client(tlsOf(*friendly));
            QVERIFY(client.open(invitation.port));
            client.say(watch::Hello{"Sam Fictive", ""});
            QVERIFY(QTest::qWaitFor([&] { return client.hasHeard("welcome"); }, 10000));
            client.socket.sendTextMessage(QString::fromUtf8(text));
            QVERIFY(client.isEnded());
            QVERIFY2(client.hasHeard("bye"), text);
        }
    }

    void theRoundIsUnharmed() {
        QVERIFY(walker.waitForFinished(180000));
        QVERIFY2(walker.exitCode() == 0, contents("walker.err").constData());
        QVERIFY(watcher.waitForFinished(30000));
        QByteArray walked = contents("walker.log");
        walked.truncate(walked.lastIndexOf("{\"record\""));
        const QByteArray followed = contents("watcher.log");
        QVERIFY(walked.count('\n') > 100);
        QVERIFY2(followed.startsWith(walked) && followed.count('\n') == walked.count('\n') + 1,
                 contents("watcher.err").constData());
        QVERIFY(!walked.contains("forged"));
        const Ran verified = runAmbit({"archive", "verify", path("walked/archive.sqlite")});
        QCOMPARE(verified.code, 0);
    }

private:
    [[nodiscard]] QString path(const char* name) const { return folder.filePath(QLatin1String(name)); }
    [[nodiscard]] QByteArray contents(const char* name) const {
        QFile file(path(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    [[nodiscard]] bool isLogged(const char* what) const {
        return QTest::qWaitFor([&] { return contents("walker.err").contains(what); }, 5000);
    }
    [[nodiscard]] std::optional<record::Signer> unlocked(const char* name) const {
        return record::unlock(readFile(path(name).toStdString()).value(), "a test passphrase").value();
    }

    QTemporaryDir folder;
    QProcess walker, watcher;
    watch::Invitation invitation;
    std::optional<record::Signer> friendly, stranger;
};

int main(int count, char** arguments) {
    QCoreApplication application(count, arguments);
    LinkHostileTest test;
    return QTest::qExec(&test, count, arguments);
}
#include "tst_link_hostile.moc"
