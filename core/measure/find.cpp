#include "measure/find.hpp"
#include "measure/lines.hpp"
#include "measure/sides.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

// Chosen on the invented pictures of tests/measure.
constexpr int reducedTo = 800; // pixels on the longer side
constexpr std::size_t mostLines = 90;
constexpr std::size_t mostRefined = 24; // hypotheses looked at in the full picture
constexpr double leastConfidence = 0.72;
constexpr double leastRound = 0.5;   // of Sides::round: three corners of four, or two and two not seen
constexpr double clearlyAhead = 0.3; // of any other with rounded corners
constexpr double sameCard = 0.08;    // of its longest side: the card with and without the rim of its shadow
constexpr double leastSideReduced = 25; // pixels

struct Guess {
    Quad quad; // in the reduced picture
    double seen = 0;
};

bool meet(const Line& a, const Line& b, Pixel& at) {
    const double sine = a.normal.x * b.normal.y - a.normal.y * b.normal.x;
    if (std::abs(sine) < 0.3) return false;
    const double ca = a.normal.x * a.at.x + a.normal.y * a.at.y;
    const double cb = b.normal.x * b.at.x + b.normal.y * b.at.y;
    at = {(ca * b.normal.y - cb * a.normal.y) / sine, (a.normal.x * cb - b.normal.x * ca) / sine};
    return true;
}

/// The share of the way between two points of a line on which an edge was seen.
double seenBetween(const Line& line, Pixel a, Pixel b) {
    double from = -line.normal.y * (a.x - line.at.x) + line.normal.x * (a.y - line.at.y);
    double to = -line.normal.y * (b.x - line.at.x) + line.normal.x * (b.y - line.at.y);
    if (from > to) std::swap(from, to);
    double sum = 0;
    for (const auto& stretch : line.seen)
        sum += std::max(0.0, std::min(to, stretch[1]) - std::max(from, stretch[0]));
    return std::min(1.0, sum / (to - from));
}

double sideOf(const Quad& q, std::size_t i) {
    return std::hypot(q[(i + 1) % 4].x - q[i].x, q[(i + 1) % 4].y - q[i].y);
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
            if (apart > leastSideReduced) pairs.push_back({&a, &b});
        }
    return pairs;
}

bool guessed(const Pair& one, const Pair& two, const Reduced& picture, Guess& guess) {
    Quad& q = guess.quad;
    if (!meet(*one.a, *two.a, q[0]) || !meet(*one.a, *two.b, q[1]) || !meet(*one.b, *two.b, q[2]) ||
        !meet(*one.b, *two.a, q[3]))
        return false;
    for (const Pixel& p : q)
        if (p.x < -5 || p.y < -5 || p.x > picture.width + 4 || p.y > picture.height + 4) return false;
    std::array<double, 4> seen{seenBetween(*one.a, q[0], q[1]), seenBetween(*two.b, q[1], q[2]),
                               seenBetween(*one.b, q[2], q[3]), seenBetween(*two.a, q[3], q[0])};
    const double least = *std::min_element(seen.begin(), seen.end());
    const double sum = seen[0] + seen[1] + seen[2] + seen[3];
    if (least < 0.15 || sum < 1.8) return false;
    if (!goesRound(q)) {
        std::swap(q[1], q[3]);
        if (!goesRound(q)) return false;
    }
    for (std::size_t i = 0; i < 4; ++i)
        if (sideOf(q, i) < leastSideReduced) return false;
    guess.seen = sum / 4 + least / 2;
    return true;
}

double misfitOf(const Quad& quad, const Frame& frame, double deviation) {
    double least = 1e9;
    for (const Lies lies : {Lies::longSideFirst, Lies::shortSideFirst})
        least = std::min(least, poseOf(quad, lies, frame, deviation).misfit);
    return least;
}

/// The greatest distance of a corner to the other's, whichever corner either begins with.
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

