// What the records of an aircraft say of its measured points over time, and their last photos.
#include "archive/aircraft_file.hpp"
#include "archive/archive.hpp"
#include "archive/find.hpp"
#include "archive/import.hpp"
#include "archive/series.hpp"
#include "archive/verify.hpp"
#include "base/hash.hpp"
#include "file/told.hpp"
#include "measured.hpp"
#include "photographed.hpp"

#include <QTemporaryDir>
#include <QtTest>
#include <algorithm>
#include <nlohmann/json.hpp>

using namespace ambit;
using test::MeasuredRound;

namespace {

template<class Value> Value sure(Result<Value> result) {
    if (!result) qFatal("%s", toText(result.error()).c_str());
    return std::move(*result);
}

std::vector<std::string> valuesOf(const std::vector<round::Past>& series) {
    std::vector<std::string> values;
    values.reserve(series.size());
    for (const round::Past& one : series)
        values.push_back(one.value);
    return values;
}

using Texts = std::vector<std::string>;

class Kept {
public:
    explicit Kept(const std::vector<MeasuredRound>& rounds) {
        for (const MeasuredRound& one : rounds)
            (void)sure(archive::importRecord(archive, test::measured(one)));
    }

private:
    QTemporaryDir folder;

public:
    archive::Archive archive = sure(archive::Archive::open(folder.filePath("archive.sqlite").toStdString()));
};

} // namespace

class TestArchiveSeries : public QObject {
    Q_OBJECT

private slots:
    /// By time, whatever the order in which the records came.
    void theOldestFirst() {
        const Kept kept({{.day = 2, .hours = "1290.2", .oil = "4.8"},
                         {.day = 0, .hours = "1284.6", .oil = "5.0"},
                         {.day = 1, .hours = "1287.0", .oil = "4.9"}});
        const auto all = sure(archive::series(kept.archive, "OX-TEST", {"oil"}));
        QCOMPARE(all.size(), std::size_t{1});
        const auto& oil = all.at("oil");
        QCOMPARE(valuesOf(oil), (Texts{"5.0", "4.9", "4.8"}));
        for (int i = 0; i < 3; ++i)
            QCOMPARE(oil[static_cast<std::size_t>(i)].at.ms, test::concludedAt(i));
        QCOMPARE(oil[1].counters.front().id, std::string("hours"));
        QCOMPARE(oil[1].counters.front().value, std::string("1287.0"));
        QCOMPARE(oil[1].unit, std::string("mm"));
        QVERIFY(!oil[1].by.empty());
    }

    void severalPointsAtOnce() {
        const Kept kept({{.day = 0, .oil = "5.0", .blade = "4.4"},
                         {.day = 1, .oil = "4.9"}, // the blade wasn't inspected
                         {.day = 2, .oil = "4.8", .blade = "4.6"}});
        const auto all = sure(archive::series(kept.archive, "OX-TEST", {"oil", "blade.a", "cowl-open.left"}));
        QCOMPARE(valuesOf(all.at("oil")), (Texts{"5.0", "4.9", "4.8"}));
        QCOMPARE(valuesOf(all.at("blade.a")), (Texts{"4.4", "4.6"}));
        QVERIFY(!all.contains("cowl-open.left")); // isn't measured
        QVERIFY(sure(archive::series(kept.archive, "OX-TEST", {"nothing"})).empty());
        QVERIFY(sure(archive::series(kept.archive, "OX-NONE", {"oil"})).empty());
    }

    void noOtherAircraft() {
        const Kept kept({{.day = 0, .oil = "5.0"},
                         {.registration = "OX-ELSE", .day = 1, .oil = "4.2", .photos = {}},
                         {.day = 2, .oil = "4.8"}});
        QCOMPARE(valuesOf(sure(archive::series(kept.archive, "OX-TEST", {"oil"})).at("oil")),
                 (Texts{"5.0", "4.8"}));
        QCOMPARE(valuesOf(sure(archive::series(kept.archive, "OX-ELSE", {"oil"})).at("oil")), (Texts{"4.2"}));
    }

    /// The newest; a point seldom measured still gets as many.
    void noMoreThanWanted() {
        std::vector<MeasuredRound> rounds;
        rounds.reserve(9);
        for (int day = 0; day < 9; ++day)
            rounds.push_back({.day = day,
                              .oil = "4." + std::to_string(day),
                              .blade = day < 3 ? "5." + std::to_string(day) : ""});
        const Kept kept(rounds);
        const auto all = sure(archive::series(kept.archive, "OX-TEST", {"oil", "blade.a"}, 2));
        QCOMPARE(valuesOf(all.at("oil")), (Texts{"4.7", "4.8"}));
        QCOMPARE(valuesOf(all.at("blade.a")), (Texts{"5.1", "5.2"}));
        QCOMPARE(valuesOf(sure(archive::series(kept.archive, "OX-TEST", {"oil"}, 100)).at("oil")).size(),
                 std::size_t{9});
    }

