// Local search on a whole walk: two neighbouring stretches change places wherever that saves and nothing
// comes too early (the path-preserving 3-exchange: Gambardella and Dorigo, INFORMS Journal on Computing
// 12(3), 2000), kicked out of every dead end (iterated local search: Lourenço, Martin and Stützle, 2003).
#pragma once

#include "sop/problem.hpp"
#include "sop/work.hpp"

namespace ambit::sop {

/// A walk as good as `walk` or better; found until the work is over. Moves are
/// judged as if every gate were open and each task stayed at its place; what comes back is judged as it is.
[[nodiscard]] Walk exchanged(const Problem& problem, const Walk& walk, std::uint64_t seed, Work& work);

} // namespace ambit::sop
