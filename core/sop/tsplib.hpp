// Instances of the sequential ordering problem as TSPLIB writes them (Reinelt, "TSPLIB 95", 1995, section 1.1
// and type SOP): TYPE, DIMENSION, EDGE_WEIGHT_TYPE EXPLICIT, EDGE_WEIGHT_FORMAT FULL_MATRIX,
// EDGE_WEIGHT_SECTION with the dimension once more and then a row per node. -1 at row i, column j: j comes
// before i.
#pragma once

#include "sop/problem.hpp"

#include <string_view>

namespace ambit::sop {

/// Node 0 is the start, every other node a place with one task: node i is task i - 1. syntax, with the line:
/// not such a file, or one cut short; unsupported: another type or format; invalid: a weight out of range, a
/// node after itself, a cycle, a last node that need not be last or a first that need not be first.
[[nodiscard]] Result<Problem> readTsplib(std::string_view text);

/// Nodes as TSPLIB numbers them, 1 first.
[[nodiscard]] Numbers tsplibOrder(const Walk& walk);

} // namespace ambit::sop
