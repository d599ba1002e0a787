#include "measure/find.hpp"
#include "measure/answers.hpp"
#include "measure/likeness.hpp"

namespace ambit::measure {
namespace {

// So that 0.3 % is wrong, less than is asked, on seeds 0 to 6499 of the invented pictures, each fifth by
// weights made from the others, and as much on seeds 0 to 2499 of twice the width.
constexpr double leastConfidence = 0.72;

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
    const double sure = answers.empty() ? 0 : within(answers[0].corners);
    if (sure * best < leastConfidence * (1 + best))
        return fail(
            ErrorCode::refused, say("No card can be seen for sure."), {},
            say("Mark its corners, or lay it where all four sides stand out, and take the picture again."));
    // At most one of them is the card.
    const double confidence = sure * best / (1 + best + others);
    if (confidence < leastConfidence)
        return fail(ErrorCode::refused, say("More than one shape looks like the card."), {},
                    say("Mark its corners, or take away what lies beside it, and take the picture again."));
    return Found{answers[0].corners, answers[0].edgeWidth, confidence};
}

} // namespace ambit::measure
