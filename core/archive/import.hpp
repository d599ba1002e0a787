// Records from elsewhere into the archive: each is verified first, whatever brings it.
#pragma once

#include "archive/archive.hpp"

#include <functional>

namespace ambit::archive {

/// Something brought to the archive: a record's JSON or PDF, a photo, a description of an airframe.
struct Offered {
    std::string name; ///< where it came from, for people
    std::string bytes;
};

struct Imported {
    std::string sha256; ///< the record's identity; a photo's or airframe's hash
    std::string registration;
    std::string kind;   ///< of a record; "photo", "airframe"
    bool isNew = false; ///< it wasn't there yet
    int signatures = 0; ///< new ones, of a record new or known
};

/// Verifies one record's JSON, whatever its kind, and keeps its exact bytes. Errors: those of
/// record::verifyRecord; nothing is kept then. The same again: no change.
[[nodiscard]] Result<Imported> importRecord(Archive& archive, std::string_view recordJson);

/// A record's JSON or PDF, verified and ready to be kept; with the PDF come the record and photos in it.
/// Errors: those of record::verifyRecord and verifyPdf.
[[nodiscard]] Result<Incoming> verified(std::string_view bytes);

/// One record as another device has it: its JSON and, perhaps, its PDF, all of this identity and everything
/// holding, or nothing is kept. Errors: those of `verified`; conflict: another record's.
[[nodiscard]] Result<void> takeRecord(Archive& archive, const std::string& sha256,
                                      const std::vector<std::string>& files);

/// What became of one thing offered: an error sets it aside, and the others go in.
using Told = std::function<void(const std::string& name, const Result<Imported>& outcome)>;
/// The next thing; nullopt: no more. An error names something that could not be read, and is told like one
/// that doesn't hold.
using Next = std::function<std::optional<Result<Offered>>()>;

/// Everything `next` gives, verified on all cores and kept in stretches of one transaction each; `told` hears
/// of a thing, in the order given, when it is on disk. Photos that no record here names are set aside unless
/// `anyPhoto`, so they come after the records. Stops at an error of the archive itself: what was told is
/// kept.
[[nodiscard]] Result<void> importAll(Archive& archive, const Next& next, const Told& told,
                                     bool anyPhoto = false);

/// The aircraft of which there are records but no description to walk by get theirs: that of their latest
/// round, if it is here.
[[nodiscard]] Result<void> addAircraftOfRecords(Archive& archive);

} // namespace ambit::archive
