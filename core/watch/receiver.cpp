#include "watch/receiver.hpp"

#include <algorithm>
#include <utility>

namespace ambit::watch {

Receiver::Receiver(Hello who, Reads how, int room)
    : me(std::move(who)), reads(std::move(how)), window(std::clamp(room, 1, mostRoom)), files(reads.bytes) {}

Result<FromWalker> Receiver::take(std::string_view text) {
    if (closing.isBegun()) return FromWalker{};
    auto frame = frameFrom(text, Side::walker, tape);
    auto news = frame ? takeIn(std::move(*frame)) : Result<FromWalker>(tl::unexpected(frame.error()));
    if (!news) closing.because(byeFor(news.error()));
    return news;
}

Result<FromWalker> Receiver::takeIn(Frame&& frame) {
    if (auto* bye = std::get_if<Bye>(&frame)) {
        closing.silently();
        return std::move(*bye);
    }
    if (auto* welcome = std::get_if<Welcome>(&frame)) {
        if (isWelcomed || !isGreeted)
            return fail(ErrorCode::invalid,
                        ambit::say("%1 is said once, after %2.", "\"welcome\"", "\"hello\""));
        isWelcomed = true;
        return std::move(*welcome);
    }
    if (!isWelcomed)
        return fail(ErrorCode::invalid, ambit::say("The first thing a walker says is %1.", "\"welcome\""));
    if (auto* round = std::get_if<Round>(&frame)) return takeRound(std::move(*round));
    if (auto* logged = std::get_if<Logged>(&frame)) return takeEvent(std::move(*logged));
    if (auto* watching = std::get_if<Watching>(&frame)) return std::move(*watching);
    if (auto* heard = std::get_if<Heard>(&frame)) return takeHeard(std::move(*heard));
    if (auto* sealed = std::get_if<Sealed>(&frame)) return takeSealed(std::move(*sealed));
    if (const auto* want = std::get_if<Want>(&frame)) {
        const auto isIt = [&](const File& file) { return file.sha256 == want->sha256; };
        const bool isNamed = offering && offering->isSent &&
                             std::any_of(offering->what.files.begin(), offering->what.files.end(), isIt);
        return files.take(*want, isNamed).map([] { return FromWalker{}; });
    }
    if (auto* piece = std::get_if<Piece>(&frame))
        return files.take(std::move(*piece)).map([](Part&& part) { return FromWalker(std::move(part)); });
    if (auto* gone = std::get_if<Gone>(&frame))
        return files.take(*gone).map([&] { return FromWalker(std::move(*gone)); });
    return fail(ErrorCode::refused,
                ambit::say("Only the watcher may send %1.", '"' + std::string(kindOf(frame)) + '"'));
}

Result<FromWalker> Receiver::takeRound(Round&& round) {
    if (!id.empty() && !hasSaid)
        return fail(ErrorCode::invalid,
                    ambit::say("Another round was told of before the last one was answered."), "/round");
    if (round.round == id)
        return fail(ErrorCode::invalid, ambit::say("This round was told of already."), "/round");
    id = round.round;
    stored = reads.held(id);
    hasSaid = false;
    limit = stored.upTo;
    return std::move(round);
}

Result<FromWalker> Receiver::takeEvent(Logged&& logged) {
    if (id.empty() || logged.round != id)
        return fail(ErrorCode::invalid, ambit::say("This event is of another round than was told of."),
                    "/round");
    const std::int64_t next = stored.upTo + 1;
    if (logged.event.seq != next)
        return fail(ErrorCode::invalid,
                    ambit::say("Event %1 came where event %2 is the next.",
                               figure(std::to_string(logged.event.seq)), figure(std::to_string(next))),
                    "/event/seq");
    if (next > limit)
        return fail(ErrorCode::invalid, ambit::say("More events came than were asked for."), "/event/seq");
    const bool opens = std::holds_alternative<round::Opened>(logged.event.what);
    if (opens != (next == 1) || (opens && sha256Hex(logged.json).compare(0, id.size(), id) != 0))
        return fail(ErrorCode::invalid,
                    ambit::say("The first event of a round opens it, and its hash is the round's id."),
                    "/event");
    const auto bytes = static_cast<std::int64_t>(logged.json.size());
    if (next > mostEvents || stored.bytes + bytes > mostLogBytes)
        return fail(ErrorCode::unsupported, ambit::say("This round is too long to be followed."), id);
    stored.upTo = next;
    stored.bytes += bytes;
    if (const auto* its = std::get_if<round::Signed>(&logged.event.what))
        stored.recordSha256 = its->recordSha256;
    return std::move(logged);
}

Result<FromWalker> Receiver::takeHeard(Heard&& heard) {
    if (saying && saying->isSent && saying->what.id == heard.id)
        saying.reset();
    else if (offering && offering->isSent && offering->what.id == heard.id)
        offering.reset();
    else
        return fail(ErrorCode::invalid, ambit::say("An answer came to what nobody had said."), "/id");
    return std::move(heard);
}

Result<FromWalker> Receiver::takeSealed(Sealed&& sealed) {
    if (id.empty() || sealed.round != id)
        return fail(ErrorCode::invalid, ambit::say("This record is of another round than was told of."),
                    "/round");
    if (stored.recordSha256 != sealed.recordSha256)
        return fail(ErrorCode::invalid,
                    ambit::say("This isn't the record that the round's last event names."), "/recordSha256");
    return std::move(sealed);
}

Result<void> Receiver::say(Say what) {
    if (saying)
        return fail(ErrorCode::refused, ambit::say("What was said last isn't answered yet."), saying->what.id,
                    ambit::say("Wait until it is."));
    saying = {std::move(what)};
    return {};
}

Result<void> Receiver::offer(Offer what) {
    if (offering)
        return fail(ErrorCode::refused, ambit::say("The last record offered isn't answered yet."),
                    offering->what.id, ambit::say("Wait until it is."));
    offering = {std::move(what)};
    return {};
}

void Receiver::end(const Bye& why) {
    closing.because(why);
}

std::optional<std::string> Receiver::next() {
    if (closing.isBegun()) return closing.next();
    const auto frame = nextFrame();
    return frame ? std::optional(toText(*frame)) : std::nullopt;
}

std::optional<Frame> Receiver::nextFrame() {
    if (!isGreeted) {
        isGreeted = true;
        return me;
    }
    if (!isWelcomed) return std::nullopt;
    if (auto have = nextHave()) return have;
    if (saying && !saying->isSent) {
        saying->isSent = true;
        return saying->what;
    }
    if (offering && !offering->isSent) {
        offering->isSent = true;
        return offering->what;
    }
    return files.next();
}

/// Room is given anew when half of it is used: so that the walker need not stop, nor be told at each event.
std::optional<Frame> Receiver::nextHave() {
    const std::int64_t left = limit - stored.upTo;
    const bool isNews = std::exchange(isConfirming, false) && left < window;
    if (id.empty() || (hasSaid && left > window / 2 && !isNews)) return std::nullopt;
    limit = stored.upTo + window;
    const bool isFirst = !std::exchange(hasSaid, true);
    return Have{id, stored.upTo, window, isFirst ? stored.last : std::string()};
}

} // namespace ambit::watch
