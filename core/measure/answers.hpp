// The outlines in a picture that may be a card's, weighed against each other.
#pragma once

#include "measure/sides.hpp"

namespace ambit::measure {

struct Answer {
    Sides sides;
    double odds = 0; ///< that these are a card's sides, with all corners close to their places
};

/// The best first, none within a corner's tolerance of a better one.
[[nodiscard]] std::vector<Answer> answersOf(const Picture& picture);

} // namespace ambit::measure
