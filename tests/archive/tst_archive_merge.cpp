// Merging is a union: in which order and grouping archives are merged, and how often, the same comes out.
// Random histories from five devices: records known in part, forks, countersigned copies that differ, photos,
// a PDF, records let go on one device only, rounds still being walked.
#include "archive/aircraft_file.hpp"
#include "archive/find.hpp"
#include "archive/merge.hpp"
#include "archive/remove.hpp"
#include "archive/verify.hpp"
#include "archives.hpp"
#include "fleet/keys.hpp"
#include "fleets.hpp"
#include "photographed.hpp"
#include "raw.hpp"
#include "record/record.hpp"

#include <QTest>
#include <algorithm>
#include <array>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <random>

using namespace ambit;
using archive::Archive;
using test::House;

namespace {

constexpr int histories = 4;
constexpr std::size_t devices = 5;
constexpr std::int64_t today = 1781940630500; ///< 2026-06-20

template<class Value> Value sure(Result<Value> result) {
    if (!result) qFatal("%s", toText(result.error()).c_str());
    return std::move(*result);
}
void sure(const Result<void>& result) {
    if (!result) qFatal("%s", toText(result.error()).c_str());
}

/// One line of words.
std::string line(std::initializer_list<std::string_view> words) {
    std::string all;
    for (const std::string_view word : words)
        all.append(all.empty() ? "" : " ").append(word);
    return all;
}

/// Everything an archive holds, as far as anybody can ask for it; one line a fact.
std::vector<std::string> everything(const std::string& file) {
    std::vector<std::string> facts;
    const auto archive = sure(Archive::open(file));
    for (const std::string& registration : sure(archive.files())) {
        const auto told = sure(archive.told(registration));
        for (const file::Told& one : told) {
            const std::string name = "record " + one.sha256 + ' ';
            facts.push_back(
                line({"record", one.sha256, registration, toText(one.at), one.signer.name, one.key}));
            facts.push_back(name + file::packed(one));
            for (const std::string& previous : one.previous)
                facts.push_back(line({"record", one.sha256, "after", previous}));
            for (const std::string& copy : sure(archive.signedCopies(one.sha256)))
                facts.push_back(name + copy);
            for (const std::string& pdf : sure(archive.recordPdfs(one.sha256)))
                facts.push_back(name + "pdf " + sha256Hex(pdf));
        }
        for (const std::string& head : sure(archive.heads(registration)))
            facts.push_back(line({"head of", registration, head}));
        for (const char* point : {"oil", "arc-clear", "fuel-drain-left"})
            for (const auto& one : sure(archive::history(archive, registration, point, 1000)))
                facts.push_back(line({"history", registration, point, one.record, one.what, one.words}));
    }
    std::vector<archive::Wanted> searches(4);
    searches[0].words = "cracked";
    searches[1].words = "replaced";
    searches[2].person = "exam";
    searches[3].state = file::Discrepancy::State::open;
    for (std::size_t i = 0; i < searches.size(); ++i) {
        searches[i].most = 10000;
        for (const auto& hit : sure(archive::find(archive, searches[i])))
            facts.push_back("found " + std::to_string(i) + ' ' + hit.info.sha256 + hit.gloss);
    }
    const auto checked = sure(archive::verify(archive));
    for (const auto& one : checked.broken)
        facts.push_back("broken " + one.sha256 + one.error.what);
    for (const auto& hole : checked.holes)
        for (const std::string& by : hole.namedBy)
            facts.push_back("hole " + hole.sha256 + " by " + by);
    for (const std::string& photo : checked.missingPhotos)
        facts.push_back("missing photo " + photo);
    for (const auto& round : sure(archive.rounds()))
        for (const round::Event& event : sure(archive.events(round.id)))
            facts.push_back("round " + round.id + ' ' + canonicalJson(toJson(event)));
    for (const archive::Aircraft& one : sure(archive.aircraft()))
        facts.push_back(line({"aircraft", one.registration, one.serial, one.airframeSha256}));
    test::Raw raw(file);
    for (const char* sql : {"SELECT sha256 FROM photo", "SELECT sha256 FROM airframe"})
        for (const auto& cells : raw.rows(sql))
            facts.push_back(std::string(sql) + ' ' + cells[0]);
    std::sort(facts.begin(), facts.end());
    return facts;
}

/// The first fact that one has and the other hasn't.
std::string difference(const std::vector<std::string>& a, const std::vector<std::string>& b) {
    std::vector<std::string> apart;
    std::set_symmetric_difference(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(apart));
    return apart.empty() ? ""
                         : std::to_string(apart.size()) + " facts, first: " + apart.front().substr(0, 400);
}

} // namespace

