#include "sop/problem.hpp"

#include <algorithm>
#include <numeric>
#include <string>

namespace ambit::sop {

namespace {

void put(std::vector<std::uint64_t>& row, Number task) {
    row[task / 64] |= std::uint64_t{1} << (task % 64);
}

tl::unexpected<Error> invalid(std::string what, const std::string& where = {}) {
    return fail(ErrorCode::invalid, std::move(what), where);
}

/// Tasks so that each comes after all it waits for; shorter than all if there is a cycle.
Numbers sorted(const Problem& problem) {
    const std::size_t count = problem.tasks.size();
    std::vector<std::size_t> waits(count, 0);
    std::vector<Numbers> after(count);
    Numbers order;
    for (Number t = 0; t < count; ++t) {
        waits[t] = problem.tasks[t].before.size();
        for (const Number earlier : problem.tasks[t].before)
            after[earlier].push_back(t);
        if (waits[t] == 0) order.push_back(t);
    }
    for (std::size_t i = 0; i < order.size(); ++i)
        for (const Number later : after[order[i]])
            if (--waits[later] == 0) order.push_back(later);
    return order;
}

bool inRange(const Numbers& numbers, std::size_t count) {
    return std::all_of(numbers.begin(), numbers.end(), [&](Number n) { return n < count; });
}

Result<void> validateMoves(const Problem& problem) {
    const std::size_t places = problem.places();
    const Cost most = mostCost / static_cast<Cost>(problem.tasks.size() + 2);
    const auto isCost = [&](Cost cost) { return cost == never || (cost >= 0 && cost <= most); };
    if (problem.moves.size() != std::size_t{1} << problem.gates.size())
        return invalid("There are not as many tables of moves as ways to have gates open.");
    for (const Moves& moves : problem.moves) {
        if (moves.size() != places) return invalid("A table of moves has not as many rows as places.");
        for (const auto& row : moves) {
            if (row.size() != places) return invalid("A row of moves is not as long as there are places.");
            if (!std::all_of(row.begin(), row.end(), isCost))
                return invalid("A move's cost is out of range.");
        }
    }
    if (!std::all_of(problem.home.begin(), problem.home.end(), isCost))
        return invalid("What ending at a place costs is out of range.");
    return {};
}

/// From what comes before each to what comes after each.
Rows turned(const Rows& before) {
    Rows after(before.size(), std::vector<std::uint64_t>((before.size() + 63) / 64, 0));
    for (Number t = 0; t < before.size(); ++t)
        for (Number earlier = 0; earlier < before.size(); ++earlier)
            if (has(before[t], earlier)) put(after[earlier], t);
    return after;
}

bool subset(const std::vector<std::uint64_t>& small, const std::vector<std::uint64_t>& large, Number except) {
    for (std::size_t w = 0; w < small.size(); ++w) {
        std::uint64_t rest = small[w] & ~large[w];
        if (except / 64 == w) rest &= ~(std::uint64_t{1} << (except % 64));
        if (rest != 0) return false;
    }
    return true;
}

bool isMetric(const Problem& problem) {
    const std::size_t places = problem.places();
    for (const Moves& moves : problem.moves) {
        for (std::size_t a = 0; a < places; ++a) {
            for (std::size_t over = 0; over < places; ++over) {
                if (moves[a][over] >= never) continue;
                for (std::size_t b = 0; b < places; ++b)
                    if (a != b && moves[a][over] + moves[over][b] < moves[a][b]) return false;
                if (moves[a][over] + problem.home[over] < problem.home[a]) return false;
            }
        }
    }
    return true;
}

/// Finds for each task whether another makes it superfluous.
class Reducing {
public:
    explicit Reducing(const Problem& whole) : problem(whole), before(allBefore(whole)) {
        const std::size_t count = problem.tasks.size();
        after = turned(before);
        for (Number t = 0; t < count; ++t) {
            places.push_back(problem.tasks[t].places);
            std::sort(places[t].begin(), places[t].end());
        }
        gone.assign(count, false);
        for (Number t = 0; t < count; ++t)
            for (Number other = 0; other < count && !gone[t]; ++other)
                if (other != t && !gone[other] && covers(other, t)) gone[t] = true;
    }

    [[nodiscard]] Reduced result() const {
        Reduced made{problem, {}};
        Numbers number(problem.tasks.size(), 0);
        made.problem.tasks.clear();
        for (Number t = 0; t < problem.tasks.size(); ++t) {
            if (gone[t]) continue;
            number[t] = static_cast<Number>(made.original.size());
            made.original.push_back(t);
        }
        // All that comes before, not only what is named: what is named may be gone.
        for (const Number t : made.original) {
            Task task{problem.tasks[t].places, {}};
            for (const Number earlier : made.original)
                if (has(before[t], earlier)) task.before.push_back(number[earlier]);
            made.problem.tasks.push_back(std::move(task));
        }
        for (Numbers& gate : made.problem.gates) {
            std::erase_if(gate, [&](Number t) { return gone[t]; });
            for (Number& t : gate)
                t = number[t];
        }
        return made;
    }

private:
    [[nodiscard]] bool covers(Number one, Number other) const {
        if (!std::includes(places[other].begin(), places[other].end(), places[one].begin(),
                           places[one].end()))
            return false;
        if (!subset(before[other], before[one], one)) return false;
        // Who waits for the other waits for this one too.
        if (!subset(after[other], after[one], one)) return false;
        return std::all_of(problem.gates.begin(), problem.gates.end(), [&](const Numbers& gate) {
            const auto needs = [&](Number t) { return std::find(gate.begin(), gate.end(), t) != gate.end(); };
            return !needs(other) || needs(one);
        });
    }

