#include "measure/likeness.hpp"
#include "measure/card.hpp"
#include "measure/guess.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

// By logistic regression (ridge 1) over the answers found in the invented pictures of tests/measure, 2000
// pixels wide: seeds 0 to 1599 with a card where the nominal contrast is above 40, 0 to 299 without.
constexpr std::array<double, signs> weights{-17.46, 1.72,  0.28,  0.56,  -1.97, -1.27, 0.36, -1.96,
                                            -0.52,  -0.70, 3.45,  1.21,  0.59,  2.32,  1.85, 3.41,
                                            1.89,   -0.55, -1.01, -1.79, 2.03,  1.14,  -0.23};

/// How unlike the grey just inside the four sides is, over their steps: of a card that isn't printed up to
/// its rim it is the same all round.
double unlikeInside(const Sides& sides) {
    double least = 1e9;
    double most = 0;
    double steps = 0;
    for (const Edge& edge : sides.edges) {
        std::vector<double> greys;
        const auto inwards = static_cast<std::size_t>(1.2 * sides.sharp / edge.profileStep);
        for (const auto& profile : edge.profiles)
            greys.push_back(profile[profile.size() / 2 - std::min(profile.size() / 2, inwards)]);
        const auto middle = greys.begin() + static_cast<std::ptrdiff_t>(greys.size() / 2);
        std::nth_element(greys.begin(), middle, greys.end());
        least = std::min(least, *middle);
        most = std::max(most, *middle);
        steps += std::abs(edge.step) / 4;
    }
    return std::log((most - least + 2) / (steps + 2));
}

} // namespace

double closeTo(const Quad& quad) {
    double longest = 0;
    for (std::size_t i = 0; i < 4; ++i)
        longest = std::max(longest, sideOf(quad, i));
    return std::max(2.0, 0.005 * longest);
}

std::array<double, signs> signsOf(const Sides& sides) {
    double off = 0;
    double widest = 0;
    double faintest = 1e9;
    int brighter = 0;
    std::array<double, 4> seen{};
    for (std::size_t i = 0; i < 4; ++i) {
        const Edge& edge = sides.edges[i];
        off = std::max(off, sides.corners[i].deviation);
        widest = std::max(widest, edge.width);
        faintest = std::min(faintest, edge.evidence);
        brighter += edge.step > 0 ? 1 : 0;
        seen[i] = edge.seen;
    }
    std::sort(seen.begin(), seen.end());
    const Roundness& round = sides.round;
    const double other = std::min(3.0, std::abs(round.radius - card::cornerRadius));
    const double otherMedian = std::min(3.0, std::abs(round.median - card::cornerRadius));
    const double mm = millimetre(sides.quad);
    return {1,
            seen[0],
            seen[1],
            sides.seenAll,
            std::log1p(std::min(50.0, sides.misfit)),
            other,
            std::min(3.0, std::max(0.0, round.radius - card::cornerRadius)),
            otherMedian,
            std::min(8.0, other * mm / sides.sharp), // what blur leaves of it
            std::min(8.0, otherMedian * mm / sides.sharp),
            std::log(mm),
            std::min(1.0, round.seen),
            round.corners / 4.0,
            round.round / 4.0,
            round.fits,
            round.worst,
            round.outline,
            std::log(off / closeTo(sides.quad) + 0.02),
            std::log(std::max(0.1, widest) / sides.sharp),
            brighter == 0 || brighter == 4 ? 0.0 : 1.0,
            sides.shadowed == 2 ? 1.0 : 0.0, // a card's shadow falls to two sides, or to none that is seen
            std::log(faintest + 0.1),
            unlikeInside(sides)};
}

double likeness(const Sides& sides) {
    const auto each = signsOf(sides);
    double sum = 0;
    for (std::size_t i = 0; i < signs; ++i)
        sum += weights[i] * each[i];
    return sum;
}

} // namespace ambit::measure
