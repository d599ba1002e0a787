// What one aircraft's file says, read at once: values, made on any thread.
#pragma once

#include "archive/aircraft_file.hpp"
#include "file/comes_due.hpp"

#include <memory>
#include <optional>

namespace ambit::view {

struct AircraftReading {
    file::AircraftFile file;
    std::shared_ptr<const airframe::Airframe> airframe; ///< nullptr: only records of it are here
    std::vector<file::Item> due;                        ///< what comes first in front
    std::vector<Sentence> against;                      ///< what stands against *fit*, in words
};

/// As the archive has it now; nullptr: it has only records of this aircraft.
[[nodiscard]] Result<std::shared_ptr<const airframe::Airframe>> airframeOf(const archive::Archive& archive,
                                                                           const std::string& registration);

/// `today`: where the device is. An aircraft without records has an empty file.
[[nodiscard]] Result<AircraftReading> readAircraft(const archive::Archive& archive,
                                                   const std::string& registration, Date today);

} // namespace ambit::view
