// Logs of rounds on the test machine, as the bytes that a log holds.
#pragma once

#include "../round/rounds.hpp"
#include "base/hash.hpp"

#include <random>
#include <string>
#include <vector>

namespace ambit::test {

inline const airframe::Airframe& theMachine() {
    static const airframe::Airframe its = machine();
    return its;
}

inline std::string bytesOf(const round::Event& event) {
    return canonicalJson(round::toJson(event));
}

inline std::vector<std::string> logOf(const std::vector<round::Event>& events) {
    std::vector<std::string> lines;
    lines.reserve(events.size());
    for (const round::Event& event : events)
        lines.push_back(bytesOf(event));
    return lines;
}

inline const std::string photoBytes = "not really a picture, but bytes with a hash";

/// A round walked to its end, with a photo, concluded and signed. `startMs` makes it another round.
inline std::vector<round::Event> wholeRound(std::int64_t startMs = 1750000000000) {
    Round round(theMachine());
    const auto act = [&](round::What what) {
        if (auto done = round.act(std::move(what)); !done) qFatal("%s", toText(done.error()).c_str());
    };
    round.until("oil");
    round::Settled oil = finding("oil");
    oil.photos = {{sha256Hex(photoBytes), "image/jpeg", std::int64_t(photoBytes.size())}};
    act(oil);
    act(round::Note{"A second look: “dry” \\ \"clean\"\nä"});
    round.toTheEnd();
    act(round::Concluded{false, "Oil."});
    act(round::Signed{std::string(64, 'e'), std::string(64, 'f'), "Robin Example"});
    for (round::Event& event : round.events)
        event.at.ms += startMs - 1750000000000;
    return round.events;
}

} // namespace ambit::test
