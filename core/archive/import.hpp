// Records from elsewhere into the archive, and what an aircraft's records together say.
#pragma once

#include "archive/archive.hpp"
#include "file/file.hpp"

namespace ambit::archive {

struct Imported {
    std::string sha256; ///< the record's identity
    std::string registration;
    std::string kind;
    bool isNew = false; ///< it wasn't there yet
};

/// Verifies a record's JSON, whatever its kind, and keeps its exact bytes. Errors: those of
/// record::verifyRecord; nothing is kept then. The same again: no change.
[[nodiscard]] Result<Imported> importRecord(Archive& archive, std::string_view recordJson);

/// The aircraft's file, from all its records here; each is verified again. notFound: no record of it.
[[nodiscard]] Result<file::AircraftFile> fileOf(const Archive& archive, const std::string& registration);

/// A record that doesn't hold any more.
struct Broken {
    std::string sha256;
    Error error;
};
struct Verification {
    std::size_t records = 0; ///< looked at
    std::vector<Broken> broken;
    std::vector<file::Hole> holes;
};
/// Every record of the aircraft (empty: of all), and what is missing among them.
[[nodiscard]] Result<Verification> verify(const Archive& archive, const std::string& registration = {});

} // namespace ambit::archive
