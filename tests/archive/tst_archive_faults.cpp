// Import, merge, backup, removal and export on disks that fail or are full; larger archives cut off or
// scribbled on. Nothing acknowledged is lost, nothing is half done, what is said helps, and doing it again
// succeeds.
#include "archive/export.hpp"
#include "archive/merge.hpp"
#include "archive/offers.hpp"
#include "archive/remove.hpp"
#include "archive/verify.hpp"
#include "base/hash.hpp"
#include "failing_disk.hpp"
#include "fleet/keys.hpp"
#include "fleets.hpp"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <filesystem>
#include <functional>
#include <random>

using namespace ambit;
using archive::Archive;

namespace {

using Facts = std::vector<std::string>;
using Operation = std::function<Result<void>(Archive&)>;

template<class Value> Value sure(Result<Value> result) {
    if (!result) qFatal("%s", toText(result.error()).c_str());
    return std::move(*result);
}

/// What the archive holds of records and photos; an error where it can't say.
Result<Facts> factsOf(const Archive& archive) {
    Facts facts;
    const auto files = archive.files();
    if (!files) return tl::unexpected(files.error());
    for (const std::string& registration : *files) {
        const auto told = archive.told(registration);
        if (!told) return tl::unexpected(told.error());
        for (const file::Told& one : *told) {
            facts.push_back(one.sha256 + ' ' + file::packed(one));
            const auto copies = archive.signedCopies(one.sha256);
            if (!copies) return tl::unexpected(copies.error());
            for (const std::string& copy : *copies)
                facts.push_back(one.sha256 + " as " + sha256Hex(copy));
        }
        const auto heads = archive.heads(registration);
        if (!heads) return tl::unexpected(heads.error());
        for (const std::string& head : *heads)
            facts.push_back("latest " + head);
    }
    return facts;
}

/// The same of a file, which must also hold.
Facts factsIn(const std::string& file) {
    const auto archive = sure(Archive::open(file));
    auto facts = sure(factsOf(archive));
    const auto checked = sure(archive::verify(archive));
    for (const auto& one : checked.broken)
        facts.push_back("broken " + one.sha256);
    for (const auto& one : checked.holes)
        facts.push_back("hole " + one.sha256);
    return facts;
}

Result<void> importing(Archive& archive, const std::vector<std::string>& things) {
    return archive::importAll(archive, test::offering(things),
                              [](const std::string&, const Result<archive::Imported>&) {});
}
Result<void> merging(Archive& archive, const std::string& from) {
    const auto merged = archive::merge(archive, from);
    return merged ? Result<void>() : tl::unexpected(merged.error());
}

bool saysOf(const Error& error, const char* word) {
    return error.remedy.find(word) != std::string::npos;
}

/// A small file system of its own, if this user may mount one.
class SmallDisk {
public:
    SmallDisk() {
        QProcess mount;
        mount.start("mount", {"-t", "tmpfs", "-o", "size=4m", "tmpfs", folder.path()});
        isThere =
            mount.waitForFinished() && mount.exitStatus() == QProcess::NormalExit && mount.exitCode() == 0;
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;
    ~SmallDisk() {
        if (isThere) QProcess::execute("umount", {"-l", folder.path()});
    }
    [[nodiscard]] std::string path(const char* name) const { return folder.filePath(name).toStdString(); }
    /// Leaves so much room.
    void fill(std::uintmax_t left) const {
        makeRoom();
        const auto free = std::filesystem::space(folder.path().toStdString()).available;
        QFile filler(folder.filePath("filler"));
        const QByteArray zeros(static_cast<qsizetype>(free - left), '\0');
        if (!filler.open(QFile::WriteOnly) || filler.write(zeros) != zeros.size()) qFatal("not filled");
    }
    void makeRoom() const { QFile::remove(folder.filePath("filler")); }

    bool isThere = false;

private:
    QTemporaryDir folder;
};

} // namespace

class TestArchiveFaults : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        QVERIFY(folder.isValid());
        test::useFailingDisk();
        fleet::Plan plan;
        plan.aircraft = 1;
        plan.years = 1;
        plan.records = 120;
        records = test::fleetRecords(plan);
        const auto half = records.begin() + 80;
        first.assign(records.begin(), half);
        second.assign(half, records.end());
        key.emplace(sure(fleet::derivedKey(1, "k", "Kim Example", {1451606400000})));
        auto archive = sure(Archive::open(path("base")));
        test::keepAll(archive, first);
        auto other = sure(Archive::open(path("other")));
        test::keepAll(other, second);
    }

    // --- a disk that fails

    void whateverWriteFailsItIsDoneOrNot_data() {
        QTest::addColumn<QString>("what");
        QTest::addColumn<bool>("full");
        for (const char* what : {"import", "merge", "remove"}) {
            QTest::addRow("%s, write error", what) << what << false;
            QTest::addRow("%s, disk full", what) << what << true;
        }
    }
    void whateverWriteFailsItIsDoneOrNot() {
        QFETCH(QString, what);
        QFETCH(bool, full);
        const Operation operation = operationOf(what);
        const Facts before = factsIn(path("base"));
        const Facts after = [&] {
            copy("base", "undisturbed");
            auto archive = sure(Archive::open(path("undisturbed")));
            const auto done = operation(archive);
            if (!done) qFatal("%s", toText(done.error()).c_str());
            return identities(sure(factsOf(archive)));
        }();
        QVERIFY(identities(before) != after);
        int failures = 0;
        for (int fuse = 0;; fuse += fuse < 12 ? 1 : 9) {
            copy("base", "failing");
            Result<void> done;
            {
                auto archive = sure(Archive::open(path("failing")));
                full ? test::setRoom(fuse + 1) : test::setFuse(fuse);
                done = operation(archive);
            } // closing fails, too
            test::setFuse(-1);
            const Facts now = factsIn(path("failing"));
            if (done) {
                QCOMPARE(identities(now), after);
                break;
            }
            ++failures;
            QCOMPARE(done.error().code, ErrorCode::storage);
            QVERIFY(!done.error().remedy.empty());
            if (full) QVERIFY2(saysOf(done.error(), "room"), toText(done.error()).c_str());
            // A commit whose sync failed may be there or not, but whole.
            QVERIFY2(now == before || identities(now) == after, std::to_string(fuse).c_str());
            if (now != before) continue;
            auto archive = sure(Archive::open(path("failing")));
            const auto again = operation(archive);
            QVERIFY2(again, again ? "" : toText(again.error()).c_str());
            QCOMPARE(identities(sure(factsOf(archive))), after);
        }
        QVERIFY2(failures > 12, std::to_string(failures).c_str());
    }

    /// After an error the same open archive goes on as if nothing had been.
    void theSameConnectionGoesOn() {
        for (const char* what : {"import", "merge", "remove"}) {
            for (int fuse = 0; fuse < 60; fuse += 5) {
                copy("base", "going-on");
                auto archive = sure(Archive::open(path("going-on")));
                test::setFuse(fuse);
                const auto done = operationOf(what)(archive);
                test::setFuse(-1);
                if (done) continue;
                const auto again = operationOf(what)(archive);
                QVERIFY2(again, again ? "" : toText(again.error()).c_str());
                QVERIFY(sure(archive::verify(archive)).broken.empty());
            }
        }
    }

    void aBackupThatFailsLeavesNothing() {
        const Facts before = factsIn(path("base"));
        int failures = 0;
        for (const bool full : {false, true}) {
            for (int fuse = 0;; fuse += fuse < 12 ? 1 : 5) {
                std::filesystem::remove(path("copy"));
                const auto archive = sure(Archive::open(path("base")));
                full ? test::setRoom(fuse + 1) : test::setFuse(fuse);
                const auto done = archive::backUp(archive, path("copy"));
                test::setFuse(-1);
                for (const auto& entry : std::filesystem::directory_iterator(folder.path().toStdString()))
                    QVERIFY2(!entry.path().filename().string().starts_with(".ambit"), entry.path().c_str());
                QCOMPARE(std::filesystem::exists(path("copy")), done.has_value());
                if (done) break;
                ++failures;
                QVERIFY(!done.error().remedy.empty());
                if (full) QVERIFY2(saysOf(done.error(), "room"), toText(done.error()).c_str());
            }
            QCOMPARE(factsIn(path("copy")), before);
        }
        QVERIFY2(failures > 20, std::to_string(failures).c_str());
    }

    // --- a disk that is full

    void aFullDisk_data() {
        QTest::addColumn<QString>("what");
        for (const char* what : {"import", "merge"})
            QTest::newRow(what) << what;
    }
    void aFullDisk() {
        QFETCH(QString, what);
        const SmallDisk disk;
        if (!disk.isThere) QSKIP("this user may not mount a small file system");
        std::filesystem::copy_file(path("base"), disk.path("archive"));
        const Facts before = factsIn(path("base"));
        for (const std::uintmax_t left : {0U, 40000U, 100000U, 160000U}) {
            disk.fill(left);
            {
                auto archive = Archive::open(disk.path("archive"));
                const auto done = archive ? operationOf(what)(*archive) : tl::unexpected(archive.error());
                QVERIFY2(!done, std::to_string(left).c_str());
                QCOMPARE(done.error().code, ErrorCode::storage);
                QVERIFY2(saysOf(done.error(), "room"), toText(done.error()).c_str());
            }
            disk.makeRoom();
            QCOMPARE(factsIn(disk.path("archive")), before);
        }
        auto archive = sure(Archive::open(disk.path("archive")));
        QVERIFY(operationOf(what)(archive));
        QCOMPARE(sure(factsOf(archive)).size() > before.size(), true);
    }

    void aFullDiskForTheCopy() {
        const SmallDisk disk;
        if (!disk.isThere) QSKIP("this user may not mount a small file system");
        const auto archive = sure(Archive::open(path("base")));
        const std::string registration = sure(archive.files()).front();
        const auto all = std::filesystem::file_size(path("base"));
        for (const std::uintmax_t left : {std::uintmax_t{0}, all / 4, all - 20000}) {
            disk.fill(left);
            const auto done = archive::backUp(archive, disk.path("copy"));
            QVERIFY(!done);
            QVERIFY2(saysOf(done.error(), "room"), toText(done.error()).c_str());
            QVERIFY(!std::filesystem::exists(disk.path("copy")));
            disk.fill(std::min<std::uintmax_t>(left, 30000));
            const auto exported =
                archive::exportFile(archive, registration, disk.path("zip"), {1781940630500});
            QVERIFY(!exported);
            QVERIFY2(saysOf(exported.error(), "room"), toText(exported.error()).c_str());
            QVERIFY(!std::filesystem::exists(disk.path("zip")));
        }
        disk.makeRoom();
        QVERIFY(archive::backUp(archive, disk.path("copy")));
        QVERIFY(archive::exportFile(archive, registration, disk.path("zip"), {1781940630500}));
        // Nothing else was left behind.
        QCOMPARE(std::distance(std::filesystem::directory_iterator(
                                   std::filesystem::path(disk.path("copy")).parent_path()),
                               std::filesystem::directory_iterator()),
                 2);
    }

    // --- a larger file that is damaged: too large to be looked through when it is opened (32 MiB)

    void aLargeFileThatIsCutIsRefusedAndLeft() {
        makeLarge();
        const auto size = std::filesystem::file_size(path("large"));
        std::mt19937_64 random(11);
        for (int run = 0; run < 40; ++run) {
            copy("large", "cut");
            const auto cut = run < 10 ? size - 1 - static_cast<std::uintmax_t>(run) * 5000 : random() % size;
            std::filesystem::resize_file(path("cut"), cut);
            const auto archive = Archive::open(path("cut"));
            QVERIFY2(!archive, std::to_string(cut).c_str());
            QCOMPARE(archive.error().code, ErrorCode::storage);
            QVERIFY(saysOf(archive.error(), "backup"));
            QCOMPARE(std::filesystem::file_size(path("cut")), cut);
        }
    }

    void noiseInALargeFileIsNamedOrHarmless() {
        makeLarge();
        const auto size = std::filesystem::file_size(path("large"));
        const Facts whole = factsIn(path("large"));
        int named = 0;
        for (unsigned seed = 0; seed < 100; ++seed) {
            std::mt19937_64 random(seed);
            copy("large", "noisy");
            {
                QFile file(QString::fromStdString(path("noisy")));
                QVERIFY(file.open(QFile::ReadWrite));
                // Mostly where the records are: they came first.
                const auto within = seed % 4 == 0 ? size : recordBytes;
                const auto at = seed % 2 == 0 ? random() % (within / 8192) * 8192 : random() % (within - 64);
                QVERIFY(file.seek(static_cast<qint64>(at)));
                QByteArray noise(seed % 2 == 0 ? 8192 : 1 + static_cast<int>(random() % 64), '\0');
                for (char& byte : noise)
                    byte = static_cast<char>(random());
                QVERIFY(file.write(noise) == noise.size());
            }
            const auto archive = Archive::open(path("noisy"));
            const auto checked =
                archive ? archive::verify(*archive, {"", true, {}}) : tl::unexpected(archive.error());
            if (!checked) {
                QVERIFY(!checked.error().what.empty() && !checked.error().remedy.empty());
                ++named;
                continue;
            }
            if (!checked->broken.empty() || !checked->holes.empty() || !checked->missingPhotos.empty()) {
                ++named;
                continue;
            }
            const auto facts = factsOf(*archive);
            QVERIFY2(facts, facts ? "" : (std::to_string(seed) + ' ' + toText(facts.error())).c_str());
            QVERIFY2(*facts == whole, std::to_string(seed).c_str());
        }
        QVERIFY2(named > 50, std::to_string(named).c_str());
    }

