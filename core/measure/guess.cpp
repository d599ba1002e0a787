#include "measure/guess.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace ambit::measure {
namespace {

constexpr std::size_t mostLines = 110;
constexpr double leastSide = 15;  // pixels
constexpr double leastFiner = 10; // of an edge of the finer picture, the coarser one's pixels
constexpr double widestLook = 12; // chi² of a pose, corners being a pixel off
constexpr double leastSeen = 0.1; // of the worst side
constexpr double leastSeenSum = 1.7;
constexpr double leastArm = 0.5;   // seen, of a side whose end is taken for a corner
constexpr double roundEnd = 0.045; // of the side between two, beyond what is seen of them: corners are round
constexpr double shortestArm = 0.35; // of the same
constexpr double longestArm = 2.6;
constexpr double alike = 3.5;             // pixels
constexpr std::size_t mostCrossings = 24; // of two lines
constexpr std::size_t mostAsked = 2000;   // guesses, like ones among them: what clutter there is time for

// How much a guess's signs speak for it, by a logistic regression over the guesses in the invented pictures
// of seeds 0 to 2599: sides seen, where they are carried on past a corner, and that clutter is small.
constexpr double carriedOnCounts = 3.5;
constexpr double sizeCounts = 0.8;

bool meet(const Line& a, const Line& b, Pixel& at) {
    const double sine = a.normal.x * b.normal.y - a.normal.y * b.normal.x;
    if (std::abs(sine) < 0.3) return false;
    const double ca = a.normal.x * a.at.x + a.normal.y * a.at.y;
    const double cb = b.normal.x * b.at.x + b.normal.y * b.at.y;
    at = {(ca * b.normal.y - cb * a.normal.y) / sine, (a.normal.x * cb - b.normal.x * ca) / sine};
    return true;
}

double alongOf(const Line& line, Pixel p) {
    return -line.normal.y * (p.x - line.at.x) + line.normal.x * (p.y - line.at.y);
}

/// The share of the way between two points of a line on which an edge was seen.
double seenBetween(const Line& line, Pixel a, Pixel b) {
    double from = alongOf(line, a);
    double to = alongOf(line, b);
    if (from > to) std::swap(from, to);
    double sum = 0;
    for (const auto& stretch : line.seen)
        sum += std::max(0.0, std::min(to, stretch[1]) - std::max(from, stretch[0]));
    return std::min(1.0, sum / (to - from));
}

/// The share on which a line is seen past its side's corners, where it is more; round corners left out.
double seenPast(const Line& line, Pixel a, Pixel b) {
    const auto at = [&](double share) { return Pixel{a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)}; };
    return std::max(seenBetween(line, at(1.06), at(1.3)), seenBetween(line, at(-0.06), at(-0.3)));
}

/// Whether the second runs where the first does, all along.
bool same(const Line& line, const Line& other) {
    if (line.normal.x * other.normal.x + line.normal.y * other.normal.y < 0.99) return false;
    for (const double end : other.seen[0]) {
        const double x = other.at.x - other.normal.y * end - line.at.x;
        const double y = other.at.y + other.normal.x * end - line.at.y;
        if (std::abs(line.normal.x * x + line.normal.y * y) > 0.8) return false;
        const double along = -line.normal.y * x + line.normal.x * y;
        if (along < line.seen[0][0] - 3 || along > line.seen[0][1] + 3) return false;
    }
    return true;
}

/// May be opposite sides; what is beside the card may be darker here and brighter there.
bool mayFace(const Line& a, const Line& b) {
    return std::abs(a.normal.x * b.normal.x + a.normal.y * b.normal.y) >= 0.72 && // 44 degrees
           std::abs(a.normal.x * (b.at.x - a.at.x) + a.normal.y * (b.at.y - a.at.y)) >= leastSide;
}

bool isOutside(Pixel p, const Reduced& picture) {
    return p.x < -5 || p.y < -5 || p.x > picture.width + 4 || p.y > picture.height + 4;
}

/// The i-th line runs from the i-th corner to the next; null where none is seen.
std::optional<Guess> weighed(const std::array<const Line*, 4>& lines, const Quad& corners) {
    Guess guess{corners, 0};
    std::array<double, 4> past{};
    double seen = 0;
    double round = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        const double side = sideOf(corners, i);
        if (side < leastSide) return std::nullopt;
        round += side;
        if (lines[i] == nullptr) continue;
        const double share = seenBetween(*lines[i], corners[i], corners[(i + 1) % 4]);
        if (share < leastSeen) return std::nullopt;
        seen += share;
        past[i] = seenPast(*lines[i], corners[i], corners[(i + 1) % 4]);
    }
    if (seen < leastSeenSum) return std::nullopt;
    Quad& q = guess.quad;
    if (!goesRound(q)) {
        std::swap(q[1], q[3]);
        if (!goesRound(q)) return std::nullopt;
    }
    // What lies across a card may carry one side on, or two.
    std::sort(past.begin(), past.end());
    guess.worth = seen - carriedOnCounts * (past[2] + past[3]) + sizeCounts * std::log(round);
    return guess;
}

/// A line across two others, seen between them.
struct Crossing {
    std::size_t line = 0;
    Pixel a; // where it meets them
    Pixel b;
    double seen = 0;
};

std::vector<Crossing> crossingsOf(const Line& a, const Line& b, const std::vector<Line>& lines,
                                  const Reduced& picture) {
    std::vector<Crossing> crossings;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        Crossing c{i, {}, {}, 0};
        if (!meet(a, lines[i], c.a) || isOutside(c.a, picture) || !meet(b, lines[i], c.b) ||
            isOutside(c.b, picture))
            continue;
        c.seen = seenBetween(lines[i], c.a, c.b);
        if (c.seen >= leastSeen) crossings.push_back(c);
    }
    if (crossings.size() > mostCrossings) {
        std::sort(crossings.begin(), crossings.end(),
                  [](const Crossing& one, const Crossing& other) { return one.seen > other.seen; });
        crossings.resize(mostCrossings);
    }
    return crossings;
}

