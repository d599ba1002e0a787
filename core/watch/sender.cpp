#include "watch/sender.hpp"

#include <algorithm>
#include <utility>

namespace ambit::watch {

Sender::Sender(std::string walker, const InHand& round, Reads how)
    : name(std::move(walker)), inHand(&round), reads(std::move(how)), files(reads.bytes) {}

Result<FromWatcher> Sender::take(std::string_view text) {
    if (closing.isBegun()) return FromWatcher{};
    auto frame = frameFrom(text, Side::watcher, tape);
    auto news = frame ? takeIn(std::move(*frame)) : Result<FromWatcher>(tl::unexpected(frame.error()));
    if (!news) closing.because(byeFor(news.error()));
    return news;
}

Result<FromWatcher> Sender::takeIn(Frame&& frame) {
    if (auto* bye = std::get_if<Bye>(&frame)) {
        closing.silently();
        return std::move(*bye);
    }
    if (auto* hello = std::get_if<Hello>(&frame)) {
        if (phase != Phase::greeting)
            return fail(ErrorCode::invalid, ambit::say("%1 is said once.", "\"hello\""));
        phase = Phase::atTheDoor;
        return std::move(*hello);
    }
    if (phase != Phase::in || !isWelcomed)
        return fail(ErrorCode::refused,
                    ambit::say("Nothing but %1 may be said before %2.", "\"hello\"", "\"welcome\""));
    if (const auto* have = std::get_if<Have>(&frame)) return takeHave(*have);
    if (auto* say = std::get_if<Say>(&frame)) return takeSay(std::move(*say));
    if (auto* offer = std::get_if<Offer>(&frame)) return takeOffer(std::move(*offer));
    if (const auto* want = std::get_if<Want>(&frame))
        return files.take(*want, inHand->names(want->sha256)).map([] { return FromWatcher{}; });
    if (auto* piece = std::get_if<Piece>(&frame))
        return files.take(std::move(*piece)).map([](Part&& part) { return FromWatcher(std::move(part)); });
    if (auto* gone = std::get_if<Gone>(&frame))
        return files.take(*gone).map([&] { return FromWatcher(std::move(*gone)); });
    return fail(ErrorCode::refused,
                ambit::say("Only the walker may send %1.", '"' + std::string(kindOf(frame)) + '"'));
}

Result<FromWatcher> Sender::takeHave(const Have& have) {
    Result<void> taken;
    if (have.round == told && told != its)
        taken = takeFirstHave(have);
    else if (have.round == its && !its.empty())
        taken = takeLaterHave(have); // perhaps of the round before, crossing the frame that tells of the next
    else
        taken = fail(ErrorCode::invalid, ambit::say("%1 names a round that isn't walked here.", "\"have\""),
                     have.round);
    if (!taken) return tl::unexpected(taken.error());
    return FromWatcher{};
}

Result<void> Sender::takeFirstHave(const Have& have) {
    if (have.upTo > 0 && have.last.empty())
        return fail(ErrorCode::invalid,
                    ambit::say("The first %1 of a round names its last event's hash.", "\"have\""), "/last");
    if (have.upTo > 0) {
        const Sentence remedy =
            ambit::say("Set this round's copy on the watcher's device aside and follow it anew.");
        if (told == inHand->round() && have.upTo > inHand->events())
            return fail(ErrorCode::conflict,
                        ambit::say("The watcher has %1 events of this round, the walker %2.",
                                   figure(std::to_string(have.upTo)),
                                   figure(std::to_string(inHand->events()))),
                        have.round, remedy);
        const auto event = reads.event(told, have.upTo);
        if (!event)
            return fail(ErrorCode::storage, ambit::say("The walker's log can't be read now."), have.round);
        if (sha256Hex(*event) != have.last)
            return fail(ErrorCode::conflict,
                        ambit::say("Event %1 of this round is another on the two devices.",
                                   figure(std::to_string(have.upTo))),
                        have.round, remedy);
    }
    its = told;
    had = sent = have.upTo;
    limit = have.upTo + have.room;
    return {};
}

Result<void> Sender::takeLaterHave(const Have& have) {
    const std::int64_t room = have.upTo + have.room;
    if (!have.last.empty())
        return fail(ErrorCode::invalid,
                    ambit::say("Only the first %1 of a round names an event's hash.", "\"have\""), "/last");
    if (have.upTo < had || have.upTo > sent)
        return fail(ErrorCode::invalid,
                    ambit::say("%1 says %2 events; from %3 to %4 are possible.", "\"have\"",
                               figure(std::to_string(have.upTo)), figure(std::to_string(had)),
                               figure(std::to_string(sent))),
                    "/upTo");
    // Each says something new: so there can't be more of them than events and room.
    if (room < limit || (room == limit && have.upTo == had))
        return fail(ErrorCode::invalid, ambit::say("%1 takes room back, or says nothing new.", "\"have\""),
                    "/room");
    had = have.upTo;
    limit = room;
    return {};
}

Result<FromWatcher> Sender::takeSay(Say&& say) {
    if (!saying.empty() || say.id == offering)
        return fail(ErrorCode::invalid, ambit::say("%1 came before the last one was answered.", "\"say\""),
                    "/id");
    saying = say.id;
    return std::move(say);
}

Result<FromWatcher> Sender::takeOffer(Offer&& offer) {
    if (!offering.empty() || offer.id == saying)
        return fail(ErrorCode::invalid, ambit::say("%1 came before the last one was answered.", "\"offer\""),
                    "/id");
    offering = offer.id;
    const auto& sealed = inHand->sealed();
    if (sealed && sealed->recordSha256 == offer.recordSha256) return std::move(offer);
    // Not against a rule: another round may have been begun meanwhile.
    heard(offer.id, "This isn't the record of the round in hand.");
    return FromWatcher{};
}

void Sender::admit() {
    if (phase == Phase::atTheDoor) phase = Phase::in;
}

void Sender::refuse(const Error& why) {
    closing.because(byeFor(why));
}

void Sender::end(const std::string& why) {
    closing.because({why, std::nullopt});
}

void Sender::heard(const std::string& id, const std::string& why) {
    const bool isOpen = !id.empty() && (id == saying || id == offering);
    const bool isAnswered =
        std::any_of(answers.begin(), answers.end(), [&](auto& one) { return one.id == id; });
    if (isOpen && !isAnswered) answers.push_back({id, why});
}

std::optional<std::string> Sender::next() {
    if (closing.isBegun()) return closing.next();
    if (phase != Phase::in) return std::nullopt;
    auto frame = nextFrame();
    if (closing.isBegun()) return closing.next();
    if (!frame) return std::nullopt;
    std::string text = toText(*frame);
    if (text.size() <= largestFrame) return text;
    closing.because(
        byeFor({ErrorCode::unsupported,
                ambit::say("Event %1 of this round is too large to be sent.", figure(std::to_string(sent))),
                told,
                {}}));
    return closing.next();
}

std::optional<Frame> Sender::nextFrame() {
    if (!isWelcomed) {
        isWelcomed = true;
        return Welcome{name};
    }
    if (watchingTold != inHand->watchingTurn()) {
        watchingTold = inHand->watchingTurn();
        return Watching{inHand->watching()};
    }
    if (!answers.empty()) {
        const Heard first = answers.front();
        answers.erase(answers.begin());
        // Open until the answer is on its way: a watcher that doesn't read can't pile answers up.
        (first.id == saying ? saying : offering).clear();
        return first;
    }
    // A round is told of only when the one before it was answered: so the watcher's frames can be placed.
    if (its == told && told != inHand->round()) {
        told = inHand->round();
        return Round{told, std::min(inHand->events(), mostEvents)};
    }
    if (auto frame = nextOfLog()) return frame;
    return files.next(); // last: what is settled now goes before pictures
}

std::optional<Frame> Sender::nextOfLog() {
    if (its != told || told != inHand->round() || told.empty()) return std::nullopt;
    if (sent < inHand->events()) {
        if (sent >= limit) return std::nullopt;
        if (sent >= mostEvents) {
            closing.because(byeFor(
                {ErrorCode::unsupported, ambit::say("This round is too long to be followed."), told, {}}));
            return std::nullopt;
        }
        auto json = reads.event(told, sent + 1);
        if (!json) {
            closing.because(
                byeFor({ErrorCode::storage, ambit::say("The walker's log can't be read now."), told, {}}));
            return std::nullopt;
        }
        ++sent;
        return Logged{told, std::move(*json), {}};
    }
    if (sealedTold == inHand->sealedTurn() || !inHand->sealed()) return std::nullopt;
    sealedTold = inHand->sealedTurn();
    return *inHand->sealed();
}

} // namespace ambit::watch
