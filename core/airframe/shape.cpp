#include "airframe/shape.hpp"

#include "airframe/grid.hpp"

#include <algorithm>

namespace ambit::airframe {

namespace {

/// Does the edge b–c go back over the edge a–b?
bool foldsBack(Spot a, Spot b, Spot c) {
    return turn(a, b, c) == 0 && (a.x - b.x) * (c.x - b.x) + (a.y - b.y) * (c.y - b.y) > 0;
}

} // namespace

std::optional<Sentence> faultOf(const Outline& outline) {
    std::vector<Spot> spots;
    std::transform(outline.begin(), outline.end(), std::back_inserter(spots), spotAt);
    const std::size_t n = spots.size();
    if (n < 3) return say("The outline has fewer than three corners.");
    if (spots.front() == spots.back()) return say("The outline's last corner is its first again.");
    const auto at = [&](std::size_t i) { return spots[i % n]; };
    for (std::size_t i = 0; i < n; ++i) {
        if (at(i) == at(i + 1)) return say("Corner %1 of the outline is given twice in a row.", figure(i));
    }
    for (std::size_t i = 0; i < n; ++i) {
        if (foldsBack(at(i), at(i + 1), at(i + 2))) {
            return say("The outline folds back on itself at corner %1.", figure((i + 1) % n));
        }
    }
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t k = i + 2; k < n; ++k) {
            const bool neighbours = i == 0 && k == n - 1;
            if (!neighbours && doMeet(at(i), at(i + 1), at(k), at(k + 1))) {
                return say(
                    "The outline crosses itself: the edge from corner %1 meets the edge from corner %2.",
                    figure(i), figure(k));
            }
        }
    }
    return std::nullopt;
}

bool isInside(const Place& place, const Outline& outline) {
    const Spot spot = spotAt(place);
    bool inside = false;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        Spot low = spotAt(outline[i]);
        Spot high = spotAt(outline[(i + 1) % outline.size()]);
        if (isBetween(spot, low, high)) return false;
        if (low.y > high.y) std::swap(low, high);
        // A ray to the right crosses the edge if the place is left of it; half-open, so that a corner counts
        // once.
        if (low.y <= spot.y && spot.y < high.y && turn(low, high, spot) > 0) inside = !inside;
    }
    return inside;
}

} // namespace ambit::airframe
