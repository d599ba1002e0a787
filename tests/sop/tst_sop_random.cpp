// The solver against trying every order, on random problems: several places a task, gates, moves that keep no
// triangle inequality, moves that don't exist.
#include "sop/ascent.hpp"
#include "sop/exchange.hpp"
#include "sop/rebuild.hpp"
#include "sop/solve.hpp"

#include <QTest>
#include <map>
#include <queue>
#include <random>

using namespace ambit::sop;

namespace {

class Maker {
public:
    explicit Maker(std::mt19937& generator) : random(generator) {}

    Problem make() {
        Problem problem;
        const std::size_t places = number(2, 7);
        const std::size_t tasks = number(1, 8);
        for (Number t = 0; t < tasks; ++t) {
            Task task;
            for (std::size_t i = number(1, 2); i > 0; --i)
                task.places.push_back(static_cast<Number>(number(0, places - 1)));
            for (Number earlier = 0; earlier < t; ++earlier)
                if (chance(25)) task.before.push_back(earlier);
            problem.tasks.push_back(task);
        }
        if (chance(50)) problem.gates.push_back({static_cast<Number>(number(0, tasks - 1))});
        for (std::size_t p = 0; p < places; ++p)
            problem.home.push_back(chance(90) ? static_cast<Cost>(number(0, 9)) : never);
        problem.moves.emplace_back(places, std::vector<Cost>(places, never));
        for (auto& row : problem.moves[0])
            for (Cost& cost : row)
                if (chance(90)) cost = static_cast<Cost>(number(0, 20));
        if (!problem.gates.empty()) {
            problem.moves.push_back(problem.moves[0]);
            for (auto& row : problem.moves[1])
                for (Cost& cost : row)
                    cost = chance(70) ? cost : std::min(cost, static_cast<Cost>(number(0, 20)));
        }
        problem.start = static_cast<Number>(number(0, places - 1));
        return problem;
    }

private:
    std::size_t number(std::size_t low, std::size_t high) { return low + random() % (high - low + 1); }
    bool chance(std::size_t percent) { return number(1, 100) <= percent; }
    std::mt19937& random;
};

/// Every walk that does something at each place it comes to, cheapest first (uniform-cost search without any
/// bound).
Cost exhaustive(const Problem& problem) {
    using State = std::pair<Number, unsigned>;
    std::map<State, Cost> least;
    std::priority_queue<std::pair<Cost, State>, std::vector<std::pair<Cost, State>>, std::greater<>> queue;
    const auto all = (1U << problem.tasks.size()) - 1;
    const auto arrive = [&](Number place, unsigned done) {
        for (bool more = true; more;) {
            more = false;
            for (std::size_t t = 0; t < problem.tasks.size(); ++t) {
                const Task& task = problem.tasks[t];
                const bool here = std::count(task.places.begin(), task.places.end(), place) > 0;
                const bool ready = std::all_of(task.before.begin(), task.before.end(),
                                               [&](Number b) { return (done >> b & 1U) != 0; });
                if ((done >> t & 1U) != 0 || !here || !ready) continue;
                done |= 1U << t;
                more = true;
            }
        }
        return done;
    };
    queue.emplace(0, State{problem.start, arrive(problem.start, 0)});
    Cost best = never;
    while (!queue.empty()) {
        const Cost cost = queue.top().first;
        const State state = queue.top().second;
        queue.pop();
        const Number place = state.first;
        const unsigned done = state.second;
        if (const auto known = least.find(state); known != least.end() && known->second <= cost) continue;
        least[state] = cost;
        if (done == all)
            best = std::min(best, problem.home[place] >= never ? never : cost + problem.home[place]);
        std::size_t open = 0;
        for (std::size_t g = 0; g < problem.gates.size(); ++g)
            if (std::all_of(problem.gates[g].begin(), problem.gates[g].end(),
                            [&](Number t) { return (done >> t & 1U) != 0; }))
                open |= std::size_t{1} << g;
        for (Number to = 0; to < problem.places(); ++to) {
            const Cost move = problem.moves[open][place][to];
            const unsigned after = arrive(to, done);
            if (move < never && after != done) queue.emplace(cost + move, State{to, after});
        }
    }
    return best;
}

} // namespace

