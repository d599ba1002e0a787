#include "round/portion.hpp"

#include "round/rules.hpp"

#include <algorithm>

namespace ambit::round {

std::vector<std::string> nextPortion(const State& state, const airframe::Airframe& airframe, int most) {
    PortionBegun portion;
    const auto size = static_cast<std::size_t>(std::clamp(most, 1, static_cast<int>(mostInPortion)));
    if (state.phase != Phase::walking) return {};
    for (const walk::Step& step : remaining(state, airframe)) {
        const auto* settle = std::get_if<walk::Settle>(&step);
        if (settle == nullptr || portion.points.size() == size) break;
        const bool isMeasured = airframe.point(settle->point)->limit.has_value();
        if (isMeasured && !portion.points.empty()) break;
        portion.points.push_back(settle->point);
        if (!allowed(state, airframe, portion)) {
            portion.points.pop_back();
            break;
        }
        if (isMeasured) break;
    }
    return std::move(portion.points);
}

std::vector<std::string> leftOfPortion(const State& state) {
    std::vector<std::string> left;
    if (!state.portion || state.portion->running) return left;
    std::copy_if(state.portion->points.begin(), state.portion->points.end(), std::back_inserter(left),
                 [&](const std::string& id) {
                     const auto point = state.points.find(id); // one for the night may be gone by now
                     return point != state.points.end() && !point->second.settled;
                 });
    return left;
}

} // namespace ambit::round
