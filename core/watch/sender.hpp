// The walker's side of one watcher, from its first frame to the last. It keeps numbers, never events: those
// are read from the log when the connection has room for a frame, so that a watcher who doesn't read costs
// nothing, and the walk never waits. WATCH.md is the specification.
#pragma once

#include "watch/bytes.hpp"
#include "watch/closing.hpp"
#include "watch/in_hand.hpp"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace ambit::watch {

/// What a watcher's frame means for the walker's device.
/// - Hello: ask the door (door.hpp), then `admit` or `refuse`.
/// - Say: check it, put it into the log as an event or not; then `heard`. An id that is in the log: `heard`.
/// - Offer: fetch its files, check them, keep them or not; then `heard`.
/// - Part, Gone: of what is fetched.
/// - Bye: the watcher has gone.
/// - nothing: the sender has seen to it.
using FromWatcher = std::variant<std::monostate, Hello, Say, Offer, Part, Gone, Bye>;

class Sender {
public:
    struct Reads {
        /// The canonical bytes of an event of a round, as the log has them; nothing: it can't be read.
        std::function<std::optional<std::string>(const std::string& round, std::int64_t seq)> event;
        ReadBytes bytes; ///< asked only for files that the round in hand names
    };

    /// `inHand` outlives this. `name`: the walker's, for `welcome`.
    Sender(std::string name, const InHand& inHand, Reads reads);

    /// A message of the watcher, as it came. An error: it broke a rule; `next` says so to it, and that is the
    /// end. Nothing is taken in after the end.
    [[nodiscard]] Result<FromWatcher> take(std::string_view text);

    /// The next message, whenever the connection has room for one; nothing: none now. Ask again after
    /// anything was taken in, told to `inHand`, or said here.
    [[nodiscard]] std::optional<std::string> next();

    void admit();                                                   ///< after Hello
    void refuse(const Error& why);                                  ///< after Hello, or at any time
    void end(const std::string& why);                               ///< nothing went wrong: the walker stops
    void heard(const std::string& id, const std::string& why = {}); ///< of a Say or an Offer
    /// A file of an offer; at most one at a time.
    [[nodiscard]] Result<void> fetch(Fetching fetching) { return files.fetch(std::move(fetching)); }
    [[nodiscard]] bool isFetching() const { return files.isFetching(); }
    [[nodiscard]] std::optional<Fetching> letGo() { return files.letGo(); }

    [[nodiscard]] bool isIn() const { return phase == Phase::in && !closing.isBegun(); }
    [[nodiscard]] bool isOver() const { return closing.isOver(); } ///< close the connection
    /// The watcher has said that it keeps the round in hand up to this event.
    [[nodiscard]] std::int64_t kept() const { return its == inHand->round() ? had : 0; }

private:
    enum class Phase { greeting, atTheDoor, in };

    Result<FromWatcher> takeIn(Frame&& frame);
    Result<FromWatcher> takeHave(const Have& have);
    Result<void> takeFirstHave(const Have& have);
    Result<void> takeLaterHave(const Have& have);
    Result<FromWatcher> takeSay(Say&& say);
    Result<FromWatcher> takeOffer(Offer&& offer);
    std::optional<Frame> nextFrame();
    std::optional<Frame> nextOfLog();

    std::string name;
    const InHand* inHand;
    Reads reads;
    Exchange files;
    Closing closing;
    JsonTape tape;
    Phase phase = Phase::greeting;
    bool isWelcomed = false;

    std::string told;       ///< the round the watcher was last told of
    std::string its;        ///< the round that `have` spoke of last: what these are of:
    std::int64_t had = 0;   ///< the watcher has so many
    std::int64_t sent = 0;  ///< of which it had or was sent so many
    std::int64_t limit = 0; ///< and has room up to this one

    std::uint64_t sealedTold = 0;
    std::uint64_t watchingTold = 0;
    std::string saying;   ///< the id that is not answered yet; "": none
    std::string offering; ///< the same
    std::vector<Heard> answers;
};

} // namespace ambit::watch
