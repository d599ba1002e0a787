// What `verify` says of rounds' logs, of which no record keeps a hash, and of what a search needs; and that a
// backup clears away what killed ones left.
#include "archive/merge.hpp"
#include "archive/verify.hpp"
#include "archives.hpp"
#include "raw.hpp"
#include "record/asked.hpp"

#include <QTest>
#include <csignal>
#include <filesystem>
#include <sys/wait.h>
#include <unistd.h>

using namespace ambit;
using archive::Archive;
using test::House;
using test::Raw;

#define OPEN "(SELECT key FROM round WHERE sealed = 0)" // a literal, to stand within others

namespace {

/// As ARCHIVE.md has it.
std::int64_t digestOf(const std::string& text) {
    const std::string hex = sha256Hex(text).substr(0, 16);
    return static_cast<std::int64_t>(std::stoull(hex, nullptr, 16));
}

/// The number of a process that has ended and was waited for.
int deadProcess() {
    const pid_t child = ::fork();
    if (child == 0) ::_exit(0);
    ::waitpid(child, nullptr, 0);
    return child;
}

} // namespace

Q_DECLARE_METATYPE(ErrorCode)

class TestArchiveLogs : public QObject {
    Q_OBJECT

private slots:
    void init() {
        house = std::make_unique<House>();
        auto archive = house->open();
        QVERIFY(house->addAircraft(archive));
        auto round = house->begin(archive);
        for (int i = 0; i < 12; ++i)
            QVERIFY(*test::step(*round));
        open = round->state().id;
        auto second = house->begin(archive, 1750000900000);
        QVERIFY(*test::step(*second));
        sealed = second->state().id;
        record = test::sealed(*second, {}, '1');
    }

    void soundOnesAreCounted() {
        const auto checked = archive::verify(house->open());
        QVERIFY(checked);
        QCOMPARE(checked->rounds, std::size_t{2});
        QCOMPARE(checked->records, std::size_t{1});
        for (const auto& one : checked->broken) // the made-up record has no signature
            QCOMPARE(one.sha256, record);
    }

    void whatIsDoneToALogIsNamed_data() {
        QTest::addColumn<QString>("what");
        QTest::newRow("a letter changed")
            << "UPDATE event SET json = replace(json, 'sound', 'sOund') WHERE round = " OPEN " AND seq = 5";
        QTest::newRow("an event with the digest of another")
            << "UPDATE event SET digest = (SELECT digest FROM event WHERE round = " OPEN
               " AND seq = 4) WHERE round = " OPEN " AND seq = 5";
        QTest::newRow("an event gone in the middle")
            << "DELETE FROM event WHERE round = " OPEN " AND seq = 5";
        QTest::newRow("two events in each other's place")
            << "UPDATE event SET seq = 1000 WHERE round = " OPEN " AND seq = 5;"
               "UPDATE event SET seq = 5 WHERE round = " OPEN " AND seq = 6;"
               "UPDATE event SET seq = 6 WHERE round = " OPEN " AND seq = 1000";
    }
    void whatIsDoneToALogIsNamed() {
        QFETCH(QString, what);
        Raw(house->file()).run(what.toStdString());
        const auto checked = archive::verify(house->open());
        QVERIFY(checked);
        const auto isNamed = [&](const std::string& id) {
            return std::any_of(checked->broken.begin(), checked->broken.end(),
                               [&](const auto& one) { return one.sha256 == id; });
        };
        QVERIFY(isNamed(open));
        QVERIFY(!isNamed(sealed));
    }

