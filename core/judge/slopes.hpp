// Order statistics of the slopes between all pairs of points, without listing the pairs.
#pragma once

#include <cstdint>
#include <vector>

namespace ambit::judge {

/// A point on a grid; below 10^15 either way of zero.
struct GridPoint {
    std::int64_t x = 0;
    std::int64_t y = 0;
};

/// rise/run in the grid's units; run is above zero.
struct Slope {
    std::int64_t rise = 0;
    std::int64_t run = 1;
};

[[nodiscard]] bool operator<(const Slope& a, const Slope& b);

/// Of the slopes between points at different x.
class Slopes {
public:
    explicit Slopes(std::vector<GridPoint> points);

    [[nodiscard]] std::uint64_t count() const { return all; }

    /// The slope of that rank from 0 below count(). Equal to what sorting would give; O(n log n) expected.
    [[nodiscard]] Slope ranked(std::uint64_t rank) const;

    /// The one after: ranked(rank + 1), given what ranked(rank) is. rank + 1 < count().
    [[nodiscard]] Slope next(std::uint64_t rank, const Slope& slope) const;

private:
    std::vector<GridPoint> points; ///< by x, then y
    std::uint64_t all = 0;
};

} // namespace ambit::judge
