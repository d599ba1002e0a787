// Is everything here that was here, and as it was?
#pragma once

#include "archive/archive.hpp"
#include "file/file.hpp"

#include <functional>

namespace ambit::archive {

/// What doesn't hold any more.
struct Broken {
    std::string sha256; ///< the record's identity; of a photo its hash; of a round's log the round's id
    Error error;
};
struct Verification {
    std::size_t records = 0; ///< looked at
    std::size_t photos = 0;
    std::size_t pdfs = 0;
    std::size_t rounds = 0; ///< logs, of rounds walked on this device or merged: sealed and open ones
    std::vector<Broken> broken;
    std::vector<file::Hole>
        holes; ///< nobody names it (`namedBy` empty): the archive remembers it as a latest one
    std::vector<std::string> missingPhotos; ///< hashes that records name
};

struct Verifying {
    std::string registration; ///< empty: all aircraft
    /// Judges again, as if it came in now, what each record says, and looks at the rest of the file: several
    /// times slower. Without it, its bytes are still those that were judged when it came in.
    bool contents = false;
    /// Now and then, from this thread: how many of how many records. False: stop here.
    std::function<bool(std::size_t done, std::size_t all)> progress;
};

/// Each record's hash, signatures, place in the file and links, and that a search can find it; what is
/// missing; photos and PDFs by their hash; each round's log by its events' digests and numbers, and that a
/// sealed one's record is here. On all cores.
/// Errors: storage, if the archive can't be read; refused: stopped.
[[nodiscard]] Result<Verification> verify(const Archive& archive, const Verifying& what = {});

} // namespace ambit::archive
