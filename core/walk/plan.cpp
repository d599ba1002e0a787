#include "walk/problem.hpp"

#include <algorithm>
#include <array>

namespace ambit::walk {

namespace {

/// Different tastes find different plans; the shortest of them is taken. Every figure is seconds.
std::vector<Taste> tastes() {
    std::vector<Taste> all;
    for (const double turn : {60.0, 600.0})
        for (const double climb : {0.0, 30.0})
            for (const double unripe : {5.0, 0.0, 20.0})
                for (const double habit : {0.5, 0.0})
                    all.push_back({turn, climb, unripe, habit});
    return all;
}

std::size_t settledIn(const Found& found) {
    return static_cast<std::size_t>(std::count(found.settled.begin(), found.settled.end(), true));
}

/// By stand: can one get there from where the walk stands?
std::vector<bool> reachable(const Problem& problem) {
    const std::size_t stands = problem.blocked.size();
    std::vector<bool> reached(stands + 1, false);
    reached[problem.stand] = true;
    for (bool more = true; more;) {
        more = false;
        for (std::size_t a = 0; a <= stands; ++a) {
            for (std::size_t b = 0; reached[a] && b < stands; ++b) {
                if (reached[b] || problem.blocked[b] || !problem.legs->leg(a, b)) continue;
                reached[b] = more = true;
            }
        }
    }
    return reached;
}

std::string whySettingIsOut(const Problem& problem, const Found& found, const Wanted& wanted) {
    const auto& setting = problem.airframe->settings[wanted.setting];
    const std::string out = setting.name + " can't be brought to “" + setting.states[wanted.state].name + "”";
    for (const Turn& change : problem.turns) {
        if (change.setting != wanted.setting) continue;
        for (const std::size_t need : change.needs)
            if (!found.sound[need])
                return out + ": “" + problem.tasks[need].point->name + "” is not settled sound.";
    }
    return out + " from here.";
}

std::string whyUnreachable(const Problem& problem, const Found& found, const Task& task) {
    for (const std::size_t earlier : task.before) {
        if (!found.settled[earlier])
            return "It comes after “" + problem.tasks[earlier].point->name + "”, which can't be settled.";
    }
    if (task.stands.empty()) return "Every stand it is settled from is blocked.";
    const auto reached = reachable(problem);
    if (std::none_of(task.stands.begin(), task.stands.end(), [&](std::size_t s) { return reached[s]; }))
        return "There is no way to a stand it is settled from.";
    for (const Wanted& wanted : task.when)
        if (found.states[wanted.setting] != wanted.state) return whySettingIsOut(problem, found, wanted);
    return "No order was found that comes to it.";
}

} // namespace

Result<Plan> makePlan(const airframe::Airframe& airframe, const std::string& walkId, const Situation& now) {
    const auto problem = problemOf(airframe, walkId, now);
    if (!problem) return tl::unexpected(problem.error());
    std::optional<Found> best;
    for (const Taste& taste : tastes()) {
        Found found = nearestNext(*problem, taste);
        const bool more = best && settledIn(found) > settledIn(*best);
        const bool fewer = best && settledIn(found) < settledIn(*best);
        if (!best || more || (!fewer && found.seconds < best->seconds - 1e-6)) best = std::move(found);
    }
    auto cost = walkThrough(airframe, walkId, now, best->steps);
    if (!cost) return tl::unexpected(cost.error());
    Plan plan{std::move(best->steps), *cost, {}, 0, false, 0};
    for (std::size_t i = 0; i < problem->tasks.size(); ++i) {
        const Task& task = problem->tasks[i];
        if (!best->settled[i])
            plan.unreachable.emplace_back(task.point->id, whyUnreachable(*problem, *best, task));
    }
    return plan;
}

// Still to come: until the solver is there these answer with the plan that is.
Result<Plan> listedPlan(const airframe::Airframe& airframe, const std::string& walkId, const Situation& now) {
    return makePlan(airframe, walkId, now);
}
Result<Plan> keepingTo(const std::vector<Step>&, const airframe::Airframe& airframe,
                       const std::string& walkId, const Situation& now) {
    return makePlan(airframe, walkId, now);
}
Result<std::vector<Constraint>> dearest(const airframe::Airframe&, const std::string&, std::size_t) {
    return std::vector<Constraint>{};
}

} // namespace ambit::walk
