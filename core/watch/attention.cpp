#include "watch/attention.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::watch {

namespace {

/// What an event alone asks for.
Need needOf(const round::What& what) {
    if (const auto* settled = std::get_if<round::Settled>(&what)) {
        if (settled->outcome == round::Outcome::sound) return Need::nothing;
        const bool grounds =
            settled->outcome == round::Outcome::finding && settled->severity == round::Severity::grounds;
        return grounds ? Need::grounds : Need::found;
    }
    const bool replied =
        std::holds_alternative<round::Answered>(what) || std::holds_alternative<round::Declined>(what);
    return replied ? Need::replied : Need::nothing;
}

bool isStuck(const Followed& walk) {
    if (walk.state.phase != round::Phase::walking) return false;
    const auto expected = expectedInHand(walk.airframe, walk.state);
    const std::int64_t ms = walk.now.ms - walk.pace.inHandSince.ms;
    return expected && ms >= stuckMs && ms >= stuckTimes * *expected;
}

} // namespace

std::optional<std::int64_t> expectedInHand(const airframe::Airframe& airframe, const round::State& state) {
    const auto next = round::nextStep(state, airframe);
    if (!next) return std::nullopt;
    if (const auto* settle = std::get_if<walk::Settle>(&*next)) {
        const auto* point = airframe.point(settle->point);
        if (point != nullptr) return std::llround(point->seconds * 1000);
    }
    if (const auto* set = std::get_if<walk::Set>(&*next)) {
        const auto* setting = airframe.setting(set->setting);
        const auto from = state.settings.find(set->setting);
        if (setting != nullptr && from != state.settings.end())
            if (const auto* change = setting->change(from->second, set->to))
                return std::llround(change->seconds * 1000);
    }
    return std::nullopt;
}

Attention attentionOf(const Followed& walk) {
    Attention first;
    const auto take = [&](Need need, std::int64_t seq) {
        if (need < first.need) first = {need, seq};
    };
    // The newest of a kind is what is told: from the end.
    for (auto event = walk.events.rbegin(); event != walk.events.rend() && event->seq > walk.lookedUpTo;
         ++event)
        take(needOf(event->what), event->seq);
    for (auto quick = walk.pace.quick.rbegin(); quick != walk.pace.quick.rend(); ++quick)
        if (quick->lastSeq > walk.lookedUpTo) take(Need::quick, quick->lastSeq);
    if (walk.isToSign) take(Need::toSign, 0);
    if (isStuck(walk)) take(Need::stuck, 0);
    const bool isUnderWay =
        walk.state.phase == round::Phase::walking || walk.state.phase == round::Phase::paused;
    if (!walk.isConnected && isUnderWay) take(Need::away, 0);
    if (walk.state.phase == round::Phase::paused) take(Need::paused, 0);
    return first;
}

} // namespace ambit::watch
