// Time at stands, and points settled within the time that one takes. The airframe's expectation is the judge;
// what counts as quick is Ambit's own rule (pace.hpp), worked out by hand here.
#include "rounds.hpp"

#include "round/pace.hpp"

#include <QTest>
#include <algorithm>
#include <random>

using namespace ambit;
using namespace ambit::round;

namespace {

/// A log of points that take as long as is wanted: `pace` asks no rules.
class Log {
public:
    Log() : described(test::machine()) {
        described.points.resize(8, described.points.front());
        for (std::size_t i = 0; i < described.points.size(); ++i)
            described.points[i].id = "p" + std::to_string(i);
        expect(8);
        add(0, test::opening(test::machine()));
    }
    void expect(double seconds) {
        for (auto& point : described.points)
            point.seconds = seconds;
    }
    Log& add(double afterSeconds, What what) {
        at += std::llround(afterSeconds * 1000);
        events.push_back({static_cast<std::int64_t>(events.size()) + 1, {at}, std::move(what)});
        return *this;
    }
    Log& settle(double afterSeconds, Outcome outcome = Outcome::sound) {
        Settled what;
        what.point = "p" + std::to_string(next++ % 8);
        what.outcome = outcome;
        return add(afterSeconds, std::move(what));
    }
    [[nodiscard]] Pace pace() const { return paceOf(described, events); }

    airframe::Airframe described;
    std::vector<Event> events;
    std::int64_t at = 1750000000000;
    int next = 0;
};

} // namespace

