#include "judge/trend.hpp"

#include "judge/limit.hpp"

#include <cmath>

namespace ambit::judge {

namespace {

Sentence amount(double value, Rounding how) {
    return figure(rounded(value, how));
}

Sentence comesText(const Trend& trend, const TrendQuestion& question) {
    const Sentence percent = figure(rounded(trend.confidence * 100));
    const Sentence unit = question.per;
    const double horizon = furthest * trend.span;
    if (!trend.crossing || *trend.crossing->earliest > horizon)
        return say("limit not within the next %1 %2, %3 %", amount(horizon, Rounding::down), unit, percent);
    const Crossing& crossing = *trend.crossing;
    const Sentence earliest = amount(*crossing.earliest, Rounding::down);
    if (!crossing.latest || *crossing.latest > horizon)
        return say("limit in %1 %2 at the earliest, %3 %; the latest can't be told", earliest, unit, percent);
    return say("limit in %1 to %2 %3, %4 %", earliest, amount(*crossing.latest, Rounding::up), unit, percent);
}

Sentence standingText(const Trend& trend, const TrendQuestion& question) {
    if (trend.standing == Standing::passed) return say("the last value is beyond the limit");
    const bool near = trend.standing == Standing::near;
    // Without a line it is the value's own interval that reaches there.
    if (!trend.robust || !question.ahead) return near ? say("the limit may be reached already") : Sentence();
    const Sentence ahead = figure(question.ahead->text());
    if (near) return say("the limit may be passed within the next %1 %2", ahead, question.per);
    return say("the limit is not reached within the next %1 %2", ahead, question.per);
}

} // namespace

std::string rounded(double value, Rounding how) {
    int decimals = 0;
    if (value != 0) decimals = std::max(0, 2 - static_cast<int>(std::floor(std::log10(std::abs(value)))));
    decimals = std::min(decimals, 9);
    const double scale = std::pow(10.0, decimals);
    // So near to a step that only the binary fraction keeps it off.
    const double whole = std::round(value * scale);
    double steps = whole;
    if (std::abs(value * scale - whole) > 1e-9 * std::max(1.0, std::abs(whole))) {
        if (how == Rounding::down) steps = std::floor(value * scale);
        if (how == Rounding::up) steps = std::ceil(value * scale);
    }
    std::string digits = fixed(steps / scale, decimals);
    if (decimals > 0) {
        digits.erase(digits.find_last_not_of('0') + 1);
        if (digits.back() == '.') digits.pop_back();
    }
    return digits == "-0" ? "0" : digits;
}

std::vector<Sentence> toTexts(const Trend& trend, const TrendQuestion& question) {
    std::vector<Sentence> texts;
    if (Sentence standing = standingText(trend, question); !standing.empty()) texts.push_back(standing);
    if (!trend.robust) {
        texts.push_back(
            say("too few values for a trend: at least %1, at three different times", figure(fewestForTrend)));
    } else {
        if (trend.standing != Standing::passed) texts.push_back(comesText(trend, question));
        const Sentence slope = amount(std::abs(trend.robust->line.slope), Rounding::nearest);
        if (trend.direction == Direction::none)
            texts.push_back(say("no trend"));
        else if (trend.direction == Direction::rising)
            texts.push_back(say("rises by %1 %2 per %3", slope, question.limit.unit, question.per));
        else
            texts.push_back(say("falls by %1 %2 per %3", slope, question.limit.unit, question.per));
    }
    if (trend.looksRenewed) texts.push_back(say("looks renewed: confirm it, the trend begins there"));
    if (trend.outOfLine)
        texts.push_back(say("the last value is out of line with those before: measure again"));
    if (!trend.far.empty())
        texts.push_back(say("%1 values far from the others are left out", figure(trend.far.size())));
    return texts;
}

const char* toText(Direction direction) {
    switch (direction) {
    case Direction::unknown:
        return "unknown";
    case Direction::none:
        return "none";
    case Direction::rising:
        return "rising";
    case Direction::falling:
        return "falling";
    }
    return "";
}

const char* toText(Standing standing) {
    switch (standing) {
    case Standing::within:
        return "within";
    case Standing::near:
        return "near";
    case Standing::passed:
        return "passed";
    }
    return "";
}

} // namespace ambit::judge
