// Straight edges of a reduced picture.
#pragma once

#include "measure/find.hpp"

#include <vector>

namespace ambit::measure {

/// A picture made smaller by a whole factor, with its gradients (grey levels a pixel).
struct Reduced {
    int factor = 1;
    int width = 0;
    int height = 0;
    std::vector<float> dx;
    std::vector<float> dy;

    /// The middle of a reduced pixel, in the full picture and back.
    [[nodiscard]] double up(double at) const { return at * factor + (factor - 1) / 2.0; }
    [[nodiscard]] double down(double at) const { return (at - (factor - 1) / 2.0) / factor; }
};

/// At most `longest` pixels on the longer side.
[[nodiscard]] Reduced reduced(const Picture& picture, int longest);

/// A straight edge; brighter on the side that `normal` points to.
struct Line {
    Pixel at;                                ///< its middle
    Pixel normal;                            ///< unit length
    std::vector<std::array<double, 2>> seen; ///< stretches along (-normal.y, normal.x) from `at`
    double length = 0;                       ///< of these, together
};

/// Edges grown from pixels whose gradients agree to 22.5 degrees (R. Grompone von Gioi et al., "LSD: a line
/// segment detector", Image Processing On Line 2, 2012: the growing only), cut where they bend; longest
/// first, no more than `most`. Each also counts as `seen` what carries it on.
[[nodiscard]] std::vector<Line> linesOf(const Reduced& picture, std::size_t most);

} // namespace ambit::measure
