// kill -9 at 300 random moments of a scripted round: what was acknowledged is there, and the round finishes
// to the same record.
#include "airframe/read.hpp"
#include "archive/archive.hpp"
#include "base/canonical.hpp"
#include "program.hpp"
#include "record/record.hpp"

#include <QElapsedTimer>
#include <QFile>
#include <QRandomGenerator>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>

using namespace ambit;

class TestKill : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        QVERIFY(folder.isValid());
        description = airframe::readFrom(demo("helicopter/airframe.json").toStdString()).value();
        // Unsigned, so that a run costs no unlocking: the record's content is a function of the log alone.
        QFile demoScript(demo("helicopter/round.jsonl"));
        QVERIFY(demoScript.open(QFile::ReadOnly));
        QByteArray text;
        for (const QByteArray& line : demoScript.readAll().split('\n'))
            if (!line.contains("\"sign\"")) text += line + '\n';
        QFile script(folder.filePath("unsigned.jsonl"));
        QVERIFY(script.open(QFile::WriteOnly));
        script.write(text);
        script.close();
        QFile::link(demo("helicopter/photos"), folder.filePath("photos"));

        QElapsedTimer timer;
        timer.start();
        const Ran ran = runAmbit(command("whole"));
        QVERIFY2(ran.code == 0, ran.err.constData());
        duration = static_cast<int>(timer.nsecsElapsed() / 1000);
        whole = logIn("whole");
        QVERIFY(whole.size() > 100);
        identity = identityIn("whole");
        QVERIFY(!identity.empty());
    }

    void everyAcknowledgedEventSurvives() {
        const quint32 seed = QRandomGenerator::global()->generate();
        qInfo("seed %u, a whole run takes %d us", seed, duration);
        QRandomGenerator random(seed);
        int cutShort = 0;
        for (int run = 0; run < 300; ++run) {
            const QString out = QString("run-%1").arg(run);
            const QList<QByteArray> acknowledged = killedRun(out, random.bounded(duration + duration / 10));
            const QList<QByteArray> kept = logIn(out);
            QVERIFY2(acknowledged.size() <= kept.size(), "an acknowledged event is missing");
            for (qsizetype i = 0; i < acknowledged.size(); ++i)
                QCOMPARE(kept[i], acknowledged[i]);
            QCOMPARE(kept, whole.mid(0, kept.size()));
            cutShort += kept.size() < whole.size() ? 1 : 0;

            const Ran finished = runAmbit(command(out));
            QVERIFY2(finished.code == 0, finished.err.constData());
            QCOMPARE(logIn(out), whole);
            QCOMPARE(identityIn(out), identity);
            QVERIFY(QDir(folder.filePath(out)).removeRecursively());
        }
        qInfo("%d of 300 runs were cut short", cutShort);
        QVERIFY2(cutShort > 100, "the kills came too late to test anything");
    }

private:
    QStringList command(const QString& out) const {
        return {"round",
                "--airframe",
                demo("helicopter/airframe.json"),
                "--script",
                folder.filePath("unsigned.jsonl"),
                "--json",
                "--out",
                folder.filePath(out)};
    }

    /// The whole lines it printed before it died.
    QList<QByteArray> killedRun(const QString& out, int afterMicroseconds) const {
        QProcess process;
        process.start(QStringLiteral(AMBIT_PROGRAM), command(out));
        process.waitForStarted();
        QThread::usleep(static_cast<unsigned long>(afterMicroseconds));
        process.kill(); // SIGKILL
        process.waitForFinished();
        QList<QByteArray> lines = process.readAllStandardOutput().split('\n');
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
    int duration = 0; ///< of a whole run, us
};

QTEST_GUILESS_MAIN(TestKill)
#include "tst_kill.moc"
