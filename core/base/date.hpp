// Days of the local calendar, as an aircraft's papers are dated: no time of day, no zone.
#pragma once

#include "base/time.hpp"

namespace ambit {

/// A day of the Gregorian calendar, also before there was one (ISO 8601), in the years 1 to 9999.
class Date {
public:
    /// An error where there is no such day.
    [[nodiscard]] static Result<Date> of(int year, int month, int day);
    [[nodiscard]] static Result<Date> parse(std::string_view text); ///< exactly yyyy-mm-dd
    /// The day it was where `at` was read.
    [[nodiscard]] static Result<Date> of(LocalInstant at);

    [[nodiscard]] int year() const;
    [[nodiscard]] int month() const; ///< 1 to 12
    [[nodiscard]] int day() const;   ///< 1 to 31
    [[nodiscard]] Date endOfMonth() const;

    /// An error where that lies outside the years 1 to 9999.
    [[nodiscard]] Result<Date> plusDays(std::int32_t days) const;
    /// The last day of the month `months` later, whichever day of its month this is; 0 or more.
    [[nodiscard]] Result<Date> endOfMonthAfter(int months) const;

    /// Days from `from` to `to`; below zero if `to` comes first.
    friend std::int32_t daysBetween(Date from, Date to) { return to.number - from.number; }
    friend auto operator<=>(const Date&, const Date&) = default;

private:
    explicit Date(std::int32_t days) : number(days) {}

    std::int32_t number; ///< days since 1970-01-01
};

[[nodiscard]] std::int32_t daysBetween(Date from, Date to);
[[nodiscard]] std::string toText(Date date); ///< "2026-06-20"

} // namespace ambit
