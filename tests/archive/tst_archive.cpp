// What goes into an archive comes out again, and only what may goes in.
#include "archive/merge.hpp"
#include "archive/offers.hpp"
#include "archive/schema.hpp"
#include "archive/verify.hpp"
#include "archives.hpp"
#include "raw.hpp"

#include <QTest>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <unistd.h>

using namespace ambit;
using archive::OpenRound;
using test::House;
using test::Raw;

class TestArchive : public QObject {
    Q_OBJECT

private slots:
    void aNewArchiveIsMarkedAndEmpty() {
        const House house;
        {
            auto archive = house.open();
            QVERIFY(archive.aircraft()->empty());
            QVERIFY(archive.rounds()->empty());
            QVERIFY(archive.records()->empty());
            QCOMPARE(archive.events("x").error().code, ErrorCode::notFound);
            QCOMPARE(archive.photo("x").error().code, ErrorCode::notFound);
            QCOMPARE(archive.recordJson("x").error().code, ErrorCode::notFound);
            QCOMPARE(archive.airframeText("x").error().code, ErrorCode::notFound);
        }
        Raw raw(house.file());
        QCOMPARE(raw.ask("PRAGMA application_id; PRAGMA user_version; PRAGMA journal_mode"),
                 std::string("1097687657 2 wal "));
    }

    void aircraftAreKeptOnce() {
        const House house;
        auto archive = house.open();
        QVERIFY(house.addAircraft(archive));
        QVERIFY(house.addAircraft(archive));
        QCOMPARE(archive.aircraft()->size(), 1U);
        QCOMPARE(archive.aircraft()->front().serial, std::string("0042"));
        QCOMPARE(archive.airframeText(house.machine.sha256).value(), test::machineText());
        const auto other =
            archive.addAircraft({"OX-ABC", "0043", house.machine.sha256, ""}, test::machineText());
        QCOMPARE(other.error().code, ErrorCode::conflict);
        QVERIFY(!archive.addAircraft({"OX-DEF", "1", house.machine.sha256, ""}, "another text"));
        QVERIFY(!archive.addAircraft({"", "1", house.machine.sha256, ""}, test::machineText()));
        QCOMPARE(archive.aircraft()->size(), 1U);
    }

    // A description that is mended later: earlier rounds keep theirs.
    void aNewDescriptionReplacesTheOldOneForTheAircraftOnly() {
        const House house;
        auto archive = house.open();
        QVERIFY(house.addAircraft(archive));
        const std::string text = test::machineText() + "\n";
        QVERIFY(archive.addAircraft({"OX-ABC", "0042", sha256Hex(text), "Test machine 2"}, text));
        QCOMPARE(archive.aircraft()->front().airframeSha256, sha256Hex(text));
        QVERIFY(archive.airframeText(house.machine.sha256));
    }

    void aRoundNeedsItsAircraft() {
        const House house;
        auto archive = house.open();
        QCOMPARE(house.begin(archive).error().code, ErrorCode::notFound);
        QVERIFY(archive.rounds()->empty());
    }

    void everyStepIsThereForTheNextWhoOpens() {
        const House house;
        auto archive = house.open();
        QVERIFY(house.addAircraft(archive));
        auto round = house.begin(archive);
        QVERIFY(round);
        do {
            auto other = house.open();
            auto resumed = OpenRound::resume(other, house.machine, round->state().id);
            QVERIFY2(resumed, resumed ? "" : toText(resumed.error()).c_str());
            QCOMPARE(test::described(resumed->state()), test::described(round->state()));
            QCOMPARE(resumed->events().size(), round->events().size());
        } while (test::step(*round));
        const auto rounds = archive.rounds("OX-ABC");
        QCOMPARE(rounds->size(), 1U);
        QCOMPARE(rounds->front().events, static_cast<std::int64_t>(round->events().size()));
        QVERIFY(!rounds->front().sealed);
        QVERIFY(archive.rounds("OX-DEF")->empty());
    }

