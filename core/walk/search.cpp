// Nearest-next with a look at what a stand would leave undone. The airframe's rules are kept by construction:
// only what may be done now is ever done.
#include "walk/problem.hpp"

#include <algorithm>
#include <limits>
#include <map>
#include <set>

namespace ambit::walk {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr double strandedSeconds = 1e6; ///< leaving a state for good that points still need
constexpr std::size_t none = std::numeric_limits<std::size_t>::max();

bool contains(const Numbers& list, std::size_t number) {
    return std::find(list.begin(), list.end(), number) != list.end();
}

/// Cheapest ways from stand to stand, over others where a stand is reached from those only.
class Hops {
public:
    Hops(const Problem& problem, double climb) {
        const std::size_t stands = problem.blocked.size();
        costs.assign(stands + 1, std::vector<double>(stands, infinite));
        via.assign(stands + 1, Numbers(stands, none));
        for (std::size_t a = 0; a <= stands; ++a) {
            for (std::size_t b = 0; b < stands; ++b) {
                const auto& leg = problem.legs->leg(a, b);
                if (leg && !problem.blocked[b])
                    costs[a][b] = static_cast<double>(leg->ms) / 1000 + (leg->climb ? climb : 0);
            }
            if (a < stands) costs[a][a] = 0;
        }
        for (std::size_t middle = 0; middle < stands; ++middle)
            if (!problem.airframe->stands[middle].stepTo.empty()) over(middle);
    }

    [[nodiscard]] double cost(std::size_t from, std::size_t to) const { return costs[from][to]; }

    /// The stands on the way, `to` last.
    void addWay(Numbers& way, std::size_t from, std::size_t to) const {
        if (from == to) return;
        if (const std::size_t middle = via[from][to]; middle != none) {
            addWay(way, from, middle);
            addWay(way, middle, to);
        } else {
            way.push_back(to);
        }
    }

private:
    void over(std::size_t middle) {
        for (std::size_t a = 0; a < costs.size(); ++a) {
            for (std::size_t b = 0; b < costs[a].size(); ++b) {
                const double cost = costs[a][middle] + costs[middle][b];
                if (a != middle && b != middle && cost < costs[a][b] - 1e-9) {
                    costs[a][b] = cost;
                    via[a][b] = middle;
                }
            }
        }
    }

    std::vector<std::vector<double>> costs; ///< one row more: from the start
    std::vector<Numbers> via;
};

/// Changes of settings on the way to something, and where each is made.
struct Route {
    double cost = 0;
    std::vector<std::pair<std::size_t, std::size_t>> turns; ///< stand, turn
    std::size_t end = 0;
    Numbers states;
};

struct Candidate {
    double cost = infinite;
    std::size_t task = none; ///< the first in the list that can be settled there
    Route route;
};

class Search {
public:
    Search(const Problem& given, const Taste& its)
        : problem(given), taste(its), hops(given, its.climb),
          stand(given.stand), found{{}, 0, given.settled, given.states, given.sound} {
        for (const Task& task : problem.tasks)
            zoneFirst = zoneFirst || task.inZone;
        hurry = zoneFirst;
    }

    Found run() {
        wanted = wantedNow();
        settleHere();
        while (const auto next = best())
            follow(next->first, next->second);
        found.seconds += static_cast<double>(problem.legs->home(stand).ms) / 1000;
        return std::move(found);
    }

private:
    using Goal = std::pair<std::size_t, Numbers>; ///< a stand, and the settings there

    [[nodiscard]] bool ready(std::size_t task, const std::vector<bool>& settled) const {
        const Numbers& before = problem.tasks[task].before;
        return !settled[task] &&
               std::all_of(before.begin(), before.end(), [&](std::size_t b) { return settled[b]; });
    }

    /// Settles all that can be settled here; while in a hurry to a zone, only what leads there.
    void settleHere() {
        for (bool more = true; more;) {
            more = false;
            for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
                const Task& task = problem.tasks[i];
                if (!ready(i, found.settled) || !contains(task.stands, stand) ||
                    !problem.settingsHold(task, found.states) || (hurry && !wanted[i])) {
                    continue;
                }
                found.steps.emplace_back(Settle{task.point->id});
                found.seconds += task.point->seconds;
                found.settled[i] = found.sound[i] = true;
                hurry = hurry && !task.inZone;
                more = true;
            }
        }
    }

    void go(std::size_t to) {
        const auto& leg = problem.legs->leg(stand, to);
        found.steps.emplace_back(Go{problem.airframe->stands[to].id});
        found.seconds += static_cast<double>(leg->ms) / 1000;
        stand = to;
        settleHere();
    }

