// When a round's plan no longer fits: a new order of what is left. Pure; whoever holds the log commits what
// comes out.
#pragma once

#include "round/state.hpp"

namespace ambit::round {

/// The order in which the walk starts. Same errors as walk::makePlan.
[[nodiscard]] Result<std::vector<walk::Step>> firstPlan(const airframe::Airframe& airframe,
                                                        const std::string& walkId);

/// What is left with this zone first. notFound: no such zone; refused: nothing is left to settle there.
[[nodiscard]] Result<Planned> towardsZone(const State& state, const airframe::Airframe& airframe,
                                          const std::string& zone);

/// What is left ordered anew, or nullopt where the plan as it stands can still be followed, leaves out
/// nothing that can be settled and costs at most 5 % more than the new one: a pilot's habit is worth that.
[[nodiscard]] Result<std::optional<Planned>> reordered(const State& state, const airframe::Airframe& airframe,
                                                       const std::string& why);

} // namespace ambit::round
