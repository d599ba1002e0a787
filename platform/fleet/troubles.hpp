// The list behind trouble.hpp, in two parts.
#pragma once

#include "fleet/trouble.hpp"

namespace ambit::fleet {

[[nodiscard]] const std::vector<Trouble>& troublesOfPower(); ///< engine, propeller, rotor, fuel
[[nodiscard]] const std::vector<Trouble>& troublesOfBody();  ///< the rest

} // namespace ambit::fleet
