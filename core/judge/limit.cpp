#include "judge/limit.hpp"

namespace ambit::judge {

Verdict against(const airframe::Limit& limit, const Decimal& value) {
    if (limit.min && value < *limit.min) return Verdict::below;
    if (limit.max && value > *limit.max) return Verdict::above;
    return Verdict::within;
}

std::string toText(const airframe::Limit& limit) {
    const std::string unit = ' ' + limit.unit;
    if (limit.min && limit.max) return limit.min->text() + " to " + limit.max->text() + unit;
    if (limit.min) return "at least " + limit.min->text() + unit;
    if (limit.max) return "at most " + limit.max->text() + unit;
    return "no limit";
}

} // namespace ambit::judge
