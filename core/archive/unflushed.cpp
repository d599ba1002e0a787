#include "archive/unflushed.hpp"

#include "archive/connection.hpp"

namespace ambit::archive {

Result<void> commitUnflushed(Archive& archive) {
    auto done = archive.inside().run("PRAGMA synchronous = NORMAL", "be opened");
    return done ? archive.inside().run("PRAGMA wal_autocheckpoint = 4000", "be opened") : done;
}

void settle(Archive& archive) {
    // Not done, nothing is lost: it is tried again.
    (void)archive.inside().run("PRAGMA wal_checkpoint(PASSIVE)", "be settled");
}

} // namespace ambit::archive
