// When the sun rises and sets on a day at a place, and when civil twilight begins and ends.
#pragma once

#include "base/date.hpp"
#include "sky/sky.hpp"

#include <optional>
#include <vector>

namespace ambit::sky {

enum class Change { twilightBegins, rise, set, twilightEnds };

struct SunEvent {
    Change what{};
    Instant at; ///< the first millisecond after it: at(place, `at`).light is already the new one
    friend bool operator==(const SunEvent&, const SunEvent&) = default;
};

/// Against `horizon` or `twilightLimit`, over a whole day.
enum class Course {
    crosses,
    staysAbove,
    staysBelow,
};

struct SunDay {
    /// In order. Mostly one of each; in high latitudes, and where the offset is far from the place's, one may
    /// be missing or come twice: a sun that sets at 00:02 and at 23:58, a day without end that begins by a
    /// rise.
    std::vector<SunEvent> events;
    Course overHorizon{};  ///< staysAbove: the sun never sets; staysBelow: it never rises
    Course overTwilight{}; ///< staysAbove: no night, twilight at the darkest; staysBelow: night all day, not
                           ///< even twilight

    /// The first of that kind; none if there is none.
    [[nodiscard]] std::optional<Instant> first(Change what) const;
};

/// From midnight to midnight by a clock `offsetMinutes` ahead of UTC. Right to a minute from 1950 to 2100 by
/// the accuracy of `at`, wherever the sun crosses by 0.015 degrees a minute or more; where it merely grazes,
/// the elevation at the time given is that right, and a rise and set that close may be missed, or told where
/// there are none.
[[nodiscard]] SunDay sunDay(const Place& place, Date day, int offsetMinutes);

/// That midnight at its beginning.
[[nodiscard]] Instant startOf(Date day, int offsetMinutes);

[[nodiscard]] const char* toText(Change change); ///< "twilight begins", "rise", "set", "twilight ends"

} // namespace ambit::sky
