// What comes due on one aircraft: the airframe's inspections and life limits against its file.
#pragma once

#include "file/file.hpp"
#include "judge/due.hpp"

namespace ambit::file {

struct Item {
    std::string id;
    std::string name;
    std::string source; ///< where the airframe has it from
    bool isLife = false;
    judge::Due due;
    Sentence words; ///< of its first span, or why nothing can be said
};

/// All of the airframe's, what comes first in front. An inspection counts from the records that name it; a
/// life from the part change whose position is the limit's id. `today`: where the aircraft is.
[[nodiscard]] std::vector<Item> comesDue(const AircraftFile& file, const airframe::Airframe& airframe,
                                         Date today);

/// What is past stands against *fit*, in words.
[[nodiscard]] std::vector<Sentence> standsAgainst(const std::vector<Item>& items);

} // namespace ambit::file
