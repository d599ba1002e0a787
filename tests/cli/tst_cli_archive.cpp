// The archive's commands, and those that write into an aircraft's file: good ways, refusals, and what they
// say to programs. What is found is compared with what `archive state` says of the same file.
#include "program.hpp"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <QSet>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

class TestCliArchive : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        QVERIFY(folder.isValid());
        QCOMPARE(runAmbit({"key", "new", key(), "--name", "Robin Example"}).code, 0);
        const Ran made = runAmbit({"fleet", fleet(), "--airframe", demo("aeroplane/airframe.json"),
                                   demo("helicopter/airframe.json"), "--aircraft", "2", "--years", "1",
                                   "--records", "120", "--from", "2019-03-01"});
        QVERIFY2(made.code == 0, made.err.constData());
        const Ran walked =
            runAmbit({"round", "--airframe", demo("helicopter/airframe.json"), "--script",
                      demo("helicopter/round.jsonl"), "--key", key(), "--out", folder.filePath("walked")});
        QVERIFY2(walked.code == 0, walked.err.constData());
        const QString walkedIn = folder.filePath("walked.sqlite");
        const Ran taken = runAmbit({"archive", "import", walkedIn, folder.filePath("walked"), "--json"});
        QVERIFY2(taken.code == 0, taken.err.constData() + taken.out);
    }

    void helpIsEverywhere_data() {
        QTest::addColumn<QStringList>("command");
        for (const char* name :
             {"import", "export", "find", "history", "state", "verify", "merge", "backup", "retention"})
            QTest::newRow(name) << QStringList{"archive", name};
        for (const char* name : {"part", "hand-over", "renewed", "trust", "revoke", "remove"})
            QTest::newRow(name) << QStringList{name};
    }
    void helpIsEverywhere() {
        QFETCH(QStringList, command);
        const Ran ran = runAmbit(command << "--help");
        QCOMPARE(ran.code, 0);
        QVERIFY(ran.out.contains("--json"));
    }

    void anArchiveThatIsNotThereIsNotMade_data() { archiveCommands(); }
    void anArchiveThatIsNotThereIsNotMade() {
        QFETCH(QStringList, more);
        const QString nowhere = folder.filePath("nowhere.sqlite");
        const Ran ran = runAmbit(QStringList{"archive", more.first(), nowhere} + more.mid(1));
        QCOMPARE(ran.code, 3);
        QVERIFY2(ran.err.contains("nowhere.sqlite"), ran.err.constData());
        QVERIFY(!QFile::exists(nowhere));
    }

    // --- import

    void badOnesAreSetAsideAndTheRestIsIn() {
        QDir(folder.path()).mkdir("mixed");
        const auto records = exportedRecords();
        QVERIFY(records.size() > 20);
        QByteArray changed = records[7];
        changed.replace("2019", "2018");
        for (int i = 0; i < 7; ++i)
            write(QString("mixed/good-%1.json").arg(i), records[i]);
        write("mixed/changed.json", changed);
        write("mixed/cut.json", records[8].left(records[8].size() / 2));
        write("mixed/garbage.json", "garbage");
        write("mixed/stray.jpg", "\xFF\xD8\xFF nobody names me");
        write("mixed/readme.txt", "not looked at");
        const QString archive = folder.filePath("mixed.sqlite");
        const Ran ran = runAmbit({"archive", "import", archive, folder.filePath("mixed"), "--json"});
        QCOMPARE(ran.code, 1);
        QStringList bad;
        int good = 0;
        for (const QJsonObject& line : lines(ran.out)) {
            if (line["ok"].toBool()) {
                ++good;
                QVERIFY(line["new"].toBool());
                QVERIFY(line["newSignatures"].toInt() >= 1);
                QVERIFY(line["aircraft"].toString().startsWith("OX-F"));
                continue;
            }
            bad << QFileInfo(line["file"].toString()).fileName();
            QVERIFY(!line["what"].toString().isEmpty());
        }
        bad.sort();
        QCOMPARE(bad, (QStringList{"changed.json", "cut.json", "garbage.json", "stray.jpg"}));
        QCOMPARE(good, 7);
        QCOMPARE(found(archive).size(), 7);
        // The same again changes nothing.
        for (const QJsonObject& line :
             lines(runAmbit({"archive", "import", archive, folder.filePath("mixed"), "--json"}).out))
            if (line["ok"].toBool()) QVERIFY(!line["new"].toBool() && line["newSignatures"].toInt() == 0);
    }

    // A photo given by itself used to lose its bytes before its hash was taken.
    void aPhotoMayComeAfterItsRecord() {
        const QString archive = folder.filePath("later.sqlite");
        QCOMPARE(runAmbit({"archive", "import", archive, folder.filePath("walked/record.json")}).code, 0);
        const auto missing = [&] {
            return object(runAmbit({"archive", "verify", archive, "--json"}))["missingPhotos"].toArray();
        };
        QVERIFY(!missing().isEmpty());
        const Ran ran = runAmbit({"archive", "import", archive, folder.filePath("walked/photos"), "--json"});
        QVERIFY2(ran.code == 0, ran.err.constData() + ran.out);
        for (const QJsonObject& line : lines(ran.out))
            QCOMPARE(line["kind"].toString(), QString("photo"));
        QVERIFY(missing().isEmpty());
    }

    // --- export

    /// The very lines of the export's README.txt, run as they stand.
    void theExportOpensWithoutAmbit() {
        for (const char* tool : {"bash", "unzip", "jq", "openssl", "cmp", "comm"})
            if (QStandardPaths::findExecutable(tool).isEmpty())
                QSKIP("unzip, jq and openssl aren't all here");
        const QString folderOf = unpacked(fleet(), "OX-F0001");
        const QString readMe = QString::fromUtf8(read(folderOf + "/README.txt"));
        const auto begin = readMe.indexOf("  f=records/FILE.json");
        const auto end = readMe.indexOf("\n\n", begin);
        const QString script = readMe.mid(begin, end - begin);
        QVERIFY(script.contains("openssl dgst -sha256 -verify"));
        const auto verdict = [&](const QString& file) {
            return bash(folderOf, QString(script).replace("FILE.json", file));
        };
        const QStringList records = QDir(folderOf + "/records").entryList({"*.json"});
        QVERIFY(records.size() >= 40);
        for (qsizetype i = 0; i < records.size(); i += records.size() / 6) {
            const QByteArray said = verdict(records[i]);
            QVERIFY2(said.contains("Verified OK") && said.contains("as it was signed"), said.constData());
        }
        QByteArray changed = read(folderOf + "/records/" + records[3]);
        changed.replace("\"registration\":\"OX-F0001\"", "\"registration\":\"OX-F0002\"");
        write(folderOf + "/records/changed.json", changed);
        QVERIFY(!verdict("changed.json").contains("Verified OK"));
        QFile::remove(folderOf + "/records/changed.json");

        // What no record is there for: at first only what a removal says.
        const auto at = readMe.indexOf("  comm -13");
        const QString missing = readMe.mid(at, readMe.indexOf("\n\n", at) - at);
        QSet<QString> letGo;
        for (const QString& name : records.filter("removal"))
            for (const QJsonValue one :
                 QJsonDocument::fromJson(read(folderOf + "/records/" + name))["content"]
                     .toObject()["records"]
                     .toArray())
                letGo.insert(one.toObject()["record"].toString());
        for (const QByteArray& hash : bash(folderOf, missing).split('\n'))
            QVERIFY2(hash.isEmpty() || letGo.contains(QString::fromLatin1(hash)), hash.constData());
        const QString lost = folderOf + "/records/" + records[10];
        const QByteArray identity =
            bash(folderOf, "jq -jcS .content records/" + records[10] + " | openssl dgst -sha256 -r").left(64);
        QVERIFY(QFile::remove(lost));
        QVERIFY(bash(folderOf, missing).contains(identity));
    }

    void anExportImportedIsTheSameFile_data() {
        QTest::addColumn<QString>("archive");
        QTest::addColumn<QString>("aircraft");
        QTest::newRow("invented fleet") << fleet() << "OX-F0002";
        QTest::newRow("with photos and a PDF") << folder.filePath("walked.sqlite") << "OX-DEMO";
    }
    void anExportImportedIsTheSameFile() {
        QFETCH(QString, archive);
        QFETCH(QString, aircraft);
        const QString zip = folder.filePath(aircraft + "-there.zip");
        const QString there = folder.filePath(aircraft + "-there.sqlite");
        const QJsonObject out =
            object(runAmbit({"archive", "export", archive, aircraft, "--out", zip, "--json"}));
        QVERIFY(out["missingPhotos"].toArray().isEmpty());
        if (aircraft == "OX-DEMO") QVERIFY(out["photos"].toInt() >= 1 && out["pdfs"].toInt() == 1);
        const Ran taken = runAmbit({"archive", "import", there, zip, "--json"});
        QVERIFY2(taken.code == 0, taken.out.constData());
        const auto records = found(archive, {"--aircraft", aircraft});
        QCOMPARE(out["records"].toInt(), records.size());
        QCOMPARE(found(there), records);
        QCOMPARE(state(there, aircraft), state(archive, aircraft));
        const QJsonObject checked = object(runAmbit({"archive", "verify", there, "--json", "--contents"}));
        QVERIFY(checked["ok"].toBool());
        QCOMPARE(checked["photos"].toInt(), out["photos"].toInt());
        QCOMPARE(checked["pdfs"].toInt(), out["pdfs"].toInt());
        // Its own export has the same records, byte for byte.
        QCOMPARE(runAmbit({"archive", "export", there, aircraft, "--out", zip}).code, 3); // never overwrites
        const QString again = unpacked(there, aircraft);
        const QString once = unpacked(archive, aircraft);
        for (const QString& name : QDir(once + "/records").entryList(QDir::Files))
            QCOMPARE(read(again + "/records/" + name), read(once + "/records/" + name));
    }

    // “Nothing” was said to be missing.
    void whatAnExportLacksStandsInItsIndex() {
        const QString archive = folder.filePath("lacking.sqlite");
        QCOMPARE(runAmbit({"archive", "import", archive, folder.filePath("walked/record.json")}).code, 0);
        const auto index = [&] { return read(unpacked(archive, "OX-DEMO") + "/index.html"); };
        const QByteArray lacking = index();
        QCOMPARE(lacking.count("Missing: photo "),
                 QDir(folder.filePath("walked/photos")).entryList(QDir::Files).size());
        QVERIFY(lacking.contains("what comes due isn't known"));
        QCOMPARE(runAmbit({"archive", "import", archive, folder.filePath("walked/photos"),
                           demo("helicopter/airframe.json")})
                     .code,
                 0);
        QVERIFY(!index().contains("Missing: "));
    }

    void anAircraftWithoutRecords() {
        const QString zip = folder.filePath("none.zip");
        QCOMPARE(runAmbit({"archive", "export", fleet(), "OX-NONE", "--out", zip}).code, 1);
        QVERIFY(!QFile::exists(zip));
        QCOMPARE(runAmbit({"archive", "state", fleet(), "OX-NONE"}).code, 1);
    }

    // --- find, history

    void findsWhatTheStateLists() {
        const QJsonArray pages = state(fleet(), "OX-F0001")["records"].toArray();
        const auto expected = [&](auto holds) {
            QSet<QString> set;
            for (const QJsonValue page : pages)
                if (holds(page.toObject())) set.insert(page.toObject()["record"].toString());
            return set;
        };
        const auto hits = [&](const QStringList& wanted) {
            QSet<QString> set;
            for (const QJsonObject& hit : found(fleet(), QStringList{"--aircraft", "OX-F0001"} + wanted))
                set.insert(hit["record"].toString());
            return set;
        };
        QCOMPARE(hits({}), expected([](const QJsonObject&) { return true; }));
        for (const char* kind : {"round", "trust", "part change", "reading"}) {
            const auto of =
                expected([&](const QJsonObject& page) { return page["kind"] == QLatin1String(kind); });
            QVERIFY(!of.isEmpty());
            QCOMPARE(hits({"--kind", kind}), of);
        }
        const QString day = "2019-06-01";
        QCOMPARE(hits({"--from", day}),
                 expected([&](const QJsonObject& page) { return page["at"].toString() >= day; }));
        QCOMPARE(hits({"--before", day}),
                 expected([&](const QJsonObject& page) { return page["at"].toString() < day; }));
        QVERIFY(!hits({"--state", "closed"}).isEmpty());
        QVERIFY(hits({"nosuchword"}).isEmpty());
        QCOMPARE(runAmbit({"archive", "find", fleet(), "--state", "mended"}).code, 1);
        QCOMPARE(runAmbit({"archive", "find", fleet(), "--from", "June"}).code, 1);
        QCOMPARE(runAmbit({"archive", "find", fleet(), "--after", QString(64, 'a')}).code, 1);
        QVERIFY(runAmbit({"archive", "find", fleet(), "nosuchword"}).out.contains("nothing found"));
    }

    void goesOnAfterTheLastFound() {
        const auto all = found(fleet());
        QList<QJsonObject> paged;
        QStringList from;
        for (;;) {
            const auto page =
                lines(runAmbit(QStringList{"archive", "find", fleet(), "--json", "--most", "17"} + from).out);
            if (page.isEmpty()) break;
            paged += page;
            from = {"--after", page.last()["record"].toString()};
        }
        QCOMPARE(paged, all);
    }

    void historyIsOneDiscrepancysStory() {
        const QJsonArray discrepancies = state(fleet(), "OX-F0001")["discrepancies"].toArray();
        QVERIFY(!discrepancies.isEmpty());
        const QJsonObject one = discrepancies.first().toObject();
        const auto sightings = lines(runAmbit({"archive", "history", fleet(), "OX-F0001",
                                               one["point"].toString(), "--json", "--most", "1000"})
                                         .out);
        QStringList records;
        for (const QJsonObject& sighting : sightings) {
            records << sighting["record"].toString();
            if (sighting["record"] == one["record"])
                QCOMPARE(sighting["words"].toString(), one["found"].toObject()["words"].toString());
        }
        QVERIFY(records.contains(one["record"].toString()));
        if (one.contains("rectified"))
            QVERIFY(records.contains(one["rectified"].toObject()["record"].toString()));
        for (qsizetype i = 1; i < sightings.size(); ++i)
            QVERIFY(sightings[i - 1]["at"].toString() >= sightings[i]["at"].toString());
    }

    void historyTellsWhatAValueWasReadFrom() {
        const QStringList asked{"archive", "history", fleet(), "OX-F0001", "oil-level"};
        int values = 0;
        for (const QJsonObject& one : lines(runAmbit(asked + QStringList{"--json"}).out)) {
            if (!one.contains("value")) continue;
            ++values;
            QCOMPARE(one["from"].toString(), QString("dipstick"));
            QCOMPARE(one["uncertainty"].toString(), QString("0.15"));
        }
        QVERIFY(values > 5);
        QVERIFY(runAmbit(asked).out.contains(" ± 0.15 qt, read on the dipstick, within"));
    }

    // --- merge, backup

    void mergesTwoHalves() {
        const auto records = exportedRecords();
        for (int half = 0; half < 2; ++half) {
            const QString name = QString("half-%1").arg(half);
            QDir(folder.path()).mkdir(name);
            for (qsizetype i = half; i < records.size(); i += 2)
                write(name + QString("/%1.json").arg(i), records[i]);
            QCOMPARE(runAmbit({"archive", "import", folder.filePath(name + ".sqlite"), folder.filePath(name)})
                         .code,
                     0);
        }
        const QString into = folder.filePath("half-0.sqlite"), from = folder.filePath("half-1.sqlite");
        const QJsonObject first = object(runAmbit({"archive", "merge", into, from, "--json"}));
        QCOMPARE(first["newRecords"].toInt(), static_cast<int>(records.size() / 2));
        QVERIFY(first["setAside"].toArray().isEmpty());
        const QJsonObject again = object(runAmbit({"archive", "merge", into, from, "--json"}));
        QCOMPARE(again["newRecords"].toInt(), 0);
        QCOMPARE(again["knownRecords"].toInt(), first["newRecords"].toInt());
        QCOMPARE(found(into), found(fleet(), {"--aircraft", "OX-F0001"}));
        QVERIFY(object(runAmbit({"archive", "verify", into, "--json"}))["ok"].toBool());
        QCOMPARE(runAmbit({"archive", "merge", into, into}).code, 1);
        QCOMPARE(runAmbit({"archive", "merge", into, folder.filePath("nowhere.sqlite")}).code, 3);
    }

    void backsUpAndNeverOverwrites() {
        const QString copy = folder.filePath("backup.sqlite");
        const QJsonObject out = object(runAmbit({"archive", "backup", fleet(), copy, "--json"}));
        QCOMPARE(out["backup"].toString(), copy);
        QCOMPARE(found(copy), found(fleet()));
        QVERIFY(object(runAmbit({"archive", "verify", copy, "--json"}))["ok"].toBool());
        const Ran over = runAmbit({"archive", "backup", fleet(), copy});
        QCOMPARE(over.code, 3);
        QVERIFY2(over.err.contains("another name"), over.err.constData());
    }

    // --- into the file

    void partHandOverTrustRevoke() {
        const QString archive = folder.filePath("said.sqlite");
        QVERIFY(QFile::copy(folder.filePath("walked.sqlite"), archive));
        const QString fingerprint =
            object(runAmbit({"key", "show", key(), "--json"}))["fingerprint"].toString();
        QCOMPARE(fingerprint.size(), 64);
        const QStringList who{"--archive", archive, "--aircraft",    "OX-DEMO", "--key", key(),
                              "--role",    "owner", "--certificate", "C-1",     "--json"};
        const auto said = [&](const QStringList& command, const char* kind) {
            const Ran ran = runAmbit(QStringList{command.first()} + who + command.mid(1));
            if (ran.code != 0) qWarning("%s", ran.err.constData());
            const QJsonObject out = object(ran);
            return out["kind"].toString() == QLatin1String(kind) && out["aircraft"].toString() == "OX-DEMO" &&
                   out["record"].toString().size() == 64;
        };
        QVERIFY(said({"trust", "--name", "Robin Example", "--fingerprint", fingerprint.toUpper(), "--for",
                      "pilot,owner", "--from", "2026-01-01"},
                     "trust"));
        const QStringList work{"--description",      "Belt changed.", "--completed", "2026-07-01",
                               "--certificate-kind", "mechanic",      "--counter",   "airframe-hours=1290.0"};
        QVERIFY(said(QStringList{"part", "--position", "drive-belts", "--on", "Belt,B-1,S-77"} + work,
                     "part change"));
        QVERIFY(said({"revoke", "--fingerprint", fingerprint, "--why", "Lost.", "--from", "2026-08-01"},
                     "revocation"));
        const QString zip = folder.filePath("handed-over.zip");
        QVERIFY(
            said({"hand-over", "--to", "Kim Example", "--words", "As is.", "--export", zip}, "hand-over"));
        const QJsonObject now = state(archive, "OX-DEMO");
        QCOMPARE(now["records"].toArray().size(), 5);
        QCOMPARE(now["parts"].toArray().first().toObject()["serial"].toString(), QString("S-77"));
        QCOMPARE(found(archive, {"--part", "s-77"}).size(), 1);
        QCOMPARE(found(archive, {"--person", "kim"}).size(), 1);
        // The new owner's export has the hand-over in it.
        const QString there = folder.filePath("handed-over.sqlite");
        QCOMPARE(runAmbit({"archive", "import", there, zip}).code, 0);
        QCOMPARE(found(there), found(archive));
        QCOMPARE(runAmbit(QStringList{"trust"} + who +
                          QStringList{"--name", "R", "--fingerprint", "12", "--for", "pilot"})
                     .code,
                 1);
        QCOMPARE(runAmbit(QStringList{"hand-over"} + who + QStringList{"--to", "K", "--export", zip}).code,
                 3);
        QCOMPARE(state(archive, "OX-DEMO")["records"].toArray().size(),
                 5); // refused before anything was signed
    }

    /// Forgotten when it was measured, said afterwards, and taken back.
    void renewedIsSaidAfterwards() {
        const QString archive = folder.filePath("renewed.sqlite");
        QVERIFY(QFile::copy(fleet(), archive));
        const QStringList asked{"archive", "history", archive, "OX-F0001", "oil-level"};
        const auto values = [&] {
            QList<QJsonObject> all;
            for (const QJsonObject& one : lines(runAmbit(asked + QStringList{"--json"}).out))
                if (one.contains("value")) all << one;
            return all;
        };
        const auto before = values();
        QVERIFY(before.size() > 3);
        QVERIFY(!before[2].contains("renewed"));
        const QString record = before[2]["record"].toString();
        const auto say = [&](const QStringList& more) {
            return runAmbit(QStringList{"renewed", "--archive", archive, "--aircraft", "OX-F0001", "--key",
                                        key(), "--json"} +
                            more);
        };
        const QStringList its{"--record", record.left(12), "--point", "oil-level"};
        const Ran pilot = say(its + QStringList{"--role", "pilot"});
        QCOMPARE(pilot.code, 1);
        QVERIFY2(pilot.err.contains("the owner or a mechanic"), pilot.err.constData());
        const QStringList nowhere{"--record", record, "--point", "nowhere", "--role", "owner"};
        QVERIFY(say(nowhere).err.contains("No such record has a value of this point"));
        const Ran said = say(its + QStringList{"--role", "owner", "--words", "Engine changed."});
        QVERIFY2(said.code == 0, said.err.constData());
        QCOMPARE(object(said)["kind"].toString(), QString("renewal"));
        const auto after = values();
        QCOMPARE(after.size(), before.size());
        for (qsizetype i = 0; i < after.size(); ++i)
            QCOMPARE(after[i]["renewed"].toBool(), i == 2 || before[i]["renewed"].toBool());
        QVERIFY(runAmbit(asked).out.contains(", within, renewed before it"));
        QCOMPARE(found(archive, {"--kind", "renewal"}).size(), 1);
        QCOMPARE(say(its + QStringList{"--role", "mechanic", "--not"}).code, 0);
        QVERIFY(values() == before);
        QVERIFY(object(runAmbit({"archive", "verify", archive, "--contents", "--json"}))["ok"].toBool());
    }

    /// Source: 14 CFR 91.417(b): what may go is said by `retention`; Ambit lets nothing else go unasked.
    void removesWhatMayGoAndLeavesAStub() {
        const QString archive = folder.filePath("shorter.sqlite");
        QVERIFY(QFile::copy(fleet(), archive));
        const QJsonArray list =
            QJsonDocument::fromJson(runAmbit({"archive", "retention", archive, "OX-F0001", "--json"}).out)
                .array();
        QCOMPARE(list.size(), state(archive, "OX-F0001")["records"].toArray().size());
        QString mayGo, stays;
        const QJsonArray heads = state(archive, "OX-F0001")["heads"].toArray();
        for (const QJsonValue value : list) {
            const QJsonObject one = value.toObject();
            QVERIFY(!one["why"].toString().isEmpty());
            if (heads.contains(one["record"])) continue;
            (one["mayGo"].toBool() ? mayGo : stays) = one["record"].toString();
        }
        QVERIFY(!mayGo.isEmpty() && !stays.isEmpty());
        const auto remove = [&](const QStringList& more) {
            return runAmbit(QStringList{"remove", "--archive", archive, "--aircraft", "OX-F0001", "--key",
                                        key(), "--role", "owner", "--basis", "A test.", "--json"} +
                            more);
        };
        const Ran refused = remove({"--record", stays});
        QCOMPARE(refused.code, 1);
        QVERIFY2(refused.err.contains("--although-it-stays"), refused.err.constData());
        const QJsonObject stub = object(remove({"--record", mayGo}));
        QCOMPARE(stub["kind"].toString(), QString("removal"));
        QVERIFY(object(remove({"--record", stub["record"].toString(), "--although-it-stays"})).isEmpty());
        QCOMPARE(state(archive, "OX-F0001")["removed"].toObject()[mayGo].toString(),
                 stub["record"].toString());
        const QJsonObject checked = object(runAmbit({"archive", "verify", archive, "--contents", "--json"}));
        QVERIFY(checked["ok"].toBool());
        for (const QJsonObject& hit : found(archive))
            QVERIFY(hit["record"].toString() != mayGo);
        // Its stub alone doesn't bring it back, the archive that still has it does.
        QCOMPARE(object(runAmbit({"archive", "merge", archive, fleet(), "--json"}))["newRecords"].toInt(), 1);
        QVERIFY(object(runAmbit({"archive", "verify", archive, "--json"}))["ok"].toBool());
    }

