#include "judge/limit.hpp"

namespace ambit::judge {

Verdict against(const airframe::Limit& limit, const Decimal& value) {
    if (limit.min && value < *limit.min) return Verdict::below;
    if (limit.max && value > *limit.max) return Verdict::above;
    return Verdict::within;
}

bool mayBeBeyond(const airframe::Limit& limit, const Decimal& value, const Decimal& uncertainty) {
    if (against(limit, value) != Verdict::within) return false;
    const Decimal reach = Decimal::whole(196);
    const Decimal hundred = Decimal::whole(100);
    const auto passes = [&](const Result<Decimal>& room) {
        return room && std::is_lt(compareQuotients(*room, reach, uncertainty, hundred));
    };
    return (limit.min && passes(minus(value, *limit.min))) || (limit.max && passes(minus(*limit.max, value)));
}

Sentence toText(const airframe::Limit& limit) {
    if (limit.min && limit.max)
        return say("%1 to %2 %3", figure(limit.min->text()), figure(limit.max->text()), limit.unit);
    if (limit.min) return say("at least %1 %2", figure(limit.min->text()), limit.unit);
    if (limit.max) return say("at most %1 %2", figure(limit.max->text()), limit.unit);
    return say("no limit");
}

Sentence toText(airframe::Means means) {
    using airframe::Means;
    switch (means) {
    case Means::gauge:
        return say("read on a gauge");
    case Means::ruler:
        return say("taken with a ruler or caliper");
    case Means::dipstick:
        return say("read on the dipstick");
    case Means::meter:
        return say("read on a meter");
    case Means::count:
        return say("counted");
    case Means::eye:
        break;
    }
    return say("judged by eye");
}

} // namespace ambit::judge
