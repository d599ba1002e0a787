// What a device's clock is worth, held against the satellites'.
#pragma once

#include "base/time.hpp"

namespace ambit::sky {

/// Out, if by more than this. A record's times are read to the minute, and the sun's are known to a minute;
/// what a clock is out by less moves nothing anybody reads by more than its last digit. It is also well above
/// what says nothing of the device: a receiver's words come up to seconds late, and one just switched on may
/// tell the satellites' own count, 18 seconds ahead of UTC since 2017.
inline constexpr std::int64_t mostOffMs = 60'000;

struct ClockOff {
    std::int64_t ms = 0; ///< the device's time less the satellites': above zero, the device is ahead
    bool out = false;    ///< by more than `mostOffMs`
    friend bool operator==(const ClockOff&, const ClockOff&) = default;
};

/// Both of the same moment. Which of the two is wrong it doesn't tell: an old receiver may take the date for
/// one 1,024 weeks earlier, the satellites' count of weeks being that short.
[[nodiscard]] constexpr ClockOff clockOff(Instant device, Instant satellites) {
    const std::int64_t ms = device.ms - satellites.ms;
    return {ms, ms > mostOffMs || ms < -mostOffMs};
}

} // namespace ambit::sky
