// A visibility graph: a shortest way among polygons bends only at their outward corners, and passes each of
// them by.
#include "walk/ways.hpp"

#include <limits>
#include <queue>

namespace ambit::walk {

namespace {

using airframe::Outline;
using airframe::Place;

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr std::size_t none = std::numeric_limits<std::size_t>::max();

std::vector<Outline> outlinesOf(const airframe::Airframe& airframe, const std::vector<Outline>& marked) {
    std::vector<Outline> outlines = marked;
    for (const auto& part : airframe.parts)
        if (part.solid) outlines.push_back(part.outline);
    for (const auto& area : airframe.keepOut)
        outlines.push_back(area.outline);
    return outlines;
}

/// The spot nearest to where a line from `place` meets the edge a – b square, and not left of it; nullopt: it
/// meets it beyond the ends.
std::optional<Spot> footOn(Spot a, Spot b, Spot place) {
    const auto x = static_cast<double>(b.x - a.x);
    const auto y = static_cast<double>(b.y - a.y);
    const double share =
        (static_cast<double>(place.x - a.x) * x + static_cast<double>(place.y - a.y) * y) / (x * x + y * y);
    if (share <= 0 || share >= 1) return std::nullopt;
    const double footX = share * x;
    const double footY = share * y;
    std::optional<Spot> nearest;
    double least = infinite;
    for (int stepX = -1; stepX <= 2; ++stepX) {
        for (int stepY = -1; stepY <= 2; ++stepY) {
            const double alongX = std::floor(footX) + stepX;
            const double alongY = std::floor(footY) + stepY;
            const Spot spot{a.x + static_cast<std::int64_t>(alongX), a.y + static_cast<std::int64_t>(alongY)};
            const double off = (alongX - footX) * (alongX - footX) + (alongY - footY) * (alongY - footY);
            if (off >= least || airframe::turn(a, b, spot) > 0) continue;
            least = off;
            nearest = spot;
        }
    }
    return nearest;
}

struct Candidate {
    bool outermost;
    double metres;
    Spot at;
    std::optional<std::size_t> edge;
    friend bool operator<(const Candidate& a, const Candidate& b) {
        return a.outermost != b.outermost ? a.outermost : a.metres < b.metres;
    }
};

/// Where one could leave the margin, the best first.
std::vector<Candidate> candidatesOf(const std::vector<Ring>& rings, Spot place) {
    std::vector<Candidate> candidates;
    std::size_t edge = 0;
    for (const auto& [spots, outermost] : rings) {
        Spot a = spots.back();
        for (const Spot b : spots) {
            if (const auto foot = footOn(a, b, place))
                candidates.push_back({outermost, metresBetween(place, *foot), *foot, edge});
            candidates.push_back({outermost, metresBetween(place, b), b, std::nullopt});
            a = b;
            ++edge;
        }
    }
    std::stable_sort(candidates.begin(), candidates.end());
    return candidates;
}

} // namespace

Ground::Ground(const airframe::Airframe& airframe, const std::vector<Outline>& marked)
    : Ground(outlinesOf(airframe, marked), airframe.costs.clearanceMetres) {}

Ground::Ground(const std::vector<Outline>& given, double clearanceMetres)
    : clearance(clearanceMetres), solid(grownAndUnited(given, 0, toleranceMetres)),
      grown(grownAndUnited(given, clearanceMetres, toleranceMetres)), corners(grown.corners()),
      seen(corners.size()) {
    for (std::size_t i = 0; i < corners.size(); ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            const Spot a = corners[i].at;
            const Spot b = corners[k].at;
            if (!corners[i].isPassedBy(b) || !corners[k].isPassedBy(a) || !grown.isFree(a, b)) continue;
            seen[i].push_back({k, metresBetween(a, b)});
            seen[k].push_back({i, metresBetween(a, b)});
        }
    }
    for (const Ring& ring : grown.rings()) {
        Outline& outline = outlines.emplace_back();
        std::transform(ring.spots.begin(), ring.spots.end(), std::back_inserter(outline), placeOf);
    }
}

std::optional<Ground::Exit> Ground::exitOf(const Place& place) const {
    const Spot spot = spotOf(place);
    if (grown.isOpen(spot)) return Exit{spot, spot, 0, std::nullopt};
    if (clearance <= 0 || !solid.isOpen(spot)) return std::nullopt;
    for (const Candidate& candidate : candidatesOf(grown.rings(), spot)) {
        if (!grown.isOpen(candidate.at) || !solid.isFree(spot, candidate.at)) continue;
        const bool shallow = candidate.metres <= clearance - toleranceMetres;
        return Exit{spot, candidate.at, candidate.metres, shallow ? candidate.edge : std::nullopt};
    }
    return std::nullopt;
}

/// In the margin of one straight edge, with nothing between their exits?
bool Ground::areSideBySide(const Exit& one, const Exit& other) const {
    return one.place == other.place || (one.edge && one.edge == other.edge && grown.isFree(one.at, other.at));
}

