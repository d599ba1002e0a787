// A place is walled in if some closed way along the outlines winds round it. Such a way crosses a ray from
// the place an odd number of times. So corners that hang together are joined, each noting whether the way to
// it crosses the ray an odd number of times; a corner that gets there both oddly and evenly closes a ring.
#include "airframe/pocket.hpp"

#include <numeric>

namespace ambit::airframe {

namespace {

/// Sets of corners that hang together, with the parity of the way to each.
class Joined {
public:
    explicit Joined(std::size_t count) : parents(count), odd(count, false) {
        std::iota(parents.begin(), parents.end(), std::size_t{0});
    }

    /// False if the two hang together already by a way of the other parity.
    bool join(std::size_t a, std::size_t b, bool isOdd) {
        const auto [rootA, oddA] = find(a);
        const auto [rootB, oddB] = find(b);
        if (rootA == rootB) return (oddA != oddB) == isOdd;
        parents[rootB] = rootA;
        odd[rootB] = (oddA != oddB) != isOdd;
        return true;
    }

private:
    std::pair<std::size_t, bool> find(std::size_t at) {
        std::size_t root = at;
        bool isOdd = false;
        while (parents[root] != root) {
            isOdd = isOdd != odd[root];
            root = parents[root];
        }
        for (bool rest = isOdd; parents[at] != at && parents[at] != root;) { // shorten the way for next time
            const std::size_t next = parents[at];
            const bool step = odd[at];
            parents[at] = root;
            odd[at] = rest;
            rest = rest != step;
            at = next;
        }
        return {root, isOdd};
    }

    std::vector<std::size_t> parents;
    std::vector<bool> odd;
};

/// y of a spot that two meeting edges share.
double commonHeight(Spot a, Spot b, Spot c, Spot d) {
    if (isBetween(c, a, b)) return static_cast<double>(c.y);
    if (isBetween(d, a, b)) return static_cast<double>(d.y);
    if (isBetween(a, c, d)) return static_cast<double>(a.y);
    if (isBetween(b, c, d)) return static_cast<double>(b.y);
    const double before = std::fabs(static_cast<double>(turn(c, d, a)));
    const double behind = std::fabs(static_cast<double>(turn(c, d, b)));
    return static_cast<double>(a.y) + static_cast<double>(b.y - a.y) * before / (before + behind);
}

} // namespace

Pockets::Pockets(const std::vector<Outline>& outlines) {
    std::vector<std::size_t> outlineOf;
    for (std::size_t o = 0; o < outlines.size(); ++o) {
        const Outline& outline = outlines[o];
        const std::size_t first = edges.size();
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const std::size_t next = (i + 1) % outline.size();
            edges.push_back({spotAt(outline[i]), spotAt(outline[next]), first + i, first + next});
            outlineOf.push_back(o);
        }
    }
    for (std::size_t i = 0; i < edges.size(); ++i) {
        for (std::size_t k = i + 1; k < edges.size(); ++k) {
            const auto& [a, b, startA, endA] = edges[i];
            const auto& [c, d, startC, endC] = edges[k];
            if (outlineOf[i] == outlineOf[k] || !doMeet(a, b, c, d)) continue;
            meetings.push_back({i, k, commonHeight(a, b, c, d)});
        }
    }
}

/// Does a piece of the edge cross the ray to the right of the place? `upFrom`, `upTo`: the piece's ends lie
/// above the place.
bool Pockets::isCrossed(const Edge& edge, Spot place, bool upFrom, bool upTo) {
    if (upFrom == upTo) return false;
    const bool rises = edge.to.y > edge.from.y;
    return rises ? turn(edge.from, edge.to, place) > 0 : turn(edge.to, edge.from, place) > 0;
}

bool Pockets::isWalledIn(const Place& place) const {
    const Spot spot = spotAt(place);
    const auto isUp = [&](Spot corner) { return corner.y > spot.y; };
    Joined joined(edges.size());
    for (const Edge& edge : edges) {
        if (!joined.join(edge.start, edge.end, isCrossed(edge, spot, isUp(edge.from), isUp(edge.to))))
            return true;
    }
    for (const auto& [one, two, height] : meetings) {
        const Edge& a = edges[one];
        const Edge& b = edges[two];
        const bool up = height > static_cast<double>(spot.y);
        const bool isOdd = isCrossed(a, spot, isUp(a.from), up) != isCrossed(b, spot, up, isUp(b.from));
        if (!joined.join(a.start, b.start, isOdd)) return true;
    }
    return false;
}

} // namespace ambit::airframe
