// A lower bound on what is still to do, for any number of tasks done: the cheapest way on that does as many
// tasks as are left, some perhaps twice and others not at all, at prices for each that make it do each once
// (Lagrangian state-space relaxation: Christofides, Mingozzi and Toth, "State-space relaxation procedures",
// Networks 11, 1981).
#pragma once

#include "sop/problem.hpp"
#include "sop/work.hpp"

namespace ambit::sop {

/// A task at one of its places.
struct Node {
    Number task = 0;
    Number place = 0;
};

/// Where a walk is.
struct Position {
    Number place = 0;
    std::vector<bool> settled; ///< by task
    std::size_t count = 0;     ///< of those settled
};

/// Its prices are made for the walks on from one position, and its bounds hold from every other.
class Relaxation {
public:
    Relaxation(const Problem& problem, Position from);

    /// Sets the prices anew so that the bound rises, at most so many rounds, until it reaches `enough` (the
    /// cost of a walk on from the position) or the work is over.
    void raise(Cost enough, int rounds, Work& work);

    /// No walk on from the position costs less. In units, rounded up; 0 or more.
    [[nodiscard]] Cost bound() const { return best <= 0 ? 0 : (best + parts - 1) / parts; }
    /// Tasks that can't all be done: there is no walk.
    [[nodiscard]] bool impossible() const { return best >= never; }

    // Of the best prices so far:
    [[nodiscard]] Cost price(Number task) const { return prices[task]; }
    /// After `done` tasks with this node the last: what the rest costs at least, less the prices of what is
    /// left. Parts; at least `never` if there is no way on.
    [[nodiscard]] Cost rest(std::size_t done, std::size_t node) const {
        return rests[done * nodes.size() + node];
    }
    [[nodiscard]] std::size_t nodeOf(Number task, Number place) const { return numbers[task][place]; }
    /// Steps of one round.
    [[nodiscard]] std::uint64_t roundWork() const { return steps; }

private:
    struct Arc {
        std::size_t to;
        Cost cost; ///< parts
    };
    struct Rest { ///< the two cheapest ways on that begin with different tasks
        Cost first;
        Cost second;
        Number task;
    };
    void findArcs();
    Cost evaluate(const std::vector<Cost>& at, std::vector<int>& times);

    const Problem& problem;
    Position from;
    Rows before;
    std::vector<Node> nodes;
    std::vector<std::vector<std::size_t>> numbers; ///< task, place → node
    std::vector<std::size_t> earliest, latest;     ///< by task: which one it can be, from 1
    std::vector<std::vector<Arc>> arcs;
    std::vector<Arc> firsts; ///< from the start
    std::vector<Cost> prices;
    std::vector<Cost> rests;
    std::vector<Rest> table;
    Cost best = 0;
    bool valued = false; ///< `best` and `rests` are there
    std::uint64_t steps = 0;
};

} // namespace ambit::sop
