#include "sop/exchange.hpp"

#include "sop/sequence.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace ambit::sop {

namespace {

/// A sequence of tasks, each at its place: element 0 is the start, the last the way home.
class Exchange {
public:
    Exchange(const Problem& whole, const Sequence& sequence)
        : count(sequence.size()), width(count + 1), cost(width * (width + 1)), successors(count + 2),
          predecessors(count + 2) {
        const Moves& moves = whole.moves.back();
        std::vector<std::size_t> elementOf(count, 0);
        for (std::size_t e = 1; e <= count; ++e)
            elementOf[sequence[e - 1].task] = e;
        const auto placed = [&](std::size_t e) { return e == 0 ? whole.start : sequence[e - 1].place; };
        for (std::size_t a = 0; a <= count; ++a) {
            for (std::size_t b = 0; b <= count; ++b)
                cost[a * (width + 1) + b] =
                    a > 0 && placed(a) == placed(b) ? 0 : std::min(moves[placed(a)][placed(b)], dear);
            cost[a * (width + 1) + width] = std::min(whole.home[placed(a)], dear);
        }
        const Rows before = allBefore(whole);
        const Rows follows = mayFollow(before);
        for (Number t = 0; t < count; ++t) {
            for (Number earlier = 0; earlier < count; ++earlier) {
                if (!has(before[t], earlier) || !has(follows[earlier], t)) continue;
                successors[elementOf[earlier]].push_back(elementOf[t]);
                predecessors[elementOf[t]].push_back(elementOf[earlier]);
            }
        }
        for (std::size_t e = 0; e <= count; ++e)
            line.push_back(e);
        line.push_back(width);
        position.assign(width + 1, 0);
        marked.assign(width + 1, 0);
        queued.assign(width + 1, false);
        place(0, width);
    }

    [[nodiscard]] Cost total() const {
        Cost sum = 0;
        for (std::size_t i = 0; i + 1 < line.size(); ++i)
            sum += between(i, i + 1);
        return sum;
    }

    [[nodiscard]] const std::vector<std::size_t>& elements() const { return line; }
    void restore(const std::vector<std::size_t>& old) {
        line = old;
        place(0, width);
    }

    /// To where no exchange saves.
    void descend() {
        while (!queue.empty()) {
            const std::size_t element = queue.back();
            queue.pop_back();
            queued[element] = false;
            while (improve(position[element])) {
            }
        }
    }

    /// Steps done since it was last asked.
    std::uint64_t takeTries() { return 3 * std::exchange(tries, 0); }

    void wakeAll() {
        for (std::size_t e = width + 1; e-- > 0;)
            wake(e);
    }

    /// Two short stretches somewhere change places, whatever that costs.
    void kick(Dice& dice) {
        if (count < 3) return;
        for (int attempt = 0; attempt < 30; ++attempt) {
            const std::size_t longest = std::min<std::size_t>(count / 2, 3 + dice.below(28));
            const std::size_t i = dice.below(count - 1);
            const std::size_t j = i + 1 + dice.below(longest);
            const std::size_t k = j + 1 + dice.below(longest);
            if (k > count || !mayExchange(i, j, k)) continue;
            if (cost[line[i] * (width + 1) + line[j + 1]] >= dear ||
                cost[line[j] * (width + 1) + line[k + 1]] >= dear ||
                cost[line[k] * (width + 1) + line[i + 1]] >= dear)
                continue;
            exchange(i, j, k);
            return;
        }
    }

private:
    static constexpr Cost dear = mostCost;

    [[nodiscard]] Cost between(std::size_t i, std::size_t j) const {
        return cost[line[i] * (width + 1) + line[j]];
    }

    void newMarks() { ++mark; }
    void markAfter(std::size_t p) {
        for (const std::size_t later : successors[line[p]])
            marked[later] = mark;
    }
    [[nodiscard]] bool isMarked(std::size_t p) const { return marked[line[p]] == mark; }

    /// Stretches i+1..j and j+1..k: may the second come first?
    [[nodiscard]] bool mayExchange(std::size_t i, std::size_t j, std::size_t k) {
        newMarks();
        for (std::size_t p = i + 1; p <= j; ++p)
            markAfter(p);
        for (std::size_t p = j + 1; p <= k; ++p)
            if (isMarked(p)) return false;
        return true;
    }

    [[nodiscard]] Cost gain(std::size_t i, std::size_t j, std::size_t k) const {
        return between(i, i + 1) + between(j, j + 1) + between(k, k + 1) - between(i, j + 1) -
               between(k, i + 1) - between(j, k + 1);
    }

