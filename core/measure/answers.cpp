#include "measure/answers.hpp"
#include "measure/guess.hpp"
#include "measure/likeness.hpp"
#include "measure/scaled.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

constexpr int reducedTo = 800; // pixels on the longer side
constexpr int reducedFinerTo = 1200;
// What an edge may be off, how wide it is and its noise were learnt at this size.
constexpr int lookedAt = 2000;
constexpr std::size_t mostGuesses = 24;
constexpr std::size_t mostLookedInto = 10;

/// Each with its odds, the best first; none within a corner's tolerance of a better one.
std::vector<Answer> weighed(std::vector<Answer> answers) {
    for (Answer& answer : answers)
        answer.odds = std::exp(likeness(answer.sides));
    std::sort(answers.begin(), answers.end(),
              [](const Answer& a, const Answer& b) { return a.odds > b.odds; });
    std::vector<Answer> kept;
    for (Answer& answer : answers)
        if (std::none_of(kept.begin(), kept.end(), [&](const Answer& k) {
                return apart(k.sides.quad, answer.sides.quad) < closeTo(k.sides.quad);
            }))
            kept.push_back(std::move(answer));
    return kept;
}

} // namespace

std::vector<Answer> answersOf(const Picture& full) {
    const Scaled scaled(full, lookedAt);
    const Picture picture = scaled.picture();
    const Reduced small = reduced(picture, reducedTo);
    std::vector<Answer> answers;
    for (const Guess& guess : guessesOf(small, reduced(picture, reducedFinerTo), mostGuesses)) {
        Quad quad;
        for (std::size_t i = 0; i < 4; ++i)
            quad[i] = {small.up(guess.quad[i].x), small.up(guess.quad[i].y)};
        // A guess is a reduced pixel off, or lies on the rim of the card's shadow.
        for (Sides& sides : sidesNear(picture, quad, 1.5 * small.factor + 1 + 1.5 * millimetre(quad)))
            answers.push_back({std::move(sides), {}, 0, 0});
    }
    answers = weighed(std::move(answers));
    if (answers.size() > mostLookedInto) answers.resize(mostLookedInto);
    for (Answer& answer : answers)
        withoutShadow(picture, answer.sides);
    answers = weighed(std::move(answers));
    for (Answer& answer : answers) {
        for (std::size_t i = 0; i < 4; ++i) {
            const Mark& corner = answer.sides.corners[i];
            answer.corners[i] = {scaled.up(corner.at), corner.deviation * scaled.factor()};
        }
        answer.edgeWidth = answer.sides.sharp * scaled.factor();
    }
    return answers;
}

} // namespace ambit::measure
