// One walk as the planner works on it: everything by number, so that looking up costs nothing.
#pragma once

#include "walk/legs.hpp"
#include "walk/plan.hpp"

namespace ambit::walk {

/// Lists of numbers: points as the walk lists them, stands, settings and states as the airframe lists them.
using Numbers = std::vector<std::size_t>;

/// A setting and one of its states.
struct Wanted {
    std::size_t setting = 0;
    std::size_t state = 0;
    friend auto operator<=>(const Wanted&, const Wanted&) = default;
};

struct Task { ///< a point
    const airframe::Point* point = nullptr;
    Numbers stands; ///< those that aren't blocked
    std::vector<Wanted> when;
    Numbers before;      ///< in this walk
    bool inZone = false; ///< in the zone that is wanted first
};

struct Turn { ///< a change of a setting
    std::size_t setting = 0;
    std::size_t from = 0;
    std::size_t to = 0;
    Numbers stands; ///< those that aren't blocked
    double seconds = 0;
    Numbers needs; ///< in this walk
};

struct Problem {
    const airframe::Airframe* airframe = nullptr;
    std::shared_ptr<const Legs> legs;
    std::vector<Task> tasks;
    std::vector<Turn> turns;
    std::vector<bool> blocked; ///< by stand
    // Where the walk stands
    std::size_t stand = 0; ///< Legs::start() if none
    Numbers states;        ///< by setting
    std::vector<bool> settled;
    std::vector<bool> sound;

    [[nodiscard]] bool settingsHold(const Task& task, const Numbers& now) const;
};

/// Error notFound: no such walk, stand, zone, setting or state.
[[nodiscard]] Result<Problem> problemOf(const airframe::Airframe& airframe, const std::string& walkId,
                                        const Situation& now);

/// In which order one goes about it greedily: what weighs beside seconds when the next stand is chosen.
struct Taste {
    double turn = 0;   ///< seconds that a change of setting seems to cost more
    double climb = 0;  ///< seconds that a step up seems to cost more
    double unripe = 0; ///< seconds for each point at a stand that would have to be left for later
    double habit = 0;  ///< seconds for each place further down the list
};

struct Found {
    std::vector<Step> steps;
    double seconds = 0;        ///< to the walk's end
    std::vector<bool> settled; ///< what is settled when nothing more can be
    Numbers states;
    std::vector<bool> sound;
};

/// Goes on to what is nearest to one's taste until nothing more can be settled. Ends always: every move
/// settles a point.
[[nodiscard]] Found nearestNext(const Problem& problem, const Taste& taste);

} // namespace ambit::walk
