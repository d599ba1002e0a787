// Two real processes on two hosts of their own, and between them a network that delays by 200 ms, loses one
// packet in ten, reorders and cuts for 30 s at random; the watcher is killed now and then. However it goes,
// its log is at every moment a beginning of the walker's, and in the end the same, byte for byte.
//
// AMBIT_LINK_SEEDS=100-1099 AMBIT_LINK_AT_ONCE=40 runs a thousand of them by hand; CI runs a few.
#include "bad_network.hpp"
#include "program.hpp"

#include <QElapsedTimer>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <csignal>
#include <random>

namespace {

QByteArray contentOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// Whole lines only: a killed process may have been in the middle of one.
QByteArray linesOf(const QString& path) {
    const QByteArray bytes = contentOf(path);
    return bytes.left(bytes.lastIndexOf('\n') + 1);
}

bool isAlive(pid_t process) {
    return kill(process, 0) == 0;
}

/// Byte for byte. The walker prints no line of `signed`, the event that seals its log.
bool isBeginning(QByteArray part, const QByteArray& whole) {
    const auto last = part.lastIndexOf('\n', -2) + 1;
    if (part.mid(last).contains(R"("kind":"signed")")) part.truncate(last);
    return whole.startsWith(part);
}

/// One walk, followed.
struct Run {
    quint64 seed = 0;
    std::unique_ptr<BadNetwork> network;
    std::unique_ptr<QTemporaryDir> folder;
    pid_t walker = -1, watcher = -1;
    int kills = 0;
    std::mt19937_64 random;
    qint64 nextKill = 0;
    QElapsedTimer since;
    QString failed;
    QByteArray seen; ///< by all watchers' lives so far

    [[nodiscard]] QString path(const char* name) const { return folder->filePath(QLatin1String(name)); }
};

} // namespace

class LinkNetworkTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() {
        QVERIFY(keys.isValid());
        for (const char* name : {"Kim Example", "Sam Fictive"}) {
            const Ran made = runAmbit({"key", "new", keys.filePath(QLatin1String(name)), "--name", name});
            QVERIFY2(made.code == 0, made.err.constData());
        }
        qputenv("AMBIT_PASSPHRASE", "a test passphrase");
        qputenv("QT_QPA_PLATFORM", "offscreen");
        const int patience = qEnvironmentVariableIntValue("AMBIT_LINK_PATIENCE");
        if (patience > 0) mostMs = 1000 * qint64{patience};
    }

    void whateverTheNetworkDoes() {
        const auto range = qEnvironmentVariable("AMBIT_LINK_SEEDS", QStringLiteral("1-6")).split(u'-');
        const auto first = range.first().toULongLong();
        const auto last = range.last().toULongLong();
        const int atOnce = qEnvironmentVariableIntValue("AMBIT_LINK_AT_ONCE") > 0
                               ? qEnvironmentVariableIntValue("AMBIT_LINK_AT_ONCE")
                               : 6;
        std::vector<Run> running;
        quint64 next = first;
        int done = 0;
        qint64 lost = 0, cuts = 0, kills = 0, reordered = 0;
        while (next <= last || !running.empty()) {
            while (next <= last && running.size() < static_cast<std::size_t>(atOnce)) {
                auto run = begin(next++);
                if (!run) QSKIP(qPrintable(why));
                running.push_back(std::move(*run));
            }
            for (auto it = running.begin(); it != running.end();) {
                if (!goesOn(*it)) {
                    QVERIFY2(it->failed.isEmpty(),
                             qPrintable(QStringLiteral("seed %1: %2").arg(it->seed).arg(it->failed)));
                    const auto counts = it->network->counts();
                    lost += counts.lost;
                    cuts += counts.cuts;
                    reordered += counts.reordered;
                    kills += it->kills;
                    ++done;
                    it = running.erase(it);
                } else {
                    ++it;
                }
            }
            QTest::qWait(50);
        }
        qInfo("%d walks followed to the last byte; %lld packets lost, %lld reordered, %lld cuts, %lld kills",
              done, lost, reordered, cuts, kills);
        QVERIFY(lost > 0 && reordered > 0);
    }

