// What a round that is walked on one's own doesn't show: what others found since the start of that local day.
#pragma once

#include "round/state.hpp"

#include <optional>

namespace ambit::view {

struct Unshown {
    std::string toWhom; ///< who walks: their own findings are theirs
    Instant since;      ///< the local day's start

    /// Nothing unless the round is walked on one's own.
    [[nodiscard]] static std::optional<Unshown> of(const round::State& state) {
        if (!state.alone) return std::nullopt;
        constexpr std::int64_t minute = 60'000;
        constexpr std::int64_t day = 1440 * minute;
        const std::int64_t offset = state.opened.offsetMinutes * minute;
        const std::int64_t local = state.openedAt.ms + offset;
        return Unshown{state.opened.who.name, {local - (local % day + day) % day - offset}};
    }

    [[nodiscard]] bool hides(const std::string& by, Instant at) const { return by != toWhom && at >= since; }
};

} // namespace ambit::view