class TestSopRandom : public QObject {
    Q_OBJECT

private slots:
    void agreesWithTryingEverything() {
        std::mt19937 random(7);
        int without = 0;
        for (int i = 0; i < 3000; ++i) {
            const Problem problem = Maker(random).make();
            const Cost best = exhaustive(problem);
            Work work(200'000'000);
            const auto solution = solve(problem, work);
            if (best >= never) {
                ++without;
                QVERIFY2(!solution, qPrintable(QString("problem %1").arg(i)));
                continue;
            }
            QVERIFY2(solution, qPrintable(QString("problem %1").arg(i)));
            QVERIFY2(solution->cost == best && solution->bound == best && solution->proven,
                     qPrintable(QString("problem %1: %2 for %3, bound %4")
                                    .arg(i)
                                    .arg(solution->cost)
                                    .arg(best)
                                    .arg(solution->bound)));
            const auto done = walked(problem, solution->walk);
            QVERIFY(done && done->whole);
            QCOMPARE(done->cost, solution->cost);
        }
        QVERIFY(without > 50 && without < 2000);
    }

    // With next to no work the bound still holds and the walk is no worse than the one given.
    void boundsHoldWhateverTheWork() {
        std::mt19937 random(8);
        for (int i = 0; i < 1000; ++i) {
            const Problem problem = Maker(random).make();
            const Cost best = exhaustive(problem);
            if (best >= never) continue;
            Work work(1 + random() % 20'000);
            const auto solution = solve(problem, work);
            if (!solution) continue; // none found in that little work
            QVERIFY(solution->cost >= best);
            QVERIFY2(solution->bound <= best, qPrintable(QString("problem %1").arg(i)));
            QCOMPARE(solution->proven, solution->bound == solution->cost);
        }
    }

    // Aimed too high, too: prices must not carry it above the best.
    void ascentStaysBelow() {
        std::mt19937 random(9);
        int tried = 0;
        int reached = 0;
        for (int i = 0; i < 3000; ++i) {
            const Problem problem = reduced(Maker(random).make()).problem;
            const bool startOffers =
                std::any_of(problem.tasks.begin(), problem.tasks.end(), [&](const Task& task) {
                    return std::count(task.places.begin(), task.places.end(), problem.start) > 0;
                });
            const Cost best = exhaustive(problem);
            if (startOffers || best >= never) continue;
            Work work(50'000'000);
            Ascent ascent(problem);
            ascent.raise(best * 2 + 3, 60, work);
            QVERIFY2(ascent.bound() <= best,
                     qPrintable(QString("problem %1: %2 for %3").arg(i).arg(ascent.bound()).arg(best)));
            ++tried;
            reached += ascent.bound() == best ? 1 : 0;
        }
        QVERIFY(tried > 300);
        QVERIFY2(reached * 2 > tried, qPrintable(QString("%1 of %2").arg(reached).arg(tried)));
    }

    // Searching near a walk never makes it worse, and mends most of what is wrong with it. Stops with nothing
    // to do don't stop it.
    void mendsWalks() {
        std::mt19937 random(10);
        int tried = 0;
        int byRebuilding = 0;
        for (int i = 0; i < 1000; ++i) {
            const Problem problem = reduced(Maker(random).make()).problem;
            const Cost best = exhaustive(problem);
            Work little(5'000);
            const auto first = solve(problem, little);
            if (best >= never || !first || first->walk.empty()) continue;
            Walk idle = first->walk; // there, and again there
            idle.insert(idle.begin(), idle.front());
            for (const auto& [search, mended] :
                 {std::pair(&exchanged, static_cast<int*>(nullptr)), std::pair(&rebuilt, &byRebuilding)}) {
                Work work(300'000);
                const Walk walk = search(problem, idle, static_cast<std::uint64_t>(i), work);
                const auto done = walked(problem, walk);
                QVERIFY2(done && done->whole, qPrintable(QString("problem %1").arg(i)));
                QVERIFY(done->cost <= first->cost);
                if (mended != nullptr && done->cost == best) ++*mended;
            }
            ++tried;
        }
        QVERIFY(tried > 300);
        QVERIFY2(byRebuilding * 10 > tried * 8, qPrintable(QString("%1 of %2").arg(byRebuilding).arg(tried)));
    }
};

QTEST_APPLESS_MAIN(TestSopRandom)
#include "tst_sop_random.moc"
