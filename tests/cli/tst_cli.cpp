// The command line: every command's good way, its refusals, its exit codes.
#include "program.hpp"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>

class TestCli : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        QVERIFY(folder.isValid());
        const Ran made = runAmbit({"key", "new", key(), "--name", "Robin Example"});
        QCOMPARE(made.code, 0);
        first = runAmbit(round("first"));
        QVERIFY2(first.code == 0, first.err.constData());
    }

    void helpIsEverywhere_data() {
        QTest::addColumn<QStringList>("command");
        for (const char* name :
             {"check", "plan", "solve", "key", "round", "sign", "verify", "beside", "pace", "sky", "watch",
              "archive", "reading", "rectify", "defer", "questions", "fleet"})
            QTest::newRow(name) << QStringList{name};
        QTest::newRow("key new") << QStringList{"key", "new"};
        QTest::newRow("key show") << QStringList{"key", "show"};
    }
    void helpIsEverywhere() {
        QFETCH(QStringList, command);
        const Ran ran = runAmbit(command << "--help");
        QCOMPARE(ran.code, 0);
        QVERIFY(ran.out.contains("--help"));
    }

    void wrongCommandLineIsExit2_data() {
        QTest::addColumn<QStringList>("arguments");
        QTest::newRow("nothing") << QStringList{};
        QTest::newRow("no such command") << QStringList{"fly"};
        QTest::newRow("check what?") << QStringList{"check"};
        QTest::newRow("no such option") << QStringList{"verify", "--trust", "x"};
    }
    void wrongCommandLineIsExit2() {
        QFETCH(QStringList, arguments);
        QCOMPARE(runAmbit(arguments).code, 2);
    }

    void checkNamesThePointer() {
        QCOMPARE(runAmbit({"check", demo("helicopter/airframe.json")}).code, 0);
        QByteArray text = read(demo("helicopter/airframe.json"));
        const QString bad = write("bad.json", text.replace("\"version\": 1", "\"version\": 2"));
        const Ran ran = runAmbit({"check", bad});
        QCOMPARE(ran.code, 1);
        QVERIFY2(ran.err.contains("/version"), ran.err.constData());
        const QJsonObject json = QJsonDocument::fromJson(runAmbit({"check", bad, "--json"}).out).object();
        QCOMPARE(json["ok"].toBool(true), false);
        QCOMPARE(json["errors"].toArray().first().toObject()["where"].toString(), QString("/version"));
    }

    void checkTellsWhatIsNotTranslated() {
        const QString file = demo("helicopter/airframe.json");
        const Ran ran = runAmbit({"check", file});
        QVERIFY2(ran.out.contains("language de: complete"), ran.out.constData());
        QVERIFY2(ran.out.contains("language fr: complete"), ran.out.constData());
        QJsonObject airframe = QJsonDocument::fromJson(read(file)).object();
        QJsonObject translations = airframe["translations"].toObject();
        QJsonObject german = translations["de"].toObject();
        german.remove("Nose");
        translations["de"] = german;
        airframe["translations"] = translations;
        const QString less = write("less.json", QJsonDocument(airframe).toJson());
        QVERIFY(runAmbit({"check", less}).out.contains("language de: 1 text not translated"));
        const auto json = QJsonDocument::fromJson(runAmbit({"check", less, "--json"}).out).object();
        QCOMPARE(json["untranslated"].toObject()["de"].toInt(), 1);
        const Ran missing = runAmbit({"check", less, "--untranslated", "de"});
        QCOMPARE(missing.code, 0);
        QCOMPARE(QJsonDocument::fromJson(missing.out).object(), (QJsonObject{{"Nose", ""}}));
        const auto all =
            QJsonDocument::fromJson(runAmbit({"check", less, "--untranslated", "it"}).out).object();
        QCOMPARE(all.size(), german.size() + 1);
        QVERIFY(runAmbit({"check", less, "--untranslated", "German"}).code != 0);
        QCOMPARE(runAmbit({"check", folder.filePath("nowhere.json"), "--untranslated", "de"}).code, 3);
    }

    void aMissingFileIsExit3() {
        QCOMPARE(runAmbit({"check", folder.filePath("nowhere.json")}).code, 3);
        QCOMPARE(runAmbit({"verify", folder.filePath("nowhere.json")}).code, 3);
        QCOMPARE(runAmbit({"key", "show", folder.filePath("nowhere.pem")}).code, 3);
    }

    void planSettlesEveryPointOnce() {
        for (const char* file : {"helicopter/airframe.json", "aeroplane/airframe.json"}) {
            const Ran ran = runAmbit({"plan", demo(file), "--json"});
            QCOMPARE(ran.code, 0);
            QSet<QString> settled;
            int steps = 0;
            for (const QJsonValue step : QJsonDocument::fromJson(ran.out).object()["steps"].toArray()) {
                if (!step.toObject().contains("settle")) continue;
                ++steps;
                settled.insert(step.toObject()["settle"].toString());
            }
            QVERIFY(steps >= 55);
            QCOMPARE(settled.size(), steps);
        }
        QCOMPARE(runAmbit({"plan", demo("helicopter/airframe.json"), "--walk", "nowhere"}).code, 1);
    }

    void planSaysWhatItSaves() {
        const Ran ran = runAmbit({"plan", demo("helicopter/airframe.json"), "--json", "--explain"});
        QCOMPARE(ran.code, 0);
        const auto out = QJsonDocument::fromJson(ran.out).object();
        QVERIFY(out["proven"].toBool());
        QCOMPARE(out["bound"], out["cost"]["weighs"]);
        QCOMPARE(out["cost"]["turns"].toInt(), 1);
        QCOMPARE(out["cost"]["climbs"].toInt(), 3); // one on the left, and on the right one for each blade
        QVERIFY(out["listed"]["weighs"].toString().toDouble() > out["cost"]["weighs"].toString().toDouble());
        QVERIFY(!out["explain"].toArray().isEmpty());
        QVERIFY(out["explain"].toArray().size() <= 3);
        const Ran words = runAmbit({"plan", demo("aeroplane/airframe.json")});
        QVERIFY(words.out.contains("As listed: "));
        QVERIFY(words.out.contains("No better walk exists"));
    }

    void solves() {
        const QString file = QStringLiteral(AMBIT_ROOT "/tests/reference/sop/br17.10.sop");
        const Ran ran = runAmbit({"solve", file, "--json", "--seconds", "60"});
        QCOMPARE(ran.code, 0);
        const auto out = QJsonDocument::fromJson(ran.out).object();
        QCOMPARE(out["cost"].toInt(), 55); // TSPLIB's optimum
        QCOMPARE(out["bound"].toInt(), 55);
        QVERIFY(out["proven"].toBool());
        QCOMPARE(out["order"].toArray().size(), 18);
        QCOMPARE(out["order"].toArray().first().toInt(), 1);
        QCOMPARE(out["order"].toArray().last().toInt(), 18);
        QVERIFY(out["seconds"].isDouble());
        QVERIFY(runAmbit({"solve", file}).out.contains("proven: there is none better"));
        const Ran other = runAmbit({"solve", demo("helicopter/airframe.json")});
        QCOMPARE(other.code, 1);
        QVERIFY2(other.err.contains("airframe.json, line "), other.err.constData());
        QCOMPARE(runAmbit({"solve", file + ".no"}).code, 3);
        QCOMPARE(runAmbit({"solve", file, "--seconds", "-1"}).code, 2);
    }

    void planDraws() {
        const QString file = folder.filePath("plan.svg");
        QCOMPARE(runAmbit({"plan", demo("helicopter/airframe.json"), "--svg", file}).code, 0);
        QVERIFY(read(file).startsWith("<?xml"));
        QVERIFY(read(file).endsWith("</svg>\n"));
        const QString nowhere = folder.filePath("no such folder/plan.svg");
        const Ran ran = runAmbit({"plan", demo("helicopter/airframe.json"), "--svg", nowhere});
        QCOMPARE(ran.code, 3);
        QVERIFY2(ran.err.contains("no such folder/plan.svg"), ran.err.constData());
        QVERIFY2(ran.err.contains("Name a file"), ran.err.constData());
        QVERIFY(!QFile::exists(nowhere));
    }

    void aKeyIsNeverOverwritten() {
        const QByteArray before = read(key());
        const Ran ran = runAmbit({"key", "new", key(), "--name", "Somebody Else"});
        QCOMPARE(ran.code, 3);
        QCOMPARE(read(key()), before);
        QVERIFY(before.contains("BEGIN ENCRYPTED PRIVATE KEY"));
        QVERIFY((QFile::permissions(key()) & (QFile::ReadGroup | QFile::ReadOther)) == QFile::Permissions());
        QVERIFY(runAmbit({"key", "show", key()}).out.contains("Robin Example"));
    }

    void aRoundLeavesARecordThatHolds() {
        const Ran ran =
            runAmbit({"verify", folder.filePath("first/record.json"), folder.filePath("first/record.pdf")});
        QVERIFY2(ran.code == 0, ran.err.constData());
        QVERIFY(ran.out.contains("Robin Example"));
    }

    void aMechanicCountersigns() {
        const QString mechanic = folder.filePath("mechanic.pem");
        QCOMPARE(runAmbit({"key", "new", mechanic, "--name", "Alex Sample"}).code, 0);
        const QString json = folder.filePath("first/record.json");
        const QString pdf = folder.filePath("first/record.pdf");
        const auto sign = [&](const QStringList& files, const QString& with, const char* out) {
            return QStringList{"sign"} << files << "--key" << with << "--role"
                                       << "mechanic"
                                       << "--certificate"
                                       << "X.66/12"
                                       << "--out" << folder.filePath(out);
        };
        const Ran ran = runAmbit(sign({json, pdf}, mechanic, "both"));
        QVERIFY2(ran.code == 0, ran.err.constData());
        QVERIFY(ran.out.contains("Alex Sample, mechanic, certificate X.66/12, countersigned "));

        const Ran verified = runAmbit(
            {"verify", "--json", folder.filePath("both/record.json"), folder.filePath("both/record.pdf")});
        QVERIFY2(verified.code == 0, verified.err.constData());
        for (const QByteArray& line : verified.out.trimmed().split('\n')) {
            const auto signers = QJsonDocument::fromJson(line).object()["signers"].toArray();
            QCOMPARE(signers.size(), 2);
            QCOMPARE(signers[0].toObject()["role"].toString(), QString("pilot"));
            QVERIFY(!signers[0].toObject().contains("at"));
            QCOMPARE(signers[1].toObject()["name"].toString(), QString("Alex Sample"));
            QCOMPARE(signers[1].toObject()["certificate"].toString(), QString("X.66/12"));
            QVERIFY(!signers[1].toObject()["at"].toString().isEmpty());
        }
        QVERIFY(read(folder.filePath("both/record.pdf")).startsWith(read(pdf)));

        // A record is never overwritten, nobody signs twice, and what doesn't hold isn't signed.
        QCOMPARE(runAmbit(sign({json, pdf}, mechanic, "both")).code, 3);
        const Ran twice = runAmbit(sign(
            {folder.filePath("both/record.json"), folder.filePath("both/record.pdf")}, mechanic, "twice"));
        QCOMPARE(twice.code, 1);
        QVERIFY2(twice.err.contains("Alex Sample has signed this record"), twice.err.constData());
        QVERIFY(!QFile::exists(folder.filePath("twice")));
        const Ran mixed = runAmbit(sign({json, folder.filePath("both/record.pdf")}, mechanic, "mixed"));
        QCOMPARE(mixed.code, 1);
        QVERIFY2(mixed.err.contains("record.pdf"), mixed.err.constData());
        QCOMPARE(runAmbit(sign({pdf}, mechanic, "swapped")).code, 1);
        const QString changed = write("changed.json", read(json).replace("OX-DEMO", "OX-DEMA"));
        QCOMPARE(runAmbit(sign({changed}, mechanic, "changed")).code, 1);
        QVERIFY(!QFile::exists(folder.filePath("changed")));
        QCOMPARE(runAmbit(sign({folder.filePath("nowhere.json")}, mechanic, "no")).code, 3);
        QCOMPARE(runAmbit(sign({json}, folder.filePath("nowhere.pem"), "no")).code, 3);
        QCOMPARE(runAmbit(sign({json}, mechanic, "no"), "not the passphrase").code, 3);
        QCOMPARE(runAmbit(sign({json}, mechanic, "no").replaceInStrings("mechanic", "king")).code, 2);
        QCOMPARE(runAmbit({"sign", json}).code, 2);
    }

    void theSameAgainChangesNothing() {
        const QByteArray json = read(folder.filePath("first/record.json"));
        const QByteArray pdf = read(folder.filePath("first/record.pdf"));
        QCOMPARE(runAmbit(round("first")).code, 0);
        QCOMPARE(read(folder.filePath("first/record.json")), json);
        QCOMPARE(read(folder.filePath("first/record.pdf")), pdf);
    }

    void theSameScriptGivesTheSameContent() {
        QCOMPARE(runAmbit(round("second")).code, 0);
        const auto content = [&](const char* file) {
            return QJsonDocument::fromJson(read(folder.filePath(file))).object()["content"].toObject();
        };
        QVERIFY(!content("first/record.json").isEmpty());
        QCOMPARE(content("second/record.json"), content("first/record.json"));
    }

    void aWrongPassphraseStopsBeforeTheWalk() {
        const Ran ran = runAmbit(round("locked"), "not the passphrase");
        QCOMPARE(ran.code, 3);
        QVERIFY(!QFile::exists(folder.filePath("locked/archive.sqlite")));
    }

    void anotherPersonsKeyDoesNotSign() {
        const QString other = folder.filePath("other.pem");
        QCOMPARE(runAmbit({"key", "new", other, "--name", "Somebody Else"}).code, 0);
        const Ran ran =
            runAmbit({"round", "--airframe", demo("helicopter/airframe.json"), "--script",
                      demo("helicopter/round.jsonl"), "--key", other, "--out", folder.filePath("other")});
        QCOMPARE(ran.code, 1);
        QVERIFY2(ran.err.contains("Somebody Else"), ran.err.constData());
    }

    // From a finding to its rectification, by hand: each step a record, and the file says what it makes.
    void theFileFollowsADiscrepancy() {
        const QString archive = folder.filePath("file.sqlite");
        const QString record = folder.filePath("first/record.json");
        const Ran taken = runAmbit({"archive", "import", archive, record, folder.filePath("first/photos"),
                                    demo("helicopter/round.jsonl")});
        QCOMPARE(taken.code, 1); // the last is no record: set aside, and the others are in
        QVERIFY2(taken.err.contains("round.jsonl"), taken.err.constData());
        QVERIFY(runAmbit({"archive", "import", archive, record}).out.contains("here already"));

        const auto state = [&] {
            const Ran ran =
                runAmbit({"archive", "state", archive, "OX-DEMO", "--json", "--today", "2026-07-01"});
            return QJsonDocument::fromJson(ran.out).object();
        };
        const QJsonObject before = state();
        const int open = static_cast<int>(before["against"].toArray().size());
        QVERIFY(open > 0);
        const QJsonObject finding = before["discrepancies"].toArray().first().toObject();
        const QString which = finding["record"].toString().left(12) + ':' + finding["point"].toString();

        const QStringList who{"--archive", archive, "--aircraft", "OX-DEMO",  "--serial",      "DEMO-001",
                              "--key",     key(),   "--role",     "mechanic", "--certificate", "C-1"};
        QStringList deferral = QStringList{"defer"} + who;
        deferral +=
            {"--discrepancy", which, "--words", "Small.", "--basis", "14 CFR 91.213(d)", "--placard", "Seen"};
        deferral +=
            {"--determined-by", "Robin Example", "--determined-role", "mechanic", "--until", "2026-07-20"};
        const Ran hazard = runAmbit(deferral + QStringList{"--answers", "no,no,no,no,yes,no"});
        QCOMPARE(hazard.code, 1);
        QVERIFY2(hazard.err.contains("no hazard"), hazard.err.constData());
        QCOMPARE(runAmbit(deferral + QStringList{"--answers", "no,no,no,no,yes"}).code, 1);
        const QString file = folder.filePath("deferral.json");
        const Ran deferred =
            runAmbit(deferral + QStringList{"--answers", "no,no,no,no,yes,yes", "--out", file});
        QVERIFY2(deferred.code == 0, deferred.err.constData());
        QCOMPARE(state()["against"].toArray().size(), open - 1);
        const Ran verified = runAmbit({"verify", file});
        QVERIFY2(verified.code == 0 && verified.out.contains("assessment"), verified.err.constData());

        const Ran unknown = runAmbit(QStringList{"reading"} + who + QStringList{"--counter", "hours=1"});
        QCOMPARE(unknown.code, 1);
        QVERIFY2(unknown.err.contains("airframe-hours"), unknown.err.constData());
        QCOMPARE(
            runAmbit(QStringList{"reading"} + who + QStringList{"--counter", "airframe-hours=1290.0"}).code,
            0);
        const QStringList work = QStringList{"rectify"} + who +
                                 QStringList{"--discrepancy", which,        "--description",      "Replaced.",
                                             "--completed",   "2026-07-02", "--certificate-kind", "mechanic"};
        QCOMPARE(runAmbit(work).code, 0);
        const QJsonObject after = state();
        QCOMPARE(after["discrepancies"].toArray().first().toObject()["state"].toString(),
                 QString("rectified"));
        QCOMPARE(after["counters"].toObject()["airframe-hours"].toObject()["value"].toString(),
                 QString("1290.0"));
        QVERIFY(after["conflicts"].toArray().isEmpty());
        QCOMPARE(after["records"].toArray().size(), 4);

        // One record alone in another archive: those it names are missing, by name.
        const QString torn = folder.filePath("torn.sqlite");
        QCOMPARE(runAmbit({"archive", "import", torn, file}).code, 0);
        const Ran holes = runAmbit({"archive", "verify", torn});
        QCOMPARE(holes.code, 1);
        QVERIFY(holes.out.contains(finding["record"].toString().toUtf8()));
        QCOMPARE(runAmbit({"archive", "verify", archive}).code, 0);
    }

    void aChangedByteIsRefusedByName() {
        QByteArray json = read(folder.filePath("first/record.json"));
        const auto at = json.indexOf("Robin");
        json[at] = 'r';
        const Ran ran =
            runAmbit({"verify", write("changed.json", json), folder.filePath("first/record.json")});
        QCOMPARE(ran.code, 1);
        QVERIFY2(ran.err.contains("changed.json"), ran.err.constData());
        QVERIFY2(ran.out.contains("first/record.json"), "the good file is still reported");
    }

    // An instructor walks the same aircraft the same morning, on their own, and asks something on the way.
    void twoRoundsAreLaidSideBySide() {
        const QByteArray values = R"("values":{"oil-level":"5.2","belt-play":"9","skid-shoe.left":"5.6",)"
                                  R"("skid-shoe.right":"5.1","tail-play":"2.4"})";
        QByteArray open = read(demo("helicopter/round.jsonl")).split('\n').first();
        open.replace("Robin Example", "Ines Example").replace("T07:30", "T08:40");
        const QByteArray script =
            open + "\n{\"do\":\"alone\"}\n{\"do\":\"follow\",\"until\":\"fairing.left\"," + values + "}\n" +
            R"({"do":"finding","point":"fairing.left","words":"Two loose rivets.","class":"grounds"})" +
            "\n{\"do\":\"follow\"," + values + "}\n" +
            R"({"do":"asked","kind":"question","words":"Which rivets?","who":{"name":"Sam Sample","role":"mechanic","certificate":""}})" +
            "\n" + R"({"do":"answer","ask":1,"words":"The upper row."})" + "\n" +
            R"({"do":"conclude","result":"not fit","reasons":"Rivets."})" + "\n";
        const Ran walked =
            runAmbit({"round", "--airframe", demo("helicopter/airframe.json"), "--script",
                      write("ines.jsonl", script), "--out", folder.filePath("ines"), "--json"});
        QVERIFY2(walked.code == 0, walked.err.constData());
        const QString log = write("ines.log", walked.out);
        const QString record = folder.filePath("first/record.json");
        const Ran both = runAmbit({"beside", record, log, "--json"});
        QVERIFY2(both.code == 0, both.err.constData());
        const QJsonObject json = QJsonDocument::fromJson(both.out).object();
        QCOMPARE(json["second"].toObject()["alone"].toBool(), true);
        QCOMPARE(json["first"].toObject()["alone"].toBool(true), false);
        const QJsonObject agreement = json["agreement"].toObject();
        const QJsonArray table = agreement["table"].toArray();
        int sum = 0;
        for (const QJsonValue row : table)
            for (const QJsonValue count : row.toArray())
                sum += count.toInt();
        QCOMPARE(sum, json["points"].toArray().size());
        QCOMPARE(agreement["points"].toInt(), sum);
        QCOMPARE(table[1].toArray()[1].toInt(), 1);  // both found the fairing
        QVERIFY(table[1].toArray()[0].toInt() >= 1); // one finding of the first's the second didn't see
        QCOMPARE(table[2].toArray()[0].toInt(), 1);  // the lamps
        QVERIFY(agreement["kappa"].toDouble() > 0.3 && agreement["kappa"].toDouble() < 0.9);
        QVERIFY(agreement["low"].toDouble() < agreement["kappa"].toDouble());
        for (const QJsonValue one : json["points"].toArray())
            if (one.toObject()["id"] == "fairing.left") {
                QVERIFY(one.toObject()["differs"].toBool()); // of another class
                QCOMPARE(one.toObject()["second"].toObject()["words"].toString(),
                         QString("Two loose rivets."));
                QVERIFY(!one.toObject()["name"].toString().isEmpty());
            }
        const Ran words = runAmbit({"beside", record, log});
        QCOMPARE(words.code, 0);
        QVERIFY2(words.out.contains("Seen differently") && words.out.contains("Cohen's kappa") &&
                     words.out.contains("on their own"),
                 words.out.constData());
        // Its time at each stand; the same from the record and from the log.
        const QStringList by{"--airframe", demo("helicopter/airframe.json"), "--json"};
        const Ran pace = runAmbit(QStringList{"pace", record} + by);
        QVERIFY2(pace.code == 0, pace.err.constData());
        const QJsonObject times = QJsonDocument::fromJson(pace.out).object();
        QVERIFY(times["stands"].toArray().size() > 5);
        double seconds = times["walking"].toDouble() + times["paused"].toDouble();
        for (const QJsonValue stand : times["stands"].toArray())
            seconds += stand.toObject()["seconds"].toDouble();
        const QJsonArray events =
            QJsonDocument::fromJson(read(record)).object()["content"].toObject()["events"].toArray();
        const auto at = [&](const QJsonValue& event) {
            return QDateTime::fromString(event.toObject()["at"].toString(), Qt::ISODateWithMs);
        };
        const double whole = static_cast<double>(at(events.first()).msecsTo(at(events.last()))) / 1000;
        QVERIFY2(seconds <= whole && seconds > 0.8 * whole,
                 qPrintable(QString("%1 of %2").arg(seconds).arg(whole)));
        const Ran again = runAmbit(QStringList{"pace", log} + by);
        QVERIFY(again.code == 0 && again.out != pace.out);
        const Ran replayed =
            runAmbit({"pace", log, "--airframe", demo("helicopter/airframe.json"), "--replay", "100000"});
        QCOMPARE(replayed.code, 0);
        QVERIFY(walked.out.startsWith(
            replayed.out.left(replayed.out.indexOf("Seconds at each stand")).trimmed()));
        QCOMPARE(runAmbit({"pace", record, "--airframe", demo("aeroplane/airframe.json")}).code, 1);
        // What doesn't belong together, or doesn't hold.
        QCOMPARE(runAmbit({"beside", record, record}).code, 1);
        QCOMPARE(runAmbit({"beside", record, demo("helicopter/round.jsonl")}).code, 1);
        QCOMPARE(runAmbit({"beside", record, folder.filePath("nowhere.json")}).code, 3);
        const QString changed = write("changed.json", read(record).replace("Black powder", "White powder"));
        QCOMPARE(runAmbit({"beside", changed, log}).code, 1);
    }

    void aWrongLineIsRefusedByNumber_data() {
        QTest::addColumn<QByteArray>("line");
        QTest::addColumn<QByteArray>("word");
        QTest::newRow("unknown action") << QByteArray("{\"do\":\"fly\"}") << QByteArray("fly");
        QTest::newRow("unknown field")
            << QByteArray("{\"do\":\"pause\",\"haste\":1}") << QByteArray("/haste");
        QTest::newRow("no such point")
            << QByteArray("{\"do\":\"sound\",\"point\":\"wing\"}") << QByteArray("wing");
        QTest::newRow("not JSON") << QByteArray("pause") << QByteArray("line 2");
        QTest::newRow("opened twice") << QByteArray() << QByteArray("line 2");
    }
    void aWrongLineIsRefusedByNumber() {
        QFETCH(QByteArray, line);
        QFETCH(QByteArray, word);
        const QByteArray open = read(demo("helicopter/round.jsonl")).split('\n').first();
        const QString script = write("wrong.jsonl", open + '\n' + (line.isEmpty() ? open : line) + '\n');
        const Ran ran = runAmbit({"round", "--airframe", demo("helicopter/airframe.json"), "--script", script,
                                  "--out", folder.filePath("wrong")});
        QCOMPARE(ran.code, 1);
        QVERIFY2(ran.err.contains("line 2") && ran.err.contains(word), ran.err.constData());
    }

    void aChangedScriptIsAConflict() {
        QByteArray script = read(demo("helicopter/round.jsonl"));
        script.replace("{\"do\": \"pause\"",
                       "{\"do\":\"note\",\"words\":\"Another thing.\"}\n{\"do\": \"pause\"");
        const Ran ran = runAmbit({"round", "--airframe", demo("helicopter/airframe.json"), "--script",
                                  writeBeside(script), "--key", key(), "--out", folder.filePath("first")});
        QCOMPARE(ran.code, 1);
        QVERIFY2(ran.err.contains("event "), ran.err.constData());
    }

private:
    QString key() const { return folder.filePath("key.pem"); }
    QStringList round(const char* out) const {
        return {"round",
                "--airframe",
                demo("helicopter/airframe.json"),
                "--script",
                demo("helicopter/round.jsonl"),
                "--key",
                key(),
                "--out",
                folder.filePath(out)};
    }
    static QByteArray read(const QString& path) {
        QFile file(path);
        return file.open(QFile::ReadOnly) ? file.readAll() : QByteArray();
    }
    QString write(const char* name, const QByteArray& bytes) const {
        QFile file(folder.filePath(name));
        if (file.open(QFile::WriteOnly)) file.write(bytes);
        return file.fileName();
    }
    /// A script with the demo's photos beside it.
    QString writeBeside(const QByteArray& bytes) const {
        QFile::link(demo("helicopter/photos"), folder.filePath("photos"));
        return write("changed.jsonl", bytes);
    }

    QTemporaryDir folder;
    Ran first;
};

QTEST_GUILESS_MAIN(TestCli)
#include "tst_cli.moc"
