// When a round's plan no longer fits: a new order of what is left. Pure; whoever holds the log commits what
// comes out.
#pragma once

#include "round/state.hpp"

namespace ambit::round {

/// The order in which the walk starts. Same errors as walk::makePlan.
[[nodiscard]] Result<std::vector<walk::Step>> firstPlan(const airframe::Airframe& airframe,
                                                        const std::string& walkId);

/// What is left with this zone first, the rest as it is known as far as may be. notFound: no such zone;
/// refused: nothing is left to settle there.
[[nodiscard]] Result<Planned> towardsZone(const State& state, const airframe::Airframe& airframe,
                                          const std::string& zone);

/// What is left ordered anew, departing as little from the known order as is possible within 5 % of the best
/// (walk::keepingTo): a pilot's habit is worth that. Its `why` is `cause` and what moved, in words. nullopt
/// where the known order stays. `cause`: the beginning of a sentence, without its full stop.
[[nodiscard]] Result<std::optional<Planned>> reordered(const State& state, const airframe::Airframe& airframe,
                                                       const Sentence& cause);

/// Why the rest may have to be ordered anew after `what`, for `reordered`: a stand reached out of turn (or
/// after a pause, elsewhere), blocked or freed, an area marked or cleared, the light, a point re-opened,
/// asked for again (in a pause: with Resumed) or that declined, or said as not inspected where the plan
/// leaves something out. "" where the order stays as it is. `before`: the state that `what` met; `resumed`:
/// the round was resumed just before it.
[[nodiscard]] Sentence causeOf(const State& before, const airframe::Airframe& airframe, const What& what,
                               bool resumed);

/// The `why` of a Planned as it was said, where all that is left of it is the English that a log keeps: for a
/// screen that speaks another language. What isn't one of those sentences is given back as it is, and so is
/// one of more than mostRead bytes, since reading takes long where a stranger has written it to.
[[nodiscard]] Sentence whySaid(const Sentence& why);
inline constexpr std::size_t mostRead = 1000;

/// Can the rest of the plan be walked as it stands, and does it settle everything that is left? Cheap; a new
/// order may still leave something out, where it can't be reached.
[[nodiscard]] bool holdsStill(const State& state, const airframe::Airframe& airframe);

} // namespace ambit::round
