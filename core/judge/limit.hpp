// Is a measured value within its limit? Exact decimals in the limit's own unit.
#pragma once

#include "airframe/airframe.hpp"

namespace ambit::judge {

enum class Verdict { within, below, above };

/// `value` in the limit's unit. The limits themselves are within.
[[nodiscard]] Verdict against(const airframe::Limit& limit, const Decimal& value);

/// Of a value within: does its own 95 % interval, 1.96 standard uncertainties either way, reach beyond? Both
/// in the limit's unit.
[[nodiscard]] bool mayBeBeyond(const airframe::Limit& limit, const Decimal& value,
                               const Decimal& uncertainty);

/// "at least 4 qt", "at most 2.0 mm", "4 to 6 qt".
[[nodiscard]] Sentence toText(const airframe::Limit& limit);

/// "read on a gauge", "counted".
[[nodiscard]] Sentence toText(airframe::Means means);

} // namespace ambit::judge
