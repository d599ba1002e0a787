// An archive that needn't stand a power cut to the last commit.
#pragma once

#include "archive/archive.hpp"

namespace ambit::archive {

/// For a copy of what another device keeps and sends again: from now on a commit on this connection doesn't
/// wait for the disk (WAL, synchronous=NORMAL). A killed program still loses nothing, and the file stays
/// whole; a power cut may take the last commits, never one and leave one after it.
/// What is committed is moved from the WAL into the file, which waits for the disk, when that is asked for;
/// or at a commit, once there are some 16 MiB of it.
[[nodiscard]] Result<void> commitUnflushed(Archive& archive);

/// Moves it now, while nobody waits. As much as readers let it: the rest next time.
void settle(Archive& archive);

} // namespace ambit::archive
