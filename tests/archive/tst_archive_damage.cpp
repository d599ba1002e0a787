// Disks that fail, files that are cut or scribbled on: nothing acknowledged is lost, nothing wrong is given
// back as right, and what is refused is left as it is.
#include "archive/unflushed.hpp"
#include "archives.hpp"
#include "failing_disk.hpp"

#include <QFile>
#include <QTest>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <random>

using namespace ambit;
using archive::Archive;
using archive::OpenRound;
using test::House;

namespace {

/// Everything an archive says about one round and its record, or the first error.
Result<std::string> everything(const Archive& archive, const std::string& roundId,
                               const std::string& record) {
    std::string all;
    const auto events = archive.events(roundId);
    if (!events) return tl::unexpected(events.error());
    for (const auto& event : *events) {
        all += canonicalJson(toJson(event));
        if (const auto* settled = std::get_if<round::Settled>(&event.what)) {
            for (const auto& photo : settled->photos) {
                auto bytes = archive.photo(photo.sha256);
                if (!bytes) return bytes;
                all += *bytes;
            }
        }
    }
    for (auto part : {archive.recordJson(record), archive.recordPdf(record)}) {
        if (!part) return part;
        all += *part;
    }
    return all;
}

std::vector<std::string> filesOf(const std::string& file) {
    return {file, file + "-wal"};
}

std::string bytesOf(const std::string& file) {
    std::string all;
    for (const std::string& one : filesOf(file))
        all += (std::filesystem::exists(one) ? readFile(one).value() : "") +
               "|"; // SQLite may leave an empty log
    return all;
}

void put(const std::string& file, const std::string& bytes) {
    QFile out(file.c_str());
    if (!out.open(QFile::WriteOnly) || out.write(bytes.data(), static_cast<qint64>(bytes.size())) < 0)
        qFatal("write");
}

} // namespace

