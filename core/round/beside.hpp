// Two rounds of the same walk, by two people, laid side by side: who saw what, and how far they agree. Values
// from events alone; nothing is judged and nobody is right.
#pragma once

#include "round/agreement.hpp"
#include "round/event.hpp"

#include <array>
#include <map>

namespace ambit::round {

/// One of the two, as it counts at the end of its log.
struct Walked {
    std::string id; ///< the round's
    Opened opened;
    Instant at;         ///< opened
    bool alone = false; ///< what others found that day wasn't shown
    std::optional<Concluded> conclusion;
    std::vector<std::string> order;         ///< points as first settled
    std::map<std::string, Settled> settled; ///< what counts; a point to be settled again isn't there
};

/// Error invalid: no round's log. The rules are not asked: a record has been checked, a log is taken as it
/// is.
[[nodiscard]] Result<Walked> walkedOf(const std::vector<Event>& events);

struct PointBeside {
    std::string point;
    std::optional<Settled> first; ///< not there: not settled
    std::optional<Settled> second;

    [[nodiscard]] bool byBoth() const { return first && second; }
    /// Another outcome, or a finding of another class.
    [[nodiscard]] bool differs() const;
};

inline constexpr std::array outcomes{Outcome::sound, Outcome::finding, Outcome::notInspected};

struct Beside {
    Walked first;
    Walked second;
    std::vector<PointBeside> points; ///< as the first settled them, then those that only the second did
    Contingency table;           ///< by `outcomes`: rows the first's, columns the second's; settled by both
    Result<Agreement> agreement; ///< or why there is none, in words

    [[nodiscard]] int countDiffering() const;
    [[nodiscard]] int countOnlyByOne() const;
};

/// Refused, with what differs, unless both are of the same aircraft, description of the airframe and walk,
/// and not one and the same round.
[[nodiscard]] Result<Beside> beside(Walked first, Walked second);

} // namespace ambit::round