    void turn(const Turn& change) {
        const auto& setting = problem.airframe->settings[change.setting];
        found.steps.emplace_back(Set{setting.id, setting.states[change.to].id});
        found.seconds += change.seconds;
        found.states[change.setting] = change.to;
        settleHere();
    }

    [[nodiscard]] std::size_t undone() const {
        return static_cast<std::size_t>(std::count(found.settled.begin(), found.settled.end(), false));
    }

    /// Walks to the goal; stops where something could be settled on the way, to look round anew.
    void follow(const Goal& goal, const Candidate& candidate) {
        const std::size_t before = undone();
        const auto walk = [&](std::size_t to) {
            Numbers way;
            hops.addWay(way, stand, to);
            for (const std::size_t next : way) {
                go(next);
                if (undone() < before) return false;
            }
            return true;
        };
        for (const auto& [at, change] : candidate.route.turns) {
            if (!walk(at)) return;
            turn(problem.turns[change]);
            if (undone() < before) return;
        }
        if (walk(goal.first)) settleHere(); // one may be there already
    }

    std::optional<std::pair<Goal, Candidate>> best() {
        for (;;) {
            wanted = wantedNow();
            std::optional<std::pair<Goal, Candidate>> chosen;
            double least = infinite;
            for (auto& [goal, candidate] : candidates()) {
                const double score = scoreOf(goal, candidate);
                const bool same = chosen && score < least + 1e-6;
                if (score < least - 1e-6 || (same && candidate.task < chosen->second.task)) {
                    least = std::min(least, score);
                    chosen.emplace(goal, candidate);
                }
            }
            if (chosen || !zoneFirst) return chosen;
            zoneFirst = hurry = false; // nothing more can be done towards that zone
            settleHere();
        }
    }