class TestArchiveDamage : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        test::useFailingDisk();
        auto archive = house.open();
        QVERIFY(house.addAircraft(archive));
        auto round = house.begin(archive);
        QVERIFY(round->act(round::StandReached{"left"}, {1}));
        const auto picture = test::photo(std::string(20000, '\x42'));
        round::Settled settled = test::finding("arc-clear");
        settled.photos = {picture.photo};
        QVERIFY(round->act(settled, {2}, {picture}));
        QVERIFY(round->act(round::Reopened{"arc-clear", "Seen again."}, {3}));
        roundId = round->state().id;
        record = test::sealed(*round, {}, '1');
        whole = everything(archive, roundId, record).value();
    }

    // --- a disk that fails

    void everyCommitIsSynced() {
        const House fresh;
        auto archive = fresh.open();
        QVERIFY(fresh.addAircraft(archive));
        auto round = fresh.begin(archive);
        test::syncsDone();
        int steps = 0;
        for (; test::step(*round); ++steps)
            QVERIFY(test::syncsDone() >= 1);
        QVERIFY(steps > 20);
    }

    /// A copy that can be had again doesn't wait for the disk; who looks, or is there after a kill, has it
    /// all.
    void aCopyIsNotSynced() {
        const House fresh;
        auto archive = fresh.open();
        QVERIFY(archive::commitUnflushed(archive));
        QVERIFY(fresh.addAircraft(archive));
        auto round = fresh.begin(archive);
        test::syncsDone();
        int steps = 0;
        for (; steps < 20 && test::step(*round); ++steps)
            QCOMPARE(test::syncsDone(), 0);
        QCOMPARE(steps, 20);
        const auto another = fresh.open();
        QCOMPARE(another.events(round->state().id).value().size(), round->events().size());
    }

    void whateverWriteFailsNothingAcknowledgedIsLost() {
        int failures = 0;
        for (int fuse = 0; fuse < 160; ++fuse) {
            const House fresh;
            test::setFuse(fuse);
            std::string id;
            std::vector<std::string> acknowledged;
            const bool failed = walk(fresh, id, acknowledged);
            test::setFuse(-1);
            failures += failed ? 1 : 0;
            auto archive = Archive::open(fresh.file());
            QVERIFY2(archive, archive ? "" : toText(archive.error()).c_str());
            const auto rounds = archive->rounds();
            QVERIFY(rounds);
            if (acknowledged.empty()) continue;
            const auto events = archive->events(id);
            QVERIFY(events);
            QVERIFY(events->size() >= acknowledged.size() && events->size() <= acknowledged.size() + 1);
            for (std::size_t i = 0; i < acknowledged.size(); ++i)
                QCOMPARE(canonicalJson(toJson((*events)[i])), acknowledged[i]);
            auto resumed = OpenRound::resume(*archive, fresh.machine, id);
            QVERIFY(resumed);
            if (const auto done = test::step(*resumed)) QVERIFY(*done);
        }
        QVERIFY(failures > 100);
    }

    // --- a file that is damaged

    void aCutFileIsRefusedAndLeft() {
        const std::string good = readFile(house.file()).value();
        QVERIFY(good.size() > 40000);
        for (std::size_t size = 1; size < good.size(); size += size < 300 ? 1 : 509) {
            const House other;
            put(other.file(), good.substr(0, size));
            const auto archive = Archive::open(other.file());
            QVERIFY2(!archive, qPrintable(QString::number(size)));
            QCOMPARE(archive.error().code, ErrorCode::storage);
            QVERIFY(!archive.error().remedy.empty());
            QCOMPARE(readFile(other.file()).value(), good.substr(0, size));
        }
    }

    // SQLite itself would take it for a new database and throw the log away.
    void anEmptiedFileWithALogIsRefusedAndLeft() {
        const House other;
        put(other.file(), "");
        put(other.file() + "-wal", std::string(5000, 'x'));
        const auto archive = Archive::open(other.file());
        QCOMPARE(archive.error().code, ErrorCode::storage);
        QCOMPARE(readFile(other.file() + "-wal").value(), std::string(5000, 'x'));
    }

    void noiseIsAnErrorOrHarmless_data() {
        QTest::addColumn<bool>("inLog");
        QTest::newRow("in the file") << false;
        QTest::newRow("in the file, with a log beside it") << true;
    }
    void noiseIsAnErrorOrHarmless() {
        QFETCH(bool, inLog);
        const House source;
        std::string id;
        std::string logged = copyWithLog(source, id);
        const std::string& good = inLog ? logged : readFile(house.file()).value();
        const std::string log = inLog ? readFile(source.file() + ".log").value() : std::string();
        std::mt19937 random(7);
        int refused = 0;
        for (int run = 0; run < 150; ++run) {
            std::string noisy = good;
            const std::size_t at = random() % noisy.size();
            for (std::size_t i = at; i < std::min(noisy.size(), at + 1 + static_cast<std::size_t>(run % 64));
                 ++i)
                noisy[i] = static_cast<char>(random());
            const House other;
            put(other.file(), noisy);
            if (inLog) put(other.file() + "-wal", log);
            const std::string before = bytesOf(other.file());
            auto archive = Archive::open(other.file());
            if (!archive) {
                ++refused;
                QCOMPARE(bytesOf(other.file()), before);
                continue;
            }
            const auto read = everything(*archive, roundId, record);
            if (!inLog && read) QCOMPARE(*read, whole);
            refused += read ? 0 : 1;
        }
        QVERIFY2(refused > 10, qPrintable(QString::number(refused)));
    }

    // One letter in one event: SQLite doesn't notice, the digest does.
    void aChangedLetterIsFound() {
        std::string bytes = readFile(house.file()).value();
        const std::size_t at = bytes.find("Seen again.");
        QVERIFY(at != std::string::npos);
        bytes[at] = 'B';
        const House other;
        put(other.file(), bytes);
        auto archive = Archive::open(other.file());
        QVERIFY(archive);
        const auto events = archive->events(roundId);
        QVERIFY(!events);
        QCOMPARE(events.error().code, ErrorCode::storage);
        QVERIFY(events.error().where.find("event 4") != std::string::npos);
    }

private:
    /// Walks a round to the end or to the first failure (true), after which nothing may have changed in
    /// memory.
    static bool walk(const House& house, std::string& id, std::vector<std::string>& acknowledged) {
        auto archive = Archive::open(house.file());
        if (!archive || !house.addAircraft(*archive)) return true;
        auto round = house.begin(*archive);
        if (!round) return true;
        id = round->state().id;
        acknowledged.push_back(canonicalJson(toJson(round->events().back())));
        for (;;) {
            const std::string before = test::described(round->state());
            const auto done = test::step(*round);
            if (!done) return false;
            if (!*done) {
                [&] {
                    QCOMPARE(test::described(round->state()), before);
                    QCOMPARE(round->events().size(), acknowledged.size());
                }();
                return true;
            }
            acknowledged.push_back(canonicalJson(toJson(round->events().back())));
        }
    }

    /// The bytes of an archive whose last events are still in its log (kept as ".log").
    std::string copyWithLog(const House& source, std::string& id) const {
        auto archive = source.open();
        if (!source.addAircraft(archive)) qFatal("no aircraft");
        auto round = source.begin(archive);
        id = round->state().id;
        while (test::step(*round)) {
        }
        put(source.file() + ".log", readFile(source.file() + "-wal").value());
        return readFile(source.file()).value();
    }

    House house;
    std::string roundId;
    std::string record;
    std::string whole;
};

QTEST_APPLESS_MAIN(TestArchiveDamage)
#include "tst_archive_damage.moc"
