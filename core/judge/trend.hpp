// Where measured values of one part are going, and when they come to the limit. It says what the values say;
// what to do is for people to decide.
//
// What is common practice, with no source: the numbers named below as such. The main figure is Theil and
// Sen's line, which a slip of the gauge doesn't move. The interval is Fieller's (1954): where the band of the
// least-squares line, Student's t, reaches the limit; values far from the rest (more than 5 times the scaled
// median deviation, of 8 values or more and never more than a quarter of them) are left out of it.
#pragma once

#include "airframe/airframe.hpp"
#include "judge/fit.hpp"

namespace ambit::judge {

struct Measured {
    Decimal x;                          ///< flight hours, landings or days; never falling
    Decimal y;                          ///< in the limit's unit
    std::optional<Decimal> uncertainty; ///< standard uncertainty of y, zero or more
    bool renewed = false;               ///< the part was renewed or repainted: a new series begins here
};

struct TrendQuestion {
    airframe::Limit limit;
    std::string per = "h";        ///< unit of x, for words
    std::optional<Decimal> ahead; ///< until the next flight ends, in x; zero or more
    double confidence = 0.95;     ///< of all intervals; 0.5 to 0.999
};

enum class Direction { unknown, none, rising, falling }; ///< none: the slope's interval holds zero
enum class Standing { within, near, passed };

/// When the line comes to the limit, in x from the last value on.
struct Crossing {
    bool atMax = false;             ///< else at the limit's min
    std::optional<double> best;     ///< Theil and Sen's line; none: it doesn't get there
    std::optional<double> squares;  ///< least squares, to show what outliers do
    std::optional<double> earliest; ///< zero: may be there already; none: not with this confidence
    std::optional<double> latest;   ///< none: open-ended
};

struct Trend {
    std::size_t from = 0;      ///< index of the first value of the present series
    bool looksRenewed = false; ///< the series begins there by a jump that nobody marked: a person confirms
    Direction direction{};
    bool outOfLine = false;              ///< the last value lies outside what those before it predict
    std::vector<std::size_t> far;        ///< indices of values left out of the interval
    std::optional<Robust> robust;        ///< these two: none if there is too little
    std::optional<LeastSquares> squares; ///< `residual` no smaller than the values' own uncertainty
    std::optional<Crossing> crossing;    ///< of the limit that comes first; none if neither does
    Standing standing{};                 ///< at the last value, or until `ahead`
    double confidence = 0.95;
    double span = 0; ///< of x, that the series covers
};

/// Fewer are too little: 4 leave 2 degrees of freedom; with 1 the interval is 12.7 standard errors wide and
/// says nothing. They must lie at 3 places of x or more.
constexpr std::size_t fewestForTrend = 4;

/// Further ahead than this many times the span seen, nothing is said (common practice, no source).
constexpr double furthest = 5;

/// Error: no values, x that runs backwards, an uncertainty or `ahead` below zero, too many digits.
[[nodiscard]] Result<Trend> trendOf(const std::vector<Measured>& values, const TrendQuestion& question);

/// One sentence for each thing there is to say, the limit first.
[[nodiscard]] std::vector<Sentence> toTexts(const Trend& trend, const TrendQuestion& question);

[[nodiscard]] const char* toText(Direction direction); ///< "unknown", "none", "rising", "falling"
[[nodiscard]] const char* toText(Standing standing);   ///< "within", "near", "passed"

/// Rounded for people: three significant digits, no fewer decimals than none; down, up or to the nearest.
enum class Rounding { down, nearest, up };
[[nodiscard]] std::string rounded(double value, Rounding how = Rounding::nearest);

} // namespace ambit::judge
