// No free hand, interrupted, in the dark, and the last look: rules, state, order.
// "From the beginning" after an interruption is a US helicopter safety team's advice (December 2019), "the
// interrupted section again" a trade article's, backing up some items common practice, no source. What is
// counted here was worked out by hand.
#include "rounds.hpp"

#include "base/files.hpp"
#include "round/back.hpp"
#include "round/pace.hpp"
#include "round/portion.hpp"

#include <QTest>
#include <algorithm>
#include <random>

using namespace ambit;
using namespace ambit::round;
using test::finding;
using test::notInspected;
using test::Round;
using test::sound;

using Ids = std::vector<std::string>;
using From = BackRule::From;
using Cause = Interrupted::Cause;

namespace {

/// The test machine with something changed in it.
airframe::Airframe machineWith(const std::function<void(Json&)>& change) {
    Json json = Json::parse(*readFile(AMBIT_ROOT "/tests/airframe/good.json"));
    change(json);
    auto read = airframe::read(json.dump());
    if (!read) qFatal("%s", toText(read.error().front()).c_str());
    return std::move(*read);
}

Json& point(Json& json, const std::string& id) {
    for (Json& one : json["points"])
        if (one["id"] == id) return one;
    qFatal("no point %s", id.c_str());
}

/// Two points more that are settled up there.
airframe::Airframe mastMachine() {
    return machineWith([](Json& json) {
        for (const char* id : {"mast-cap", "mast-nut"}) {
            Json one = point(json, "pitch-link");
            one.erase("repeat");
            one["id"] = id;
            one["name"] = id;
            for (const char* text : {"sound", "unsound", "why"})
                one[text] = "Invented.";
            json["points"].push_back(std::move(one));
        }
    });
}

/// A torch to be looked at and its lamp, for the night; the last look is one.
airframe::Airframe nightMachine() {
    return machineWith([](Json& json) {
        Json torch = point(json, "arc-clear");
        torch["id"] = "torch";
        torch["name"] = "Torch";
        torch["night"] = true;
        json["points"].push_back(std::move(torch));
        Json& last = point(json, "last-look");
        last.erase("after");
        last["lastLook"] = true;
    });
}

Interrupted interruption(const Round& round, const BackRule& rule, Cause cause = Cause::call) {
    return {cause, 300, rule, askedBack(round.state, *round.airframe, rule)};
}

Ids settledIn(const Round& round) {
    Ids ids;
    for (const Event& event : round.events)
        if (const auto* settled = std::get_if<Settled>(&event.what)) ids.push_back(settled->point);
    return ids;
}

Ids last(Ids ids, std::size_t count) {
    return {ids.end() - static_cast<std::ptrdiff_t>(count), ids.end()};
}

} // namespace

