// Whom this device knows from earlier: who may watch it, and whom it may watch. Two small files, written
// whole each time.
#pragma once

#include "watch/peers.hpp"

#include <filesystem>

namespace ambit::link {

/// None where there is no file yet. Errors: those of readFile; invalid: not such a file.
[[nodiscard]] Result<std::vector<watch::Peer>> readWatchers(const std::filesystem::path& file);
[[nodiscard]] Result<void> writeWatchers(const std::filesystem::path& file,
                                         const std::vector<watch::Peer>& watchers);

[[nodiscard]] Result<std::vector<watch::Walker>> readWalkers(const std::filesystem::path& file);
[[nodiscard]] Result<void> writeWalkers(const std::filesystem::path& file,
                                        const std::vector<watch::Walker>& walkers);

/// Puts it first, in the place of what was known of it.
void remember(std::vector<watch::Walker>& walkers, watch::Walker walker);

} // namespace ambit::link
