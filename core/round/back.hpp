// What is looked at again after an interruption, by the operator's rule.
#pragma once

#include "round/state.hpp"

namespace ambit::round {

/// The points that the rule wants to be settled again now, in the order in which they were settled: the last
/// so many, those settled since one came to this stand, or all. Only points that count as looked at (sound or
/// finding): a point said as not inspected needs no second look. With a point that is seen through what has
/// been closed since, whatever opens that and whatever closes it comes too. Left out is what can't be seen
/// any more because a setting can't be brought back. The rule is the operator's: of published advice, one
/// says "from the beginning", another "the interrupted section again"; backing up some points is common
/// practice, no source.
[[nodiscard]] std::vector<std::string> askedBack(const State& state, const airframe::Airframe& airframe,
                                                 const BackRule& rule);

} // namespace ambit::round