class TestConditions : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { machine = mastMachine(); }

    // --- portions

    void aPortionIsWhatThePlanHasHere() {
        Round round(machine);
        round.until("pitch-link.a");
        // The other blade's would want the rotor turned.
        QCOMPARE(nextPortion(round.state, machine, 5), (Ids{"pitch-link.a", "mast-cap", "mast-nut"}));
        QCOMPARE(nextPortion(round.state, machine, 2), (Ids{"pitch-link.a", "mast-cap"}));
        QCOMPARE(nextPortion(round.state, machine, 0), Ids{"pitch-link.a"}); // one at least
    }

    void whatIsMeasuredComesAlone() {
        Round round(machine);
        round.until("oil");
        QCOMPARE(nextPortion(round.state, machine, 5), Ids{"oil"});
        QVERIFY(round.act(Paused{}));
        QVERIFY(nextPortion(round.state, machine, 5).empty());
    }

    void nothingIsSettledWhileItRuns() {
        Round round = upThere();
        const std::string before = test::described(round.state);
        for (const What& what :
             {What(sound("pitch-link.a")), What(finding("pitch-link.a")), What(notInspected("pitch-link.a")),
              What(notInspected("engine.left")), What(StandReached{"left"}),
              What(SettingChanged{"rotor", "b-aft"}), What(OpeningMade{"cowl-right"}),
              What(OpeningClosed{"tie-down"}), What(PortionBegun{{"mast-cap"}}),
              What(interruption(round, {})), What(Concluded{false, "No."}), What(Night{}),
              What(Reopened{"arc-clear", "Again."})}) {
            const auto done = round.act(what);
            QVERIFY2(!done && done.error().code == ErrorCode::refused, kindOf(what));
        }
        QCOMPARE(test::described(round.state), before);
        QVERIFY(round.act(Note{"Gusty."}));
        QVERIFY(round.act(Paused{}));
        QVERIFY(round.act(Resumed{}));
        QVERIFY(round.state.portion->running);
    }

    void downAgainEachIsAskedFor() {
        Round round = upThere();
        QVERIFY(leftOfPortion(round.state).empty());
        QVERIFY(round.act(PortionEnded{}));
        refused(round, PortionEnded{});
        QCOMPARE(leftOfPortion(round.state), (Ids{"pitch-link.a", "mast-cap"}));
        QVERIFY(round.act(finding("pitch-link.a")));
        QCOMPARE(leftOfPortion(round.state), Ids{"mast-cap"});
        QVERIFY(round.act(notInspected("mast-cap")));
        QVERIFY(leftOfPortion(round.state).empty());
        QVERIFY(round.state.points.at("pitch-link.a").last()->fromPortion);
        QVERIFY(!round.state.points.at("mast-cap").last()->fromPortion); // nobody looked
        QVERIFY(!round.state.points.at("arc-clear").last()->fromPortion);
    }

    void whatWasKeptInMindIsGoneWhenGivenUpOrElsewhere() {
        for (const bool givenUp : {true, false}) {
            Round round = upThere();
            QVERIFY(round.act(PortionEnded{!givenUp}));
            if (!givenUp) QVERIFY(round.act(StandReached{"mast"}));
            QVERIFY(!round.state.portion);
            QVERIFY(round.act(sound("pitch-link.a"))); // looked at now
            QVERIFY(!round.state.points.at("pitch-link.a").last()->fromPortion);
        }
        Round interrupted = upThere();
        QVERIFY(interrupted.act(PortionEnded{}));
        QVERIFY(interrupted.act(interruption(interrupted, {From::points, 1})));
        QVERIFY(!interrupted.state.portion);
    }

    void aPortionHasWhatMayBeLookedAtHere() {
        Round round(machine);
        round.until("pitch-link.a");
        refused(round, PortionBegun{{}});
        refused(round, PortionBegun{{"pitch-link.a", "pitch-link.a"}});
        refused(round, PortionBegun{{"arc-clear"}}); // settled
        refused(round, PortionBegun{{"blade.a"}});   // elsewhere
        refused(round, PortionBegun{{"nothing"}});
        refused(round, PortionBegun{Ids(21, "pitch-link.a")});
        QVERIFY(round.act(PortionBegun{{"mast-cap", "pitch-link.a"}}));
        // Where one comes after another, and is seen through what the other opens, it may follow it in a
        // portion.
        Round cowls(machine);
        cowls.until("cowl-open.left");
        refused(cowls, PortionBegun{{"engine.left", "cowl-open.left"}});
        QVERIFY(cowls.act(PortionBegun{{"cowl-open.left", "engine.left"}}));
        QVERIFY(cowls.act(PortionEnded{}));
        refused(cowls, sound("engine.left")); // but is told in its turn
        QVERIFY(cowls.act(sound("cowl-open.left")));
        QVERIFY(cowls.act(sound("engine.left")));
    }

    // --- interruptions

    void someBack() {
        Round round(machine);
        round.until("pitch-link.a");
        const Ids done = settledIn(round);
        QCOMPARE(askedBack(round.state, machine, {From::points, 1}), last(done, 1));
        QCOMPARE(askedBack(round.state, machine, {From::start, 0}).size(), done.size());
        const int settled = round.state.settledCount();
        const Interrupted what = interruption(round, {From::points, 2});
        QVERIFY(what.again.size() >= 2);
        QVERIFY(round.act(what));
        QCOMPARE(round.state.settledCount(), settled - static_cast<int>(what.again.size()));
        for (const std::string& id : what.again) {
            QVERIFY(!round.state.points.at(id).outcome());
            QVERIFY(round.state.points.at(id).reopened);
            QCOMPARE(round.state.points.at(id).settlings.size(), 1U); // what was said stays
        }
        QCOMPARE(round.state.interruptions.size(), 1U);
        refused(round, Concluded{false, "No."});
        round.toTheEnd();
        QVERIFY(round.act(Concluded{true, ""}));
    }

    void theStandAgain() {
        Round round(machine);
        round.until("cowl-close.left");
        std::size_t here = 0;
        for (auto event = round.events.rbegin(); !std::holds_alternative<StandReached>(event->what); ++event)
            if (std::holds_alternative<Settled>(event->what)) ++here;
        QVERIFY(here > 0);
        QCOMPARE(askedBack(round.state, machine, {From::stand, 0}), last(settledIn(round), here));
    }

    void whatWasSeenThroughIsOpenedAgainAndClosed() {
        Round round(machine);
        round.until("oil");
        QVERIFY(round.act(sound("oil")));
        round.until("cowl-close.left");
        QVERIFY(round.act(sound("cowl-close.left")));
        const Ids done = settledIn(round);
        QCOMPARE(done.back(), std::string("cowl-close.left"));
        // The last two are the closing and what was looked at before it, through the cowl.
        const Ids again = askedBack(round.state, machine, {From::points, 2});
        QCOMPARE(again, (Ids{"cowl-open.left", done[done.size() - 2], "cowl-close.left"}));
        QVERIFY(round.act(interruption(round, {From::points, 2})));
        round.toTheEnd();
        QVERIFY(against(round.state, machine, true).empty());
    }

    void whatWasNotInspectedNeedsNoSecondLook() {
        Round round(machine);
        round.until("pitch-link.a");
        QVERIFY(round.act(notInspected("pitch-link.a")));
        const Ids again = askedBack(round.state, machine, {From::points, 1});
        QVERIFY(std::find(again.begin(), again.end(), "pitch-link.a") == again.end());
        QCOMPARE(again.size(), 1U);
    }

    void whatCantBeSeenAnyMoreIsLeftOut() {
        const auto oneWay = machineWith([](Json& json) { json["settings"][0]["changes"].erase(1); });
        Round round(oneWay);
        while (round.state.settings.at("rotor") == "a-aft")
            QVERIFY(round.step());
        const Ids again = askedBack(round.state, oneWay, {From::start, 0});
        QVERIFY(round.state.points.at("blade.a").settled);
        QVERIFY(std::find(again.begin(), again.end(), "blade.a") == again.end());
        QVERIFY(again.size() > 3);
    }

    void onlyWhatTheRuleWants() {
        Round round(machine);
        round.until("pitch-link.a");
        Interrupted what = interruption(round, {From::points, 2});
        what.again.pop_back();
        refused(round, what);
        what = interruption(round, {From::points, 2});
        what.rule.points = 1;
        refused(round, what);
        refused(round, interruption(round, {From::points, 0}));
        refused(round, interruption(round, {From::points, mostBack + 1}));
        Round fresh(machine);
        QVERIFY(fresh.act(interruption(fresh, {}))); // nothing to settle again: told all the same
        QVERIFY(fresh.act(Paused{}));
        refused(fresh, interruption(fresh, {}));
    }

    void theRestIsOrderedForIt() {
        Round round(machine);
        round.until("pitch-link.a");
        const Interrupted what = interruption(round, {From::points, 3});
        QCOMPARE(causeOf(round.state, machine, what, false), std::string("After an interruption"));
        QVERIFY(round.act(what));
        const auto planned = reordered(round.state, machine, "After an interruption");
        QVERIFY(planned);
        if (*planned) QVERIFY(round.act(**planned));
        round.toTheEnd();
        QVERIFY(round.act(Concluded{true, ""}));
    }

    // --- a quick run

    void aQuickRunIsAskedAboutOnce() {
        Round round(machine);
        round.until("pitch-link.a"); // a second each, where ten are expected
        const auto pace = paceOf(machine, round.events);
        QVERIFY(!pace.quick.empty());
        const QuickRun meant = asking(round.state, pace.quick.front(), false);
        QVERIFY(meant.again.empty());
        QuickRun wrong = meant;
        ++wrong.points;
        refused(round, wrong);
        wrong = meant;
        wrong.last = round.state.lastSeq + 1;
        refused(round, wrong);
        const QuickRun again = asking(round.state, pace.quick.front(), true);
        QCOMPARE(static_cast<std::int64_t>(again.again.size()), again.points);
        Round other = round;
        QVERIFY(round.act(meant));
        QVERIFY(round.state.points.at(again.again.front()).settled);
        refused(round, again); // once
        QVERIFY(other.act(again));
        for (const std::string& id : again.again)
            QVERIFY(!other.state.points.at(id).settled);
        wrong = again;
        wrong.again.push_back(again.again.front());
        Round third(machine);
        third.until("pitch-link.a");
        refused(third, wrong);
    }

    // --- the night, and the clock

    void theNightBringsItsPoints() {
        const auto dark = nightMachine();
        QVERIFY(!dark.walk("daily")->has("torch", false));
        QVERIFY(dark.walk("daily")->has("torch", true));
        Round round(dark);
        const std::size_t byDay = round.state.points.size();
        QVERIFY(!round.state.points.contains("torch"));
        refused(round, Night{false, false});
        QVERIFY(round.act(Night{true, true}));
        refused(round, Night{true, false});
        QCOMPARE(round.state.points.size(), byDay + 1);
        const auto planned = reordered(round.state, dark, "The flight goes into the dark");
        QVERIFY(planned && *planned);
        QVERIFY2((**planned).why.find("“Torch” is added") != std::string::npos, (**planned).why.c_str());
        QVERIFY(round.act(**planned));
        Round other = round;
        round.toTheEnd();
        QVERIFY(round.state.points.at("torch").settled);
        QVERIFY(round.act(Concluded{true, ""}));
        // It doesn't go into the dark after all.
        QVERIFY(other.act(Night{false, false}));
        QCOMPARE(other.state.points.size(), byDay);
        other.toTheEnd();
        QVERIFY(other.act(Concluded{true, ""}));
    }

    void whatWasSettledForTheNightStays() {
        const auto dark = nightMachine();
        Round round(dark);
        QVERIFY(round.act(Night{true, false}));
        QVERIFY(round.act(notInspected("torch", "No night flight.")));
        QVERIFY(round.act(Night{false, false}));
        QVERIFY(round.state.points.contains("torch"));
    }

    /// Told for a portion, and not of the walk any more when one is down again.
    void whatThePortionHadForTheNightIsNotAskedFor() {
        const auto dark = nightMachine();
        Round round(dark);
        QVERIFY(round.act(Night{true, true}));
        QVERIFY(round.act(**reordered(round.state, dark, "The flight goes into the dark")));
        round.until("torch");
        QVERIFY(round.act(PortionBegun{{"torch"}}));
        QVERIFY(round.act(PortionEnded{true}));
        QCOMPARE(leftOfPortion(round.state), Ids{"torch"});
        QVERIFY(round.act(Night{false, false}));
        QVERIFY(leftOfPortion(round.state).empty());
    }

    void theClockIsHeldAgainstSatellites() {
        Round round(machine);
        QVERIFY(!round.state.clockAheadMs);
        QVERIFY(round.act(Clock{{round.state.lastAt.ms + 1000 - 90'000}}));
        QCOMPARE(*round.state.clockAheadMs, 90'000);
    }

    // --- the last look

    void theLastLookComesLast() {
        const auto round = nightMachine();
        Round walked(round);
        walked.until("last-look");
        QCOMPARE(walked.state.settledCount(), static_cast<int>(walked.state.points.size()) - 1);
        Round early(round);
        while (early.state.stand != "front")
            early.step();
        const auto refusal = early.act(sound("last-look"));
        QVERIFY(!refusal && refusal.error().code == ErrorCode::refused);
        QVERIFY(early.act(notInspected("last-look"))); // but may be said anywhere, and stands against fit
    }

    void whatIsDoneAfterItAsksForItAgain() {
        const auto last = nightMachine();
        Round round(last);
        round.toTheEnd();
        QVERIFY(lookedTooEarly(round.state, last).empty());
        for (const What& what : {What(OpeningMade{"cowl-right"}), What(OpeningClosed{"cowl-right"})})
            QVERIFY(round.act(what));
        QCOMPARE(lookedTooEarly(round.state, last), Ids{"last-look"});
        QVERIFY(against(round.state, last, false).back().kind == Obstacle::Kind::lastLook);
        refused(round, Concluded{true, ""});
        QVERIFY(round.act(Reopened{"last-look", "Something was done after it."}));
        round.toTheEnd();
        QVERIFY(round.act(Concluded{true, ""}));
    }

    // --- whatever happens, in whatever order

    void nothingIsSettledThatNobodySettled() {
        const auto dark = nightMachine();
        std::size_t portions = 0, cuts = 0, back = 0;
        for (unsigned seed = 1; seed <= 300; ++seed) {
            std::mt19937 chance(seed);
            const auto upTo = [&](std::size_t most) { return static_cast<int>(chance() % most); };
            Round round(dark);
            std::map<std::string, std::size_t> told; // point -> settled events
            std::int64_t at = round.state.lastAt.ms;
            const auto act = [&](What what) {
                // The clock goes on, is set back an hour or forward a day.
                const int jump = upTo(40);
                at += jump == 0 ? -3'600'000 : jump == 1 ? 86'400'000 : 1000 * upTo(20);
                Event event{round.state.lastSeq + 1, {at}, std::move(what)};
                const State before = round.state;
                const bool settles = std::holds_alternative<Settled>(event.what);
                const auto done = apply(round.state, dark, event);
                if (!done) {
                    QCOMPARE(test::described(round.state), test::described(before));
                    return;
                }
                if (settles) {
                    QVERIFY(!before.portion || !before.portion->running);
                    ++told[std::get<Settled>(event.what).point];
                }
                round.events.push_back(std::move(event));
                // Settled is only what was told, and nobody but a Settled event tells.
                for (const auto& [id, its] : round.state.points) {
                    QCOMPARE(its.settlings.size(), told[id]);
                    const auto was = before.points.find(id);
                    if (its.settled && (was == before.points.end() || !was->second.settled)) QVERIFY(settles);
                }
                QVERIFY(round.state.pausedMs >= 0);
                for (const std::string& id : leftOfPortion(round.state))
                    QVERIFY(!round.state.points.at(id).settled);
            };
            for (int i = 0; i < 150 && round.state.phase != Phase::sealed; ++i) {
                const auto next = nextStep(round.state, dark);
                switch (upTo(12)) {
                case 0:
                    act(Paused{});
                    break;
                case 1:
                    act(Resumed{});
                    break;
                case 2: {
                    const BackRule rule{static_cast<From>(upTo(3)), 1 + upTo(5)};
                    const Interrupted what{static_cast<Cause>(upTo(6)), upTo(1000), rule,
                                           askedBack(round.state, dark, rule)};
                    cuts += round.state.interruptions.size();
                    back += what.again.size();
                    act(what);
                    break;
                }
                case 3:
                    if (auto points = nextPortion(round.state, dark, 1 + upTo(5)); !points.empty()) {
                        act(PortionBegun{std::move(points)});
                        ++portions;
                    }
                    break;
                case 4:
                    act(PortionEnded{upTo(4) != 0});
                    break;
                case 5:
                    act(Night{upTo(2) == 0, true});
                    break;
                case 6:
                    act(Clock{{at + upTo(100'000)}});
                    break;
                case 7: { // a kill: what is on disk is all there is
                    auto again = fold(dark, round.events);
                    QVERIFY(again);
                    QCOMPARE(test::described(*again), test::described(round.state));
                    round.state = std::move(*again);
                    break;
                }
                case 8:
                    if (auto planned = reordered(round.state, dark, "So"); planned && *planned)
                        act(**planned);
                    break;
                default:
                    if (!next) break;
                    if (const auto* go = std::get_if<walk::Go>(&*next)) act(StandReached{go->stand});
                    if (const auto* set = std::get_if<walk::Set>(&*next))
                        act(SettingChanged{set->setting, set->to});
                    if (const auto* settle = std::get_if<walk::Settle>(&*next))
                        act(upTo(8) == 0 ? notInspected(settle->point) : sound(settle->point));
                }
                if (QTest::currentTestFailed()) return;
            }
            // And it can always be brought to its end.
            if (round.state.phase == Phase::paused) act(Resumed{});
            if (round.state.portion && round.state.portion->running) act(PortionEnded{true});
            for (int i = 0;
                 i < 200 && round.state.settledCount() < static_cast<int>(round.state.points.size()); ++i) {
                if (auto planned = reordered(round.state, dark, "So"); planned && *planned) act(**planned);
                const auto next = nextStep(round.state, dark);
                if (!next) { // can't be reached any more: a change needs what was not inspected
                    for (const auto& [id, its] : round.state.points)
                        if (!its.settled) {
                            act(notInspected(id));
                            break;
                        }
                    continue;
                }
                if (const auto* go = std::get_if<walk::Go>(&*next)) act(StandReached{go->stand});
                if (const auto* set = std::get_if<walk::Set>(&*next))
                    act(SettingChanged{set->setting, set->to});
                if (const auto* settle = std::get_if<walk::Settle>(&*next)) {
                    act(sound(settle->point));
                    // Said as not inspected where it should have been opened again: then so is what is behind
                    // it.
                    if (!round.state.points.at(settle->point).settled) act(notInspected(settle->point));
                }
                for (const std::string& id : lookedTooEarly(round.state, dark))
                    act(Reopened{id, "Something was done after it."});
            }
            for (const std::string& id : round.state.owed())
                act(OpeningClosed{id});
            for (const std::string& id : lookedTooEarly(round.state, dark)) {
                act(Reopened{id, "Something was done after it."});
                act(notInspected(id));
            }
            act(Concluded{false, "It is a test."});
            QVERIFY2(round.state.phase == Phase::concluded, std::to_string(seed).c_str());
        }
        QVERIFY(portions > 300 && cuts > 300 && back > 300); // it all did happen
    }

private:
    [[nodiscard]] Round upThere() const {
        Round round(machine);
        round.until("pitch-link.a");
        if (!round.act(PortionBegun{{"pitch-link.a", "mast-cap"}})) qFatal("no portion");
        return round;
    }
    static void refused(Round& round, What what) {
        const std::string before = test::described(round.state);
        const auto done = round.act(std::move(what));
        QVERIFY(!done);
        QVERIFY2(done.error().code == ErrorCode::refused, toText(done.error()).c_str());
        QCOMPARE(test::described(round.state), before);
    }

    airframe::Airframe machine;
};

QTEST_APPLESS_MAIN(TestConditions)
#include "tst_conditions.moc"