    void refusedIsNeitherStoredNorFolded() {
        const House house;
        auto archive = house.open();
        QVERIFY(house.addAircraft(archive));
        auto round = house.begin(archive);
        const std::string before = test::described(round->state());
        for (const round::What& what : std::vector<round::What>{
                 round::StandReached{"roof"}, round::Note{"bell \x07"}, round::Note{std::string(9000, 'x')},
                 round::Note{"\xFF"},
                 round::Signed{std::string(64, 'a'), std::string(64, 'b'), "Robin Example"}}) {
            QVERIFY(!round->act(what, {1}));
            QCOMPARE(test::described(round->state()), before);
            QCOMPARE(round->events().size(), 1U);
            QCOMPARE(archive.events(round->state().id)->size(), 1U);
        }
    }

    // What a screen hands over with a settling, but the format has no place for, mustn't live on in memory
    // only.
    void onlyWhatIsStoredIsFolded() {
        const House house;
        auto archive = house.open();
        QVERIFY(house.addAircraft(archive));
        auto round = house.begin(archive);
        QVERIFY(round->act(round::StandReached{"front"}, {1}));
        round::Settled settled = test::sound("arc-clear");
        settled.words = "left over from the finding's page";
        QVERIFY(round->act(settled, {2}));
        QVERIFY(round->state().points.at("arc-clear").last()->what.words.empty());
    }

    void twoWalkersOfOneRound() {
        const House house;
        auto archive = house.open();
        auto other = house.open();
        QVERIFY(house.addAircraft(archive));
        auto first = house.begin(archive);
        auto second = OpenRound::resume(other, house.machine, first->state().id);
        QVERIFY(first->act(round::StandReached{"left"}, {1}));
        const std::string before = test::described(second->state());
        const auto late = second->act(round::StandReached{"right"}, {2});
        QCOMPARE(late.error().code, ErrorCode::conflict);
        QCOMPARE(test::described(second->state()), before);
        QCOMPARE(archive.events(first->state().id)->size(), 2U);
    }

    void theSameRoundIsNotBegunTwice() {
        const House house;
        auto archive = house.open();
        QVERIFY(house.addAircraft(archive));
        QVERIFY(house.begin(archive));
        QCOMPARE(house.begin(archive).error().code, ErrorCode::conflict);
        QVERIFY(house.begin(archive, 1750000000001));
        QCOMPARE(archive.rounds()->size(), 2U);
        QCOMPARE(archive.rounds()->front().openedAt.ms, 1750000000001); // newest first
    }

    void photosComeWithTheirFinding() {
        const House house;
        auto archive = house.open();
        QVERIFY(house.addAircraft(archive));
        auto round = house.begin(archive);
        QVERIFY(round->act(round::StandReached{"left"}, {1}));
        auto picture = test::photo("\xFF\xD8\xFF a picture");
        round::Settled settled = test::finding("arc-clear");
        settled.photos = {picture.photo};
        QCOMPARE(round->act(settled, {2}).error().code, ErrorCode::notFound); // the bytes are missing
        picture.bytes += "x";
        QVERIFY(!round->act(settled, {2}, {picture})); // other bytes than its hash says
        QCOMPARE(round->events().size(), 2U);
        QCOMPARE(archive.photo(picture.photo.sha256).error().code, ErrorCode::notFound);
        picture.bytes.pop_back();
        QVERIFY(round->act(settled, {2}, {picture}));
        QCOMPARE(archive.photo(picture.photo.sha256).value(), picture.bytes);
        // Known by now: the bytes needn't come again.
        QVERIFY(round->act(round::Reopened{"arc-clear", "Again."}, {3}));
        QVERIFY(round->act(settled, {4}));
    }

