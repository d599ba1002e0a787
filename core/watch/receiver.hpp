// The watcher's side of one connection. It takes the events of the walker's log in order, once each, and
// folds nothing: what is stored is the caller's, and each connection begins from it. WATCH.md is the
// specification.
#pragma once

#include "watch/bytes.hpp"
#include "watch/closing.hpp"
#include "watch/frames.hpp"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace ambit::watch {

inline constexpr std::int64_t mostLogBytes = std::int64_t{128} << 20; ///< of one round's events

/// What the watcher's device has stored of a round; all zero: nothing.
struct Held {
    std::int64_t upTo = 0;    ///< events
    std::int64_t bytes = 0;   ///< of their canonical forms
    std::string last;         ///< SHA-256 of the last one's, hex
    std::string recordSha256; ///< as event `signed` says it, if it is among them
};

/// What a walker's frame means for the watcher's device.
/// - Welcome: the watcher is in.
/// - Round: this is walked now.
/// - Logged: the next event; store it before `next` is asked again.
/// - Watching: who watches.
/// - Heard: what became of a `say` or an `offer`.
/// - Sealed: the record can be fetched; again with each further signature.
/// - Part, Gone: of what is fetched.
/// - Bye: the walker has ended it.
/// - nothing: the receiver has seen to it.
using FromWalker =
    std::variant<std::monostate, Welcome, Round, Logged, Watching, Heard, Sealed, Part, Gone, Bye>;

class Receiver {
public:
    struct Reads {
        std::function<Held(const std::string& round)> held; ///< what is stored of it
        ReadBytes bytes;                                    ///< asked only for files that were offered
    };

    /// `window`: for how many events there is room at a time, 1 to mostRoom.
    Receiver(Hello me, Reads reads, int window = 256);

    /// A message of the walker, as it came. An error: it broke a rule; `next` says so to it, and that is the
    /// end. Nothing is taken in after the end.
    [[nodiscard]] Result<FromWalker> take(std::string_view text);

    /// The next message, whenever the connection has room for one; nothing: none now.
    [[nodiscard]] std::optional<std::string> next();

    /// Refused while the last one isn't answered. Said again with the same id after a cut: the same
    /// statement.
    [[nodiscard]] Result<void> say(Say what);
    [[nodiscard]] Result<void> offer(Offer what);
    /// A file that the log or `sealed` names; at most one at a time.
    [[nodiscard]] Result<void> fetch(Fetching fetching) { return files.fetch(std::move(fetching)); }
    [[nodiscard]] bool isFetching() const { return files.isFetching(); }
    [[nodiscard]] std::optional<Fetching> letGo() { return files.letGo(); }
    /// Says what is stored, though there is room for more: once nothing has come for a moment, so that the
    /// walker knows.
    void confirm() { isConfirming = true; }
    void end(const Bye& why);

    [[nodiscard]] bool isIn() const { return isWelcomed && !closing.isBegun(); }
    [[nodiscard]] bool isOver() const { return closing.isOver(); } ///< close the connection
    [[nodiscard]] const std::string& round() const { return id; }
    [[nodiscard]] std::int64_t upTo() const { return stored.upTo; }

private:
    Result<FromWalker> takeIn(Frame&& frame);
    Result<FromWalker> takeRound(Round&& round);
    Result<FromWalker> takeEvent(Logged&& logged);
    Result<FromWalker> takeHeard(Heard&& heard);
    Result<FromWalker> takeSealed(Sealed&& sealed);
    std::optional<Frame> nextFrame();
    std::optional<Frame> nextHave();

    template<class What> struct Open {
        What what;
        bool isSent = false;
    };

    Hello me;
    Reads reads;
    int window;
    Exchange files;
    Closing closing;
    JsonTape tape;
    bool isGreeted = false;
    bool isWelcomed = false;

    std::string id;         ///< the round; "": not told yet
    Held stored;            ///< of it
    bool hasSaid = false;   ///< `have`, of this round
    std::int64_t limit = 0; ///< room was given up to this event
    bool isConfirming = false;

    std::optional<Open<Say>> saying;
    std::optional<Open<Offer>> offering;
};

} // namespace ambit::watch
