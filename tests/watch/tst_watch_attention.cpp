// Which of several walks to look at first, and why.
#include "../round/rounds.hpp"

#include "watch/attention.hpp"

#include <QTest>
#include <algorithm>

using namespace ambit;
using namespace ambit::watch;
using test::finding;
using test::notInspected;
using test::Round;
using test::sound;

class TestWatchAttention : public QObject {
    Q_OBJECT

    airframe::Airframe machine = test::machine();

    struct How {
        std::int64_t lookedUpTo = 0;
        std::int64_t afterMs = 0; ///< since the last event
        bool isConnected = true;
        bool isToSign = false;
    };
    [[nodiscard]] Attention of(const Round& round, How how) const {
        const round::Pace pace = round::paceOf(machine, round.events);
        return attentionOf({machine,
                            round.state,
                            round.events,
                            pace,
                            how.lookedUpTo,
                            {round.state.lastAt.ms + how.afterMs},
                            how.isConnected,
                            how.isToSign});
    }
    /// At its first point.
    [[nodiscard]] Round begun() const {
        Round round(machine);
        while (!std::holds_alternative<walk::Settle>(*round::nextStep(round.state, machine)))
            round.step();
        return round;
    }
    [[nodiscard]] static std::string inHand(const Round& round) {
        return std::get<walk::Settle>(*round::nextStep(round.state, *round.airframe)).point;
    }

private slots:
    void aWalkThatGoesOnNeedsNothing() {
        const Round round = begun();
        QVERIFY(of(round, {}) == Attention{});
    }

    void aFindingIsNewsUntilLookedAt() {
        Round round = begun();
        const std::string point = inHand(round);
        QVERIFY(round.act(finding(point, round::Severity::grounds)));
        const std::int64_t seq = round.state.lastSeq;
        QVERIFY((of(round, {}) == Attention{Need::grounds, seq}));
        QVERIFY((of(round, {.lookedUpTo = seq - 1}) == Attention{Need::grounds, seq}));
        QVERIFY(of(round, {.lookedUpTo = seq}) == Attention{});
        QVERIFY(round.act(round::Reopened{point, "Wiped clean."}));
        QVERIFY(round.act(notInspected(point)));
        QVERIFY((of(round, {.lookedUpTo = seq}) == Attention{Need::found, round.state.lastSeq}));
        QVERIFY(of(round, {}).need == Need::grounds); // nobody has looked at the first yet
    }

    void notInspectedIsNews() {
        Round round = begun();
        QVERIFY(round.act(notInspected(inHand(round))));
        QVERIFY((of(round, {}) == Attention{Need::found, round.state.lastSeq}));
    }

    void anAnswerIsNews() {
        Round round = begun();
        QVERIFY(round.act(test::ask(1, round.state.id, round::Statement::Kind::question, "", "Which fuel?")));
        QVERIFY(of(round, {}) == Attention{});
        QVERIFY(round.act(round::Answered{1, "100LL"}));
        QVERIFY((of(round, {}) == Attention{Need::replied, round.state.lastSeq}));
    }

    void stuckIsByTheAirframe() {
        const Round round = begun();
        const auto expected = expectedInHand(machine, round.state);
        QVERIFY(expected);
        QCOMPARE(*expected, std::llround(machine.point(inHand(round))->seconds * 1000));
        const std::int64_t limit = std::max(stuckMs, stuckTimes * *expected);
        QVERIFY(of(round, {.afterMs = limit - 1}) == Attention{});
        QVERIFY((of(round, {.afterMs = limit}) == Attention{Need::stuck, 0}));
    }

    void nobodyIsStuckOnTheWayOrInAPause() {
        Round round(machine);
        QVERIFY(std::holds_alternative<walk::Go>(*round::nextStep(round.state, machine)));
        QVERIFY(of(round, {.afterMs = 3'600'000}) == Attention{});
        Round paused = begun();
        QVERIFY(paused.act(round::Paused{}));
        QVERIFY((of(paused, {.afterMs = 3'600'000}) == Attention{Need::paused, 0}));
    }

    void awayOnlyInTheMiddleOfAWalk() {
        Round round = begun();
        QVERIFY((of(round, {.isConnected = false}) == Attention{Need::away, 0}));
        round.toTheEnd();
        for (const std::string& opening : round.state.owed())
            QVERIFY(round.act(round::OpeningClosed{opening}));
        const auto concluded = round.act(round::Concluded{true, ""});
        QVERIFY2(concluded, concluded ? "" : toText(concluded.error()).c_str());
        const std::int64_t all = round.state.lastSeq;
        QVERIFY(of(round, {.lookedUpTo = all, .isConnected = false}) == Attention{});
        QVERIFY((of(round, {.lookedUpTo = all, .isConnected = false, .isToSign = true}) ==
                 Attention{Need::toSign, 0}));
    }

    void quickIsNewsUntilLookedAt() {
        Round round = begun();
        for (int i = 0; i < 3; ++i)
            QVERIFY(round.act(sound(inHand(round))));
        std::vector<round::Event> events = round.events;
        for (auto& event : events)
            event.at = events.front().at; // all at once
        const round::Pace pace = round::paceOf(machine, events);
        QCOMPARE(pace.quick.size(), 1U);
        const auto needed = [&](std::int64_t upTo) {
            return attentionOf({machine, round.state, events, pace, upTo, events.back().at});
        };
        QVERIFY((needed(0) == Attention{Need::quick, events.back().seq}));
        QVERIFY(needed(events.back().seq) == Attention{});
    }
};

QTEST_APPLESS_MAIN(TestWatchAttention)
#include "tst_watch_attention.moc"