double Ground::sideways(const Exit& one, const Exit& other) {
    return metresBetween(one.at, other.at) + std::fabs(one.depth - other.depth);
}

/// One walks along the edge where the shallower of the two is: where that way meets the deeper one's way out.
Place Ground::turnBeside(const Exit& one, const Exit& other) {
    const Exit& deeper = one.depth > other.depth ? one : other;
    const double share = deeper.depth > 0 ? std::min(one.depth, other.depth) / deeper.depth : 0;
    const Place in = placeOf(deeper.place);
    const Place out = placeOf(deeper.at);
    return {out.x + (in.x - out.x) * share, out.y + (in.y - out.y) * share};
}

std::vector<Ground::Seen> Ground::sightOf(Spot from) const {
    std::vector<Seen> sight;
    for (std::size_t i = 0; i < corners.size(); ++i)
        if (corners[i].isPassedBy(from) && grown.isFree(from, corners[i].at))
            sight.push_back({i, metresBetween(from, corners[i].at)});
    return sight;
}

Ground::Reach Ground::reachFrom(const std::vector<Seen>& sight) const {
    Reach reach{std::vector<double>(corners.size(), infinite),
                std::vector<std::size_t>(corners.size(), none)};
    using Next = std::pair<double, std::size_t>;
    std::priority_queue<Next, std::vector<Next>, std::greater<>> queue;
    const auto offer = [&](std::size_t corner, double metres, std::size_t via) {
        if (metres >= reach.metres[corner]) return;
        reach.metres[corner] = metres;
        reach.via[corner] = via;
        queue.emplace(metres, corner);
    };
    for (const auto& [corner, metres] : sight)
        offer(corner, metres, none);
    while (!queue.empty()) {
        const auto [sofar, at] = queue.top();
        queue.pop();
        if (sofar > reach.metres[at]) continue;
        for (const auto& [corner, metres] : seen[at])
            offer(corner, sofar + metres, at);
    }
    return reach;
}

/// Corners on the shortest way over open ground, and its length.
std::optional<Ground::Bends> Ground::bendsBetween(Spot from, Spot to) const {
    if (grown.isFree(from, to)) return Bends{{}, metresBetween(from, to)};
    const Reach reach = reachFrom(sightOf(from));
    std::size_t last = none;
    Bends bends{{}, infinite};
    for (const auto& [corner, metres] : sightOf(to)) {
        if (reach.metres[corner] + metres >= bends.metres) continue;
        bends.metres = reach.metres[corner] + metres;
        last = corner;
    }
    if (last == none) return std::nullopt;
    for (; last != none; last = reach.via[last])
        bends.spots.push_back(corners[last].at);
    std::reverse(bends.spots.begin(), bends.spots.end());
    return bends;
}

std::optional<Ground::Way> Ground::way(Place from, Place to) const {
    const auto start = exitOf(from);
    const auto end = exitOf(to);
    if (!start || !end) return std::nullopt;
    Way way{{placeOf(start->place)}, 0};
    const auto add = [&](Place place) {
        if (way.places.back() != place) way.places.push_back(place);
    };
    if (areSideBySide(*start, *end)) {
        add(turnBeside(*start, *end));
        way.metres = sideways(*start, *end);
    } else {
        const auto bends = bendsBetween(start->at, end->at);
        if (!bends) return std::nullopt;
        add(placeOf(start->at));
        for (const Spot spot : bends->spots)
            add(placeOf(spot));
        add(placeOf(end->at));
        way.metres = start->depth + bends->metres + end->depth;
    }
    add(placeOf(end->place));
    if (way.places.size() == 1) way.places.push_back(way.places.front());
    return way;
}

std::vector<std::vector<double>> Ground::metres(const std::vector<Place>& places) const {
    const std::size_t count = places.size();
    std::vector<std::optional<Exit>> exits;
    std::vector<std::vector<Seen>> sights;
    for (const Place place : places) {
        exits.push_back(exitOf(place));
        sights.push_back(exits.back() ? sightOf(exits.back()->at) : std::vector<Seen>());
    }
    std::vector<std::vector<double>> metres(count, std::vector<double>(count, infinite));
    for (std::size_t a = 0; a < count; ++a) {
        metres[a][a] = 0;
        if (!exits[a]) continue;
        const Reach reach = reachFrom(sights[a]);
        for (std::size_t b = 0; b < a; ++b) {
            if (!exits[b]) continue;
            double best = infinite;
            if (grown.isFree(exits[a]->at, exits[b]->at)) best = metresBetween(exits[a]->at, exits[b]->at);
            for (const auto& [corner, metresOn] : sights[b])
                best = std::min(best, reach.metres[corner] + metresOn);
            metres[a][b] = metres[b][a] = areSideBySide(*exits[a], *exits[b])
                                              ? sideways(*exits[a], *exits[b])
                                              : exits[a]->depth + best + exits[b]->depth;
        }
    }
    return metres;
}

} // namespace ambit::walk
