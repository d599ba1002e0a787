// What stands against a conclusion, and how that is said.
#include "round/rules.hpp"

namespace ambit::round {

namespace {

using airframe::Airframe;
using airframe::Point;

std::string quoted(const std::string& name) {
    return "“" + name + "”";
}

std::string nameOf(const Airframe& airframe, const std::string& pointId) {
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

std::string toText(const Obstacle& obstacle, const Airframe& airframe) {
    switch (obstacle.kind) {
    case Obstacle::Kind::unsettled:
        return nameOf(airframe, obstacle.id) + " is not settled.";
    case Obstacle::Kind::owed: {
        const airframe::Opening* opening = airframe.opening(obstacle.id);
        if (opening == nullptr) return quoted(obstacle.id) + " is still open.";
        return quoted(opening->name) + " is still owed: " + opening->owed +
               (opening->owed.ends_with('.') ? "" : ".");
    }
    case Obstacle::Kind::grounding:
        return "The finding at " + nameOf(airframe, obstacle.id) + " grounds the aircraft.";
    case Obstacle::Kind::noBasis:
        return nameOf(airframe, obstacle.id) +
               " is not inspected, and nothing is stated that allows flight without it.";
    case Obstacle::Kind::lookAgain:
        return nameOf(airframe, obstacle.id) + " is to be looked at again: asked by " + obstacle.by + '.';
    case Obstacle::Kind::question:
        return obstacle.by + " asks " + quoted(obstacle.words) + " and has no answer yet.";
    case Obstacle::Kind::lastLook:
        return "Something was done after " + nameOf(airframe, obstacle.id) + ": the last look comes last.";
    }
    return {};
}

} // namespace ambit::round
