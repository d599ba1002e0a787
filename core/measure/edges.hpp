// The straight edges that run along a supposed side of a card, in the full picture.
#pragma once

#include "measure/find.hpp"

#include <vector>

namespace ambit::measure {

/// Between the pixels; beyond the picture its rim carries on.
[[nodiscard]] double greyAt(const Picture& picture, Pixel at);

inline constexpr double profileStep = 0.5; ///< pixels

struct Edge {
    Pixel at;    ///< its middle
    Pixel along; ///< unit length, from the side's first corner to its second
    double evidence =
        0;            ///< root of grey levels a pixel, the mean over the whole side: what tells it from noise
    double seen = 0;  ///< the share of the side on which the edge itself is seen there
    double gap = 0;   ///< the share of the side in the longest stretch where it isn't
    double step = 0;  ///< outside less inside, grey levels; its mean profile's
    double width = 0; ///< of that profile, pixels from a tenth to nine tenths
    double deviation = 0; ///< of where it crosses the side's end that is less known, pixels
    double rim = 0; ///< the logarithm of how many times more of its profiles is unexplained by an edge alone
                    ///< than by one with a shadow's rim beside it; 0 until `withoutShadow`
    std::vector<std::vector<double>>
        profiles; ///< mean grey across parts of it, from inside to outside, the
                  ///< edge in the middle, `profileStep` apart; evenly along, the first corner's first
    double partLength = 0; ///< pixels along
};

/// The edges within `reach` pixels of the middle part of the side from `a` to `b`, strongest first, at most
/// five, none much fainter across a stronger one. Outwards is left of a to b where y goes down.
[[nodiscard]] std::vector<Edge> edgesAlong(const Picture& picture, Pixel a, Pixel b, double reach);

} // namespace ambit::measure
