// Straight lines through values: least squares with its intervals, and Theil and Sen's line, which outliers
// don't move.
//
// Least squares: any textbook; sums about the means, in long double. Theil–Sen: H. Theil 1950, P. K. Sen
// 1968. The order statistics of the slopes are found by counting inversions in randomised rounds (J. Matoušek
// 1991), O(n log n), on integers: the result is the very pair that sorting all slopes would give.
#pragma once

#include "base/decimal.hpp"
#include "base/result.hpp"

#include <optional>
#include <vector>

namespace ambit::judge {

/// One value of a series.
struct Sample {
    Decimal x; ///< flight hours, landings or days
    Decimal y; ///< in the limit's unit
};

/// y = intercept + slope · x
struct Line {
    double slope = 0;
    double intercept = 0;
    [[nodiscard]] double at(double x) const { return intercept + slope * x; }
};

struct Interval {
    double low = 0;
    double high = 0;
};

/// Least squares through `count` values.
struct LeastSquares {
    Line line;
    std::size_t count = 0;
    double meanX = 0, meanY = 0;
    double spreadX = 0;     ///< sum of (x - meanX)², above zero
    double residual = 0;    ///< standard deviation about the line, count - 2 degrees of freedom
    double slopeError = 0;  ///< standard errors
    double originError = 0; ///< of the intercept
};

/// Error: fewer than 3 values, or all at one x.
[[nodiscard]] Result<LeastSquares> leastSquares(const std::vector<Sample>& samples);

/// The line through the origin, `count` - 1 degrees of freedom. Error: fewer than 2 values, or all at x = 0.
struct ThroughOrigin {
    double slope = 0;
    double slopeError = 0;
    double residual = 0;
};
[[nodiscard]] Result<ThroughOrigin> throughOrigin(const std::vector<Sample>& samples);

/// Where the line itself is at x, and where the next value will be, with so much confidence (0.95).
[[nodiscard]] Interval confidenceAt(const LeastSquares& fit, double x, double confidence);
[[nodiscard]] Interval predictionAt(const LeastSquares& fit, double x, double confidence);

/// Theil and Sen's line.
struct Robust {
    Line line;      ///< median of the slopes between pairs; intercept: median of the residuals y - slope · x
    double through; ///< the other convention's intercept: median y - slope · median x
    Interval slope; ///< Kendall and Sen's normal approximation, corrected for ties as scipy does
};

/// Error: fewer than 3 values, all at one x, or figures that together take more than 15 digits.
[[nodiscard]] Result<Robust> theilSen(const std::vector<Sample>& samples, double confidence = 0.95);

} // namespace ambit::judge
