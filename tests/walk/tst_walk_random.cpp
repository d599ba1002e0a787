// What every plan must obey, on random airframes.
#include "random_airframe.hpp"
#include "walk/plan.hpp"

#include <QTest>
#include <cmath>

using namespace ambit;
using walk::Plan;
using walk::Situation;
using walk::Step;

namespace {

constexpr int airframes = 10'000; ///< their plans from the start
constexpr int situations = 1'000; ///< and some of them from the middle of a walk

void check(const airframe::Airframe& airframe, const Situation& now, const Plan& plan) {
    const auto cost = walk::walkThrough(airframe, "all", now, plan.steps);
    QVERIFY2(cost, cost ? "" : toText(cost.error()).c_str());
    QVERIFY(std::fabs(cost->seconds - plan.cost.seconds) < 1e-9);
    QVERIFY(std::fabs(cost->metres - plan.cost.metres) < 1e-9);
    QCOMPARE(cost->climbs, plan.cost.climbs);
    QCOMPARE(cost->turns, plan.cost.turns);
    QVERIFY2(plan.unreachable.empty(),
             plan.unreachable.empty() ? "" : plan.unreachable.front().second.c_str());
    std::set<std::string> settled = now.settled;
    for (const Step& step : plan.steps)
        if (const auto* settle = std::get_if<walk::Settle>(&step))
            QVERIFY(settled.insert(settle->point).second);
    QCOMPARE(settled.size(), airframe.points.size());
    if (!plan.steps.empty()) QVERIFY(std::holds_alternative<walk::Settle>(plan.steps.back()));
}

} // namespace

class TestWalkRandom : public QObject {
    Q_OBJECT

private slots:
    void everyPlanIsLegalAndWhole() {
        std::mt19937 random(1);
        for (int i = 0; i < airframes; ++i) {
            const auto airframe = test::randomAirframe(random);
            const Situation start = walk::startOf(airframe);
            const auto plan = walk::makePlan(airframe, "all", start);
            QVERIFY2(plan, plan ? "" : toText(plan.error()).c_str());
            check(airframe, start, *plan);
            if (QTest::currentTestFailed()) QFAIL(qPrintable(QString("airframe %1").arg(i)));
            QVERIFY(plan->bound <= plan->cost.weighs);
            QCOMPARE(plan->proven, plan->bound == plan->cost.weighs);
            const auto listed = walk::listedPlan(airframe, "all", start);
            QVERIFY(listed);
            check(airframe, start, *listed);
            QVERIFY(plan->cost.weighs <= listed->cost.weighs);
            if (i % 10 == 0) QVERIFY(walk::makePlan(airframe, "all", start)->steps == plan->steps);
        }
    }

    void fromTheMiddleOfAPlanTooAndZoneFirst() {
        std::mt19937 random(2);
        for (int i = 0; i < situations; ++i) {
            const auto airframe = test::randomAirframe(random);
            Situation now = walk::startOf(airframe);
            const auto plan = walk::makePlan(airframe, "all", now);
            QVERIFY(plan);
            const std::size_t done = random() % (plan->steps.size() + 1);
            walk::follow(now, {plan->steps.begin(), plan->steps.begin() + static_cast<std::ptrdiff_t>(done)});
            for (const char* zone : {"", "left", "right", "nowhere"}) {
                now.firstZone = *zone == 0 ? std::nullopt : std::optional<std::string>(zone);
                const auto rest = walk::makePlan(airframe, "all", now);
                QVERIFY(rest);
                check(airframe, now, *rest);
                if (QTest::currentTestFailed())
                    QFAIL(qPrintable(QString("airframe %1, zone %2").arg(i).arg(zone)));
            }
        }
    }

    // A stand is lost in the middle of the walk: what is left is within 5 % of the best, and the known order
    // itself where it still does.
    void keepsToTheKnownOrder() {
        std::mt19937 random(4);
        int kept = 0;
        int changed = 0;
        for (int i = 0; i < situations; ++i) {
            const auto airframe = test::randomAirframe(random);
            Situation now = walk::startOf(airframe);
            const auto plan = walk::makePlan(airframe, "all", now);
            QVERIFY(plan);
            const std::size_t done = random() % (plan->steps.size() + 1);
            walk::follow(now, {plan->steps.begin(), plan->steps.begin() + static_cast<std::ptrdiff_t>(done)});
            const std::vector<Step> known(plan->steps.begin() + static_cast<std::ptrdiff_t>(done),
                                          plan->steps.end());
            if (i % 2 == 0) now.blocked.insert(airframe.stands[random() % airframe.stands.size()].id);
            const auto best = walk::makePlan(airframe, "all", now);
            const auto rest = walk::keepingTo(known, airframe, "all", now);
            QVERIFY(best && rest);
            QCOMPARE(rest->unreachable.size(), best->unreachable.size());
            const auto cost = walk::walkThrough(airframe, "all", now, rest->steps);
            QVERIFY2(cost, cost ? "" : toText(cost.error()).c_str());
            QCOMPARE(cost->weighs, rest->cost.weighs);
            QVERIFY2(
                rest->cost.weighs <= best->cost.weighs * 1.05 + 0.001,
                qPrintable(
                    QString("airframe %1: %2 for %3").arg(i).arg(rest->cost.weighs).arg(best->cost.weighs)));
            QVERIFY(rest->bound <= best->cost.weighs);
            if (i % 2 != 0) QVERIFY(rest->steps == known);
            (rest->steps == known ? kept : changed)++;
        }
        QVERIFY(kept > 500 && changed > 50);
    }

    // What can't be done is said, point by point, and the rest is planned.
    void blockedStandsAreLeftOut() {
        std::mt19937 random(3);
        int said = 0;
        for (int i = 0; i < situations; ++i) {
            const auto airframe = test::randomAirframe(random);
            Situation now = walk::startOf(airframe);
            now.blocked.insert(airframe.stands[random() % airframe.stands.size()].id);
            const auto plan = walk::makePlan(airframe, "all", now);
            QVERIFY(plan);
            const auto cost = walk::walkThrough(airframe, "all", now, plan->steps);
            QVERIFY2(cost, cost ? "" : toText(cost.error()).c_str());
            const auto settled = std::count_if(plan->steps.begin(), plan->steps.end(), [](const Step& step) {
                return std::holds_alternative<walk::Settle>(step);
            });
            QCOMPARE(static_cast<std::size_t>(settled) + plan->unreachable.size(), airframe.points.size());
            for (const auto& [point, why] : plan->unreachable)
                QVERIFY(!why.empty());
            said += plan->unreachable.empty() ? 0 : 1;
        }
        QVERIFY(said > 100);
    }
};

QTEST_APPLESS_MAIN(TestWalkRandom)
#include "tst_walk_random.moc"
