// Reading TSPLIB, reducing, walking through, and what the solver says of small problems.
#include "sop/part.hpp"
#include "sop/solve.hpp"
#include "sop/tsplib.hpp"

#include <QTest>

using namespace ambit;
using namespace ambit::sop;

namespace {

const std::string good = "NAME: three\nTYPE: SOP\nDIMENSION: 4\nEDGE_WEIGHT_TYPE: EXPLICIT\n"
                         "EDGE_WEIGHT_FORMAT: FULL_MATRIX\nEDGE_WEIGHT_SECTION\n4\n"
                         "0 3 1 9\n-1 0 7 2\n-1 1 0 5\n-1 -1 -1 0\nEOF\n";

std::string replaced(std::string text, const std::string& what, const std::string& with) {
    const auto at = text.find(what);
    Q_ASSERT(at != std::string::npos);
    return text.replace(at, what.size(), with);
}

/// Places in a row, a metre apart; one task at each but the first.
Problem row(std::size_t places) {
    Problem problem;
    problem.home.assign(places, 0);
    problem.moves.emplace_back(places, std::vector<Cost>(places, 0));
    for (std::size_t a = 0; a < places; ++a) {
        for (std::size_t b = 0; b < places; ++b)
            problem.moves[0][a][b] = static_cast<Cost>(a > b ? a - b : b - a);
        if (a > 0) problem.tasks.push_back({{static_cast<Number>(a)}, {}});
    }
    return problem;
}

Solution solved(const Problem& problem) {
    Work work(100'000'000);
    const auto solution = solve(problem, work);
    return solution ? *solution : Solution{};
}

} // namespace

class TestSop : public QObject {
    Q_OBJECT

private slots:
    void readsTsplib() {
        const auto problem = readTsplib(good);
        QVERIFY(problem);
        QCOMPARE(problem->tasks.size(), std::size_t{3});
        QCOMPARE(problem->moves[0][2][1], Cost{1});
        QCOMPARE(problem->moves[0][1][0], never);
        QCOMPARE(problem->tasks[2].before, (Numbers{0, 1}));
        const Solution solution = solved(*problem);
        QCOMPARE(solution.cost, Cost{4}); // 1 → 3 → 2 → 4: 1 + 1 + 2
        QVERIFY(solution.proven);
        QCOMPARE(tsplibOrder(solution.walk), (Numbers{1, 3, 2, 4}));
    }

    void refusesBadFiles_data() {
        QTest::addColumn<std::string>("text");
        QTest::addColumn<int>("code");
        QTest::addColumn<std::string>("where");
        const auto bad = [](const char* name, const std::string& text, ErrorCode code, const char* where) {
            QTest::newRow(name) << text << static_cast<int>(code) << std::string(where);
        };
        bad("empty", "", ErrorCode::syntax, "line 0");
        bad("other type", replaced(good, "SOP", "TSP"), ErrorCode::unsupported, "line 7");
        bad("other format", replaced(good, "FULL_MATRIX", "UPPER_ROW"), ErrorCode::unsupported, "line 7");
        bad("no dimension", replaced(good, "DIMENSION: 4", "DIMENSION: four"), ErrorCode::syntax, "line 7");
        bad("too large", replaced(good, "DIMENSION: 4", "DIMENSION: 99999"), ErrorCode::syntax, "line 7");
        bad("another dimension", replaced(good, "\n4\n", "\n5\n"), ErrorCode::syntax, "line 7");
        bad("cut short", good.substr(0, good.find("-1 -1")), ErrorCode::syntax, "line 11");
        bad("not a number", replaced(good, "7", "x"), ErrorCode::syntax, "line 9");
        bad("half a number", replaced(good, "7", "7.5"), ErrorCode::syntax, "line 9");
        bad("huge", replaced(good, "7", "9223372036854775807"), ErrorCode::invalid, "line 9");
        bad("negative", replaced(good, "7", "-2"), ErrorCode::invalid, "line 9");
        bad("more", replaced(good, "EOF", "5"), ErrorCode::syntax, "line 12");
        bad("before the first", replaced(good, "0 3 1 9", "0 -1 1 9"), ErrorCode::invalid, "node 2");
        bad("last isn't last", replaced(good, "-1 -1 -1 0", "-1 2 -1 0"), ErrorCode::invalid, "node 4");
        bad("a circle", replaced(replaced(good, "7", "-1"), "-1 1 0 5", "-1 -1 0 5"), ErrorCode::invalid, "");
    }
    void refusesBadFiles() {
        QFETCH(std::string, text);
        QFETCH(int, code);
        QFETCH(std::string, where);
        const auto problem = readTsplib(text);
        QVERIFY(!problem);
        QCOMPARE(static_cast<int>(problem.error().code), code);
        QCOMPARE(problem.error().where, where);
    }

