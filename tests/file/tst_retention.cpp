// Which records may go: 14 CFR 91.417(b)(1) to (3), as ../shared/TRADE.md has them ((b)(3) from memory), and
// what a record tells, there and back.
#include "file/retention.hpp"

#include <QTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using namespace ambit::file;

namespace {

Told told(const char mark, const char* at, std::variant<RoundTold, record::Entry> what,
          std::vector<std::string> previous) {
    Told one;
    one.sha256 = std::string(64, mark);
    one.registration = "OX-TEST";
    one.serial = "1";
    one.at = *parseInstant(std::string(at) + "T12:00:00.000Z");
    one.previous = std::move(previous);
    one.signer = {"Kim Example", "mechanic", "C-1"};
    one.key = std::string(64, 'f');
    one.what = std::move(what);
    return one;
}

RoundTold walkedRound(std::vector<Seen> seen) {
    RoundTold one;
    Walked walked{std::string(64, 'e'),
                  "Daily",
                  {{"belt", "Drive belt", "Engine", "6310"}, {"oil", "Oil", "Engine", ""}}};
    one.walked = std::make_shared<const Walked>(std::move(walked));
    one.round = "r";
    one.fit = true;
    one.counters = {{"hours", "100.5"}};
    one.seen = std::move(seen);
    return one;
}

record::Entry work(std::vector<record::DiscrepancyId> of, std::vector<std::string> inspections,
                   const char* on, std::vector<round::CounterReading> counters = {}) {
    return record::Rectification{std::move(of), std::move(inspections), "Done.", on, "",
                                 "mechanic",    std::move(counters)};
}

std::string name(char mark) {
    return std::string(64, mark);
}

} // namespace

class TestRetention : public QObject {
    Q_OBJECT

private slots:
    /// The word on a value stays as long as the value does.
    void aRenewalStaysWithItsValue() {
        const Seen oil{"oil", round::Outcome::sound, "", false, "", "5.0", "qt", "within"};
        std::vector<Told> all{told('1', "2024-01-10", walkedRound({oil}), {}),
                              told('2', "2024-01-11",
                                   record::Entry(record::Renewal{{name('1'), "oil"}, true, ""}), {name('1')}),
                              told('3', "2024-02-03", walkedRound({}), {name('2')})};
        const auto mayGo = [&] {
            for (const Keeping& one : retention(all, fold(all), Date::parse("2026-05-01").value()))
                if (one.record == name('2')) return one.mayGo;
            qFatal("it isn't judged");
        };
        QVERIFY(!mayGo());
        all.erase(all.begin());
        const record::Removal gone{{{name('1'), {}, "round", *parseInstant("2024-01-10T12:00:00.000Z")}},
                                   "Old."};
        all.push_back(told('4', "2024-03-03", record::Entry(gone), {name('3')}));
        QVERIFY(mayGo());
        QVERIFY(fold(all).conflicts.empty());
    }

    // The one before the last was told to be of something put right and seen sound.
    void everyAssessmentStaysUntilItsDiscrepancyIsClosed() {
        const Seen frayed{"belt", round::Outcome::finding, "Frayed.", false, "", "", "", ""};
        const auto deferred = [](const char* until) {
            record::Deferral how;
            how.until = until;
            return record::Entry(record::Assessment{{name('1'), "belt"}, "It can wait.", how});
        };
        std::vector<Told> all{told('1', "2024-02-01", walkedRound({frayed}), {}),
                              told('2', "2024-02-02", deferred("2024-03-01"), {name('1')}),
                              told('3', "2024-03-01", deferred("2024-04-01"), {name('2')}),
                              told('4', "2024-03-02", walkedRound({}), {name('3')})};
        const auto mayGo = [&](char mark) {
            for (const Keeping& one : retention(all, fold(all), Date::parse("2026-05-01").value()))
                if (one.record == name(mark)) return one.mayGo;
            qFatal("it isn't judged");
        };
        QVERIFY(!mayGo('2'));
        QVERIFY(!mayGo('3'));
        all.push_back(told('5', "2024-03-03", work({{name('1'), "belt"}}, {}, "2024-03-03"), {name('4')}));
        QVERIFY(!mayGo('2')); // put right, and not yet seen sound
        all.push_back(told('6', "2024-03-04", walkedRound({}), {name('5')}));
        all.push_back(told('7', "2024-03-05", walkedRound({}), {name('6')}));
        QVERIFY(mayGo('2') && mayGo('3'));
    }

