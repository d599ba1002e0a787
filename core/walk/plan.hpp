// The order of a walk: where to stand, what to set, what to settle, one after the other. Knows no storage,
// screen or clock.
#pragma once

#include "airframe/airframe.hpp"
#include "base/result.hpp"

#include <optional>
#include <set>
#include <string>
#include <variant>
#include <vector>

namespace ambit::walk {

using airframe::Place;

struct Go {
    std::string stand;
    friend bool operator==(const Go&, const Go&) = default;
};
struct Set {
    std::string setting;
    std::string to;
    friend bool operator==(const Set&, const Set&) = default;
};
struct Settle {
    std::string point;
    friend bool operator==(const Settle&, const Settle&) = default;
};
using Step = std::variant<Go, Set, Settle>;

/// What a plan costs. `seconds` counts walking, climbing, kneeling, setting and settling, as the airframe's
/// costs say.
struct Cost {
    double metres = 0;
    double seconds = 0;
    int climbs = 0; ///< times one steps up from the ground
    int turns = 0;  ///< changes of a setting
};

struct Plan {
    std::vector<Step> steps;
    Cost cost;
    /// Points of the walk that no order can settle from here, with the reason in words; empty for a sound
    /// airframe.
    std::vector<std::pair<std::string, std::string>> unreachable;
};

/// Where the walk stands when the plan is made.
struct Situation {
    std::optional<std::string> stand;     ///< none: at the walk's start
    airframe::Settings settings;          ///< every setting with its state
    std::set<std::string> settled;        ///< points that need no more settling (of the whole airframe)
    std::set<std::string> soundPoints;    ///< those settled sound: a change's `needs` look here
    std::optional<std::string> firstZone; ///< the person wants this zone next
    std::set<std::string> blocked;        ///< stands that can't be used
};

/// At the start of a walk: nothing settled, settings as the airframe says.
[[nodiscard]] Situation startOf(const airframe::Airframe& airframe);

/// A plan of all points of the walk not settled yet. Deterministic: same input, same plan. A point set waits
/// for every unsettled `before` point of the same walk; a change of setting for its `needs` (those of this
/// walk); the last leg leads to the walk's end and is costed but not a step. Error notFound: no such walk,
/// stand or zone.
[[nodiscard]] Result<Plan> makePlan(const airframe::Airframe& airframe, const std::string& walkId,
                                    const Situation& now);

/// What the steps cost, walked from `now`; the same figures as makePlan gives. Error refused with the step's
/// number where a step breaks the airframe's rules (wrong stand, setting, or something before it unsettled):
/// the judge of every plan.
[[nodiscard]] Result<Cost> walkThrough(const airframe::Airframe& airframe, const std::string& walkId,
                                       const Situation& now, const std::vector<Step>& steps);

} // namespace ambit::walk
