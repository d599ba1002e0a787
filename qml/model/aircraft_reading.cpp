#include "model/aircraft_reading.hpp"

#include "airframe/read.hpp"
#include "model/shown_airframe.hpp"

#include <algorithm>

namespace ambit::view {

namespace {

using Described = std::shared_ptr<const airframe::Airframe>;

/// "": only records of it are here.
Result<std::string> airframeHashOf(const archive::Archive& archive, const std::string& registration) {
    const auto all = archive.aircraft();
    if (!all) return tl::unexpected(all.error());
    const auto its = std::find_if(all->begin(), all->end(),
                                  [&](const auto& one) { return one.registration == registration; });
    return its == all->end() ? std::string() : its->airframeSha256;
}

Result<Described> written(const archive::Archive& archive, const std::string& sha256) {
    const auto text = archive.airframeText(sha256);
    if (!text) return tl::unexpected(text.error());
    auto airframe = airframe::read(*text);
    if (!airframe) return tl::unexpected(airframe.error().front());
    return std::make_shared<const airframe::Airframe>(std::move(*airframe));
}

/// What `shown` calls what `written` calls `recorded`; nullptr for either: it has no such thing.
template<class T> const std::string& nameFor(const T* written, const T* shown, const std::string& recorded) {
    return written != nullptr && shown != nullptr && written->name == recorded ? shown->name : recorded;
}

} // namespace

Result<Described> airframeOf(const archive::Archive& archive, const std::string& registration) {
    const auto sha256 = airframeHashOf(archive, registration);
    if (!sha256) return tl::unexpected(sha256.error());
    if (sha256->empty()) return nullptr;
    auto airframe = airframeShown(archive, *sha256);
    if (!airframe) return tl::unexpected(airframe.error());
    return std::make_shared<const airframe::Airframe>(std::move(*airframe));
}

const std::string& nameOf(const AircraftReading& reading, const file::Discrepancy& one) {
    if (!reading.airframe) return one.name;
    return nameFor(reading.written->point(one.id.point), reading.airframe->point(one.id.point), one.name);
}

const std::string& zoneNameOf(const AircraftReading& reading, const file::Discrepancy& one) {
    const auto* point = reading.airframe ? reading.airframe->point(one.id.point) : nullptr;
    if (point == nullptr) return one.zone;
    return nameFor(reading.written->zone(point->zone), reading.airframe->zone(point->zone), one.zone);
}

const std::string& nameOf(const AircraftReading& reading, const file::Item& item) {
    if (!reading.airframe) return item.name;
    const auto& inspection =
        nameFor(reading.written->inspection(item.id), reading.airframe->inspection(item.id), item.name);
    if (inspection != item.name) return inspection;
    return nameFor(reading.written->lifeLimit(item.id), reading.airframe->lifeLimit(item.id), item.name);
}

Result<AircraftReading> readAircraft(const archive::Archive& archive, const std::string& registration,
                                     Date today) {
    AircraftReading reading;
    auto airframe = airframeOf(archive, registration);
    if (!airframe) return tl::unexpected(airframe.error());
    reading.airframe = std::move(*airframe);
    if (reading.airframe) {
        auto asRecorded = written(archive, reading.airframe->sha256);
        if (!asRecorded) return tl::unexpected(asRecorded.error());
        reading.written = std::move(*asRecorded);
    }
    auto its = archive::fileOf(archive, registration);
    if (!its && its.error().code != ErrorCode::notFound) return tl::unexpected(its.error());
    if (its) reading.file = std::move(*its);
    if (reading.airframe) reading.due = file::comesDue(reading.file, *reading.written, today);
    reading.against = file::standsAgainst(reading.file, toText(today));
    for (Sentence& reason : file::standsAgainst(reading.due))
        reading.against.push_back(std::move(reason));
    return reading;
}

} // namespace ambit::view