    /// Tries the position as each of the three cuts of an exchange. An exchange that saves has a cut from
    /// which on its first new link is shorter than the one cut: only those are followed.
    bool improve(std::size_t cut) {
        return cut <= count && (improveAsFirst(cut) || improveAsSecond(cut) || improveAsThird(cut));
    }
    bool improveAsFirst(std::size_t i) {
        newMarks();
        tries += count - i;
        for (std::size_t j = i + 1; j < count; ++j) {
            markAfter(j);
            if (between(i, j + 1) >= between(i, i + 1)) continue;
            for (std::size_t k = j + 1; k <= count && !isMarked(k); ++k)
                if (tryOut(i, j, k)) return true;
        }
        return false;
    }
    bool improveAsSecond(std::size_t j) {
        near.clear();
        tries += count;
        for (std::size_t k = j + 1; k <= count; ++k)
            if (between(j, k + 1) < between(j, j + 1)) near.push_back(k);
        std::size_t end = width;
        for (std::size_t i = j; i-- > 0 && !near.empty();) {
            for (const std::size_t later : successors[line[i + 1]])
                if (position[later] > j) end = std::min(end, position[later]);
            while (!near.empty() && near.back() >= end)
                near.pop_back();
            for (const std::size_t k : near)
                if (tryOut(i, j, k)) return true;
        }
        return false;
    }
    bool improveAsThird(std::size_t k) {
        near.clear();
        tries += 2 * k;
        for (std::size_t i = k; i-- > 0;)
            if (i + 1 < k && between(k, i + 1) < between(k, k + 1)) near.push_back(i);
        std::size_t begin = 0; // the first stretch begins after what the second waits for
        for (std::size_t j = k; j-- > 1 && !near.empty();) {
            for (const std::size_t earlier : predecessors[line[j + 1]])
                if (position[earlier] <= j) begin = std::max(begin, position[earlier]);
            while (!near.empty() && near.back() < begin)
                near.pop_back();
            for (const std::size_t i : near)
                if (i < j && tryOut(i, j, k)) return true;
        }
        return false;
    }
    bool tryOut(std::size_t i, std::size_t j, std::size_t k) {
        ++tries;
        if (gain(i, j, k) <= 0) return false;
        exchange(i, j, k);
        return true;
    }

    void exchange(std::size_t i, std::size_t j, std::size_t k) {
        for (const std::size_t p : {i, i + 1, j, j + 1, k, k + 1})
            wake(line[p]);
        const auto at = [&](std::size_t p) { return line.begin() + static_cast<std::ptrdiff_t>(p); };
        std::rotate(at(i + 1), at(j + 1), at(k + 1));
        place(i + 1, k);
    }

    void wake(std::size_t element) {
        if (queued[element]) return;
        queued[element] = true;
        queue.push_back(element);
    }

    void place(std::size_t first, std::size_t last) {
        for (std::size_t p = first; p <= last; ++p)
            position[line[p]] = p;
    }

    std::size_t count;
    std::size_t width; ///< the number of the way home
    std::vector<Cost> cost;
    std::vector<std::vector<std::size_t>>
        successors; ///< direct ones only: an order that keeps those keeps all
    std::vector<std::vector<std::size_t>> predecessors;
    std::vector<std::size_t> line;
    std::vector<std::size_t> position;
    std::vector<std::uint64_t> marked; ///< by element: the round of marking it was last marked in
    std::uint64_t mark = 0;
    std::uint64_t tries = 0;
    std::vector<std::size_t> near; ///< cuts worth trying with the one in hand
    std::vector<std::size_t> queue;
    std::vector<bool> queued;
};

} // namespace

Walk exchanged(const Problem& problem, const Walk& walk, std::uint64_t seed, Work& work) {
    const Sequence sequence = sequenceOf(problem, walk);
    const Walk idleLeftOut = walkOf(problem, sequence);
    const auto known = walked(problem, idleLeftOut);
    if (!known || !known->whole) return walk;
    Exchange line(problem, sequence);
    Dice dice(seed);
    line.wakeAll();
    line.descend();
    auto best = line.elements();
    Cost least = line.total();
    Cost now = least;
    auto current = best;
    // What is worse is let pass within an allowance that shrinks to nothing, again and again: narrow valleys
    // want a small one, wide ones a large one.
    constexpr std::uint64_t period = 2000;               // kicks
    constexpr std::array<Cost, 3> allowances{32, 14, 7}; // one part in so many of the cost
    for (std::uint64_t kick = 0; !work.over(); ++kick) {
        line.kick(dice);
        line.descend();
        work.add(line.takeTries() + 4 * sequence.size());
        const Cost after = line.total();
        if (after < least) {
            least = after;
            best = line.elements();
        }
        const std::uint64_t phase = kick % period;
        const Cost most = least / allowances[kick / period % allowances.size()];
        const Cost allowance = most * static_cast<Cost>(period - phase) / static_cast<Cost>(period) *
                               static_cast<Cost>(dice.below(1024)) / 1024;
        if (after <= now + allowance) {
            now = after;
            current = line.elements();
        } else {
            line.restore(current);
        }
        if (phase + 1 == period) {
            line.restore(best);
            current = best;
            now = least;
        }
    }
    Sequence better;
    for (const std::size_t element : best) {
        if (element == 0 || element > sequence.size()) continue;
        better.push_back(sequence[element - 1]);
    }
    Walk places = walkOf(problem, better);
    const auto found = walked(problem, places);
    return found && found->whole && found->cost < known->cost ? places : idleLeftOut;
}

} // namespace ambit::sop
