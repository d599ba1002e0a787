#include "model/scene.hpp"

#include <algorithm>
#include <cstdint>
#include <tuple>

namespace ambit::view {

const char* toText(Look look) {
    switch (look) {
    case Look::none:
        return "none";
    case Look::todo:
        return "todo";
    case Look::next:
        return "next";
    case Look::sound:
        return "sound";
    case Look::finding:
        return "finding";
    case Look::notInspected:
        return "notInspected";
    }
    return "";
}

Look lookOf(const round::PointState& point) {
    const auto outcome = point.outcome();
    if (!outcome) return Look::todo;
    switch (*outcome) {
    case round::Outcome::sound:
        return Look::sound;
    case round::Outcome::finding:
        return Look::finding;
    case round::Outcome::notInspected:
        return Look::notInspected;
    }
    return Look::todo;
}

namespace {

bool isHere(const airframe::Point& point, const round::PointState& now, const round::State& state) {
    if (std::find(point.stands.begin(), point.stands.end(), *state.stand) == point.stands.end()) return false;
    if (!airframe::holds(point.when, state.settings)) return false;
    return !now.settled || now.last()->stand == *state.stand;
}

std::size_t planned(const round::State& state, const std::string& point) {
    const auto found = std::find_if(state.plan.begin(), state.plan.end(), [&](const walk::Step& step) {
        const auto* settle = std::get_if<walk::Settle>(&step);
        return settle != nullptr && settle->point == point;
    });
    return static_cast<std::size_t>(found - state.plan.begin());
}

} // namespace

std::vector<const airframe::Point*> pointsHere(const round::State& state,
                                               const airframe::Airframe& airframe) {
    if (!state.stand) return {};
    struct Candidate {
        const airframe::Point* point;
        std::int64_t settledAt =
            INT64_MAX; // what is done comes first: a plan made anew doesn't name it any more
        std::size_t planned = 0;
    };
    std::vector<Candidate> candidates;
    for (const auto& point : airframe.points) {
        const auto now = state.points.find(point.id);
        if (now == state.points.end() || !isHere(point, now->second, state)) continue;
        Candidate candidate{&point};
        if (now->second.settled)
            candidate.settledAt = now->second.last()->at.ms;
        else
            candidate.planned = planned(state, point.id);
        candidates.push_back(candidate);
    }
    std::stable_sort(candidates.begin(), candidates.end(), [](const Candidate& a, const Candidate& b) {
        return std::tie(a.settledAt, a.planned) < std::tie(b.settledAt, b.planned);
    });
    std::vector<const airframe::Point*> here;
    here.reserve(candidates.size());
    for (const Candidate& candidate : candidates)
        here.push_back(candidate.point);
    return here;
}

} // namespace ambit::view
