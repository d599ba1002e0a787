// Small random airframes on which every point can be settled.
#pragma once

#include "airframe/airframe.hpp"

#include <random>

namespace ambit::test {

enum class Size { usual, small }; ///< small: few enough stands, points and states to try everything

/// 3 to 9 stands (some raised, some reached from another only), 0 to 2 settings with 2 or 3 states, 4 to 28
/// points with `when`, `after`, openings and needs; one walk "all". Same generator state, same airframe.
[[nodiscard]] airframe::Airframe randomAirframe(std::mt19937& random, Size size = Size::usual);

} // namespace ambit::test
