// Who of an airfield has to do with one aircraft, and what its owner says of their keys.
#pragma once

#include "fleet/hangar.hpp"

namespace ambit::fleet {

class Crewing {
public:
    Crewing(Hangar& its, const Crew& crew, const Crew& others, std::uint64_t itsSeed);

    /// The owner's first words.
    [[nodiscard]] Result<void> begin();
    [[nodiscard]] Result<void> newcomer(); ///< one more of the airfield's pilots, while there are some
    [[nodiscard]] Result<void> loseAKey(); ///< a pilot's: revoked, and another trusted
    [[nodiscard]] Result<void> handOver(); ///< to another owner, who may trust from then on
    [[nodiscard]] bool isForTraining() const { return !students.empty(); }

    /// Whose word stands at the beginning of a flight.
    struct Aboard {
        const Somebody* signs = nullptr;
        const char* role = "pilot";
        const Somebody* student = nullptr;    ///< of a training flight
        const Somebody* instructor = nullptr; ///< of a training flight
    };
    [[nodiscard]] Aboard next();
    [[nodiscard]] Pen::Signing owner() const { return {&itsOwner, "owner"}; }

    std::vector<Somebody> mechanics;

private:
    [[nodiscard]] Result<void> trust(const Somebody& who, std::vector<std::string> roles);

    Hangar& hangar;
    const Crew& crew;
    const Crew& guests;
    std::uint64_t seed;
    Somebody itsOwner;
    std::vector<Somebody> pilots, students, instructors;
    std::size_t firstPilot = 0; ///< of the airfield's, by number
};

} // namespace ambit::fleet