std::vector<Guess> guessesOf(const Reduced& small) {
    const std::vector<Line> lines = linesOf(small, mostLines);
    const std::vector<Pair> pairs = pairsOf(lines);
    std::vector<Guess> guesses;
    for (std::size_t i = 0; i < pairs.size(); ++i)
        for (std::size_t j = i + 1; j < pairs.size(); ++j) {
            Guess guess;
            if (guessed(pairs[i], pairs[j], small, guess)) guesses.push_back(guess);
        }
    std::sort(guesses.begin(), guesses.end(), [](const Guess& a, const Guess& b) { return a.seen > b.seen; });
    std::vector<Guess> kept;
    std::size_t asked = 0;
    for (const Guess& guess : guesses) {
        if (kept.size() >= mostRefined || ++asked > 1500) break;
        if (std::any_of(kept.begin(), kept.end(),
                        [&](const Guess& k) { return apart(k.quad, guess.quad) < 2.5; }))
            continue;
        if (misfitOf(guess.quad, {small.width, small.height}, 1.0) < 12) kept.push_back(guess);
    }
    return kept;
}

Quad quadOf(const Corners& corners) {
    return {corners[0].at, corners[1].at, corners[2].at, corners[3].at};
}

bool holds(const Quad& quad, const Quad& other) {
    Pixel middle;
    for (const Pixel& p : other) {
        middle.x += p.x / 4;
        middle.y += p.y / 4;
    }
    for (std::size_t i = 0; i < 4; ++i) {
        const Pixel& a = quad[i];
        const Pixel& b = quad[(i + 1) % 4];
        if ((b.x - a.x) * (middle.y - a.y) - (b.y - a.y) * (middle.x - a.x) < 0) return false;
    }
    return true;
}

/// What shares sides and corners with the card (its print, a wrong fourth side) is worse by what it doesn't
/// share; what lies elsewhere may be the card, and the best a panel.
bool rivals(const Sides& best, const Sides& other) {
    const bool shared = holds(quadOf(best.corners), quadOf(other.corners)) ||
                        holds(quadOf(other.corners), quadOf(best.corners));
    const double behind = shared ? clearlyAhead / 3 : clearlyAhead;
    return other.round > 0 && other.round >= best.round - (shared ? 0.25 : 0.5) &&
           other.score > best.score - behind;
}

} // namespace

Result<Found> findCard(const Picture& picture) {
    if (picture.pixels == nullptr || picture.width < 200 || picture.height < 200 ||
        picture.stride < picture.width)
        return fail(ErrorCode::invalid, say("The picture is too small to find a card in."));
    if (static_cast<std::int64_t>(picture.width) * picture.height > mostPixels)
        return fail(ErrorCode::invalid, say("The picture has more than 50 million pixels."));
    const Reduced small = reduced(picture, reducedTo);
    std::vector<Sides> answers;
    for (const Guess& guess : guessesOf(small)) {
        Quad quad;
        for (std::size_t i = 0; i < 4; ++i)
            quad[i] = {small.up(guess.quad[i].x), small.up(guess.quad[i].y)};
        Sides sides;
        if (!refined(picture, quad, 3.0 * small.factor + 2, sides)) continue;
        // Once more from there, closer.
        if (!refined(picture, quadOf(sides.corners), 0.7 * small.factor + 3, sides)) continue;
        const double misfit =
            misfitOf(quadOf(sides.corners), {picture.width, picture.height}, 0.3 * small.factor + 0.3);
        if (misfit > mostMisfit) continue;
        sides.score *= 1 - 0.2 * misfit / mostMisfit;
        answers.push_back(sides);
    }
    std::sort(answers.begin(), answers.end(),
              [](const Sides& a, const Sides& b) { return a.score > b.score; });
    if (answers.empty() || answers[0].score < leastConfidence || answers[0].round < leastRound)
        return fail(
            ErrorCode::refused, say("No card can be seen for sure."), {},
            say("Mark its corners, or lay it where all four sides stand out, and take the picture again."));
    // Of answers that nearly coincide the sharper: a shadow's rim is soft, the card's isn't.
    const Sides* best = &answers[0];
    const Quad first = quadOf(best->corners);
    const double near = sameCard * std::max(sideOf(first, 0), sideOf(first, 1));
    for (const Sides& other : answers)
        if (apart(first, quadOf(other.corners)) < near && other.strength > best->strength &&
            other.score > answers[0].score - clearlyAhead / 3)
            best = &other;
    for (const Sides& other : answers)
        if (apart(first, quadOf(other.corners)) >= near && rivals(*best, other))
            return fail(
                ErrorCode::refused, say("More than one shape looks like the card."), {},
                say("Mark its corners, or take away what lies beside it, and take the picture again."));
    return Found{best->corners, best->edgeWidth, best->score};
}

} // namespace ambit::measure
