// How long a walk took at each stand against what its airframe expects, and where several points were settled
// within the time that one takes. Numbers only: nobody is judged by them.
#pragma once

#include "round/state.hpp"

namespace ambit::round {

/// All visits to one stand together.
struct StandPace {
    std::string stand;
    std::int64_t ms = 0; ///< from being there to the last thing done there, pauses left out
    /// What the airframe says that the points settled and the changes made there take.
    std::int64_t expectedMs = 0;
    int settled = 0; ///< points, looked at: not those said as not inspected
    int visits = 0;
    friend bool operator==(const StandPace&, const StandPace&) = default;
};

/// Three points or more settled one after another at one stand, in less time than the quickest of them takes
/// by the airframe; as many as belong together.
struct Quick {
    std::int64_t firstSeq = 0; ///< of the events that settled them
    std::int64_t lastSeq = 0;
    std::string stand; ///< empty: before any was reached
    int points = 0;
    std::int64_t ms = 0; ///< from when the first could be begun to when the last was settled
    friend bool operator==(const Quick&, const Quick&) = default;
};

inline constexpr int fewestQuick = 3; ///< points: two neighbours may well be seen at one glance

struct Pace {
    std::vector<StandPace> stands; ///< in the order in which they were first reached
    std::vector<Quick> quick;      ///< in order
    std::int64_t walkingMs = 0;    ///< between stands, pauses left out
    std::int64_t pausedMs = 0;     ///< of pauses that have ended
    Instant inHandSince; ///< when what is in hand now could be begun: the end of what was done before it
};

/// What is asked about such a run: with `again`, what of it counts still is to be settled again.
[[nodiscard]] QuickRun asking(const State& state, const Quick& quick, bool again);

/// Of a round's log, whole or as far as it has come. What the airframe doesn't know is left out. A clock that
/// was set back counts as no time.
[[nodiscard]] Pace paceOf(const airframe::Airframe& airframe, const std::vector<Event>& events);

} // namespace ambit::round
