// Small invented fleets, and archives full of their records.
#pragma once

#include "airframe/read.hpp"
#include "archive/import.hpp"
#include "base/files.hpp"
#include "fleet/fleet.hpp"

#include <QtGlobal>

namespace ambit::test {

inline std::vector<fleet::Description> demoAircraft() {
    std::vector<fleet::Description> both;
    for (const char* name : {"aeroplane", "helicopter"}) {
        const auto text = readFile(std::string(AMBIT_ROOT "/demo-aircraft/") + name + "/airframe.json");
        if (!text) qFatal("%s", toText(text.error()).c_str());
        auto airframe = airframe::read(*text);
        if (!airframe) qFatal("%s", toText(airframe.error().front()).c_str());
        both.push_back({std::move(*airframe), *text});
    }
    return both;
}

/// The records of a fleet, those of one aircraft in the order made.
inline std::vector<std::string> fleetRecords(const fleet::Plan& plan) {
    static const std::vector<fleet::Description> descriptions = demoAircraft();
    const auto fleet = fleet::Fleet::of(plan, descriptions);
    if (!fleet) qFatal("%s", toText(fleet.error()).c_str());
    std::vector<std::string> records;
    const auto made =
        fleet::makeAll(*fleet, 2, [&](const fleet::Machine&, std::string&& json) -> Result<void> {
            records.push_back(std::move(json));
            return {};
        });
    if (!made) qFatal("%s", toText(made.error()).c_str());
    return records;
}

/// Offers the things one after another.
inline archive::Next offering(const std::vector<std::string>& things) {
    return [&things, next = std::size_t{0}]() mutable -> std::optional<Result<archive::Offered>> {
        if (next == things.size()) return std::nullopt;
        const std::size_t i = next++;
        return archive::Offered{std::to_string(i), things[i]};
    };
}

/// Imports all of them; none may be set aside.
inline void keepAll(archive::Archive& archive, const std::vector<std::string>& things) {
    const auto done = archive::importAll(archive, offering(things),
                                         [](const std::string& name, const Result<archive::Imported>& one) {
                                             if (!one)
                                                 qFatal("%s: %s", name.c_str(), toText(one.error()).c_str());
                                         });
    if (!done) qFatal("%s", toText(done.error()).c_str());
}

} // namespace ambit::test
