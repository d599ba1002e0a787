// Where the sun stands, and whether that is day, twilight or night.
//
// The sun's place: J. Meeus, "Astronomical Algorithms", 2nd ed., chapter 25 (low accuracy: 0.01 degrees),
// with the equation of time of his 28.1, taken at the very instant asked for: the equations of the US
// national ocean agency's solar calculator. The sun's parallax (0.0024 degrees) is left out, and so is the
// difference between the earth's time and the planets' (below 3.5 minutes from 1950 to 2100, in which the sun
// goes 0.0025 degrees at most). Made for the years 1950 to 2100; the further beyond, the less right.
#pragma once

#include "base/result.hpp"
#include "base/time.hpp"

namespace ambit::sky {

/// A place on the earth, WGS 84.
class Place {
public:
    /// An error unless both are numbers, latitude from -90 to 90 and longitude from -180 to 180 degrees,
    /// north and east above zero.
    [[nodiscard]] static Result<Place> of(double latitude, double longitude);

    [[nodiscard]] double latitude() const { return north; }
    [[nodiscard]] double longitude() const { return east; }

private:
    Place(double latitude, double longitude) : north(latitude), east(longitude) {}

    double north;
    double east;
};

/// Elevation of the sun's centre at rise and set, degrees: its upper rim then touches an open horizon, by 34'
/// of refraction and 16' of radius.
inline constexpr double horizon = -0.833;
/// And where civil twilight begins and ends.
inline constexpr double twilightLimit = -6;

enum class Light {
    day,      ///< the sun is at or above `horizon`
    twilight, ///< at or above `twilightLimit`
    night, ///< below: from the end of evening civil twilight to the beginning of morning civil twilight (14
           ///< CFR 1.1)
};

struct Sky {
    double elevation =
        0; ///< of the sun's centre over a level horizon, degrees; geometric: refraction is not in it
    Light light{};
};

/// The sky over `place`, at sea level, with nothing in the way.
[[nodiscard]] Sky at(const Place& place, Instant instant);

[[nodiscard]] const char* toText(Light light); ///< "day", "twilight", "night"

} // namespace ambit::sky
