#include "sop/relax.hpp"

#include <algorithm>

namespace ambit::sop {

Relaxation::Relaxation(const Problem& whole, Position position)
    : problem(whole), from(std::move(position)), before(allBefore(whole)) {
    const std::size_t count = problem.tasks.size();
    earliest.assign(count, 1);
    latest.assign(count, count);
    numbers.assign(count, std::vector<std::size_t>(problem.places(), 0));
    for (Number t = 0; t < count; ++t) {
        for (Number other = 0; other < count; ++other) {
            earliest[t] += has(before[t], other) ? 1 : 0;
            latest[t] -= has(before[other], t) ? 1 : 0;
        }
        for (const Number place : problem.tasks[t].places) {
            numbers[t][place] = nodes.size();
            nodes.push_back({t, place});
        }
    }
    findArcs();
    // Doing again what is done there is made dear; from elsewhere, where it may not be, that only weakens the
    // bound.
    constexpr Cost again = 1'000'000 * parts;
    for (Number t = 0; t < count; ++t)
        prices.push_back(from.settled[t] ? -again : 0);
    rests.assign((count + 1) * nodes.size(), never);
    std::vector<int> times(count, 0);
    best = evaluate(prices, times);
}

/// Only between tasks that may follow each other at once: the next is not before this, nor anything between.
void Relaxation::findArcs() {
    const Moves& moves = problem.moves.back(); // all gates open: nothing is dearer
    const Rows follows = mayFollow(before);
    arcs.resize(nodes.size());
    for (std::size_t to = 0; to < nodes.size(); ++to) {
        const Node& next = nodes[to];
        const Cost first = moves[from.place][next.place];
        bool ready = !from.settled[next.task];
        for (const Number earlier : problem.tasks[next.task].before)
            ready = ready && from.settled[earlier];
        if (ready && first < never) firsts.push_back({to, first * parts});
        for (std::size_t n = 0; n < nodes.size(); ++n) {
            if (!has(follows[nodes[n].task], next.task)) continue;
            const bool stays = nodes[n].place == next.place;
            const Cost cost = stays ? 0 : moves[nodes[n].place][next.place];
            if (cost < never) arcs[n].push_back({to, cost * parts});
        }
    }
}

Cost Relaxation::evaluate(const std::vector<Cost>& at, std::vector<int>& times) {
    const std::size_t count = problem.tasks.size();
    const std::size_t width = nodes.size();
    constexpr Number nobody = std::numeric_limits<Number>::max();
    table.assign((count + 1) * width, Rest{never, never, nobody});
    std::uint64_t worked = 0;
    for (std::size_t done = count; done > 0; --done) { // below the position too: the bounds are for all
        for (std::size_t n = 0; n < width; ++n) {
            const Number task = nodes[n].task;
            if (done < earliest[task] || done > latest[task]) continue;
            Rest& rest = table[done * width + n];
            if (done == count) {
                const Cost home = problem.home[nodes[n].place];
                if (home < never) rest = {home * parts, never, nobody};
                continue;
            }
            worked += arcs[n].size();
            const Rest* next = &table[(done + 1) * width];
            for (const Arc& arc : arcs[n]) {
                const Rest& after = next[arc.to];
                const Cost further = after.task == task ? after.second : after.first;
                if (further >= never) continue;
                const Number to = nodes[arc.to].task;
                const Cost cost = arc.cost - at[to] + further;
                if (cost < rest.first) {
                    if (rest.task != to) rest.second = rest.first;
                    rest.first = cost;
                    rest.task = to;
                } else if (to != rest.task && cost < rest.second) {
                    rest.second = cost;
                }
            }
        }
    }
    // The cheapest way, and how often it does each task.
    std::fill(times.begin(), times.end(), 0);
    Cost bound = never;
    std::size_t here = width;
    for (const Arc& arc : firsts) {
        const Cost further = table[(from.count + 1) * width + arc.to].first;
        if (further >= never) continue;
        const Cost cost = arc.cost - at[nodes[arc.to].task] + further;
        if (cost < bound) {
            bound = cost;
            here = arc.to;
        }
    }
    steps = 2 * worked;
    if (from.count == count && problem.home[from.place] < never) bound = problem.home[from.place] * parts;
    Number previous = nobody;
    for (std::size_t done = from.count + 1; done <= count && bound < never; ++done) {
        ++times[nodes[here].task];
        std::size_t next = width;
        Cost least = never;
        for (const Arc& arc : arcs[here]) {
            const Number to = nodes[arc.to].task;
            if (done == count || to == previous) continue;
            const Rest& after = table[(done + 1) * width + arc.to];
            const Cost further = after.task == nodes[here].task ? after.second : after.first;
            if (further >= never || arc.cost - at[to] + further >= least) continue;
            least = arc.cost - at[to] + further;
            next = arc.to;
        }
        previous = nodes[here].task;
        here = next;
    }
    for (Number t = 0; t < count && bound < never; ++t)
        if (!from.settled[t]) bound += at[t];
    if (bound > best || !valued) {
        best = bound;
        valued = true;
        prices = at;
        for (std::size_t i = 0; i < table.size(); ++i)
            rests[i] = table[i].first;
    }
    return bound;
}

void Relaxation::raise(Cost enough, int rounds, Work& work) {
    const std::size_t count = problem.tasks.size();
    std::vector<double> at(prices.begin(), prices.end());
    std::vector<double> way(count, 0);
    std::vector<Cost> rounded = prices;
    std::vector<int> times(count, 0);
    // Steps towards each task once, smoothed and ever shorter.
    constexpr double memory = 0.7;
    double pace = 1;
    const double decay = 1 - 5.0 / std::max(rounds, 10); // to 1/150 or so
    for (int round = 0; round < rounds && best < never && bound() < enough && !work.over(); ++round) {
        const Cost now = evaluate(rounded, times);
        work.add(steps);
        double norm = 0;
        bool walk = true;
        for (std::size_t t = 0; t < count; ++t) {
            if (from.settled[t]) continue;
            walk = walk && times[t] == 1;
            way[t] = memory * way[t] + (1 - times[t]);
            norm += way[t] * way[t];
        }
        if (walk) return; // each once: this is a walk, and the bound its cost
        const double step =
            pace * static_cast<double>(std::max(enough * parts - now, parts)) / std::max(norm, 1.0);
        for (std::size_t t = 0; t < count; ++t) {
            at[t] += step * way[t];
            rounded[t] = static_cast<Cost>(at[t]);
        }
        pace *= decay;
    }
}

} // namespace ambit::sop
