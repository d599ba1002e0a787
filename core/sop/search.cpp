#include "sop/search.hpp"

#include "sop/bits.hpp"

#include <algorithm>

namespace ambit::sop {

namespace {

template<std::size_t words> class Search {
public:
    using Set = Bits<words>;

    Search(const Problem& whole, const Bounds& bounds, const Limits& its, Work& counted)
        : problem(whole), relaxations(bounds.relaxations), some(bounds.parts), limits(its), work(counted),
          atPlace(whole.places()) {
        const Rows rows = allBefore(problem);
        for (Number t = 0; t < problem.tasks.size(); ++t) {
            before.emplace_back(rows[t]);
            for (const Number place : problem.tasks[t].places)
                atPlace[place].push_back(t);
        }
        for (const Numbers& gate : problem.gates) {
            Set needs;
            for (const Number t : gate)
                needs.add(t);
            gates.push_back(needs);
        }
        for (Number place = 0; place < problem.places(); ++place)
            if (!atPlace[place].empty()) offering.push_back(place);
        slots.assign(1U << 12U, empty);
    }

    Found run() {
        const std::size_t count = problem.tasks.size();
        layers.resize(count + 1);
        State start;
        start.place = problem.start;
        start.from = empty;
        for (Number t = 0; t < count; ++t)
            for (std::size_t r = 0; r < relaxations.size(); ++r)
                start.left[r] += relaxations[r]->price(t);
        states.push_back(start);
        layers[0].push_back(0);
        if (count == 0) finish(0);
        for (std::size_t done = 0; done < count && !found.cut; ++done)
            expandLayer(done);
        for (std::size_t done = 0; done < count; ++done) // of those left when stopped
            if (found.cut)
                for (const std::uint32_t s : layers[done])
                    leave(states[s].least);
        found.states = states.size();
        if (leastLeft < never) found.bound = std::max<Cost>(0, (leastLeft + parts - 1) / parts);
        if (!widthCut && !found.cut)
            found.bound = found.walk ? std::min(found.cost, limits.better) : limits.better;
        found.cut = found.cut || widthCut;
        return std::move(found);
    }

private:
    static constexpr std::uint32_t empty = std::numeric_limits<std::uint32_t>::max();

    struct State {
        Set done;
        Cost cost = 0;
        std::array<std::uint32_t, mostParts> ofPart{}; ///< by part: what of it is done
        std::array<Cost, mostRelaxations> left{};      ///< by relaxation: prices of what isn't done, parts
        Cost least = 0;                                ///< of any whole walk through here, parts
        std::int64_t inversions = 0;
        std::uint32_t from = 0;
        Number place = 0;
    };

    /// What one tries to have little of: cost, and inversions where they count. Parts.
    [[nodiscard]] Cost weight(Cost cost, std::int64_t inversions) const {
        return cost * parts + limits.perInversion * inversions;
    }

    [[nodiscard]] bool tooDear(Cost least, std::int64_t inversions) const {
        const Cost limit = limits.better * parts;
        if (limits.better >= never) return least >= never;
        // A bound in parts between two whole costs means the upper one.
        const Cost rounded = (least + parts - 1) / parts * parts;
        return rounded > limit || (rounded == limit && inversions >= limits.fewer);
    }

    void expandLayer(std::size_t done) {
        auto& layer = layers[done];
        std::erase_if(layer, [&](std::uint32_t s) { return tooDear(states[s].least, states[s].inversions); });
        const auto better = [&](std::uint32_t a, std::uint32_t b) {
            const Cost one = states[a].least + limits.perInversion * states[a].inversions;
            const Cost other = states[b].least + limits.perInversion * states[b].inversions;
            if (one != other) return one < other;
            if (states[a].inversions != states[b].inversions)
                return states[a].inversions < states[b].inversions;
            return a < b;
        };
        if (layer.size() > limits.width) {
            const auto middle = layer.begin() + static_cast<std::ptrdiff_t>(limits.width);
            std::nth_element(layer.begin(), middle, layer.end(), better);
            for (auto s = middle; s != layer.end(); ++s)
                leave(states[*s].least);
            layer.erase(middle, layer.end());
            widthCut = true;
        }
        for (std::size_t i = 0; i < layer.size(); ++i) {
            if (states.size() > limits.mostStates || (i % 64 == 0 && work.over())) {
                found.cut = true;
                return;
            }
            expand(layer[i], done);
        }
        layer.clear();
        layer.shrink_to_fit();
        // States of earlier layers are never met again.
        if (done + 1 < layers.size()) rehash(done + 1);
    }

    void leave(Cost least) { leastLeft = std::min(leastLeft, least); }

    void expand(std::uint32_t from, std::size_t done) {
        const State here = states[from]; // a copy: states grows
        std::size_t open = 0;
        for (std::size_t g = 0; g < gates.size(); ++g)
            if (gates[g].within(here.done)) open |= std::size_t{1} << g;
        const auto& moves = problem.moves[open][here.place];
        work.add(20 * offering.size() + 500);
        for (const Number place : offering) {
            const Cost move = moves[place];
            if (move >= never) continue;
            State next = here;
            std::size_t count = done;
            Number last = 0;
            for (bool more = true; more;) {
                more = false;
                for (const Number t : atPlace[place]) {
                    if (next.done.has(t) || !before[t].within(next.done)) continue;
                    next.done.add(t);
                    next.inversions += next.done.missingBelow(t);
                    for (std::size_t r = 0; r < relaxations.size(); ++r)
                        next.left[r] -= relaxations[r]->price(t);
                    for (std::size_t p = 0; p < some.size(); ++p)
                        next.ofPart[p] |= some[p]->bit(t);
                    last = t;
                    ++count;
                    more = true;
                }
            }
            if (count == done) continue;
            next.cost += move;
            next.least = here.least;
            for (std::size_t r = 0; r < relaxations.size(); ++r) {
                const Relaxation& relaxation = *relaxations[r];
                const Cost rest = relaxation.rest(count, relaxation.nodeOf(last, place));
                next.least =
                    rest >= never ? never : std::max(next.least, next.cost * parts + rest + next.left[r]);
            }
            for (std::size_t p = 0; p < some.size(); ++p) {
                const Cost rest = some[p]->rest(next.ofPart[p], place);
                next.least = rest >= never ? never : std::max(next.least, (next.cost + rest) * parts);
            }
            if (next.least >= never || tooDear(next.least, next.inversions)) continue;
            next.from = from;
            next.place = place;
            put(next, count);
        }
    }

    void put(const State& next, std::size_t count) {
        if (used * 2 > slots.size()) grow();
        std::size_t slot = slotOf(next);
        for (; slots[slot] != empty; slot = (slot + 1) & (slots.size() - 1)) {
            State& known = states[slots[slot]];
            if (known.place != next.place || !(known.done == next.done)) continue;
            const Cost one = weight(next.cost, next.inversions);
            const Cost other = weight(known.cost, known.inversions);
            const Cost least = std::max(known.least - known.cost * parts, next.least - next.cost * parts);
            if (one < other || (one == other && next.inversions < known.inversions)) known = next;
            known.least = std::max(known.least, known.cost * parts + least);
            if (count == problem.tasks.size()) finish(slots[slot]);
            return;
        }
        slots[slot] = static_cast<std::uint32_t>(states.size());
        ++used;
        layers[count].push_back(slots[slot]);
        states.push_back(next);
        if (count == problem.tasks.size()) finish(slots[slot]);
    }

    void finish(std::uint32_t last) {
        const State& end = states[last];
        const Cost home = problem.home[end.place];
        if (home >= never) return;
        const Cost cost = end.cost + home;
        if (tooDear(cost * parts, end.inversions)) return;
        const Cost weighs = weight(cost, end.inversions);
        if (found.walk &&
            (weighs > bestWeighs || (weighs == bestWeighs && end.inversions >= found.inversions)))
            return;
        bestWeighs = weighs;
        found.cost = cost;
        found.inversions = end.inversions;
        Walk walk;
        for (std::uint32_t s = last; states[s].from != empty; s = states[s].from)
            walk.push_back(states[s].place);
        std::reverse(walk.begin(), walk.end());
        found.walk = std::move(walk);
        if (limits.perInversion == 0) {
            limits.better = cost;
            limits.fewer = limits.fewer == 0 ? 0 : end.inversions;
        }
    }

    [[nodiscard]] std::size_t slotOf(const State& state) const {
        return (state.done.hash() ^ (state.place * 0x9e3779b97f4a7c15U)) & (slots.size() - 1);
    }

    void grow() {
        slots.assign(slots.size() * 2, empty);
        fill(0);
    }
    void rehash(std::size_t firstLayer) {
        std::fill(slots.begin(), slots.end(), empty);
        fill(firstLayer);
    }
    void fill(std::size_t firstLayer) {
        used = 0;
        for (std::size_t done = firstLayer; done < layers.size(); ++done) {
            for (const std::uint32_t s : layers[done]) {
                std::size_t slot = slotOf(states[s]);
                while (slots[slot] != empty)
                    slot = (slot + 1) & (slots.size() - 1);
                slots[slot] = s;
                ++used;
            }
        }
    }

    const Problem& problem;
    const std::vector<const Relaxation*>& relaxations;
    const std::vector<const Part*>& some;
    Limits limits;
    Work& work;
    std::vector<Set> before;
    std::vector<Set> gates;
    std::vector<Numbers> atPlace;
    Numbers offering;
    std::vector<State> states;
    std::vector<std::vector<std::uint32_t>> layers;
    std::vector<std::uint32_t> slots;
    std::size_t used = 0;
    Cost leastLeft = never;
    Cost bestWeighs = 0;
    bool widthCut = false;
    Found found;
};

} // namespace

Found search(const Problem& problem, const Bounds& bounds, const Limits& limits, Work& work) {
    const auto run = [&]<std::size_t words>() { return Search<words>(problem, bounds, limits, work).run(); };
    const std::size_t words = (problem.tasks.size() + 63) / 64;
    if (words <= 1) return run.template operator()<1>();
    if (words <= 2) return run.template operator()<2>();
    if (words <= 4) return run.template operator()<4>();
    if (words <= 8) return run.template operator()<8>();
    return run.template operator()<16>();
}

} // namespace ambit::sop
