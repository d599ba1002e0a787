// A measured value and what it is worth.
#pragma once

#include <cstddef>
#include <functional>
#include <vector>

namespace ambit::measure {

/// A place in a picture, pixels: x to the right, y down, the first pixel's centre at (0, 0).
struct Pixel {
    double x = 0;
    double y = 0;
};

/// A place that was touched or found; `deviation` is the standard deviation of x, and of y, in pixels.
struct Mark {
    Pixel at;
    double deviation = 0;
};

/// `value` with its standard uncertainty, and the interval that holds the true value 95 times in 100. In the
/// unit of the value: mm, mm² or degrees.
struct Estimate {
    double value = 0;
    double uncertainty = 0;
    double low = 0;
    double high = 0;
};

/// The 97.5 % quantile of the normal distribution: half the width of a 95 % interval, in standard deviations.
inline constexpr double cover95 = 1.959963984540054;

/// An input of a measurement, independent of the others.
struct Input {
    double value = 0;
    double deviation = 0;
};

/// The law of propagation of uncertainty, first order (JCGM 100:2008, 5.1.2). The sensitivities are central
/// differences over a quarter of each input's deviation. Good as long as `of` is nearly straight over the
/// inputs' deviations: a length that is not much more than its own uncertainty comes out too long.
[[nodiscard]] Estimate propagated(const std::vector<Input>& inputs,
                                  const std::function<double(const std::vector<double>&)>& of);

} // namespace ambit::measure
