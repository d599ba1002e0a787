// Quantiles of Student's t and of the normal distribution, for intervals of a trend.
#pragma once

#include <cstddef>

namespace ambit::judge {

/// P(|T| <= t) of Student's t with so many degrees of freedom, 1 or more; t >= 0. The finite sums for whole
/// degrees of freedom, Abramowitz and Stegun 26.7.3 and 26.7.4 (from memory; tests hold it against published
/// quantiles).
[[nodiscard]] double studentWithin(double t, std::size_t freedom);

/// The t with P(|T| <= t) = confidence, which lies above 0 and below 1.
[[nodiscard]] double studentQuantile(double confidence, std::size_t freedom);

/// The z with P(|Z| <= z) = confidence, above 0 and below 1.
[[nodiscard]] double normalQuantile(double confidence);

} // namespace ambit::judge
