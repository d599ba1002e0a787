// Outlines: are they simple polygons, and what lies inside them. Judged exactly, on a grid of micrometres.
#pragma once

#include "airframe/airframe.hpp"

#include <optional>
#include <string>

namespace ambit::airframe {

/// What is wrong with `outline` as a simple polygon, as a sentence; nullopt: nothing. Corners within ±100 m.
[[nodiscard]] std::optional<Sentence> faultOf(const Outline& outline);

/// True if `place` lies within the simple polygon; its edge is outside.
[[nodiscard]] bool isInside(const Place& place, const Outline& outline);

} // namespace ambit::airframe