private:
    [[nodiscard]] std::string path(const std::string& name) const {
        return folder.filePath(QString::fromStdString(name)).toStdString();
    }
    void copy(const std::string& from, const std::string& to) const {
        for (const char* tail : {"-wal", "-shm"})
            std::filesystem::remove(path(to) + tail);
        std::filesystem::copy_file(path(from), path(to), std::filesystem::copy_options::overwrite_existing);
    }

    Operation operationOf(const QString& what) {
        if (what == "import") return [this](Archive& archive) { return importing(archive, second); };
        if (what == "merge") return [this](Archive& archive) { return merging(archive, path("other")); };
        return [this](Archive& archive) -> Result<void> {
            const std::string registration = sure(archive.files()).front();
            const auto told = sure(archive.told(registration));
            std::vector<std::string> going;
            for (std::size_t i = 0; i < 30; ++i)
                if (told[i].kind() == std::string("round")) going.push_back(told[i].sha256);
            const auto stub = archive::removeRecords(
                archive,
                {registration, going, "A test.", {{1781940630500}, 120}, {"Kim Example", "owner", ""}}, *key);
            return stub ? Result<void>() : tl::unexpected(stub.error());
        };
    }

    /// Without the signed copies: a stub is signed anew each time.
    static Facts identities(const Facts& facts) {
        Facts some;
        for (const std::string& fact : facts)
            if (fact.find(" as ") == std::string::npos && !fact.starts_with("hole")) some.push_back(fact);
        return some;
    }

    void makeLarge() {
        if (std::filesystem::exists(path("large"))) return;
        {
            auto archive = sure(Archive::open(path("large")));
            test::keepAll(archive, records);
        }
        recordBytes = std::filesystem::file_size(path("large"));
        auto archive = sure(Archive::open(path("large")));
        std::mt19937_64 random(5);
        std::vector<std::string> photos;
        for (int i = 0; i < 9; ++i) {
            std::string& photo = photos.emplace_back("\xFF\xD8\xFF");
            while (photo.size() < (std::size_t{4} << 20))
                photo += static_cast<char>(random());
        }
        QVERIFY(archive::importAll(
            archive, test::offering(photos),
            [](const std::string&, const Result<archive::Imported>& one) { QVERIFY(one); }, true));
    }

    QTemporaryDir folder;
    std::vector<std::string> records, first, second;
    std::optional<record::Signer> key;
    std::uintmax_t recordBytes = 0;
};

QTEST_GUILESS_MAIN(TestArchiveFaults)
#include "tst_archive_faults.moc"