class TestArchiveMerge : public QObject {
    Q_OBJECT

private slots:
    /// What comes over a link: that very record, or nothing.
    void theRecordThatWasAnnounced() {
        const std::string one = test::photographed(0, {}), other = test::photographed(1, {});
        const std::string name = sure(archive::verified(one)).told.sha256;
        House empty;
        auto archive = empty.open();
        const auto refused = archive::takeRecord(archive, name, {one, other});
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::conflict);
        QVERIFY(!archive::takeRecord(archive, name, {one, one + ' '}));
        QVERIFY(sure(archive.files()).empty());
        sure(archive::takeRecord(archive, name, {one}));
        QCOMPARE(sure(archive.recordJson(name)), one);
    }

    void initTestCase() {
        QVERIFY(folder.isValid());
        for (const char* name : {"Kim Example", "Robin Example", "Sascha Example"})
            keys.push_back(sure(fleet::derivedKey(1, name, name, {1451606400000})));
        fleet::Plan plan;
        plan.seed = 3;
        plan.aircraft = 2;
        plan.years = 1;
        plan.records = 90;
        pool = test::fleetRecords(plan);
    }

    void anyOrderAndGroupingGivesTheSame_data() {
        QTest::addColumn<int>("seed");
        for (int seed = 1; seed <= histories; ++seed)
            QTest::newRow(std::to_string(seed).c_str()) << seed;
    }
    void anyOrderAndGroupingGivesTheSame() {
        QFETCH(int, seed);
        random.seed(static_cast<unsigned>(seed));
        live(seed);
        std::array<std::vector<std::string>, devices> alone;
        for (std::size_t i = 0; i < devices; ++i) {
            alone[i] = everything(device(i));
            theHeadsAreThoseOfTheFold(device(i));
        }
        // a + a = a
        const std::string twin = copyOf(device(0));
        QVERIFY2(merged(twin, device(0)), wentWrong.c_str());
        QCOMPARE(difference(everything(twin), alone[0]), std::string());
        // a + b = b + a
        const std::string ab = copyOf(device(0)), ba = copyOf(device(1));
        QVERIFY2(merged(ab, device(1)), wentWrong.c_str());
        QVERIFY2(merged(ba, device(0)), wentWrong.c_str());
        QCOMPARE(difference(everything(ab), everything(ba)), std::string());
        QVERIFY(everything(ab) != alone[0]); // there was something to merge
        // (a + b) + b = a + b
        const std::string abb = copyOf(ab);
        QVERIFY2(merged(abb, device(1)), wentWrong.c_str());
        QCOMPARE(difference(everything(abb), everything(ab)), std::string());
        // (a + b) + c = a + (b + c)
        const std::string abThenC = copyOf(ab), bc = copyOf(device(1)), aThenBc = copyOf(device(0));
        QVERIFY2(merged(abThenC, device(2)), wentWrong.c_str());
        QVERIFY2(merged(bc, device(2)), wentWrong.c_str());
        QVERIFY2(merged(aThenBc, bc), wentWrong.c_str());
        QCOMPARE(difference(everything(abThenC), everything(aThenBc)), std::string());
        // All five, as chance has it.
        const std::string one = mergedAnyhow(), other = mergedAnyhow();
        QVERIFY2(wentWrong.empty(), wentWrong.c_str());
        const auto all = everything(one);
        QCOMPARE(difference(all, everything(other)), std::string());
        theHeadsAreThoseOfTheFold(one);
        // What a device has, all have; a row of signatures may have grown.
        for (const auto& facts : alone)
            for (std::string fact : facts) {
                if (!fact.starts_with("record ") && !fact.starts_with("round ")) continue;
                if (fact.ends_with("]}")) fact.resize(fact.size() - 2);
                const auto there = std::lower_bound(all.begin(), all.end(), fact);
                QVERIFY2(there != all.end() && there->starts_with(fact), fact.c_str());
            }
    }

