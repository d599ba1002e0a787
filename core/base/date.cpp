#include "base/date.hpp"

#include <array>
#include <charconv>
#include <chrono>
#include <cstdio>

namespace ambit {

namespace {

namespace chrono = std::chrono;

constexpr std::int32_t numberOf(chrono::sys_days day) {
    return static_cast<std::int32_t>(day.time_since_epoch().count());
}

constexpr std::int32_t firstDay = numberOf(chrono::year(1) / 1 / 1);
constexpr std::int32_t lastDay = numberOf(chrono::year(9999) / 12 / 31);

chrono::year_month_day civil(std::int32_t number) {
    return chrono::sys_days(chrono::days(number));
}

tl::unexpected<Error> beyond() {
    return fail(ErrorCode::invalid, say("This day lies outside the calendar known here."), {},
                say("Use a day in the years 1 to 9999."));
}

/// -1: not all digits.
int digits(std::string_view text) {
    int value = -1;
    if (text.find_first_not_of("0123456789") == std::string_view::npos)
        std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

} // namespace

Result<Date> Date::of(int year, int month, int day) {
    const auto within = [](int value, int most) { return value >= 1 && value <= most; };
    const auto date = chrono::year(year) / month / day;
    if (!within(year, 9999) || !within(month, 12) || !within(day, 31) || !date.ok()) {
        return fail(ErrorCode::invalid, say("There is no such day."),
                    std::to_string(year) + '-' + std::to_string(month) + '-' + std::to_string(day),
                    say("Give a day of the calendar, in the years 1 to 9999."));
    }
    return Date(numberOf(date));
}

Result<Date> Date::parse(std::string_view text) {
    const bool formed = text.size() == 10 && text[4] == '-' && text[7] == '-';
    if (formed) {
        auto date = of(digits(text.substr(0, 4)), digits(text.substr(5, 2)), digits(text.substr(8)));
        if (date) return date;
    }
    return fail(ErrorCode::invalid, say("This is not a date."), std::string(text.substr(0, 40)),
                say("Write a day of the calendar like 2026-06-20."));
}

Result<Date> Date::of(LocalInstant at) {
    const auto local = chrono::milliseconds(at.at.ms) + chrono::minutes(at.offsetMinutes);
    const auto days = chrono::floor<chrono::days>(local).count();
    if (days < firstDay || days > lastDay) return beyond();
    return Date(static_cast<std::int32_t>(days));
}

int Date::year() const {
    return static_cast<int>(civil(number).year());
}

int Date::month() const {
    return static_cast<int>(static_cast<unsigned>(civil(number).month()));
}

int Date::day() const {
    return static_cast<int>(static_cast<unsigned>(civil(number).day()));
}

Date Date::endOfMonth() const {
    const auto date = civil(number);
    return Date(numberOf(date.year() / date.month() / chrono::last));
}

Result<Date> Date::plusDays(std::int32_t days) const {
    const std::int64_t sum = std::int64_t{number} + days;
    if (sum < firstDay || sum > lastDay) return beyond();
    return Date(static_cast<std::int32_t>(sum));
}

Result<Date> Date::endOfMonthAfter(int months) const {
    constexpr int most = 9999 * 12;
    if (months < 0 || months > most) return beyond();
    const int count = year() * 12 + month() - 1 + months; // months since January of the year 0
    const auto first = of(count / 12, count % 12 + 1, 1);
    return first ? Result<Date>(first->endOfMonth()) : beyond();
}

std::string toText(Date date) {
    std::array<char, 40> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02d-%02d", date.year(), date.month(), date.day());
    return text.data();
}

} // namespace ambit