    void sealedRoundsAndTheirChain() {
        const House house;
        auto archive = house.open();
        QVERIFY(house.addAircraft(archive));
        QVERIFY(archive.heads("OX-ABC")->empty());
        auto first = house.begin(archive, 1750000000000);
        const std::string one = test::sealed(*first, {}, '1');
        QCOMPARE(first->state().phase, round::Phase::sealed);
        QVERIFY(archive.rounds()->front().sealed);
        QVERIFY((*archive.heads("OX-ABC") == std::vector<std::string>{one}));
        auto second = house.begin(archive, 1760000000000);
        const std::string two = test::sealed(*second, {one, std::string(64, '9')}, '2');
        QVERIFY((*archive.heads("OX-ABC") == std::vector<std::string>{two}));
        auto third = house.begin(archive, 1755000000000);
        const std::string three = test::sealed(*third, {one}, '3');
        QVERIFY((*archive.heads("OX-ABC") ==
                 std::vector<std::string>{std::min(two, three), std::max(two, three)}));
        QCOMPARE(archive.records()->size(), 3U);
        QCOMPARE(archive.records("OX-ABC")->front().sha256, two); // newest first
        QVERIFY(archive.records("OX-DEF")->empty());
        QVERIFY(archive.recordJson(one));
        QCOMPARE(archive.recordPdf(one).value(), std::string("%PDF-"));
        auto other = house.open();
        QCOMPARE(OpenRound::resume(other, house.machine, first->state().id)->state().phase,
                 round::Phase::sealed);
    }

    void sealingIsAllOrNothing() {
        const House house;
        auto archive = house.open();
        QVERIFY(house.addAircraft(archive));
        auto first = house.begin(archive);
        const std::string one = test::sealed(*first, {}, '1');
        auto second = house.begin(archive, 1760000000000);
        while (test::step(*second)) {
        }
        QVERIFY(second->act(round::Concluded{true, ""}, {5}));
        const std::size_t events = second->events().size();
        // The record is known already: nothing of the sealing happens.
        const Json content{{"previous", Json::array()}, {"mark", "1"}};
        const file::Told told = test::madeUp(content, {5});
        QCOMPARE(told.sha256, one);
        QVERIFY(!second->seal({one, std::string(64, 'c'), "Robin Example"}, {6}, told,
                              test::madeUpJson(content), ""));
        QCOMPARE(second->state().phase, round::Phase::concluded);
        QCOMPARE(archive.events(second->state().id)->size(), events);
        QVERIFY(!archive.rounds()->front().sealed);
    }

    // --- the schema

    void anotherProgramsDatabaseIsRefusedAndLeft() {
        const House house;
        {
            Raw raw(house.file());
            raw.run("CREATE TABLE recipes(name TEXT)");
        }
        const std::string before = readFile(house.file()).value();
        const auto archive = archive::Archive::open(house.file());
        QCOMPARE(archive.error().code, ErrorCode::unsupported);
        QCOMPARE(readFile(house.file()).value(), before);
    }

    void aNewerArchiveIsRefusedAndLeft() {
        const House house;
        {
            auto archive = house.open();
            QVERIFY(house.addAircraft(archive));
        }
        Raw(house.file()).run("PRAGMA user_version = 3");
        const std::string before = readFile(house.file()).value();
        QCOMPARE(archive::Archive::open(house.file()).error().code, ErrorCode::unsupported);
        QCOMPARE(readFile(house.file()).value(), before);
    }

    void anOlderArchiveIsMovedUpStepByStep() {
        const House house;
        {
            auto archive = house.open();
            QVERIFY(house.addAircraft(archive));
        }
        std::vector<const char*> steps(archive::migrations().begin(), archive::migrations().end());
        steps.push_back("ALTER TABLE aircraft ADD COLUMN base TEXT NOT NULL DEFAULT 'field'");
        steps.push_back("UPDATE aircraft SET base = base || '!'");
        {
            Raw raw(house.file());
            QVERIFY(archive::prepareSchema(raw.db, house.file(), steps));
            QCOMPARE(raw.ask("PRAGMA user_version; SELECT registration, base FROM aircraft"),
                     std::string("4 OX-ABC field! "));
            QVERIFY(archive::prepareSchema(raw.db, house.file(), steps)); // once is enough
            QCOMPARE(raw.ask("SELECT base FROM aircraft"), std::string("field! "));
        }
        QCOMPARE(archive::Archive::open(house.file()).error().code, ErrorCode::unsupported);
    }

