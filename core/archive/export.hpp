// One aircraft's whole file as one zip that opens without Ambit.
#pragma once

#include "archive/archive.hpp"

#include <filesystem>

namespace ambit::archive {

struct Exported {
    std::size_t records = 0;
    std::size_t pdfs = 0;
    std::size_t photos = 0;
    std::vector<std::string> missingPhotos; ///< that records name and the archive hasn't
};

/// records/ (each record's JSON with every row of its signatures, and its PDFs), photos/, airframes/,
/// index.html (the file as it stands on that day, each record with its words and links) and README.txt (how
/// to check it with stock tools). `to` must not exist (its
/// folder is made if needed); it is there whole, or not at all. Errors: notFound, no
/// record of the aircraft; storage.
[[nodiscard]] Result<Exported> exportFile(const Archive& archive, const std::string& registration,
                                          const std::filesystem::path& to, Instant at);

} // namespace ambit::archive
