// The state of a round: a fold over its events and nothing else.
#pragma once

#include "round/event.hpp"

#include <map>

namespace ambit::round {

/// One point of the walk. Settlings are never erased: the last one counts unless the point was re-opened
/// after it.
struct PointState {
    struct Settling {
        Settled what;
        Instant at;
        std::string stand; ///< where; empty: before any stand was reached
        airframe::Settings settings;
        std::int64_t seq = 0;     ///< of its event
        bool fromPortion = false; ///< looked at in a portion, told of down again
        [[nodiscard]] bool looked() const { return what.outcome != Outcome::notInspected; }
    };
    std::vector<Settling> settlings;
    bool settled = false;            ///< and nothing has asked for it again since
    bool reopened = false;           ///< by whoever walks, or a rule of theirs, and not settled since
    std::string reopenedWhy;         ///< of the last re-opening; empty: after an interruption or a quick run
    std::vector<std::int64_t> asked; ///< the open asks to look again here, by their numbers
    std::optional<Trended> trend;    ///< where the last value is going, as told

    [[nodiscard]] const Settling* last() const { return settlings.empty() ? nullptr : &settlings.back(); }
    /// The outcome that counts; nullopt while to be settled.
    [[nodiscard]] std::optional<Outcome> outcome() const;
};

struct OpeningState {
    bool owed = false;
    bool ever = false; ///< was open or fitted at some time in this round
    std::optional<Instant> since;
    std::optional<Instant> closedAt;
};

/// A stand that can't be used now.
struct BlockedStand {
    std::string why;
    Instant since;
};

/// What stands in the way now and isn't the aircraft's.
struct MarkedArea {
    airframe::Outline outline;
    std::string why;
    Instant since;
};

/// Something that was asked by somebody who follows, and what came of it.
struct Ask {
    enum class Became { open, settled, answered, declined, told }; ///< told: a remark needs nothing
    Statement what;
    Instant at; ///< when it came
    Became became = Became::open;
    std::optional<Instant> until; ///< when that was; none while open, and of a remark
    std::string words;            ///< the answer, or why not

    [[nodiscard]] bool isOpen() const { return became == Became::open; }
};

/// What is looked at in one go, since no hand is free for more.
struct Portion {
    std::vector<std::string> points; ///< in the order told
    bool running = true;             ///< on the way, and nothing is settled; else down again
    Instant since;
};

struct Interruption {
    Interrupted what;
    Instant at; ///< when it was over
};

enum class Phase { walking, paused, concluded, sealed };

struct State {
    std::string id; ///< roundId
    Opened opened;
    Instant openedAt;
    Instant lastAt;
    std::int64_t lastSeq = 0;
    Phase phase = Phase::walking;
    std::optional<std::string> stand;
    std::vector<std::string> standsReached; ///< in order, repeated ones too
    airframe::Settings settings;
    std::map<std::string, PointState> points;     ///< every point of the walk
    std::map<std::string, OpeningState> openings; ///< every opening of the airframe
    std::vector<walk::Step> plan; ///< the latest, whole; what is done in it is seen in `points`
    std::map<std::string, BlockedStand> blocked; ///< by stand
    std::map<std::int64_t, MarkedArea> marked;   ///< by the area's number
    std::int64_t areasEver = 0;                  ///< marked in this round, those cleared again too
    bool lightLow = false;
    bool alone = false; ///< what others found that day is not shown
    bool night = false; ///< what the airframe asks for then belongs to the walk
    std::int64_t touchedSeq =
        0; ///< of the last event that may have left something behind: the last look comes after
    std::int64_t standSeq = 0;      ///< of the event by which one came to `stand`
    std::optional<Portion> portion; ///< of this stand, running or to be asked for
    std::vector<Interruption> interruptions;
    std::optional<QuickRun> quickRun;         ///< that was asked about
    std::optional<std::int64_t> clockAheadMs; ///< the device's clock before the satellites', as told last
    std::vector<Ask> asks;                    ///< the first has number 1
    std::optional<Concluded> conclusion;
    std::optional<Signed> signature;
    std::int64_t pausedMs = 0; ///< time spent paused, of finished pauses
    std::optional<Instant> pausedSince;

    [[nodiscard]] int settledCount() const;
    [[nodiscard]] int findingCount() const;
    [[nodiscard]] int openAskCount() const; ///< what must be settled, answered or declined
    /// By its number; nullptr if there is none.
    [[nodiscard]] const Ask* ask(std::int64_t number) const;
    [[nodiscard]] std::vector<std::string>
    owed() const; ///< openings, listed order of the airframe not kept: by id
};

/// The state after the first event, which is Opened. The event must name this airframe's hash and one of its
/// walks.
[[nodiscard]] Result<State> begin(const airframe::Airframe& airframe, const Event& opened);

/// The state after one more event. Refused (state untouched), with the reason in words, if the round's rules
/// forbid it: rules.hpp.
[[nodiscard]] Result<void> apply(State& state, const airframe::Airframe& airframe, const Event& event);

/// All events from the first.
[[nodiscard]] Result<State> fold(const airframe::Airframe& airframe, const std::vector<Event>& events);

/// What the planner needs to know to order what is left.
[[nodiscard]] walk::Situation situation(const State& state, const airframe::Airframe& airframe);

/// The next step of the plan that is not done yet: nullopt when all is settled. A Go that only leads to
/// settled points is skipped.
[[nodiscard]] std::optional<walk::Step> nextStep(const State& state, const airframe::Airframe& airframe);

/// The steps of the plan not done yet, the next first.
[[nodiscard]] std::vector<walk::Step> remaining(const State& state, const airframe::Airframe& airframe);

} // namespace ambit::round
