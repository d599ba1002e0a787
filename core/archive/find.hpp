// Finding records: by words, people, parts, codes, dates, states; and the history of one point.
#pragma once

#include "archive/archive.hpp"
#include "file/file.hpp"

namespace ambit::archive {

/// Everything given must hold; what is left empty asks nothing.
struct Wanted {
    std::string registration; ///< exactly
    std::string words;        ///< all of them, in any order, in what people wrote or the names of points with
                       ///< findings; a last one begun finds those that begin so; “in quotes”: in this order
    std::string part;              ///< likewise, in the names, numbers, serials and positions of parts
    std::string jasc;              ///< a code, or the beginning of one
    std::string person;            ///< likewise in names: who signed, did the work, is trusted
    std::string kind;              ///< of a record, exactly
    std::optional<Instant> from;   ///< that time or later
    std::optional<Instant> before; ///< earlier than that time
    std::optional<file::Discrepancy::State>
        state; ///< a discrepancy that the record brought is now in this state
    std::size_t most = 50;
    std::string after; ///< go on after this record, the last of those found before
};

struct Hit {
    RecordInfo info;
    std::string gloss; ///< what it says, in a few words
};

/// The newest first. A state asks for the files to be folded first where something has changed.
[[nodiscard]] Result<std::vector<Hit>> find(const Archive& archive, const Wanted& wanted);

/// One point in one record.
struct Sighting {
    std::string record;
    Instant at;
    std::string by;
    std::string what; ///< "sound", "finding", "not inspected"; of an entry its kind
    std::string words;
    bool grounds = false;
    std::string value, unit, verdict; ///< of a measured one
    std::string uncertainty = {};     ///< standard, in `unit`; empty: not stated
    std::string from = {};            ///< what it was read from, in RECORD.md's words; empty: not said
    bool renewed = false;             ///< the part was renewed before it, as the round or a later word says
};

/// What records say of one point of an aircraft, the newest first. `after`: go on after this record.
[[nodiscard]] Result<std::vector<Sighting>> history(const Archive& archive, const std::string& registration,
                                                    const std::string& point, std::size_t most = 50,
                                                    const std::string& after = {});

} // namespace ambit::archive
