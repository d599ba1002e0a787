#include "model/aircraft_reading.hpp"

#include "airframe/read.hpp"

#include <algorithm>

namespace ambit::view {

Result<std::shared_ptr<const airframe::Airframe>> airframeOf(const archive::Archive& archive,
                                                             const std::string& registration) {
    const auto all = archive.aircraft();
    if (!all) return tl::unexpected(all.error());
    const auto its = std::find_if(all->begin(), all->end(),
                                  [&](const auto& one) { return one.registration == registration; });
    if (its == all->end()) return nullptr;
    const auto text = archive.airframeText(its->airframeSha256);
    if (!text) return tl::unexpected(text.error());
    auto airframe = airframe::read(*text);
    if (!airframe) return tl::unexpected(airframe.error().front());
    return std::make_shared<const airframe::Airframe>(std::move(*airframe));
}

Result<AircraftReading> readAircraft(const archive::Archive& archive, const std::string& registration,
                                     Date today) {
    AircraftReading reading;
    auto airframe = airframeOf(archive, registration);
    if (!airframe) return tl::unexpected(airframe.error());
    reading.airframe = std::move(*airframe);
    auto its = archive::fileOf(archive, registration);
    if (!its && its.error().code != ErrorCode::notFound) return tl::unexpected(its.error());
    if (its) reading.file = std::move(*its);
    if (reading.airframe) reading.due = file::comesDue(reading.file, *reading.airframe, today);
    reading.against = file::standsAgainst(reading.file, toText(today));
    for (Sentence& reason : file::standsAgainst(reading.due))
        reading.against.push_back(std::move(reason));
    return reading;
}

} // namespace ambit::view
