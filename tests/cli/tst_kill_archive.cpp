// kill -9 of import, merge and backup at random moments: what was acknowledged is there and whole, running it
// again completes it, and then it is as if nothing had happened.
#include "archive/archive.hpp"
#include "archive/verify.hpp"
#include "base/hash.hpp"
#include "program.hpp"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRandomGenerator>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <algorithm>

using namespace ambit;

namespace {

constexpr int cutShortEnough = 4;
constexpr int mostRuns = 60;

/// Started, killed after so many lines and so much time; gives the whole lines it printed.
QList<QByteArray> killed(const QStringList& arguments, int lines, qint64 microseconds) {
    QProcess process;
    process.start(QStringLiteral(AMBIT_PROGRAM), arguments);
    process.waitForStarted();
    QByteArray printed;
    while (printed.count('\n') < lines && process.waitForReadyRead(60'000))
        printed += process.readAllStandardOutput();
    QThread::usleep(static_cast<unsigned long>(microseconds));
    process.kill(); // SIGKILL
    process.waitForFinished();
    printed += process.readAllStandardOutput();
    QList<QByteArray> whole = printed.split('\n');
    whole.removeLast(); // empty, or cut off
    return whole;
}

/// All that an archive holds, in words that differ if anything does.
struct Holds {
    QStringList records; ///< sorted
    QStringList facts;   ///< sorted: signed copies, latest records
    friend bool operator==(const Holds&, const Holds&) = default;
};

Holds holdsOf(const QString& file) {
    const auto archive = archive::Archive::open(file.toStdString());
    if (!archive) qFatal("%s", toText(archive.error()).c_str());
    const auto checked = archive::verify(*archive);
    if (!checked) qFatal("%s", toText(checked.error()).c_str());
    Holds holds;
    for (const auto& one : checked->broken)
        holds.facts << "broken " + QString::fromStdString(one.sha256);
    const auto records = archive->records();
    for (const auto& record : *records) {
        holds.records << QString::fromStdString(record.sha256);
        const auto copies = archive->signedCopies(record.sha256);
        if (!copies) qFatal("%s", toText(copies.error()).c_str());
        for (const std::string& copy : *copies)
            holds.facts << QString::fromStdString(sha256Hex(copy));
    }
    const auto files = archive->files();
    for (const std::string& registration : *files) {
        const auto heads = archive->heads(registration);
        for (const std::string& head : *heads)
            holds.facts << "latest " + QString::fromStdString(head);
    }
    holds.records.sort();
    holds.facts.sort();
    return holds;
}

bool has(const Holds& holds, const QString& record) {
    return std::binary_search(holds.records.begin(), holds.records.end(), record);
}
bool isBroken(const Holds& holds) {
    return std::any_of(holds.facts.begin(), holds.facts.end(),
                       [](const QString& fact) { return fact.startsWith("broken"); });
}

QStringList acknowledged(const QList<QByteArray>& lines) {
    QStringList records;
    for (const QByteArray& line : lines) {
        const QJsonObject one = QJsonDocument::fromJson(line).object();
        if (one["ok"].toBool() && one.contains("record")) records << one["record"].toString();
    }
    return records;
}

} // namespace

class TestKillArchive : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        QVERIFY(folder.isValid());
        const quint32 seed = QRandomGenerator::global()->generate();
        random.seed(seed);
        seedText = "seed " + QByteArray::number(seed);
        const Ran made = runAmbit({"fleet", path("fleet"), "--airframe", demo("aeroplane/airframe.json"),
                                   "--aircraft", "2", "--years", "1", "--records", "800"});
        QVERIFY2(made.code == 0, made.err.constData());
        for (const char* aircraft : {"OX-F0001", "OX-F0002"})
            QCOMPARE(
                runAmbit({"archive", "export", path("fleet"), aircraft, "--out", path(aircraft) + ".zip"})
                    .code,
                0);
        import = {"archive", "import", QString(), path("OX-F0001") + ".zip", path("OX-F0002") + ".zip",
                  "--json"};
        importTime = timed(importInto("imported"));
        imported = holdsOf(path("imported"));
        QVERIFY(imported.records.size() >= 790); // the fleet lets a few go
        QCOMPARE(imported, holdsOf(path("fleet")));
        QVERIFY(!isBroken(imported));
    }

    void importing() {
        int cutShort = 0;
        for (int run = 0; run < mostRuns && cutShort < cutShortEnough; ++run) {
            const QString name = QString("import-%1").arg(run);
            // From the start, or while the second stretch is taken in.
            const bool early = run % 2 == 0;
            const auto lines = early ? killed(importInto(name), 0, within(importTime))
                                     : killed(importInto(name), 1, within(importTime / 4));
            const Holds after = QFile::exists(path(name)) ? holdsOf(path(name)) : Holds();
            for (const QString& record : acknowledged(lines))
                QVERIFY2(has(after, record), seedText + ": an acknowledged record is missing");
            QVERIFY2(!isBroken(after), seedText);
            cutShort += after.records.size() < imported.records.size() ? 1 : 0;
            const Ran again = runAmbit(importInto(name));
            QVERIFY2(again.code == 0, again.err.constData());
            QVERIFY2(holdsOf(path(name)) == imported, seedText);
            remove(name);
        }
        QVERIFY2(cutShort >= cutShortEnough, "the kills came too late to test anything");
    }

