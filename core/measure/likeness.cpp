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
    -20.976, -1.655, -1.201, 2.187, -0.357, 13.571, -8.370, 7.825,  3.111,  1.968,  -27.402, 3.533,
    19.643,  -0.413, -1.063, 0.096, -0.282, -3.259, 11.153, -0.461, -8.159, -2.810, -4.274,  -6.022,
    -0.174,  1.469,  -1.210, 3.405, -2.297, 4.763,  3.189,  0.770,  -1.389, -3.563, -4.696,  -0.172};

} // namespace

double closeTo(const Quad& quad) {
    double longest = 0;
    for (std::size_t i = 0; i < 4; ++i)
        longest = std::max(longest, sideOf(quad, i));
    return std::max(2.0, 0.01 * longest);
}

double within(const Corners& corners) {
    Quad quad;
    double off = 1e-3;
    for (std::size_t i = 0; i < 4; ++i) {
        quad[i] = corners[i].at;
        off = std::max(off, corners[i].deviation);
    }
    // Off by many deviations is rarer than by few, but less so than of a bell: Student's t with two degrees
    // of freedom, as near as any in the invented pictures.
    const double times = closeTo(quad) / off;
    return times / std::sqrt(2 + times * times);
}

std::array<double, signs> signsOf(const Sides& sides) {
    double faintest = 1e9;
    double rim = 0;
    int brighter = 0;
    std::array<double, 4> gaps{};
    std::array<double, 4> softer{}; // than the sharpest side: a shadow's rim is
    double broken = 1;              // of what isn't seen beside the longest gap, the worst side's
    for (std::size_t i = 0; i < 4; ++i) {
        const Edge& edge = sides.edges[i];
        faintest = std::min(faintest, edge.evidence);
        rim = std::max(rim, edge.rim);
        brighter += edge.step > 0 ? 1 : 0;
        gaps[i] = edge.gap;
        softer[i] = std::log(std::max(0.5, edge.width) / sides.sharp);
        broken = std::min(broken, edge.seen / std::max(0.1, 1 - edge.gap));
    }
    std::sort(gaps.begin(), gaps.end());
    std::sort(softer.begin(), softer.end());
    const Roundness& round = sides.round;
    const Beside& beside = sides.beside;
    const double faint = std::log(faintest + 0.1);
    const auto flag = [](bool is) { return is ? 1.0 : 0.0; };
    const double lit = flag(sides.shadowed == 0);
    return {1, std::log1p(std::min(50.0, sides.pose.misfit)),
            std::min(3.0, std::abs(round.median - card::cornerRadius)), std::log(millimetre(sides.quad)),
            // How round the corners are.
            std::min(1.0, round.seen), round.fits, round.worst, round.worst * round.worst, round.arcs[0],
            round.arcs[1], round.arcs[1] * round.arcs[1], round.arcs[2], round.fits * round.arcs[1],
            flag(brighter != 0 && brighter != 4),
            // A card's shadow falls to two sides, or to none that is seen; a soft side is in it.
            flag(sides.shadowed == 1), flag(sides.shadowed == 2), flag(sides.shadowed > 2), softer[1],
            softer[2], softer[3], std::min(2.25, softer[2] * softer[2]), lit * softer[2], lit * softer[3],
            flag(sides.shadowed == 1) * softer[2], lit * rim, (1 - lit) * rim, faint, faint * round.fits,
            // A finger hides one stretch of a side, or of two, and all four corners hardly ever.
            gaps[3], gaps[2], broken, beside.unlike[2], beside.carriedOn[2],
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
