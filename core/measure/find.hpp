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
    double edgeWidth = 0; ///< pixels in which a side goes from a tenth to nine tenths, the middle one of all
    double confidence =
        0; ///< 0 to 1: the share of the card's outline that was seen, less what speaks against it
};

/// Looks at a reduced picture first, then refines at full size. A person confirms the corners all the same.
/// Errors: a picture too small or too large (invalid); no card seen, or two answers about as good (refused,
/// with what to do).
[[nodiscard]] Result<Found> findCard(const Picture& picture);

} // namespace ambit::measure
