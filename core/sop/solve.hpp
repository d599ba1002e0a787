// The best walk and the proof that there is none better; or, beyond what can be proven, a good walk and how
// much better one could be at most.
#pragma once

#include "sop/problem.hpp"
#include "sop/work.hpp"

namespace ambit::sop {

struct Solution {
    Walk walk;
    Cost cost = 0;
    std::int64_t inversions = 0;
    Cost bound = 0;      ///< no walk costs less
    bool proven = false; ///< bound and cost are the same
    std::uint64_t states = 0;
};

/// The best walk found until the work is over, never worse than `known` if that is a whole walk. Errors:
/// those of validate; notFound: no walk does all tasks, or none was found.
[[nodiscard]] Result<Solution> solve(const Problem& problem, Work& work, const Walk& known = {});

/// Among walks that cost at most `most`, one with as few inversions as is found; `known` is one such walk and
/// comes back if none has fewer.
[[nodiscard]] Walk nearest(const Problem& problem, const Walk& known, Cost most, Work& work);

} // namespace ambit::sop
