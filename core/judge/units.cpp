#include "judge/units.hpp"

#include <algorithm>
#include <array>
#include <numeric>

namespace ambit::judge {

namespace {

__extension__ using Wide = __int128;

constexpr std::array known{
    Unit{"psi", Quantity::pressure, 8'896'443'230'521, 1'290'320'000, 0}, // 0.45359237 · 9.80665 / 0.0254²
    Unit{"bar", Quantity::pressure, 100'000, 1, 0},
    Unit{"kPa", Quantity::pressure, 1000, 1, 0},
    Unit{"mm", Quantity::length, 1, 1, 0},
    Unit{"cm", Quantity::length, 10, 1, 0},
    Unit{"m", Quantity::length, 1000, 1, 0},
    Unit{"in", Quantity::length, 127, 5, 0},
    Unit{"ft", Quantity::length, 1524, 5, 0},
    Unit{"mL", Quantity::volume, 1, 1, 0},
    Unit{"L", Quantity::volume, 1000, 1, 0},
    Unit{"gal", Quantity::volume, 473'176'473, 125'000, 0}, // 231 · 2.54³
    Unit{"qt", Quantity::volume, 473'176'473, 500'000, 0},
    Unit{"kg", Quantity::mass, 1, 1, 0},
    Unit{"lb", Quantity::mass, 45'359'237, 100'000'000, 0},
    Unit{"°", Quantity::angle, 1, 1, 0},
    Unit{"h", Quantity::time, 60, 1, 0},
    Unit{"min", Quantity::time, 1, 1, 0},
    Unit{"°C", Quantity::temperature, 1, 1, 27'315},
    Unit{"°F", Quantity::temperature, 5, 9, 45'967},
};

/// over/under; under is above zero. Below 10^29 over 10^26 for any value and unit.
struct Ratio {
    Wide over = 0;
    Wide under = 1;
};

Wide tenTo(std::size_t power) {
    Wide value = 1;
    for (std::size_t i = 0; i < power; ++i)
        value *= 10;
    return value;
}

std::size_t decimalsOf(const std::string& text) {
    const std::size_t dot = text.find('.');
    return dot == std::string::npos ? 0 : text.size() - dot - 1;
}

Wide digitsOf(const std::string& text) {
    Wide digits = 0;
    for (const char c : text)
        if (c >= '0' && c <= '9') digits = digits * 10 + (c - '0');
    return text.starts_with('-') ? -digits : digits;
}

Ratio reduced(Ratio ratio) {
    Wide a = ratio.over < 0 ? -ratio.over : ratio.over;
    Wide b = ratio.under;
    while (a != 0)
        std::swap(a, b %= a);
    return {ratio.over / b, ratio.under / b};
}

/// In the quantity's common unit.
Ratio common(const Decimal& value, const Unit& unit) {
    const Wide one = tenTo(decimalsOf(value.text()));
    Ratio plain{digitsOf(value.text()), one};
    if (unit.offset != 0) plain = {plain.over * 100 + unit.offset * one, one * 100};
    return reduced({plain.over * unit.numerator, plain.under * unit.denominator});
}

/// Back from the common unit.
Ratio in(const Unit& unit, const Ratio& ratio) {
    const Ratio scaled = reduced({ratio.over * unit.denominator, ratio.under * unit.numerator});
    if (unit.offset == 0) return scaled;
    return reduced({scaled.over * 100 - unit.offset * scaled.under, scaled.under * 100});
}

Wide floorDivided(Wide a, Wide b) {
    return a / b - (a % b < 0 ? 1 : 0);
}

/// Cross multiplication could overflow; Euclid's divisions can't.
std::strong_ordering order(Ratio a, Ratio b) {
    while (true) {
        const Wide wholeA = floorDivided(a.over, a.under);
        const Wide wholeB = floorDivided(b.over, b.under);
        if (wholeA != wholeB) return wholeA <=> wholeB;
        const Wide restA = a.over - wholeA * a.under;
        const Wide restB = b.over - wholeB * b.under;
        if (restA == 0 || restB == 0) return restA <=> restB;
        // restA/under of a against the same of b is under/rest of b against that of a.
        const Ratio turned{b.under, restB};
        b = {a.under, restA};
        a = turned;
    }
}

Result<std::pair<const Unit*, const Unit*>> bothOf(std::string_view first, std::string_view second) {
    const std::pair both(unitOf(first), unitOf(second));
    for (const auto& [unit, name] : {std::pair(both.first, first), std::pair(both.second, second)})
        if (unit == nullptr)
            return fail(ErrorCode::unsupported, say("The unit %1 is not known.", quoted(std::string(name))),
                        std::string(name), say("Enter the value in the unit of the limit."));
    if (both.first->quantity != both.second->quantity)
        return fail(ErrorCode::invalid,
                    say("%1 and %2 are units of different quantities.", quoted(std::string(first)),
                        quoted(std::string(second))),
                    std::string(first), say("Enter the value in the unit of the limit."));
    return both;
}

/// From the first digit that isn't zero on.
std::size_t significant(const std::string& text) {
    const std::size_t first = text.find_first_of("123456789");
    if (first == std::string::npos) return 0;
    return static_cast<std::size_t>(std::count_if(text.begin() + static_cast<std::ptrdiff_t>(first),
                                                  text.end(), [](char c) { return c != '.'; }));
}

std::string toDigits(Wide number) {
    std::string digits;
    for (; number != 0; number /= 10)
        digits.insert(digits.begin(), static_cast<char>('0' + static_cast<int>(number % 10)));
    return digits.empty() ? "0" : digits;
}

/// `exact`, as many digits as `value` has.
Result<Shown> writtenOut(const Ratio& exact, const Decimal& value, std::size_t fewestDigits) {
    const bool negative = exact.over < 0;
    const Wide over = negative ? -exact.over : exact.over;
    Wide digits = over / exact.under;
    Wide rest = over % exact.under;
    const std::size_t wholeDigits = digits == 0 ? 0 : toDigits(digits).size();
    std::size_t open = std::max(fewestDigits, significant(value.text()));
    open -= std::min(open, wholeDigits);
    std::size_t decimals = 0;
    while (open > 0 && rest != 0 && decimals < 14 && digits < tenTo(14)) {
        const Wide next = rest * 10 / exact.under;
        rest = rest * 10 % exact.under;
        digits = digits * 10 + next;
        ++decimals;
        if (digits != 0) --open; // zeros before the first digit don't count
    }
    const bool rounded = rest != 0;
    if (rest >= exact.under - rest) ++digits;
    std::string text = toDigits(digits);
    if (text.size() <= decimals) text.insert(0, decimals + 1 - text.size(), '0');
    if (decimals > 0) text.insert(text.size() - decimals, 1, '.');
    const auto shown = Decimal::parse((negative && digits != 0 ? "-" : "") + text);
    if (!shown) return tl::unexpected(shown.error());
    return Shown{*shown, rounded};
}

} // namespace

std::span<const Unit> units() {
    return known;
}

const Unit* unitOf(std::string_view name) {
    if (name == "deg") name = "°";
    const auto* found =
        std::find_if(known.begin(), known.end(), [&](const Unit& unit) { return name == unit.name; });
    return found == known.end() ? nullptr : found;
}

Result<std::strong_ordering> compare(const Decimal& a, std::string_view unitA, const Decimal& b,
                                     std::string_view unitB) {
    if (unitA == unitB) return a <=> b;
    const auto both = bothOf(unitA, unitB);
    if (!both) return tl::unexpected(both.error());
    return order(common(a, *both->first), common(b, *both->second));
}

Result<Verdict> against(const airframe::Limit& limit, const Decimal& value, std::string_view unit) {
    if (limit.min) {
        const auto low = compare(value, unit, *limit.min, limit.unit);
        if (!low) return tl::unexpected(low.error());
        if (std::is_lt(*low)) return Verdict::below;
    }
    if (limit.max) {
        const auto high = compare(value, unit, *limit.max, limit.unit);
        if (!high) return tl::unexpected(high.error());
        if (std::is_gt(*high)) return Verdict::above;
    }
    return Verdict::within;
}

Result<Shown> shownIn(const Decimal& value, std::string_view unit, std::string_view wanted,
                      std::size_t fewestDigits) {
    if (unit == wanted) return Shown{value, false};
    const auto both = bothOf(unit, wanted);
    if (!both) return tl::unexpected(both.error());
    return writtenOut(in(*both->second, common(value, *both->first)), value, fewestDigits);
}

Result<Shown> differenceIn(const Decimal& value, std::string_view unit, std::string_view wanted,
                           std::size_t fewestDigits) {
    if (unit == wanted) return Shown{value, false};
    const auto both = bothOf(unit, wanted);
    if (!both) return tl::unexpected(both.error());
    Unit from = *both->first;
    Unit to = *both->second;
    from.offset = to.offset = 0;
    return writtenOut(in(to, common(value, from)), value, fewestDigits);
}

Sentence toText(const Shown& shown, std::string_view unit) {
    const Sentence name{std::string(unit)};
    if (shown.rounded) return say("%1 %2, rounded", figure(shown.value.text()), name);
    return say("%1 %2", figure(shown.value.text()), name);
}

} // namespace ambit::judge
