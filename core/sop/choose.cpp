#include "sop/choose.hpp"

#include <algorithm>

namespace ambit::sop {

Choice::Choice(const Problem& its)
    : problem(its), anywhere(its), before(allBefore(its)), moves(closed(its.moves)), home(its.home) {
    for (std::size_t p = 0; p < home.size(); ++p)
        for (std::size_t q = 0; q < home.size(); ++q)
            if (its.home[q] < never) home[p] = std::min(home[p], moves.back()[p][q] + its.home[q]);
    std::fill(anywhere.home.begin(), anywhere.home.end(), 0);
    for (const Numbers& gate : problem.gates)
        for (const Number t : gate)
            if (chosen.size() < 6 && std::find(chosen.begin(), chosen.end(), t) == chosen.end())
                chosen.push_back(t);
}

void Choice::grow(Cost enough, Work& work) {
    const std::uint64_t most = work.left();
    while (chosen.size() <= Part::mostTasks && whole.empty()) {
        Work one(work, most / 2);
        Part next(problem, moves, chosen, one);
        if (!next.isWhole()) return;
        best.emplace(std::move(next));
        const Walk walk = best->best();
        const Numbers left = leftBy(walk);
        if (left.empty()) whole = walk;
        if (left.empty() || bound() >= enough) return;
        for (int more = chosen.size() < 8 ? 2 : 1; more > 0; --more)
            if (const auto far = furthest(walk, left)) chosen.push_back(*far);
        if (chosen == best->tasks()) return;
    }
}

Numbers Choice::leftBy(const Walk& walk) const {
    std::vector<bool> isDone(problem.tasks.size(), false);
    if (const auto done = walked(anywhere, walk))
        for (const Number t : done->order)
            isDone[t] = true;
    Numbers left;
    for (Number t = 0; t < problem.tasks.size(); ++t)
        if (!isDone[t]) left.push_back(t);
    return left;
}

/// The task whose place is the longest way round from the walk, where what is chosen lets it be done.
std::optional<Number> Choice::furthest(const Walk& walk, const Numbers& left) const {
    const Moves& step = moves.back();
    const auto comesBefore = [&](Number one, Number other) { return has(before[other], one); };
    // Which stop of the walk each chosen task is done at.
    std::vector<std::size_t> stop(problem.tasks.size(), walk.size());
    for (std::size_t i = 0; i < walk.size(); ++i) {
        for (bool more = true; more;) {
            more = false;
            for (const Number t : best->tasks()) {
                const auto& places = problem.tasks[t].places;
                if (stop[t] < walk.size() ||
                    std::find(places.begin(), places.end(), walk[i]) == places.end() ||
                    std::any_of(best->tasks().begin(), best->tasks().end(),
                                [&](Number e) { return comesBefore(e, t) && stop[e] == walk.size(); }))
                    continue;
                stop[t] = i;
                more = true;
            }
        }
    }
    std::optional<Number> far;
    Cost most = -1;
    for (const Number t : left) {
        if (std::find(chosen.begin(), chosen.end(), t) != chosen.end()) continue;
        std::size_t first = 0; // it is done between these stops
        std::size_t last = walk.size();
        for (const Number c : best->tasks()) {
            if (comesBefore(c, t)) first = std::max(first, std::min(stop[c] + 1, walk.size()));
            if (comesBefore(t, c)) last = std::min(last, stop[c]);
        }
        Cost least = never;
        for (const Number place : problem.tasks[t].places) {
            for (std::size_t i = std::min(first, last); i <= last; ++i) {
                const Number from = i == 0 ? problem.start : walk[i - 1];
                const Cost there = step[from][place];
                least = std::min(least, i < walk.size() ? there + step[place][walk[i]] - step[from][walk[i]]
                                                        : there + home[place] - home[from]);
            }
        }
        if (least <= most) continue;
        most = least;
        far = t;
    }
    return far;
}

} // namespace ambit::sop
