#include "walk/legs.hpp"

#include "walk/ways.hpp"

#include <algorithm>
#include <cmath>
#include <deque>
#include <mutex>

namespace ambit::walk {

namespace {

using airframe::Airframe;
using airframe::Place;
using airframe::Stand;

bool contains(const std::vector<std::string>& list, const std::string& id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

/// By sqrt, which rounds the same on every machine; hypot need not.
double straight(Place a, Place b) {
    return std::sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y));
}

/// Rounded up: then no way over a third place becomes shorter than the straight one.
std::int64_t walkingMs(double metres, const airframe::Costs& costs) {
    constexpr double noise = 1e-6;
    return static_cast<std::int64_t>(std::ceil(metres / costs.paceMetresPerSecond * 1000 - noise));
}

std::optional<Leg> legBetween(const Airframe& airframe, const Stand* from, const Stand& to, double onFoot) {
    if (!to.onlyFrom.empty() && (from == nullptr || !contains(to.onlyFrom, from->id))) return std::nullopt;
    const bool across = from != nullptr && from->raised() && to.raised() && contains(from->stepTo, to.id);
    Leg leg;
    leg.metres = across ? straight(from->at, to.at) : onFoot;
    if (!std::isfinite(leg.metres)) return std::nullopt;
    leg.climb = to.raised() && !across;
    const airframe::Costs& costs = airframe.costs;
    leg.ms = walkingMs(leg.metres, costs) + (leg.climb ? milliseconds(costs.climbSeconds) : 0) +
             (to.access == airframe::Access::kneel ? milliseconds(costs.kneelSeconds) : 0);
    leg.weighsMs = leg.ms + (leg.climb ? milliseconds(costs.climbWeightSeconds) : 0);
    return leg;
}

/// All stands, the walk's start, its end.
std::vector<Place> placesOf(const Airframe& airframe, const airframe::Walk& walk) {
    std::vector<Place> places;
    for (const Stand& stand : airframe.stands)
        places.push_back(stand.at);
    places.push_back(walk.start);
    places.push_back(walk.end);
    return places;
}

} // namespace

std::int64_t milliseconds(double seconds) {
    return static_cast<std::int64_t>(std::floor(seconds * 1000 + 0.5));
}

Legs::Legs(const Airframe& airframe, const airframe::Walk& walk,
           const std::vector<airframe::Outline>& marked) {
    const auto metres = Ground(airframe, marked).metres(placesOf(airframe, walk));
    const std::size_t stands = airframe.stands.size();
    for (std::size_t from = 0; from <= stands; ++from) {
        const Stand* here = from < stands ? &airframe.stands[from] : nullptr;
        auto& row = legs.emplace_back();
        for (std::size_t to = 0; to < stands; ++to)
            row.push_back(legBetween(airframe, here, airframe.stands[to], metres[from][to]));
        const double home = metres[from][stands + 1];
        const double length =
            std::isfinite(home) ? home : straight(here != nullptr ? here->at : walk.start, walk.end);
        const std::int64_t ms = walkingMs(length, airframe.costs);
        homes.push_back({length, ms, ms, false});
    }
}

std::shared_ptr<const Legs> Legs::of(const Airframe& airframe, const airframe::Walk& walk,
                                     const std::vector<airframe::Outline>& marked) {
    if (airframe.sha256.empty()) return std::make_shared<const Legs>(airframe, walk, marked);
    struct Known {
        std::string airframe;
        std::vector<Place> places;
        std::vector<airframe::Outline> marked;
        std::shared_ptr<const Legs> legs;
    };
    static std::mutex guard;
    static std::deque<Known> known; // the newest first
    constexpr std::size_t most = 4;
    auto places = placesOf(airframe, walk);
    const std::scoped_lock lock(guard);
    for (const Known& one : known)
        if (one.airframe == airframe.sha256 && one.places == places && one.marked == marked) return one.legs;
    known.push_front(
        {airframe.sha256, std::move(places), marked, std::make_shared<const Legs>(airframe, walk, marked)});
    if (known.size() > most) known.pop_back();
    return known.front().legs;
}

} // namespace ambit::walk
