#include "measure/likeness.hpp"
#include "measure/card.hpp"
#include "measure/guess.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

// A multinomial logit (D. McFadden, "Conditional logit analysis of qualitative choice behavior", 1974): of a
// picture's answers, and none at all, at most one is right. `ambit-bench --card-weights` makes them anew.
constexpr std::array<double, signs> weights{
    -41.227, -1.392, -1.301, 1.341,  1.795,  39.762, -3.520, -1.335, -0.929, 0.428,  3.182,  3.887, -5.636,
    2.053,   -2.210, 0.109,  -3.023, -0.324, 1.609,  8.181,  0.803,  -5.851, -2.382, -4.528, 0.147};

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
    std::array<double, 4> softer{}; // than the sharpest side: a shadow's rim is
    double broken = 1;              // of what isn't seen beside the longest gap, the worst side's
    for (std::size_t i = 0; i < 4; ++i) {
        const Edge& edge = sides.edges[i];
        off = std::max(off, sides.corners[i].deviation);
        faintest = std::min(faintest, edge.evidence);
        brighter += edge.step > 0 ? 1 : 0;
        gaps[i] = edge.gap;
        softer[i] = std::log(std::max(0.5, edge.width) / sides.sharp);
        broken = std::min(broken, edge.seen / std::max(0.1, 1 - edge.gap));
    }
    std::sort(gaps.begin(), gaps.end());
    std::sort(softer.begin(), softer.end());
    const Roundness& round = sides.round;
    const auto flag = [](bool is) { return is ? 1.0 : 0.0; };
    return {1, std::log1p(std::min(50.0, sides.pose.misfit)),
            std::min(3.0, std::abs(round.median - card::cornerRadius)), std::log(millimetre(sides.quad)),
            std::min(1.0, round.seen), round.fits, round.worst, std::log(off / closeTo(sides.quad) + 0.02),
            flag(brighter != 0 && brighter != 4),
            // A card's shadow falls to two sides, or to none that is seen.
            flag(sides.shadowed == 1), flag(sides.shadowed == 2), flag(sides.shadowed > 2), softer[1],
            softer[2], softer[3], std::log(faintest + 0.1),
            // A finger hides one stretch of a side, or of two, and all four corners hardly ever.
            gaps[3], gaps[2], broken, round.arcs[1], sides.beside.unlike[2], sides.beside.carriedOn[2],
            // A camera that nobody carries would fit better.
            flag(sides.pose.focal < 1.04 * leastFocal), flag(sides.pose.focal > 0.95 * mostFocal),
            sides.pose.tilt / 30};
}

double likeness(const Sides& sides) {
    const auto each = signsOf(sides);
    double sum = 0;
    for (std::size_t i = 0; i < signs; ++i)
        sum += weights[i] * each[i];
    return sum;
}

} // namespace ambit::measure
