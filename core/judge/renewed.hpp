// A jump against the wear: was the part renewed or repainted?
#pragma once

#include "judge/trend.hpp"

namespace ambit::judge {

/// Index of the last value that begins a new series by a jump against the wear: with a lower limit alone
/// values fall as the part wears, with an upper limit alone they rise; with both nothing is looked for. Two
/// values before and two after must lie on the two sides, so that one slip is no renewal, and further apart
/// than Student's t allows (99.9 %) for the noise: the median deviation of the other steps, no less than the
/// values' uncertainty and their last digit. 0: none.
[[nodiscard]] std::size_t renewedAt(const std::vector<Measured>& values, const airframe::Limit& limit);

/// The least noise there can be: the values' uncertainty (root mean square), and rounding to the last digit.
[[nodiscard]] double noiseFloor(const std::vector<Measured>& values);

} // namespace ambit::judge