    void refusesBadProblems() {
        Work work(1'000'000);
        Problem circle = row(4);
        circle.tasks[0].before = {1};
        circle.tasks[1].before = {2};
        circle.tasks[2].before = {0};
        QCOMPARE(solve(circle, work).error().code, ErrorCode::invalid);
        Problem nowhere = row(4);
        nowhere.tasks[0].places.clear();
        QCOMPARE(solve(nowhere, work).error().code, ErrorCode::invalid);
        Problem negative = row(4);
        negative.moves[0][1][2] = -1;
        QCOMPARE(solve(negative, work).error().code, ErrorCode::invalid);
        Problem gate = row(4);
        gate.gates.push_back({0}); // and no second table
        QCOMPARE(solve(gate, work).error().code, ErrorCode::invalid);
    }

    void saysThatThereIsNoWalk() {
        Problem island = row(4);
        for (std::size_t from = 0; from < 4; ++from)
            island.moves[0][from][3] = never;
        Work work(10'000'000);
        QCOMPARE(solve(island, work).error().code, ErrorCode::notFound);
    }

    void whatTheStartOffersIsDoneThere() {
        Problem problem = row(4);
        problem.tasks.push_back({{0}, {}});
        problem.tasks.push_back({{0}, {2}}); // and one for which one comes back
        const Solution solution = solved(problem);
        QCOMPARE(solution.cost, Cost{6});
        QVERIFY(solution.proven);
        const auto done = walked(problem, solution.walk);
        QVERIFY(done && done->whole);
        QCOMPARE(done->order.front(), Number{3});
    }

    void nothingToDo() {
        Problem problem = row(3);
        problem.tasks.clear();
        problem.home = {7, 0, 0};
        const Solution solution = solved(problem);
        QCOMPARE(solution.cost, Cost{7});
        QVERIFY(solution.proven && solution.walk.empty());
    }

    // A task that is done anyhow when another is drops out; one that somebody waits for doesn't.
    void reduces() {
        Problem problem = row(4);
        problem.tasks.push_back({{3}, {0}});    // 3: after the task at 1, done at 3
        problem.tasks.push_back({{3}, {0}});    // 4: the same
        problem.tasks.push_back({{2, 3}, {0}}); // 5: at 2 too
        problem.tasks.push_back({{1}, {4}});    // 6: waits for one of the two
        const Reduced small = reduced(problem);
        QCOMPARE(small.original, (Numbers{0, 1, 4, 6}));
        QCOMPARE(solved(problem).cost, solved(small.problem).cost);
    }

    // Place 2 is got to only once the task at 3 is done.
    void gatesOpen() {
        Problem problem = row(4);
        problem.moves.push_back(problem.moves[0]);
        problem.gates.push_back({2});
        for (std::size_t from = 0; from < 4; ++from)
            problem.moves[0][from][2] = never;
        const Solution solution = solved(problem);
        QCOMPARE(solution.walk, (Walk{1, 3, 2}));
        QCOMPARE(solution.cost, Cost{4});
        QVERIFY(solution.proven);
        QVERIFY(!walked(problem, {1, 2, 3}));
    }

    // From the middle of the row both ends are as near: the customary order decides.
    void amongEqualsTheCustomary() {
        Problem problem = row(8);
        problem.start = 4;
        std::erase_if(problem.tasks, [](const Task& task) { return task.places[0] == 4; });
        QCOMPARE(solved(problem).walk, (Walk{1, 2, 3, 5, 6, 7}));
        QCOMPARE(solved(problem).inversions, 0);
        std::reverse(problem.tasks.begin(), problem.tasks.end());
        QCOMPARE(solved(problem).walk, (Walk{7, 6, 5, 3, 2, 1}));
    }

    void neverWorseThanKnown() {
        const Problem problem = row(30);
        Work none(1);
        Walk known;
        for (Number place = 1; place < 30; ++place)
            known.push_back(place);
        const auto solution = solve(problem, none, known);
        QVERIFY(solution);
        QCOMPARE(solution->cost, Cost{29});
    }

    // A part's bound is exact for its tasks and rises with them.
    void partsBound() {
        const Problem problem = row(8);
        const auto moves = closed(problem.moves);
        Work work(100'000'000);
        Cost last = 0;
        Numbers chosen;
        for (Number task = 0; task < 7; ++task) {
            chosen.push_back(task);
            const Part part(problem, moves, chosen, work);
            QVERIFY(part.isWhole());
            QCOMPARE(part.rest(0, 0), static_cast<Cost>(task) + 1);
            QVERIFY(part.rest(0, 0) > last);
            last = part.rest(0, 0);
        }
    }

    void sameInputSamePlan() {
        const Problem problem = row(20);
        Work one(50'000'000);
        Work other(50'000'000);
        QCOMPARE(solve(problem, one)->walk, solve(problem, other)->walk);
    }
};

QTEST_APPLESS_MAIN(TestSop)
#include "tst_sop.moc"
