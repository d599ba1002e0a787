#include "judge/limit.hpp"

namespace ambit::judge {

Verdict against(const airframe::Limit& limit, const Decimal& value) {
    if (limit.min && value < *limit.min) return Verdict::below;
    if (limit.max && value > *limit.max) return Verdict::above;
    return Verdict::within;
}

Sentence toText(const airframe::Limit& limit) {
    if (limit.min && limit.max)
        return say("%1 to %2 %3", figure(limit.min->text()), figure(limit.max->text()), limit.unit);
    if (limit.min) return say("at least %1 %2", figure(limit.min->text()), limit.unit);
    if (limit.max) return say("at most %1 %2", figure(limit.max->text()), limit.unit);
    return say("no limit");
}

} // namespace ambit::judge
