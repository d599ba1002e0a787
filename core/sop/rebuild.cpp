#include "sop/rebuild.hpp"

#include "sop/sequence.hpp"

#include <algorithm>

namespace ambit::sop {

namespace {

class Rebuild {
public:
    Rebuild(const Problem& whole, std::uint64_t seed, Work& its)
        : problem(whole), moves(whole.moves.back()), before(allBefore(whole)), dice(seed), work(its) {
        const std::size_t count = problem.tasks.size();
        near.resize(count);
        for (Number t = 0; t < count; ++t) {
            std::vector<std::pair<Cost, Number>> others;
            for (Number other = 0; other < count; ++other)
                if (other != t) others.emplace_back(distance(t, other), other);
            const std::size_t kept = std::min(others.size(), mostNear);
            std::partial_sort(others.begin(), others.begin() + static_cast<std::ptrdiff_t>(kept),
                              others.end());
            for (std::size_t i = 0; i < kept; ++i)
                near[t].push_back(others[i].second);
        }
        work.add(count * count * 8);
        out.assign(count, false);
        gatesOf.resize(count);
        for (std::size_t gate = 0; gate < problem.gates.size(); ++gate) {
            Numbers tasks = problem.gates[gate];
            std::sort(tasks.begin(), tasks.end());
            tasks.erase(std::unique(tasks.begin(), tasks.end()), tasks.end());
            gateSize.push_back(tasks.size());
            for (const Number t : tasks)
                gatesOf[t].push_back(gate);
        }
    }

    /// Takes stretches out around a task and its neighbours.
    void ruin(Sequence& line) {
        removed.clear();
        position.assign(line.size(), 0);
        for (std::size_t i = 0; i < line.size(); ++i)
            position[line[i].task] = i;
        const std::size_t strings = 1 + dice.below(3);
        const auto seed = static_cast<Number>(dice.below(line.size()));
        takeOut(line, seed);
        for (std::size_t s = 1; s < strings && !near[seed].empty(); ++s)
            takeOut(line, near[seed][dice.below(near[seed].size())]);
        std::erase_if(line, [&](const Stop& stop) { return out[stop.task]; });
    }

    /// Takes everything out and puts it back; as it was if it doesn't fit.
    void renew(Sequence& line) {
        Sequence anew;
        removed.clear();
        for (const Stop& stop : line)
            removed.push_back(stop.task);
        if (recreate(anew)) line = std::move(anew);
    }

    /// False if a task fits nowhere.
    bool recreate(Sequence& line) {
        sortRemoved();
        for (const Number t : removed)
            out[t] = false;
        return std::all_of(removed.begin(), removed.end(), [&](Number t) { return putBack(line, t); });
    }

    /// The best place for each task of the order: dynamic programming along it. What it costs then.
    Cost settlePlaces(Sequence& line) {
        const std::size_t count = line.size();
        from.resize(count);
        std::vector<Cost>& now = costs;
        now.assign(1, 0);
        gateLeft = gateSize;
        std::size_t open = opened();
        for (std::size_t i = 0; i < count; ++i) {
            const Numbers& places = problem.tasks[line[i].task].places;
            const Numbers* last = i == 0 ? nullptr : &problem.tasks[line[i - 1].task].places;
            next.assign(places.size(), never);
            from[i].assign(places.size(), 0);
            for (std::size_t q = 0; q < places.size(); ++q) {
                for (std::size_t p = 0; p < now.size(); ++p) {
                    const Number here = last == nullptr ? problem.start : (*last)[p];
                    const bool stays = last != nullptr && here == places[q];
                    const Cost cost = now[p] + (stays ? 0 : problem.moves[open][here][places[q]]);
                    if (cost >= next[q]) continue; // never, too
                    next[q] = cost;
                    from[i][q] = static_cast<Number>(p);
                }
            }
            work.add(4 * places.size() * now.size() + 4);
            std::swap(now, next);
            if (gatesOf[line[i].task].empty()) continue;
            for (const std::size_t gate : gatesOf[line[i].task])
                --gateLeft[gate];
            open = opened();
        }
        const Numbers& ends = problem.tasks[line.back().task].places;
        Cost least = never;
        std::size_t at = 0;
        for (std::size_t p = 0; p < ends.size(); ++p) {
            if (now[p] + problem.home[ends[p]] >= least) continue;
            least = now[p] + problem.home[ends[p]];
            at = p;
        }
        if (least >= never) return never;
        for (std::size_t i = count; i-- > 0;) {
            line[i].place = problem.tasks[line[i].task].places[at];
            at = from[i][at];
        }
        return least;
    }

    /// 0 to 1.
    double chance() { return static_cast<double>(dice.below(1024)) / 1024; }

private:
    /// Which gates are, with so many tasks left of each.
    [[nodiscard]] std::size_t opened() const {
        std::size_t open = 0;
        for (std::size_t gate = 0; gate < gateLeft.size(); ++gate)
            if (gateLeft[gate] == 0) open |= std::size_t{1} << gate;
        return open;
    }