    void whatIsSaidOfAValueComesAlong() {
        const Kept kept({{.day = 0, .oil = "0.2", .oilUnit = "in"},
                         {.day = 1, .renewed = true, .inPhoto = true},
                         {.day = 2, .oil = "4.9", .renewed = true},
                         {.day = 3, .inPhoto = true},
                         {.day = 4, .oil = "4.8", .oilFrom = airframe::Means::dipstick}});
        const auto oil = sure(archive::series(kept.archive, "OX-TEST", {"oil"})).at("oil");
        QCOMPARE(valuesOf(oil), (Texts{"0.2", "5.00", "4.9", "5.00", "4.8"}));
        QCOMPARE(oil[4].uncertainty, std::string("0.15"));
        const auto told = sure(archive::history(kept.archive, "OX-TEST", "oil")); // the newest first
        QCOMPARE(told.front().uncertainty, std::string("0.15"));
        Texts from;
        for (const archive::Sighting& one : told)
            from.push_back(one.from);
        QCOMPARE(from, (Texts{"dipstick", "photo", "", "photo", ""}));
        std::reverse(from.begin(), from.end());
        for (std::size_t i = 0; i < oil.size(); ++i)
            QCOMPARE(oil[i].from, from[i]);
        QCOMPARE(oil[0].unit, std::string("in"));
        QCOMPARE(oil[1].unit, std::string("mm"));
        for (std::size_t i = 0; i < 4; ++i) {
            QCOMPARE(oil[i].renewed, i == 1 || i == 2);
            QCOMPARE(oil[i].uncertainty, i % 2 == 1 ? test::uncertaintyInPhoto() : std::string());
        }
    }

    /// Forgotten when it was measured, said afterwards: series and history have it, until it is taken back.
    void aRenewalSaidAfterwards() {
        Kept kept(
            {{.day = 0, .oil = "4.2"}, {.day = 1, .oil = "5.0"}, {.day = 2, .oil = "4.9", .renewed = true}});
        const auto read = [&] {
            std::string all;
            for (const round::Past& one : sure(archive::series(kept.archive, "OX-TEST", {"oil"})).at("oil"))
                all += one.renewed ? 'r' : '-';
            return all;
        };
        const auto told = [&] { return sure(archive::history(kept.archive, "OX-TEST", "oil")); };
        QCOMPARE(read(), std::string("--r"));
        QVERIFY(sure(archive::renewals(kept.archive, "OX-TEST")).empty());
        const std::string second = told()[1].record, third = told()[0].record;
        const auto say = [&](const std::string& record, bool renewed, int day) {
            (void)sure(archive::importRecord(
                kept.archive, test::renewal(record, renewed, day, sure(kept.archive.heads("OX-TEST")))));
        };
        say(second, true, 3);
        QCOMPARE(read(), std::string("-rr"));
        auto history = told();
        QCOMPARE(history.size(), std::size_t{4});
        QCOMPARE(history[0].what, std::string("renewal"));
        QVERIFY2(history[0].words.starts_with("Renewed before the value of record " + second.substr(0, 12)),
                 history[0].words.c_str());
        QVERIFY(history[1].renewed && history[2].renewed && !history[3].renewed);
        say(third, false, 4);
        QCOMPARE(read(), std::string("-r-"));
        say(second, false, 5);
        QCOMPARE(read(), std::string("---"));
        QCOMPARE(told().size(), std::size_t{6});
        QVERIFY(sure(archive::history(kept.archive, "OX-TEST", "blade.a")).size() == 3); // not of it
        QVERIFY(sure(archive::verify(kept.archive)).broken.empty());
        archive::Wanted wanted;
        wanted.kind = "renewal";
        QCOMPARE(sure(archive::find(kept.archive, wanted)).size(), std::size_t{3});
        wanted.words = "changed";
        QCOMPARE(sure(archive::find(kept.archive, wanted)).size(), std::size_t{3});
    }

