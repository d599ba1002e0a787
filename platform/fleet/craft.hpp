// What one kind of aircraft brings for inventing rounds of it: worked out once, used for every one of them.
#pragma once

#include "fleet/fleet.hpp"
#include "fleet/trouble.hpp"
#include "walk/plan.hpp"

#include <map>

namespace ambit::fleet {

struct Walk {
    const airframe::Walk* walk = nullptr;
    std::vector<walk::Step> plan;
    std::vector<const airframe::Point*> points;
};

struct Craft {
    const airframe::Airframe* airframe = nullptr;
    Walk daily;      ///< the walk with most points
    Walk turnaround; ///< the one with fewest; may be the same
    /// Settled other than sound these would stop the rest of a walk; something at them is put right at once.
    std::map<std::string, bool> needed;
    std::map<std::string, double> often; ///< how often something is found at a point, among all
};

/// Errors of walk::makePlan; invalid: a point of a walk that no order can settle.
[[nodiscard]] Result<Craft> craftOf(const airframe::Airframe& airframe);

} // namespace ambit::fleet
