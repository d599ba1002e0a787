#include "archive/unflushed.hpp"

#include "archive/connection.hpp"

namespace ambit::archive {

Result<void> commitUnflushed(Archive& archive) {
    auto done = archive.inside().run("PRAGMA synchronous = NORMAL", pattern("be opened"));
    return done ? archive.inside().run("PRAGMA wal_autocheckpoint = 4000", pattern("be opened")) : done;
}

void settle(Archive& archive) {
    // Not done, nothing is lost: it is tried again.
    (void)archive.inside().run("PRAGMA wal_checkpoint(PASSIVE)", pattern("be settled"));
}

} // namespace ambit::archive
