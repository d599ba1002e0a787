// A disk that stops working: SQLite's own file layer with a fuse.
#pragma once

namespace ambit::test {

/// Makes SQLite use it from now on. Works as the real one until the fuse is set.
void useFailingDisk();

/// After `operations` more writes, cuts and syncs, all of them fail, until the next call. Negative: never.
void setFuse(int operations);

/// The same, for want of room: what would need more of it fails as on a full disk; truncating and syncing go
/// on.
void setRoom(int writes);

/// Syncs since the last call.
int syncsDone();

} // namespace ambit::test
