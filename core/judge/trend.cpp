#include "judge/trend.hpp"

#include "judge/limit.hpp"
#include "judge/renewed.hpp"
#include "judge/student.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace ambit::judge {

namespace {

std::vector<Sample> samplesOf(const std::vector<Measured>& values) {
    std::vector<Sample> samples;
    samples.reserve(values.size());
    for (const Measured& value : values)
        samples.push_back({value.x, value.y});
    return samples;
}

bool isEnough(const std::vector<Measured>& values) {
    std::set<double> places;
    for (const Measured& value : values)
        places.insert(value.x.approximate());
    return values.size() >= fewestForTrend && places.size() >= 3;
}

Result<void> check(const std::vector<Measured>& values, const TrendQuestion& question) {
    const Decimal zero;
    if (values.empty())
        return fail(ErrorCode::invalid, say("There are no values."), {}, say("Measure first."));
    for (std::size_t i = 0; i < values.size(); ++i) {
        const std::string where = "value " + std::to_string(i + 1);
        if (i > 0 && values[i].x < values[i - 1].x)
            return fail(ErrorCode::invalid,
                        say("The values run backwards, from %1 to %2.", figure(values[i - 1].x.text()),
                            figure(values[i].x.text())),
                        where, say("Give them in the order in which they were measured."));
        if (values[i].uncertainty && *values[i].uncertainty < zero)
            return fail(ErrorCode::invalid, say("An uncertainty can't be below zero."), where);
    }
    if (question.ahead && *question.ahead < zero)
        return fail(ErrorCode::invalid, say("The next flight can't lie before the last value."),
                    question.ahead->text());
    if (!(question.confidence >= 0.5 && question.confidence <= 0.999))
        return fail(ErrorCode::invalid, say("The confidence must lie between 0.5 and 0.999."));
    return {};
}

/// Those so far from the robust line that they are slips, not noise.
std::vector<std::size_t> farFrom(const Line& line, const std::vector<Measured>& values) {
    if (values.size() < 8) return {};
    std::vector<double> off;
    off.reserve(values.size());
    for (const Measured& value : values)
        off.push_back(std::abs(value.y.approximate() - line.at(value.x.approximate())));
    std::vector<double> ordered = off;
    std::sort(ordered.begin(), ordered.end());
    const double usual = std::max(1.4826 * ordered[ordered.size() / 2], noiseFloor(values));
    std::vector<std::size_t> far;
    for (std::size_t i = 0; i < off.size(); ++i)
        if (off[i] > 5 * usual) far.push_back(i);
    return far.size() * 4 <= values.size() ? far : std::vector<std::size_t>();
}

/// Without the ones that are far off; none if what is left is no line.
Result<LeastSquares> squaresOf(const std::vector<Measured>& values, const std::vector<std::size_t>& far) {
    std::vector<Measured> kept;
    for (std::size_t i = 0; i < values.size(); ++i)
        if (!std::binary_search(far.begin(), far.end(), i)) kept.push_back(values[i]);
    auto fit = leastSquares(samplesOf(kept));
    if (fit) {
        const double least = noiseFloor(kept);
        if (fit->residual < least) {
            fit->residual = least;
            fit->slopeError = least / std::sqrt(fit->spreadX);
            fit->originError = least * std::sqrt(1 / static_cast<double>(fit->count) +
                                                 fit->meanX * fit->meanX / fit->spreadX);
        }
    }
    return fit;
}

/// Where the band of the line reaches y = limit, from `now` on: Fieller's quadratic A·u² - 2·b·d·u + C <= 0
/// with u = x - meanX.
void bound(Crossing& crossing, const LeastSquares& fit, double limit, double now, double confidence) {
    const double t = studentQuantile(confidence, fit.count - 2);
    const double c = t * t * fit.residual * fit.residual;
    const double b = fit.line.slope;
    const double d = limit - fit.meanY;
    const double a = b * b - c / fit.spreadX;
    const double last = d * d - c / static_cast<double>(fit.count);
    const double root2 = b * b * d * d - a * last;
    const double here = now - fit.meanX;
    const auto ahead = [&](double u) { return std::max(0.0, u - here); };
    if (a > 0) {
        if (root2 < 0) return; // only by rounding: the band of a sloping line crosses
        const double low = (b * d - std::sqrt(root2)) / a;
        const double high = (b * d + std::sqrt(root2)) / a;
        if (high < here) return; // it lies behind: the line leads away
        crossing.earliest = ahead(low);
        crossing.latest = ahead(high);
    } else if (root2 <= 0) {
        crossing.earliest = 0; // the band holds the limit everywhere
    } else if (a < 0) {
        // Outside the two roots the band holds the limit.
        const double low = (b * d + std::sqrt(root2)) / a;
        const double high = (b * d - std::sqrt(root2)) / a;
        crossing.earliest = here <= low ? 0 : ahead(high);
    }
}

std::optional<double> reached(const Line& line, double limit, double now, bool atMax) {
    const double short0 = (limit - line.at(now)) * (atMax ? 1 : -1);
    const double speed = line.slope * (atMax ? 1 : -1);
    if (short0 <= 0) return 0;
    if (speed <= 0) return std::nullopt;
    return short0 / speed;
}

Crossing crossingOf(const Trend& trend, const Decimal& limit, bool atMax, double now) {
    Crossing crossing;
    crossing.atMax = atMax;
    const double level = limit.approximate();
    if (trend.direction != Direction::none) crossing.best = reached(trend.robust->line, level, now, atMax);
    crossing.squares = reached(trend.squares->line, level, now, atMax);
    bound(crossing, *trend.squares, level, now, trend.confidence);
    // The main figure is never outside its interval.
    if (crossing.best) {
        if (!crossing.earliest || *crossing.best < *crossing.earliest) crossing.earliest = crossing.best;
        if (crossing.latest && *crossing.best > *crossing.latest) crossing.latest = crossing.best;
    }
    return crossing;
}

Direction directionOf(const Interval& slope) {
    if (slope.low > 0) return Direction::rising;
    if (slope.high < 0) return Direction::falling;
    return Direction::none;
}

bool isOutOfLine(std::vector<Measured> series, double confidence) {
    const Measured last = series.back();
    series.pop_back();
    if (!isEnough(series)) return false;
    const auto robust = theilSen(samplesOf(series), confidence);
    if (!robust) return false;
    const auto fit = squaresOf(series, farFrom(robust->line, series));
    if (!fit) return false;
    const Interval next = predictionAt(*fit, last.x.approximate(), confidence);
    const double y = last.y.approximate();
    return y < next.low || y > next.high;
}

void cross(Trend& trend, const airframe::Limit& limit, double now) {
    for (const bool atMax : {false, true}) {
        const auto& level = atMax ? limit.max : limit.min;
        if (!level) continue;
        const Crossing crossing = crossingOf(trend, *level, atMax, now);
        if (!crossing.earliest) continue;
        const auto sooner = [](const Crossing& a, const Crossing& b) {
            if (a.best && b.best) return *a.best < *b.best;
            if (a.best || b.best) return a.best.has_value();
            return *a.earliest < *b.earliest;
        };
        if (!trend.crossing || sooner(crossing, *trend.crossing)) trend.crossing = crossing;
    }
}

} // namespace

