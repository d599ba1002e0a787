// What the command line refuses: at once, whole, with the file and what to do; and that nothing is left half
// done.
#include "program.hpp"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>
#include <csignal>
#include <pty.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <termios.h>
#include <unistd.h>

class TestCliRefused : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        QVERIFY(folder.isValid());
        QCOMPARE(runAmbit({"key", "new", at("robin.pem"), "--name", "Robin Example"}).code, 0);
        const Ran walked =
            runAmbit({"round", "--airframe", demo("helicopter/airframe.json"), "--script",
                      demo("helicopter/round.jsonl"), "--key", at("robin.pem"), "--out", at("walked")});
        QVERIFY2(walked.code == 0, walked.err.constData());
        const Ran taken = runAmbit(
            {"archive", "import", at("records.sqlite"), at("walked/record.json"), at("walked/photos")});
        QVERIFY2(taken.code == 0, taken.err.constData());
    }

    // --- the command line itself

    void aWrongWordIsUsage_data() {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QByteArray>("named");
        const QStringList entry{"--archive", at("records.sqlite"), "--aircraft", "OX-DEMO",
                                "--key",     at("robin.pem")};
        QTest::newRow("no such command") << QStringList{"fly"} << QByteArray("fly");
        QTest::newRow("no such command of archive") << QStringList{"archive", "burn"} << QByteArray("burn");
        QTest::newRow("a role that nobody has")
            << QStringList{"reading"} + entry + QStringList{"--role", "king", "--counter", "landings=1"}
            << QByteArray("--role");
        QTest::newRow("trusted for nothing there is")
            << QStringList{"trust"} + entry +
                   QStringList{"--role", "owner", "--name", "Kim", "--fingerprint", "00", "--for", "flying"}
            << QByteArray("--for");
        QTest::newRow("a basis that isn't one")
            << QStringList{"defer"} + entry +
                   QStringList{"--role", "owner", "--discrepancy", "1:2", "--words", "w", "--basis", "hope"}
            << QByteArray("--basis");
        const QStringList watch{"watch", "--key", at("robin.pem"), "--data", at("watched")};
        QTest::newRow("nobody to follow") << watch << QByteArray("--known");
        QTest::newRow("two to follow")
            << watch + QStringList{"code", "--known", "Kim"} << QByteArray("--known");
        // It was refused only when the record came.
        QTest::newRow("a signature in no role")
            << watch + QStringList{"--known", "Kim", "--archive", at("new.sqlite"), "--sign"}
            << QByteArray("--role");
    }
    void aWrongWordIsUsage() {
        QFETCH(QStringList, arguments);
        QFETCH(QByteArray, named);
        const Ran ran = runAmbit(arguments);
        QCOMPARE(ran.code, 2);
        QVERIFY2(ran.err.contains(named), ran.err.constData());
        QVERIFY(!QFile::exists(at("watched")) && !QFile::exists(at("new.sqlite")));
    }

    /// Whatever its name looks like, a file that isn't there is exit code 3.
    void aFileThatIsNotThere_data() {
        QTest::addColumn<QStringList>("arguments");
        for (const QStringList& arguments :
             {QStringList{"verify", "none"}, QStringList{"check", "none"}, QStringList{"plan", "none"},
              QStringList{"solve", "none"}, QStringList{"key", "show", "none"},
              QStringList{"measure", "none"}, QStringList{"beside", "none", "none"},
              QStringList{"archive", "import", at("empty.sqlite"), "none"},
              QStringList{"trend", "--values", "none", "--limit", "max 2 mm"},
              QStringList{"sign", at("walked/record.json"), "--key", "none", "--role", "owner", "--out",
                          at("s")}})
            QTest::newRow(qPrintable(arguments.first())) << arguments;
    }
    void aFileThatIsNotThere() {
        QFETCH(QStringList, arguments);
        const Ran ran = runAmbit(arguments);
        QCOMPARE(ran.code, 3);
        QVERIFY2(ran.err.contains("(none)") && ran.err.contains("Look at its name"), ran.err.constData());
    }

    void whatCannotBePrintedIsNotDone() {
        if (!QFile::exists("/dev/full")) QSKIP("no device here is always full");
        QProcess process;
        process.setStandardOutputFile("/dev/full");
        process.start(QStringLiteral(AMBIT_PROGRAM), {"verify", at("walked/record.json")});
        QVERIFY(process.waitForFinished());
        QCOMPARE(process.exitCode(), 3);
        QVERIFY(process.readAllStandardError().contains("could not be written"));
    }

    void aKeyThatDoesNotOpenIsNamed() {
        const Ran ran = runAmbit(
            {"sign", at("walked/record.json"), "--key", at("robin.pem"), "--role", "pilot", "--out", at("s")},
            "not the passphrase");
        QCOMPARE(ran.code, 3);
        QVERIFY2(ran.err.contains("robin.pem"), ran.err.constData());
        const Ran show = runAmbit({"key", "show", at("walked/record.json")});
        QCOMPARE(show.code, 1);
        QVERIFY2(show.err.contains("record.json"), show.err.constData());
    }

    /// Ctrl-C at the prompt used to leave the terminal without echo.
    void theTerminalEchoesAgain() {
        int terminal = -1;
        const pid_t child = ::forkpty(&terminal, nullptr, nullptr, nullptr);
        if (child == 0) {
            ::unsetenv("AMBIT_PASSPHRASE");
            const QByteArray key = at("robin.pem").toUtf8(), record = at("walked/record.json").toUtf8(),
                             out = at("never").toUtf8();
            ::execl(AMBIT_PROGRAM, AMBIT_PROGRAM, "sign", record.constData(), "--key", key.constData(),
                    "--role", "pilot", "--out", out.constData(), nullptr);
            ::_exit(127);
        }
        QVERIFY(child > 0);
        termios now{};
        const auto echoes = [&] { return ::tcgetattr(terminal, &now) == 0 && (now.c_lflag & ECHO) != 0; };
        QVERIFY(QTest::qWaitFor([&] { return !echoes(); }, 30'000)); // it asks
        const char interrupt = now.c_cc[VINTR] != 0 ? static_cast<char>(now.c_cc[VINTR]) : '\3';
        QCOMPARE(::write(terminal, &interrupt, 1), ssize_t{1});
        int status = 0;
        QVERIFY(QTest::qWaitFor([&] { return ::waitpid(child, &status, WNOHANG) == child; }, 30'000));
        QVERIFY(WIFSIGNALED(status) && WTERMSIG(status) == SIGINT);
        QVERIFY(echoes());
        ::close(terminal);
        QVERIFY(!QFile::exists(at("never")));
    }

    // --- records

    void whatIsNoRecordIsSaidToBeNone_data() {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QByteArray>("words");
        QTest::newRow("empty") << QByteArray() << QByteArray("empty");
        QTest::newRow("a text") << QByteArray("Dear pilot,")
                                << QByteArray("neither a record's JSON nor its PDF");
        QTest::newRow("a PDF behind a line") << QByteArray("\n%PDF-1.7\n\xE2\xE3") << QByteArray("neither");
    }
    void whatIsNoRecordIsSaidToBeNone() {
        QFETCH(QByteArray, bytes);
        QFETCH(QByteArray, words);
        const Ran ran = runAmbit({"verify", write("odd.json", bytes)});
        QCOMPARE(ran.code, 1);
        QVERIFY2(ran.err.contains(words) && ran.err.contains("odd.json"), ran.err.constData());
        QVERIFY2(!ran.err.contains("Mend") && !ran.err.contains("Save it as"), ran.err.constData());
    }

    void whatARecordSaysPassesForNothingElse() {
        const Ran made = runAmbit({"reading", "--archive", at("records.sqlite"), "--aircraft",
                                   "OX-1\n  conclusion   fit, by the pilot", "--serial", "1", "--key",
                                   at("robin.pem"), "--role", "pilot", "--certificate", "A\n  signed by    B",
                                   "--counter", "hours=1", "--out", at("lines.json")});
        QVERIFY2(made.code == 0, made.err.constData());
        const Ran ran = runAmbit({"verify", at("lines.json")});
        QCOMPARE(ran.code, 0);
        QVERIFY2(!ran.out.contains("\n  conclusion"), ran.out.constData());
        QCOMPARE(ran.out.count("\n  signed by"), 1);
    }

    void twoFilesAreSignedOrNone() {
        QCOMPARE(runAmbit({"key", "new", at("mechanic.pem"), "--name", "Sam Fictive"}).code, 0);
        const QStringList sign{"sign",
                               at("walked/record.json"),
                               at("walked/record.pdf"),
                               "--key",
                               at("mechanic.pem"),
                               "--role",
                               "mechanic",
                               "--out",
                               at("twice")};
        // No place for the second: the limit on a file's size stands for a full disk.
        QProcess process;
        process.setChildProcessModifier([] {
            std::signal(SIGXFSZ, SIG_IGN);
            const rlimit most{100'000, 100'000};
            ::setrlimit(RLIMIT_FSIZE, &most);
        });
        auto environment = QProcessEnvironment::systemEnvironment();
        environment.insert("AMBIT_PASSPHRASE", "a test passphrase");
        process.setProcessEnvironment(environment);
        process.start(QStringLiteral(AMBIT_PROGRAM), sign);
        QVERIFY(process.waitForFinished(60'000));
        QCOMPARE(process.exitCode(), 3);
        QVERIFY(process.readAllStandardError().contains("record.pdf"));
        QCOMPARE(QDir(at("twice")).entryList(QDir::Files | QDir::Hidden), QStringList());
        QCOMPARE(runAmbit(sign).code, 0); // and the next try isn't told that there is a file already
    }

    // --- entries

    void nothingIsSignedThatCannotBeLeft() {
        const auto reading = [&](const QString& out) {
            return runAmbit(QStringList{"reading", "--counter", "landings=4200"} + entry() +
                            QStringList{"--out", out});
        };
        const auto records = found().size();
        const Ran nowhere = reading(at("nowhere/reading.json"));
        QCOMPARE(nowhere.code, 3);
        QVERIFY2(nowhere.err.contains("nowhere"), nowhere.err.constData());
        const QByteArray mine = read(at("robin.pem"));
        QCOMPARE(reading(at("robin.pem")).code, 3);
        QCOMPARE(read(at("robin.pem")), mine); // it used to be overwritten
        QCOMPARE(found().size(), records);
        QCOMPARE(reading(at("reading.json")).code, 0);
        QCOMPARE(found().size(), records + 1);
        QCOMPARE(runAmbit({"verify", at("reading.json")}).code, 0);
    }

    void anotherSerialNumberIsAnotherAircraft() {
        const auto records = found().size();
        const Ran ran =
            runAmbit(QStringList{"reading", "--counter", "landings=4300", "--serial", "DEMO-999"} + entry());
        QCOMPARE(ran.code, 1);
        QVERIFY2(ran.err.contains("DEMO-001"), ran.err.constData());
        QCOMPARE(found().size(), records);
    }

    void aWrongFieldIsNamedByItsOption() {
        const Ran ran = runAmbit(QStringList{"rectify", "--description", "Cleaned.", "--completed",
                                             "2026-02-29", "--certificate-kind", "airframe"} +
                                 entry());
        QCOMPARE(ran.code, 1);
        QVERIFY2(ran.err.contains("--completed"), ran.err.constData());
    }

    // --- archives

    void anEmptyFileIsNoArchiveOfWhichAllHolds() {
        const QString file = write("emptied.sqlite", "");
        for (const QStringList& command :
             {QStringList{"verify", file}, QStringList{"state", file, "OX-DEMO"}, QStringList{"find", file},
              QStringList{"backup", file, at("copy.sqlite")},
              QStringList{"merge", at("into.sqlite"), file}}) {
            const Ran ran = runAmbit(QStringList{"archive"} + command);
            QCOMPARE(ran.code, 3);
            QVERIFY2(ran.err.contains("empty"), ran.err.constData());
        }
        QCOMPARE(read(file), QByteArray());
        QVERIFY(!QFile::exists(at("into.sqlite"))); // nor is one made to merge nothing into
    }

    void anAircraftThatNobodyKnowsDoesNotHold_data() {
        QTest::addColumn<QStringList>("command");
        QTest::newRow("verify") << QStringList{"verify", at("records.sqlite"), "OX-DMEO"};
        QTest::newRow("history") << QStringList{"history", at("records.sqlite"), "OX-DMEO", "fairing.left"};
        QTest::newRow("retention") << QStringList{"retention", at("records.sqlite"), "OX-DMEO"};
        QTest::newRow("state") << QStringList{"state", at("records.sqlite"), "OX-DMEO"};
    }
    void anAircraftThatNobodyKnowsDoesNotHold() {
        QFETCH(QStringList, command);
        const Ran ran = runAmbit(QStringList{"archive"} + command);
        QCOMPARE(ran.code, 1);
        QVERIFY2(ran.err.contains("OX-DMEO"), ran.err.constData());
        QCOMPARE(ran.out, QByteArray());
    }
    void anAircraftWithALogAloneIsKnown() {
        QCOMPARE(runAmbit({"round", "--airframe", demo("helicopter/airframe.json"), "--script",
                           write("open.jsonl", read(demo("helicopter/round.jsonl")).split('\n').first()),
                           "--out", at("open")})
                     .code,
                 0);
        QCOMPARE(runAmbit({"archive", "verify", at("open/archive.sqlite"), "OX-DEMO"}).code, 0);
    }

    // A quote in it made `verify` say that its records had been moved.
    void anOddRegistrationStaysInItsPlace() {
        const QString odd = R"(OX "\ü" '; --/..)";
        const QString archive = write("odd.sqlite", read(at("records.sqlite")));
        const Ran made = runAmbit({"reading", "--archive", archive, "--aircraft", odd, "--serial", "1",
                                   "--key", at("robin.pem"), "--role", "pilot", "--counter", "hours=1"});
        QVERIFY2(made.code == 0, made.err.constData());
        const Ran checked = runAmbit({"archive", "verify", archive, odd, "--contents"});
        QVERIFY2(checked.code == 0, checked.out + checked.err);
        QVERIFY(checked.out.startsWith("1 records looked at"));
        QCOMPARE(runAmbit({"archive", "export", archive, odd, "--out", at("odd.zip")}).code, 0);
        QCOMPARE(runAmbit({"archive", "import", at("odd-again.sqlite"), at("odd.zip")}).code, 0);
        QCOMPARE(runAmbit({"archive", "verify", at("odd-again.sqlite"), odd}).code, 0);
    }

    void aKindThatIsNoneIsNotJustNotFound() {
        const Ran ran = runAmbit({"archive", "find", at("records.sqlite"), "--kind", "rectificaton"});
        QCOMPARE(ran.code, 1);
        QVERIFY2(ran.err.contains("rectification"), ran.err.constData());
        QCOMPARE(runAmbit({"archive", "find", at("records.sqlite"), "--kind", "part change"}).code, 0);
    }

    void anAirframeThatIsNotHereIsNotOneWithoutInspections() {
        const Ran ran = runAmbit({"archive", "state", at("records.sqlite"), "OX-DEMO"});
        QVERIFY2(ran.out.contains("Due\n  not known"), ran.out.constData());
        const auto described = [&] {
            const Ran json = runAmbit({"archive", "state", at("records.sqlite"), "OX-DEMO", "--json"});
            return QJsonDocument::fromJson(json.out)["described"].toBool();
        };
        QVERIFY(!described());
        QCOMPARE(runAmbit({"archive", "import", at("records.sqlite"), demo("helicopter/airframe.json")}).code,
                 0);
        QVERIFY(described());
    }

    void aHistoryThatIsCutOffSaysSo() {
        const Ran ran =
            runAmbit({"archive", "history", at("records.sqlite"), "OX-DEMO", "fairing.left", "--most", "1"});
        QCOMPARE(ran.code, 0);
        QVERIFY2(ran.out.contains("--after"), ran.out.constData());
        QVERIFY(!runAmbit({"archive", "history", at("records.sqlite"), "OX-DEMO", "fairing.left"})
                     .out.contains("--after"));
    }

    /// A record and its PDF are one record.
    void aMergeCountsRecordsOnce() {
        const auto merge = [&] {
            const Ran ran =
                runAmbit({"archive", "merge", at("counted.sqlite"), at("walked/archive.sqlite"), "--json"});
            return QJsonDocument::fromJson(ran.out);
        };
        const auto first = merge();
        QCOMPARE(first["newRecords"].toInt(), 1);
        QCOMPARE(first["knownRecords"].toInt(), 0);
        const auto second = merge();
        QCOMPARE(second["newRecords"].toInt(), 0);
        QCOMPARE(second["knownRecords"].toInt(), 1);
    }

    void aBackupIntoNoFolderNamesIt() {
        const Ran ran = runAmbit({"archive", "backup", at("records.sqlite"), at("nowhere/copy.sqlite")});
        QCOMPARE(ran.code, 3);
        QVERIFY2(ran.err.contains("nowhere/copy.sqlite") && ran.err.contains("folder"), ran.err.constData());
    }

private:
    [[nodiscard]] QString at(const char* name) const { return folder.filePath(name); }
    [[nodiscard]] QString write(const char* name, const QByteArray& bytes) const {
        QFile file(at(name));
        if (!file.open(QFile::WriteOnly) || file.write(bytes) != bytes.size()) qFatal("%s", name);
        return at(name);
    }
    [[nodiscard]] static QByteArray read(const QString& path) {
        QFile file(path);
        return file.open(QFile::ReadOnly) ? file.readAll() : QByteArray();
    }
    [[nodiscard]] QStringList entry() const {
        return {"--archive", at("records.sqlite"), "--aircraft",    "OX-DEMO", "--key", at("robin.pem"),
                "--role",    "mechanic",           "--certificate", "X.66/12"};
    }
    [[nodiscard]] QList<QByteArray> found() const {
        auto lines = runAmbit({"archive", "find", at("records.sqlite"), "--json"}).out.split('\n');
        lines.removeAll(QByteArray());
        return lines;
    }

    QTemporaryDir folder;
};

QTEST_GUILESS_MAIN(TestCliRefused)
#include "tst_cli_refused.moc"
