// Units in which a person enters what was measured, and exact conversion between those of one quantity. A
// value stays as it was entered; judging converts by integers, so that a value at its limit is judged right.
//
// Factors, all exact by definition (from memory; the same as in NIST SP 811, appendix B):
// 1 in = 25.4 mm, 1 ft = 12 in, 1 lb = 0.45359237 kg (international yard and pound agreement, 1959);
// 1 gal (US) = 231 in³, 1 qt (US) = 1/4 gal; g0 = 9.80665 m/s², 1 psi = 1 lb · g0 / in²; 0 °C = 273.15 K =
// 32 °F, 1.8 °F to 1 °C.
#pragma once

#include "judge/limit.hpp"

#include <span>

namespace ambit::judge {

enum class Quantity { pressure, length, volume, mass, angle, time, temperature };

/// (value + offset/100) · numerator/denominator is the value in the quantity's common unit: Pa, mm, mL, kg,
/// degrees, minutes, K.
struct Unit {
    const char* name; ///< as entered and stored: "psi", "mm", "qt", "°C"; qt and gal are those of the US
    Quantity quantity;
    std::int64_t numerator;
    std::int64_t denominator;
    std::int32_t offset;
};

/// All that are known.
[[nodiscard]] std::span<const Unit> units();

/// By its name, "°" also as "deg"; nullptr: not known.
[[nodiscard]] const Unit* unitOf(std::string_view name);

/// `value`, entered in `unit`, against a limit in another unit or the same. Two equal names need not be
/// known ones: counts have none (""). Error: a unit that isn't known, or one of another quantity.
[[nodiscard]] Result<Verdict> against(const airframe::Limit& limit, const Decimal& value,
                                      std::string_view unit);

/// How `a` in `unitA` compares with `b` in `unitB`, exactly. Errors as above.
[[nodiscard]] Result<std::strong_ordering> compare(const Decimal& a, std::string_view unitA, const Decimal& b,
                                                   std::string_view unitB);

/// A value for showing, in another unit than it was entered in. Never to be judged or recorded.
struct Shown {
    Decimal value;
    bool rounded = false;
};

/// To as many significant digits as entered, no fewer than three (a first digit 1 would leave too little of
/// two; a trend takes more), and no whole digit is rounded away. Half goes away from zero. Error: as above,
/// or above 15 digits.
[[nodiscard]] Result<Shown> shownIn(const Decimal& value, std::string_view unit, std::string_view wanted,
                                    std::size_t fewestDigits = 3);

/// The same of a difference or a deviation, which an offset doesn't move: 1.8 °F of it are 1 °C.
[[nodiscard]] Result<Shown> differenceIn(const Decimal& value, std::string_view unit, std::string_view wanted,
                                         std::size_t fewestDigits = 3);

/// "179 kPa, rounded" or "26000 mm".
[[nodiscard]] Sentence toText(const Shown& shown, std::string_view unit);

} // namespace ambit::judge
