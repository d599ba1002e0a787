// The generalised sequential ordering problem: in which order to do tasks, and where each, so that getting
// about costs least. Knows nothing of what the tasks are.
#pragma once

#include "base/result.hpp"

#include <cstdint>
#include <limits>
#include <vector>

namespace ambit::sop {

using Cost = std::int64_t;
using Number = std::uint32_t; ///< of a task, place or gate, from 0
using Numbers = std::vector<Number>;

/// No move. Far from overflow when a few are added.
constexpr Cost never = std::numeric_limits<Cost>::max() / 8;
/// The most that all moves of a walk may cost together: each move no more than its share of this.
/// Low enough that prices many times as high don't come near `never`.
constexpr Cost mostCost = std::numeric_limits<Cost>::max() / (Cost{1} << 20);
/// Bounds are in these parts of a cost's unit, so that prices may be finer than costs.
constexpr Cost parts = 128;
constexpr std::size_t mostTasks = 1024;
constexpr std::size_t mostGates = 10;

struct Task {
    Numbers places; ///< it is done at any one of them
    Numbers before; ///< tasks done earlier
};

/// Costs of moves from each place to each, 0 or more, or `never`.
using Moves = std::vector<std::vector<Cost>>;

/// A walk begins at `start` and ends where its last task was done. Who arrives at a place does everything
/// that may be done there, and goes only where that is something. Tasks are listed in the customary order:
/// among walks of equal cost the one with the fewest pairs of tasks done in the other order is the best.
struct Problem {
    std::vector<Task> tasks; ///< at most mostTasks
    Number start = 0;
    std::vector<Numbers> gates; ///< at most mostGates. A gate is open once these tasks are done
    std::vector<Moves> moves;   ///< by which gates are open, gate g counting 2^g: 2^gates of them. An open
                                ///< gate makes no move dearer
    std::vector<Cost> home;     ///< by place: what ending there costs, or `never`

    [[nodiscard]] std::size_t places() const { return home.size(); }
};

/// invalid: a number out of range, sizes that don't fit, a negative or too large cost, a task without a
/// place, a cycle in what comes before what.
[[nodiscard]] Result<void> validate(const Problem& problem);

/// Per task all that comes before it, directly or not, as rows of bits (task t is bit t % 64 of word t / 64).
using Rows = std::vector<std::vector<std::uint64_t>>;
[[nodiscard]] Rows allBefore(const Problem& problem);
/// Per task those that may be done right after it: not before it, and nothing has to come between.
[[nodiscard]] Rows mayFollow(const Rows& allBefore);
[[nodiscard]] inline bool has(const Rows::value_type& row, Number task) {
    return (row[task / 64] >> (task % 64) & 1) != 0;
}

/// Without the tasks that are done anyhow when another is: same places or more, nothing to wait for that the
/// other doesn't wait for, and nobody waits for them who doesn't wait for the other. The best walk is the
/// same. All are kept where a move over a third place can be cheaper than the straight one: there a task may
/// be worth a detour.
struct Reduced {
    Problem problem;
    Numbers original; ///< by task of `problem`
};
[[nodiscard]] Reduced reduced(const Problem& problem);

/// The places of a walk in order, the start not among them.
using Walk = Numbers;

struct Walked {
    Cost cost = 0;
    std::int64_t inversions = 0; ///< pairs of tasks not done in the customary order
    Numbers order;               ///< of the tasks done
    bool whole = false;          ///< all tasks are done
};
/// Takes a walk step by step; refused with the step's number where there is no such
/// move or nothing to do.
[[nodiscard]] Result<Walked> walked(const Problem& problem, const Walk& walk);

} // namespace ambit::sop
