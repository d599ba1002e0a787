#include "archive/open_round.hpp"

#include "round/order.hpp"

namespace ambit::archive {

Result<OpenRound> OpenRound::begin(Archive& archive, const airframe::Airframe& airframe, round::Opened opened,
                                   Instant at) {
    if (opened.plan.empty()) {
        auto plan = round::firstPlan(airframe, opened.walk);
        if (!plan) return tl::unexpected(plan.error());
        opened.plan = std::move(*plan);
    }
    round::Event first{1, at, std::move(opened)};
    auto state = round::begin(airframe, first);
    if (!state) return tl::unexpected(state.error());
    if (auto kept = archive.append(state->id, first); !kept) return tl::unexpected(kept.error());
    return OpenRound(archive, airframe, std::move(*state), {std::move(first)});
}

Result<OpenRound> OpenRound::resume(Archive& archive, const airframe::Airframe& airframe,
                                    const std::string& roundId) {
    auto events = archive.events(roundId);
    if (!events) return tl::unexpected(events.error());
    auto state = round::fold(airframe, *events);
    if (!state) return tl::unexpected(state.error());
    return OpenRound(archive, airframe, std::move(*state), std::move(*events));
}

Result<void> OpenRound::act(round::What what, Instant at, const std::vector<PhotoBytes>& photos) {
    if (auto may = round::allowed(current, *described, what); !may) return may;
    round::Event event{current.lastSeq + 1, at, std::move(what)};
    if (auto kept = archive->append(current.id, event, photos); !kept) return kept;
    auto folded = round::apply(current, *described, event);
    if (folded) log.push_back(std::move(event));
    return folded;
}

Result<void> OpenRound::seal(const round::Signed& signature, Instant at, const RecordInfo& info,
                             std::string_view recordJson, std::string_view pdf) {
    round::Event event{current.lastSeq + 1, at, signature};
    if (auto may = round::allowed(current, *described, event.what); !may) return may;
    if (auto kept = archive->seal(current.id, event, info, recordJson, pdf); !kept) return kept;
    auto folded = round::apply(current, *described, event);
    if (folded) log.push_back(std::move(event));
    return folded;
}

Result<void> OpenRound::goToZone(const std::string& zone, Instant at) {
    auto planned = round::towardsZone(current, *described, zone);
    if (!planned) return tl::unexpected(planned.error());
    return act(std::move(*planned), at);
}

Result<void> OpenRound::replan(const std::string& why, Instant at) {
    auto planned = round::reordered(current, *described, why);
    if (!planned) return tl::unexpected(planned.error());
    if (!*planned) return {};
    return act(std::move(**planned), at);
}

} // namespace ambit::archive
