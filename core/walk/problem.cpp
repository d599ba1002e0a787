#include "walk/problem.hpp"

#include <algorithm>
#include <map>

namespace ambit::walk {

namespace {

using airframe::Airframe;

template<class List> std::optional<std::size_t> numberOf(const List& list, const std::string& id) {
    const auto found = std::find_if(list.begin(), list.end(), [&](const auto& one) { return one.id == id; });
    if (found == list.end()) return std::nullopt;
    return static_cast<std::size_t>(found - list.begin());
}

tl::unexpected<Error> unknown(const char* kind, const std::string& id) {
    return fail(ErrorCode::notFound, std::string("The airframe has no such ") + kind + ".", id);
}

/// Numbers of those ids that have one; the others don't bind in this walk.
Numbers numbersOf(const std::vector<std::string>& ids, const std::map<std::string, std::size_t>& numbers) {
    Numbers found;
    for (const std::string& id : ids)
        if (const auto at = numbers.find(id); at != numbers.end()) found.push_back(at->second);
    return found;
}

/// A setting or state that the airframe doesn't have is passed over: the reader refuses such a file.
std::vector<Wanted> wantedOf(const Airframe& airframe, const airframe::Settings& when) {
    std::vector<Wanted> wanted;
    for (const auto& [id, stateId] : when) {
        const auto setting = numberOf(airframe.settings, id);
        const auto state =
            setting ? numberOf(airframe.settings[*setting].states, stateId) : std::optional<std::size_t>();
        if (state) wanted.push_back({*setting, *state});
    }
    return wanted;
}

void addTurns(Problem& problem, const std::map<std::string, std::size_t>& points,
              const std::map<std::string, std::size_t>& stands) {
    const auto& settings = problem.airframe->settings;
    for (std::size_t s = 0; s < settings.size(); ++s) {
        for (const auto& change : settings[s].changes) {
            const auto from = numberOf(settings[s].states, change.from);
            const auto to = numberOf(settings[s].states, change.to);
            if (!from || !to) continue;
            problem.turns.push_back({s, *from, *to, numbersOf(change.stands, stands), change.seconds,
                                     numbersOf(change.needs, points)});
        }
    }
}

Result<void> setStart(Problem& problem, const Situation& now) {
    const Airframe& airframe = *problem.airframe;
    problem.stand = problem.legs->start();
    if (now.stand) {
        const auto stand = numberOf(airframe.stands, *now.stand);
        if (!stand) return unknown("stand", *now.stand);
        problem.stand = *stand;
    }
    if (now.firstZone && airframe.zone(*now.firstZone) == nullptr) return unknown("zone", *now.firstZone);
    for (const auto& setting : airframe.settings) {
        const auto told = now.settings.find(setting.id);
        const std::string& id = told == now.settings.end() ? setting.initial : told->second;
        const auto state = numberOf(setting.states, id);
        if (!state) return unknown("state of a setting", id);
        problem.states.push_back(*state);
    }
    for (const Task& task : problem.tasks) {
        problem.settled.push_back(now.settled.contains(task.point->id));
        problem.sound.push_back(now.soundPoints.contains(task.point->id));
    }
    return {};
}

} // namespace

bool Problem::settingsHold(const Task& task, const Numbers& now) const {
    return std::all_of(task.when.begin(), task.when.end(),
                       [&](const Wanted& wanted) { return now[wanted.setting] == wanted.state; });
}

Result<Problem> problemOf(const Airframe& airframe, const std::string& walkId, const Situation& now) {
    const airframe::Walk* walk = airframe.walk(walkId);
    if (walk == nullptr) return unknown("walk", walkId);
    Problem problem;
    problem.airframe = &airframe;
    problem.legs = Legs::of(airframe, *walk, now.marked);

    std::map<std::string, std::size_t> stands;
    for (std::size_t i = 0; i < airframe.stands.size(); ++i) {
        const bool blocked = now.blocked.contains(airframe.stands[i].id);
        problem.blocked.push_back(blocked);
        if (!blocked) stands[airframe.stands[i].id] = i;
    }
    std::map<std::string, std::size_t> points;
    for (const std::string& id : walk->points) {
        const airframe::Point* point = airframe.point(id);
        if (point == nullptr) return unknown("point", id);
        points[id] = problem.tasks.size();
        problem.tasks.push_back({point,
                                 numbersOf(point->stands, stands),
                                 wantedOf(airframe, point->when),
                                 {},
                                 now.firstZone && point->zone == *now.firstZone});
    }
    for (Task& task : problem.tasks)
        task.before = numbersOf(airframe.before(*task.point), points);
    addTurns(problem, points, stands);
    if (auto set = setStart(problem, now); !set) return tl::unexpected(set.error());
    return problem;
}

} // namespace ambit::walk