    // It used to be called damage.
    void whatANewerAmbitWroteIsSaidToBeThat_data() {
        QTest::addColumn<QByteArray>("was");
        QTest::addColumn<QByteArray>("is");
        QTest::newRow("a kind that isn't known")
            << QByteArray(R"("kind":"stand")") << QByteArray(R"("kind":"hover")");
        QTest::newRow("a field that isn't known")
            << QByteArray(R"("seq")") << QByteArray(R"("reach":"arm","seq")");
    }
    void whatANewerAmbitWroteIsSaidToBeThat() {
        QFETCH(QByteArray, was);
        QFETCH(QByteArray, is);
        const House before; // another device's, as it was
        {
            auto into = before.open();
            QVERIFY(archive::merge(into, house->file()));
        }
        std::string seq, text;
        {
            Raw raw(house->file());
            const auto rows = raw.rows("SELECT seq, json FROM event WHERE round = " OPEN
                                       " AND json LIKE '%\"kind\":\"stand\"%' ORDER BY seq LIMIT 1");
            seq = rows.at(0).at(0);
            text = QByteArray::fromStdString(rows.at(0).at(1)).replace(was, is).toStdString();
            QVERIFY(parseJson(text) && canonicalJson(*parseJson(text)) == text);
            raw.run("UPDATE event SET json = '" + text + "', digest = " + std::to_string(digestOf(text)) +
                    " WHERE round = " OPEN " AND seq = " + seq);
        }
        auto archive = house->open();
        const auto events = archive.events(open);
        QVERIFY(!events);
        QCOMPARE(events.error().code, ErrorCode::unsupported);
        QVERIFY2(events.error().what.find("newer Ambit") != std::string::npos, events.error().what.c_str());
        QVERIFY(events.error().where.ends_with("event " + seq));
        QVERIFY(!events.error().remedy.empty());
        QCOMPARE(archive::OpenRound::resume(archive, house->machine, open).error().code,
                 ErrorCode::unsupported);
        const auto checked = archive::verify(archive);
        QVERIFY(checked);
        const auto named = std::find_if(checked->broken.begin(), checked->broken.end(),
                                        [&](const auto& one) { return one.sha256 == open; });
        QVERIFY(named != checked->broken.end() && named->error.code == ErrorCode::unsupported);
        // Nothing of it is lost: merged, it stays where it is and all else goes over.
        const House other;
        auto into = other.open();
        const auto merged = archive::merge(into, house->file());
        QVERIFY(merged);
        QCOMPARE(merged->rounds, std::size_t{1});
        const auto aside = std::count_if(merged->setAside.begin(), merged->setAside.end(),
                                         [](const Error& one) { return one.code == ErrorCode::unsupported; });
        QCOMPARE(aside, 1);
        const auto back = archive::merge(archive, before.file()); // nor does it stop a merge into here
        QVERIFY2(back, back ? "" : toText(back.error()).c_str());
        QCOMPARE(archive.eventText(open, std::stoll(seq)).value(), text);
        // And where its bytes aren't what was stored, it is damage.
        Raw(house->file())
            .run("UPDATE event SET digest = digest + 1 WHERE round = " OPEN " AND seq = " + seq);
        QCOMPARE(house->open().events(open).error().code, ErrorCode::storage);
    }

    void aRecordOfANewerAmbitIsNotDamageEither_data() {
        QTest::addColumn<int>("version");
        QTest::addColumn<ErrorCode>("code");
        QTest::newRow("newer") << 99 << ErrorCode::unsupported;
        QTest::newRow("one that is known") << 3 << ErrorCode::storage;
    }
    void aRecordOfANewerAmbitIsNotDamageEither() {
        QFETCH(int, version);
        QFETCH(ErrorCode, code);
        const Json content{{"version", version}, {"previous", Json::array()}, {"wind", "west"}};
        archive::Incoming one;
        one.told = test::madeUp(content, {1750000900001});
        one.told.registration = "OX-NEW";
        one.told.what = record::Entry(record::Reading{{{"hours", "1.0"}}});
        one.json = test::madeUpJson(content);
        QVERIFY(house->open().keep({one}));
        QVERIFY(house->open().told("OX-NEW"));
        Raw(house->file()).run("UPDATE page SET kind = 'weather' WHERE kind = 'reading'");
        const auto told = house->open().told("OX-NEW");
        QVERIFY(!told);
        QCOMPARE(told.error().code, code);
        QVERIFY(house->open().told("OX-ABC")); // other aircraft's files can be read
    }

    // Nobody is made to have said what they didn't: not through the round, and not past it.
    void aForgedAskIsRefusedAndFound() {
        auto here = house->open();
        auto resumed = archive::OpenRound::resume(here, house->machine, open);
        QVERIFY(resumed);
        const round::Person ines{"Ines Example", "instructor", ""};
        const auto key =
            record::unlock(record::newKeyFile(ines.name, "long enough", {0}).value(), "long enough");
        QVERIFY(key);
        round::Asked asked{
            1, {open, std::string(32, 'a'), round::Statement::Kind::remark, {}, "Well seen.", {5}, ines}, {}};
        asked.jws = record::signStatement(asked.statement, *key).value();
        round::Asked forged = asked;
        forged.statement.words = "Never mind.";
        const auto seq = resumed->state().lastSeq;
        const auto done = resumed->act(forged, {9});
        QVERIFY(!done);
        QCOMPARE(done.error().code, ErrorCode::signature);
        QCOMPARE(resumed->state().lastSeq, seq);
        QCOMPARE(here.events(open)->size(), static_cast<std::size_t>(seq));
        QVERIFY(resumed->act(asked, {9}));
        QVERIFY(!isBroken(here));
        forged.ask = 2;
        forged.statement.id[0] = 'b';
        QVERIFY(here.append(open, {seq + 2, {9}, forged}));
        QVERIFY(isBroken(here));
    }

