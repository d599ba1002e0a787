// Points in time as values. Core never asks a clock: whoever calls hands the time in.
#pragma once

#include "base/result.hpp"

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

namespace ambit {

/// Milliseconds since 1970-01-01T00:00:00Z, leap seconds not counted (POSIX). Years 1970 to 9999.
struct Instant {
    std::int64_t ms = 0;
    friend auto operator<=>(const Instant&, const Instant&) = default;
};

/// A time with the local offset from UTC it was read with, minutes, -14 h to +14 h.
struct LocalInstant {
    Instant at;
    int offsetMinutes = 0;
    friend bool operator==(const LocalInstant&, const LocalInstant&) = default;
};

[[nodiscard]] std::string toText(Instant at);                      ///< "2026-06-20T05:30:00.000Z"
[[nodiscard]] std::string toText(LocalInstant at);                 ///< "2026-06-20T07:30:00.000+02:00"
[[nodiscard]] Result<Instant> parseInstant(std::string_view text); ///< exactly the form above, Z only
[[nodiscard]] Result<LocalInstant>
parseLocalInstant(std::string_view text); ///< RFC 3339, fraction 0 to 3 digits, Z or ±hh:mm

} // namespace ambit
