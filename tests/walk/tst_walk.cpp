// The plan of one known machine, and the judge of plans: each rule with a plan that breaks it.
#include "airframe/read.hpp"
#include "walk/plan.hpp"

#include <QTest>
#include <cmath>

using namespace ambit;
using walk::Go;
using walk::Plan;
using walk::Set;
using walk::Settle;
using walk::Situation;
using walk::Step;

class TestWalk : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        auto good = airframe::readFrom(AMBIT_ROOT "/tests/airframe/good.json");
        QVERIFY(good);
        machine = std::move(*good);
        start = walk::startOf(machine);
    }

    void plansEverythingOnce() {
        const Plan all = plan(start);
        QVERIFY(all.unreachable.empty());
        QCOMPARE(places(all).size(), machine.points.size());
        QCOMPARE(all.cost.turns, 1);
        QCOMPARE(all.cost.climbs, 2); // a pitch link for each half-turn of the rotor
        QVERIFY(walk::walkThrough(machine, "daily", start, all.steps));
    }

    void keepsWhatComesBefore() {
        const auto at = places(plan(start));
        QVERIFY(at.at("cowl-open.left") < at.at("oil"));
        QVERIFY(at.at("oil") < at.at("cowl-close.left"));
        QVERIFY(at.at("pitch-link.a") < at.at("blade.a"));
        QVERIFY(at.at("blade.b") < at.at("last-look"));
    }

    void theShorterWalkIsNotBoundByWhatItLeavesOut() {
        const auto shorter = walk::makePlan(machine, "short", start);
        QVERIFY(shorter);
        QVERIFY(shorter->unreachable.empty());
        QCOMPARE(places(*shorter).size(), 6U);
    }

    void theSameEveryDay() { QVERIFY(plan(start).steps == plan(start).steps); }

    void goesOnFromWhereItStands() {
        Situation now = start;
        now.stand = "left";
        now.settled = now.soundPoints = {"arc-clear", "tie-down-off", "cowl-open.left", "oil"};
        const Plan rest = plan(now);
        QVERIFY((rest.steps.front() == Step{Settle{"engine.left"}})); // no Go: it is there
        QVERIFY(!places(rest).contains("oil"));
    }

    void nothingLeftIsAnEmptyPlanAndTheWayHome() {
        Situation now = start;
        now.stand = "front";
        for (const auto& point : machine.points)
            now.settled.insert(point.id);
        const Plan none = plan(now);
        QVERIFY(none.steps.empty());
        QCOMPARE(none.cost.metres, 2.0); // from [0, 4] to the end at [0, 6]
    }

    void aZoneFirst() {
        Situation now = start;
        now.firstZone = "side-right";
        const Plan right = plan(now);
        QVERIFY((right.steps.front() == Step{Go{"right"}}));
        QVERIFY((right.steps[1] == Step{Settle{"cowl-open.right"}}));
        QCOMPARE(places(right).size(), machine.points.size());
    }

    void aBlockedStandIsNotUsedAndSaid() {
        Situation now = start;
        now.blocked = {"tread"};
        const Plan without = plan(now);
        QVERIFY(!places(without).contains("pitch-link.a"));
        QVERIFY(places(without).contains("oil"));
        std::map<std::string, std::string> why(without.unreachable.begin(), without.unreachable.end());
        QVERIFY(why.at("pitch-link.a").find("no way") != std::string::npos);
        QVERIFY(why.at("blade.a").find("Pitch link, blade A") != std::string::npos);
    }

    // The arc was not seen clear: the rotor stays, and what needs it turned is said.
    void needsMustBeSound() {
        Situation now = start;
        now.settled = {"arc-clear"};
        const Plan stuck = plan(now);
        QVERIFY(!places(stuck).contains("blade.b"));
        std::map<std::string, std::string> why(stuck.unreachable.begin(), stuck.unreachable.end());
        QVERIFY(why.at("pitch-link.b").find("Rotor arc clear") != std::string::npos);
    }

    void setsBackWhatPointsNeed() {
        Situation now = start;
        now.settings["rotor"] = "b-aft";
        const Plan back = plan(now);
        QVERIFY(back.unreachable.empty());
        QVERIFY(std::count(back.steps.begin(), back.steps.end(), Step{Set{"rotor", "a-aft"}}) == 1);
    }

    void unknownNamesAreErrors() {
        Situation now = start;
        QCOMPARE(walk::makePlan(machine, "weekly", now).error().code, ErrorCode::notFound);
        now.stand = "roof";
        QCOMPARE(walk::makePlan(machine, "daily", now).error().code, ErrorCode::notFound);
        QCOMPARE(walk::walkThrough(machine, "daily", now, {}).error().code, ErrorCode::notFound);
        now = start;
        now.firstZone = "roof";
        QCOMPARE(walk::makePlan(machine, "daily", now).error().code, ErrorCode::notFound);
    }

    void costsAreAsTheAirframeSays() {
        // Start [0, 5] to the tread at [-1.3, 0.5] past the cabin's corner, up, to the mast without stepping
        // down, and home.
        airframe::Airframe thin = machine;
        thin.costs.clearanceMetres = 0;
        thin.sha256.clear(); // it is another machine now
        const auto cost = walk::walkThrough(thin, "daily", start, {Go{"tread"}, Go{"mast"}});
        QVERIFY(cost);
        QCOMPARE(cost->climbs, 1);
        const double out = std::hypot(1, 2) + std::hypot(0.3, 2.5);
        const double home = std::hypot(0.3, 2.8) + std::hypot(1, 3);
        QVERIFY(std::fabs(cost->metres - (out + 0.3 + home)) < 1e-9);
        QVERIFY(std::fabs(cost->seconds - (out + 0.3 + home + 14)) <= 0.003); // three legs, each rounded up
        const auto kneeling =
            walk::walkThrough(machine, "daily", start, {Go{"right"}, Settle{"cowl-open.right"}});
        QVERIFY(std::fabs(kneeling->seconds - kneeling->metres - 4 - 10) <= 0.002);
    }

    void theJudgeRefuses_data() {
        using Steps = std::vector<Step>;
        QTest::addColumn<Steps>("steps");
        const auto row = [](const char* name, const Steps& steps) { QTest::newRow(name) << steps; };
        row("no such stand", {Go{"roof"}});
        row("onlyFrom from the ground", {Go{"mast"}});
        row("onlyFrom from another", {Go{"left"}, Go{"mast"}});
        row("blocked stand", {Go{"blocked"}});
        row("no such setting", {Go{"left"}, Set{"flaps", "up"}});
        row("no such state", {Go{"left"}, Set{"rotor", "c-aft"}});
        row("no stand yet", {Settle{"arc-clear"}});
        row("setting from the wrong stand", {Go{"front"}, Settle{"arc-clear"}, Set{"rotor", "b-aft"}});
        row("setting without its needs", {Go{"left"}, Set{"rotor", "b-aft"}});
        row("setting to what it is", {Go{"left"}, Set{"rotor", "a-aft"}});
        row("no such point", {Go{"left"}, Settle{"propeller"}});
        row("point from the wrong stand", {Go{"left"}, Settle{"tie-down-off"}});
        row("point twice", {Go{"left"}, Settle{"arc-clear"}, Settle{"arc-clear"}});
        row("point before its after", {Go{"tread"}, Go{"mast"}, Settle{"pitch-link.a"}});
        row("closed before opened", {Go{"left"}, Settle{"cowl-close.left"}});
        row("looked through what is closed", {Go{"left"}, Settle{"oil"}});
        row("point in another setting",
            {Go{"left"}, Settle{"arc-clear"}, Go{"tread"}, Go{"mast"}, Settle{"pitch-link.a"}, Go{"left"},
             Set{"rotor", "b-aft"}, Settle{"blade.a"}});
    }
    void theJudgeRefuses() {
        QFETCH(std::vector<Step>, steps);
        Situation now = start;
        now.blocked = {"right"};
        for (Step& step : steps)
            if (step == Step{Go{"blocked"}}) step = Go{"right"};
        const auto judged = walk::walkThrough(machine, "daily", now, steps);
        QVERIFY(!judged);
        QCOMPARE(judged.error().code, ErrorCode::refused);
        QCOMPARE(judged.error().where, "step " + std::to_string(steps.size()));
        steps.pop_back();
        QVERIFY(walk::walkThrough(machine, "daily", now, steps));
    }

private:
    Plan plan(const Situation& now) const {
        auto made = walk::makePlan(machine, "daily", now);
        if (!made) qFatal("%s", toText(made.error()).c_str());
        return std::move(*made);
    }
    /// Where in the plan each point is settled.
    static std::map<std::string, std::size_t> places(const Plan& plan) {
        std::map<std::string, std::size_t> at;
        for (std::size_t i = 0; i < plan.steps.size(); ++i)
            if (const auto* settle = std::get_if<Settle>(&plan.steps[i])) at[settle->point] = i;
        return at;
    }

    airframe::Airframe machine;
    Situation start;
};

QTEST_APPLESS_MAIN(TestWalk)
#include "tst_walk.moc"
