#include "measure/corners.hpp"
#include "measure/card.hpp"
#include "measure/edges.hpp"
#include "measure/guess.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

constexpr double stretch = 5.5; // mm of a side that belong to a corner
constexpr int radii = 17;
constexpr double radiusStep = mostRadius / (radii - 1);
constexpr double nearFrom = 4; // mm of a side from its corner that are near it, past the round
constexpr double nearTo = 14;
constexpr double beyondFrom = 2; // mm past the corner
constexpr double beyondTo = 12;
constexpr double leastStep = 3; // grey levels; fainter ones would make anything unlike
constexpr int places = 10;      // looked at on either half of a corner

double radiusOf(int i) {
    return i * radiusStep;
}

/// A place of the outline from the side's end (0) to the middle of the corner (1), with the corner at (0, 0)
/// and the sides along x and y; and its normal, outwards.
struct Place {
    Spot at;
    Spot out;
};

Place placeOf(double share, double radius) {
    constexpr double eighth = 0.7853981633974483;
    const double begins = std::max(stretch, radius);
    const double whole = begins - radius + radius * eighth;
    const double gone = share * whole;
    if (gone <= begins - radius) return {{begins - gone, 0}, {0, -1}};
    const double angle = radius > 0 ? (gone - (begins - radius)) / radius : 0;
    const double s = std::sin(angle);
    const double c = std::cos(angle);
    return {{radius - radius * s, radius - radius * c}, {-s, -c}};
}

/// The supposed card's plane: its corners there, and how far from a side the step is surely over.
struct Outline {
    std::array<Spot, 4> ends;
    Homography map;
    double away = 0; // mm
};

Outline outlineOf(const Quad& quad, double edge) {
    const double first = sideOf(quad, 0) + sideOf(quad, 2);
    const double last = sideOf(quad, 1) + sideOf(quad, 3);
    const double x = first > last ? card::length : card::width;
    const double y = first > last ? card::width : card::length;
    return {{{{0, 0}, {x, 0}, {x, y}, {0, y}}},
            Homography::of(quad, x, y),
            std::max(0.6 * edge, 1.0) / millimetre(quad)};
}

/// Grey on either side of an outline's side, near one end, and where the side is carried on beyond it.
struct Near {
    double inside = 0;
    double outside = 0;
    double beyond = 0; // outside less inside
};

Near nearEnd(const Picture& picture, const Outline& outline, std::size_t side, bool last) {
    const Spot from = outline.ends[last ? (side + 1) % 4 : side];
    const Spot to = outline.ends[last ? side : (side + 1) % 4];
    const double length = std::hypot(to.x - from.x, to.y - from.y);
    const Spot along{(to.x - from.x) / length, (to.y - from.y) / length};
    const Spot out = last ? Spot{-along.y, along.x} : Spot{along.y, -along.x};
    const auto grey = [&](double u, double v) {
        return greyAt(picture, outline.map.toPicture(
                                   {from.x + along.x * u + out.x * v, from.y + along.y * u + out.y * v}));
    };
    Near near;
    constexpr int spots = 13;
    for (int i = 0; i < spots; ++i) {
        const double u = nearFrom + (nearTo - nearFrom) * (i + 0.5) / spots;
        for (const double d : {0.2, 0.6, 1.0}) {
            near.inside += grey(u, -outline.away - d) / (3 * spots);
            near.outside += grey(u, outline.away + d) / (3 * spots);
        }
        const double past = -beyondFrom - (beyondTo - beyondFrom) * (i + 0.5) / spots;
        near.beyond += (grey(past, outline.away) - grey(past, -outline.away)) / spots;
    }
    return near;
}

} // namespace

Beside besideOf(const Picture& picture, const Quad& quad, const std::array<double, 4>& steps, double edge) {
    const Outline outline = outlineOf(quad, edge);
    Beside beside;
    std::array<std::array<Near, 2>, 4> near;
    for (std::size_t i = 0; i < 4; ++i) {
        near[i] = {nearEnd(picture, outline, i, false), nearEnd(picture, outline, i, true)};
        const double beyond = std::max(std::abs(near[i][0].beyond), std::abs(near[i][1].beyond));
        beside.carriedOn[i] = std::min(1.5, beyond / std::max(leastStep, std::abs(steps[i])));
    }
    for (std::size_t k = 0; k < 4; ++k) {
        const Near& comes = near[(k + 3) % 4][1];
        const Near& goes = near[k][0];
        const double clear =
            (std::abs(comes.outside - comes.inside) + std::abs(goes.outside - goes.inside)) / 2;
        beside.unlike[k] = std::min(2.0, std::abs(comes.inside - goes.inside) / std::max(leastStep, clear));
    }
    std::sort(beside.unlike.begin(), beside.unlike.end());
    std::sort(beside.carriedOn.begin(), beside.carriedOn.end());
    return beside;
}

