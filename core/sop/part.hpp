// A lower bound that sees few tasks, and those exactly: what doing only some of them costs, by dynamic
// programming over which of them are done and where one is.
#pragma once

#include "sop/problem.hpp"
#include "sop/work.hpp"

namespace ambit::sop {

/// The same moves, each as cheap as over others: then leaving tasks out never makes a walk dearer.
[[nodiscard]] std::vector<Moves> closed(const std::vector<Moves>& moves);

class Part {
public:
    static constexpr std::size_t mostTasks = 20;

    /// `chosen`: at most mostTasks. `moves`: the problem's, closed. Check isWhole(): it gives up when the
    /// work is over.
    Part(const Problem& problem, const std::vector<Moves>& moves, Numbers chosen, Work& work);

    [[nodiscard]] bool isWhole() const { return whole; }
    [[nodiscard]] const Numbers& tasks() const { return chosen; }
    /// The bit of a task in the sets below; 0: it isn't among them.
    [[nodiscard]] std::uint32_t bit(Number task) const { return bits[task]; }
    /// What the rest costs at least with these done and being at this place; units, at least `never` if it
    /// can't be.
    [[nodiscard]] Cost rest(std::uint32_t done, Number place) const {
        const std::uint32_t row = rows[done];
        return row == 0 ? 0 : table[(row - 1) * places + place]; // a set that can't be: no bound
    }
    /// The cheapest walk that does these tasks.
    [[nodiscard]] Walk best() const;

private:
    struct Next {
        Number place;
        std::uint32_t done;
    };
    [[nodiscard]] std::vector<Next> nexts(std::uint32_t done) const;
    [[nodiscard]] std::size_t open(std::uint32_t done) const;
    void evaluate(std::uint32_t done);

    const Problem& problem;
    const std::vector<Moves>& moves;
    Numbers chosen;
    std::size_t places;
    std::vector<std::uint32_t> bits;              ///< by task
    std::vector<std::uint32_t> before;            ///< by chosen: those among them
    std::vector<std::vector<std::uint32_t>> here; ///< by place: numbers of chosen that are done there
    std::vector<std::uint32_t> gates;
    std::vector<std::uint32_t> rows; ///< by set: its row + 1, or 0
    std::vector<Cost> table;         ///< row by row, by place
    bool whole = false;
};

} // namespace ambit::sop
