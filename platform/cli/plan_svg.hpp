// A plan as a drawing to print: the machine from above, nose up, and the way round it.
#pragma once

#include "walk/plan.hpp"

#include <string>

namespace ambit::cli {

/// An SVG 1.1 document that needs nothing beside it: black on white, 190 mm wide, user units metres at the
/// scale it names. What is there in today's settings, areas kept out of (hatched) and marked (dotted), stands
/// with the numbers of their visits (round: on the ground; heavy foot: kneeling; square: raised), lettered
/// diamonds where a setting is changed, the way with arrows, and in words beneath what it costs and what the
/// numbers mean. The same bytes everywhere for the same plan. `walkId` is a walk of the airframe, `plan` one
/// of its plans from `now`.
[[nodiscard]] std::string planSvg(const airframe::Airframe& airframe, const std::string& walkId,
                                  const walk::Situation& now, const walk::Plan& plan);

} // namespace ambit::cli
