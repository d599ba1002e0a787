// Which records of a file may be let go, and which must stay: 14 CFR 91.417(b). Ambit only says so: it never
// deletes by itself, and local rules, the operator and the lessor may ask for more.
#pragma once

#include "base/date.hpp"
#include "file/file.hpp"

namespace ambit::file {

struct Keeping {
    std::string record;
    bool mayGo = false;
    Sentence why; ///< a sentence, with the rule
};

/// For each record, in the file's order. Sources: 91.417(b)(1), records of work until it is repeated or
/// superseded, or for a year; (b)(2), status (times, life-limited parts, inspections) stays with the
/// aircraft; (b)(3), defects until repaired (that sub-paragraph from memory). Rounds: no rule of these asks
/// for them.
[[nodiscard]] std::vector<Keeping> retention(const std::vector<Told>& records, const AircraftFile& file,
                                             Date today);

} // namespace ambit::file
