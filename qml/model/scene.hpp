// What the parts of a round's view are made from after each event: borrowed, never kept.
#pragma once

#include "round/state.hpp"

namespace ambit::view {

/// How a point, a zone or a row looks: state by shape first.
enum class Look { none, todo, next, sound, finding, notInspected };

/// The word QML knows it by: "none" "todo" "next" "sound" "finding" "notInspected".
[[nodiscard]] const char* toText(Look look);
[[nodiscard]] Look lookOf(const round::PointState& point);

struct Scene {
    const round::State& state;
    const airframe::Airframe& airframe;
    const std::vector<walk::Step>& left; ///< round::remaining
    const airframe::Point* point;        ///< the one on the card; nullptr: none
};

/// Points of the walk in hand that are served at its stand in its settings, and those settled there so; in
/// the plan's order.
[[nodiscard]] std::vector<const airframe::Point*> pointsHere(const round::State& state,
                                                             const airframe::Airframe& airframe);

} // namespace ambit::view
