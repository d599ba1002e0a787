// Where the values of a measured point are going, from what records and the round in hand say of it.
#pragma once

#include "judge/trend.hpp"
#include "round/event.hpp"

namespace ambit::round {

/// A value of one point, as a record or the round in hand has it.
struct Past {
    Instant at; ///< of the round's conclusion; of the round in hand: now
    std::vector<CounterReading> counters;
    std::string value;
    std::string unit;        ///< never empty
    std::string uncertainty; ///< empty: not stated
    bool renewed = false;
    std::string by = {};   ///< who signed the record
    std::string from = {}; ///< what it was read from, in EVENT.md's word; empty: not said
};

/// A point's values over one count, judged. Kept: `told`.
struct Course {
    judge::TrendQuestion question;
    std::vector<judge::Measured> values; ///< in the limit's unit; `told` has the newest of them
    judge::Trend trend;
    std::string unit; ///< of x: "h", "days"
    Trended told;     ///< its words are those of judge::toTexts
};

/// `over`: a counter's id or "days"; empty: as the airframe says, else the first counter in hours, of those
/// that the newest value has; else days. Values without that counter, that read more than the newest, or that
/// run backwards, are left out: the file shows such readings as conflicts. `past`: oldest first; the last is
/// the one in hand. Errors: no value is left, or as of judge::trendOf.
[[nodiscard]] Result<Course> courseOf(const airframe::Airframe& airframe, const airframe::Point& point,
                                      const std::vector<Past>& past, std::string over = {});

} // namespace ambit::round