    void merging() {
        QCOMPARE(runAmbit({"archive", "import", path("one"), path("OX-F0001") + ".zip"}).code, 0);
        QCOMPARE(runAmbit({"archive", "import", path("other"), path("OX-F0002") + ".zip"}).code, 0);
        const Holds one = holdsOf(path("one"));
        const Holds other = holdsOf(path("other"));
        copy("one", "merged");
        const qint64 mergeTime = timed({"archive", "merge", path("merged"), path("other")});
        const Holds merged = holdsOf(path("merged"));
        QCOMPARE(merged, imported);
        int cutShort = 0;
        for (int run = 0; run < mostRuns && cutShort < cutShortEnough; ++run) {
            copy("one", "merging");
            killed({"archive", "merge", path("merging"), path("other")}, 0, within(mergeTime));
            const Holds after = holdsOf(path("merging"));
            for (const QString& record : one.records)
                QVERIFY2(has(after, record), seedText + ": a record that was there is missing");
            QVERIFY2(!isBroken(after), seedText);
            QVERIFY2(holdsOf(path("other")) == other, seedText);
            cutShort += after.records.size() < merged.records.size() ? 1 : 0;
            const Ran again = runAmbit({"archive", "merge", path("merging"), path("other")});
            QVERIFY2(again.code == 0, again.err.constData());
            QVERIFY2(holdsOf(path("merging")) == merged, seedText);
            remove("merging");
        }
        QVERIFY2(cutShort >= cutShortEnough, "the kills came too late to test anything");
    }

    void backingUp() {
        const qint64 backupTime = timed({"archive", "backup", path("imported"), path("backup")});
        QVERIFY(holdsOf(path("backup")) == imported);
        int cutShort = 0;
        for (int run = 0; run < mostRuns && cutShort < cutShortEnough; ++run) {
            killed({"archive", "backup", path("imported"), path("copy")}, 0, within(backupTime));
            if (!QFile::exists(path("copy"))) {
                ++cutShort;
                QCOMPARE(runAmbit({"archive", "backup", path("imported"), path("copy")}).code, 0);
            }
            QVERIFY2(holdsOf(path("copy")) == imported, seedText);
            remove("copy");
        }
        QVERIFY(holdsOf(path("imported")) == imported);
        QVERIFY2(cutShort >= cutShortEnough, "the kills came too late to test anything");
    }

    /// The copy is of one moment: everything acknowledged before it began is in it, and it holds together.
    void backupWhileRecordsComeIn() {
        QProcess process;
        process.start(QStringLiteral(AMBIT_PROGRAM), importInto("busy"));
        QByteArray printed;
        int backups = 0;
        do {
            process.waitForReadyRead(60'000);
            printed += process.readAllStandardOutput();
            QList<QByteArray> lines = printed.split('\n');
            lines.removeLast();
            const QString name = QString("busy-%1").arg(backups++);
            const Ran ran = runAmbit({"archive", "backup", path("busy"), path(name)});
            QVERIFY2(ran.code == 0, ran.err.constData());
            const Holds holds = holdsOf(path(name));
            QVERIFY(!isBroken(holds));
            for (const QString& record : acknowledged(lines))
                QVERIFY2(has(holds, record), "what was acknowledged before isn't in the copy");
        } while (process.state() != QProcess::NotRunning && backups < mostRuns);
        process.waitForFinished(120'000);
        QCOMPARE(process.exitCode(), 0);
        QVERIFY(holdsOf(path("busy")) == imported);
    }

private:
    [[nodiscard]] QString path(const QString& name) const { return folder.filePath(name); }
    [[nodiscard]] QStringList importInto(const QString& name) const {
        QStringList command = import;
        command[2] = path(name);
        return command;
    }
    [[nodiscard]] qint64 within(qint64 microseconds) {
        return random.bounded(std::max<qint64>(microseconds, 1));
    }

    static qint64 timed(const QStringList& arguments) {
        QElapsedTimer timer;
        timer.start();
        const Ran ran = runAmbit(arguments);
        if (ran.code != 0) qFatal("%s", ran.err.constData());
        return timer.nsecsElapsed() / 1000;
    }
    void copy(const QString& from, const QString& to) const { QVERIFY(QFile::copy(path(from), path(to))); }
    void remove(const QString& name) const {
        for (const char* tail : {"", "-wal", "-shm"})
            QFile::remove(path(name) + tail);
    }

    QTemporaryDir folder;
    QRandomGenerator random;
    QByteArray seedText;
    QStringList import;
    qint64 importTime = 0;
    Holds imported;
};

QTEST_GUILESS_MAIN(TestKillArchive)
#include "tst_kill_archive.moc"