    /// The cheapest way to each stand and settings in which something could be settled.
    std::map<Goal, Candidate> candidates() {
        std::map<Goal, Candidate> all;
        std::map<std::vector<Wanted>, std::vector<Route>> known;
        for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
            const Task& task = problem.tasks[i];
            if (!ready(i, found.settled) || !wanted[i]) continue;
            std::vector<Wanted> differing;
            for (const Wanted& one : task.when)
                if (found.states[one.setting] != one.state) differing.push_back(one);
            auto [routes, isNew] = known.try_emplace(differing);
            if (isNew) routes->second = routesTo(differing);
            for (const Route& route : routes->second) {
                for (const std::size_t at : task.stands) {
                    const double cost = route.cost + hops.cost(route.end, at);
                    if (cost == infinite) continue;
                    Candidate& candidate = all[{at, route.states}];
                    candidate.task = std::min(candidate.task, i);
                    if (cost < candidate.cost) {
                        candidate.cost = cost;
                        candidate.route = route;
                    }
                }
            }
        }
        return all;
    }

    /// Cheapest ways to bring those settings about, one for each stand where the last change can be made.
    [[nodiscard]] std::vector<Route> routesTo(const std::vector<Wanted>& goal) const {
        std::vector<Route> reached;
        std::map<Goal, double> least{{{stand, found.states}, 0}};
        std::vector<Route> open{{0, {}, stand, found.states}};
        while (!open.empty()) {
            const auto next = std::min_element(
                open.begin(), open.end(), [](const Route& a, const Route& b) { return a.cost < b.cost; });
            const Route route = std::move(*next);
            open.erase(next);
            if (route.cost > least[{route.end, route.states}]) continue;
            if (std::all_of(goal.begin(), goal.end(),
                            [&](const Wanted& one) { return route.states[one.setting] == one.state; })) {
                reached.push_back(route);
                continue;
            }
            for (std::size_t t = 0; t < problem.turns.size(); ++t)
                extend(route, t, goal, least, open);
        }
        return reached;
    }

    void extend(const Route& route, std::size_t t, const std::vector<Wanted>& goal,
                std::map<Goal, double>& least, std::vector<Route>& open) const {
        const Turn& change = problem.turns[t];
        const bool concerns = std::any_of(goal.begin(), goal.end(), [&](const Wanted& one) {
            return one.setting == change.setting && route.states[one.setting] != one.state;
        });
        const bool may = concerns && route.states[change.setting] == change.from &&
                         std::all_of(change.needs.begin(), change.needs.end(),
                                     [&](std::size_t n) { return found.sound[n]; });
        for (std::size_t i = 0; may && i < change.stands.size(); ++i) {
            const std::size_t at = change.stands[i];
            Route longer = route;
            longer.cost += hops.cost(route.end, at) + change.seconds + taste.turn;
            longer.states[change.setting] = change.to;
            longer.turns.emplace_back(at, t);
            longer.end = at;
            const auto known = least.try_emplace({at, longer.states}, infinite).first;
            if (longer.cost >= known->second) continue;
            known->second = longer.cost;
            open.push_back(std::move(longer));
        }
    }

    [[nodiscard]] double scoreOf(const Goal& goal, const Candidate& candidate) const {
        return candidate.cost + taste.habit * static_cast<double>(candidate.task) +
               taste.unripe * static_cast<double>(unripeAt(goal)) +
               (strands(goal.second) ? strandedSeconds : 0);
    }

    /// How many points of that stand and settings would have to be left for another visit.
    [[nodiscard]] std::size_t unripeAt(const Goal& goal) const {
        if (taste.unripe == 0) return 0;
        Numbers left;
        for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
            const Task& task = problem.tasks[i];
            if (!found.settled[i] && contains(task.stands, goal.first) &&
                problem.settingsHold(task, goal.second))
                left.push_back(i);
        }
        std::vector<bool> settled = found.settled;
        for (bool more = true; more;) {
            more = false;
            for (const std::size_t i : left) {
                if (!ready(i, settled)) continue;
                settled[i] = more = true;
            }
        }
        return static_cast<std::size_t>(
            std::count_if(left.begin(), left.end(), [&](std::size_t i) { return !settled[i]; }));
    }

    /// Would that leave a state that can't be had again while points still need it?
    [[nodiscard]] bool strands(const Numbers& states) const {
        for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
            if (found.settled[i]) continue;
            for (const Wanted& one : problem.tasks[i].when) {
                if (found.states[one.setting] == one.state && states[one.setting] != one.state &&
                    !canTurn(one.setting, states[one.setting], one.state)) {
                    return true;
                }
            }
        }
        return false;
    }

    [[nodiscard]] bool canTurn(std::size_t setting, std::size_t from, std::size_t to) const {
        std::set<std::size_t> reached{from};
        for (bool more = true; more;) {
            more = false;
            for (const Turn& change : problem.turns) {
                if (change.setting == setting && !change.stands.empty() && reached.contains(change.from))
                    more = reached.insert(change.to).second || more;
            }
        }
        return reached.contains(to);
    }

    // --- a zone wanted first
    // -----------------------------------------------------------------------------------

    /// What may be aimed at now: all, or what leads to the zone, in the settings as they are if possible.
    [[nodiscard]] std::vector<bool> wantedNow() const {
        const std::size_t count = problem.tasks.size();
        if (!zoneFirst) return std::vector<bool>(count, true);
        std::vector<bool> asIs(count, false);
        std::vector<bool> all(count, false);
        bool any = false;
        for (std::size_t i = 0; i < count; ++i) {
            if (found.settled[i] || !problem.tasks[i].inZone) continue;
            addBefore(all, i, true);
            std::vector<bool> its(count, false);
            addBefore(its, i, false);
            if (!holdAll(its)) continue;
            any = true;
            for (std::size_t j = 0; j < count; ++j)
                asIs[j] = asIs[j] || its[j];
        }
        return any ? asIs : all;
    }

    [[nodiscard]] bool holdAll(const std::vector<bool>& chosen) const {
        for (std::size_t i = 0; i < chosen.size(); ++i)
            if (chosen[i] && !problem.settingsHold(problem.tasks[i], found.states)) return false;
        return true;
    }

    /// The task and all unsettled that comes before it; what its settings need, too, if they are to be
    /// changed.
    void addBefore(std::vector<bool>& chosen, std::size_t task, bool withNeeds) const {
        if (chosen[task] || found.settled[task]) return;
        chosen[task] = true;
        for (const std::size_t earlier : problem.tasks[task].before)
            addBefore(chosen, earlier, withNeeds);
        for (const Wanted& one : problem.tasks[task].when) {
            if (!withNeeds || found.states[one.setting] == one.state) continue;
            for (const Turn& change : problem.turns) {
                for (std::size_t i = 0; change.setting == one.setting && i < change.needs.size(); ++i)
                    addBefore(chosen, change.needs[i], withNeeds);
            }
        }
    }

    const Problem& problem;
    Taste taste;
    Hops hops;
    std::size_t stand;
    Found found;
    bool zoneFirst = false;
    bool hurry = false; ///< on the way to that zone: nothing else is settled
    std::vector<bool> wanted;
};

} // namespace

Found nearestNext(const Problem& problem, const Taste& taste) {
    return Search(problem, taste).run();
}

} // namespace ambit::walk