    void aStepThatFailsLeavesTheArchiveAsItWas() {
        const House house;
        {
            auto archive = house.open();
            QVERIFY(house.addAircraft(archive));
        }
        std::vector<const char*> steps(archive::migrations().begin(), archive::migrations().end());
        steps.push_back("ALTER TABLE aircraft ADD COLUMN base TEXT");
        steps.push_back("UPDATE nothing SET base = 1");
        {
            Raw raw(house.file());
            QCOMPARE(archive::prepareSchema(raw.db, house.file(), steps).error().code, ErrorCode::storage);
        }
        auto archive = house.open();
        QCOMPARE(archive.aircraft()->size(), 1U);
    }

    // A crash right after SQLite made the file, before the tables were in.
    void aFileWithNothingInItYetIsNew() {
        const House house;
        Raw(house.file()).run("PRAGMA journal_mode = WAL");
        QVERIFY(QFileInfo(house.file().c_str()).size() > 0);
        QVERIFY(archive::Archive::open(house.file()));
    }

    // A backup on a stick that is write-protected could not even be looked at.
    void whatCanOnlyBeReadIsRead() {
        if (::geteuid() == 0) QSKIP("whoever may do anything may write here, too");
        const House house;
        {
            auto archive = house.open();
            QVERIFY(house.addAircraft(archive));
            auto round = house.begin(archive);
            QVERIFY(*test::step(*round));
        }
        namespace fs = std::filesystem;
        const fs::path folder = fs::path(house.file()).parent_path() / "50% of #1?";
        fs::create_directory(folder);
        const fs::path file = folder / "kept away.sqlite";
        fs::copy_file(house.file(), file);
        const auto size = fs::file_size(file);
        fs::permissions(file, fs::perms::owner_read);
        fs::permissions(folder, fs::perms::owner_read | fs::perms::owner_exec);
        {
            auto archive = archive::Archive::open(file);
            QVERIFY2(archive, archive ? "" : toText(archive.error()).c_str());
            QCOMPARE(archive->aircraft()->size(), std::size_t{1});
            const auto checked = archive::verify(*archive);
            QVERIFY(checked && checked->broken.empty());
            QCOMPARE(checked->rounds, std::size_t{1});
            const auto added = house.addAircraft(*archive);
            QVERIFY(!added);
            QCOMPARE(added.error().code, ErrorCode::storage);
            QVERIFY2(added.error().remedy.find("only be read") != std::string::npos,
                     toText(added.error()).c_str());
            const House other;
            auto into = other.open();
            const auto merged = archive::merge(into, file);
            QVERIFY(merged && merged->setAside.empty());
            QCOMPARE(merged->rounds, std::size_t{1});
            QVERIFY(archive::backUp(*archive, fs::path(other.file()).parent_path() / "copy.sqlite"));
        }
        QCOMPARE(fs::file_size(file), size);
        QCOMPARE(std::distance(fs::directory_iterator(folder), fs::directory_iterator()), 1);
        fs::permissions(folder, fs::perms::owner_all);
    }

    void whatAFolderHidesIsSaid() {
        if (::geteuid() == 0) QSKIP("whoever may do anything may read it, too");
        namespace fs = std::filesystem;
        QTemporaryDir top;
        const fs::path hidden = fs::path(top.path().toStdString()) / "hidden";
        fs::create_directory(hidden);
        fs::permissions(hidden, fs::perms::none);
        archive::Offers offers({top.path().toStdString()});
        const auto one = offers.next();
        fs::permissions(hidden, fs::perms::owner_all);
        QVERIFY(one && !*one);
        QCOMPARE(one->error().code, ErrorCode::storage);
        QCOMPARE(one->error().where, top.path().toStdString());
        QVERIFY(!offers.next());
    }

    void aFolderThatIsNotThere() {
        const auto archive = archive::Archive::open("/nowhere/at/all/archive.sqlite");
        QCOMPARE(archive.error().code, ErrorCode::storage);
        QVERIFY(!archive.error().remedy.empty());
    }
};

QTEST_APPLESS_MAIN(TestArchive)
#include "tst_archive.moc"
