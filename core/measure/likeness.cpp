#include "measure/likeness.hpp"
#include "measure/card.hpp"
#include "measure/guess.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

// A multinomial logit (D. McFadden, "Conditional logit analysis of qualitative choice behavior", 1974): of a
// picture's answers, and none at all, at most one is right. `ambit-bench --card-weights` makes them anew.
constexpr std::array<double, signs> weights{-44.375, -1.547, -0.239, -1.061, 2.016,  -0.658, 45.122, -7.134,
                                            -1.073,  -1.054, 2.116,  0.234,  -0.504, -1.366, 3.513,  8.465};

} // namespace

double closeTo(const Quad& quad) {
    double longest = 0;
    for (std::size_t i = 0; i < 4; ++i)
        longest = std::max(longest, sideOf(quad, i));
    return std::max(2.0, 0.005 * longest);
}

std::array<double, signs> signsOf(const Sides& sides) {
    double off = 0;
    double faintest = 1e9;
    int brighter = 0;
    std::array<double, 4> gaps{};
    double broken = 1; // of what isn't seen beside the longest gap, the worst side's
    for (std::size_t i = 0; i < 4; ++i) {
        const Edge& edge = sides.edges[i];
        off = std::max(off, sides.corners[i].deviation);
        faintest = std::min(faintest, edge.evidence);
        brighter += edge.step > 0 ? 1 : 0;
        gaps[i] = edge.gap;
        broken = std::min(broken, edge.seen / std::max(0.1, 1 - edge.gap));
    }
    std::sort(gaps.begin(), gaps.end());
    const Roundness& round = sides.round;
    return {1, std::log1p(std::min(50.0, sides.misfit)),
            std::min(3.0, std::max(0.0, round.radius - card::cornerRadius)),
            std::min(3.0, std::abs(round.median - card::cornerRadius)), std::log(millimetre(sides.quad)),
            std::min(1.0, round.seen), round.fits, round.worst, std::log(off / closeTo(sides.quad) + 0.02),
            brighter == 0 || brighter == 4 ? 0.0 : 1.0,
            sides.shadowed == 2 ? 1.0 : 0.0, // a card's shadow falls to two sides, or to none that is seen
            std::log(faintest + 0.1),
            // A finger hides one stretch of a side, or of two, and all four corners hardly ever.
            gaps[3], gaps[2], broken, round.arcs[1]};
}

double likeness(const Sides& sides) {
    const auto each = signsOf(sides);
    double sum = 0;
    for (std::size_t i = 0; i < signs; ++i)
        sum += weights[i] * each[i];
    return sum;
}

} // namespace ambit::measure
