#include "fleet/gauge.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::fleet {

namespace {

int decimalsOf(const std::optional<Decimal>& limit) {
    if (!limit) return 0;
    const std::size_t point = limit->text().find('.');
    return point == std::string::npos ? 0 : static_cast<int>(limit->text().size() - point - 1);
}

std::int64_t unitsOf(double value, int decimals) {
    for (int i = 0; i < decimals; ++i)
        value *= 10;
    return std::llround(value);
}

std::string textOf(std::int64_t units, int decimals) {
    std::string digits = std::to_string(units);
    if (decimals == 0) return digits;
    const auto places = static_cast<std::size_t>(decimals);
    if (digits.size() <= places) digits.insert(0, places + 1 - digits.size(), '0');
    return digits.insert(digits.size() - places, ".");
}

} // namespace

Gauge::Gauge(const airframe::Limit& limit, Chance& chance)
    : decimals(std::max(decimalsOf(limit.min), decimalsOf(limit.max))),
      low(limit.min ? limit.min->approximate() : 0), high(limit.max ? limit.max->approximate() : 2.5 * low) {
    if (limit.unit == "L" || limit.unit == "gal") kind = Kind::fuel;
    if (limit.unit == "qt") kind = Kind::oil;
    if (kind != Kind::wears) {
        fill(chance);
        return;
    }
    // What has a least only gets thin, what has a most only gets loose, what has both sinks.
    fresh = limit.min ? low + (limit.max ? 0.6 * (high - low) : 0.9 * low) : 0.35 * high;
    worn = limit.min ? low : high;
    renew(chance);
    level = fresh + (worn - fresh) * chance.between(0, 0.9); // not new when the file begins
}

void Gauge::renew(Chance& chance) {
    hours = chance.between(250, 1500);
    level = fresh + (worn - fresh) * chance.between(0, 0.08);
}

void Gauge::fill(Chance& chance) {
    const double room = high - low;
    level =
        kind == Kind::fuel ? low + room * chance.between(0.15, 1) : low + room * chance.between(0.6, 0.95);
}

void Gauge::wear(int tenths, Chance& chance) {
    const double flown = tenths / 10.0;
    if (kind == Kind::wears) {
        level += (worn - fresh) * flown / hours * chance.between(0.5, 1.5);
        level = std::max(level, 0.0);
        return;
    }
    if (kind == Kind::oil) {
        level -= flown * chance.between(0.05, 0.2);
        // Somebody fills up before it is too low, mostly.
        if (level < low + 0.25 * (high - low) && !chance.happens(0.1)) fill(chance);
    } else {
        fill(chance);
        if (chance.happens(0.02)) level = low * chance.between(0.5, 0.97);
    }
    level = std::max(level, 0.4 * low);
}

bool Gauge::isWithin() const {
    const std::int64_t units = unitsOf(level, decimals);
    return units >= unitsOf(low, decimals) && units <= unitsOf(high, decimals);
}

std::string Gauge::value() const {
    return textOf(unitsOf(level, decimals), decimals);
}

} // namespace ambit::fleet
