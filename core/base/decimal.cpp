#include "base/decimal.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdlib>
#include <tuple>

namespace ambit {

namespace {

constexpr std::size_t mostDigits = 15; // units stay exact in 64 bits, whatever they are compared with

/// Two decimals brought to one scale stay below 10^30 each.
__extension__ using Wide = __int128;

std::int64_t tenTo(int power) {
    std::int64_t value = 1;
    for (int i = 0; i < power; ++i)
        value *= 10;
    return value;
}

Wide floorDivided(Wide a, Wide b) {
    return a / b - (a % b < 0 ? 1 : 0);
}

bool areDigits(std::string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

} // namespace

Decimal::Decimal(std::int64_t itsUnits, int itsScale) : units(itsUnits), scale(itsScale) {
    std::string digits = std::to_string(std::abs(units));
    const auto decimals = static_cast<std::size_t>(scale);
    if (digits.size() <= decimals) digits.insert(0, decimals + 1 - digits.size(), '0');
    if (decimals > 0) digits.insert(digits.size() - decimals, 1, '.');
    written = (units < 0 ? "-" : "") + digits;
}

Decimal Decimal::whole(std::int32_t number) {
    return {number, 0};
}

Result<Decimal> Decimal::parse(std::string_view text) {
    const bool negative = text.starts_with('-');
    const std::string_view magnitude = text.substr(negative ? 1 : 0);
    const std::size_t dot = magnitude.find('.');
    const std::string_view whole = magnitude.substr(0, dot);
    const std::string_view fraction = dot == std::string_view::npos ? "" : magnitude.substr(dot + 1);
    const bool formed = areDigits(whole) && (whole.size() == 1 || whole[0] != '0') &&
                        (dot == std::string_view::npos || areDigits(fraction)) &&
                        whole.size() + fraction.size() <= mostDigits;
    const std::string digits = formed ? std::string(whole) + std::string(fraction) : std::string();
    const bool zero = digits.find_first_not_of('0') == std::string::npos;
    if (!formed || (negative && zero)) {
        return fail(ErrorCode::invalid, say("This is not a decimal number."), std::string(text.substr(0, 40)),
                    say("Write it like 24.5: digits, one point where needed, at most 15 digits."));
    }
    Decimal decimal;
    std::from_chars(digits.data(), digits.data() + digits.size(), decimal.units);
    if (negative) decimal.units = -decimal.units;
    decimal.scale = static_cast<int>(fraction.size());
    decimal.written = text;
    return decimal;
}

double Decimal::approximate() const {
    return static_cast<double>(units) / static_cast<double>(tenTo(scale));
}

std::string fixed(double value, int decimals) {
    std::array<char, 400> text{}; // the largest double has 309 digits before the point
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed, decimals);
    std::string written(text.data(), end.ptr);
    const bool zero = written.find_first_of("123456789") == std::string::npos;
    return zero && written.front() == '-' ? written.substr(1) : written;
}

std::strong_ordering operator<=>(const Decimal& a, const Decimal& b) {
    const std::int64_t oneA = tenTo(a.scale);
    const std::int64_t oneB = tenTo(b.scale);
    if (const auto whole = a.units / oneA <=> b.units / oneB; std::is_neq(whole)) return whole;
    // What is left is below one, so that it fits when brought to the finer scale.
    const int fine = std::max(a.scale, b.scale);
    return a.units % oneA * tenTo(fine - a.scale) <=> b.units % oneB * tenTo(fine - b.scale);
}

Result<Decimal> plus(const Decimal& a, const Decimal& b) {
    const int fine = std::max(a.scale, b.scale);
    const Wide sum = Wide{a.units} * tenTo(fine - a.scale) + Wide{b.units} * tenTo(fine - b.scale);
    const Wide most = tenTo(mostDigits) - 1;
    if (sum > most || sum < -most) {
        return fail(ErrorCode::invalid, say("This sum takes more than 15 digits."),
                    a.written + " and " + b.written, say("Use fewer digits or fewer decimals."));
    }
    return Decimal(static_cast<std::int64_t>(sum), fine);
}

Result<Decimal> minus(const Decimal& a, const Decimal& b) {
    return plus(a, {-b.units, b.scale});
}

std::strong_ordering compareQuotients(const Decimal& a, const Decimal& b, const Decimal& c,
                                      const Decimal& d) {
    const auto both = [](const Decimal& over, const Decimal& under) {
        const int fine = std::max(over.scale, under.scale);
        return std::pair(Wide{over.units} * tenTo(fine - over.scale),
                         Wide{under.units} * tenTo(fine - under.scale));
    };
    // Cross multiplication could overflow; Euclid's divisions can't.
    auto [a1, b1] = both(a, b);
    auto [c1, d1] = both(c, d);
    while (true) {
        const Wide wholeA = floorDivided(a1, b1);
        const Wide wholeC = floorDivided(c1, d1);
        if (wholeA != wholeC) return wholeA <=> wholeC;
        const Wide restA = a1 - wholeA * b1;
        const Wide restC = c1 - wholeC * d1;
        if (restA == 0 || restC == 0) return restA <=> restC;
        // restA/b against restC/d is d/restC against b/restA.
        std::tie(a1, b1, c1, d1) = std::tuple(d1, restC, b1, restA);
    }
}

} // namespace ambit