Result<Trend> trendOf(const std::vector<Measured>& values, const TrendQuestion& question) {
    if (const auto checked = check(values, question); !checked) return tl::unexpected(checked.error());
    Trend trend;
    trend.confidence = question.confidence;
    for (std::size_t i = 0; i < values.size(); ++i)
        if (values[i].renewed) trend.from = i;
    const auto begin = [&] { return values.begin() + static_cast<std::ptrdiff_t>(trend.from); };
    if (const std::size_t at = renewedAt({begin(), values.end()}, question.limit); at > 0) {
        trend.from += at;
        trend.looksRenewed = true;
    }
    const std::vector<Measured> series(begin(), values.end());
    const Measured& last = series.back();
    trend.span = last.x.approximate() - series.front().x.approximate();
    const auto& min = question.limit.min;
    const auto& max = question.limit.max;
    if ((min && last.y < *min) || (max && last.y > *max)) trend.standing = Standing::passed;
    if (!isEnough(series)) {
        // Too few for a line: the last value's own interval is all that tells.
        if (trend.standing == Standing::within && last.uncertainty &&
            mayBeBeyond(question.limit, last.y, *last.uncertainty))
            trend.standing = Standing::near;
        return trend;
    }

    auto robust = theilSen(samplesOf(series), question.confidence);
    if (!robust) return tl::unexpected(robust.error());
    trend.robust = *robust;
    trend.direction = directionOf(robust->slope);
    trend.far = farFrom(robust->line, series);
    const auto squares = squaresOf(series, trend.far);
    if (!squares) return tl::unexpected(squares.error());
    trend.squares = *squares;
    for (std::size_t& index : trend.far)
        index += trend.from;
    trend.outOfLine = isOutOfLine(series, question.confidence);
    cross(trend, question.limit, last.x.approximate());
    const double ahead = question.ahead ? question.ahead->approximate() : 0;
    if (trend.standing == Standing::within && trend.crossing && *trend.crossing->earliest <= ahead)
        trend.standing = Standing::near;
    return trend;
}

} // namespace ambit::judge
