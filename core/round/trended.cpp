#include "round/trended.hpp"

#include "judge/units.hpp"

#include <algorithm>

namespace ambit::round {

namespace {

constexpr std::size_t digitsOfTrend = 9; ///< of a value brought into the limit's unit
constexpr int decimals = 4;              ///< of what is drawn
constexpr int bands = 12;
constexpr double msADay = 86400000.0;
constexpr const char* days = "days";

std::optional<Decimal> countedIn(const Past& past, const std::string& counter) {
    for (const CounterReading& reading : past.counters)
        if (reading.id == counter)
            if (const auto value = Decimal::parse(reading.value)) return *value;
    return std::nullopt;
}

std::string chosen(const airframe::Airframe& airframe, const airframe::Limit& limit, const Past& newest) {
    if (limit.trend && (limit.trend->over == days || countedIn(newest, limit.trend->over)))
        return limit.trend->over;
    for (const airframe::Counter& counter : airframe.counters)
        if (counter.unit == "h" && countedIn(newest, counter.id)) return counter.id;
    return days;
}

std::optional<Decimal> placeOf(const Past& past, const std::string& over, Instant first) {
    if (over != days) return countedIn(past, over);
    const auto place = Decimal::parse(fixed(static_cast<double>(past.at.ms - first.ms) / msADay, 2));
    return place ? std::optional(*place) : std::nullopt;
}

/// In the limit's unit.
Result<judge::Measured> measuredOf(const Past& past, Decimal x, const airframe::Limit& limit) {
    const auto inLimits = [&](const std::string& written) -> Result<Decimal> {
        const auto value = Decimal::parse(written);
        if (!value) return tl::unexpected(value.error());
        const auto shown = judge::shownIn(*value, past.unit, limit.unit, digitsOfTrend);
        if (!shown) return tl::unexpected(shown.error());
        return shown->value;
    };
    const auto y = inLimits(past.value);
    if (!y) return tl::unexpected(y.error());
    judge::Measured one{std::move(x), *y, {}, past.renewed};
    if (past.uncertainty.empty()) return one;
    const auto written = Decimal::parse(past.uncertainty);
    if (!written) return tl::unexpected(written.error());
    const auto uncertainty = judge::differenceIn(*written, past.unit, limit.unit, digitsOfTrend);
    if (!uncertainty) return tl::unexpected(uncertainty.error());
    one.uncertainty = uncertainty->value;
    return one;
}

/// Those that go into the course, each with what it was read from.
struct Kept {
    std::vector<judge::Measured> values;
    std::vector<std::string> from;
};

Result<Kept> valuesOf(const std::vector<Past>& past, const std::string& over, const airframe::Limit& limit) {
    Kept kept;
    std::vector<judge::Measured>& values = kept.values;
    const auto newest = placeOf(past.back(), over, past.front().at);
    for (const Past& one : past) {
        const auto x = placeOf(one, over, past.front().at);
        if (!x || (newest && *x > *newest) || (!values.empty() && *x < values.back().x)) continue;
        auto measured = measuredOf(one, *x, limit);
        // In a unit that can't be compared any more: the airframe's limit was written anew.
        if (!measured && &one != &past.back()) continue;
        if (!measured) return tl::unexpected(measured.error());
        values.push_back(*measured);
        kept.from.push_back(one.from);
    }
    return kept;
}

std::string unitOf(const airframe::Airframe& airframe, const std::string& over) {
    const airframe::Counter* counter = airframe.counter(over);
    return counter == nullptr ? over : counter->unit;
}

/// How far the picture goes beyond the last value: to the limit, if that is told; no further than is told.
double seenAhead(const Course& course) {
    const judge::Trend& trend = course.trend;
    double ahead = trend.span / 4;
    if (course.question.ahead) ahead = std::max(ahead, course.question.ahead->approximate() * 1.2);
    if (trend.crossing)
        for (const auto& end : {trend.crossing->earliest, trend.crossing->best, trend.crossing->latest})
            if (end) ahead = std::max(ahead, *end * 1.1);
    return std::min(ahead, judge::furthest * trend.span);
}

void draw(Course& course) {
    const judge::Trend& trend = course.trend;
    if (!trend.robust || !trend.squares) return;
    const double from = course.values[trend.from].x.approximate();
    const double to = course.values.back().x.approximate() + seenAhead(course);
    for (const double x : {from, to})
        course.told.line.push_back(
            {fixed(x, decimals), fixed(trend.robust->line.at(x), decimals), {}, false});
    for (int i = 0; i <= bands; ++i) {
        const double x = from + (to - from) * i / bands;
        const auto band = judge::predictionAt(*trend.squares, x, trend.confidence);
        course.told.band.push_back(
            {fixed(x, decimals), fixed(band.low, decimals), fixed(band.high, decimals)});
    }
}

void tell(Course& course, const airframe::Limit& limit, const std::vector<std::string>& from) {
    const judge::Trend& trend = course.trend;
    Trended& told = course.told;
    const std::size_t first =
        course.values.size() > mostTrendValues ? course.values.size() - mostTrendValues : 0;
    for (std::size_t i = first; i < course.values.size(); ++i) {
        const judge::Measured& one = course.values[i];
        told.values.push_back({one.x.text(), one.y.text(), one.uncertainty ? one.uncertainty->text() : "",
                               one.renewed, from[i]});
    }
    told.is = trend.standing;
    told.stands = trend.standing != judge::Standing::within && limit.trend && limit.trend->against;
    for (const Sentence& text : judge::toTexts(trend, course.question))
        told.words.emplace_back(text);
    if (trend.crossing) {
        if (trend.crossing->earliest)
            told.earliest = judge::rounded(*trend.crossing->earliest, judge::Rounding::down);
        if (trend.crossing->best) told.best = judge::rounded(*trend.crossing->best);
        if (trend.crossing->latest)
            told.latest = judge::rounded(*trend.crossing->latest, judge::Rounding::up);
    }
    draw(course);
}

} // namespace

Result<Course> courseOf(const airframe::Airframe& airframe, const airframe::Point& point,
                        const std::vector<Past>& past, std::string over) {
    if (!point.limit || past.empty())
        return fail(ErrorCode::notFound, say("There are no values."), point.id, say("Measure first."));
    const airframe::Limit& limit = *point.limit;
    Course course;
    course.told.point = point.id;
    course.told.over = over.empty() ? chosen(airframe, limit, past.back()) : std::move(over);
    course.unit = unitOf(airframe, course.told.over);
    auto kept = valuesOf(past, course.told.over, limit);
    if (!kept) return tl::unexpected(kept.error());
    course.values = std::move(kept->values);
    course.question.limit = limit;
    course.question.per = course.unit;
    if (limit.trend && limit.trend->over == course.told.over) {
        course.question.ahead = limit.trend->ahead;
        course.told.ahead = limit.trend->ahead.text();
    }
    auto trend = judge::trendOf(course.values, course.question);
    if (!trend) return tl::unexpected(trend.error());
    course.trend = std::move(*trend);
    tell(course, limit, kept->from);
    return course;
}

} // namespace ambit::round
