// A lower bound for problems too large for the others: a walk is a tree from the start in which nothing
// branches.
#pragma once

#include "sop/problem.hpp"
#include "sop/work.hpp"

namespace ambit::sop {

/// The cheapest spanning tree (arborescence: Edmonds, "Optimum branchings", 1967) from the start over all
/// tasks to the end, at prices that make nothing branch (Held and Karp, Operations Research 18, 1970). No
/// walk costs less. In units; at least `never` if there is no walk; rises until it reaches `enough` or the
/// work is over, and is 0 where there is not even work for one tree.
[[nodiscard]] Cost treeBound(const Problem& problem, Cost enough, Work& work);

} // namespace ambit::sop
