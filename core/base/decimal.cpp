#include "base/decimal.hpp"

#include <algorithm>
#include <charconv>

namespace ambit {

namespace {

constexpr std::size_t mostDigits = 15; // units stay exact in 64 bits, whatever they are compared with

std::int64_t tenTo(int power) {
    std::int64_t value = 1;
    for (int i = 0; i < power; ++i)
        value *= 10;
    return value;
}

bool areDigits(std::string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

} // namespace

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
        return fail(ErrorCode::invalid, "This is not a decimal number.", std::string(text.substr(0, 40)),
                    "Write it like 24.5: digits, one point where needed, at most 15 digits.");
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

std::strong_ordering operator<=>(const Decimal& a, const Decimal& b) {
    const std::int64_t oneA = tenTo(a.scale);
    const std::int64_t oneB = tenTo(b.scale);
    if (const auto whole = a.units / oneA <=> b.units / oneB; std::is_neq(whole)) return whole;
    // What is left is below one, so that it fits when brought to the finer scale.
    const int fine = std::max(a.scale, b.scale);
    return a.units % oneA * tenTo(fine - a.scale) <=> b.units % oneB * tenTo(fine - b.scale);
}

} // namespace ambit