class TestPace : public QObject {
    Q_OBJECT

private slots:
    void whatIsToldDownAgainWasLookedAtBefore() {
        Log log;
        log.add(20, StandReached{"mast"})
            .add(5, PortionBegun{{"p0", "p1", "p2", "p3"}})
            .add(40, PortionEnded{true});
        log.settle(1).settle(1).settle(1).settle(1);
        Pace pace = log.pace();
        QVERIFY(pace.quick.empty());
        QCOMPARE(pace.stands.front().settled, 4);
        QCOMPARE(pace.stands.front().ms, 49'000);
        log.settle(1).settle(1).settle(1); // those weren't among them
        QCOMPARE(log.pace().quick.size(), 1U);
        QCOMPARE(log.pace().quick.front().points, 3);
        // Given up, nothing was looked at.
        Log other;
        other.add(20, StandReached{"mast"})
            .add(5, PortionBegun{{"p0", "p1", "p2"}})
            .add(40, PortionEnded{false});
        other.settle(1).settle(1).settle(1);
        QCOMPARE(other.pace().quick.size(), 1U);
    }

    void timeAtAStandIsUntilTheLastThingDoneThere() {
        Log log;
        log.add(20, StandReached{"nose"}).settle(5).settle(7);
        log.add(30, StandReached{"left"}).settle(4);
        log.add(10, StandReached{"nose"}).settle(6);
        const Pace pace = log.pace();
        QCOMPARE(pace.stands.size(), 2U);
        QVERIFY((pace.stands[0] == StandPace{"nose", 18'000, 24'000, 3, 2}));
        QVERIFY((pace.stands[1] == StandPace{"left", 4'000, 8'000, 1, 1}));
        QCOMPARE(pace.walkingMs, 60'000);
        QCOMPARE(pace.inHandSince.ms, log.at);
    }

    void pausesAreNobodysTime() {
        Log log;
        log.add(1, StandReached{"nose"}).settle(5);
        log.add(3, Paused{}).add(600, Resumed{});
        log.settle(4);
        log.add(2, Paused{}).add(100, Resumed{}).add(5, StandReached{"left"});
        const Pace pace = log.pace();
        QCOMPARE(pace.stands[0].ms, 12'000); // 5 + 3 + 4
        QCOMPARE(pace.walkingMs, 8'000);     // 1 + 2 + 5
        QCOMPARE(pace.pausedMs, 700'000);
    }

    void whatIsNotInspectedTakesNoLooking() {
        Log log;
        log.add(1, StandReached{"nose"});
        for (int i = 0; i < 5; ++i)
            log.settle(0.5, Outcome::notInspected);
        const Pace pace = log.pace();
        QVERIFY(pace.quick.empty());
        QCOMPARE(pace.stands[0].settled, 0);
        QCOMPARE(pace.stands[0].expectedMs, 0);
    }

    void fourInThreeSeconds() {
        Log log;
        log.add(1, StandReached{"nose"}).settle(9).settle(9);
        log.settle(0.75).settle(0.75).settle(0.75).settle(0.75).settle(9);
        const auto quick = log.pace().quick;
        QCOMPARE(quick.size(), 1U);
        QVERIFY((quick[0] == Quick{5, 8, "nose", 4, 3'000}));
    }

    void threeInExactlyTheTimeOfOneAreNotQuick() {
        Log exact, below;
        exact.add(1, StandReached{"nose"}).settle(3).settle(3).settle(2);
        QVERIFY(exact.pace().quick.empty());
        below.add(1, StandReached{"nose"}).settle(3).settle(3).settle(1.999);
        QCOMPARE(below.pace().quick.size(), 1U);
        QCOMPARE(below.pace().quick[0].ms, 7'999);
    }

    void twoAreNeverQuick() {
        Log log;
        log.add(1, StandReached{"nose"}).settle(0.1).settle(0.1);
        QVERIFY(log.pace().quick.empty());
    }

    void theQuickestOfThemIsTheMeasure() {
        Log log;
        log.described.points[1].seconds = 2;
        log.add(1, StandReached{"nose"}).settle(1).settle(1).settle(1); // 3 s, and one takes 2
        QVERIFY(log.pace().quick.empty());
    }

    void overlappingOnesAreOne() {
        Log log;
        log.add(1, StandReached{"nose"});
        for (int i = 0; i < 8; ++i)
            log.settle(2.5); // any three in 7.5 s
        const auto quick = log.pace().quick;
        QCOMPARE(quick.size(), 1U);
        QCOMPARE(quick[0].points, 8);
        QCOMPARE(quick[0].ms, 20'000);
    }

    void whatPartsThem_data() {
        QTest::addColumn<int>("kind");
        QTest::newRow("another stand") << 0;
        QTest::newRow("a setting") << 1;
        QTest::newRow("a pause") << 2;
        QTest::newRow("nothing") << 3;
    }
    void whatPartsThem() {
        QFETCH(int, kind);
        Log log;
        log.add(1, StandReached{"nose"}).settle(1).settle(1);
        if (kind == 0) log.add(1, StandReached{"left"});
        if (kind == 1) log.add(1, SettingChanged{"rotor", "b"});
        if (kind == 2) log.add(1, Paused{}).add(1, Resumed{});
        log.settle(1);
        QCOMPARE(log.pace().quick.size(), kind == 3 ? 1U : 0U);
    }

    void aClockSetBackAccusesNobody() {
        Log log;
        log.add(1, StandReached{"nose"}).settle(8).settle(-3600).settle(8).settle(8);
        const Pace pace = log.pace();
        QVERIFY(pace.quick.empty());
        QCOMPARE(pace.stands[0].ms, 24'000);
    }

    void aWalkByThePlanFits() {
        const auto machine = test::machine();
        test::Round round(machine);
        round.toTheEnd();
        const Pace pace = paceOf(machine, round.events);
        int settled = 0, visits = 0;
        for (const StandPace& one : pace.stands) {
            settled += one.settled;
            visits += one.visits;
        }
        QCOMPARE(settled, round.state.settledCount());
        QCOMPARE(visits, static_cast<int>(round.state.standsReached.size()));
    }

    /// Time is neither made nor lost, in any order of things.
    void everyMillisecondIsSomewhere() {
        std::mt19937 random(20261126);
        for (int run = 0; run < 500; ++run) {
            Log log;
            log.add(1, StandReached{"nose"}).settle(1);
            bool paused = false;
            for (int i = 0; i < 60; ++i) {
                const double after = static_cast<double>(random() % 20'000) / 1000;
                if (paused) {
                    log.add(after, Resumed{});
                    paused = false;
                    continue;
                }
                switch (random() % 6) {
                case 0:
                    log.add(after, StandReached{random() % 2 == 0 ? "nose" : "left"});
                    break;
                case 1:
                    log.add(after, Paused{});
                    paused = true;
                    break;
                case 2:
                    log.add(after, OpeningMade{"cowl"});
                    break;
                default:
                    log.settle(after);
                }
            }
            if (paused) log.add(1, Resumed{});
            log.settle(1);
            const Pace pace = log.pace();
            std::int64_t sum = pace.walkingMs + pace.pausedMs;
            for (const StandPace& one : pace.stands)
                sum += one.ms;
            QCOMPARE(sum, log.at - log.events.front().at.ms);
            for (const Quick& one : pace.quick) {
                QVERIFY(one.points >= fewestQuick);
                QVERIFY(one.lastSeq - one.firstSeq + 1 >= one.points);
            }
        }
    }
};

QTEST_APPLESS_MAIN(TestPace)
#include "tst_pace.moc"
