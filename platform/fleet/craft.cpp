#include "fleet/craft.hpp"

#include <algorithm>

namespace ambit::fleet {

namespace {

Result<Walk> walkOf(const airframe::Airframe& airframe, const airframe::Walk& walk) {
    auto plan = walk::makePlan(airframe, walk.id, walk::startOf(airframe));
    if (!plan) return tl::unexpected(plan.error());
    if (!plan->unreachable.empty())
        return fail(ErrorCode::invalid, "A point of this walk can't be settled in any order.",
                    plan->unreachable.front().first, "Look at what “ambit check” says of the airframe.");
    Walk its{&walk, std::move(plan->steps), {}};
    for (const std::string& id : walk.points)
        its.points.push_back(airframe.point(id));
    return its;
}

double oftenAt(const airframe::Point& point) {
    constexpr double rareWhereItGrounds = 0.2; // what grounds is looked after before it comes to that
    return troubleAt(point).often * (point.finding == airframe::Severity::grounds ? rareWhereItGrounds : 1);
}

} // namespace

Result<Craft> craftOf(const airframe::Airframe& airframe) {
    Craft craft;
    craft.airframe = &airframe;
    const auto fewer = [](const airframe::Walk& a, const airframe::Walk& b) {
        return a.points.size() < b.points.size();
    };
    if (airframe.walks.empty()) return fail(ErrorCode::invalid, "This airframe has no walk.", airframe.id);
    auto daily = walkOf(airframe, *std::max_element(airframe.walks.begin(), airframe.walks.end(), fewer));
    if (!daily) return tl::unexpected(daily.error());
    auto turnaround =
        walkOf(airframe, *std::min_element(airframe.walks.begin(), airframe.walks.end(), fewer));
    if (!turnaround) return tl::unexpected(turnaround.error());
    craft.daily = std::move(*daily);
    craft.turnaround = std::move(*turnaround);
    for (const airframe::Point& point : airframe.points)
        craft.often[point.id] = oftenAt(point);
    for (const airframe::Setting& setting : airframe.settings)
        for (const airframe::SettingChange& change : setting.changes)
            for (const std::string& id : change.needs)
                craft.needed[id] = true;
    return craft;
}

} // namespace ambit::fleet
