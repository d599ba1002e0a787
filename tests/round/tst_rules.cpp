// Each rule of a round, with what breaks it.
#include "rounds.hpp"

#include <QTest>

using namespace ambit;
using namespace ambit::round;
using test::finding;
using test::notInspected;
using test::Round;
using test::sound;

class TestRules : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { machine = test::machine(); }

    void aWholeRoundIsAllowed() {
        Round round(machine);
        round.toTheEnd();
        QVERIFY(against(round.state, machine, true).empty());
        QVERIFY(round.act(Concluded{true, ""}));
        QVERIFY(round.act(signature("Robin Example")));
        QCOMPARE(round.state.phase, Phase::sealed);
    }

    // --- beginning

    void beginsWithItsOwnAirframeAndWalk() {
        Opened opened = test::opening(machine);
        QVERIFY(begin(machine, {1, {}, opened}));
        QVERIFY(!begin(machine, {2, {}, opened}));
        QVERIFY(!begin(machine, {1, {}, Paused{}}));
        opened.airframeSha256 = std::string(64, '0');
        QCOMPARE(begin(machine, {1, {}, opened}).error().code, ErrorCode::conflict);
        opened = test::opening(machine);
        opened.walk = "weekly";
        QVERIFY(!begin(machine, {1, {}, opened}));
        opened = test::opening(machine);
        opened.plan.push_back(walk::Settle{"propeller"});
        QVERIFY(!begin(machine, {1, {}, opened}));
    }

    void countersAreTheAirframesAndRight() {
        for (const CounterReading& wrong : {CounterReading{"cycles", "1"}, CounterReading{"hours", "1"},
                                            CounterReading{"landings", "-1"}}) {
            Opened opened = test::opening(machine);
            opened.counters = {{"hours", "1234.5"}, wrong};
            QVERIFY(!begin(machine, {1, {}, opened}));
        }
    }

    // --- phases

    void opensOnce() { refused(Round(machine), test::opening(machine)); }

    void numbersFollow() {
        Round round(machine);
        for (const std::int64_t seq : {0, 1, 3}) {
            const auto done = apply(round.state, machine, {seq, {}, Paused{}});
            QVERIFY(!done);
            QCOMPARE(done.error().code, ErrorCode::conflict);
        }
    }

    void timeMayRunBackwards() {
        Round round(machine);
        QVERIFY(apply(round.state, machine, {2, {5}, Paused{}}));
        QCOMPARE(round.state.lastAt.ms, 5);
    }

    void aPausedRoundTakesOnlyResumedAndNotes() {
        Round round(machine);
        refused(round, Resumed{});
        QVERIFY(round.act(Paused{}));
        for (const What& what : anything())
            refused(round, what);
        refused(round, Paused{});
        QVERIFY(round.act(Note{"A visitor."}));
        QVERIFY(round.act(Resumed{}));
        QVERIFY(round.act(StandReached{"left"}));
    }

    void aConcludedRoundTakesOnlyWithdrawnAndSigned() {
        Round round = finished();
        refused(round, Withdrawn{"Not yet."});
        refused(round, signature("Robin Example"));
        QVERIFY(round.act(Concluded{true, ""}));
        for (const What& what : anything())
            refused(round, what);
        refused(round, Concluded{true, ""});
        refused(round, Withdrawn{""});
        QVERIFY(round.act(Withdrawn{"Forgot something."}));
        QVERIFY(!round.state.conclusion);
        QVERIFY(round.act(StandReached{"left"}));
    }

    void aSealedRoundTakesNothing() {
        Round round = finished();
        QVERIFY(round.act(Concluded{true, ""}));
        QVERIFY(round.act(signature("Robin Example")));
        for (const What& what : anything())
            refused(round, what);
        refused(round, Withdrawn{"Too late."});
        refused(round, signature("Robin Example"));
    }

    void theSignatureNamesWhoWalked() {
        Round round = finished();
        QVERIFY(round.act(Concluded{true, ""}));
        refused(round, signature("Somebody Else"));
        QVERIFY(round.act(signature("Robin Example")));
    }

    // --- stands and settings

    void standsExistAndAreReachedInOrder() {
        Round round(machine);
        refused(round, StandReached{"roof"});
        refused(round, StandReached{"mast"});
        QVERIFY(round.act(StandReached{"left"}));
        refused(round, StandReached{"mast"});
        QVERIFY(round.act(StandReached{"tread"}));
        QVERIFY(round.act(StandReached{"mast"}));
        QVERIFY(round.act(StandReached{"mast"}));
    }

    void aSettingIsChangedWhereAndWhenItMay() {
        Round round(machine);
        const SettingChanged turn{"rotor", "b-aft"};
        QVERIFY(round.act(StandReached{"front"}));
        QVERIFY(round.act(sound("arc-clear")));
        refused(round, turn); // not from here
        QVERIFY(round.act(StandReached{"left"}));
        refused(round, SettingChanged{"flaps", "up"});
        refused(round, SettingChanged{"rotor", "c-aft"});
        refused(round, SettingChanged{"rotor", "a-aft"}); // it is
        QVERIFY(round.act(turn));
    }

    void whatASettingNeedsIsSettledSound() {
        const SettingChanged turn{"rotor", "b-aft"};
        for (const What& seen : {What(finding("arc-clear")), What(notInspected("arc-clear"))}) {
            Round round(machine);
            QVERIFY(round.act(StandReached{"left"}));
            refused(round, turn);
            QVERIFY(round.act(seen));
            refused(round, turn);
            QVERIFY(round.act(Reopened{"arc-clear", "Looked again."}));
            refused(round, turn);
            QVERIFY(round.act(sound("arc-clear")));
            QVERIFY(round.act(turn));
        }
    }

    // A point that isn't of this walk doesn't bind.
    void needsOfAnotherWalkDoNotBind() {
        Round round(machine, "short");
        QVERIFY(round.act(StandReached{"left"}));
        QVERIFY(round.act(SettingChanged{"rotor", "b-aft"}));
    }

    // --- settling

    void aPointIsOfThisWalk() {
        refused(Round(machine), notInspected("propeller"));
        refused(Round(machine, "short"), notInspected("last-look"));
        refused(Round(machine, "short"), Reopened{"last-look", "why"});
    }

    void aPointIsSettledFromItsStands() {
        for (const auto& settled : {sound("tie-down-off"), finding("tie-down-off")}) {
            Round round(machine);
            refused(round, settled);
            QVERIFY(round.act(StandReached{"left"}));
            refused(round, settled);
            QVERIFY(round.act(StandReached{"front"}));
            QVERIFY(round.act(settled));
        }
    }

    void aPointIsSettledInItsSettings() {
        for (const bool isSound : {true, false}) {
            Round round(machine, "short");
            const Settled settled = isSound ? sound("blade.a") : finding("blade.a");
            QVERIFY(round.act(StandReached{"left"}));
            QVERIFY(round.act(SettingChanged{"rotor", "b-aft"}));
            refused(round, settled);
            QVERIFY(round.act(SettingChanged{"rotor", "a-aft"}));
            QVERIFY(round.act(settled));
        }
    }

    void whatComesBeforeIsSettled() {
        Round round(machine);
        QVERIFY(round.act(StandReached{"tread"}));
        QVERIFY(round.act(StandReached{"mast"}));
        refused(round, sound("pitch-link.a"));
        refused(round, finding("pitch-link.a"));
        QVERIFY(round.act(notInspected("arc-clear"))); // any outcome will do
        QVERIFY(round.act(sound("pitch-link.a")));
    }

    void whatIsLookedThroughIsOpen() {
        Round round(machine);
        QVERIFY(round.act(StandReached{"left"}));
        QVERIFY(round.act(notInspected("cowl-open.left")));
        refused(round, sound("oil"));
        refused(round, finding("oil"));
        QVERIFY(round.act(OpeningMade{"cowl-left"}));
        QVERIFY(round.act(sound("oil")));
        QVERIFY(round.act(OpeningClosed{"cowl-left"}));
        refused(round, sound("engine.left"));
    }

    void aMeasuredPointHasAValueAndOthersHaveNone() {
        Round round = atTheOil();
        Settled settled = sound("oil");
        settled.value.reset();
        refused(round, settled);
        settled = finding("oil");
        settled.value.reset();
        refused(round, settled);
        settled = sound("engine.left");
        settled.value = "5";
        refused(round, settled);
        QVERIFY(round.act(sound("oil")));
    }

    void outOfTheLimitIsNotSound() {
        for (const char* value : {"3.9", "6.1"}) {
            Round round = atTheOil();
            Settled settled = sound("oil");
            settled.value = value;
            refused(round, settled);
            settled = finding("oil");
            settled.value = value;
            QVERIFY(round.act(settled));
        }
        for (const char* value : {"4", "6.00"}) {
            Round round = atTheOil();
            Settled settled = sound("oil");
            settled.value = value;
            QVERIFY(round.act(settled));
        }
    }

    void aFindingHasWordsAndIsSevereEnough() {
        Round round = atTheOil();
        Settled settled = finding("oil");
        settled.words.clear();
        refused(round, settled);
        refused(round, finding("oil", Severity::assess)); // the airframe says grounds
        QVERIFY(round.act(finding("oil", Severity::grounds)));
        QVERIFY(round.act(StandReached{"front"}));
        QVERIFY(
            round.act(finding("arc-clear", Severity::grounds))); // more severe than it says: the pilot's word
    }

    void notInspectedHasAReasonAndMayBeSaidAnywhere() {
        Round round(machine);
        Settled settled = notInspected("pitch-link.b");
        settled.why.clear();
        refused(round, settled);
        QVERIFY(round.act(notInspected("pitch-link.b")));
    }

    void settledOnceUnlessReopened() {
        Round round(machine);
        refused(round, Reopened{"arc-clear", "Not settled yet."});
        QVERIFY(round.act(StandReached{"front"}));
        QVERIFY(round.act(sound("arc-clear")));
        refused(round, finding("arc-clear"));
        refused(round, notInspected("arc-clear"));
        refused(round, Reopened{"arc-clear", ""});
        QVERIFY(round.act(Reopened{"arc-clear", "Looked again."}));
        refused(round, Reopened{"arc-clear", "Twice."});
        QVERIFY(round.act(finding("arc-clear")));
    }

    // --- openings

    void openedWhenClosedAndClosedWhenOpen() {
        Round round(machine);
        refused(round, OpeningMade{"hatch"});
        refused(round, OpeningClosed{"cowl-left"});
        refused(round, OpeningMade{"tie-down"}); // met
        QVERIFY(round.act(OpeningMade{"cowl-left"}));
        refused(round, OpeningMade{"cowl-left"});
        QVERIFY(round.act(OpeningClosed{"cowl-left"}));
        QVERIFY(round.act(OpeningClosed{"tie-down"}));
    }

    // --- where reality differs

    void aStandIsBlockedOnceAndFreedWhenBlocked() {
        Round round(machine);
        refused(round, StandBlocked{"roof", "Ice."});
        refused(round, StandBlocked{"left", ""});
        refused(round, StandFree{"roof"});
        refused(round, StandFree{"left"});
        QVERIFY(round.act(StandBlocked{"left", "Ice."}));
        refused(round, StandBlocked{"left", "Snow."});
        QVERIFY(round.act(StandFree{"left"}));
        refused(round, StandFree{"left"});
        QVERIFY(round.act(StandBlocked{"left", "Ice again."}));
    }

    void nobodyGoesToABlockedStand() {
        Round round(machine);
        QVERIFY(round.act(StandBlocked{"left", "Ice"}));
        refused(round, StandReached{"left"});
        QCOMPARE(allowed(round.state, machine, StandReached{"left"}).error().what,
                 std::string("“Left side” can't be used: Ice."));
        QVERIFY(round.act(StandFree{"left"}));
        QVERIFY(round.act(StandReached{"left"}));
    }

    // Found slippery when one stands on it: one can leave, and nothing else.
    void whereOneStandsMayBeBlocked() {
        Round round(machine);
        QVERIFY(round.act(StandReached{"left"}));
        QVERIFY(round.act(sound("arc-clear")));
        QVERIFY(round.act(StandBlocked{"left", "Oil on the ground."}));
        refused(round, sound("cowl-open.left"));
        refused(round, finding("cowl-open.left"));
        refused(round, SettingChanged{"rotor", "b-aft"});
        QVERIFY(round.act(notInspected("cowl-open.left")));
        QVERIFY(round.act(StandReached{"front"}));
        refused(round, StandReached{"left"});
        QVERIFY(round.act(sound("tie-down-off")));
    }

    void anAreaHasTheNextNumberAReasonAndAnOutline() {
        Round round(machine);
        refused(round, test::area(2, 3, 0, 5, 2));
        refused(round, test::area(1, 3, 0, 5, 2, ""));
        refused(round, test::area(1, 3, 0, 3, 2)); // no width
        AreaMarked crossed{1, {{"3", "0"}, {"5", "2"}, {"5", "0"}, {"3", "2"}}, "Wall"};
        refused(round, crossed);
        QVERIFY(round.act(test::area(1, 3, 0, 5, 2)));
        refused(round, test::area(1, 6, 0, 7, 2));
        refused(round, AreaCleared{2});
        QVERIFY(round.act(AreaCleared{1}));
        refused(round, AreaCleared{1});
        refused(round, test::area(1, 3, 0, 5, 2)); // a number never means another area
        QVERIFY(round.act(test::area(2, 3, 0, 5, 2)));
    }

    void anAreaDoesNotCoverWhereThePersonIs() {
        Round round(machine);
        refused(round, test::area(1, -1, 4.5, 1, 5.5)); // the walk's start
        QVERIFY(round.act(StandReached{"front"}));
        refused(round, test::area(1, -1, 3.5, 1, 4.5));
        QVERIFY(round.act(test::area(1, -1, 4.5, 1, 5.5)));
    }

    void twentyAreasAtATime() {
        Round round(machine);
        for (int i = 0; i < 20; ++i)
            QVERIFY(round.act(test::area(i + 1, 20 + i, 0, 20.5 + i, 1)));
        refused(round, test::area(21, 50, 0, 51, 1));
        QVERIFY(round.act(AreaCleared{7}));
        QVERIFY(round.act(test::area(21, 50, 0, 51, 1)));
    }

    void theLightIsWhatItWasNot() {
        Round round(machine);
        refused(round, Light{false});
        QVERIFY(round.act(Light{true}));
        refused(round, Light{true});
        QVERIFY(round.act(Light{false}));
    }

    // Every stand of a point blocked: the round can still be brought to its end.
    void whatCanNotBeReachedIsSaidAndTheRoundConcluded() {
        Round round(machine);
        QVERIFY(round.act(StandBlocked{"tread", "Ice."}));
        const auto anew = reordered(round.state, machine, "“Left tread” can't be used");
        QVERIFY(anew && *anew);
        QVERIFY(round.act(**anew));
        round.toTheEnd();
        refused(round, Concluded{true, ""});
        refused(round, Concluded{false, ""});
        for (const auto& [id, point] : round.state.points) {
            const std::string settledId = id;
            if (!point.settled) QVERIFY(round.act(notInspected(settledId)));
        }
        const auto rest = reordered(round.state, machine, "The round goes on");
        QVERIFY(rest);
        if (*rest) QVERIFY(round.act(**rest));
        round.toTheEnd();
        QVERIFY(round.act(Concluded{false, "Ice on the tread."}));
    }

    // --- notes, plans

    void notesAndPlansSaySomething() {
        Round round(machine);
        refused(round, Note{""});
        refused(round, Planned{"", {}});
        refused(round, Planned{"why", {walk::Go{"roof"}}}, ErrorCode::notFound);
        refused(round, Planned{"why", {walk::Set{"rotor", "c-aft"}}}, ErrorCode::notFound);
        refused(round, Planned{"why", {walk::Settle{"propeller"}}}, ErrorCode::notFound);
        QVERIFY(round.act(Planned{"why", {walk::Go{"left"}}}));
    }

    // --- conclusions

    void concludedOnlyWhenAllIsSettled() {
        Round round(machine);
        round.until("last-look");
        for (const bool fit : {true, false}) {
            refused(round, Concluded{fit, ""});
            QCOMPARE(kinds(round, fit), QString("unsettled:last-look"));
        }
        round.toTheEnd();
        QVERIFY(round.act(Reopened{"oil", "Disturbed."}));
        refused(round, Concluded{false, ""});
    }

    void concludedOnlyWhenNothingIsOwed() {
        Round round = finished();
        QVERIFY(round.act(OpeningMade{"cowl-right"}));
        for (const bool fit : {true, false}) {
            refused(round, Concluded{fit, ""});
            QCOMPARE(kinds(round, fit), QString("owed:cowl-right"));
        }
        QVERIFY(round.act(OpeningClosed{"cowl-right"}));
        QVERIFY(round.act(Concluded{true, ""}));
    }

    void aFindingAtWhatClosesLeavesItOwed() {
        Round round(machine);
        round.until("tie-down-off");
        QVERIFY(round.act(finding("tie-down-off")));
        round.toTheEnd();
        QCOMPARE(kinds(round, false), QString("owed:tie-down"));
        QVERIFY(round.act(OpeningClosed{"tie-down"}));
        QVERIFY(round.act(Concluded{false, "Tie-down."}));
    }

    void aGroundingFindingStandsAgainstFit() {
        Round round(machine);
        round.until("arc-clear");
        QVERIFY(round.act(sound("arc-clear")));
        round.until("last-look");
        QVERIFY(round.act(finding("last-look")));
        QCOMPARE(kinds(round, true), QString("grounding:last-look"));
        refused(round, Concluded{true, ""});
        QVERIFY(round.act(Concluded{false, "Last look."}));
    }

    void aFindingToAssessDoesNot() {
        Round round = finished();
        QVERIFY(round.act(Reopened{"arc-clear", "Looked again."}));
        QVERIFY(round.act(finding("arc-clear", Severity::assess)));
        QVERIFY(round.act(Concluded{true, "Assessed."}));
    }

    void notInspectedWithoutABasisStandsAgainstFit() {
        for (const char* basis : {"", "MEL 79-1"}) {
            Round round = finished();
            QVERIFY(round.act(Reopened{"oil", "Disturbed."}));
            QVERIFY(round.act(notInspected("oil", basis)));
            QCOMPARE(kinds(round, false), QString());
            QCOMPARE(kinds(round, true), QString(*basis == 0 ? "noBasis:oil" : ""));
            QCOMPARE(static_cast<bool>(round.act(Concluded{true, ""})), *basis != 0);
        }
    }

    void whatStandsAgainstIsListedInOrderAndWorded() {
        Round round(machine);
        const auto all = against(round.state, machine, true);
        QCOMPARE(all.size(), machine.points.size() + 1);
        for (std::size_t i = 0; i < machine.points.size(); ++i)
            QCOMPARE(all[i].id, machine.points[i].id);
        QCOMPARE(toText(all.front(), machine), std::string("“Rotor arc clear” is not settled."));
        QCOMPARE(toText(all.back(), machine),
                 std::string("“Tie-down” is still owed: Take the tie-down off."));
        // The shorter walk has nothing to do with the tie-down.
        QCOMPARE(against(Round(machine, "short").state, machine, true).size(), 6U);
    }

