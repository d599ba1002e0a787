// What stands against a conclusion, and how that is said.
#include "round/rules.hpp"

namespace ambit::round {

namespace {

using airframe::Airframe;
using airframe::Point;

Sentence nameOf(const Airframe& airframe, const std::string& pointId) {
    const Point* point = airframe.point(pointId);
    return quoted(point == nullptr ? pointId : point->name);
}

/// Settled before, but somebody asks for it again; or never settled.
Obstacle unsettled(const State& state, const std::string& id, const PointState& point) {
    if (point.last() == nullptr || point.asked.empty()) return {Obstacle::Kind::unsettled, id, {}, {}};
    return {Obstacle::Kind::lookAgain, id, state.ask(point.asked.front())->what.who.name, {}};
}

} // namespace

std::vector<std::string> lookedTooEarly(const State& state, const Airframe& airframe) {
    std::vector<std::string> ids;
    for (const Point& described : airframe.points) {
        if (!described.lastLook)
            continue; // asked after each touch: looking all of them up takes longer than the rest
        const auto its = state.points.find(described.id);
        if (its == state.points.end() || !its->second.settled) continue;
        const auto& last = *its->second.last();
        if (last.looked() && last.seq < state.touchedSeq) ids.push_back(described.id);
    }
    return ids;
}

std::vector<Obstacle> against(const State& state, const Airframe& airframe, bool fit) {
    std::vector<Obstacle> obstacles;
    for (const Point& point : airframe.points) {
        const auto found = state.points.find(point.id);
        if (found == state.points.end()) continue;
        const auto outcome = found->second.outcome();
        if (!outcome) {
            obstacles.push_back(unsettled(state, point.id, found->second));
            continue;
        }
        const Settled& last = found->second.last()->what;
        if (fit && *outcome == Outcome::finding && last.severity == Severity::grounds)
            obstacles.push_back({Obstacle::Kind::grounding, point.id, {}, {}});
        if (fit && *outcome == Outcome::notInspected && last.basis.empty())
            obstacles.push_back({Obstacle::Kind::noBasis, point.id, {}, {}});
        if (const auto& trend = found->second.trend; fit && trend && trend->stands)
            obstacles.push_back({Obstacle::Kind::trend, point.id, {}, {}});
    }
    for (const airframe::Opening& opening : airframe.openings) {
        const auto found = state.openings.find(opening.id);
        if (found != state.openings.end() && found->second.owed)
            obstacles.push_back({Obstacle::Kind::owed, opening.id, {}, {}});
    }
    for (const std::string& id : lookedTooEarly(state, airframe))
        obstacles.push_back({Obstacle::Kind::lastLook, id, {}, {}});
    std::int64_t number = 0;
    for (const Ask& ask : state.asks) {
        ++number;
        if (ask.isOpen() && ask.what.kind == Statement::Kind::question)
            obstacles.push_back(
                {Obstacle::Kind::question, std::to_string(number), ask.what.who.name, ask.what.words});
    }
    return obstacles;
}

Sentence toText(const Obstacle& obstacle, const Airframe& airframe) {
    switch (obstacle.kind) {
    case Obstacle::Kind::unsettled:
        return say("%1 is not settled.", nameOf(airframe, obstacle.id));
    case Obstacle::Kind::owed: {
        const airframe::Opening* opening = airframe.opening(obstacle.id);
        if (opening == nullptr) return say("%1 is still open.", quoted(obstacle.id));
        return say("%1 is still owed: %2", quoted(opening->name), ended(opening->owed));
    }
    case Obstacle::Kind::grounding:
        return say("The finding at %1 grounds the aircraft.", nameOf(airframe, obstacle.id));
    case Obstacle::Kind::noBasis:
        return say("%1 is not inspected, and nothing is stated that allows flight without it.",
                   nameOf(airframe, obstacle.id));
    case Obstacle::Kind::lookAgain:
        return say("%1 is to be looked at again: asked by %2.", nameOf(airframe, obstacle.id), obstacle.by);
    case Obstacle::Kind::question:
        return say("%1 asks %2 and has no answer yet.", obstacle.by, quoted(obstacle.words));
    case Obstacle::Kind::trend:
        return say("%1 comes to its limit before the next flight ends, as its values go.",
                   nameOf(airframe, obstacle.id));
    case Obstacle::Kind::lastLook:
        return say("Something was done after %1: the last look comes last.", nameOf(airframe, obstacle.id));
    }
    return {};
}

} // namespace ambit::round
