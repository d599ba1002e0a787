// The outlines in a picture that may be a card's, weighed against each other.
#pragma once

#include "measure/sides.hpp"

namespace ambit::measure {

struct Answer {
    Sides sides;          ///< in the picture at the size it was looked at
    Corners corners;      ///< in the picture itself
    double edgeWidth = 0; ///< of the sharpest side, pixels of the picture itself, as in `Found`
    double odds = 0;      ///< that these are a card's sides, with all corners close to their places
};

/// The best first, none within a corner's tolerance of a better one.
[[nodiscard]] std::vector<Answer> answersOf(const Picture& picture);

} // namespace ambit::measure
