// Sunrise, sunset and twilight at a place, and what it is there at a moment.
#include "base/decimal.hpp"
#include "cli/commands.hpp"
#include "cli/talk.hpp"
#include "sky/sun_day.hpp"

#include <array>
#include <cmath>
#include <cstdio>
#include <iostream>
#include <nlohmann/json.hpp>
#include <optional>

namespace ambit::cli {

namespace {

constexpr int firstYear = 1950, lastYear = 2100; ///< those that core/sky is made for

/// What was asked for, read.
struct Asked {
    sky::Place place;
    Date day;
    int offsetMinutes = 0;
    std::optional<Instant> moment;
};

Result<sky::Place> placeOf(const SkyOptions& options) {
    const auto latitude = Decimal::parse(options.latitude);
    if (!latitude) return tl::unexpected(latitude.error());
    const auto longitude = Decimal::parse(options.longitude);
    if (!longitude) return tl::unexpected(longitude.error());
    return sky::Place::of(latitude->approximate(), longitude->approximate());
}

/// "+02:00" to 120.
Result<int> offsetOf(const std::string& text) {
    const auto read = parseLocalInstant("2000-01-01T00:00:00" + text);
    if (!read)
        return fail(ErrorCode::invalid, "This is not an offset from UTC.", text.substr(0, 40),
                    "Write it like +02:00 or -09:30, at most 14 hours.");
    return read->offsetMinutes;
}

Result<Asked> read(const SkyOptions& options) {
    const auto place = placeOf(options);
    if (!place) return tl::unexpected(place.error());
    auto moment = options.at.empty() ? Result<LocalInstant>(now()) : parseLocalInstant(options.at);
    if (!moment) return tl::unexpected(moment.error());
    if (!options.offset.empty()) {
        const auto offset = offsetOf(options.offset);
        if (!offset) return tl::unexpected(offset.error());
        moment->offsetMinutes = *offset;
    }
    const auto day = options.date.empty() ? Date::of(*moment) : Date::parse(options.date);
    if (!day) return tl::unexpected(day.error());
    if (day->year() < firstYear || day->year() > lastYear)
        return fail(ErrorCode::unsupported, "The sun's place is only good from 1950 to 2100.", toText(*day));
    Asked asked{*place, *day, moment->offsetMinutes, moment->at};
    if (options.at.empty() && !options.date.empty())
        asked.moment.reset(); // another day than today: what is now is not asked
    return asked;
}

const char* toText(sky::Course course, const char* crosses, const char* above, const char* below) {
    return course == sky::Course::crosses ? crosses : course == sky::Course::staysAbove ? above : below;
}

Json toJson(const Asked& asked, const sky::SunDay& sun) {
    Json events = Json::array();
    for (const sky::SunEvent& event : sun.events)
        events.push_back({{"what", sky::toText(event.what)},
                          {"at", ambit::toText(LocalInstant{event.at, asked.offsetMinutes})}});
    Json json{{"date", ambit::toText(asked.day)},
              {"offsetMinutes", asked.offsetMinutes},
              {"events", std::move(events)},
              {"sun", toText(sun.overHorizon, "rises or sets", "never sets", "never rises")},
              {"twilight", toText(sun.overTwilight, "begins or ends", "never ends", "never begins")}};
    if (asked.moment) {
        const sky::Sky here = sky::at(asked.place, *asked.moment);
        json["at"] = {{"instant", ambit::toText(LocalInstant{*asked.moment, asked.offsetMinutes})},
                      {"elevation", std::round(here.elevation * 1000) / 1000},
                      {"sky", sky::toText(here.light)}};
    }
    return json;
}

/// To the nearest minute, as tables have it; the last half minute of a day is 24:00.
std::string clockTime(Instant at, const Asked& asked) {
    constexpr std::int64_t minute = 60'000;
    const std::int64_t since = at.ms - sky::startOf(asked.day, asked.offsetMinutes).ms;
    const auto minutes = static_cast<int>((since + minute / 2) / minute);
    std::array<char, 16> text{};
    std::snprintf(text.data(), text.size(), "%02d:%02d", minutes / 60, minutes % 60);
    return text.data();
}

void print(const Asked& asked, const sky::SunDay& sun) {
    const std::string zone = ambit::toText(LocalInstant{Instant{}, asked.offsetMinutes}).substr(23);
    std::cout << ambit::toText(asked.day) << ", UTC" << zone << '\n';
    for (const sky::SunEvent& event : sun.events)
        std::cout << "  " << clockTime(event.at, asked) << "  " << sky::toText(event.what) << '\n';
    std::cout << toText(sun.overHorizon, "", "The sun doesn't set.\n", "The sun doesn't rise.\n")
              << toText(sun.overTwilight, "",
                        sun.overHorizon == sky::Course::crosses ? "No night: twilight is the darkest.\n" : "",
                        "Night all day.\n");
    if (!asked.moment) return;
    const sky::Sky here = sky::at(asked.place, *asked.moment);
    std::cout << "At " << ambit::toText(LocalInstant{*asked.moment, asked.offsetMinutes}) << " it is "
              << sky::toText(here.light) << ": the sun's centre " << fixed(std::abs(here.elevation), 2)
              << " degrees " << (here.elevation < 0 ? "below" : "above")
              << " the horizon, refraction left out.\n";
}

} // namespace

int sky(const SkyOptions& options) {
    const auto asked = read(options);
    if (!asked) {
        complain(asked.error());
        return Exit::usage;
    }
    const sky::SunDay sun = sky::sunDay(asked->place, asked->day, asked->offsetMinutes);
    if (options.json)
        std::cout << toJson(*asked, sun) << '\n';
    else
        print(*asked, sun);
    return Exit::done;
}

} // namespace ambit::cli
