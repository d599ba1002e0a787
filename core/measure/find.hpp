// Finds a card of the size ID-1 in a picture: its four corners, or the words why one can't be sure.
#pragma once

#include "base/result.hpp"
#include "measure/plane.hpp"

#include <cstdint>

namespace ambit::measure {

/// A grey picture that somebody else holds: 8 bits a pixel, row by row.
struct Picture {
    const std::uint8_t* pixels = nullptr;
    int width = 0;
    int height = 0;
    int stride = 0; ///< from one row to the next, bytes; at least the width
};

inline constexpr std::int64_t mostPixels = 50'000'000;

struct Found {
    Corners corners; ///< where the sides meet, clockwise as seen; deviations from how straight the sides are
    double edgeWidth = 0;  ///< pixels in which the sharpest side goes from a tenth to nine tenths
    double confidence = 0; ///< 0 to 1: the chance that all corners are within one percent of the longest
                           ///< side (or two pixels), as it was in the invented pictures of tests/measure
};

/// Looks for straight edges in reduced pictures first, then at what may be the card in the full one. Of
/// answers that can't both be the card (and none at all is one) it gives one if it is likely enough; a person
/// confirms the corners all the same. Errors: a picture too small or too large (invalid); no card seen, or
/// another answer nearly as good (refused, with what to do).
[[nodiscard]] Result<Found> findCard(const Picture& picture);

} // namespace ambit::measure
