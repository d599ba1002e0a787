// The invented life of one aircraft, day by day.
#pragma once

#include "fleet/people.hpp"
#include "fleet/shop.hpp"

namespace ambit::fleet {

/// What a life stands on; all of it outlives the life.
struct Setting {
    const Plan* plan = nullptr;
    const Machine* machine = nullptr;
    std::size_t number = 0; ///< of the aircraft, from 0
    const Craft* craft = nullptr;
    const Crew* crew = nullptr;   ///< of its airfield
    const Crew* guests = nullptr; ///< of another one
};

[[nodiscard]] Result<Made> live(const Setting& setting, const Take& take);

} // namespace ambit::fleet
