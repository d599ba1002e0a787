#include "model/trend_figures.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::view {

namespace {

constexpr double ofUncertainty = 1.96; ///< 95 % of a normal distribution

std::optional<double> numberOf(const std::string& text) {
    const auto value = Decimal::parse(text);
    return value ? std::optional(value->approximate()) : std::nullopt;
}

} // namespace

void AxisRange::take(double value) {
    from = std::min(from, value);
    to = std::max(to, value);
}

void AxisRange::pad(double below, double above) {
    const double by = span() > 0 ? span() : std::max(std::abs(to), 1.0);
    from -= by * below;
    to += by * above;
}

TrendFigures::TrendFigures(const round::Trended& trended, const airframe::Limit& limit) {
    for (const round::TrendValue& one : trended.values)
        if (const auto x = numberOf(one.x), y = numberOf(one.value); x && y)
            values.push_back({*x, *y, ofUncertainty * numberOf(one.uncertainty).value_or(0), one.renewed});
    for (const round::TrendValue& end : trended.line)
        if (const auto x = numberOf(end.x), y = numberOf(end.value); x && y) line.emplace_back(*x, *y);
    for (const round::Trended::Band& one : trended.band)
        if (const auto x = numberOf(one.x), low = numberOf(one.low), high = numberOf(one.high);
            x && low && high)
            band.push_back({*x, *low, *high});
    if (limit.min) min = limit.min->approximate();
    if (limit.max) max = limit.max->approximate();
    if (values.empty()) return;
    const auto onAxis = [&](const std::string& ahead) -> std::optional<double> {
        const auto value = numberOf(ahead);
        return value ? std::optional(values.back().x + *value) : std::nullopt;
    };
    earliest = onAxis(trended.earliest);
    best = onAxis(trended.best);
    latest = onAxis(trended.latest);
}

AxisRange TrendFigures::across() const {
    AxisRange range{values.front().x, values.front().x};
    for (const Value& value : values)
        range.take(value.x);
    for (const QPointF& end : line)
        range.take(end.x());
    for (const Band& one : band)
        range.take(one.x);
    range.pad(0.03, 0.03);
    return range;
}

AxisRange TrendFigures::up() const {
    AxisRange range{values.front().y, values.front().y};
    for (const Value& value : values) {
        range.take(value.y - value.reach);
        range.take(value.y + value.reach);
    }
    for (const Band& one : band)
        if (one.x <= values.back().x) {
            range.take(one.low);
            range.take(one.high);
        }
    for (const auto& bound : {min, max})
        if (bound) range.take(*bound);
    return range;
}

} // namespace ambit::view
