// Ground that is free and yet can't be reached: pockets between outlines that touch or overlap each other.
#pragma once

#include "airframe/grid.hpp"

namespace ambit::airframe {

/// Outlines one can't walk through, and where they hang together. Built once, asked often.
class Pockets {
public:
    explicit Pockets(const std::vector<Outline>& outlines); ///< simple polygons

    /// True if outlines that touch close a ring round the place. The place itself is outside every outline.
    [[nodiscard]] bool isWalledIn(const Place& place) const;

private:
    struct Edge {
        Spot from;
        Spot to;
        std::size_t start = 0; ///< corners are numbered through all outlines
        std::size_t end = 0;
    };
    /// Two edges of different outlines have a spot in common.
    struct Meeting {
        std::size_t edge = 0;
        std::size_t other = 0;
        double height = 0; ///< y of the spot
    };

    static bool isCrossed(const Edge& edge, Spot place, bool upFrom, bool upTo);

    std::vector<Edge> edges;
    std::vector<Meeting> meetings;
};

} // namespace ambit::airframe
