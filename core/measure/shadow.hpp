// A card throws a soft shadow beside itself, and its rim may be stronger than the card's edge.
#pragma once

#include "measure/edges.hpp"

namespace ambit::measure {

/// Where an edge was found on the rim of a shadow, or between rim and edge, moves it to the edge. Takes the
/// profiles for an edge blurred to `sharp` (pixels from a tenth to nine tenths, as of edges that surely have
/// no shadow beside them) and, at most `reach` pixels outside of it, a softer one behind which it is
/// brighter; what either is worth may differ from part to part, as what lies beneath does. `deviation` grows
/// by what the profiles leave open. False, and all as it was, if an edge without a shadow explains the
/// profiles about as well.
bool withoutShadow(Edge& edge, double sharp, double reach);

} // namespace ambit::measure
