// One aircraft's file, as the archive has it.
#pragma once

#include "archive/archive.hpp"
#include "file/file.hpp"

namespace ambit::archive {

/// The aircraft's file, from all its records here. What comes in was verified then; archive::verify looks
/// whether it still is what it was. notFound: no record of it.
[[nodiscard]] Result<file::AircraftFile> fileOf(const Archive& archive, const std::string& registration);

/// What was said afterwards of whether parts were renewed. A file in which nobody did is not folded.
[[nodiscard]] Result<file::Renewals> renewals(const Archive& archive, const std::string& registration);

/// Folds the files in which something has changed and notes the states of their discrepancies, by which they
/// are found.
[[nodiscard]] Result<void> settle(const Archive& archive);

} // namespace ambit::archive
