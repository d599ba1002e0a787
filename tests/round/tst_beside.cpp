// Two rounds side by side, and Cohen's kappa against published tables and another way to its error.
#include "round/beside.hpp"
#include "rounds.hpp"

#include <QTest>
#include <cmath>

using namespace ambit;
using namespace ambit::round;
using test::finding;
using test::notInspected;
using test::Round;
using test::sound;

namespace {

using Shares = std::vector<std::vector<double>>;

double kappaOf(const Shares& shares) {
    double observed = 0;
    double chance = 0;
    for (std::size_t i = 0; i < shares.size(); ++i) {
        observed += shares[i][i];
        double row = 0;
        double column = 0;
        for (std::size_t k = 0; k < shares.size(); ++k) {
            row += shares[i][k];
            column += shares[k][i];
        }
        chance += row * column;
    }
    return (observed - chance) / (1 - chance);
}

/// The same error by the delta method: how kappa moves with each share, by small steps, and the shares'
/// multinomial spread. Knows none of the published formula.
double errorBySteps(const Contingency& table) {
    double n = 0;
    for (const auto& row : table)
        for (const auto count : row)
            n += static_cast<double>(count);
    Shares shares(table.size(), std::vector<double>(table.size()));
    for (std::size_t i = 0; i < table.size(); ++i)
        for (std::size_t k = 0; k < table.size(); ++k)
            shares[i][k] = static_cast<double>(table[i][k]) / n;
    constexpr double step = 1e-5;
    double mean = 0;
    double squares = 0;
    for (std::size_t i = 0; i < table.size(); ++i)
        for (std::size_t k = 0; k < table.size(); ++k) {
            Shares up = shares;
            Shares down = shares;
            up[i][k] += step;
            down[i][k] -= step;
            const double slope = (kappaOf(up) - kappaOf(down)) / (2 * step);
            mean += shares[i][k] * slope;
            squares += shares[i][k] * slope * slope;
        }
    return std::sqrt((squares - mean * mean) / n);
}

} // namespace

