// A card's outline looked at in the full picture.
#pragma once

#include "measure/corners.hpp"
#include "measure/edges.hpp"
#include "measure/pose.hpp"

#include <optional>

namespace ambit::measure {

/// Four edges that meet, and what tells whether they are a card's.
struct Sides {
    Corners corners;
    Quad quad; ///< the corners' places
    std::array<Edge, 4> edges;
    double sharp = 0; ///< pixels from a tenth to nine tenths, of the sharpest side
    int shadowed = 0; ///< sides whose edge was told from a shadow's rim
    Pose pose;
    Roundness round;
    Beside beside;
};

/// The combinations of edges within `reach` pixels of the quad's sides that look most like a card, the best
/// first; empty if a side can't be seen, or they don't meet as a card's. `quad` goes round.
[[nodiscard]] std::vector<Sides> sidesNear(const Picture& picture, const Quad& quad, double reach);

/// Tells the card's edges from its shadow's rim, where the sides are not equally sharp.
void withoutShadow(const Picture& picture, Sides& sides);

} // namespace ambit::measure
