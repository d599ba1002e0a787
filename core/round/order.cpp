#include "round/order.hpp"

#include "round/moved.hpp"
#include "round/moved_words.hpp"

#include <algorithm>

namespace ambit::round {

namespace {

using airframe::Airframe;

std::ptrdiff_t settlings(const std::vector<walk::Step>& steps) {
    return std::count_if(steps.begin(), steps.end(),
                         [](const walk::Step& step) { return std::holds_alternative<walk::Settle>(step); });
}

/// Does the plan settle less than is left?
bool leavesOut(const State& state, const Airframe& airframe) {
    const auto unsettled = static_cast<std::ptrdiff_t>(state.points.size()) - state.settledCount();
    return settlings(remaining(state, airframe)) < unsettled;
}

/// In a pause a point can be asked for again; what is left is ordered when the round goes on.
Sentence askedMeanwhile(const State& before, const Airframe& airframe) {
    for (auto ask = before.asks.rbegin(); ask != before.asks.rend(); ++ask)
        if (ask->isOpen() && ask->what.kind == Statement::Kind::lookAgain)
            return because(before, airframe, Asked{0, ask->what, {}}, true);
    return {};
}

/// Goes where the plan says, or there is none left to depart from.
bool isInTurn(const State& state, const Airframe& airframe, const StandReached& reached) {
    const auto next = nextStep(state, airframe);
    return !next || *next == walk::Step{walk::Go{reached.stand}};
}

} // namespace

Result<std::vector<walk::Step>> firstPlan(const Airframe& airframe, const std::string& walkId) {
    auto plan = walk::makePlan(airframe, walkId, walk::startOf(airframe));
    if (!plan) return tl::unexpected(plan.error());
    return std::move(plan->steps);
}

Result<Planned> towardsZone(const State& state, const Airframe& airframe, const std::string& zone) {
    const airframe::Zone* described = airframe.zone(zone);
    if (described == nullptr) return fail(ErrorCode::notFound, say("The airframe has no such zone."), zone);
    const bool left = std::any_of(state.points.begin(), state.points.end(), [&](const auto& one) {
        return !one.second.settled && airframe.point(one.first)->zone == zone;
    });
    if (!left)
        return fail(ErrorCode::refused, say("Nothing is left to settle at %1.", quoted(described->name)),
                    zone);
    walk::Situation now = situation(state, airframe);
    now.firstZone = zone;
    const auto known = remaining(state, airframe);
    auto plan = walk::keepingTo(known, airframe, state.opened.walk, now);
    if (!plan) return tl::unexpected(plan.error());
    const Sentence cause = say(moved::wantedNext, quoted(described->name));
    return Planned{whatMoved(cause, known, plan->steps, state, airframe), std::move(plan->steps)};
}

Result<std::optional<Planned>> reordered(const State& state, const Airframe& airframe,
                                         const Sentence& cause) {
    const auto known = remaining(state, airframe);
    auto plan = walk::keepingTo(known, airframe, state.opened.walk, situation(state, airframe));
    if (!plan) return tl::unexpected(plan.error());
    if (plan->steps == known) return std::optional<Planned>();
    return Planned{whatMoved(cause, known, plan->steps, state, airframe), std::move(plan->steps)};
}

Sentence causeOf(const State& before, const Airframe& airframe, const What& what, bool resumed) {
    if (std::holds_alternative<Resumed>(what)) return askedMeanwhile(before, airframe);
    if (before.phase == Phase::paused) return {}; // nobody goes anywhere: ordered when the round goes on
    const auto* asked = std::get_if<Asked>(&what);
    const auto point = asked == nullptr ? before.points.end() : before.points.find(asked->statement.point);
    if (point != before.points.end() && !point->second.settled) return {}; // still to come anyhow
    const auto* reached = std::get_if<StandReached>(&what);
    if (reached != nullptr && isInTurn(before, airframe, *reached)) return {};
    // What waited for a point that can't be reached may go on once that is said.
    const auto* settled = std::get_if<Settled>(&what);
    if (settled != nullptr && (settled->outcome != Outcome::notInspected || !leavesOut(before, airframe)))
        return {};
    return because(before, airframe, what, resumed);
}

bool holdsStill(const State& state, const Airframe& airframe) {
    if (leavesOut(state, airframe)) return false;
    const auto left = remaining(state, airframe);
    return walk::walkThrough(airframe, state.opened.walk, situation(state, airframe), left).has_value();
}

} // namespace ambit::round
