// What speaks for four edges being a card's outline, weighed.
#pragma once

#include "measure/sides.hpp"

namespace ambit::measure {

/// What is weighed, the first being 1: a card's likeness is the sum of each times its weight.
inline constexpr std::size_t signs = 36;
[[nodiscard]] std::array<double, signs> signsOf(const Sides& sides);

/// The natural logarithm of the odds that these are a card's sides.
[[nodiscard]] double likeness(const Sides& sides);

/// The chance that, if it is a card, all its corners are `closeTo` their places: that of the corner least
/// known, by its deviation.
[[nodiscard]] double within(const Corners& corners);

/// How far off a corner may be, pixels: one percent of the longest side, or two if that is more.
[[nodiscard]] double closeTo(const Quad& quad);

} // namespace ambit::measure
