// What files and exports bring, from whoever: zips and tars that are damaged, names that lead elsewhere,
// links.
#include "../base/damage.hpp"
#include "../record/fixture.hpp"
#include "archive/export.hpp"
#include "archive/offers.hpp"
#include "archives.hpp"
#include "fleets.hpp"

#include <QTest>
#include <filesystem>
#include <fstream>

using namespace ambit;
using archive::Archive;
using archive::Offers;

namespace {

namespace fs = std::filesystem;

/// ustar (POSIX.1-2001, pax): a header of 512 bytes and the bytes, filled up to as many.
std::string tarEntry(const std::string& name, const std::string& bytes, char type = '0') {
    std::string head(512, '\0');
    const auto put = [&](std::size_t at, const std::string& text) { head.replace(at, text.size(), text); };
    char size[12];
    std::snprintf(size, sizeof size, "%011zo", bytes.size());
    put(0, name);
    put(100, "0000644");
    put(124, size);
    put(136, "00000000000");
    put(148, "        ");
    head[156] = type;
    put(257, std::string("ustar\00000", 8));
    unsigned sum = 0;
    for (const char one : head)
        sum += static_cast<unsigned char>(one);
    char told[8];
    std::snprintf(told, sizeof told, "%06o", sum);
    put(148, std::string(told, 7) + ' ');
    return head + bytes + std::string((512 - bytes.size() % 512) % 512, '\0');
}

/// Everything it brings, and how many errors; ends, or the test is stopped.
struct Brought {
    std::vector<archive::Offered> things;
    std::size_t errors = 0;
};
Brought broughtBy(const fs::path& path) {
    Offers offers({path});
    Brought all;
    while (auto one = offers.next()) {
        if (*one)
            all.things.push_back(std::move(**one));
        else
            ++all.errors;
        if (all.things.size() + all.errors > 10'000) qFatal("it doesn't end");
    }
    return all;
}

} // namespace

class TestArchiveOffers : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        fleet::Plan plan;
        plan.aircraft = 1;
        plan.years = 1;
        plan.records = 40;
        records = test::fleetRecords(plan);
        auto archive = house.open();
        test::keepAll(archive, records);
        const auto files = archive.files();
        QVERIFY(files && files->size() == 1);
        const fs::path to = folder.filePath("export.zip").toStdString();
        const auto exported = archive::exportFile(archive, files->front(), to, {1781940630500});
        QVERIFY2(exported, exported ? "" : toText(exported.error()).c_str());
        zip = readFile(to).value();
        QCOMPARE(broughtBy(to).things.size(), records.size());
        QCOMPARE(broughtBy(to).errors, std::size_t{0});
        for (std::size_t i = 0; i < 3; ++i)
            tar += tarEntry("records/" + std::to_string(i) + ".json", records[i]);
        tar += tarEntry("photos/1.jpg", test::photoBytes());
        tar += std::string(1024, '\0');
        QCOMPARE(brought(tar).things.size(), std::size_t{4});
    }

    void damagedOnes_data() {
        QTest::addColumn<bool>("isTar");
        QTest::newRow("zip") << false;
        QTest::newRow("tar") << true;
    }
    /// Ends, with errors or without; what a damaged one brings is verified like anything else.
    void damagedOnes() {
        QFETCH(bool, isTar);
        const std::string& whole = isTar ? tar : zip;
        std::mt19937 random(isTar ? 1 : 2);
        std::size_t withErrors = 0;
        for (int i = 0; i < 600; ++i) {
            // A zip is told by its end, a tar by its heads.
            std::string bytes = whole;
            const std::size_t from = isTar ? 512 * test::below(whole.size() / 512, random)
                                           : whole.size() - 1 - test::below(whole.size() / 4, random);
            const auto part = test::damaged(std::string_view(whole).substr(from),
                                            std::min<std::size_t>(512, whole.size() - from), random);
            bytes.replace(from, std::string::npos, std::string(test::viewOf(part)));
            const auto all = brought(bytes);
            if (all.errors > 0) ++withErrors;
            for (const auto& one : all.things)
                QVERIFY(one.bytes.size() <= 2 * whole.size() + 10'000'000);
        }
        QVERIFY2(withErrors > 20, qPrintable(QString::number(withErrors)));
    }

    void whatTheyBringIsVerified() {
        std::mt19937 random(3);
        for (int i = 0; i < 20; ++i) {
            auto archive = house.open();
            const auto before = archive.told(archive.files()->front())->size();
            std::vector<std::string> things;
            for (int n = 0; n < 20; ++n) {
                const std::string& one = records[random() % records.size()];
                things.emplace_back(test::viewOf(test::damaged(one, one.size(), random)));
            }
            const auto done =
                archive::importAll(archive, test::offering(things),
                                   [&](const std::string& name, const Result<archive::Imported>& outcome) {
                                       const std::string& bytes = things[std::stoul(name)];
                                       const bool isSound =
                                           std::find(records.begin(), records.end(), bytes) != records.end();
                                       QVERIFY2(!outcome || isSound, name.c_str());
                                   });
            QVERIFY(done);
            QCOMPARE(archive.told(archive.files()->front())->size(), before);
        }
    }

    /// A link that leads to itself, or nowhere, is no file; what else is there is brought.
    void linksThatLeadNowhere() {
        const fs::path there = folder.filePath("links").toStdString();
        fs::create_directories(there / "inside");
        fs::create_symlink("round.json", there / "round.json");
        fs::create_symlink("nowhere.json", there / "gone.json");
        fs::create_directory_symlink("..", there / "inside" / "up.json");
        QVERIFY(writeFile(there / "sound.json", records[0]));
        const auto all = broughtBy(there);
        QCOMPARE(all.things.size(), std::size_t{1});
        QCOMPARE(all.things[0].bytes, records[0]);
    }

private:
    Brought brought(const std::string& bytes) const {
        const fs::path path = folder.filePath("damaged").toStdString();
        std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
        return broughtBy(path);
    }

    test::House house;
    QTemporaryDir folder;
    std::vector<std::string> records;
    std::string zip;
    std::string tar;
};

QTEST_APPLESS_MAIN(TestArchiveOffers)
#include "tst_archive_offers.moc"
