// kill -9 at 300 random moments of a scripted round: what was acknowledged is there, and the round finishes
// to the same record.
#include "airframe/read.hpp"
#include "archive/archive.hpp"
#include "base/canonical.hpp"
#include "program.hpp"
#include "record/record.hpp"

#include <QDir>
#include <QFile>
#include <QRandomGenerator>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <nlohmann/json.hpp>

using namespace ambit;

namespace {

/// A round on the tests' small machine, so that 300 runs and their second halves take little time.
const QByteArray walked =
    R"({"do": "open", "aircraft": {"registration": "OX-KIL", "serial": "9"}, "walk": "daily",
 "who": {"name": "Robin Example", "role": "pilot", "certificate": ""}, "counters": {}, "at": "2026-06-20T07:30:00+02:00"}
{"do": "follow", "until": "oil"}
{"do": "finding", "point": "oil", "words": "Low.", "class": "grounds", "value": "3.5", "photos": ["oil.jpg"]}
{"do": "pause"}
{"do": "resume"}
{"do": "zone", "zone": "nose"}
{"do": "follow", "until": "last-look"}
{"do": "reopen", "point": "arc-clear", "why": "Somebody came."}
{"do": "follow"}
{"do": "conclude", "result": "not fit", "reasons": "Oil."}
)";

} // namespace

class TestKill : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        QVERIFY(folder.isValid());
        description = airframe::readFrom(machine().toStdString()).value();
        QByteArray text = walked;
        text.replace(",\n ", ", ");
        write("unsigned.jsonl", text);
        write("signed.jsonl", text + "{\"do\": \"sign\"}\n");
        write("oil.jpg", "\xFF\xD8\xFF not looked into");
        const Ran ran = runAmbit(command("unsigned.jsonl", "whole"));
        QVERIFY2(ran.code == 0, ran.err.constData());
        whole = logIn("whole");
        QVERIFY(whole.size() > 30);
        identity = identityIn("whole");
        QVERIFY(!identity.empty());
    }

    void everyAcknowledgedEventSurvives() {
        const quint32 seed = QRandomGenerator::global()->generate();
        qInfo("seed %u", seed);
        QRandomGenerator random(seed);
        const auto events = static_cast<int>(whole.size());
        int cutShort = 0;
        for (int run = 0; run < 300; ++run) {
            const QString out = QString("run-%1").arg(run);
            const auto acknowledged =
                killedRun(command("unsigned.jsonl", out), random.bounded(events), random.bounded(2000));
            const auto kept = logIn(out);
            QVERIFY2(acknowledged.size() <= kept.size(), "an acknowledged event is missing");
            QCOMPARE(acknowledged, kept.mid(0, acknowledged.size()));
            QCOMPARE(kept, whole.mid(0, kept.size()));
            cutShort += kept.size() < whole.size() ? 1 : 0;

            const Ran finished = runAmbit(command("unsigned.jsonl", out));
            QVERIFY2(finished.code == 0, finished.err.constData());
            QCOMPARE(logIn(out), whole);
            QCOMPARE(identityIn(out), identity);
            QVERIFY(QDir(folder.filePath(out)).removeRecursively());
        }
        qInfo("%d of 300 runs were cut short", cutShort);
        QVERIFY2(cutShort > 200, "the kills came too late to test anything");
    }

    void whileSigningToo() {
        write("oil.jpg", photo());
        QCOMPARE(runAmbit({"key", "new", folder.filePath("key.pem"), "--name", "Robin Example"}).code, 0);
        QRandomGenerator random(7);
        std::string record;
        for (int run = 0; run < 12; ++run) {
            const QString out = QString("signed-%1").arg(run);
            const QStringList sign = command("signed.jsonl", out) << "--key" << folder.filePath("key.pem");
            killedRun(sign, static_cast<int>(whole.size()), random.bounded(150'000));
            const Ran finished = runAmbit(sign);
            QVERIFY2(finished.code == 0, finished.err.constData());
            QFile file(folder.filePath(out + "/record.json"));
            QVERIFY(file.open(QFile::ReadOnly));
            const auto verified = record::verifyRecord(file.readAll().toStdString());
            QVERIFY2(verified, verified ? "" : toText(verified.error()).c_str());
            if (record.empty()) record = verified->sha256;
            QCOMPARE(verified->sha256, record);
            QCOMPARE(logIn(out).size(), whole.size() + 1);
        }
    }

private:
    static QString machine() { return QStringLiteral(AMBIT_ROOT "/tests/airframe/good.json"); }
    static QByteArray photo() {
        QFile file(demo("helicopter/photos/fairing-left-1.jpg"));
        return file.open(QFile::ReadOnly) ? file.readAll() : QByteArray();
    }

    void write(const char* name, const QByteArray& bytes) const {
        QFile file(folder.filePath(name));
        QVERIFY(file.open(QFile::WriteOnly) && file.write(bytes) == bytes.size());
    }

    QStringList command(const char* script, const QString& out) const {
        return {"round",  "--airframe", machine(),           "--script", folder.filePath(script),
                "--json", "--out",      folder.filePath(out)};
    }

    /// Kills it that long after it acknowledged that many events. Gives the whole lines it printed before it
    /// died.
    static QList<QByteArray> killedRun(const QStringList& arguments, int afterEvents, int microseconds) {
        QProcess process;
        auto environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("AMBIT_PASSPHRASE"), QStringLiteral("a test passphrase"));
        process.setProcessEnvironment(environment);
        process.start(QStringLiteral(AMBIT_PROGRAM), arguments);
        process.waitForStarted();
        QByteArray printed;
        while (printed.count('\n') < afterEvents && process.waitForReadyRead(20'000))
            printed += process.readAllStandardOutput();
        QThread::usleep(static_cast<unsigned long>(microseconds));
        process.kill(); // SIGKILL
        process.waitForFinished();
        printed += process.readAllStandardOutput();
        QList<QByteArray> lines = printed.split('\n');
        lines.removeLast(); // empty, or cut off
        return lines;
    }

    QList<QByteArray> logIn(const QString& out) const {
        QList<QByteArray> lines;
        for (const round::Event& event : eventsIn(out))
            lines << QByteArray::fromStdString(canonicalJson(toJson(event)));
        return lines;
    }

    std::vector<round::Event> eventsIn(const QString& out) const {
        const QString file = folder.filePath(out) + "/archive.sqlite";
        if (!QFile::exists(file)) return {};
        auto archive = archive::Archive::open(file.toStdString());
        if (!archive) qFatal("the archive does not open: %s", toText(archive.error()).c_str());
        const auto rounds = archive->rounds().value();
        return rounds.empty() ? std::vector<round::Event>{} : archive->events(rounds.front().id).value();
    }

    std::string identityIn(const QString& out) const {
        const auto content = record::roundContent(description, eventsIn(out), {});
        return content ? record::identityOf(*content) : std::string();
    }

    QTemporaryDir folder;
    airframe::Airframe description;
    QList<QByteArray> whole;
    std::string identity;
};

QTEST_GUILESS_MAIN(TestKill)
#include "tst_kill.moc"
