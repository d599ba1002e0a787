// Ground that is taken: outlines grown and united, and what can be walked past them. Judged without rounding,
// on the grid of micrometres on which the airframe's reader judges its outlines (airframe/grid.hpp).
#pragma once

#include "airframe/grid.hpp"

#include <optional>
#include <vector>

namespace ambit::walk {

using airframe::Spot;

/// Within ±1000 m, where every product below is exact in 64 bits; what lies beyond is moved to that edge.
[[nodiscard]] Spot spotOf(const airframe::Place& place);
/// The same number as the decimal text of the micrometres reads as.
[[nodiscard]] airframe::Place placeOf(Spot spot);
/// Metres, by sqrt, which rounds the same on every machine; hypot need not.
[[nodiscard]] double metresBetween(Spot a, Spot b);

/// A closed line round taken ground, which lies on its left: round outer edges against the clock, round holes
/// with it.
struct Ring {
    std::vector<Spot> spots;
    bool outermost = false; ///< seen from far away: not a hole, nor what stands in one
};

/// Simple polygons, grown by `metres` on every side and united. What was round a corner becomes an arc of
/// straight edges, nowhere more than `toleranceMetres` within the true one and nowhere outside it, give or
/// take the grid: two micrometres.
[[nodiscard]] std::vector<Ring> grownAndUnited(const std::vector<airframe::Outline>& outlines, double metres,
                                               double toleranceMetres);

/// What rings take of the ground. Immutable. A person is no line: where two of them touch there is no way
/// between them.
class Taken {
public:
    explicit Taken(std::vector<Ring> rings);

    /// Where a shortest way can bend.
    struct Corner {
        Spot at;
        std::vector<Spot> arms; ///< the far ends of all edges here; within less than half a turn
        /// Would a way from or to there, made longer, pass the corner by?
        [[nodiscard]] bool isPassedBy(Spot there) const;
    };

    [[nodiscard]] const std::vector<Ring>& rings() const { return all; }
    [[nodiscard]] std::vector<Corner> corners() const;
    /// Outside, or on an edge, but not where two edges touch.
    [[nodiscard]] bool isOpen(Spot spot) const;
    /// May one walk straight from one to the other? Along an edge, yes. Both ends are open, or corners.
    [[nodiscard]] bool isFree(Spot from, Spot to) const;

private:
    struct Box {
        Spot low, high;
    };
    [[nodiscard]] bool isOnEdge(Spot spot) const;

    std::vector<Ring> all;
    std::vector<Box> boxes; ///< of each ring
};

} // namespace ambit::walk
