// Chooses tasks for a part to see exactly, one by one, those that the cheapest walk of the chosen would still
// leave and that lie furthest off it; until none is left, and that walk is the best of all (decremental
// state-space relaxation: Righini and Salani, Networks 51, 2008).
#pragma once

#include "sop/part.hpp"

#include <optional>

namespace ambit::sop {

class Choice {
public:
    explicit Choice(const Problem& problem);

    /// More tasks, until the bound reaches `enough` or the work is over. Can be called again.
    void grow(Cost enough, Work& work);

    /// None where there was not work enough for even the first.
    [[nodiscard]] const Part* part() const { return best ? &*best : nullptr; }
    /// No walk costs less.
    [[nodiscard]] Cost bound() const { return best ? best->rest(0, problem.start) : 0; }
    /// The best walk of all; empty: not found yet.
    [[nodiscard]] const Walk& walk() const { return whole; }

private:
    [[nodiscard]] Numbers leftBy(const Walk& walk) const;
    [[nodiscard]] std::optional<Number> furthest(const Walk& walk, const Numbers& left) const;

    const Problem& problem;
    Problem anywhere; ///< the same, but it may end anywhere
    Rows before;
    std::vector<Moves> moves; ///< closed
    std::vector<Cost> home;   ///< over other places too
    std::optional<Part> best;
    Numbers chosen; ///< for the next
    Walk whole;
};

} // namespace ambit::sop
