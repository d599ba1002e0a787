// Exact decimal numbers as people write them ("24.5"): measured values, limits, counters. Never a binary
// float.
#pragma once

#include "base/result.hpp"

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

namespace ambit {

/// units × 10^-scale, kept as entered: "24.50" stays "24.50" and equals "24.5".
class Decimal {
public:
    Decimal() = default;

    /// `-?(0|[1-9][0-9]*)(\.[0-9]+)?`, at most 15 digits in all; no exponent, no plus, no "-0".
    [[nodiscard]] static Result<Decimal> parse(std::string_view text);

    [[nodiscard]] static Decimal whole(std::int32_t number);

    [[nodiscard]] const std::string& text() const { return written; }
    [[nodiscard]] double approximate() const; ///< nearest double, for drawing only

    /// Compares the values, whatever their number of digits.
    friend std::strong_ordering operator<=>(const Decimal& a, const Decimal& b);
    friend bool operator==(const Decimal& a, const Decimal& b) { return std::is_eq(a <=> b); }

    /// Exact, with as many decimals as the finer of the two; an error where that takes more than 15 digits.
    friend Result<Decimal> plus(const Decimal& a, const Decimal& b);
    friend Result<Decimal> minus(const Decimal& a, const Decimal& b);

    /// a/b against c/d, exactly, though neither may be a decimal itself. b and d are above zero.
    friend std::strong_ordering compareQuotients(const Decimal& a, const Decimal& b, const Decimal& c,
                                                 const Decimal& d);

private:
    Decimal(std::int64_t units, int scale);

    std::int64_t units = 0;
    int scale = 0;
    std::string written = "0";
};

/// A binary number, finite, with so many decimals, written so that Decimal::parse takes it (above 15 digits
/// it doesn't), whatever the program's locale; never "-0".
[[nodiscard]] std::string fixed(double value, int decimals);

[[nodiscard]] Result<Decimal> plus(const Decimal& a, const Decimal& b);
[[nodiscard]] Result<Decimal> minus(const Decimal& a, const Decimal& b);
[[nodiscard]] std::strong_ordering compareQuotients(const Decimal& a, const Decimal& b, const Decimal& c,
                                                    const Decimal& d);

} // namespace ambit
