// Plane geometry without rounding, on a grid of micrometres.
#pragma once

#include "airframe/airframe.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace ambit::airframe {

/// Micrometres: within ±100 m every product below is exact in 64 bits.
struct Spot {
    std::int64_t x = 0;
    std::int64_t y = 0;
    friend bool operator==(const Spot&, const Spot&) = default;
};

inline Spot spotAt(const Place& place) {
    return {std::llround(place.x * 1e6), std::llround(place.y * 1e6)};
}

/// Positive: a, b, c turn left; 0: they lie on one line.
inline std::int64_t turn(Spot a, Spot b, Spot c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

inline int sign(std::int64_t value) {
    return (value > 0) - (value < 0);
}

inline bool isBetween(Spot spot, Spot a, Spot b) {
    return turn(a, b, spot) == 0 && spot.x >= std::min(a.x, b.x) && spot.x <= std::max(a.x, b.x) &&
           spot.y >= std::min(a.y, b.y) && spot.y <= std::max(a.y, b.y);
}

/// Do the segments a–b and c–d cross or touch?
inline bool doMeet(Spot a, Spot b, Spot c, Spot d) {
    if (isBetween(c, a, b) || isBetween(d, a, b) || isBetween(a, c, d) || isBetween(b, c, d)) return true;
    return sign(turn(a, b, c)) * sign(turn(a, b, d)) < 0 && sign(turn(c, d, a)) * sign(turn(c, d, b)) < 0;
}

} // namespace ambit::airframe