/// Where a side may end that begins at the corner with `base` and goes to `base`'s brighter side, or its
/// darker one (`way` 1, -1).
std::vector<Pixel> armEnds(const Line& arm, Pixel corner, const Line& base, double baseLength, int way,
                           const Reduced& picture) {
    const Pixel along{-arm.normal.y, arm.normal.x};
    const bool brighter = along.x * base.normal.x + along.y * base.normal.y > 0;
    const double sign = brighter == (way > 0) ? 1 : -1;
    std::vector<Pixel> ends;
    for (const auto& stretch : arm.seen) {
        const double end = (stretch[sign > 0 ? 1 : 0] - alongOf(arm, corner)) * sign + roundEnd * baseLength;
        if (end < shortestArm * baseLength || end > longestArm * baseLength) continue;
        const Pixel at{corner.x + along.x * sign * end, corner.y + along.y * sign * end};
        if (!isOutside(at, picture) && seenBetween(arm, corner, at) >= leastArm) ends.push_back(at);
    }
    return ends;
}

/// Of two lines that may face each other, with what crosses both.
void addAlong(const Line& a, const Line& b, std::size_t first, const std::vector<Line>& lines,
              const Reduced& picture, std::vector<Guess>& guesses) {
    const auto crossings = crossingsOf(a, b, lines, picture);
    for (std::size_t i = 0; i < crossings.size(); ++i) {
        const Crossing& c = crossings[i];
        const Line& base = lines[c.line];
        // Four lines are two pairs: they come by once, with the one that has the first line.
        for (std::size_t j = i + 1; c.line > first && j < crossings.size(); ++j) {
            const Crossing& d = crossings[j];
            if (!mayFace(base, lines[d.line])) continue;
            if (const auto guess = weighed({&base, &b, &lines[d.line], &a}, {c.a, c.b, d.b, d.a}))
                guesses.push_back(*guess);
        }
        // The fourth side's own edge may be too faint to be seen in a small picture, or in pieces.
        if (c.seen < leastArm) continue;
        const double length = std::hypot(c.b.x - c.a.x, c.b.y - c.a.y);
        for (const int way : {-1, 1})
            for (const Pixel endA : armEnds(a, c.a, base, length, way, picture))
                for (const Pixel endB : armEnds(b, c.b, base, length, way, picture))
                    if (const auto guess = weighed({&base, &b, nullptr, &a}, {c.a, c.b, endB, endA}))
                        guesses.push_back(*guess);
    }
}

} // namespace

double sideOf(const Quad& q, std::size_t i) {
    return std::hypot(q[(i + 1) % 4].x - q[i].x, q[(i + 1) % 4].y - q[i].y);
}

double millimetre(const Quad& quad) {
    double round = 0;
    for (std::size_t i = 0; i < 4; ++i)
        round += sideOf(quad, i);
    return round / 2 / (card::length + card::width);
}

Pose likelierPose(const Quad& quad, const Frame& frame, double deviation) {
    const Pose one = poseOf(quad, Lies::longSideFirst, frame, deviation);
    const Pose other = poseOf(quad, Lies::shortSideFirst, frame, deviation);
    return other.misfit < one.misfit ? other : one;
}

double apart(const Quad& a, const Quad& b) {
    double least = 1e9;
    for (std::size_t shift = 0; shift < 4; ++shift) {
        double most = 0;
        for (std::size_t i = 0; i < 4; ++i)
            most = std::max(most, std::hypot(a[i].x - b[(i + shift) % 4].x, a[i].y - b[(i + shift) % 4].y));
        least = std::min(least, most);
    }
    return least;
}

std::vector<Guess> guessesOf(const Reduced& picture, const Reduced& finer, std::size_t most) {
    std::vector<Line> lines = linesOf(picture, mostLines);
    const auto known = static_cast<std::ptrdiff_t>(lines.size());
    for (Line& line : linesOf(finer, mostLines)) {
        line.at = {picture.down(finer.up(line.at.x)), picture.down(finer.up(line.at.y))};
        const double scale = static_cast<double>(finer.factor) / picture.factor;
        for (auto& stretch : line.seen)
            stretch = {stretch[0] * scale, stretch[1] * scale};
        line.length *= scale;
        if (line.seen[0][1] - line.seen[0][0] < leastFiner) continue;
        if (std::none_of(lines.begin(), lines.begin() + known, [&](const Line& l) { return same(l, line); }))
            lines.push_back(std::move(line));
    }
    std::vector<Guess> guesses;
    for (std::size_t i = 0; i < lines.size(); ++i)
        for (std::size_t j = i + 1; j < lines.size(); ++j)
            if (mayFace(lines[i], lines[j])) addAlong(lines[i], lines[j], i, lines, picture, guesses);
    std::sort(guesses.begin(), guesses.end(),
              [](const Guess& a, const Guess& b) { return a.worth > b.worth; });
    std::vector<Guess> kept;
    std::size_t asked = 0;
    for (const Guess& guess : guesses) {
        if (kept.size() >= most || ++asked > mostAsked) break;
        if (std::any_of(kept.begin(), kept.end(),
                        [&](const Guess& k) { return apart(k.quad, guess.quad) < alike; }))
            continue;
        if (mayBeCard(guess.quad, {picture.width, picture.height}, 1.0, widestLook)) kept.push_back(guess);
    }
    return kept;
}

} // namespace ambit::measure
