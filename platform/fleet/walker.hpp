// One invented round, event by event along its plan.
#pragma once

#include "fleet/chance.hpp"
#include "fleet/craft.hpp"
#include "round/event.hpp"

namespace ambit::fleet {

/// What comes out at one point that isn't plainly sound.
struct Other {
    round::Outcome outcome{};
    std::string words; ///< found, or why it was not inspected
    round::Severity severity{};
    std::string basis;               ///< not inspected
    std::optional<OnTheSpot> spot;   ///< found, put right and then sound; `words` are not used
    std::optional<std::string> then; ///< measured after it was put right
};

struct Wish {
    const Walk* walk = nullptr;
    std::string registration, serial;
    round::Person who;
    std::vector<round::CounterReading> counters;
    LocalInstant at;
    std::optional<round::Position> position;
    std::map<std::string, Other> others;       ///< by point
    std::map<std::string, std::string> values; ///< by measured point
    std::string note;                          ///< at its beginning; empty: none
    std::string reasons;                       ///< of the conclusion; empty: none
    bool interrupted = false;
    bool lowLight = false;
    bool blocked = false; ///< a stand, for a while
    bool crowded = false; ///< another machine stands near
};

/// Events from `opened` to `concluded`: *fit* unless something grounds. They follow the plan; whether the
/// rules let them pass is seen when they are folded.
[[nodiscard]] std::vector<round::Event> walked(const Craft& craft, const Wish& wish, Chance& chance);

} // namespace ambit::fleet
