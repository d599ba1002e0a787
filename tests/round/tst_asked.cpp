// What somebody who follows a round asks: rules, state, order.
#include "rounds.hpp"

#include <QTest>

using namespace ambit;
using namespace ambit::round;
using test::finding;
using test::notInspected;
using test::Round;
using test::sound;
using Kind = Statement::Kind;

class TestAsked : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { machine = test::machine(); }

    // --- a look again

    void aSettledPointIsToBeSettledAgain() {
        Round round = finished();
        const int points = round.state.settledCount();
        QVERIFY(round.act(lookAgain(round, "oil")));
        QCOMPARE(round.state.settledCount(), points - 1);
        QVERIFY(!round.state.points.at("oil").outcome());
        QCOMPARE(round.state.points.at("oil").settlings.size(), 1U); // what was said stays
        QCOMPARE(toText(against(round.state, machine, true).front(), machine),
                 std::string("“Oil level” is to be looked at again: asked by Ines Example."));
        refused(round, Concluded{true, ""});
        refused(round, Concluded{false, "Oil."});
        QVERIFY(round.act(notInspected("oil", "MEL 79-1")));
        QVERIFY(round.state.asks.front().became == Ask::Became::settled);
        QCOMPARE(round.state.asks.front().until->ms, round.state.lastAt.ms);
        QCOMPARE(round.state.points.at("oil").settlings.size(), 2U);
        QVERIFY(round.act(Concluded{true, ""}));
    }

    void itIsOpenAtAnUnsettledPoint() {
        Round round(machine);
        round.until("oil");
        QVERIFY(round.act(lookAgain(round, "oil")));
        QCOMPARE(round.state.openAskCount(), 1);
        QVERIFY(against(round.state, machine, true).front().kind == Obstacle::Kind::unsettled);
        QVERIFY(round.act(sound("oil")));
        QCOMPARE(round.state.openAskCount(), 0);
        QVERIFY(round.state.points.at("oil").asked.empty());
    }

    void settlingOnceClosesAllOfItsPoint() {
        Round round(machine);
        round.until("oil");
        QVERIFY(round.act(sound("oil")));
        QVERIFY(round.act(lookAgain(round, "oil")));
        QVERIFY(round.act(lookAgain(round, "oil")));
        QVERIFY(round.act(lookAgain(round, "last-look")));
        QCOMPARE(round.state.openAskCount(), 3);
        QVERIFY(round.act(finding("oil")));
        QCOMPARE(round.state.openAskCount(), 1);
        QVERIFY(round.state.ask(3)->isOpen());
    }

    void declinedItCountsAsBefore() {
        Round round = finished();
        QVERIFY(round.act(lookAgain(round, "oil")));
        refused(round, Declined{1, ""});
        QVERIFY(round.act(Declined{1, "Seen twice already."}));
        QVERIFY(round.state.points.at("oil").outcome() == Outcome::sound);
        QVERIFY(round.state.ask(1)->became == Ask::Became::declined);
        QCOMPARE(round.state.ask(1)->words, std::string("Seen twice already."));
        QVERIFY(round.act(Concluded{true, ""}));
    }

    void declinedItStaysOpenForWhateverElseAsks() {
        Round round = finished();
        // Another look again.
        QVERIFY(round.act(lookAgain(round, "oil")));
        QVERIFY(round.act(lookAgain(round, "oil")));
        QVERIFY(round.act(Declined{1, "No."}));
        QVERIFY(!round.state.points.at("oil").settled);
        QVERIFY(round.act(Declined{2, "No."}));
        QVERIFY(round.state.points.at("oil").settled);
        // The walker's own re-opening.
        QVERIFY(round.act(Reopened{"oil", "Disturbed."}));
        QVERIFY(round.act(lookAgain(round, "oil")));
        QVERIFY(round.act(Declined{3, "No."}));
        QVERIFY(!round.state.points.at("oil").settled);
        refused(round, Concluded{true, ""});
        // Settled and asked for once more, the re-opening is over.
        QVERIFY(round.act(notInspected("oil", "MEL 79-1")));
        QVERIFY(round.act(lookAgain(round, "oil")));
        QVERIFY(round.act(Declined{4, "No."}));
        QVERIFY(round.state.points.at("oil").settled);
    }

    void declinedAnUnsettledPointIsUnsettled() {
        Round round(machine);
        QVERIFY(round.act(lookAgain(round, "oil")));
        QVERIFY(round.act(Declined{1, "It comes yet."}));
        QVERIFY(!round.state.points.at("oil").settled);
        QCOMPARE(round.state.openAskCount(), 0);
    }

    // --- a question and a remark

    void aQuestionIsAnsweredOrDeclinedBeforeTheEnd() {
        Round round = finished();
        QVERIFY(round.act(next(round, Kind::question, "", "Which fuel?")));
        QCOMPARE(toText(against(round.state, machine, false).front(), machine),
                 std::string("Ines Example asks “Which fuel?” and has no answer yet."));
        refused(round, Concluded{true, ""});
        refused(round, Answered{1, ""});
        QVERIFY(round.act(Answered{1, "100LL."}));
        refused(round, Answered{1, "Or not."});
        refused(round, Declined{1, "Answered."});
        QVERIFY(round.act(next(round, Kind::question, "oil", "Why?")));
        QVERIFY(round.state.points.at("oil").settled); // asking about it re-opens nothing
        QVERIFY(round.act(Declined{2, "Later."}));
        QVERIFY(round.act(Concluded{true, ""}));
        QCOMPARE(round.state.ask(1)->words, std::string("100LL."));
    }

    void aRemarkNeedsNothing() {
        Round round = finished();
        QVERIFY(round.act(next(round, Kind::remark, "", "Well seen.")));
        QCOMPARE(round.state.openAskCount(), 0);
        refused(round, Answered{1, "Thanks."});
        refused(round, Declined{1, "No."});
        QVERIFY(round.act(Concluded{true, ""}));
    }

    void aLookAgainIsNotAnsweredWithWords() {
        Round round = finished();
        QVERIFY(round.act(lookAgain(round, "oil")));
        refused(round, Answered{1, "It is fine."});
    }

    // --- what may be asked

    void numberedWithoutAGapAndOfThisRound() {
        Round round(machine);
        const Asked first = next(round, Kind::remark, "", "Words.");
        for (const std::int64_t number : {0, 2, 1000}) {
            Asked other = first;
            other.ask = number;
            refused(round, other);
        }
        Asked elsewhere = first;
        elsewhere.statement.round = std::string(32, '0');
        refused(round, elsewhere);
        Asked nowhere = next(round, Kind::lookAgain, "propeller", "");
        refused(round, nowhere);
        nowhere.statement.point.clear();
        refused(round, nowhere);
        refused(round, next(round, Kind::question, "oil", ""));
        refused(round, next(round, Kind::remark, "propeller", "Words."));
        for (const std::int64_t number : {-1, 0, 1}) {
            refused(round, Answered{number, "Words."});
            refused(round, Declined{number, "Words."});
        }
        QVERIFY(round.act(first));
    }

    void saidAgainItIsRefused() {
        Round round(machine);
        Asked first = next(round, Kind::question, "", "Which fuel?");
        QVERIFY(round.act(first));
        first.ask = 2;
        refused(round, first);
        QVERIFY(round.act(Answered{1, "100LL."}));
        refused(round, first);
        first.statement.id[31] = 'b';
        QVERIFY(round.act(first));
    }

    void twentyAtATime() {
        Round round(machine);
        for (int i = 0; i < 20; ++i)
            QVERIFY(round.act(next(round, Kind::question, "", "Which?")));
        refused(round, next(round, Kind::question, "", "Which?"));
        refused(round, lookAgain(round, "oil"));
        QVERIFY(round.act(next(round, Kind::remark, "", "A remark isn't open.")));
        QVERIFY(round.act(Answered{7, "This."}));
        QVERIFY(round.act(lookAgain(round, "oil")));
    }

    void aThousandInARound() {
        Round round(machine);
        for (int i = 0; i < 1000; ++i)
            QVERIFY(round.act(next(round, Kind::remark, "", "Words.")));
        refused(round, next(round, Kind::remark, "", "Words."));
    }

    void nothingAfterTheConclusion() {
        Round round = finished();
        QVERIFY(round.act(Concluded{true, ""}));
        refused(round, next(round, Kind::remark, "", "Words."));
        QVERIFY(round.act(Withdrawn{"Somebody asks."}));
        QVERIFY(round.act(next(round, Kind::question, "", "Sure?")));
        refused(round, Concluded{true, ""});
        QVERIFY(round.act(Answered{1, "Yes."}));
        QVERIFY(round.act(Concluded{true, ""}));
        QVERIFY(round.act(Signed{std::string(64, '1'), std::string(64, '2'), "Robin Example"}));
        refused(round, next(round, Kind::remark, "", "Words."));
    }

    void aPauseHoldsNoneOfItUp() {
        Round round(machine);
        QVERIFY(round.act(Paused{}));
        QVERIFY(round.act(next(round, Kind::question, "", "Why?")));
        QVERIFY(round.act(lookAgain(round, "oil")));
        QVERIFY(round.act(Answered{1, "A call."}));
        QVERIFY(round.act(Declined{2, "It comes yet."}));
        QCOMPARE(round.state.phase, Phase::paused);
    }

    // --- on one's own

    void onOnesOwnFromTheBeginningOrNotAtAll() {
        Round round(machine);
        QVERIFY(!round.state.alone);
        QVERIFY(round.act(Alone{}));
        QVERIFY(round.state.alone);
        refused(round, Alone{});
        Round later(machine);
        QVERIFY(later.act(Note{"Begun."}));
        refused(later, Alone{});
    }

    // --- the order of what is left

    void itIsOrderedInAndSaysWhy() {
        Round round(machine);
        round.until("blade.b");
        const What asked = lookAgain(round, "blade.a"); // the rotor has been turned since
        const std::string cause = causeOf(round.state, machine, asked, false);
        QCOMPARE(cause, "Asked by Ines Example: look again at " + name("blade.a"));
        QVERIFY(round.act(asked));
        QVERIFY(situation(round.state, machine).settled.contains("arc-clear"));
        QVERIFY(!situation(round.state, machine).settled.contains("blade.a"));
        const auto anew = reordered(round.state, machine, cause);
        QVERIFY(anew && *anew);
        QVERIFY2((*anew)->why.starts_with(cause), (*anew)->why.c_str());
        QVERIFY(round.act(**anew));
        round.toTheEnd();
        QCOMPARE(round.state.openAskCount(), 0);
        QVERIFY(round.act(Concluded{true, ""}));
    }

    void declinedItIsOrderedOut() {
        Round round(machine);
        round.until("blade.b");
        QVERIFY(round.act(lookAgain(round, "blade.a")));
        QVERIFY(round.act(*reordered(round.state, machine, "why").value()));
        const What declined = Declined{1, "Seen."};
        QCOMPARE(causeOf(round.state, machine, declined, false),
                 "The second look at " + name("blade.a") + " is declined");
        QVERIFY(round.act(declined));
        for (const walk::Step& step : remaining(round.state, machine))
            QVERIFY((step != walk::Step{walk::Settle{"blade.a"}}));
    }

    void onlyALookAgainAtASettledPointChangesTheOrder() {
        Round round(machine);
        QCOMPARE(causeOf(round.state, machine, lookAgain(round, "oil"), false), std::string());
        QCOMPARE(causeOf(round.state, machine, next(round, Kind::question, "oil", "Why?"), false),
                 std::string());
        QCOMPARE(causeOf(round.state, machine, Answered{1, "So."}, false), std::string());
    }

    void inAPauseItIsOrderedWhenTheRoundGoesOn() {
        Round round(machine);
        round.until("blade.b");
        QVERIFY(round.act(Paused{}));
        QCOMPARE(causeOf(round.state, machine, Resumed{}, false), std::string());
        const What asked = lookAgain(round, "blade.a");
        QCOMPARE(causeOf(round.state, machine, asked, false), std::string());
        QVERIFY(round.act(asked));
        QCOMPARE(causeOf(round.state, machine, Resumed{}, false),
                 "Asked by Ines Example: look again at " + name("blade.a"));
    }

private:
    static Asked next(const Round& round, Kind kind, const std::string& point, const std::string& words) {
        return test::ask(static_cast<std::int64_t>(round.state.asks.size()) + 1, round.state.id, kind, point,
                         words);
    }
    static Asked lookAgain(const Round& round, const std::string& point) {
        return next(round, Kind::lookAgain, point, "");
    }

    /// Refused with words, and the state as it was.
    static void refused(Round round, const What& what) {
        const std::string before = test::described(round.state);
        const auto done = round.act(what);
        QVERIFY2(!done, kindOf(what));
        QCOMPARE(done.error().code, ErrorCode::refused);
        QVERIFY(done.error().what.ends_with('.'));
        QCOMPARE(test::described(round.state), before);
    }

    std::string name(const char* point) const { return "“" + machine.point(point)->name + "”"; }

    Round finished() const {
        Round round(machine);
        round.toTheEnd();
        return round;
    }

    airframe::Airframe machine;
};

QTEST_APPLESS_MAIN(TestAsked)
#include "tst_asked.moc"
