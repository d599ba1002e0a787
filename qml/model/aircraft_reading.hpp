// What one aircraft's file says, read at once: values, made on any thread.
#pragma once

#include "archive/aircraft_file.hpp"
#include "file/comes_due.hpp"

#include <memory>
#include <optional>

namespace ambit::view {

struct AircraftReading {
    file::AircraftFile file;
    /// In the language of the screens; nullptr: only records of it are here.
    std::shared_ptr<const airframe::Airframe> airframe;
    std::shared_ptr<const airframe::Airframe> written; ///< the same as records have it
    std::vector<file::Item> due;                       ///< what comes first in front
    std::vector<Sentence> against;                     ///< what stands against *fit*, in words
};

/// As the archive has it now, in the language of the screens; nullptr: it has only records of this aircraft.
[[nodiscard]] Result<std::shared_ptr<const airframe::Airframe>> airframeOf(const archive::Archive& archive,
                                                                           const std::string& registration);

/// The names of a discrepancy's point and zone, of what comes due: in the language of the screens where the
/// airframe still calls them what the record does, else as recorded.
[[nodiscard]] const std::string& nameOf(const AircraftReading& reading, const file::Discrepancy& one);
[[nodiscard]] const std::string& zoneNameOf(const AircraftReading& reading, const file::Discrepancy& one);
[[nodiscard]] const std::string& nameOf(const AircraftReading& reading, const file::Item& item);

/// `today`: where the device is. An aircraft without records has an empty file.
[[nodiscard]] Result<AircraftReading> readAircraft(const archive::Archive& archive,
                                                   const std::string& registration, Date today);

} // namespace ambit::view
