#include "sop/solve.hpp"

#include "sop/ascent.hpp"
#include "sop/choose.hpp"
#include "sop/exchange.hpp"
#include "sop/rebuild.hpp"
#include "sop/search.hpp"

#include <algorithm>
#include <deque>

namespace ambit::sop {

namespace {

/// What the start itself offers is done before anything else; the rest is a problem of its own.
Problem withoutTheStart(const Problem& whole) {
    Problem rest = whole;
    std::fill(rest.home.begin(), rest.home.end(), 0); // one needn't be able to end there
    const auto first = walked(rest, {});
    rest.home = whole.home;
    if (!first || first->order.empty()) return rest;
    std::vector<bool> done(whole.tasks.size(), false);
    for (const Number t : first->order)
        done[t] = true;
    Numbers number(whole.tasks.size(), 0);
    rest.tasks.clear();
    for (Number t = 0; t < whole.tasks.size(); ++t) {
        if (done[t]) continue;
        number[t] = static_cast<Number>(rest.tasks.size());
        rest.tasks.push_back(whole.tasks[t]);
    }
    const auto renumber = [&](Numbers& tasks) {
        std::erase_if(tasks, [&](Number t) { return done[t]; });
        for (Number& t : tasks)
            t = number[t];
    };
    for (Task& task : rest.tasks)
        renumber(task.before);
    for (Numbers& gate : rest.gates)
        renumber(gate);
    return rest;
}

class Solving {
public:
    Solving(const Problem& whole, Work& its)
        : original(whole), problem(reduced(withoutTheStart(whole)).problem), before(allBefore(problem)),
          work(its) {
        relaxations.emplace_back(problem,
                                 Position{problem.start, std::vector<bool>(problem.tasks.size(), false), 0});
    }

    void take(const Walk& walk) {
        const auto done = walked(original, walk);
        if (!done || !done->whole) return;
        if (solution && (done->cost > solution->cost ||
                         (done->cost == solution->cost && done->inversions >= solution->inversions)))
            return;
        Solution better;
        if (solution) better = *solution;
        better.walk = walk;
        better.cost = done->cost;
        better.inversions = done->inversions;
        solution = better;
    }

    Result<Solution> run() {
        Relaxation& root = relaxations.front();
        if (root.impossible()) return fail(ErrorCode::notFound, "No walk does all tasks.");
        choose(std::min<std::uint64_t>(24'000'000, work.left() / 3));
        if (!proven()) {
            Work its(work, work.left() / 16);
            root.raise(root.bound() + root.bound() / 2 + 1, 30, its);
        }
        beam(4);
        if (!proven()) beam(24);
        // Pieces ever larger of each: a better walk, what can't be better, and looking.
        std::size_t width = 48;
        for (std::uint64_t piece = 20'000 * problem.tasks.size() + 1; !hopeless && !proven() && !work.over();
             piece *= 2) {
            if (solution) {
                improve(piece);
                ascend(piece);
                raiseAll(piece / 2);
                if (piece >= 2'000'000 && !proven()) choose(partTells() ? piece : piece / 16);
            }
            const std::uint64_t start = work.done();
            while (!hopeless && !proven() && !work.over() && work.done() - start < piece / 2) {
                beam(width);
                width *= 2;
            }
        }
        if (!solution)
            return fail(ErrorCode::notFound, hopeless ? "No walk does all tasks." : "No walk was found.");
        if (proven()) habit();
        return finished();
    }

    /// Beams that weigh an inversion ever less, until one keeps within the cost.
    Walk nearest(const Walk& known, Cost most) {
        const auto first = walked(original, known);
        if (!first || !first->whole) return known;
        Walk nearest = known;
        std::int64_t fewest = first->inversions;
        relaxations.front().raise(first->cost, 20, work);
        const Cost dearest = std::max<Cost>(most, 1) * parts;
        for (const Cost share : {1, 30, 300, 3000, 30000}) {
            Limits limits;
            limits.width = 40;
            limits.better = most;
            limits.fewer = std::numeric_limits<std::int64_t>::max();
            limits.perInversion = dearest / share;
            const Found found = look(limits, work);
            const auto after = found.walk ? walked(original, *found.walk) : first;
            if (!after || !after->whole || after->cost > most || after->inversions >= fewest) continue;
            fewest = after->inversions;
            nearest = *found.walk;
        }
        return nearest;
    }

private:
    [[nodiscard]] bool proven() const { return solution && bound >= solution->cost; }

    Solution finished() {
        Solution end = *solution;
        end.bound = std::min(bound, end.cost);
        end.proven = end.bound == end.cost;
        end.states = states;
        return end;
    }

    bool raise(Relaxation& relaxation, Cost enough, std::uint64_t piece) {
        Work its(work, piece);
        const Cost low = relaxation.bound();
        const std::uint64_t rounds = piece / (relaxation.roundWork() + 1);
        if (rounds < fewRounds) return true; // later, with more
        relaxation.raise(enough, static_cast<int>(std::min<std::uint64_t>(rounds, 400)), its);
        bound = std::max(bound, relaxations.front().bound());
        return relaxation.bound() > low + low / 500;
    }

    void raiseAll(std::uint64_t piece) {
        if (rising) rising = raise(relaxations.front(), solution->cost, piece);
        if (piece >= 2'000'000) raiseOnTheWay(piece);
    }

