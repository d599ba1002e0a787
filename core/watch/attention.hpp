// What in a walk that is followed may need whoever follows it, and so which of several to look at first.
#pragma once

#include "round/pace.hpp"
#include "round/state.hpp"

namespace ambit::watch {

/// The most urgent first.
enum class Need {
    grounds, ///< a finding that grounds, not looked at yet
    toSign,  ///< concluded and signed: the record waits for the second signature
    quick,   ///< points settled within the time that one takes, not looked at yet
    replied, ///< what was asked is answered or declined, not looked at yet
    found,   ///< another finding, or a point not inspected, not looked at yet
    stuck,   ///< something is in hand much longer than it takes
    away,    ///< no connection, in the middle of a walk
    paused,
    nothing
};

struct Attention {
    Need need = Need::nothing;
    std::int64_t seq = 0; ///< of the event that it is about; 0: none
    friend bool operator==(const Attention&, const Attention&) = default;
};

struct Followed {
    const airframe::Airframe& airframe;
    const round::State& state;
    const std::vector<round::Event>& events;
    const round::Pace& pace;
    std::int64_t lookedUpTo = 0; ///< the last event that whoever follows has looked at
    Instant now;                 ///< by the walker's clock
    bool isConnected = true;
    bool isToSign = false; ///< its record is here, and hasn't this person's signature
};

/// Something in hand is called stuck when it takes this many times what the airframe expects, and this long
/// at least. Common practice, no source: an instructor looks up when nothing has moved for a minute.
inline constexpr int stuckTimes = 4;
inline constexpr std::int64_t stuckMs = 60'000;

[[nodiscard]] Attention attentionOf(const Followed& walk);

/// What is in hand takes so long by the airframe, ms: the next point, or the change of a setting; nullopt for
/// walking, and where nothing is left.
[[nodiscard]] std::optional<std::int64_t> expectedInHand(const airframe::Airframe& airframe,
                                                         const round::State& state);

} // namespace ambit::watch
