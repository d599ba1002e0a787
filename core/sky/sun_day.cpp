#include "sky/sun_day.hpp"

#include <algorithm>
#include <numbers>

namespace ambit::sky {

namespace {

constexpr std::int64_t msPerMinute = 60'000;
constexpr std::int64_t msPerDay = 1'440 * msPerMinute;
/// The sun turns twice a day, half a day apart: a few of these apart at the least, also where its own way
/// adds to it.
constexpr std::int64_t step = 10 * msPerMinute;

struct Knot {
    Instant at;
    double elevation;
};

Knot knotAt(const Place& place, std::int64_t ms) {
    return {Instant{ms}, at(place, Instant{ms}).elevation};
}

/// Between two knots that have one higher (`up` 1) or lower (-1) between them: that turn, by golden section.
Knot turnBetween(const Place& place, std::int64_t from, std::int64_t to, int up) {
    constexpr double golden = 1 / std::numbers::phi;
    const auto inside = [&] { return static_cast<std::int64_t>(static_cast<double>(to - from) * golden); };
    Knot left = knotAt(place, to - inside());
    Knot right = knotAt(place, from + inside());
    while (to - from > 4) {
        if (up * left.elevation > up * right.elevation) {
            to = right.at.ms;
            right = left;
            left = knotAt(place, to - inside());
        } else {
            from = left.at.ms;
            left = right;
            right = knotAt(place, from + inside());
        }
    }
    return up * left.elevation > up * right.elevation ? left : right;
}

/// Such that the sun only climbs or only sinks from each to the next; a step beyond either end, since a turn
/// may be there.
std::vector<Knot> knotsBetween(const Place& place, std::int64_t from, std::int64_t to) {
    std::vector<Knot> knots;
    for (std::int64_t ms = from - step; ms <= to + step; ms += step)
        knots.push_back(knotAt(place, ms));
    std::vector<Knot> turns;
    for (std::size_t i = 1; i + 1 < knots.size(); ++i) {
        const double before = knots[i].elevation - knots[i - 1].elevation;
        const double after = knots[i + 1].elevation - knots[i].elevation;
        if (before * after > 0 || (before == 0 && after == 0)) continue;
        turns.push_back(turnBetween(place, knots[i - 1].at.ms, knots[i + 1].at.ms, before > after ? 1 : -1));
    }
    knots.insert(knots.end(), turns.begin(), turns.end());
    std::sort(knots.begin(), knots.end(), [](const Knot& a, const Knot& b) { return a.at < b.at; });
    return knots;
}

/// Halves the time between two sides of the limit down to the millisecond.
Instant crossing(const Place& place, Instant from, Instant to, double limit, bool rising) {
    while (to.ms - from.ms > 1) {
        const Instant middle{from.ms + (to.ms - from.ms) / 2};
        ((at(place, middle).elevation >= limit) == rising ? to : from) = middle;
    }
    return to;
}

} // namespace

SunDay sunDay(const Place& place, Date day, int offsetMinutes) {
    const std::int64_t from = startOf(day, offsetMinutes).ms;
    const std::int64_t to = from + msPerDay;
    const std::vector<Knot> knots = knotsBetween(place, from, to);
    SunDay sun;
    const auto against = [&](double limit, Change up, Change down) {
        bool crosses = false;
        for (std::size_t i = 1; i < knots.size(); ++i) {
            const bool rising = knots[i].elevation >= limit;
            if (rising == (knots[i - 1].elevation >= limit)) continue;
            const Instant when = crossing(place, knots[i - 1].at, knots[i].at, limit, rising);
            if (when.ms < from || when.ms >= to) continue;
            sun.events.push_back({rising ? up : down, when});
            crosses = true;
        }
        if (crosses) return Course::crosses;
        return at(place, Instant{from}).elevation >= limit ? Course::staysAbove : Course::staysBelow;
    };
    sun.overHorizon = against(horizon, Change::rise, Change::set);
    sun.overTwilight = against(twilightLimit, Change::twilightBegins, Change::twilightEnds);
    std::sort(sun.events.begin(), sun.events.end(),
              [](const SunEvent& a, const SunEvent& b) { return a.at < b.at; });
    return sun;
}

Instant startOf(Date day, int offsetMinutes) {
    static const Date epoch = Date::of(1970, 1, 1).value();
    return Instant{daysBetween(epoch, day) * msPerDay - offsetMinutes * msPerMinute};
}

std::optional<Instant> SunDay::first(Change what) const {
    const auto found =
        std::find_if(events.begin(), events.end(), [&](const SunEvent& event) { return event.what == what; });
    if (found == events.end()) return std::nullopt;
    return found->at;
}

const char* toText(Change change) {
    switch (change) {
    case Change::twilightBegins:
        return "twilight begins";
    case Change::rise:
        return "rise";
    case Change::set:
        return "set";
    case Change::twilightEnds:
        return "twilight ends";
    }
    return "";
}

} // namespace ambit::sky
