// The one-to-one map between a plane and its picture.
#pragma once

#include "measure/estimate.hpp"

#include <array>
#include <optional>

namespace ambit::measure {

/// A place on the plane, millimetres from the card's first corner: x along its first side, y along its last.
struct Spot {
    double x = 0;
    double y = 0;
};

/// Four places in the picture, clockwise as they are seen.
using Quad = std::array<Pixel, 4>;

/// Convex and clockwise as seen (y down), no three in a line.
[[nodiscard]] bool goesRound(const Quad& quad);

/// Maps a rectangle's plane to the picture: 3 × 3, by rows.
class Homography {
public:
    /// The closed form for four points (P. Heckbert, "Fundamentals of texture mapping and image warping",
    /// 1989, 2.2.3), solved about the quad's middle at unit size, so that it is as well conditioned as the
    /// quad allows. `quad` goes round; its first corner is (0, 0), its second (first, 0), its third (first,
    /// last).
    [[nodiscard]] static Homography of(const Quad& quad, double first, double last);

    [[nodiscard]] Pixel toPicture(Spot spot) const;
    /// None at or beyond the plane's horizon.
    [[nodiscard]] std::optional<Spot> toPlane(Pixel pixel) const;
    [[nodiscard]] const std::array<double, 9>& matrix() const { return forward; } ///< mm to pixels

private:
    std::array<double, 9>
        forward{}; // rectangle to normalised picture, then with the picture's shift and scale
    std::array<double, 9> backward{}; // normalised picture to rectangle
    Pixel middle;
    double scale = 1;
};

} // namespace ambit::measure
