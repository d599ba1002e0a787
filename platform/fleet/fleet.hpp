// An invented fleet: aircraft that don't exist, flown and looked after by people who don't exist, with the
// signed records that years of it would leave. For demonstrations and measurements. Every record is a true
// one: the rules of a round let each event pass, and each signature holds.
//
// The same plan and airframes give the same records, byte for byte: the people's keys are worked out from the
// seed, and their signatures need no other chance. So these keys protect nothing (fleet/keys.hpp).
#pragma once

#include "airframe/airframe.hpp"
#include "base/time.hpp"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace ambit::fleet {

/// What is wanted.
struct Plan {
    std::uint64_t seed = 1;
    int aircraft = 300;           ///< 1 to 10,000
    int years = 10;               ///< 1 to 15
    std::size_t records = 100000; ///< in all; exactly so many are made
    Instant from{1451606400000};  ///< midnight UTC of the first day; in the years 1971 to 2100
};

/// A kind of aircraft. Its `notice` says that it is invented: each round's record bears it.
struct Description {
    airframe::Airframe airframe;
    std::string text; ///< of its file
};

/// One of the aircraft.
struct Machine {
    std::string registration; ///< "OX-F0001": no state's mark begins so
    std::string serial;       ///< "INVENTED-0001"
    std::size_t airframe = 0; ///< index among the descriptions
    std::size_t records = 0;  ///< how many it gets
};

/// Takes a record's exact bytes.
using Take = std::function<Result<void>(const Machine&, std::string&&)>;

/// What was made of one aircraft.
struct Made {
    std::size_t records = 0;
    /// Identities of those with something that real files have and that their fold complains about: a
    /// counter written down wrongly. Nothing else contradicts.
    std::vector<std::string> slips;
    std::size_t forks = 0; ///< times that two devices didn't know of each other
};

/// Whatever the aircraft share, made once: people and their keys, the plans of the walks.
class Fleet {
public:
    /// invalid: an airframe whose notice doesn't have the word “invented”; a number outside its limits, more
    /// than 2,000 records a year or less than 40 in all for an aircraft on average. Errors of walk::makePlan.
    /// The descriptions must outlive the fleet.
    [[nodiscard]] static Result<Fleet> of(const Plan& plan, const std::vector<Description>& descriptions);

    [[nodiscard]] const std::vector<Machine>& machines() const;

    /// The life of one aircraft, its records in the order made. Stops at the first error of `take`. Each is
    /// independent of the others: several threads may each make one.
    [[nodiscard]] Result<Made> make(std::size_t index, const Take& take) const;

    struct Shared;

private:
    std::shared_ptr<const Shared> shared;
};

/// All of them, on so many threads. `take` is called by one at a time; each aircraft's records come in the
/// order made, those of different aircraft mixed.
[[nodiscard]] Result<std::vector<Made>> makeAll(const Fleet& fleet, int threads, const Take& take);

} // namespace ambit::fleet
