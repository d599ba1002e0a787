// What speaks for four edges being a card's outline, weighed.
#pragma once

#include "measure/sides.hpp"

namespace ambit::measure {

/// What is weighed, the first being 1: a card's likeness is the sum of each times its weight.
inline constexpr std::size_t signs = 25;
[[nodiscard]] std::array<double, signs> signsOf(const Sides& sides);

/// The natural logarithm of the odds that these are a card's sides, with all corners `closeTo` their places.
[[nodiscard]] double likeness(const Sides& sides);

/// How far off a corner may be, pixels: half a percent of the longest side, or two if that is more.
[[nodiscard]] double closeTo(const Quad& quad);

} // namespace ambit::measure
