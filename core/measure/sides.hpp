// A card's outline looked at in the full picture.
#pragma once

#include "measure/find.hpp"

namespace ambit::measure {

struct Sides {
    Corners corners;
    double seen = 0;      ///< the share of the sides' samples that lie on the fitted lines, of the worst side
    double seenAll = 0;   ///< of all four
    double round = 0;     ///< -1 to 1: corners that are rounded as a card's, less those that aren't
    double edgeWidth = 0; ///< pixels
    double strength = 0;  ///< grey levels a pixel, mean of all samples
    double score = 0;     ///< all that together, 0 to 1
};

/// Fits a line to the edges found within `reach` pixels of each side's middle 80 %, and lets them meet.
/// `quad` goes round. False if a side can't be seen, or they don't meet as a card's.
[[nodiscard]] bool refined(const Picture& picture, const Quad& quad, double reach, Sides& sides);

} // namespace ambit::measure