private:
    [[nodiscard]] std::string device(std::size_t i) const {
        return folder.filePath("device-" + QString::number(i)).toStdString();
    }
    [[nodiscard]] std::string copyOf(const std::string& file) {
        std::string copy = folder.filePath("copy-" + QString::number(++copies)).toStdString();
        std::filesystem::copy_file(file, copy);
        return copy;
    }

    bool merged(const std::string& into, const std::string& from) {
        auto archive = sure(Archive::open(into));
        const auto done = archive::merge(archive, from);
        if (!done) wentWrong = toText(done.error());
        if (done && !done->setAside.empty()) wentWrong = "set aside: " + toText(done->setAside.front());
        return done && done->setAside.empty();
    }

    /// Pairs of them, whichever come, until one is left.
    std::string mergedAnyhow() {
        std::vector<std::string> left;
        for (std::size_t i = 0; i < devices; ++i)
            left.push_back(copyOf(device(i)));
        while (left.size() > 1) {
            std::shuffle(left.begin(), left.end(), random);
            merged(left[left.size() - 2], left.back());
            left.pop_back();
        }
        return left.front();
    }

    /// Source of expectation: file::fold, which reads all records and knows nothing of the archive's tables.
    static void theHeadsAreThoseOfTheFold(const std::string& file) {
        const auto archive = sure(Archive::open(file));
        for (const std::string& registration : sure(archive.files())) {
            auto heads = file::fold(sure(archive.told(registration))).heads;
            std::sort(heads.begin(), heads.end());
            QCOMPARE(difference(sure(archive.heads(registration)), heads), std::string());
        }
    }

    // --- a history

    std::size_t chance(std::size_t below) { return random() % below; }

    void live(int seed) {
        std::vector<Archive> archives;
        for (std::size_t i = 0; i < devices; ++i) {
            std::filesystem::remove(device(i));
            archives.push_back(sure(Archive::open(device(i))));
            sure(house.addAircraft(archives[i]));
            std::vector<std::string> known; // in part
            for (const std::string& record : pool)
                if (chance(3) != 0) known.push_back(record);
            std::shuffle(known.begin(), known.end(), random);
            test::keepAll(archives[i], known);
        }
        now = today + std::int64_t{seed} * 1000000;
        for (int step = 0; step < 80; ++step) {
            now += 60000;
            const std::size_t at = chance(devices);
            switch (chance(8)) {
            case 0:
            case 1:
                write(archives[at]);
                break;
            case 2:
            case 3:
                countersign(archives[at]);
                break;
            case 4:
                takePhoto(archives[at]);
                break;
            case 5:
                walk(archives[at], at);
                break;
            case 6:
                letGo(archives[at]);
                break;
            default:
                if (step % 4 == 0) sure(archive::merge(archives[at], device((at + 1) % devices)));
            }
        }
    }

    [[nodiscard]] std::string anyRecord(const Archive& archive, const std::string& registration) {
        const auto told = sure(archive.told(registration));
        return told[chance(told.size())].sha256;
    }
    [[nodiscard]] std::string anyFile(const Archive& archive) {
        const auto files = sure(archive.files());
        return files[chance(files.size())];
    }
    [[nodiscard]] record::Heading heading(const Archive& archive, const std::string& registration,
                                          std::size_t key) {
        const auto told = sure(archive.told(registration));
        return {registration,
                told.front().serial,
                {{now}, 120},
                sure(archive.heads(registration)),
                {keys[key].certificate().name, "owner", ""}};
    }

    void write(Archive& archive) {
        const std::size_t key = chance(keys.size());
        record::Trust trust{"Kim Example", keys[0].certificate().sha256, {"pilot"}, {today}};
        const record::Entry entry =
            chance(2) == 0 ? record::Entry(trust)
                           : record::Entry(record::HandOver{"Nobody Example", "Cracked, replaced."});
        const auto content = sure(record::entryContent(heading(archive, anyFile(archive), key), entry));
        sure(archive::importRecord(archive, sure(record::signRecord(content, keys[key]))));
    }

    /// Another row of signatures than on another device, mostly.
    void countersign(Archive& archive) {
        const auto signedOnes = sure(archive.signedCopies(anyRecord(archive, anyFile(archive))));
        const std::size_t key = chance(keys.size());
        const auto more = record::countersignRecord(signedOnes[chance(signedOnes.size())], keys[key],
                                                    {keys[key].certificate().name, "mechanic", "C"}, {now});
        if (more) sure(archive::importRecord(archive, *more)); // else it bears that key's signature already
    }

    /// The photo may come with its record, as PDF, later, or not at all.
    void takePhoto(Archive& archive) {
        const int number = static_cast<int>(chance(3));
        const auto files = sure(archive.files());
        const auto heads = sure(archive.heads(test::photographedAircraft()));
        std::vector<std::string> things{test::photographed(number, heads)};
        if (number == 0 && chance(2) == 0) things.front() = test::photographedPdf(things.front());
        if (chance(2) == 0) things.push_back(test::picture(number));
        test::keepAll(archive, things);
    }

    /// Each device walks its own round; others have its log as far as they got it.
    void walk(Archive& archive, std::size_t at) {
        const auto rounds = sure(archive.rounds("OX-ABC"));
        const std::int64_t opened = today + static_cast<std::int64_t>(at) * 1000;
        const auto mine = std::find_if(rounds.begin(), rounds.end(),
                                       [&](const auto& one) { return one.openedAt.ms == opened; });
        auto round = mine == rounds.end()
                         ? sure(house.begin(archive, opened))
                         : sure(archive::OpenRound::resume(archive, house.machine, mine->id));
        for (std::size_t i = chance(5); i > 0; --i)
            if (const auto done = test::step(round)) sure(*done);
        const auto taken = test::photo("\xFF\xD8\xFF of round " + std::to_string(now));
        const auto next = round::nextStep(round.state(), house.machine);
        if (!next || !std::holds_alternative<walk::Settle>(*next)) return;
        round::Settled settled = test::finding(std::get<walk::Settle>(*next).point);
        settled.photos = {taken.photo};
        sure(round.act(settled, {round.state().lastAt.ms + 1000}, {taken}));
    }

    void letGo(Archive& archive) {
        const std::string registration = anyFile(archive);
        const auto heading = this->heading(archive, registration, 0);
        const auto done = archive::removeRecords(archive,
                                                 {registration,
                                                  {anyRecord(archive, registration)},
                                                  "A test lets it go.",
                                                  heading.at,
                                                  heading.signer},
                                                 keys[0]);
        if (!done) QCOMPARE(done.error().code, ErrorCode::refused); // one of the latest, or a stub
    }

    House house;
    QTemporaryDir folder;
    std::vector<record::Signer> keys;
    std::vector<std::string> pool;
    std::mt19937_64 random;
    std::int64_t now = 0;
    int copies = 0;
    std::string wentWrong;
};

QTEST_APPLESS_MAIN(TestArchiveMerge)
#include "tst_archive_merge.moc"
