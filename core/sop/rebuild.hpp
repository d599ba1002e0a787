// Search in large neighbourhoods: stretches of a walk that lie near each other are taken out, and each task
// is put back where, and at the place where, it costs least (ruin and recreate: Schrimpf and others, Journal
// of Computational Physics 159, 2000; by strings: Christiaens and Vanden Berghe, Transportation Science 54,
// 2020). What exchanging stretches can't do, a task done at another place, this does.
#pragma once

#include "sop/problem.hpp"
#include "sop/work.hpp"

namespace ambit::sop {

/// A walk as good as `walk` or better, without stops where nothing is done; searched until the work is over.
/// Two seeds of three begin not with the walk but with one built from nothing, each task where it costs
/// least: in another valley.
[[nodiscard]] Walk rebuilt(const Problem& problem, const Walk& walk, std::uint64_t seed, Work& work);

} // namespace ambit::sop
