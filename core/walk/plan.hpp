// The order of a walk: where to stand, what to set, what to settle, one after the other. Knows no storage,
// screen or clock.
#pragma once

#include "airframe/airframe.hpp"
#include "base/result.hpp"

#include <cstdint>
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
/// costs say; the walk of each leg is rounded up to the millisecond, so that equal plans are equal on every
/// machine.
struct Cost {
    double metres = 0;
    double seconds = 0;
    int climbs = 0;    ///< times one steps up from the ground
    int turns = 0;     ///< changes of a setting
    double weighs = 0; ///< seconds, and what the airframe adds for each climb and turn as a risk: the least
                       ///< of this is the best plan
};

struct Plan {
    std::vector<Step> steps;
    Cost cost;
    /// Points of the walk that no order can settle from here, with the reason in words; empty for a sound
    /// airframe.
    std::vector<std::pair<std::string, std::string>> unreachable;

    // The proof: no plan weighs less than `bound`.
    double bound = 0;         ///< as cost.weighs
    bool proven = false;      ///< bound and cost.weighs are the same: there is no better plan
    std::uint64_t states = 0; ///< looked at for it
};

/// Where the walk stands when the plan is made.
struct Situation {
    std::optional<std::string> stand;      ///< none: at the walk's start
    airframe::Settings settings;           ///< every setting with its state
    std::set<std::string> settled;         ///< points that need no more settling (of the whole airframe)
    std::set<std::string> soundPoints;     ///< those settled sound: a change's `needs` look here
    std::optional<std::string> firstZone;  ///< the person wants this zone next
    bool night = false;                    ///< points for the night belong to the walk
    bool lightGoes = false;                ///< climb while one can see: raised stands come first
    std::set<std::string> blocked;         ///< stands that can't be used
    std::vector<airframe::Outline> marked; ///< what else stands in the way: a wall, a neighbouring machine
};

/// At the start of a walk: nothing settled, settings as the airframe says.
[[nodiscard]] Situation startOf(const airframe::Airframe& airframe);

/// The situation once these steps are done, whatever is settled sound.
void follow(Situation& now, const std::vector<Step>& steps);

/// The best plan of all points of the walk not settled yet, or the best found where the proof would take too
/// long; among equals the one nearest the listed order. Deterministic: same input, same plan. A point set
/// waits for every unsettled `before` point of the same walk; a change of setting for its `needs` (those of
/// this walk); the last leg leads to the walk's end and is costed but not a step. Error notFound: no such
/// walk, stand or zone; invalid: an area marked that is no simple polygon.
[[nodiscard]] Result<Plan> makePlan(const airframe::Airframe& airframe, const std::string& walkId,
                                    const Situation& now);

/// The walk as the airframe lists it, area by area, for comparison: down the list from where one is, what may
/// be settled as things are set, again from the top for what had to wait, and a setting changed when nothing
/// else is left; each point from the nearest of its stands. Same errors as makePlan; proves nothing.
[[nodiscard]] Result<Plan> listedPlan(const airframe::Airframe& airframe, const std::string& walkId,
                                      const Situation& now);

/// A plan of what is left that departs as little from the known order as is possible at no more than 5 %
/// above the best: a pilot's habit is worth that. The known steps themselves where they still do. Departing
/// is counted in pairs of points that change their order. What is wanted first comes first, the rest keeps to
/// the known order after it. Same errors as makePlan.
[[nodiscard]] Result<Plan> keepingTo(const std::vector<Step>& known, const airframe::Airframe& airframe,
                                     const std::string& walkId, const Situation& now);

/// What one rule of the airframe costs: the best plan with it against the best without it.
struct Constraint {
    std::string words;  ///< "“Tail rotor” comes after “Tie-down off”"
    double seconds = 0; ///< as Cost.weighs
};

/// The rules that cost most, dearest first, at most `most`; those that cost nothing are left out. For who
/// writes an airframe.
[[nodiscard]] Result<std::vector<Constraint>> dearest(const airframe::Airframe& airframe,
                                                      const std::string& walkId, std::size_t most = 3);

/// What the steps cost, walked from `now`; the same figures as makePlan gives. Error refused with the step's
/// number where a step breaks the airframe's rules (wrong stand, setting, or something before it unsettled):
/// the judge of every plan.
[[nodiscard]] Result<Cost> walkThrough(const airframe::Airframe& airframe, const std::string& walkId,
                                       const Situation& now, const std::vector<Step>& steps);

} // namespace ambit::walk
