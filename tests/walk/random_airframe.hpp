// Small random airframes on which every point can be settled.
#pragma once

#include "airframe/airframe.hpp"

#include <random>

namespace ambit::test {

/// 3 to 9 stands (some raised, some reached from another only), 0 to 2 settings with 2 or 3 states, 4 to 28
/// points with `when`, `after`, openings and needs; one walk "all". Same generator state, same airframe.
[[nodiscard]] airframe::Airframe randomAirframe(std::mt19937& random);

} // namespace ambit::test
