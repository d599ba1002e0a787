#include "sky/sky.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <sstream>

namespace ambit::sky {

namespace {

constexpr double degree = std::numbers::pi / 180;
constexpr std::int64_t msPerDay = 86'400'000;
constexpr std::int64_t msOfJ2000 = 946'728'000'000; ///< 2000-01-01T12:00:00Z

/// Degrees: where the sun stands straight overhead, seen from the earth's middle.
struct Overhead {
    double latitude;  ///< the sun's declination
    double longitude; ///< to be taken modulo 360
};

/// Numbers in parentheses: Meeus' formulas.
Overhead overheadAt(Instant instant) {
    const double days = static_cast<double>(instant.ms - msOfJ2000) / msPerDay;
    const double t = days / 36525;                                                   // (25.1)
    const double meanLongitude = 280.46646 + t * (36000.76983 + t * 0.0003032);      // (25.2)
    const double anomaly = degree * (357.52911 + t * (35999.05029 - t * 0.0001537)); // (25.3)
    const double centre = (1.914602 - t * (0.004817 + t * 0.000014)) * std::sin(anomaly) +
                          (0.019993 - t * 0.000101) * std::sin(2 * anomaly) +
                          0.000289 * std::sin(3 * anomaly);
    const double node = degree * (125.04 - t * 1934.136);
    const double nutation = -0.00478 * std::sin(node);
    const double longitude = degree * (meanLongitude + centre - 0.00569 + nutation); // apparent
    const double obliquity =
        degree * (23 + (26 + (21.448 - t * (46.8150 + t * (0.00059 - t * 0.001813))) / 60) / 60 + // (22.2)
                  0.00256 * std::cos(node));                                                      // (25.8)
    const double ascension =
        std::atan2(std::cos(obliquity) * std::sin(longitude), std::cos(longitude)) / degree; // (25.6)
    const double equationOfTime =
        meanLongitude - 0.0057183 - ascension + nutation * std::cos(obliquity); // (28.1)
    const double ofDay = days - std::floor(days);                               // since noon
    return {std::asin(std::sin(obliquity) * std::sin(longitude)) / degree,      // (25.7)
            -360 * ofDay - std::fmod(equationOfTime, 360)};
}

} // namespace

Result<Place> Place::of(double latitude, double longitude) {
    // Written so that what is not a number fails.
    if (!(std::abs(latitude) <= 90 && std::abs(longitude) <= 180)) {
        std::ostringstream where;
        where << latitude << ", " << longitude;
        return fail(
            ErrorCode::invalid, "There is no such place.", where.str(),
            "Give the latitude from -90 to 90 and the longitude from -180 to 180 degrees, north and east "
            "above zero.");
    }
    return Place(latitude, longitude);
}

Sky at(const Place& place, Instant instant) {
    const Overhead overhead = overheadAt(instant);
    const double away = degree * (place.longitude() - overhead.longitude); // the sun's hour angle
    const double sine =
        std::sin(degree * place.latitude()) * std::sin(degree * overhead.latitude) +
        std::cos(degree * place.latitude()) * std::cos(degree * overhead.latitude) * std::cos(away);
    const double elevation = std::asin(std::clamp(sine, -1.0, 1.0)) / degree;
    const Light light = elevation >= horizon         ? Light::day
                        : elevation >= twilightLimit ? Light::twilight
                                                     : Light::night;
    return {elevation, light};
}

const char* toText(Light light) {
    switch (light) {
    case Light::day:
        return "day";
    case Light::twilight:
        return "twilight";
    case Light::night:
        return "night";
    }
    return "";
}

} // namespace ambit::sky
