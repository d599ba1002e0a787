// The plane of the part, by a card that lies flat on it: from marks in a photo to millimetres.
#pragma once

#include "base/result.hpp"
#include "measure/pose.hpp"

#include <optional>
#include <vector>

namespace ambit::measure {

/// The card's corners, clockwise as they are seen: where its sides, carried on, meet.
using Corners = std::array<Mark, 4>;

// What a plane refuses. None of these has a published source. At a tilt of 60 degrees a pixel along the line
// of sight is worth two across it, and a card's thickness (0.76 mm) moves its edge by 1.3 mm.
inline constexpr double mostTilt = 60;  ///< degrees
inline constexpr double leastSide = 60; ///< pixels, of the card's shortest side: a pixel is then 1 mm or less
inline constexpr double mostDistance =
    2.5 * card::length; ///< mm from the card's middle to a mark: 214. What the
                        ///< corners leave open grows with the square of the distance; tests/measure holds the
                        ///< intervals up to here
inline constexpr double mostMisfit = 15;   ///< chi² of one: by chance, one card in 9,000
inline constexpr double clearlyBetter = 9; ///< chi² by which one way of lying must be better than the other
inline constexpr double mostEdgeWidth = 0.02; ///< of the card's shortest side (some 1 mm), or 4 pixels

class Plane {
public:
    /// Which way the card lies is told from the perspective: both are tried as a rectangle of the card's
    /// ratio before a camera of any likely focal length; refused where both would do, unless `lies` says it.
    /// `edgeWidth`: pixels in which a side of the card goes from dark to light (`Found::edgeWidth`), 0 if not
    /// known. Errors (refused): corners not going round, too close, no card's, seen too flat, blurred.
    [[nodiscard]] static Result<Plane> of(const Corners& corners, const Frame& frame, double edgeWidth = 0,
                                          std::optional<Lies> lies = {});

    [[nodiscard]] Lies lies() const { return its; }
    [[nodiscard]] double tilt() const { return pose.tilt; } ///< degrees; 0 looks straight down
    [[nodiscard]] const Homography& map() const { return homography; }

    // Refused: a mark further than `mostDistance` from the card's middle, two marks in one place.

    [[nodiscard]] Result<Estimate> distance(const Mark& a, const Mark& b) const; ///< mm
    /// Of a point to the line through `a` and `b`, carried on: mm, at right angles to it.
    [[nodiscard]] Result<Estimate> margin(const Mark& point, const Mark& a, const Mark& b) const;
    /// Of a closed outline that doesn't cross itself, three marks or more: mm².
    [[nodiscard]] Result<Estimate> area(const std::vector<Mark>& outline) const;
    /// The greatest distance between two of the outline's marks: mm.
    [[nodiscard]] Result<Estimate> largestWidth(const std::vector<Mark>& outline) const;
    /// Measures what is known otherwise (`known`: mm, and its standard uncertainty), and refuses if the two
    /// disagree by more than happens once in a hundred: the card then isn't flat with the part.
    [[nodiscard]] Result<Estimate> agreesWith(const Input& known, const Mark& a, const Mark& b) const;

    /// Any quantity of marks in the plane: `of` gets their spots, in order, mm.
    [[nodiscard]] Result<Estimate> estimate(const std::vector<Mark>& marks,
                                            const std::function<double(const std::vector<Spot>&)>& of) const;

private:
    Plane() = default;

    Corners corners;
    Lies its{};
    Pose pose;
    Homography homography;
};

} // namespace ambit::measure
