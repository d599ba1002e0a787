// A measured value for whoever walks a round in a test: so far within its limit that no uncertainty reaches
// there.
#pragma once

#include "airframe/airframe.hpp"

namespace ambit::test {

inline std::string wellWithin(const airframe::Limit& limit) {
    const double min = limit.min ? limit.min->approximate() : 0;
    const double max = limit.max ? limit.max->approximate() : 3 * min;
    return fixed((min + max) / 2, 1);
}

} // namespace ambit::test
