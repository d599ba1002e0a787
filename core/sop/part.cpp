#include "sop/part.hpp"

#include <algorithm>

namespace ambit::sop {

namespace {

constexpr std::size_t mostEntries = 8'000'000; ///< of a table

} // namespace

std::vector<Moves> closed(const std::vector<Moves>& moves) {
    std::vector<Moves> all = moves;
    for (Moves& one : all) {
        const std::size_t places = one.size();
        for (std::size_t a = 0; a < places; ++a)
            one[a][a] = 0;
        for (std::size_t over = 0; over < places; ++over) {
            for (std::size_t a = 0; a < places; ++a) {
                const Cost there = one[a][over];
                if (there >= never) continue;
                for (std::size_t b = 0; b < places; ++b)
                    one[a][b] = std::min(one[a][b], there + one[over][b]);
            }
        }
        for (auto& row : one)
            for (Cost& cost : row)
                cost = std::min(cost, never);
    }
    return all;
}

Part::Part(const Problem& its, const std::vector<Moves>& closedMoves, Numbers tasks, Work& work)
    : problem(its), moves(closedMoves), chosen(std::move(tasks)), places(its.places()),
      bits(its.tasks.size(), 0), here(its.places()) {
    const Rows rowsBefore = allBefore(problem);
    for (std::uint32_t c = 0; c < chosen.size(); ++c) {
        bits[chosen[c]] = std::uint32_t{1} << c;
        for (const Number place : problem.tasks[chosen[c]].places)
            here[place].push_back(c);
    }
    for (const Number t : chosen) {
        std::uint32_t set = 0;
        for (const Number earlier : chosen)
            if (has(rowsBefore[t], earlier)) set |= bits[earlier];
        before.push_back(set);
    }
    for (const Numbers& gate : problem.gates) {
        std::uint32_t set = 0; // a gate that needs others too is taken for open the sooner
        for (const Number t : gate)
            set |= bits[t];
        gates.push_back(set);
    }
    // All sets one can come to, the larger the later by number.
    rows.assign(std::size_t{1} << chosen.size(), 0);
    std::vector<std::uint32_t> sets{0};
    rows[0] = 1;
    for (std::size_t i = 0; i < sets.size(); ++i) {
        for (const Next& next : nexts(sets[i])) {
            if (rows[next.done] != 0) continue;
            sets.push_back(next.done);
            rows[next.done] = static_cast<std::uint32_t>(sets.size());
        }
        work.add(4 * (100 + 2 * places));
        if (work.over() || sets.size() * places > mostEntries) return;
    }
    table.assign(sets.size() * places, never);
    std::sort(sets.begin(), sets.end(), std::greater<>());
    for (const std::uint32_t done : sets) {
        evaluate(done);
        work.add(4 * (100 + places * places));
        if (work.over()) return;
    }
    whole = true;
}

std::size_t Part::open(std::uint32_t done) const {
    std::size_t gatesOpen = 0;
    for (std::size_t g = 0; g < gates.size(); ++g)
        if ((gates[g] & ~done) == 0) gatesOpen |= std::size_t{1} << g;
    return gatesOpen;
}

std::vector<Part::Next> Part::nexts(std::uint32_t done) const {
    std::vector<Next> all;
    for (Number place = 0; place < places; ++place) {
        std::uint32_t after = done;
        for (bool more = true; more;) {
            more = false;
            for (const std::uint32_t c : here[place]) {
                const std::uint32_t one = std::uint32_t{1} << c;
                if ((after & one) != 0 || (before[c] & ~after) != 0) continue;
                after |= one;
                more = true;
            }
        }
        if (after != done) all.push_back({place, after});
    }
    return all;
}

void Part::evaluate(std::uint32_t done) {
    Cost* row = &table[(rows[done] - 1) * places];
    const Moves& step = moves[open(done)];
    if (done + 1 == rows.size()) { // all: home, over other places too
        for (std::size_t p = 0; p < places; ++p)
            for (std::size_t q = 0; q < places; ++q)
                row[p] = std::min(row[p], problem.home[q] >= never ? never : step[p][q] + problem.home[q]);
        return;
    }
    for (const Next& next : nexts(done)) {
        const Cost further = rest(next.done, next.place);
        if (further >= never) continue;
        for (std::size_t p = 0; p < places; ++p)
            row[p] = std::min(row[p], step[p][next.place] + further);
    }
}

Walk Part::best() const {
    Walk walk;
    std::uint32_t done = 0;
    Number at = problem.start;
    while (done + 1 != rows.size()) {
        const Cost least = rest(done, at);
        const auto all = nexts(done);
        const auto next = std::find_if(all.begin(), all.end(), [&](const Next& one) {
            return moves[open(done)][at][one.place] + rest(one.done, one.place) == least;
        });
        if (next == all.end() || least >= never) return walk;
        walk.push_back(next->place);
        at = next->place;
        done = next->done;
    }
    return walk;
}

} // namespace ambit::sop
