// What a new order of the rest changes against the one the pilot knew, in words: the screen shows them, the
// log keeps them. Inside core/round only.
#pragma once

#include "round/state.hpp"

namespace ambit::round {

/// Why the rest is ordered anew because of `what`, as the beginning of a sentence without its end: "“Left
/// tread” can't be used". `before`: the state that `what` met; `resumed`: the round was resumed just before.
/// Kinds that change no order give "".
[[nodiscard]] Sentence because(const State& before, const airframe::Airframe& airframe, const What& what,
                               bool resumed);

/// `cause` and what moved from `known` to `anew`, by visits to stands: "“Left tread” can't be used: “Mast,
/// left” now comes after “Tail rotor”." What can't be settled any more comes first; two things are told, the
/// others counted. What `cause` names is not told again. `state`: as the new order found it.
[[nodiscard]] Sentence whatMoved(const Sentence& cause, const std::vector<walk::Step>& known,
                                 const std::vector<walk::Step>& anew, const State& state,
                                 const airframe::Airframe& airframe);

} // namespace ambit::round