    static constexpr std::size_t mostNear = 12;
    static constexpr std::size_t longest = 10;

    [[nodiscard]] Cost between(Number p, Number q, bool first = false) const {
        return !first && p == q ? 0 : moves[p][q];
    }

    [[nodiscard]] Cost distance(Number one, Number other) const {
        Cost least = never;
        for (const Number p : problem.tasks[one].places)
            for (const Number q : problem.tasks[other].places)
                least = std::min({least, between(p, q), between(q, p)});
        return least;
    }

    void takeOut(const Sequence& line, Number around) {
        const std::size_t length = 1 + dice.below(std::min(longest, line.size()));
        const std::size_t back = std::min(position[around], dice.below(length));
        const std::size_t first = position[around] - back;
        for (std::size_t i = first; i < std::min(first + length, line.size()); ++i) {
            if (out[line[i].task]) continue;
            out[line[i].task] = true;
            removed.push_back(line[i].task);
        }
    }

    void sortRemoved() {
        for (std::size_t i = removed.size(); i > 1; --i)
            std::swap(removed[i - 1], removed[dice.below(i)]);
        if (dice.below(2) == 0) return;
        // Those with least choice first.
        std::stable_sort(removed.begin(), removed.end(), [&](Number a, Number b) {
            return problem.tasks[a].places.size() < problem.tasks[b].places.size();
        });
    }

    bool putBack(Sequence& line, Number t) {
        // After all that comes before it and before all that comes after it.
        std::size_t first = 0;
        std::size_t last = line.size();
        for (std::size_t i = 0; i < line.size(); ++i) {
            if (has(before[t], line[i].task)) first = i + 1;
            if (last == line.size() && has(before[line[i].task], t)) last = i;
        }
        Cost least = never;
        std::size_t at = 0;
        Number where = 0;
        for (std::size_t i = first; i <= last; ++i) {
            if (dice.below(blink) == 0) continue; // or it would always be the same
            for (const Number place : problem.tasks[t].places) {
                const Cost to = i == 0 ? moves[problem.start][place] : between(line[i - 1].place, place);
                Cost more = never;
                if (i == line.size()) {
                    more = to + problem.home[place] - (i == 0 ? 0 : problem.home[line[i - 1].place]);
                } else {
                    more = to + between(place, line[i].place) -
                           (i == 0 ? moves[problem.start][line[i].place]
                                   : between(line[i - 1].place, line[i].place));
                }
                if (more >= least) continue;
                least = more;
                at = i;
                where = place;
            }
        }
        work.add(4 * line.size() + 4 * (last + 1 - std::min(first, last)) * problem.tasks[t].places.size());
        if (least >= never) return false;
        line.insert(line.begin() + static_cast<std::ptrdiff_t>(at), Stop{t, where});
        return true;
    }

    static constexpr std::size_t blink = 64;

    const Problem& problem;
    const Moves& moves;
    Rows before;
    Dice dice;
    Work& work;
    std::vector<Numbers> near;
    std::vector<std::vector<std::size_t>> gatesOf; ///< by task
    std::vector<std::size_t> gateSize, gateLeft;   ///< by gate: its tasks, those left
    std::vector<bool> out;
    Numbers removed;
    std::vector<std::size_t> position; ///< by task
    std::vector<Cost> costs, next;
    std::vector<Numbers> from;
};

} // namespace

Walk rebuilt(const Problem& problem, const Walk& walk, std::uint64_t seed, Work& work) {
    Sequence current = sequenceOf(problem, walk);
    Walk best = walkOf(problem, current);
    const auto known = walked(problem, best);
    if (!known || !known->whole) return walk;
    if (current.size() < 2) return best;
    Rebuild rebuild(problem, seed, work);
    if (seed % 3 != 0) rebuild.renew(current); // another valley
    Cost now = rebuild.settlePlaces(current);
    Cost least = known->cost; // as it is
    // Worse is let pass now and then, ever less of it as the work runs out.
    const std::uint64_t begun = work.done();
    const double all = static_cast<double>(std::max<std::uint64_t>(work.left(), 1));
    const double warm = static_cast<double>(now) / 10;
    Sequence next;
    while (!work.over()) {
        next = current;
        rebuild.ruin(next);
        work.add(3 * next.size() + 100);
        if (!rebuild.recreate(next)) continue;
        const Cost cost = rebuild.settlePlaces(next);
        const double left = 1 - static_cast<double>(work.done() - begun) / all;
        const double allowance = warm * left * left * left * rebuild.chance();
        if (static_cast<double>(cost) > static_cast<double>(now) + allowance) continue;
        now = cost;
        current = next;
        if (cost >= least) continue;
        Walk places = walkOf(problem, next);
        const auto real = walked(problem, places);
        if (!real || !real->whole || real->cost >= least) continue;
        least = real->cost;
        best = std::move(places);
    }
    return best;
}

} // namespace ambit::sop
