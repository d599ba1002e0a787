// The invented people who fly and look after an invented fleet, by airfield.
#pragma once

#include "fleet/chance.hpp"
#include "record/key.hpp"
#include "round/event.hpp"

namespace ambit::fleet {

struct Somebody {
    std::string name;        ///< plainly invented: "Kim Example"
    std::string certificate; ///< plainly invented: "DEMO-PILOT-0012"
    std::string kind;        ///< of a mechanic's certificate
    record::Signer key;

    [[nodiscard]] round::Person as(const char* role) const { return {name, role, certificate}; }
};

/// Who is at one airfield. An aircraft that is at home there is flown by some of them.
struct Crew {
    std::string airfield;     ///< its name, plainly invented
    round::Position position; ///< in the open sea
    std::vector<Somebody> owners, pilots, students, instructors, mechanics;
};

/// So many airfields. The same seed makes the same people, with the same keys.
[[nodiscard]] Result<std::vector<Crew>> makeCrews(std::uint64_t seed, int airfields, Instant from);

/// Their key is lost: another one, for the same person.
[[nodiscard]] Result<Somebody> withNewKey(std::uint64_t seed, const Somebody& who, Instant from);

} // namespace ambit::fleet
