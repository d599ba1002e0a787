#include "sop/tree.hpp"

#include "sop/relax.hpp"

#include <algorithm>

namespace ambit::sop {

namespace {

using Index = std::size_t;
constexpr Index nobody = std::numeric_limits<Index>::max();

/// Costs of arcs, from each node to each, in parts.
class Arcs {
public:
    explicit Arcs(Index nodes) : size(nodes), costs(nodes * nodes, never) {}
    [[nodiscard]] Cost& at(Index from, Index to) { return costs[from * size + to]; }
    [[nodiscard]] Cost at(Index from, Index to) const { return costs[from * size + to]; }
    [[nodiscard]] Index nodes() const { return size; }

private:
    Index size;
    std::vector<Cost> costs;
};

/// Node 0 is the start, node t + 1 task t, the last node the end. Only arcs between what may follow at once.
Arcs arcsOf(const Problem& problem) {
    const std::size_t count = problem.tasks.size();
    const Rows before = allBefore(problem);
    const Rows follows = mayFollow(before);
    const Moves& moves = problem.moves.back(); // all gates open: nothing is dearer
    Arcs arcs(count + 2);
    for (Number b = 0; b < count; ++b) {
        const Task& to = problem.tasks[b];
        bool last = true;
        for (Number a = 0; a < count; ++a) {
            last = last && !has(before[a], b);
            if (!has(follows[a], b)) continue;
            Cost& cost = arcs.at(a + 1, b + 1);
            for (const Number p : problem.tasks[a].places)
                for (const Number q : to.places)
                    cost = std::min(cost, p == q ? 0 : moves[p][q] >= never ? never : moves[p][q] * parts);
        }
        for (const Number q : to.places) {
            const Cost first = moves[problem.start][q];
            const Cost home = problem.home[q];
            if (to.before.empty() && first < never)
                arcs.at(0, b + 1) = std::min(arcs.at(0, b + 1), first * parts);
            if (last && home < never)
                arcs.at(b + 1, count + 1) = std::min(arcs.at(b + 1, count + 1), home * parts);
        }
    }
    return arcs;
}

/// Each node's parent in the cheapest tree from node 0; empty if a node can't be reached.
std::vector<Index> cheapestTree(const Arcs& arcs) {
    const Index size = arcs.nodes();
    std::vector<Index> parent(size, nobody);
    for (Index to = 1; to < size; ++to) {
        for (Index from = 0; from < size; ++from)
            if (from != to && arcs.at(from, to) < never &&
                (parent[to] == nobody || arcs.at(from, to) < arcs.at(parent[to], to)))
                parent[to] = from;
        if (parent[to] == nobody) return {};
    }
    // Circles become one node each.
    std::vector<Index> mark(size, nobody);
    std::vector<Index> circle(size, nobody);
    Index circles = 0;
    for (Index node = 1; node < size; ++node) {
        Index at = node;
        while (at != 0 && mark[at] == nobody) {
            mark[at] = node;
            at = parent[at];
        }
        if (at == 0 || mark[at] != node || circle[at] != nobody) continue;
        for (Index on = at; circle[on] == nobody; on = parent[on])
            circle[on] = circles;
        ++circles;
    }
    if (circles == 0) return parent;
    Index smaller = 0;
    std::vector<Index> number(size, 0);
    for (Index node = 0; node < size; ++node)
        if (circle[node] == nobody) number[node] = smaller++;
    for (Index node = 0; node < size; ++node)
        if (circle[node] != nobody) number[node] = smaller + circle[node];
    smaller += circles;
    Arcs fewer(smaller);
    std::vector<std::pair<Index, Index>> origin(smaller * smaller, {nobody, nobody});
    for (Index from = 0; from < size; ++from) {
        for (Index to = 1; to < size; ++to) {
            const Index a = number[from];
            const Index b = number[to];
            if (a == b || arcs.at(from, to) >= never) continue;
            // Coming into a circle there saves the circle's own arc to it.
            const Cost cost = arcs.at(from, to) - (circle[to] == nobody ? 0 : arcs.at(parent[to], to));
            if (cost >= fewer.at(a, b)) continue;
            fewer.at(a, b) = cost;
            origin[a * smaller + b] = {from, to};
        }
    }
    const std::vector<Index> above = cheapestTree(fewer);
    if (above.empty()) return {};
    for (Index b = 1; b < smaller; ++b) {
        const auto& [from, to] = origin[above[b] * smaller + b];
        parent[to] = from;
    }
    return parent;
}

} // namespace

Cost treeBound(const Problem& problem, Cost enough, Work& work) {
    if (problem.tasks.empty()) return problem.home[problem.start];
    Arcs arcs = arcsOf(problem);
    const Index size = arcs.nodes();
    work.add(problem.tasks.size() * size * size / 64);
    std::vector<double> prices(size, 0);
    std::vector<Cost> rounded(size, 0);
    std::vector<double> way(size, 0);
    Cost best = 0;
    double pace = 1;
    constexpr int rounds = 300;
    constexpr double memory = 0.7;
    for (int round = 0; round < rounds && !work.over(); ++round) {
        Arcs priced = arcs;
        for (Index from = 0; from + 1 < size; ++from)
            for (Index to = 1; to < size; ++to)
                if (priced.at(from, to) < never) priced.at(from, to) += rounded[from];
        const auto parent = cheapestTree(priced);
        work.add(12 * size * size);
        if (parent.empty()) return never;
        std::vector<int> branches(size, 0);
        Cost sum = 0;
        for (Index to = 1; to < size; ++to) {
            sum += priced.at(parent[to], to);
            ++branches[parent[to]];
        }
        double norm = 0;
        for (Index from = 0; from + 1 < size; ++from) {
            sum -= rounded[from];
            way[from] = memory * way[from] + (branches[from] - 1);
            norm += way[from] * way[from];
        }
        best = std::max(best, sum);
        if (norm == 0 || (best + parts - 1) / parts >= enough) break;
        const double step = pace * static_cast<double>(std::max(enough * parts - sum, parts)) / norm;
        for (Index from = 0; from + 1 < size; ++from) {
            prices[from] += step * way[from];
            rounded[from] = static_cast<Cost>(prices[from]);
        }
        pace *= 0.985;
    }
    return best <= 0 ? 0 : (best + parts - 1) / parts;
}

} // namespace ambit::sop
