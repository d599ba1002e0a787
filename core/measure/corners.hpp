// A card's corners are round, and how round is known.
#pragma once

#include "measure/find.hpp"
#include "measure/homography.hpp"

namespace ambit::measure {

struct Roundness {
    double radius = 0; ///< mm, that the corners seen agree with best, 0 to `mostRadius`
    double median = 0; ///< mm, of what each of these agrees with best
    double fits =
        0; ///< what of its step a corner shows along a card's radius, over that along its own best: mean
    double worst = 1; ///< the same of the worst
    double seen = 0;  ///< the step along the corners' best radius over that along the sides, mean: 1 as clear
    std::array<double, 4> arcs{}; ///< of each corner, the step along a card's arc less that along its sharp
                                  ///< tip, over that along the sides, -1 to 1; the least first
};

inline constexpr double mostRadius = 8; // mm

/// How rounded the outline of a supposed card is. `steps` are its sides' grey levels, outside less inside,
/// `edge` the pixels within which they rise.
[[nodiscard]] Roundness roundnessOf(const Picture& picture, const Quad& quad,
                                    const std::array<double, 4>& steps, double edge);

/// What is beside the outline near its corners.
struct Beside {
    /// Of each corner, how much the face beside one of its sides differs from that beside the other, over the
    /// sides' own steps there, 0 to 2; the least first. A card is of one grey round a corner, whatever the
    /// light; where a side lies on the shadow's rim, or on something beside the card, it is not.
    std::array<double, 4> unlike{};
    /// Of each side, the step where it is carried on past a corner, the greater of both, over its own, 0 to
    /// 1.5; the least first. A card's sides end at its corners.
    std::array<double, 4> carriedOn{};
};

/// As `roundnessOf`.
[[nodiscard]] Beside besideOf(const Picture& picture, const Quad& quad, const std::array<double, 4>& steps,
                              double edge);

} // namespace ambit::measure
