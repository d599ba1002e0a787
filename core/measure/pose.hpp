// How the card was held before the camera, as far as four corners tell; and whether they can be a card's.
#pragma once

#include "measure/card.hpp"
#include "measure/homography.hpp"

namespace ambit::measure {

/// A picture's size, pixels. Uncropped, so that the lens looks at its middle.
struct Frame {
    int width = 0;
    int height = 0;
};

/// What the corners say of one way the card may lie.
struct Pose {
    double misfit = 0; ///< chi² with one degree of freedom: how badly the corners fit a card seen by any
                       ///< camera with a focal length between `leastFocal` and `mostFocal`
    double focal = 0;  ///< the best one, as a multiple of the picture's longer side
    double tilt = 0;   ///< degrees between the line of sight at the card's middle and the card's normal
};

/// Focal lengths of cameras that people carry, over the picture's longer side: from very wide angle to a
/// threefold tele lens (common practice, no source).
inline constexpr double leastFocal = 0.5;
inline constexpr double mostFocal = 3;
/// Degrees; more counts against a way of lying, one deviation for 3 degrees: nobody measures from there, and
/// with a long enough lens a very flat look makes a card lying the other way of any.
inline constexpr double likelyTilt = 60;

/// The two conditions that a rectangle's sides stand square to each other and have the card's ratio (R.
/// Hartley, A. Zisserman, "Multiple view geometry", 2nd ed., 8.8: vanishing points and the image of the
/// absolute conic), each over what the corners' `deviation` (pixels) leaves open, at the focal length that
/// fits best. `quad` goes round.
[[nodiscard]] Pose poseOf(const Quad& quad, Lies lies, const Frame& frame, double deviation);

/// Whether a card lying either way could look so with some focal length: a quick look, `poseOf` at every
/// second focal length until one misfits by less than `most`.
[[nodiscard]] bool mayBeCard(const Quad& quad, const Frame& frame, double deviation, double most);

} // namespace ambit::measure
