// A lower bound that sees at which of its places each task is done: whatever a walk must enter, at the least
// that entering it costs.
#pragma once

#include "sop/sequence.hpp"
#include "sop/work.hpp"

namespace ambit::sop {

/// Every walk enters each set of tasks-at-places that holds all of some task's. Sets are charged what
/// entering them costs at least, the smallest first, until each task can be come to for nothing more (dual
/// ascent for the Steiner problem: Wong, Mathematical Programming 28, 1984); at prices for coming to and
/// going from each task-at-place that make the ways paid for neither branch nor end there (Held and Karp,
/// Operations Research 18, 1970).
class Ascent {
public:
    explicit Ascent(const Problem& problem);

    /// Sets the prices anew so that the bound rises, until it reaches `enough` (the cost of a walk), the
    /// rounds are done or the work is over.
    void raise(Cost enough, int rounds, Work& work);

    /// No walk costs less. In units, rounded up; 0 or more; at least `never` if there is none.
    [[nodiscard]] Cost bound() const {
        return best <= 0 ? 0 : best >= never ? never : (best + parts - 1) / parts;
    }

    /// Steps of one round; 0: none was done yet.
    [[nodiscard]] std::uint64_t roundWork() const { return steps; }

private:
    using Index = std::size_t;
    using Set = std::vector<std::uint64_t>;

    [[nodiscard]] Cost& at(Index from, Index to) { return left[from * size + to]; }
    void reprice();
    Cost charge(Work& work);
    Cost chargeSet(const Set& set, Work& work);
    [[nodiscard]] Set leadingTo(std::size_t task, Work& work) const;
    [[nodiscard]] std::vector<Index> ways(Work& work) const;

    static constexpr Index nobody = std::numeric_limits<Index>::max();

    std::vector<std::vector<Index>> nodesOf; ///< by task; home's last
    std::vector<std::size_t> taskOf;         ///< by node
    Index start = 0;                         ///< after all tasks at their places
    Index size = 0;                          ///< home is the last
    std::size_t words = 0;
    std::vector<Cost> costs;                   ///< of steps, from each to each; parts
    std::vector<Cost> left;                    ///< of them, at prices and after what is charged
    std::vector<std::uint64_t> free;           ///< by node: those it can be come to from at no cost
    std::vector<std::pair<Index, Index>> paid; ///< the steps that became free, in that order
    std::vector<double> prices;                ///< by node
    std::vector<Cost> rounded;
    std::vector<Cost> bestPrices;
    Cost best = 0;
    std::uint64_t steps = 0;
};

} // namespace ambit::sop
