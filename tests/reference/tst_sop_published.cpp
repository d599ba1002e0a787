// The solver against published optima: TSPLIB 95 (Reinelt, Heidelberg), type SOP; sop/optima.csv lists the
// optimum or best known value of each instance (ft53.1 = 7531: an old list gives 7438).
#include "base/files.hpp"
#include "sop/solve.hpp"
#include "sop/tsplib.hpp"

#include <QTest>
#include <sstream>

using namespace ambit;

namespace {

constexpr std::uint64_t searching = 1'500'000'000; ///< steps of work
constexpr std::uint64_t proving = 40'000'000'000;

const std::string folder = AMBIT_ROOT "/tests/reference/sop/";

} // namespace

class TestSopPublished : public QObject {
    Q_OBJECT

private slots:
    void reached_data() {
        QTest::addColumn<std::string>("name");
        QTest::addColumn<int>("nodes");
        QTest::addColumn<qlonglong>("published");
        const auto csv = readFile(folder + "optima.csv");
        QVERIFY(csv);
        std::istringstream lines(*csv);
        std::string line;
        std::getline(lines, line);
        int rows = 0;
        while (std::getline(lines, line)) {
            std::istringstream fields(line);
            std::string name;
            std::string nodes;
            std::string published;
            std::getline(fields, name, ',');
            std::getline(fields, nodes, ',');
            std::getline(fields, published, ',');
            QTest::newRow(name.c_str()) << name << std::stoi(nodes) << qlonglong{std::stoll(published)};
            ++rows;
        }
        QCOMPARE(rows, 16);
    }
    void reached() {
        QFETCH(std::string, name);
        QFETCH(int, nodes);
        QFETCH(qlonglong, published);
        const auto text = readFile(folder + name + ".sop");
        QVERIFY(text);
        const auto problem = sop::readTsplib(*text);
        QVERIFY2(problem, problem ? "" : toText(problem.error()).c_str());
        QCOMPARE(static_cast<int>(problem->places()), nodes);
        const bool provable = nodes <= 27 || name == "ESC47";
        sop::Work work(provable ? proving : searching);
        const auto solution = sop::solve(*problem, work);
        QVERIFY2(solution, solution ? "" : toText(solution.error()).c_str());
        QVERIFY(solution->cost >= published); // or the list is wrong, or the solver
        QVERIFY(solution->bound <= published);
        QVERIFY(solution->cost <= published + published / 100);
        if (provable) {
            QCOMPARE(solution->cost, published);
            QVERIFY(solution->proven);
        }
        // The walk itself, added up from the file's matrix.
        qlonglong sum = 0;
        sop::Number at = problem->start;
        for (const sop::Number next : solution->walk) {
            sum += problem->moves[0][at][next];
            at = next;
        }
        QCOMPARE(sum, solution->cost);
        QCOMPARE(solution->walk.size() + 1, static_cast<std::size_t>(nodes));
    }
};

QTEST_APPLESS_MAIN(TestSopPublished)
#include "tst_sop_published.moc"
