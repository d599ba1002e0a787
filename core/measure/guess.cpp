#include "measure/guess.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

constexpr std::size_t mostLines = 110;
constexpr double leastSide = 25;  // pixels
constexpr double leastFiner = 10; // of an edge of the finer picture, the coarser one's pixels
constexpr double widestLook = 12; // chi² of a pose, corners being a pixel off
constexpr double leastSeen = 0.1; // of the worst side
constexpr double leastSeenSum = 1.7;
constexpr double alike = 3.5;           // pixels
constexpr std::size_t mostAsked = 5000; // guesses, like ones among them: what clutter there is time for

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

/// Two lines that may be opposite sides; what is beside the card may be darker here and brighter there.
struct Pair {
    const Line* a = nullptr;
    const Line* b = nullptr;
};

std::vector<Pair> pairsOf(const std::vector<Line>& lines) {
    std::vector<Pair> pairs;
    for (std::size_t i = 0; i < lines.size(); ++i)
        for (std::size_t j = i + 1; j < lines.size(); ++j) {
            const Line& a = lines[i];
            const Line& b = lines[j];
            if (std::abs(a.normal.x * b.normal.x + a.normal.y * b.normal.y) < 0.82) continue; // 35 degrees
            const double apart = std::abs(a.normal.x * (b.at.x - a.at.x) + a.normal.y * (b.at.y - a.at.y));
            if (apart > leastSide) pairs.push_back({&a, &b});
        }
    return pairs;
}

bool guessed(const Pair& one, const Pair& two, const Reduced& picture, Guess& guess) {
    Quad& q = guess.quad;
    const auto outside = [&](Pixel p) {
        return p.x < -5 || p.y < -5 || p.x > picture.width + 4 || p.y > picture.height + 4;
    };
    if (!meet(*one.a, *two.a, q[0]) || outside(q[0]) || !meet(*one.a, *two.b, q[1]) || outside(q[1]))
        return false;
    std::array<double, 4> seen{seenBetween(*one.a, q[0], q[1]), 0, 0, 0};
    if (seen[0] < leastSeen || !meet(*one.b, *two.b, q[2]) || outside(q[2])) return false;
    seen[1] = seenBetween(*two.b, q[1], q[2]);
    if (seen[1] < leastSeen || !meet(*one.b, *two.a, q[3]) || outside(q[3])) return false;
    seen[2] = seenBetween(*one.b, q[2], q[3]);
    seen[3] = seenBetween(*two.a, q[3], q[0]);
    const double least = *std::min_element(seen.begin(), seen.end());
    const double sum = seen[0] + seen[1] + seen[2] + seen[3];
    if (least < leastSeen || sum < leastSeenSum) return false;
    if (!goesRound(q)) {
        std::swap(q[1], q[3]);
        if (!goesRound(q)) return false;
    }
    for (std::size_t i = 0; i < 4; ++i)
        if (sideOf(q, i) < leastSide) return false;
    guess.seen = sum / 4 + least / 2;
    return true;
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
    const std::vector<Pair> pairs = pairsOf(lines);
    std::vector<Guess> guesses;
    for (std::size_t i = 0; i < pairs.size(); ++i)
        for (std::size_t j = i + 1; j < pairs.size(); ++j) {
            Guess guess;
            if (guessed(pairs[i], pairs[j], picture, guess)) guesses.push_back(guess);
        }
    std::sort(guesses.begin(), guesses.end(), [](const Guess& a, const Guess& b) { return a.seen > b.seen; });
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
