// Where in a reduced picture a card may lie: four straight edges that meet as a card's sides would, or three
// and the fourth where two of these end.
#pragma once

#include "measure/lines.hpp"
#include "measure/pose.hpp"

namespace ambit::measure {

struct Guess {
    Quad quad;        ///< clockwise, in the reduced picture
    double worth = 0; ///< how much speaks for it, as far as lines tell
};

/// The best first, at most `most`, no two alike. Edges are looked for in `finer`, too, the same picture less
/// reduced: there those that lie close beside each other are apart.
[[nodiscard]] std::vector<Guess> guessesOf(const Reduced& picture, const Reduced& finer, std::size_t most);

/// Of the way of lying that fits better.
[[nodiscard]] Pose likelierPose(const Quad& quad, const Frame& frame, double deviation);

/// The length of the side from the i-th corner to the next.
[[nodiscard]] double sideOf(const Quad& quad, std::size_t i);

/// Pixels, if it is a card: its outline's length over a card's.
[[nodiscard]] double millimetre(const Quad& quad);

/// The greatest distance of a corner to the other's, whichever corner either begins with.
[[nodiscard]] double apart(const Quad& a, const Quad& b);

} // namespace ambit::measure
