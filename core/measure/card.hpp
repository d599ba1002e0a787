// The measure that everybody carries: a card of the size ID-1.
#pragma once

namespace ambit::measure {

/// ISO/IEC 7810, ID-1, millimetres. Sizes and corner radius as the standard gives them; the limits of an
/// unused card are from memory.
namespace card {
inline constexpr double length = 85.60;
inline constexpr double width = 53.98;
inline constexpr double leastLength = 85.47;
inline constexpr double mostLength = 85.72;
inline constexpr double leastWidth = 53.92;
inline constexpr double mostWidth = 54.03;
inline constexpr double cornerRadius = 3.18; ///< 2.88 to 3.48

/// Standard deviation of a size that is anywhere between its limits, all alike: their distance over root 12
/// (JCGM 100:2008, 4.3.7).
inline constexpr double lengthDeviation = (mostLength - leastLength) / 3.4641016151377544;
inline constexpr double widthDeviation = (mostWidth - leastWidth) / 3.4641016151377544;
} // namespace card

/// Which side of the card joins the first and second corner.
enum class Lies { longSideFirst, shortSideFirst };

} // namespace ambit::measure
