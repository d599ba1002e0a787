// The fold: what events do to the state, and what is left of the plan.
#include "rounds.hpp"

#include <QTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using namespace ambit::round;
using test::finding;
using test::notInspected;
using test::Round;
using test::sound;

class TestState : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { machine = test::machine(); }

    void foldIsReplayAtEveryPrefix() {
        Round round(machine);
        std::vector<std::string> states{test::described(round.state)};
        const auto act = [&](What what) {
            QVERIFY(round.act(std::move(what)));
            states.push_back(test::described(round.state));
        };
        for (int i = 0; round.step(); ++i) {
            states.push_back(test::described(round.state));
            if (i == 5) {
                act(Paused{});
                act(Note{"Visitor."});
                act(Resumed{});
            }
        }
        act(StandBlocked{"right", "A trolley."});
        act(test::area(1, 3, 0, 5, 2));
        act(Light{true});
        act(test::area(2, 6, 0, 7, 2));
        act(StandFree{"right"});
        act(AreaCleared{1});
        act(Light{false});
        act(Reopened{"oil", "Disturbed."});
        act(Planned{"Oil again.", {walk::Go{"left"}, walk::Settle{"oil"}}});
        act(notInspected("oil"));
        act(OpeningMade{"cowl-left"});
        act(OpeningClosed{"cowl-left"});
        act(Concluded{false, "Oil."});
        act(Withdrawn{"Once more."});
        act(Concluded{false, "Oil."});
        act(Signed{std::string(64, '1'), std::string(64, '2'), "Robin Example"});
        for (std::size_t count = 1; count <= round.events.size(); ++count) {
            // As read back from a log.
            std::vector<Event> events;
            for (std::size_t i = 0; i < count; ++i)
                events.push_back(
                    eventFrom(parseJson(canonicalJson(toJson(round.events[i]))).value()).value());
            const auto folded = fold(machine, events);
            QVERIFY(folded);
            QCOMPARE(test::described(*folded), states[count - 1]);
        }
    }

    void aBrokenLogIsRefusedAtItsEvent() {
        Round round(machine);
        round.toTheEnd();
        QVERIFY(!fold(machine, {}));
        std::vector<Event> gap = round.events;
        gap.erase(gap.begin() + 4);
        QVERIFY(!fold(machine, gap));
        std::vector<Event> twice = round.events;
        twice[9] = twice[8];
        QVERIFY(!fold(machine, twice));
    }

    void settlingsAreNeverErased() {
        Round round(machine);
        QVERIFY(round.act(StandReached{"front"}));
        QVERIFY(round.act(finding("arc-clear", Severity::assess)));
        QVERIFY(round.act(Reopened{"arc-clear", "Looked again."}));
        const PointState& point = round.state.points.at("arc-clear");
        QVERIFY(!point.outcome());
        QCOMPARE(point.reopenedWhy, std::string("Looked again."));
        QVERIFY(round.act(sound("arc-clear")));
        QCOMPARE(point.settlings.size(), 2U);
        QVERIFY(point.outcome() == Outcome::sound);
        QCOMPARE(point.last()->stand, std::string("front"));
        QCOMPARE(point.last()->settings.at("rotor"), std::string("a-aft"));
        QCOMPARE(round.state.settledCount(), 1);
        QCOMPARE(round.state.findingCount(), 0);
    }

    void openingsAreOwedUntilPutRight() {
        Round round(machine);
        QVERIFY((round.state.owed() == std::vector<std::string>{"tie-down"}));
        QVERIFY(round.act(StandReached{"left"}));
        QVERIFY(round.act(finding("cowl-open.left"))); // looked at: it was opened
        QVERIFY(round.state.openings.at("cowl-left").owed);
        QVERIFY(round.state.openings.at("cowl-left").since);
        QVERIFY(round.act(sound("oil")));
        QVERIFY(round.act(sound("engine.left")));
        QVERIFY(round.act(finding("cowl-close.left")));
        QVERIFY(round.state.openings.at("cowl-left").owed);
        QVERIFY(round.act(Reopened{"cowl-close.left", "Latch mended."}));
        QVERIFY(round.act(sound("cowl-close.left")));
        QVERIFY(!round.state.openings.at("cowl-left").owed);
        QVERIFY(round.state.openings.at("cowl-left").ever);
        QVERIFY(round.state.openings.at("cowl-left").closedAt);
    }

    void whatWasNotInspectedWasNotOpened() {
        Round round(machine);
        QVERIFY(round.act(notInspected("cowl-open.left")));
        QVERIFY(!round.state.openings.at("cowl-left").ever);
    }

    void metOpeningsOfAnotherWalkAreNotOwed() {
        Round round(machine, "short");
        QVERIFY(round.state.owed().empty());
        QVERIFY(!round.state.openings.at("tie-down").ever);
    }

    void pausesAreCounted() {
        Round round(machine);
        QVERIFY(apply(round.state, machine, {2, {1000}, Paused{}}));
        QVERIFY(apply(round.state, machine, {3, {61000}, Resumed{}}));
        QCOMPARE(round.state.pausedMs, 60000);
        QVERIFY(apply(round.state, machine, {4, {70000}, Paused{}}));
        QVERIFY(apply(round.state, machine, {5, {69000}, Resumed{}})); // the clock was set back
        QCOMPARE(round.state.pausedMs, 60000);
    }

    // --- where reality differs

    void whatDiffersIsInTheSituation() {
        Round round(machine);
        QVERIFY(round.act(StandBlocked{"left", "Ice."}));
        QVERIFY(round.act(test::area(1, 3, 0, 5, 2)));
        QVERIFY(round.act(Light{true}));
        walk::Situation now = situation(round.state, machine);
        QVERIFY((now.blocked == std::set<std::string>{"left"}));
        QVERIFY((now.marked == std::vector<airframe::Outline>{{{3, 0}, {5, 0}, {5, 2}, {3, 2}}}));
        QVERIFY(now.lightGoes);
        QVERIFY(round.act(StandFree{"left"}));
        QVERIFY(round.act(AreaCleared{1}));
        QVERIFY(round.act(Light{false}));
        now = situation(round.state, machine);
        QVERIFY(now.blocked.empty() && now.marked.empty() && !now.lightGoes);
    }

    // --- what is left of the plan

    void whatIsLeftIsLegalAfterEveryStep() {
        for (const char* walkId : {"daily", "short"}) {
            Round round(machine, walkId);
            std::size_t before = remaining(round.state, machine).size();
            do {
                const auto left = remaining(round.state, machine);
                const auto cost = walk::walkThrough(machine, walkId, situation(round.state, machine), left);
                QVERIFY2(cost, cost ? "" : toText(cost.error()).c_str());
                QVERIFY(left.size() <= before);
                before = left.size();
                QVERIFY(left.empty() ? !nextStep(round.state, machine)
                                     : *nextStep(round.state, machine) == left.front());
            } while (round.step());
            QCOMPARE(static_cast<std::size_t>(round.state.settledCount()), round.state.points.size());
        }
    }

    void goesThatLeadToNothingAreSkipped() {
        Round round(machine);
        for (const auto& point : machine.points)
            if (point.stands.front() == "right") QVERIFY(round.act(notInspected(point.id)));
        for (const walk::Step& step : remaining(round.state, machine))
            QVERIFY((step != walk::Step{walk::Go{"right"}}));
    }

    void aChangeThatIsMadeIsNotAskedForAgain() {
        Round round(machine);
        round.until("blade.b");
        for (const walk::Step& step : remaining(round.state, machine))
            QVERIFY(!std::holds_alternative<walk::Set>(step));
    }

    // --- ordered anew

    void anOrderThatFitsStays() {
        Round round(machine);
        do {
            const auto anew = reordered(round.state, machine, "why");
            QVERIFY(anew);
            QVERIFY(!*anew);
        } while (round.step());
    }

    void aReopenedPointIsOrderedIn() {
        Round round(machine);
        round.until("blade.b");
        QVERIFY(round.act(Reopened{"blade.a", "Disturbed."})); // the rotor has been turned since
        const auto anew = reordered(round.state, machine, "Re-opened.");
        QVERIFY(anew && *anew);
        QVERIFY(round.act(**anew));
        round.toTheEnd();
        QVERIFY(round.act(Concluded{true, ""}));
    }

    void aBlockedStandIsOrderedOut() {
        Round round(machine);
        QVERIFY(holdsStill(round.state, machine));
        const What blocked = StandBlocked{"right", "A trolley."};
        const std::string cause = causeOf(round.state, machine, blocked, false);
        QCOMPARE(cause, std::string("“Right side” can't be used"));
        QVERIFY(round.act(blocked));
        QVERIFY(!holdsStill(round.state, machine));
        const auto anew = reordered(round.state, machine, cause);
        QVERIFY(anew && *anew);
        for (const walk::Step& step : (*anew)->plan)
            QVERIFY((step != walk::Step{walk::Go{"right"}}));
        QVERIFY2((*anew)->why.starts_with("“Right side” can't be used: “Cowl open, right”, “Engine, right” "
                                          "and 1 more can't be settled now"),
                 (*anew)->why.c_str());
        QVERIFY(round.act(**anew));
        const auto cost = walk::walkThrough(machine, "daily", situation(round.state, machine),
                                            remaining(round.state, machine));
        QVERIFY2(cost, cost ? "" : toText(cost.error()).c_str());
        // And back again.
        const What usable = StandFree{"right"};
        const std::string again = causeOf(round.state, machine, usable, false);
        QVERIFY(round.act(usable));
        const auto back = reordered(round.state, machine, again);
        QVERIFY(back && *back);
        QVERIFY2((*back)->why.starts_with("“Right side” can be used again: “Cowl open, right”, “Engine, "
                                          "right” and 1 more can be settled again"),
                 (*back)->why.c_str());
        QVERIFY(round.act(**back));
        QVERIFY(holdsStill(round.state, machine));
        round.toTheEnd();
        QVERIFY(round.act(Concluded{true, ""}));
    }

    // What comes after a point that can't be reached can be settled once that is said.
    void whatWaitedGoesOnWhenItIsSaid() {
        Round round(machine);
        QVERIFY(round.act(StandBlocked{"tread", "Ice."}));
        QVERIFY(round.act(**reordered(round.state, machine, "“Left tread” can't be used")));
        round.toTheEnd();
        const auto left = [&] { return round.state.points.size() - std::size_t(round.state.settledCount()); };
        const std::size_t before = left();
        QVERIFY(before > 2);
        for (const char* point : {"pitch-link.a", "pitch-link.b"}) {
            const What said = notInspected(point);
            const std::string cause = causeOf(round.state, machine, said, false);
            QVERIFY2(cause.ends_with("is not inspected"), cause.c_str());
            QVERIFY(round.act(said));
            const auto anew = reordered(round.state, machine, cause);
            QVERIFY(anew);
            if (*anew) QVERIFY(round.act(**anew));
        }
        QVERIFY(nextStep(round.state, machine));
        round.toTheEnd();
        QCOMPARE(left(), std::size_t{0});
        QVERIFY(round.act(Concluded{false, "Ice on the tread."}));
    }

    void somethingFarFromTheWayChangesNothing() {
        Round round(machine);
        QVERIFY(round.act(test::area(1, 30, 0, 31, 1)));
        const auto anew = reordered(round.state, machine, "“Wall” is in the way");
        QVERIFY(anew && !*anew);
    }

    void whatIsWalledInIsOrderedOut() {
        Round round(machine);
        QVERIFY(round.act(StandReached{"front"}));
        const std::string cause = causeOf(round.state, machine, test::area(1, 1.2, 0.5, 2.5, 1.5), false);
        QCOMPARE(cause, std::string("“Wall” is in the way"));
        QVERIFY(round.act(test::area(1, 1.2, 0.5, 2.5, 1.5)));
        const auto anew = reordered(round.state, machine, cause);
        QVERIFY(anew && *anew);
        for (const walk::Step& step : (*anew)->plan)
            QVERIFY((step != walk::Step{walk::Go{"right"}}));
        QCOMPARE(causeOf(round.state, machine, AreaCleared{1}, false),
                 std::string("“Wall” isn't in the way any more"));
    }

    void whatIsInTurnIsNoCause() {
        Round round(machine);
        const auto next = std::get<walk::Go>(*nextStep(round.state, machine)).stand;
        QCOMPARE(causeOf(round.state, machine, StandReached{next}, false), std::string());
        const std::string other = next == "right" ? "left" : "right";
        const std::string name = machine.stand(other)->name;
        QCOMPARE(causeOf(round.state, machine, StandReached{other}, false),
                 "“" + name + "” was reached out of turn");
        QCOMPARE(causeOf(round.state, machine, StandReached{other}, true),
                 "The round goes on at “" + name + "”");
        QCOMPARE(causeOf(round.state, machine, Note{"words"}, false), std::string());
        QCOMPARE(causeOf(round.state, machine, test::sound("oil"), false), std::string());
        QCOMPARE(causeOf(round.state, machine, Light{true}, false), std::string("The light is low"));
    }

    void towardsAZone() {
        Round round(machine);
        QCOMPARE(towardsZone(round.state, machine, "roof").error().code, ErrorCode::notFound);
        const auto planned = towardsZone(round.state, machine, "side-right");
        QVERIFY(planned);
        QVERIFY((planned->plan.front() == walk::Step{walk::Go{"right"}}));
        QVERIFY(round.act(*planned));
        for (const char* point : {"cowl-open.right", "engine.right", "cowl-close.right"}) {
            QVERIFY(round.state.points.contains(point));
            round.until(point);
            round.step();
        }
        QCOMPARE(towardsZone(round.state, machine, "side-right").error().code, ErrorCode::refused);
    }

private:
    airframe::Airframe machine;
};

QTEST_APPLESS_MAIN(TestState)
#include "tst_state.moc"
