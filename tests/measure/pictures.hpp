// Invented photos of a card on an aircraft's part, hard ones. In each, by chance:
// - a part of 40 to 200 grey levels with paint texture over three scales (up to ±14 levels), in one of two
// light to
//   shade ramps; 0 to 5 panels (rectangles, some with round corners, some of nearly a card's ratio), 0 to 3
//   cables, 0 to 2 rows of rivets;
// - a card 12 to 35 % of the picture's width, tilted to 55 degrees, plain (half of them) or printed with a
// stripe, a
//   photo's box and lines of writing; its mean differs from the part's by `contrast`: 15 to 120 levels,
//   darker or brighter; corners rounded to 2.88 to 3.48 mm; a soft shadow of its own;
// - one in three has a shadow cast across (half the light gone), one in five a finger over a side or a
// corner;
// - blur of 0.5 to 2 pixels at 2000 pixels' width, in proportion at others; noise of 1 to 6 levels in each
// pixel, whatever the width.
// Not in them: lens distortion, glare, motion blur, hands that hold the card, more than one card.
#pragma once

#include "measure/find.hpp"

#include "views.hpp"

namespace ambit::measure::views {

struct Photo {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> pixels;
    Quad card;                ///< clockwise, long side first
    double contrast = 0;      ///< of the card's ground against the part's, grey levels
    double leastContrast = 0; ///< the same, or against the part in the card's own shadow if that is less. A
                              ///< side over a panel may have less than either, or more
    bool finger = false;
    bool printed = false;
    bool shadow = false;

    [[nodiscard]] Picture picture() const { return {pixels.data(), width, height, width}; }
};

/// The same seed, the same photo; 4:3. `withCard` false: the same clutter and no card.
[[nodiscard]] Photo photo(std::uint64_t seed, int width, bool withCard = true);

/// All corners, whichever comes first, within that share of the card's longest side in the picture, or 2
/// pixels if that is more.
[[nodiscard]] bool isRight(const Corners& corners, const Photo& photo, double share = 0.01);

} // namespace ambit::measure::views
