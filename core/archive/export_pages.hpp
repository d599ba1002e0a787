// The pages that go with an export. Inside core/archive only.
#pragma once

#include "file/comes_due.hpp"

#include <string>
#include <vector>

namespace ambit::archive {

/// A record in an export.
struct Exhibit {
    file::Told told;
    std::vector<std::string> files;  ///< paths in the export: JSON, then PDFs
    std::vector<std::string> photos; ///< likewise
};

/// index.html: no script, nothing from elsewhere. Newest first. `missing`: what else the archive hasn't, in
/// sentences.
[[nodiscard]] std::string indexPage(const std::string& registration, const file::AircraftFile& file,
                                    const std::vector<Exhibit>& exhibits,
                                    const std::vector<Sentence>& against,
                                    const std::vector<std::string>& missing, Instant at);

/// README.txt: what is there, and how to check it.
[[nodiscard]] std::string readMe(const std::string& registration, Instant at);

} // namespace ambit::archive
