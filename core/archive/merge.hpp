// Two archives into one, and one archive's copy.
#pragma once

#include "archive/import.hpp"

#include <filesystem>

namespace ambit::archive {

/// What a merge brought.
struct Merged {
    std::size_t records = 0;    ///< new ones
    std::size_t known = 0;      ///< records that were here already
    std::size_t signatures = 0; ///< new ones on known records
    std::size_t photos = 0;
    std::size_t rounds = 0; ///< logs that are new or longer here now
    /// What could not be taken in, and why: records that don't hold, two logs of one round that differ, an
    /// aircraft whose serial number is another here.
    std::vector<Error> setAside;
};

/// Everything of `from` that isn't in `into`: the union, whichever is merged into which. Each record is
/// verified as if it were imported; a description of an aircraft that both have stays as it is in `into`.
/// `from` is opened and may be moved up to this schema, its records are left as they are. Killed or failed
/// half way, what is in is whole, and merging again goes on.
[[nodiscard]] Result<Merged> merge(Archive& into, const std::filesystem::path& from);

/// A copy of the archive as it is at one moment, while others may go on using it. `to` must not exist; it is
/// there when all of it is on disk and has been looked through, or not at all.
/// Progress: pages copied of how many; false stops. Errors: storage; refused: stopped.
using Copied = std::function<bool(int done, int all)>;
[[nodiscard]] Result<void> backUp(const Archive& archive, const std::filesystem::path& to,
                                  const Copied& progress = {});

} // namespace ambit::archive
