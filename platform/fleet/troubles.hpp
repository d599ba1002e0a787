// The list behind trouble.hpp.
#pragma once

#include "fleet/trouble.hpp"

namespace ambit::fleet {

[[nodiscard]] const std::vector<Trouble>& troubles();

} // namespace ambit::fleet