class TestBeside : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { machine = test::machine(); }

    // --- kappa

    /// [[20,5],[10,15]] → 0.4
    void publishedTableOfTwentyFive() {
        const auto agreement = agreementOf({{20, 5}, {10, 15}});
        QVERIFY(agreement);
        QVERIFY(std::abs(agreement->kappa - 0.4) < 1e-12);
        QVERIFY(std::abs(agreement->observed - 0.7) < 1e-12);
        QVERIFY(std::abs(agreement->chance - 0.5) < 1e-12);
        QCOMPARE(agreement->count, 50);
        QCOMPARE(agreement->same, 35);
        // By hand: A 0.10972, B 0.10188, C 0.01.
        QVERIFY(std::abs(agreement->error - std::sqrt(0.2016) / (0.5 * std::sqrt(50.0))) < 1e-12);
        QVERIFY(std::abs(agreement->low - (0.4 - 1.959964 * agreement->error)) < 1e-6);
        QVERIFY(std::abs(agreement->high - (0.4 + 1.959964 * agreement->error)) < 1e-6);
    }

    /// [[25,35],[5,35]] → 7/27
    void publishedTableOfSixty() {
        const auto agreement = agreementOf({{25, 35}, {5, 35}});
        QVERIFY(agreement);
        QVERIFY(std::abs(agreement->kappa - 7.0 / 27.0) < 1e-12);
    }

    void theErrorIsWhatSmallStepsGive_data() {
        QTest::addColumn<QList<int>>("counts");
        QTest::newRow("0.4") << QList<int>{20, 5, 10, 15};
        QTest::newRow("7/27") << QList<int>{25, 35, 5, 35};
        QTest::newRow("below chance") << QList<int>{3, 17, 12, 4};
        QTest::newRow("three words") << QList<int>{61, 4, 2, 3, 11, 1, 0, 2, 9};
        QTest::newRow("a word that one never said") << QList<int>{40, 0, 3, 5, 0, 2, 1, 0, 7};
    }
    void theErrorIsWhatSmallStepsGive() {
        QFETCH(QList<int>, counts);
        const auto size =
            static_cast<std::size_t>(std::lround(std::sqrt(static_cast<double>(counts.size()))));
        Contingency table(size, std::vector<std::int64_t>(size));
        for (std::size_t i = 0; i < size * size; ++i)
            table[i / size][i % size] = counts[static_cast<qsizetype>(i)];
        const auto agreement = agreementOf(table);
        QVERIFY(agreement);
        QVERIFY2(std::abs(agreement->error - errorBySteps(table)) < 1e-6,
                 std::to_string(errorBySteps(table)).c_str());
        QVERIFY(agreement->low <= agreement->kappa && agreement->kappa <= agreement->high);
    }

    void allTheSameInTwoWords() {
        const auto agreement = agreementOf({{20, 0}, {0, 5}});
        QVERIFY(agreement);
        QCOMPARE(agreement->kappa, 1.0);
        QVERIFY(agreement->error < 1e-9);
        QVERIFY(agreement->high <= 1.0);
    }

    void theIntervalStaysWithinOne() {
        const auto agreement = agreementOf({{5, 0}, {1, 1}});
        QVERIFY(agreement);
        QCOMPARE(agreement->high, 1.0);
    }

    void undefinedItSaysWhy() {
        const auto same = agreementOf({{9, 0}, {0, 0}});
        QVERIFY(!same);
        QVERIFY(same.error().what.find("undefined") != std::string::npos);
        const auto none = agreementOf({{0, 0}, {0, 0}});
        QVERIFY(!none);
        QCOMPARE(none.error().code, ErrorCode::refused);
        QCOMPARE(agreementOf({{1, 2}, {3}}).error().code, ErrorCode::invalid);
        QCOMPARE(agreementOf({{1, -2}, {3, 4}}).error().code, ErrorCode::invalid);
        // One word by one, two by the other: chance agrees, but not in all.
        const auto half = agreementOf({{5, 4}, {0, 0}});
        QVERIFY(half);
        QCOMPARE(half->kappa, 0.0);
    }

    // --- rounds

    void whoSawWhat() {
        Round one = other("Robin Example", 0);
        one.toTheEnd();
        Round two = other("Ines Example", 1);
        two.until("oil");
        QVERIFY(two.act(finding("oil")));
        two.toTheEnd();
        QVERIFY(two.act(Reopened{"arc-clear", "Looked again."}));
        QVERIFY(two.act(notInspected("arc-clear")));
        const auto both = beside(walkedOf(one.events).value(), walkedOf(two.events).value());
        QVERIFY2(both, both ? "" : toText(both.error()).c_str());
        QCOMPARE(both->points.size(), machine.walk("daily")->points.size());
        QCOMPARE(both->countDiffering(), 2);
        QCOMPARE(both->countOnlyByOne(), 0);
        const auto& oil = at(*both, "oil");
        QVERIFY(oil.differs());
        QCOMPARE(oil.second->words, std::string("Cracked."));
        QCOMPARE(*oil.first->value, std::string("5"));
        QVERIFY(at(*both, "arc-clear").second->outcome == Outcome::notInspected);
        const auto points = static_cast<std::int64_t>(both->points.size());
        QCOMPARE(both->table[0][0], points - 2);
        QCOMPARE(both->table[0][1], 1);
        QCOMPARE(both->table[0][2], 1);
        QVERIFY(both->agreement);
        QCOMPARE(both->agreement->same, points - 2);
        QCOMPARE(both->agreement->kappa, 0.0); // the first said one word throughout
    }

    void anotherClassDiffersThoughTheOutcomeIsOne() {
        Round one = other("Robin Example", 0);
        one.until("arc-clear");
        QVERIFY(one.act(finding("arc-clear", Severity::assess)));
        Round two = other("Ines Example", 1);
        two.until("arc-clear");
        QVERIFY(two.act(finding("arc-clear", Severity::grounds)));
        const auto both = beside(walkedOf(one.events).value(), walkedOf(two.events).value());
        QVERIFY(both);
        QVERIFY(at(*both, "arc-clear").differs());
        QVERIFY(both->agreement);
        QCOMPARE(both->agreement->kappa, 1.0); // of outcomes
    }

    void whatIsToBeSettledAgainIsNotSettled() {
        Round one = other("Robin Example", 0);
        one.toTheEnd();
        Round two = other("Ines Example", 1);
        two.toTheEnd();
        using Kind = Statement::Kind;
        QVERIFY(two.act(test::ask(1, two.state.id, Kind::lookAgain, "oil", "")));
        QVERIFY(two.act(test::ask(2, two.state.id, Kind::lookAgain, "arc-clear", "")));
        QVERIFY(two.act(Declined{2, "Seen."}));
        QVERIFY(two.act(Reopened{"last-look", "Disturbed."}));
        const auto both = beside(walkedOf(one.events).value(), walkedOf(two.events).value());
        QVERIFY(both);
        QCOMPARE(both->countOnlyByOne(), 2);
        QVERIFY(!at(*both, "oil").second);
        QVERIFY(at(*both, "arc-clear").byBoth());
        QVERIFY(!at(*both, "last-look").second);
        QCOMPARE(both->table[0][0], static_cast<std::int64_t>(both->points.size()) - 2);
    }

    void whatDoesNotBelongTogetherIsRefused() {
        const Walked one = walkedOf(other("Robin Example", 0).events).value();
        const Walked two = walkedOf(other("Ines Example", 1).events).value();
        QVERIFY(beside(one, two));
        const auto refused = [&](const Walked& other) {
            const auto both = beside(one, other);
            return !both && both.error().code == ErrorCode::refused && !both.error().remedy.empty();
        };
        QVERIFY(refused(one));
        Walked elsewhere = two;
        elsewhere.opened.registration = "OX-ELSE";
        QVERIFY(refused(elsewhere));
        elsewhere = two;
        elsewhere.opened.walk = "short";
        QVERIFY(refused(elsewhere));
        elsewhere = two;
        elsewhere.opened.airframeSha256 = std::string(64, '0');
        QVERIFY(refused(elsewhere));
        QVERIFY(!walkedOf({}));
        QVERIFY(!walkedOf({{1, {}, Paused{}}}));
    }

    void itSaysWhoWasShownNothing() {
        Round one = other("Robin Example", 0);
        QVERIFY(!walkedOf(one.events)->alone);
        QVERIFY(one.act(Alone{}));
        QVERIFY(walkedOf(one.events)->alone);
    }

private:
    /// By somebody, some seconds later: another round.
    Round other(const std::string& name, int seconds) const {
        Round round(machine);
        Opened opened = test::opening(machine);
        opened.who.name = name;
        const Instant at{1750000000000 + std::int64_t{1000} * seconds};
        round.events = {{1, at, opened}};
        round.state = begin(machine, round.events.front()).value();
        return round;
    }
    static const PointBeside& at(const Beside& both, const std::string& point) {
        return *std::find_if(both.points.begin(), both.points.end(),
                             [&](const PointBeside& one) { return one.point == point; });
    }

    airframe::Airframe machine;
};

QTEST_APPLESS_MAIN(TestBeside)
#include "tst_beside.moc"
