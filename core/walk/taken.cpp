#include "walk/taken.hpp"

#include <tuple>

namespace ambit::walk {

namespace {

using airframe::sign;
using airframe::turn;

Spot operator-(Spot a, Spot b) {
    return {a.x - b.x, a.y - b.y};
}
std::int64_t cross(Spot a, Spot b) {
    return a.x * b.y - a.y * b.x;
}
std::int64_t dot(Spot a, Spot b) {
    return a.x * b.x + a.y * b.y;
}

/// A corner with the corners before and behind it.
struct Bend {
    Spot before, at, behind;
    /// Does one who leaves it that way walk into taken ground?
    [[nodiscard]] bool isTaken(Spot direction) const {
        const Spot back = before - at;
        const Spot out = behind - at;
        const std::int64_t leftTurn = turn(before, at, behind);
        if (leftTurn > 0) return cross(out, direction) > 0 && cross(direction, back) > 0;
        if (leftTurn < 0) return cross(back, direction) < 0 || cross(direction, out) < 0;
        return cross(out, direction) > 0;
    }
};

/// A straight way, and what it brushes on either side. One measures along it by `share`, in its own length's
/// square.
class Line {
public:
    Line(Spot start, Spot end) : from(start), to(end), along(end - start), whole(dot(along, along)) {}

    [[nodiscard]] int sideOf(Spot spot) const { return sign(turn(from, to, spot)); }

    /// Does it run through an edge whose ends lie on either side of its line, into what is left of the edge?
    [[nodiscard]] bool runsThrough(Spot a, Spot b) const {
        const int start = sign(turn(a, b, from));
        const int end = sign(turn(a, b, to));
        return start * end < 0 || (start == 0 && end > 0) || (end == 0 && start > 0);
    }

    /// A bend on its line: false if it runs into taken ground there.
    [[nodiscard]] bool passes(const Bend& bend) {
        const std::int64_t share = shareOf(bend.at);
        if (share < 0 || share > whole) return true;
        if (share < whole && bend.isTaken(along)) return false;
        if (share > 0 && bend.isTaken(from - to)) return false;
        int side = sideOf(bend.behind);
        if (side == 0) side = sideOf(bend.before);
        if (side == 0) side = sign(dot(bend.behind - bend.at, along));
        brush(share, share, side);
        return true;
    }

    /// An edge on its line.
    void runAlong(Spot a, Spot b) {
        const std::int64_t start = shareOf(a);
        const std::int64_t end = shareOf(b);
        brush(std::min(start, end), std::max(start, end), start < end ? 1 : -1);
    }

    /// Nowhere something on both sides?
    [[nodiscard]] bool hasRoom() const {
        for (std::size_t i = 0; i < brushed.size(); ++i) {
            for (std::size_t k = 0; k < i; ++k) {
                if (brushed[i].side != brushed[k].side && brushed[i].start <= brushed[k].end &&
                    brushed[k].start <= brushed[i].end)
                    return false;
            }
        }
        return true;
    }

private:
    struct Brush {
        std::int64_t start, end;
        int side;
    };

    [[nodiscard]] std::int64_t shareOf(Spot spot) const { return dot(spot - from, along); }

    /// At the very ends one stands; there it is for others to say whether there is room.
    void brush(std::int64_t start, std::int64_t end, int side) {
        if (end > 0 && start < whole)
            brushed.push_back({std::max<std::int64_t>(start, 1), std::min(end, whole - 1), side});
    }