    /// Prices made for the middle of the best walk bound better there.
    void raiseOnTheWay(std::uint64_t piece) {
        if ((onTheWay == solution->walk && piece < 4 * raisedWith) || problem.tasks.size() < 12) return;
        onTheWay = solution->walk;
        raisedWith = piece;
        while (relaxations.size() > 1)
            relaxations.pop_back();
        for (std::size_t quarter = 1; quarter < mostRelaxations; ++quarter) {
            const auto at = static_cast<std::ptrdiff_t>(onTheWay.size() * quarter / mostRelaxations);
            const Walk begun(onTheWay.begin(), onTheWay.begin() + at);
            Position position{begun.empty() ? problem.start : begun.back(),
                              std::vector<bool>(problem.tasks.size(), false), 0};
            const auto done = walkedTo(begun);
            for (const Number t : done.order)
                position.settled[t] = true;
            position.count = done.order.size();
            relaxations.emplace_back(problem, std::move(position));
            raise(relaxations.back(), std::max<Cost>(1, solution->cost - done.cost), piece / mostRelaxations);
        }
    }

    [[nodiscard]] Walked walkedTo(const Walk& begun) const {
        Problem open = problem;
        for (Cost& home : open.home)
            home = 0;
        const auto done = walked(open, begun);
        return done ? *done : Walked{};
    }

    /// Each way of finding better walks as long as it does.
    void improve(std::uint64_t piece) {
        ++seed;
        for (auto [search, idle] :
             {std::pair(&exchanged, &exchangeIdle), std::pair(&rebuilt, &rebuildIdle)}) {
            const Cost known = solution->cost;
            Work its(work, 2 * piece >> std::min(*idle, 4));
            take(search(problem, solution->walk, seed, its));
            *idle = solution->cost == known ? *idle + 1 : 0;
        }
    }

    void ascend(std::uint64_t piece) {
        if (proven() || !ascending) return;
        const bool first = !ascent;
        if (first) ascent.emplace(problem);
        Work its(work, first ? work.left() / 3 : piece);
        if (first) ascent->raise(solution->cost, 1, its);
        const Cost low = ascent->bound();
        const auto rounds = std::min<std::uint64_t>(its.left() / (ascent->roundWork() + 1), first ? 80 : 400);
        if (rounds < fewRounds && !first) return; // later, with more
        ascent->raise(solution->cost, static_cast<int>(rounds), its);
        bound = std::max(bound, std::min(ascent->bound(), solution->cost));
        ascending = first || ascent->bound() > low + low / 500;
    }

    void beam(std::size_t width) {
        Limits limits;
        limits.width = width;
        if (solution) limits.better = solution->cost;
        const Found found = look(limits, work);
        if (found.walk) take(*found.walk);
        if (!found.cut && !solution) hopeless = true;
        if (solution)
            bound = std::max({bound, std::min(found.bound, solution->cost), relaxations.front().bound()});
    }

    /// Sees a few tasks exactly.
    void choose(std::uint64_t most) {
        if (problem.places() > 150 || problem.tasks.empty()) return;
        if (!choice) choice.emplace(problem);
        Work its(work, most);
        choice->grow(solution ? solution->cost : never, its);
        bound = std::max(bound, choice->bound());
        if (!choice->walk().empty()) take(choice->walk());
    }

    /// Is seeing few tasks exactly worth more than seeing all of them at prices?
    [[nodiscard]] bool partTells() const { return choice && choice->bound() >= relaxations.front().bound(); }

    Found look(const Limits& limits, Work& its) {
        Bounds bounds;
        for (const Relaxation& one : relaxations)
            bounds.relaxations.push_back(&one);
        if (choice && choice->part() != nullptr) bounds.parts.push_back(choice->part());
        Found found = search(problem, bounds, limits, its);
        states += found.states;
        return found;
    }

    /// Among equals the one nearest the customary order.
    void habit() {
        Limits limits;
        limits.width = 20'000;
        limits.better = solution->cost;
        limits.fewer = std::numeric_limits<std::int64_t>::max();
        Work its(work, habitWork);
        const Found found = look(limits, its);
        if (found.walk) take(*found.walk);
    }

    static constexpr std::uint64_t fewRounds = 40; ///< with fewer, steps towards the best prices lead nowhere
    static constexpr std::uint64_t habitWork = 30'000'000;

    const Problem& original;
    Problem problem;
    Rows before;
    Work& work;
    std::deque<Relaxation> relaxations; ///< the first made for the start
    std::optional<Choice> choice;
    std::optional<Ascent> ascent;
    Walk onTheWay; ///< the walk the others were made for
    std::optional<Solution> solution;
    Cost bound = 0;
    std::uint64_t states = 0;
    std::uint64_t seed = 0;
    std::uint64_t raisedWith = 0;
    bool rising = true;   ///< the root's bound still
    int exchangeIdle = 0; ///< times in a row that it found nothing better
    int rebuildIdle = 0;
    bool ascending = true; ///< the ascent's bound still
    bool hopeless = false;
};

} // namespace

Result<Solution> solve(const Problem& problem, Work& work, const Walk& known) {
    if (auto valid = validate(problem); !valid) return tl::unexpected(valid.error());
    Solving solving(problem, work);
    solving.take(known);
    return solving.run();
}

Walk nearest(const Problem& problem, const Walk& known, Cost most, Work& work) {
    return Solving(problem, work).nearest(known, most);
}

} // namespace ambit::sop