Roundness roundnessOf(const Picture& picture, const Quad& quad, const std::array<double, 4>& steps,
                      double edge) {
    const Outline outline = outlineOf(quad, edge);
    const double away = outline.away;
    Roundness all;
    std::array<double, radii> sum{};
    std::vector<double> found;
    for (std::size_t k = 0; k < 4; ++k) {
        const Spot corner = outline.ends[k];
        const Spot inwards{corner.x > 0 ? -1.0 : 1.0, corner.y > 0 ? -1.0 : 1.0};
        std::array<double, radii> agrees{};
        int best = 0;
        // Even sides lie along x. Of this corner one comes, the other goes.
        const std::size_t alongX = k % 2 == 0 ? k : (k + 3) % 4;
        const std::size_t alongY = k % 2 == 0 ? (k + 3) % 4 : k;
        const double clear = (std::abs(steps[alongX]) + std::abs(steps[alongY])) / 2;
        if (clear < 1) continue;
        // The mean step along the outline between two shares of the way to the corner's middle.
        const auto riseAlong = [&](double radius, double from, bool swapped) {
            double rise = 0;
            int count = 0;
            for (int i = 0; i < places; ++i) {
                const double share = (i + 0.5) / places;
                if (share < from) continue;
                const Place place = placeOf(share, radius);
                const auto grey = [&](double d) {
                    Spot s{place.at.x + d * place.out.x, place.at.y + d * place.out.y};
                    if (swapped) std::swap(s.x, s.y);
                    return greyAt(picture, outline.map.toPicture(
                                               {corner.x + inwards.x * s.x, corner.y + inwards.y * s.y}));
                };
                rise += grey(away) - grey(-away);
                ++count;
            }
            return rise / count;
        };
        for (int r = 0; r < radii; ++r) {
            const double total =
                std::abs(riseAlong(radiusOf(r), 0, false)) + std::abs(riseAlong(radiusOf(r), 0, true));
            agrees[static_cast<std::size_t>(r)] = total / 2 / clear;
            if (agrees[static_cast<std::size_t>(r)] > agrees[static_cast<std::size_t>(best)]) best = r;
        }
        const auto arc = [&](double radius) {
            return (std::abs(riseAlong(radius, 0.5, false)) + std::abs(riseAlong(radius, 0.5, true))) / 2 /
                   clear;
        };
        // What a sharp corner would have there speaks against an arc: of a radius like a card's, both differ.
        all.arcs[k] = std::clamp(arc(card::cornerRadius) - arc(0), -1.0, 1.0);
        const double most = agrees[static_cast<std::size_t>(best)];
        const auto below = static_cast<std::size_t>(card::cornerRadius / radiusStep);
        const double beyond = card::cornerRadius / radiusStep - static_cast<double>(below);
        const double asCard = agrees[below] + (agrees[below + 1] - agrees[below]) * beyond;
        if (most < 0.35) continue;
        all.seen += most;
        all.fits += asCard / most;
        all.worst = std::min(all.worst, asCard / most);
        double radius = radiusOf(best);
        if (best > 0 && best + 1 < radii) {
            const auto b = static_cast<std::size_t>(best);
            const double bend = agrees[b - 1] + agrees[b + 1] - 2 * agrees[b];
            if (bend < 0) radius += (agrees[b - 1] - agrees[b + 1]) / (2 * bend) * radiusStep;
        }
        found.push_back(radius);
        for (std::size_t r = 0; r < radii; ++r)
            sum[r] += std::min(1.5, agrees[r]);
    }
    std::sort(all.arcs.begin(), all.arcs.end());
    if (found.empty()) return all;
    all.seen /= static_cast<double>(found.size());
    all.fits /= static_cast<double>(found.size());
    std::sort(found.begin(), found.end());
    all.median = (found[found.size() / 2] + found[(found.size() - 1) / 2]) / 2;
    const auto best = static_cast<std::size_t>(std::max_element(sum.begin(), sum.end()) - sum.begin());
    double part = 0;
    if (best > 0 && best + 1 < radii) {
        const double bend = sum[best - 1] + sum[best + 1] - 2 * sum[best];
        if (bend < 0) part = (sum[best - 1] - sum[best + 1]) / (2 * bend);
    }
    all.radius = (static_cast<double>(best) + part) * radiusStep;
    return all;
}

} // namespace ambit::measure
