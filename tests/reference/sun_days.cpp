// Reads places and days, one a line, and writes the sun's day and where it stands at a moment as JSON: what
// outside judges are given to compare. LATITUDE LONGITUDE YYYY-MM-DD OFFSET-MINUTES MOMENT (milliseconds
// since 1970)
#include "sky/sun_day.hpp"

#include <iostream>
#include <nlohmann/json.hpp>
#include <string>

using namespace ambit;

int main() {
    double latitude = 0;
    double longitude = 0;
    std::string day;
    int offset = 0;
    Instant moment;
    while (std::cin >> latitude >> longitude >> day >> offset >> moment.ms) {
        const auto place = sky::Place::of(latitude, longitude);
        const auto date = Date::parse(day);
        if (!place || !date) {
            std::cout << "refused\n";
            continue;
        }
        const sky::SunDay sun = sky::sunDay(*place, *date, offset);
        nlohmann::json events = nlohmann::json::array();
        for (const sky::SunEvent& event : sun.events)
            events.push_back({sky::toText(event.what), event.at.ms});
        const sky::Sky now = sky::at(*place, moment);
        std::cout << nlohmann::json{{"events", std::move(events)},
                                    {"horizon", static_cast<int>(sun.overHorizon)},
                                    {"twilight", static_cast<int>(sun.overTwilight)},
                                    {"elevation", now.elevation},
                                    {"light", sky::toText(now.light)}}
                  << '\n';
    }
}
