#include "measure/answers.hpp"
#include "measure/guess.hpp"
#include "measure/likeness.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

constexpr int reducedTo = 800; // pixels on the longer side
constexpr int reducedFinerTo = 1200;
constexpr double finest = 2000; // pixels on the longer side that are worth looking at
constexpr std::size_t mostGuesses = 24;
constexpr std::size_t mostLookedInto = 10;

/// The best first; none within a corner's tolerance of a better one.
std::vector<Answer> distinct(std::vector<Answer> answers) {
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

std::vector<Answer> answersOf(const Picture& picture) {
    const Reduced small = reduced(picture, reducedTo);
    const double pixel = std::max(1.0, std::max(picture.width, picture.height) / finest);
    std::vector<Answer> answers;
    for (const Guess& guess : guessesOf(small, reduced(picture, reducedFinerTo), mostGuesses)) {
        Quad quad;
        for (std::size_t i = 0; i < 4; ++i)
            quad[i] = {small.up(guess.quad[i].x), small.up(guess.quad[i].y)};
        // A guess is a reduced pixel off, or lies on the rim of the card's shadow.
        for (Sides& sides :
             sidesNear(picture, quad, 1.5 * small.factor + 1 + 1.5 * millimetre(quad), pixel)) {
            const double odds = std::exp(likeness(sides));
            answers.push_back({std::move(sides), odds});
        }
    }
    answers = distinct(std::move(answers));
    if (answers.size() > mostLookedInto) answers.resize(mostLookedInto);
    for (Answer& answer : answers) {
        withoutShadow(picture, answer.sides);
        answer.odds = std::exp(likeness(answer.sides));
    }
    return distinct(std::move(answers));
}

} // namespace ambit::measure
