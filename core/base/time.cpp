#include "base/time.hpp"

#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <optional>

namespace ambit {

namespace {

constexpr std::int64_t msPerMinute = 60'000;
constexpr std::int64_t msPerDay = 1'440 * msPerMinute;
constexpr std::int64_t lastMs = 253'402'300'799'999; // 9999-12-31T23:59:59.999Z
constexpr int mostOffset = 14 * 60;

/// "2026-06-20T05:30:00.000", with no zone.
std::string civil(std::int64_t ms) {
    using namespace std::chrono;
    const auto day = floor<days>(milliseconds(ms));
    const year_month_day date{sys_days(day)};
    const int inDay = static_cast<int>(ms - std::int64_t{day.count()} * msPerDay);
    std::string text = "0000-00-00T00:00:00.000";
    const auto put = [&text](std::size_t end, int value) {
        for (; value > 0; value /= 10)
            text[--end] = static_cast<char>('0' + value % 10);
    };
    put(4, static_cast<int>(date.year()));
    put(7, static_cast<int>(static_cast<unsigned>(date.month())));
    put(10, static_cast<int>(static_cast<unsigned>(date.day())));
    put(13, inDay / 3'600'000);
    put(16, inDay / 60'000 % 60);
    put(19, inDay / 1'000 % 60);
    put(23, inDay % 1'000);
    return text;
}

/// Reads a text from left to right; once something doesn't fit, `good` is false.
struct Scanner {
    std::string_view rest;
    bool good = true;

    int digits(std::size_t count) {
        int value = 0;
        good = good && rest.size() >= count;
        for (std::size_t i = 0; good && i < count; ++i) {
            good = rest[i] >= '0' && rest[i] <= '9';
            value = value * 10 + (rest[i] - '0');
        }
        if (!good) return 0;
        rest.remove_prefix(count);
        return value;
    }

    bool maybe(char c) {
        if (!good || !rest.starts_with(c)) return false;
        rest.remove_prefix(1);
        return true;
    }

    void must(char c) { good = maybe(c); }
};

/// Milliseconds of the date and the time of day, as if in UTC; nullopt: no such day or time.
std::optional<std::int64_t> scanCivil(Scanner& scan) {
    using namespace std::chrono;
    const int y = scan.digits(4);
    scan.must('-');
    const int m = scan.digits(2);
    scan.must('-');
    const int d = scan.digits(2);
    scan.must('T');
    const int hour = scan.digits(2);
    scan.must(':');
    const int minute = scan.digits(2);
    scan.must(':');
    const int second = scan.digits(2);
    const year_month_day date{year(y), month(static_cast<unsigned>(m)), day(static_cast<unsigned>(d))};
    if (!scan.good || !date.ok() || hour > 23 || minute > 59 || second > 59) return std::nullopt;
    return sys_days(date).time_since_epoch().count() * msPerDay + (hour * 60 + minute) * msPerMinute +
           std::int64_t{second} * 1'000;
}

/// Up to three digits after a point, as milliseconds.
int scanFraction(Scanner& scan) {
    if (!scan.maybe('.')) return 0;
    int value = scan.digits(1) * 100;
    for (const int weight : {10, 1}) {
        if (!scan.rest.empty() && scan.rest[0] >= '0' && scan.rest[0] <= '9')
            value += scan.digits(1) * weight;
    }
    return value;
}

/// Minutes. "-00:00" says that the offset is unknown (RFC 3339, 4.3), so it is refused.
int scanOffset(Scanner& scan) {
    if (scan.maybe('Z')) return 0;
    const bool west = scan.maybe('-');
    if (!west) scan.must('+');
    const int hours = scan.digits(2);
    scan.must(':');
    const int minutes = scan.digits(2);
    const int offset = hours * 60 + minutes;
    scan.good = scan.good && minutes < 60 && offset <= mostOffset && !(west && offset == 0);
    return west ? -offset : offset;
}

tl::unexpected<Error> badTime(std::string_view text, const char* like) {
    return fail(ErrorCode::invalid, say("This is not a time."), std::string(text.substr(0, 40)),
                say("Write it like %1, in the years 1970 to 9999.", like));
}

bool inRange(std::int64_t ms) {
    return ms >= 0 && ms <= lastMs;
}

} // namespace

std::string toText(Instant at) {
    return civil(at.ms) + 'Z';
}

std::string toText(LocalInstant at) {
    const int offset = std::abs(at.offsetMinutes);
    std::array<char, 16> zone{};
    std::snprintf(zone.data(), zone.size(), "%c%02d:%02d", at.offsetMinutes < 0 ? '-' : '+', offset / 60,
                  offset % 60);
    return civil(at.at.ms + at.offsetMinutes * msPerMinute) + zone.data();
}

Result<Instant> parseInstant(std::string_view text) {
    Scanner scan{text};
    const auto ms = scanCivil(scan);
    scan.must('.');
    const int fraction = scan.digits(3);
    scan.must('Z');
    if (!ms || !scan.good || !scan.rest.empty() || !inRange(*ms))
        return badTime(text, "2026-06-20T05:30:00.000Z");
    return Instant{*ms + fraction};
}

Result<LocalInstant> parseLocalInstant(std::string_view text) {
    Scanner scan{text};
    const auto ms = scanCivil(scan);
    const int fraction = scanFraction(scan);
    const int offset = scanOffset(scan);
    const std::int64_t at = ms.value_or(0) + fraction - offset * msPerMinute;
    if (!ms || !scan.good || !scan.rest.empty() || !inRange(at))
        return badTime(text, "2026-06-20T07:30:00+02:00");
    return LocalInstant{Instant{at}, offset};
}

} // namespace ambit
