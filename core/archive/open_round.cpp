#include "archive/open_round.hpp"

#include "record/asked.hpp"
#include "round/order.hpp"

#include <nlohmann/json.hpp>

namespace ambit::archive {

namespace {

/// The event as it will be read back from the log: what can't be read back is neither stored nor folded.
Result<round::Event> asStored(std::int64_t seq, Instant at, round::What what) {
    const auto* planned = std::get_if<round::Planned>(&what);
    const Sentence why = planned == nullptr ? Sentence() : planned->why;
    auto event = round::eventFrom(toJson(round::Event{seq, at, std::move(what)}));
    if (!event) event.error().remedy = say("Leave out control characters and fill in what is empty.");
    // The log has English; who walks may be told in another language as long as it is known how it was made.
    auto* again = event ? std::get_if<round::Planned>(&event->what) : nullptr;
    if (again != nullptr && again->why == why) again->why = why;
    return event;
}

} // namespace

Result<OpenRound> OpenRound::begin(Archive& archive, const airframe::Airframe& airframe, round::Opened opened,
                                   Instant at) {
    if (opened.plan.empty()) {
        auto plan = round::firstPlan(airframe, opened.walk);
        if (!plan) return tl::unexpected(plan.error());
        opened.plan = std::move(*plan);
    }
    auto first = asStored(1, at, std::move(opened));
    if (!first) return tl::unexpected(first.error());
    auto state = round::begin(airframe, *first);
    if (!state) return tl::unexpected(state.error());
    if (auto kept = archive.append(state->id, *first); !kept) return tl::unexpected(kept.error());
    return OpenRound(archive, airframe, std::move(*state), {std::move(*first)});
}

Result<OpenRound> OpenRound::resume(Archive& archive, const airframe::Airframe& airframe,
                                    const std::string& roundId) {
    auto events = archive.events(roundId);
    if (!events) return tl::unexpected(events.error());
    auto state = round::fold(airframe, *events);
    if (!state) return tl::unexpected(state.error());
    return OpenRound(archive, airframe, std::move(*state), std::move(*events));
}

/// Rules first, then the disk, then memory.
template<class Keep> Result<void> OpenRound::commit(round::What what, Instant at, Keep keep) {
    if (auto may = round::allowed(current, *described, what); !may) return may;
    auto event = asStored(current.lastSeq + 1, at, std::move(what));
    if (!event) return tl::unexpected(event.error());
    if (auto kept = keep(*event); !kept) return kept;
    auto folded = round::apply(current, *described, *event);
    if (folded) log.push_back(std::move(*event));
    return folded;
}

Result<void> OpenRound::act(round::What what, Instant at, const std::vector<PhotoBytes>& photos) {
    if (std::holds_alternative<round::Signed>(what))
        return fail(ErrorCode::refused, say("A signature comes with its record."), current.id,
                    say("Seal the round."));
    // What others said gets into the log only as they signed it, whoever hands it over.
    if (const auto* asked = std::get_if<round::Asked>(&what))
        if (const auto good = record::checkAsked(*asked); !good) return tl::unexpected(good.error());
    return commit(std::move(what), at,
                  [&](const round::Event& event) { return archive->append(current.id, event, photos); });
}

Result<void> OpenRound::seal(const round::Signed& signature, Instant at, const file::Told& told,
                             std::string_view recordJson, std::string_view pdf) {
    return commit(signature, at, [&](const round::Event& event) {
        return archive->seal(current.id, event, told, recordJson, pdf);
    });
}

Result<void> OpenRound::goToZone(const std::string& zone, Instant at) {
    auto planned = round::towardsZone(current, *described, zone);
    if (!planned) return tl::unexpected(planned.error());
    return act(std::move(*planned), at);
}

Result<void> OpenRound::actAndReplan(round::What what, Instant at, const std::vector<PhotoBytes>& photos) {
    const bool resumed = std::holds_alternative<round::Resumed>(log.back().what);
    const Sentence cause = round::causeOf(current, *described, what, resumed);
    if (auto done = act(std::move(what), at, photos); !done) return done;
    for (const std::string& id : round::lookedTooEarly(current, *described))
        if (auto done = act(round::Reopened{id, say("Something was done after it.")}, at); !done) return done;
    if (cause.empty()) return {};
    return replan(cause, at);
}

Result<void> OpenRound::replan(const Sentence& cause, Instant at) {
    auto planned = round::reordered(current, *described, cause);
    if (!planned) return tl::unexpected(planned.error());
    if (!*planned) return {};
    return act(std::move(**planned), at);
}

} // namespace ambit::archive
