// A visibility graph: a shortest way among polygons bends only at their outward corners.
#include "walk/ways.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace ambit::walk {

namespace {

using airframe::Outline;
using airframe::Place;

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr double hair = 1e-7; ///< m; beside a way, far below what a coordinate means and far above rounding
constexpr std::size_t none = std::numeric_limits<std::size_t>::max();

Place operator+(Place a, Place b) {
    return {a.x + b.x, a.y + b.y};
}
Place operator-(Place a, Place b) {
    return {a.x - b.x, a.y - b.y};
}
Place operator*(Place a, double factor) {
    return {a.x * factor, a.y * factor};
}
double cross(Place a, Place b) {
    return a.x * b.y - a.y * b.x;
}
double dot(Place a, Place b) {
    return a.x * b.x + a.y * b.y;
}
double length(Place a) {
    return std::hypot(a.x, a.y);
}

double areaOf(const Outline& outline) {
    double twice = 0;
    for (std::size_t i = 0; i < outline.size(); ++i)
        twice += cross(outline[i], outline[(i + 1) % outline.size()]);
    return twice / 2;
}

bool within(const Outline& outline, Place place) {
    bool odd = false;
    for (std::size_t i = 0, before = outline.size() - 1; i < outline.size(); before = i++) {
        const Place a = outline[i];
        const Place b = outline[before];
        if ((a.y > place.y) != (b.y > place.y) &&
            place.x < (b.x - a.x) * (place.y - a.y) / (b.y - a.y) + a.x) {
            odd = !odd;
        }
    }
    return odd;
}

/// Collects the shares of the way a → a + along at which it meets the edge p – q, touches included. False if
/// it runs right through the edge, into the obstacle.
bool addMeetings(std::vector<double>& shares, Place a, Place along, Place p, Place q) {
    const Place edge = q - p;
    const double crossing = cross(along, edge);
    const double wayLength = length(along);
    const double edgeLength = length(edge);
    if (std::fabs(crossing) > 1e-12 * wayLength * edgeLength) {
        const double share = cross(p - a, edge) / crossing;
        const double onEdge = cross(p - a, along) / crossing;
        const double slack = hair / edgeLength;
        const double step = hair / wayLength;
        if (onEdge < -slack || onEdge > 1 + slack || share < -step || share > 1 + step) return true;
        if (onEdge > slack && onEdge < 1 - slack && share > step && share < 1 - step &&
            std::fabs(crossing) > 1e-5 * wayLength * edgeLength) {
            return false;
        }
        shares.push_back(share);
    } else if (std::fabs(cross(p - a, along)) <= hair * wayLength) { // on one line
        shares.push_back(dot(p - a, along) / dot(along, along));
        shares.push_back(dot(q - a, along) / dot(along, along));
    }
    return true;
}

} // namespace

Ground::Ground(const airframe::Airframe& airframe, const std::vector<Outline>& marked) {
    const auto add = [this](const Outline& outline) {
        Obstacle obstacle{outline, {infinite, infinite}, {-infinite, -infinite}};
        for (const Place corner : outline) {
            obstacle.low = {std::min(obstacle.low.x, corner.x), std::min(obstacle.low.y, corner.y)};
            obstacle.high = {std::max(obstacle.high.x, corner.x), std::max(obstacle.high.y, corner.y)};
        }
        obstacles.push_back(std::move(obstacle));
    };
    for (const auto& part : airframe.parts)
        if (part.solid) add(part.outline);
    for (const auto& area : airframe.keepOut)
        add(area.outline);
    for (const Outline& outline : marked)
        add(outline);

    for (const Obstacle& obstacle : obstacles) {
        const Outline& outline = obstacle.outline;
        const double turn = areaOf(outline) < 0 ? -1 : 1;
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Place in = outline[i] - outline[(i + outline.size() - 1) % outline.size()];
            const Place out = outline[(i + 1) % outline.size()] - outline[i];
            const bool outward = turn * cross(in, out) > 0;
            if (outward && !inside(outline[i] + (in * (1 / length(in)) - out * (1 / length(out))) * hair))
                corners.push_back(outline[i]);
        }
    }
    lengths.assign(corners.size(), std::vector<double>(corners.size(), infinite));
    for (std::size_t i = 0; i < corners.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j)
            if (free(corners[i], corners[j])) lengths[i][j] = lengths[j][i] = length(corners[i] - corners[j]);
    }
}

bool Ground::inside(Place place) const {
    return std::any_of(obstacles.begin(), obstacles.end(), [&](const Obstacle& o) {
        return place.x > o.low.x && place.x < o.high.x && place.y > o.low.y && place.y < o.high.y &&
               within(o.outline, place);
    });
}