    void aLogGoesOnWhereTheOtherArchiveHasMore() {
        const House other;
        const std::string behind = other.file();
        QVERIFY(archive::backUp(house->open(), behind)); // then the round goes on here only
        auto here = house->open();
        auto resumed = archive::OpenRound::resume(here, house->machine, open);
        QVERIFY(resumed);
        const std::string its = test::sealed(*resumed, {record}, '2');
        const auto whole = here.events(open);
        QVERIFY(whole);
        const auto same = [&](const Archive& archive) {
            const auto events = archive.events(open);
            if (!events || events->size() != whole->size()) return false;
            for (std::size_t i = 0; i < whole->size(); ++i)
                if (canonicalJson(toJson((*events)[i])) != canonicalJson(toJson((*whole)[i]))) return false;
            return true;
        };
        {
            auto there = Archive::open(behind);
            QVERIFY(there);
            QVERIFY(!same(*there));
            auto merged = archive::merge(*there, house->file());
            QVERIFY2(merged, merged ? "" : toText(merged.error()).c_str());
            QCOMPARE(merged->rounds, std::size_t{1});
            QVERIFY(same(*there));
            const auto rounds = there->rounds();
            QVERIFY(rounds &&
                    std::all_of(rounds->begin(), rounds->end(), [](const auto& one) { return one.sealed; }));
            // The made-up records (JSON and PDF of two) don't hold and stayed behind: the sealed round is
            // without its.
            QCOMPARE(merged->setAside.size(), std::size_t{4});
            const auto checked = archive::verify(*there);
            QVERIFY(checked);
            QVERIFY(std::any_of(checked->broken.begin(), checked->broken.end(), [&](const auto& one) {
                return one.sha256 == open && one.error.what.find("sealed") != std::string::npos;
            }));
        }
        const auto back = archive::merge(here, behind);
        QVERIFY(back);
        QCOMPARE(back->rounds, std::size_t{0});
        QVERIFY(same(here));
        const auto checked = archive::verify(here);
        QVERIFY(checked);
        QVERIFY(std::none_of(checked->broken.begin(), checked->broken.end(),
                             [&](const auto& one) { return one.sha256 == open; }));
        QVERIFY(!its.empty());
    }

    void aRecordWithoutItsWordsIsNamed() {
        Raw(house->file())
            .run("INSERT INTO words(words, rowid, aircraft, person, part, jasc, kind, text)"
                 " SELECT 'delete', key, '', '', '', '', '', '' FROM record");
        const auto checked = archive::verify(house->open());
        QVERIFY(checked);
        QVERIFY(std::any_of(checked->broken.begin(), checked->broken.end(), [&](const auto& one) {
            return one.sha256 == record && one.error.what.find("search") != std::string::npos;
        }));
    }

    void aBackupClearsAwayKilledOnesOnly() {
        namespace fs = std::filesystem;
        const fs::path folder = fs::path(house->file()).parent_path();
        const fs::path dead = folder / (".ambit-backup-" + std::to_string(deadProcess()) + ".part");
        const fs::path alive = folder / (".ambit-backup-" + std::to_string(::getppid()) + ".part");
        const fs::path other = folder / ".ambit-backup-mine.part";
        const fs::path late = folder / (".ambit-backup-" + std::to_string(deadProcess()) + ".part-wal");
        for (const fs::path& one : {dead, alive, other, late})
            QVERIFY(writeFile(one, "part"));
        for (const fs::path& one :
             {dead, alive, other}) // `late` may be another machine's, just being written
            fs::last_write_time(one, fs::file_time_type::clock::now() - std::chrono::hours(2));
        QVERIFY(archive::backUp(house->open(), folder / "copy.sqlite"));
        QVERIFY(fs::exists(folder / "copy.sqlite"));
        QVERIFY(!fs::exists(dead));
        QVERIFY(fs::exists(alive));
        QVERIFY(fs::exists(late));
        QVERIFY(fs::exists(other));
    }

private:
    /// Does `verify` say so of the open round?
    [[nodiscard]] bool isBroken(const Archive& archive) const {
        const auto checked = archive::verify(archive);
        return checked && std::any_of(checked->broken.begin(), checked->broken.end(),
                                      [&](const auto& one) { return one.sha256 == open; });
    }

    std::unique_ptr<House> house;
    std::string open, sealed, record;
};

QTEST_GUILESS_MAIN(TestArchiveLogs)
#include "tst_archive_logs.moc"