    const Problem& problem;
    Rows before;
    Rows after;
    std::vector<Numbers> places;
    std::vector<bool> gone;
};

} // namespace

Result<void> validate(const Problem& problem) {
    const std::size_t places = problem.places();
    if (problem.tasks.size() > mostTasks)
        return invalid("There are more than " + std::to_string(mostTasks) + " tasks.");
    if (problem.gates.size() > mostGates)
        return invalid("There are more than " + std::to_string(mostGates) + " gates.");
    if (problem.start >= places) return invalid("There is no such place to start from.");
    for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
        const Task& task = problem.tasks[t];
        if (task.places.empty() || !inRange(task.places, places) ||
            !inRange(task.before, problem.tasks.size()))
            return invalid("A task names no place, or one or a task that isn't there.",
                           "task " + std::to_string(t));
    }
    for (const Numbers& gate : problem.gates)
        if (!inRange(gate, problem.tasks.size())) return invalid("A gate needs a task that isn't there.");
    if (sorted(problem).size() != problem.tasks.size())
        return invalid("What comes before what goes round in a circle.");
    return validateMoves(problem);
}

Rows allBefore(const Problem& problem) {
    Rows rows(problem.tasks.size(), std::vector<std::uint64_t>((problem.tasks.size() + 63) / 64, 0));
    for (const Number t : sorted(problem)) {
        for (const Number earlier : problem.tasks[t].before) {
            put(rows[t], earlier);
            for (std::size_t w = 0; w < rows[t].size(); ++w)
                rows[t][w] |= rows[earlier][w];
        }
    }
    return rows;
}

Rows mayFollow(const Rows& before) {
    const Rows after = turned(before);
    Rows rows(before.size(), std::vector<std::uint64_t>((before.size() + 63) / 64, 0));
    for (Number a = 0; a < before.size(); ++a) {
        for (Number b = 0; b < before.size(); ++b) {
            bool may = a != b && !has(before[a], b);
            for (std::size_t w = 0; w < after[a].size() && may; ++w)
                may = (after[a][w] & before[b][w]) == 0;
            if (may) put(rows[a], b);
        }
    }
    return rows;
}

Reduced reduced(const Problem& problem) {
    Reduced small = Reducing(problem).result();
    if (small.original.size() == problem.tasks.size() || isMetric(problem)) return small;
    Numbers all(problem.tasks.size());
    std::iota(all.begin(), all.end(), Number{0});
    return {problem, std::move(all)};
}

Result<Walked> walked(const Problem& problem, const Walk& walk) {
    const std::size_t count = problem.tasks.size();
    Walked done;
    std::vector<bool> settled(count, false);
    const auto all = [&](const Numbers& tasks) {
        return std::all_of(tasks.begin(), tasks.end(), [&](Number t) { return settled[t]; });
    };
    const auto doAllAt = [&](Number place) {
        for (bool more = true; more;) {
            more = false;
            for (Number t = 0; t < count; ++t) {
                const Task& task = problem.tasks[t];
                if (settled[t] || !all(task.before) ||
                    std::find(task.places.begin(), task.places.end(), place) == task.places.end())
                    continue;
                settled[t] = more = true;
                done.order.push_back(t);
                done.inversions += std::count(settled.begin(), settled.begin() + t, false);
            }
        }
    };
    Number here = problem.start;
    doAllAt(here);
    for (std::size_t i = 0; i < walk.size(); ++i) {
        std::size_t open = 0;
        for (std::size_t g = 0; g < problem.gates.size(); ++g)
            if (all(problem.gates[g])) open |= std::size_t{1} << g;
        const Cost cost = walk[i] < problem.places() ? problem.moves[open][here][walk[i]] : never;
        if (cost == never)
            return fail(ErrorCode::refused, "There is no such move.", "step " + std::to_string(i + 1));
        done.cost += cost;
        here = walk[i];
        const std::size_t before = done.order.size();
        doAllAt(here);
        if (done.order.size() == before)
            return fail(ErrorCode::refused, "There is nothing to do there.", "step " + std::to_string(i + 1));
    }
    if (problem.home[here] == never)
        return fail(ErrorCode::refused, "The walk can't end there.", "step " + std::to_string(walk.size()));
    done.cost += problem.home[here];
    done.whole = done.order.size() == count;
    return done;
}

} // namespace ambit::sop
