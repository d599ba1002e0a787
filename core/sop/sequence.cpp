#include "sop/sequence.hpp"

#include <algorithm>

namespace ambit::sop {

namespace {

/// Does at each place all that may be done there.
class Doing {
public:
    explicit Doing(const Problem& whole)
        : problem(whole), atPlace(whole.places()), done(whole.tasks.size(), false) {
        for (Number t = 0; t < problem.tasks.size(); ++t)
            for (const Number place : problem.tasks[t].places)
                atPlace[place].push_back(t);
    }

    [[nodiscard]] bool isDone(Number task) const { return done[task]; }

    void doAllAt(Number place) {
        for (bool more = true; more;) {
            more = false;
            for (const Number t : atPlace[place]) {
                const Numbers& before = problem.tasks[t].before;
                if (done[t] || !std::all_of(before.begin(), before.end(), [&](Number e) { return done[e]; }))
                    continue;
                done[t] = more = true;
                sequence.push_back({t, place});
            }
        }
    }

    Sequence sequence;

private:
    const Problem& problem;
    std::vector<Numbers> atPlace;
    std::vector<bool> done;
};

} // namespace

Sequence sequenceOf(const Problem& problem, const Walk& walk) {
    Doing doing(problem);
    doing.doAllAt(problem.start);
    for (const Number place : walk)
        doing.doAllAt(place);
    return doing.sequence.size() == problem.tasks.size() ? std::move(doing.sequence) : Sequence{};
}

Walk walkOf(const Problem& problem, const Sequence& sequence) {
    Doing doing(problem);
    doing.doAllAt(problem.start);
    Walk walk;
    for (const Stop& stop : sequence) {
        if (doing.isDone(stop.task)) continue;
        walk.push_back(stop.place);
        doing.doAllAt(stop.place);
    }
    return walk;
}

} // namespace ambit::sop
