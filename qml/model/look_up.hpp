// Looking things up in an aircraft's records: what is searched for, and what was seen of one point. A seam:
// each record is read where core has no index of them yet.
#pragma once

#include "archive/archive.hpp"
#include "file/file.hpp"

#include <optional>
#include <string>
#include <vector>

namespace ambit::view {

struct Wanted {
    std::string registration, words, part, jasc, person, kind;
    std::optional<Instant> from, before;
    std::optional<file::Discrepancy::State> state; ///< records that found what is in this state now
    std::size_t most = 50;
    std::string after; ///< the last hit's record, to go on from there
};
struct Hit {
    archive::RecordInfo info;
    std::string gloss; ///< what it says, short
};
/// Newest first.
[[nodiscard]] Result<std::vector<Hit>> find(const archive::Archive& archive, const Wanted& wanted);

struct Sighting {
    std::string record;
    Instant at;
    std::string by;
    std::string what; ///< "sound", "finding", "not inspected"; of an entry its kind
    std::string words;
    bool grounds = false;
    std::string value, unit, verdict; ///< of a measured one
};
/// What the records say of one point, the newest first. `after`: go on after this record.
[[nodiscard]] Result<std::vector<Sighting>> history(const archive::Archive& archive,
                                                    const std::string& registration, const std::string& point,
                                                    std::size_t most = 50, const std::string& after = {});

} // namespace ambit::view
