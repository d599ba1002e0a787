// Whom this device knows from earlier: who may watch it, and whom it may watch. Two small files, written
// whole each time.
#pragma once

#include "watch/door.hpp"
#include "watch/invitation.hpp"

#include <filesystem>

namespace ambit::link {

/// A walker that took this device in once: it is joined again without a word.
struct Walker {
    watch::Peer who;
    std::vector<watch::Address> addresses; ///< where it was last
    std::uint16_t port = watch::usualPort;
    friend bool operator==(const Walker&, const Walker&) = default;
};

/// None where there is no file yet. Errors: those of readFile; invalid: not such a file.
[[nodiscard]] Result<std::vector<watch::Peer>> readWatchers(const std::filesystem::path& file);
[[nodiscard]] Result<void> writeWatchers(const std::filesystem::path& file,
                                         const std::vector<watch::Peer>& watchers);

[[nodiscard]] Result<std::vector<Walker>> readWalkers(const std::filesystem::path& file);
[[nodiscard]] Result<void> writeWalkers(const std::filesystem::path& file,
                                        const std::vector<Walker>& walkers);

/// Puts it first, in the place of what was known of it.
void remember(std::vector<Walker>& walkers, Walker walker);

} // namespace ambit::link