private:
    std::optional<Run> begin(quint64 seed) {
        Run run;
        run.seed = seed;
        run.random.seed(seed);
        run.network = BadNetwork::make({200, 100, 0.1, 15'000, 30'000}, seed, why);
        if (!run.network) return std::nullopt;
        run.folder = std::make_unique<QTemporaryDir>();
        run.since.start();
        run.nextKill = seed % 2 == 0 ? 0 : 1000 + static_cast<qint64>(run.random() % 40000);
        const int pace = 20 + static_cast<int>(run.random() % 200);
        const QString machine = demo("aeroplane/airframe.json");
        run.walker = run.network->start(0, QStringLiteral(AMBIT_PROGRAM),
                                        {"round",
                                         "--airframe",
                                         machine,
                                         "--script",
                                         demo("aeroplane/round.jsonl"),
                                         "--key",
                                         keys.filePath("Kim Example"),
                                         "--out",
                                         run.path("walked"),
                                         "--json",
                                         "--serve",
                                         "--shown",
                                         BadNetwork::addresses[0],
                                         "--invitation",
                                         run.path("code"),
                                         "--await",
                                         "1",
                                         "--pace",
                                         QString::number(pace),
                                         "--linger",
                                         "600"},
                                        run.path("walker.log"), run.path("walker.err"));
        return run;
    }

    /// False: it is through, well or not.
    bool goesOn(Run& run) {
        const auto fails = [&](const QString& what) {
            run.failed = what + QString::fromUtf8("\n" + contentOf(run.path("walker.err")) +
                                                  contentOf(run.path("watcher.err")));
            for (const pid_t one : {run.walker, run.watcher})
                if (one > 0) kill(one, SIGKILL);
            return false;
        };
        if (run.since.elapsed() > mostMs)
            return fails(QStringLiteral("not through after %1 s: %2 of %3 events")
                             .arg(mostMs / 1000)
                             .arg(linesOf(run.path("watcher.log")).count('\n'))
                             .arg(eventsOf(run).count('\n')));
        const QByteArray code = contentOf(run.path("code")).trimmed();
        if (code.isEmpty()) return isAlive(run.walker) || fails(QStringLiteral("the walker's program ended"));
        // Photos may take minutes more on such a network; the logs are what this is about.
        const bool isSigned = contentOf(run.path("watcher.log")).contains(R"("kind":"signed")");
        if (isSigned && contentOf(run.path("walker.log")).contains(R"({"record")")) return ends(run, fails);
        if (run.watcher < 0 || !isAlive(run.watcher)) {
            if (run.watcher < 0 || run.nextKill < 0) {
                // The first one, or the one after a kill: known by then, or with the code still.
                const bool known = QFile::exists(run.path("watched/walkers.json"));
                run.nextKill = run.nextKill < 0 ? 0 : run.nextKill;
                QStringList arguments{"watch", "--key", keys.filePath("Sam Fictive"), "--data",
                                      run.path("watched")};
                arguments +=
                    known ? QStringList{"--known", "Kim Example"} : QStringList{QString::fromUtf8(code)};
                run.watcher = run.network->start(1, QStringLiteral(AMBIT_PROGRAM), arguments,
                                                 run.path("watcher.log"), run.path("watcher.err"));
                return true;
            }
            return fails(QStringLiteral("the watcher's program ended"));
        }
        if (run.nextKill > 0 && run.since.elapsed() > run.nextKill) {
            kill(run.watcher, SIGKILL);
            while (isAlive(run.watcher))
                QTest::qWait(5);
            run.seen = linesOf(run.path("watcher.log"));
            if (!isBeginning(run.seen, eventsOf(run)))
                return fails(QStringLiteral("the watcher's log was no beginning of the walker's"));
            QFile::remove(run.path("watcher.log")); // it prints anew what it has, and goes on
            ++run.kills;
            run.nextKill = -1;
        }
        return true;
    }

    template<class Fails> bool ends(Run& run, Fails fails) {
        for (const pid_t one : {run.walker, run.watcher})
            if (one > 0) kill(one, SIGKILL);
        const QByteArray walked = eventsOf(run);
        const QByteArray followed = linesOf(run.path("watcher.log"));
        if (walked.count('\n') < 50 || !followed.contains(R"("kind":"signed")"))
            return fails(QStringLiteral("the walk wasn't walked to its end"));
        if (!isBeginning(followed, walked) || followed.size() < walked.size())
            return fails(QStringLiteral("the logs differ: %1 and %2 events")
                             .arg(walked.count('\n'))
                             .arg(followed.count('\n')));
        return false;
    }

    /// The walker's log so far; the record's line isn't an event.
    static QByteArray eventsOf(const Run& run) {
        QByteArray lines = linesOf(run.path("walker.log"));
        const auto record = lines.lastIndexOf("{\"record\"");
        return record < 0 ? lines : lines.left(record);
    }

    qint64 mostMs = 900'000; ///< for one walk
    QTemporaryDir keys;
    QString why;
};

int main(int count, char** arguments) {
    // A thousand walks take longer than the five minutes that Qt Test allows.
    if (!qEnvironmentVariableIsSet("QTEST_FUNCTION_TIMEOUT")) qputenv("QTEST_FUNCTION_TIMEOUT", "86400000");
    QCoreApplication application(count, arguments);
    LinkNetworkTest test;
    return QTest::qExec(&test, count, arguments);
}
#include "tst_link_network.moc"
