#include "measure/sides.hpp"
#include "measure/card.hpp"
#include "measure/guess.hpp"
#include "measure/shadow.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

constexpr std::size_t perSide = 3;
constexpr std::size_t mostLookedAt = 5; // combinations of a quad's sides
constexpr double leastSeen = 0.2;
constexpr double shadowFrom = 1.08; // times as wide as the sharpest side
constexpr double shadowReach = 2.2; // mm

/// Lets the edges meet.
bool met(Sides& sides) {
    for (std::size_t i = 0; i < 4; ++i) {
        const Edge& a = sides.edges[(i + 3) % 4];
        const Edge& b = sides.edges[i];
        const double sine = a.along.x * b.along.y - a.along.y * b.along.x;
        if (std::abs(sine) < 0.2) return false;
        const double t = ((b.at.x - a.at.x) * b.along.y - (b.at.y - a.at.y) * b.along.x) / sine;
        sides.quad[i] = {a.at.x + t * a.along.x, a.at.y + t * a.along.y};
        sides.corners[i] = {sides.quad[i],
                            std::hypot(a.deviation, b.deviation) / std::abs(sine) / 1.4142135623730951};
    }
    return goesRound(sides.quad);
}

void lookedAt(const Picture& picture, Sides& sides) {
    std::array<double, 4> steps{};
    sides.sharp = 1e9;
    for (std::size_t i = 0; i < 4; ++i) {
        steps[i] = sides.edges[i].step;
        sides.sharp = std::min(sides.sharp, sides.edges[i].width);
    }
    sides.sharp = std::max(0.5, sides.sharp);
    sides.round = roundnessOf(picture, sides.quad, steps, sides.sharp);
    double off = 0;
    for (const Mark& corner : sides.corners)
        off = std::max(off, corner.deviation);
    sides.beside = besideOf(picture, sides.quad, steps, sides.sharp);
    sides.pose = likelierPose(sides.quad, {picture.width, picture.height}, std::max(0.5, off));
}

} // namespace

std::vector<Sides> sidesNear(const Picture& picture, const Quad& quad, double reach) {
    std::array<std::vector<Edge>, 4> edges;
    for (std::size_t i = 0; i < 4; ++i) {
        edges[i] = edgesAlong(picture, quad[i], quad[(i + 1) % 4], reach);
        std::erase_if(edges[i], [](const Edge& e) { return e.seen < leastSeen; });
        if (edges[i].empty()) return {};
        if (edges[i].size() > perSide) edges[i].resize(perSide);
    }
    struct Choice {
        std::array<std::size_t, 4> which{};
        double worth = 0;
    };
    std::vector<Choice> choices;
    for (std::size_t n = 0; n < perSide * perSide * perSide * perSide; ++n) {
        Choice choice;
        bool there = true;
        std::size_t rest = n;
        for (std::size_t i = 0; i < 4; ++i, rest /= perSide) {
            choice.which[i] = rest % perSide;
            there = there && choice.which[i] < edges[i].size();
            if (there)
                choice.worth += edges[i][choice.which[i]].seen +
                                edges[i][choice.which[i]].evidence / edges[i][0].evidence / 2;
        }
        if (there) choices.push_back(choice);
    }
    std::sort(choices.begin(), choices.end(),
              [](const Choice& a, const Choice& b) { return a.worth > b.worth; });
    std::vector<Sides> found;
    for (const Choice& choice : choices) {
        if (found.size() >= mostLookedAt) break;
        Sides sides;
        for (std::size_t i = 0; i < 4; ++i)
            sides.edges[i] = edges[i][choice.which[i]];
        if (!met(sides)) continue;
        lookedAt(picture, sides);
        found.push_back(std::move(sides));
    }
    return found;
}

void withoutShadow(const Picture& picture, Sides& sides) {
    const Quad& q = sides.quad;
    std::array<double, 4> reach{};
    for (std::size_t i = 0; i < 4; ++i) {
        if (sides.edges[i].width < shadowFrom * sides.sharp) continue;
        // What lies across this side has the scale of the side beside it.
        const double length = sideOf(q, i);
        const double beside = sideOf(q, (i + 3) % 4);
        reach[i] = shadowReach * beside / (beside < length ? card::width : card::length);
    }
    sides.shadowed = withoutShadow(sides.edges, sides.sharp, reach);
    if (met(sides)) lookedAt(picture, sides);
}

} // namespace ambit::measure