private:
    QTemporaryDir folder;

    [[nodiscard]] QString key() const { return folder.filePath("key.pem"); }
    [[nodiscard]] QString fleet() const { return folder.filePath("fleet.sqlite"); }

    static void archiveCommands() {
        QTest::addColumn<QStringList>("more");
        QTest::newRow("export") << QStringList{"export", "OX-F0001", "--out", "never.zip"};
        QTest::newRow("find") << QStringList{"find", "word"};
        QTest::newRow("history") << QStringList{"history", "OX-F0001", "oil"};
        QTest::newRow("state") << QStringList{"state", "OX-F0001"};
        QTest::newRow("verify") << QStringList{"verify"};
        QTest::newRow("backup") << QStringList{"backup", "never.sqlite"};
        QTest::newRow("retention") << QStringList{"retention", "OX-F0001"};
    }

    static QJsonObject object(const Ran& ran) { return QJsonDocument::fromJson(ran.out).object(); }
    static QList<QJsonObject> lines(const QByteArray& out) {
        QList<QJsonObject> list;
        for (const QByteArray& line : out.split('\n'))
            if (!line.isEmpty()) list << QJsonDocument::fromJson(line).object();
        return list;
    }
    static QList<QJsonObject> found(const QString& archive, const QStringList& more = {}) {
        return lines(
            runAmbit(QStringList{"archive", "find", archive, "--json", "--most", "10000"} + more).out);
    }
    static QJsonObject state(const QString& archive, const QString& aircraft) {
        return object(runAmbit({"archive", "state", archive, aircraft, "--json", "--today", "2026-07-01"}));
    }

    /// The folder of the aircraft's export, unpacked by unzip.
    QString unpacked(const QString& archive, const QString& aircraft) {
        const QString zip = folder.filePath(QString("unpacked-%1.zip").arg(++exports));
        const QString into = folder.filePath(QString("unpacked-%1").arg(exports));
        if (runAmbit({"archive", "export", archive, aircraft, "--out", zip}).code != 0) return {};
        QProcess unzip;
        unzip.start("unzip", {"-q", zip, "-d", into});
        unzip.waitForFinished();
        return into + '/' + aircraft;
    }
    QList<QByteArray> exportedRecords() {
        const QString records = unpacked(fleet(), "OX-F0001") + "/records";
        QList<QByteArray> all;
        for (const QString& name : QDir(records).entryList({"*.json"}))
            all << read(records + '/' + name);
        return all;
    }
    static QByteArray bash(const QString& in, const QString& script) {
        QProcess process;
        process.setWorkingDirectory(in);
        process.start("bash", {"-c", script});
        process.waitForFinished();
        return process.readAllStandardOutput();
    }

    static QByteArray read(const QString& path) {
        QFile file(path);
        return file.open(QFile::ReadOnly) ? file.readAll() : QByteArray();
    }
    /// A path in the folder, or a whole one.
    void write(const QString& name, const QByteArray& bytes) const {
        QFile file(QDir(folder.path()).absoluteFilePath(name));
        QVERIFY(file.open(QFile::WriteOnly) && file.write(bytes) == bytes.size());
    }

    int exports = 0;
};

QTEST_GUILESS_MAIN(TestCliArchive)
#include "tst_cli_archive.moc"