    /// What an archive kept before values had these is read, and written, as it was.
    void earlierArchivesAreRead() {
        file::RoundTold round;
        round.fit = true;
        round.counters = {{"hours", "1284.6"}};
        round.seen = {{"oil", round::Outcome::sound, "", false, "", "5.0", "qt", "within", "", false},
                      {"tip", round::Outcome::finding, "Bent.", true, "", "", "", "", "", false},
                      {"lamp", round::Outcome::notInspected, "Dark.", false, "Day", "", "", "", "", false}};
        file::Told told;
        told.serial = "S";
        told.what = round;
        // A row of texts, each behind its length, as file/told.hpp says; how a point was: outcome · 2 +
        // grounds.
        using namespace std::string_literals;
        const std::string kept = "\x01S"
                                 "\x00\x01\x00"
                                 "\x01\x05hours\x06"
                                 "1284.6"
                                 "\x03"
                                 "\x03oil\x00\x00\x00\x03"
                                 "5.0\x02qt\x06within"
                                 "\x03tip\x03\x05"
                                 "Bent.\x00\x00\x00\x00"
                                 "\x04lamp\x04\x05"
                                 "Dark.\x03"
                                 "Day\x00\x00\x00"
                                 "\x00"s;
        QCOMPARE(file::packed(told), kept);
        file::Told back;
        QVERIFY(file::unpack(back, kept, "round", nullptr));
        QCOMPARE(back.round()->seen.size(), std::size_t{3});
        for (const file::Seen& one : back.round()->seen)
            QVERIFY(one.uncertainty.empty() && !one.renewed);
        QCOMPARE(back.round()->seen[0].value, std::string("5.0"));
        QVERIFY(back.round()->seen[1].grounds);
        QCOMPARE(back.round()->seen[2].outcome, round::Outcome::notInspected);

        auto& seen = std::get<file::RoundTold>(told.what).seen;
        seen[0].uncertainty = "0.14";
        seen[0].renewed = true;
        seen[1].renewed = true;
        seen[0].from = airframe::Means::eye;
        seen[1].from = airframe::Means::gauge;
        const std::string more = file::packed(told);
        // 8 for an uncertainty, 16 for renewed, 32 times the means, 6 the last: 216, in sevens of bits.
        QVERIFY(more.find("\x03oil\xd8\x01") != std::string::npos);
        QVERIFY(file::unpack(back, more, "round", nullptr));
        QCOMPARE(back.round()->seen[0].uncertainty, std::string("0.14"));
        QVERIFY(back.round()->seen[0].renewed && back.round()->seen[1].renewed);
        QVERIFY(back.round()->seen[1].grounds && !back.round()->seen[2].renewed);
        QCOMPARE(back.round()->seen[1].outcome, round::Outcome::finding);
        QVERIFY(back.round()->seen[0].from == airframe::Means::eye);
        QVERIFY(back.round()->seen[1].from == airframe::Means::gauge && !back.round()->seen[2].from);
        for (std::size_t size = 0; size < more.size(); ++size)
            QVERIFY(!file::unpack(back, std::string_view(more).substr(0, size), "round", nullptr));
    }

    /// The last photo of each of the newest records that have one.
    void photosOfAPoint() {
        const Kept kept({{.day = 0, .blade = "4.4", .photos = {1, 2}},
                         {.day = 1, .inPhoto = true, .blade = "4.4"}, // a photo, but of the oil
                         {.day = 2, .blade = "4.4", .photos = {3}},
                         {.registration = "OX-ELSE", .day = 3, .blade = "4.4", .photos = {4}}});
        const auto photos = sure(archive::photosOf(kept.archive, "OX-TEST", "blade.a"));
        QCOMPARE(photos.size(), std::size_t{2});
        QCOMPARE(photos[0].photo.sha256, sha256Hex(test::picture(3)));
        QCOMPARE(photos[0].at.ms, test::concludedAt(2));
        QCOMPARE(photos[1].photo.sha256, sha256Hex(test::picture(2)));
        QVERIFY(photos[0].record != photos[1].record);
        QVERIFY(photos[0].measurements.empty());
        QCOMPARE(sure(archive::photosOf(kept.archive, "OX-TEST", "blade.a", 1)).size(), std::size_t{1});

        const auto oil = sure(archive::photosOf(kept.archive, "OX-TEST", "oil"));
        QCOMPARE(oil.size(), std::size_t{1});
        QCOMPARE(oil[0].photo.sha256, sha256Hex(test::picture(101)));
        QCOMPARE(oil[0].measurements.size(), std::size_t{1});
        QCOMPARE(oil[0].measurements.front().value, std::string("5.00"));
        QVERIFY(sure(archive::photosOf(kept.archive, "OX-TEST", "cowl-open.left")).empty());
    }
};

QTEST_APPLESS_MAIN(TestArchiveSeries)
#include "tst_archive_series.moc"
