#include "sop/ascent.hpp"

#include <algorithm>
#include <bit>
#include <queue>

namespace ambit::sop {

namespace {

bool contains(const std::vector<std::uint64_t>& set, std::size_t node) {
    return (set[node / 64] >> (node % 64) & 1) != 0;
}
void put(std::vector<std::uint64_t>& set, std::size_t node) {
    set[node / 64] |= std::uint64_t{1} << (node % 64);
}

} // namespace

Ascent::Ascent(const Problem& problem) {
    const std::size_t count = problem.tasks.size();
    std::vector<Stop> nodes;
    for (Number t = 0; t < count; ++t) {
        nodesOf.emplace_back();
        for (const Number place : problem.tasks[t].places) {
            nodesOf[t].push_back(nodes.size());
            taskOf.push_back(t);
            nodes.push_back({t, place});
        }
    }
    start = nodes.size();
    const Index home = start + 1;
    size = start + 2;
    nodesOf.push_back({home});
    taskOf.resize(size, count);
    words = (size + 63) / 64;
    bestPrices.assign(size, 0);
    costs.assign(size * size, never);
    const Rows before = allBefore(problem);
    const Rows follows = mayFollow(before);
    const Moves& moves = problem.moves.back(); // all gates open: nothing is dearer
    const auto set = [&](Index from, Index to, Cost cost) {
        if (cost < never) costs[from * size + to] = cost * parts;
    };
    for (Index to = 0; to < start; ++to) {
        const Stop& next = nodes[to];
        if (problem.tasks[next.task].before.empty()) set(start, to, moves[problem.start][next.place]);
        bool last = true;
        for (Number t = 0; t < count; ++t)
            last = last && !has(before[t], next.task);
        if (last) set(to, home, problem.home[next.place]);
        for (Index from = 0; from < start; ++from) {
            const Stop& one = nodes[from];
            if (has(follows[one.task], next.task))
                set(from, to, one.place == next.place ? 0 : moves[one.place][next.place]);
        }
    }
    if (count == 0) set(start, home, problem.home[problem.start]);
}

void Ascent::reprice() {
    for (Index from = 0; from < size; ++from)
        for (Index to = 0; to < size; ++to) {
            const Cost cost = costs[from * size + to];
            at(from, to) = cost >= never ? never : cost + rounded[from] - rounded[to];
        }
}

/// Charges sets until each task is reached; what all walks pay.
Cost Ascent::charge(Work& work) {
    left = costs;
    reprice();
    work.add(2 * size * size);
    free.assign(size * words, 0);
    paid.clear();
    Cost sum = rounded[size - 1] - rounded[start]; // all others' prices are paid and paid back
    for (const auto& its : nodesOf) {              // each task is come to just once: this may be less than 0
        Set set(words, 0);
        for (const Index node : its)
            put(set, node);
        sum += chargeSet(set, work);
        if (sum >= never) return never;
    }
    using Entry = std::pair<std::size_t, std::size_t>; // how much leads there, task
    std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue;
    for (std::size_t t = 0; t < nodesOf.size(); ++t)
        queue.emplace(0, t);
    while (!queue.empty() && !work.over()) {
        const auto [known, task] = queue.top();
        queue.pop();
        const Set set = leadingTo(task, work);
        if (contains(set, start)) continue;
        std::size_t many = 0;
        for (const std::uint64_t word : set)
            many += static_cast<std::size_t>(std::popcount(word));
        if (many == known) {
            sum += chargeSet(set, work);
            if (sum >= never) return never;
        }
        queue.emplace(many, task);
    }
    return sum;
}

/// What coming into the set costs at least; so much less is left of each step into it.
Cost Ascent::chargeSet(const Set& set, Work& work) {
    Cost least = never;
    for (const bool take : {false, true}) {
        for (Index to = 0; to < size && (!take || least < never); ++to) {
            if (!contains(set, to)) continue;
            for (Index from = 0; from <= start; ++from) {
                if (contains(set, from) || at(from, to) >= never) continue;
                if (!take) {
                    least = std::min(least, at(from, to));
                    continue;
                }
                at(from, to) -= least;
                if (at(from, to) != 0) continue;
                free[to * words + from / 64] |= std::uint64_t{1} << (from % 64);
                paid.emplace_back(from, to);
            }
            work.add(3 * size);
        }
    }
    return least;
}

/// All that leads to the task at no cost.
Ascent::Set Ascent::leadingTo(std::size_t task, Work& work) const {
    Set set(words, 0);
    std::vector<Index> open = nodesOf[task];
    for (const Index node : open)
        put(set, node);
    while (!open.empty()) {
        const Index to = open.back();
        open.pop_back();
        for (std::size_t w = 0; w < words; ++w) {
            std::uint64_t more = free[to * words + w] & ~set[w];
            set[w] |= more;
            for (; more != 0; more &= more - 1)
                open.push_back(64 * w + static_cast<std::size_t>(std::countr_zero(more)));
        }
        work.add(6 * words);
    }
    return set;
}

/// The ways paid for: each node's parent, what was paid for first rather than last, and only what leads to a
/// task first come to there; nobody elsewhere.
std::vector<Ascent::Index> Ascent::ways(Work& work) const {
    std::vector<std::vector<std::pair<std::size_t, Index>>> from(size);
    for (std::size_t i = 0; i < paid.size(); ++i)
        from[paid[i].first].emplace_back(i, paid[i].second);
    work.add(10 * paid.size());
    std::vector<Index> parent(size, nobody);
    std::vector<bool> reached(nodesOf.size(), false);
    std::vector<bool> needed(size, false);
    std::vector<Index> order;
    std::priority_queue<std::size_t, std::vector<std::size_t>, std::greater<>> queue;
    const auto visit = [&](Index node) {
        order.push_back(node);
        if (node != start && !reached[taskOf[node]]) reached[taskOf[node]] = needed[node] = true;
        for (const auto& [i, to] : from[node])
            if (parent[to] == nobody) queue.push(i);
    };
    visit(start);
    while (!queue.empty()) {
        const auto [before, node] = paid[queue.top()];
        queue.pop();
        work.add(30);
        if (parent[node] != nobody) continue;
        parent[node] = before;
        visit(node);
    }
    for (auto node = order.rbegin(); node != order.rend(); ++node) {
        if (*node == start) continue;
        if (needed[*node])
            needed[parent[*node]] = true;
        else
            parent[*node] = nobody;
    }
    return parent;
}

void Ascent::raise(Cost enough, int rounds, Work& work) {
    std::vector<double> way(size, 0);
    prices.assign(bestPrices.begin(), bestPrices.end());
    rounded = bestPrices;
    constexpr double memory = 0.7;
    double pace = 0.5;
    const double decay = 1 - 4.0 / std::max(rounds, 10);
    for (int round = 0; round < rounds && !work.over(); ++round) {
        const std::uint64_t begun = work.done();
        const Cost now = charge(work);
        if (now > best) {
            best = now;
            bestPrices = rounded;
        }
        if (best >= never || bound() >= enough || work.over()) return;
        const std::vector<Index> parent = ways(work);
        steps = work.done() - begun;
        std::vector<double> more(size, 0); // ways on than ways there
        for (Index node = 0; node < size; ++node) {
            if (parent[node] == nobody) continue;
            more[parent[node]] += 1;
            more[node] -= 1;
        }
        more[start] -= 1;
        more[size - 1] += 1;
        if (std::all_of(more.begin(), more.end(), [](double off) { return off == 0; })) return; // a walk
        double norm = 0;
        for (Index node = 0; node < size; ++node) {
            way[node] = memory * way[node] + more[node];
            norm += way[node] * way[node];
        }
        const double step =
            pace * static_cast<double>(std::max(enough * parts - now, parts)) / std::max(norm, 1.0);
        for (Index node = 0; node < size; ++node) {
            prices[node] += step * way[node];
            rounded[node] = static_cast<Cost>(prices[node]);
        }
        pace *= decay;
    }
}

} // namespace ambit::sop
