#include "round/order.hpp"

#include <algorithm>

namespace ambit::round {

namespace {

using airframe::Airframe;

constexpr double habitWorth = 1.05;

std::ptrdiff_t settlings(const std::vector<walk::Step>& steps) {
    return std::count_if(steps.begin(), steps.end(),
                         [](const walk::Step& step) { return std::holds_alternative<walk::Settle>(step); });
}

} // namespace

Result<std::vector<walk::Step>> firstPlan(const Airframe& airframe, const std::string& walkId) {
    auto plan = walk::makePlan(airframe, walkId, walk::startOf(airframe));
    if (!plan) return tl::unexpected(plan.error());
    return std::move(plan->steps);
}

Result<Planned> towardsZone(const State& state, const Airframe& airframe, const std::string& zone) {
    const airframe::Zone* described = airframe.zone(zone);
    if (described == nullptr) return fail(ErrorCode::notFound, "The airframe has no such zone.", zone);
    const bool left = std::any_of(state.points.begin(), state.points.end(), [&](const auto& one) {
        return !one.second.settled && airframe.point(one.first)->zone == zone;
    });
    if (!left)
        return fail(ErrorCode::refused, "Nothing is left to settle at “" + described->name + "”.", zone);
    walk::Situation now = situation(state, airframe);
    now.firstZone = zone;
    auto plan = walk::makePlan(airframe, state.opened.walk, now);
    if (!plan) return tl::unexpected(plan.error());
    return Planned{"“" + described->name + "” is wanted next.", std::move(plan->steps)};
}

Result<std::optional<Planned>> reordered(const State& state, const Airframe& airframe,
                                         const std::string& why) {
    const walk::Situation now = situation(state, airframe);
    auto plan = walk::makePlan(airframe, state.opened.walk, now);
    if (!plan) return tl::unexpected(plan.error());
    const auto left = remaining(state, airframe);
    const auto cost = walk::walkThrough(airframe, state.opened.walk, now, left);
    const bool fits =
        cost && settlings(left) >= settlings(plan->steps) && cost->seconds <= plan->cost.seconds * habitWorth;
    if (fits || plan->steps == left) return std::optional<Planned>();
    return Planned{why, std::move(plan->steps)};
}

} // namespace ambit::round