/// Inside, and not just on an edge.
bool Ground::buried(Place place) const {
    return inside(place) && inside(place + Place{hair, 0}) && inside(place + Place{-hair, 0}) &&
           inside(place + Place{0, hair}) && inside(place + Place{0, -hair});
}

/// Is there room at least on one side? On a seam between two touching parts there is none.
bool Ground::passable(Place place, Place direction) const {
    const Place side = Place{-direction.y, direction.x} * (hair / length(direction));
    return !inside(place + side) || !inside(place - side);
}

/// May one walk straight from one to the other? Along an edge, yes.
bool Ground::free(Place from, Place to) const {
    const Place along = to - from;
    if (length(along) < hair) return true;
    std::vector<double> shares{0, 1};
    for (const Obstacle& o : obstacles) {
        const bool far = std::max(from.x, to.x) < o.low.x - hair ||
                         std::min(from.x, to.x) > o.high.x + hair ||
                         std::max(from.y, to.y) < o.low.y - hair || std::min(from.y, to.y) > o.high.y + hair;
        for (std::size_t i = 0; !far && i < o.outline.size(); ++i) {
            if (!addMeetings(shares, from, along, o.outline[i], o.outline[(i + 1) % o.outline.size()]))
                return false;
        }
    }
    std::sort(shares.begin(), shares.end());
    const double step = hair / length(along);
    for (std::size_t i = 0; i + 1 < shares.size(); ++i) {
        const double a = std::max(shares[i], 0.0);
        const double b = std::min(shares[i + 1], 1.0);
        if (b - a > 2 * step && !passable(from + along * ((a + b) / 2), along)) return false;
        const bool between = shares[i] > step && shares[i] < 1 - step;
        if (between && !passable(from + along * shares[i], along)) return false;
    }
    return true;
}

/// Metres to each corner seen from here; infinite: not seen.
std::vector<double> Ground::sightOf(Place from) const {
    std::vector<double> sight(corners.size(), infinite);
    for (std::size_t i = 0; i < corners.size() && !buried(from); ++i)
        if (free(from, corners[i])) sight[i] = length(corners[i] - from);
    return sight;
}

Ground::Reach Ground::reachFrom(std::vector<double> sight) const {
    const std::size_t count = corners.size();
    Reach reach{std::move(sight), std::vector<std::size_t>(count, none)};
    std::vector<bool> done(count, false);
    for (;;) {
        std::size_t next = none;
        for (std::size_t i = 0; i < count; ++i)
            if (!done[i] && reach.metres[i] < (next == none ? infinite : reach.metres[next])) next = i;
        if (next == none) return reach;
        done[next] = true;
        for (std::size_t i = 0; i < count; ++i) {
            const double metres = reach.metres[next] + lengths[next][i];
            if (metres < reach.metres[i]) {
                reach.metres[i] = metres;
                reach.via[i] = next;
            }
        }
    }
}

std::optional<Ground::Way> Ground::way(Place from, Place to) const {
    if (buried(from) || buried(to)) return std::nullopt;
    if (free(from, to)) return Way{{from, to}, length(to - from)};
    const Reach reach = reachFrom(sightOf(from));
    const std::vector<double> sight = sightOf(to);
    std::size_t last = none;
    double best = infinite;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        if (reach.metres[i] + sight[i] < best) {
            best = reach.metres[i] + sight[i];
            last = i;
        }
    }
    if (last == none) return std::nullopt;
    Way way{{to}, best};
    for (; last != none; last = reach.via[last])
        way.places.push_back(corners[last]);
    way.places.push_back(from);
    std::reverse(way.places.begin(), way.places.end());
    return way;
}

std::vector<std::vector<double>> Ground::metres(const std::vector<Place>& places) const {
    const std::size_t count = places.size();
    std::vector<std::vector<double>> sights;
    sights.reserve(count);
    for (const Place place : places)
        sights.push_back(sightOf(place));
    std::vector<std::vector<double>> metres(count, std::vector<double>(count, infinite));
    for (std::size_t a = 0; a < count; ++a) {
        const Reach reach = reachFrom(sights[a]);
        for (std::size_t b = 0; b < a; ++b) {
            double best = infinite;
            for (std::size_t i = 0; i < corners.size(); ++i)
                best = std::min(best, reach.metres[i] + sights[b][i]);
            if (!buried(places[a]) && !buried(places[b]) && free(places[a], places[b]))
                best = length(places[a] - places[b]);
            metres[a][b] = metres[b][a] = best;
        }
        metres[a][a] = 0;
    }
    return metres;
}

} // namespace ambit::walk
