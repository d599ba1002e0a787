// A card throws a soft shadow beside itself, and its rim may be stronger than the card's edge.
#pragma once

#include "measure/edges.hpp"

namespace ambit::measure {

/// Where edges were found on the rim of a shadow, or between rim and edge, moves them to the edge. Takes the
/// profiles for an edge blurred to `sharp` (pixels from a tenth to nine tenths, as of edges that surely have
/// no shadow beside them) and, at most `reach` pixels outside of it (0: this side isn't asked), a softer one
/// behind which it is brighter by what the shadow takes of the light, the same share on all sides.
/// `deviation` becomes what the profiles leave open. How many were moved: an edge that a single step explains
/// about as well stays.
int withoutShadow(std::array<Edge, 4>& edges, double sharp, const std::array<double, 4>& reach);

} // namespace ambit::measure