    void whatMayGoWhen() {
        const Seen frayed{"belt", round::Outcome::finding, "Frayed.", false, "", "", "", ""};
        const std::vector<Told> all{
            told('1', "2024-01-10", work({}, {"annual"}, "2024-01-10"), {}),
            told('2', "2024-02-01", walkedRound({frayed}), {name('1')}),
            told('3', "2024-02-02", work({{name('2'), "belt"}}, {}, "2024-02-02"), {name('2')}),
            told('4', "2024-02-03", walkedRound({}), {name('3')}), // seen sound: closed
            told('5', "2025-01-20", work({}, {"annual"}, "2025-01-20"), {name('4')}),
            told('6', "2025-02-01", record::Entry(record::Reading{{{"hours", "150.0"}}}), {name('5')}),
            told('7', "2025-03-01", work({}, {}, "2025-03-01"), {name('6')}),
            told('8', "2025-04-01", walkedRound({frayed}), {name('7')}), // open
            told('9', "2025-04-02", record::Entry(record::Reading{{{"hours", "160.0"}}}), {name('8')}),
        };
        const AircraftFile file = fold(all);
        const auto on = [&](const char* day) {
            std::map<char, bool> mayGo;
            for (const Keeping& one : retention(all, file, Date::parse(day).value()))
                mayGo[one.record[0]] = one.mayGo;
            return mayGo;
        };
        const auto before = on("2025-05-01");
        QCOMPARE(before.size(), all.size());
        QVERIFY(before.at('1'));  // (b)(1): repeated by the next annual
        QVERIFY(before.at('2'));  // a round; what it found is closed
        QVERIFY(before.at('3'));  // (b)(1): more than a year ago
        QVERIFY(!before.at('5')); // (b)(2): the inspection that counts now
        QVERIFY(before.at('6'));  // a later reading says what is now
        QVERIFY(!before.at('7')); // (b)(1): not a year yet
        QVERIFY(!before.at('8')); // (b)(3): a discrepancy not put right
        QVERIFY(!before.at('9')); // the latest
        QVERIFY(!on("2026-03-01").at('7'));
        QVERIFY(on("2026-03-03").at('7')); // a year and a day, whatever the leap years
    }

    void toldThereAndBack() {
        RoundTold walked =
            walkedRound({{"belt", round::Outcome::finding, "Frayed; 2 \x1f", true, "", "", "", ""},
                         {"oil", round::Outcome::sound, "", false, "", "5.2", "qt", "within"}});
        walked.reasons = std::string(300, 'x'); // a length of two bytes
        walked.photos = {name('a'), name('b')};
        for (const Told& one : {told('1', "2024-01-10", walked, {}),
                                told('2', "2024-01-10", work({}, {"annual"}, "2024-01-10"), {})}) {
            const std::string kept = packed(one);
            Told back = told('1', "2024-01-10", RoundTold{}, {});
            back.serial.clear();
            const auto done =
                unpack(back, kept, one.kind(), one.round() == nullptr ? nullptr : one.round()->walked);
            QVERIFY(done);
            QCOMPARE(back.serial, one.serial);
            QCOMPARE(packed(back), kept);
            if (one.round() == nullptr) continue;
            QCOMPARE(back.round()->seen.size(), std::size_t{2});
            QCOMPARE(back.round()->seenAt("belt")->grounds, true);
            QCOMPARE(back.round()->seenAt("oil")->value, std::string("5.2"));
            QCOMPARE(back.findings(), 1);
            for (std::size_t size = 0; size < kept.size(); ++size) { // cut off anywhere: an error, no crash
                Told cut = one;
                QVERIFY(!unpack(cut, std::string_view(kept).substr(0, size), "round", nullptr));
            }
            QVERIFY(!unpack(back, kept + '\0' + 'x', "round", nullptr));
        }
        const Walked its = *walked.walked;
        QVERIFY(walkedFrom(toJson(its).dump()).value() == its);
        QVERIFY(!walkedFrom("{}"));
    }
};

QTEST_APPLESS_MAIN(TestRetention)
#include "tst_retention.moc"
