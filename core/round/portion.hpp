// What is looked at in one go at a stand that leaves no hand: told before the climb, asked for after it.
#pragma once

#include "round/state.hpp"

namespace ambit::round {

/// The next points of the plan that can be looked at where one is, without setting anything or going
/// elsewhere meanwhile: `most` of them at most, 1 to mostInPortion; in the plan's order. Empty: the plan
/// leads elsewhere first. Points that are measured come alone: a value is more than one keeps in mind beside
/// others.
[[nodiscard]] std::vector<std::string> nextPortion(const State& state, const airframe::Airframe& airframe,
                                                   int most);

/// Of the portion that has ended, those that are still to be asked for; in its order.
[[nodiscard]] std::vector<std::string> leftOfPortion(const State& state);

} // namespace ambit::round