private:
    static Signed signature(const std::string& name) {
        return {std::string(64, '1'), std::string(64, '2'), name};
    }
    static std::vector<What> anything() {
        return {StandReached{"left"},
                SettingChanged{"rotor", "b-aft"},
                sound("arc-clear"),
                notInspected("arc-clear"),
                Reopened{"arc-clear", "why"},
                OpeningMade{"cowl-left"},
                OpeningClosed{"tie-down"},
                Planned{"why", {}},
                StandBlocked{"left", "Ice."},
                StandFree{"left"},
                test::area(1, 3, 0, 5, 2),
                AreaCleared{1},
                Light{true},
                Light{false}};
    }

    /// Refused with words, and the state as it was.
    static void refused(Round round, const What& what, ErrorCode code = ErrorCode::refused) {
        const std::string before = test::described(round.state);
        const auto done = round.act(what);
        QVERIFY2(!done, kindOf(what));
        QCOMPARE(done.error().code, code);
        QVERIFY(done.error().what.ends_with('.'));
        QCOMPARE(test::described(round.state), before);
    }

    Round atTheOil() const {
        Round round(machine);
        if (!round.act(StandReached{"left"}) || !round.act(sound("cowl-open.left"))) qFatal("not at the oil");
        return round;
    }
    Round finished() const {
        Round round(machine);
        round.toTheEnd();
        return round;
    }

    QString kinds(const Round& round, bool fit) const {
        QStringList all;
        for (const Obstacle& one : against(round.state, machine, fit)) {
            static const char* const names[] = {"unsettled", "owed",      "grounding",
                                                "noBasis",   "lookAgain", "question"};
            all << QString("%1:%2").arg(names[static_cast<int>(one.kind)], one.id.c_str());
        }
        return all.join(' ');
    }

    airframe::Airframe machine;
};

QTEST_APPLESS_MAIN(TestRules)
#include "tst_rules.moc"
