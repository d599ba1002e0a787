#include "measure/find.hpp"
#include "measure/guess.hpp"
#include "measure/likeness.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

constexpr int reducedTo = 800; // pixels on the longer side
constexpr int reducedFinerTo = 1200;
constexpr double finest = 2000; // pixels on the longer side that are worth looking at
constexpr std::size_t mostGuesses = 40;
constexpr std::size_t mostLookedInto = 8;
constexpr double leastConfidence = 0.62; // chosen with the weights of `likeness`, on the same pictures

struct Answer {
    Sides sides;
    double odds = 0;
};

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

} // namespace

Result<Found> findCard(const Picture& picture) {
    if (picture.pixels == nullptr || picture.width < 200 || picture.height < 200 ||
        picture.stride < picture.width)
        return fail(ErrorCode::invalid, say("The picture is too small to find a card in."));
    if (static_cast<std::int64_t>(picture.width) * picture.height > mostPixels)
        return fail(ErrorCode::invalid, say("The picture has more than 50 million pixels."));
    const std::vector<Answer> answers = answersOf(picture);
    double others = 0;
    for (std::size_t i = 1; i < answers.size(); ++i)
        others += answers[i].odds;
    const double best = answers.empty() ? 0 : answers[0].odds;
    if (best < leastConfidence * (1 + best))
        return fail(
            ErrorCode::refused, say("No card can be seen for sure."), {},
            say("Mark its corners, or lay it where all four sides stand out, and take the picture again."));
    // At most one of them is the card.
    const double confidence = best / (1 + best + others);
    if (confidence < leastConfidence)
        return fail(ErrorCode::refused, say("More than one shape looks like the card."), {},
                    say("Mark its corners, or take away what lies beside it, and take the picture again."));
    const Sides& sides = answers[0].sides;
    return Found{sides.corners, sides.sharp, confidence};
}

} // namespace ambit::measure