    Spot from, to, along;
    std::int64_t whole;
    std::vector<Brush> brushed;
};

/// Do all of them lie within less than half a turn?
bool areWithinHalfATurn(Spot at, const std::vector<Spot>& arms) {
    return std::any_of(arms.begin(), arms.end(), [&](Spot first) {
        return std::all_of(arms.begin(), arms.end(), [&](Spot arm) {
            const std::int64_t side = turn(at, first, arm);
            return side > 0 || (side == 0 && dot(first - at, arm - at) > 0);
        });
    });
}

} // namespace

Spot spotOf(const airframe::Place& place) {
    constexpr double most = 1000;
    return airframe::spotAt({std::clamp(place.x, -most, most), std::clamp(place.y, -most, most)});
}

airframe::Place placeOf(Spot spot) {
    return {static_cast<double>(spot.x) / 1e6, static_cast<double>(spot.y) / 1e6};
}

double metresBetween(Spot a, Spot b) {
    const auto x = static_cast<double>(a.x - b.x);
    const auto y = static_cast<double>(a.y - b.y);
    return std::sqrt(x * x + y * y) / 1e6;
}

bool Taken::Corner::isPassedBy(Spot there) const {
    int low = 0;
    int high = 0;
    for (const Spot arm : arms) {
        const int side = sign(turn(at, there, arm));
        low = std::min(low, side);
        high = std::max(high, side);
    }
    return low == 0 || high == 0;
}

Taken::Taken(std::vector<Ring> rings) : all(std::move(rings)) {
    for (const Ring& ring : all) {
        Box box{ring.spots.front(), ring.spots.front()};
        for (const Spot spot : ring.spots) {
            box.low = {std::min(box.low.x, spot.x), std::min(box.low.y, spot.y)};
            box.high = {std::max(box.high.x, spot.x), std::max(box.high.y, spot.y)};
        }
        boxes.push_back(box);
    }
}

/// On an edge, not at one of its ends?
bool Taken::isOnEdge(Spot spot) const {
    for (std::size_t r = 0; r < all.size(); ++r) {
        const auto& [low, high] = boxes[r];
        if (spot.x < low.x || spot.x > high.x || spot.y < low.y || spot.y > high.y) continue;
        Spot a = all[r].spots.back();
        for (const Spot b : all[r].spots) {
            if (spot != a && spot != b && airframe::isBetween(spot, a, b)) return true;
            a = b;
        }
    }
    return false;
}

std::vector<Taken::Corner> Taken::corners() const {
    std::vector<Bend> bends;
    for (const auto& [spots, outermost] : all) {
        for (std::size_t i = 0; i < spots.size(); ++i)
            bends.push_back({spots[i], spots[(i + 1) % spots.size()], spots[(i + 2) % spots.size()]});
    }
    std::stable_sort(bends.begin(), bends.end(), [](const Bend& a, const Bend& b) {
        return std::tie(a.at.x, a.at.y) < std::tie(b.at.x, b.at.y);
    });
    std::vector<Corner> corners;
    for (std::size_t i = 0; i < bends.size();) {
        Corner corner{bends[i].at, {}};
        bool outward = true;
        for (; i < bends.size() && bends[i].at == corner.at; ++i) { // several where rings touch
            corner.arms.push_back(bends[i].before);
            corner.arms.push_back(bends[i].behind);
            outward = outward && turn(bends[i].before, bends[i].at, bends[i].behind) > 0;
        }
        if (outward && areWithinHalfATurn(corner.at, corner.arms) && !isOnEdge(corner.at))
            corners.push_back(std::move(corner));
    }
    return corners;
}

bool Taken::isOpen(Spot spot) const {
    bool inside = false;
    int edgesMet = 0;
    for (std::size_t r = 0; r < all.size(); ++r) {
        const auto& [low, high] = boxes[r];
        if (spot.x < low.x || spot.x > high.x || spot.y < low.y || spot.y > high.y) continue;
        Spot a = all[r].spots.back();
        for (const Spot b : all[r].spots) {
            if (spot == b || (spot != a && airframe::isBetween(spot, a, b))) ++edgesMet;
            // A ray to the right crosses the edge if the spot is left of it; half-open, so that a corner
            // counts once.
            const bool up = a.y <= b.y;
            const Spot bottom = up ? a : b;
            const Spot top = up ? b : a;
            if (bottom.y <= spot.y && spot.y < top.y && turn(bottom, top, spot) > 0) inside = !inside;
            a = b;
        }
    }
    return edgesMet > 0 ? edgesMet == 1 : !inside;
}

bool Taken::isFree(Spot from, Spot to) const {
    if (from == to) return true;
    Line line(from, to);
    const Spot least{std::min(from.x, to.x), std::min(from.y, to.y)};
    const Spot most{std::max(from.x, to.x), std::max(from.y, to.y)};
    for (std::size_t r = 0; r < all.size(); ++r) {
        const auto& [low, high] = boxes[r];
        if (most.x < low.x || least.x > high.x || most.y < low.y || least.y > high.y) continue;
        const auto& spots = all[r].spots;
        Spot a = spots.back();
        int sideOfA = line.sideOf(a);
        for (std::size_t i = 0; i < spots.size(); ++i) {
            const Spot b = spots[i];
            const int sideOfB = line.sideOf(b);
            if (sideOfA * sideOfB < 0 && line.runsThrough(a, b)) return false;
            if (sideOfB == 0 && !line.passes({a, b, spots[(i + 1) % spots.size()]})) return false;
            if (sideOfA == 0 && sideOfB == 0) line.runAlong(a, b);
            a = b;
            sideOfA = sideOfB;
        }
    }
    return line.hasRoom();
}

} // namespace ambit::walk
