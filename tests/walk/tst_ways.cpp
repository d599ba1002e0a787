// Shortest ways round obstacles.
#include "airframe/read.hpp"
#include "airframe/shape.hpp"
#include "scenes.hpp"
#include "walk/ways.hpp"

#include <QElapsedTimer>
#include <QTest>
#include <cmath>

using namespace ambit;
using airframe::Outline;
using airframe::Place;
using walk::Ground;

namespace {

Outline box(double left, double bottom, double right, double top) {
    return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
}

airframe::Airframe with(const std::vector<Outline>& solids, const std::vector<Outline>& keepOuts = {}) {
    airframe::Airframe airframe;
    airframe.costs.clearanceMetres = 0;
    for (const Outline& outline : solids)
        airframe.parts.push_back({"", airframe::PartKind::body, outline, true, {}});
    for (const Outline& outline : keepOuts)
        airframe.keepOut.push_back({"", outline, ""});
    return airframe;
}

double length(const std::vector<Place>& places) {
    double sum = 0;
    for (std::size_t i = 1; i < places.size(); ++i)
        sum += std::hypot(places[i].x - places[i - 1].x, places[i].y - places[i - 1].y);
    return sum;
}

/// Well inside a convex outline given against the clock's turn?
bool deepIn(const Outline& outline, Place place) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Place a = outline[i];
        const Place b = outline[(i + 1) % outline.size()];
        const double side = (b.x - a.x) * (place.y - a.y) - (b.y - a.y) * (place.x - a.x);
        if (side < 1e-6 * std::hypot(b.x - a.x, b.y - a.y)) return false;
    }
    return true;
}

bool near(double a, double b) {
    return std::fabs(a - b) < 1e-9;
}

} // namespace

class TestWays : public QObject {
    Q_OBJECT

private slots:
    void straightWhereFree() {
        const Ground ground(with({box(5, 5, 6, 6)}));
        const auto way = ground.way({0, 0}, {3, 4});
        QVERIFY(way);
        QCOMPARE(way->places.size(), 2U);
        QVERIFY(near(way->metres, 5));
    }

    void roundACorner() {
        const Ground ground(with({box(-1, -1, 1, 1)}));
        const auto way = ground.way({-2, 0}, {0, 1.5});
        QVERIFY(way);
        QVERIFY((way->places == std::vector<Place>{{-2, 0}, {-1, 1}, {0, 1.5}}));
        QVERIFY(near(way->metres, std::sqrt(2.0) + std::hypot(1, 0.5)));
    }

    void keepOutCountsAsSolidDoesAndTheRestDoesNot() {
        airframe::Airframe airframe = with({}, {box(-1, -1, 1, 1)});
        QVERIFY(Ground(airframe).way({-2, 0}, {2, 0})->metres > 4.5);
        airframe.keepOut.clear();
        airframe.parts.push_back({"", airframe::PartKind::rotor, box(-1, -1, 1, 1), false, {}});
        QVERIFY(near(Ground(airframe).way({-2, 0}, {2, 0})->metres, 4));
    }

    void alongAnEdge() {
        const Ground ground(with({box(-1, -1, 1, 1)}));
        QVERIFY(near(ground.way({-2, 1}, {2, 1})->metres, 4));
        QVERIFY(near(ground.way({-1, 1}, {1, 1})->metres, 2));
    }

    void theClockwiseOutlineIsTheSame() {
        Outline outline = box(-1, -1, 1, 1);
        std::reverse(outline.begin(), outline.end());
        QVERIFY(near(Ground(with({outline})).way({-2, 0}, {0, 1.5})->metres,
                     std::sqrt(2.0) + std::hypot(1, 0.5)));
    }

    // Two parts that touch leave no way between them: a person is not a line.
    void noWayAlongASeam() {
        const Ground ground(with({box(-2, 0, 2, 1), box(-2, 1, 2, 2)}));
        QVERIFY(ground.way({-3, 1}, {3, 1})->metres > 6.1);
    }
    void noWayThroughCornersThatTouch() {
        const Ground ground(with({box(-1, -1, 0, 0), box(0, 0, 1, 1)}));
        QVERIFY(ground.way({-0.5, 0.5}, {0.5, -0.5})->metres > 2.1);
    }
    void noWayOverOverlappingParts() {
        const Ground ground(with({box(-3, -0.2, 3, 0.2), box(-0.2, -3, 0.2, 3)}));
        const auto way = ground.way({-1, 1}, {1, -1});
        QVERIFY(way && way->metres > 6);
    }

    void noWayIntoARing() {
        const Ground ground(
            with({box(-3, -3, 3, -2), box(-3, 2, 3, 3), box(-3, -3, -2, 3), box(2, -3, 3, 3)}));
        QVERIFY(!ground.way({0, 0}, {9, 9}));
        QVERIFY(ground.way({0, 0}, {1, 1}));
        QVERIFY(!ground.way({2.5, 2.5}, {9, 9})); // inside a wall
        QVERIFY(std::isinf(ground.metres({{0, 0}, {9, 9}})[0][1]));
    }

    void hollowShapes() {
        const Outline cup{{0, 0}, {4, 0}, {4, 4}, {3, 4}, {3, 1}, {1, 1}, {1, 4}, {0, 4}};
        const Ground ground(with({cup}));
        QVERIFY(near(ground.way({2, 2}, {2, 8})->metres, 6));
        const auto way = ground.way({2, 2}, {-1, 2});
        QVERIFY(way && near(way->metres, std::hypot(1, 2) + 1 + std::hypot(1, 2)));
    }

    void nothingIsInTheWay() {
        const Ground ground(std::vector<Outline>{});
        QVERIFY(near(ground.way({0, 0}, {3, 4})->metres, 5));
        QVERIFY(ground.obstacles().empty());
    }

    void obstaclesAreGrownAndUnited() {
        const Ground ground({box(0, 0, 2, 1), box(1, 0, 3, 1)}, 0.5);
        QCOMPARE(ground.obstacles().size(), 1U);
        QVERIFY(signedArea(ground.obstacles()[0]) < 3 + 0.5 * 8 + 3.1416 * 0.25);
        QVERIFY(signedArea(ground.obstacles()[0]) > 3 + 0.5 * 8 + 3.1416 * 0.25 - 0.01);
        const Ground ring(
            std::vector<Outline>{box(-3, -3, 3, -2), box(-3, 2, 3, 3), box(-3, -3, -2, 3), box(2, -3, 3, 3)});
        QCOMPARE(ring.obstacles().size(), 2U);
        const auto holes = std::count_if(ring.obstacles().begin(), ring.obstacles().end(),
                                         [](const Outline& o) { return signedArea(o) < 0; });
        QCOMPARE(holes, 1);
    }

    void aWayRoundACornerKeepsTheClearance() {
        const Ground ground({box(-1, -1, 1, 1)}, 0.5);
        const double tangent = std::sqrt(9.0 - 0.25); // from 3 m beside a corner to an arc of 0.5 m round it
        const double angle = 3.14159265358979 - 2 * std::acos(0.5 / 3);
        const double exact = 2 * tangent + 0.5 * angle;
        const double metres = ground.way({1, 4}, {4, 1})->metres; // straight touches (2.5, 2.5): free
        QVERIFY(near(metres, std::hypot(3, 3)));
        const auto way = ground.way({-2, 1}, {1, -2});
        QVERIFY(way && way->metres > std::hypot(3, 3));
        const Ground thin({{{0, 0}, {0, -9}, {0.000001, -9}, {0.000001, 0}}}, 0.5);
        const double over = thin.way({-3, 0}, {3, 0})->metres;
        QVERIFY2(over <= exact + 0.001 && over >= exact - 0.01, qPrintable(QString::number(over - exact)));
    }

    // Two walls 0.4 m apart let nobody through who needs 0.25 m on either side; 0.6 m apart they do.
    void aGapTooNarrowIsClosed() {
        const auto through = [](double gap) {
            return Ground({box(-5, -1, -gap / 2, 1), box(gap / 2, -1, 5, 1)}, 0.25)
                .way({0, -3}, {0, 3})
                ->metres;
        };
        QVERIFY(through(0.4) > 11);
        QVERIFY(near(through(0.6), 6));
        QVERIFY(near(through(0.502), 6));
    }

    void markedAreasAreWalkedRound() {
        airframe::Airframe airframe = with({box(-1, -1, 1, 1)});
        airframe.costs.clearanceMetres = 0.25;
        const double without = Ground(airframe).way({-5, 3}, {5, 3})->metres;
        QVERIFY(near(without, 10));
        const Ground ground(airframe, {box(-0.5, 2, 0.5, 4)});
        const auto way = ground.way({-5, 3}, {5, 3});
        QVERIFY(way && way->metres > 10.3);
        for (const Place place : inSteps(way->places))
            QVERIFY(metresToEdge(place, box(-0.5, 2, 0.5, 4)) > 0.249 - 1e-5);
    }

    void fromTheMarginOneStepsStraightOut() {
        const Ground ground({box(-1, -1, 1, 1)}, 0.25);
        const auto way = ground.way({0, 1.05}, {0, 3}); // 0.2 m out, then on
        QVERIFY(way && near(way->metres, 1.95));
        QVERIFY((way->places == std::vector<Place>{{0, 1.05}, {0, 1.25}, {0, 3}}));
        const auto round = ground.way({0, 1.05}, {1.05, 0}); // another edge: out, round the corner and in
        QVERIFY(round && round->metres > 0.4 + 1.0 + 1.0 + 0.3);
        QVERIFY(near(ground.metres({{0, 1.05}, {1.05, 0}})[0][1], round->metres));
    }

    void sideBySideOneStaysIn() {
        const Ground ground({box(-1, -1, 1, 1)}, 0.25);
        const auto way = ground.way({-0.5, 1.05}, {0.5, 1.15});
        QVERIFY(way && near(way->metres, 1.1));
        QVERIFY(std::fabs(length(way->places) - way->metres) < 1e-5);
        QVERIFY(near(ground.way({0.5, 1.15}, {-0.5, 1.05})->metres, 1.1));
        QVERIFY(near(ground.metres({{-0.5, 1.05}, {0.5, 1.15}})[1][0], 1.1));
        QCOMPARE(ground.way({0, 1.05}, {0, 1.05})->metres, 0.0);
        QCOMPARE(ground.metres({{0, 1.05}, {0, 1.05}})[0][1], 0.0);
        QCOMPARE(ground.way({-1.1, 1.1}, {-1.1, 1.1})->metres, 0.0); // at a corner, too
    }

    void insideAnOutlineThereIsNoWay() {
        const Ground ground({box(-1, -1, 1, 1)}, 0.25);
        QVERIFY(!ground.way({0, 0}, {3, 3}));
        QVERIFY(!ground.way({3, 3}, {0.99, 0}));
        QVERIFY(ground.way({3, 3}, {1, 0})); // at the very wall
        QVERIFY(std::isinf(ground.metres({{0, 0}, {3, 3}})[0][1]));
    }

    // In a slot that the margins close, the way out leads to the ground one can walk on.
    void outOfASlot() {
        const Outline cup{{0, 0}, {2.4, 0}, {2.4, 2}, {1.4, 2}, {1.4, 1}, {1, 1}, {1, 2}, {0, 2}};
        const Ground ground({cup}, 0.25);
        const auto way = ground.way({1.2, 1.2}, {1.2, 5});
        QVERIFY(way && std::fabs(way->metres - 3.8) < Ground::toleranceMetres);
    }

    void aPlaceWhereTwoTouchIsNoPlace() {
        const Ground ground({box(-1, -1, 0, 0), box(0, 0, 1, 1)});
        QVERIFY(!ground.way({0, 0}, {3, -3}));
        QVERIFY(ground.way({-1, 0}, {3, -3}));
    }

    void theDemoMachinesKeepEveryWay_data() {
        QTest::addColumn<QString>("file");
        QTest::newRow("helicopter") << "helicopter";
        QTest::newRow("aeroplane") << "aeroplane";
    }
    void theDemoMachinesKeepEveryWay() {
        QFETCH(QString, file);
        const auto read =
            airframe::readFrom((AMBIT_ROOT "/demo-aircraft/" + file + "/airframe.json").toStdString());
        QVERIFY(read);
        std::vector<Place> places;
        for (const auto& stand : read->stands)
            places.push_back(stand.at);
        for (const auto& walk : read->walks) {
            places.push_back(walk.start);
            places.push_back(walk.end);
        }
        std::vector<std::vector<double>> metres;
        qint64 least = 1'000'000'000;
        for (int i = 0; i < 10; ++i) {
            QElapsedTimer timer;
            timer.start();
            metres = Ground(*read).metres(places);
            least = std::min(least, timer.nsecsElapsed());
        }
        qInfo("%zu places: ground and all ways in %.2f ms", places.size(), static_cast<double>(least) / 1e6);
        for (std::size_t a = 0; a < places.size(); ++a)
            for (std::size_t b = 0; b < places.size(); ++b)
                QVERIFY2(std::isfinite(metres[a][b]), qPrintable(QString("%1 to %2").arg(a).arg(b)));
    }

    void manyCorners() {
        Scenes scenes(7);
        std::vector<Outline> outlines;
        std::size_t corners = 0;
        while (corners < 1000) {
            Outline outline = scenes.star();
            const Place middle = scenes.place(80);
            for (Place& corner : outline)
                corner = {corner.x + middle.x, corner.y + middle.y};
            corners += outline.size();
            outlines.push_back(std::move(outline));
        }
        QElapsedTimer timer;
        timer.start();
        const Ground ground(outlines);
        const auto way = ground.way({-99, -99}, {99, 99});
        qInfo("a way past %zu corners: %lld ms", corners, static_cast<long long>(timer.elapsed()));
        QVERIFY(way && way->metres < 290);
    }

    // What a shortest way must obey: taut, through nothing, the same both ways, and never longer than by some
    // third place. tst_ways_judge has the lengths themselves judged.
    void randomScenes() {
        Scenes scenes(20260620);
        int bends = 0;
        int margins = 0;
        for (int scene = 0; scene < 200; ++scene) {
            const double clearance = scene % 3 == 0 ? 0 : scene % 3 == 1 ? 0.25 : scenes.number(0.01, 1);
            const std::vector<Outline> solids = scenes.outlines();
            const Ground ground(solids, clearance);
            checkGrowth(ground, solids, clearance);
            std::vector<Place> places;
            while (places.size() < 6) {
                const Place place = scenes.placeBeside(solids);
                if (isInsideAny(solids, place)) continue;
                places.push_back(place);
                margins += leastMetres(solids, place) < clearance;
            }
            const auto metres = ground.metres(places);
            for (std::size_t a = 0; a < places.size(); ++a) {
                for (std::size_t b = 0; b < places.size(); ++b) {
                    bends += checkWay(ground, solids, clearance, places[a], places[b], metres[a][b]);
                    for (const auto& row : metres)
                        QVERIFY(metres[a][b] <= row[a] + row[b] + 1e-9);
                }
            }
        }
        QVERIFY(bends > 500);
        QVERIFY(margins > 100);
    }

private:
    static double signedArea(const Outline& outline) {
        double twice = 0;
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Place a = outline[i];
            const Place b = outline[(i + 1) % outline.size()];
            twice += a.x * b.y - a.y * b.x;
        }
        return twice / 2;
    }

    static std::vector<Place> inSteps(const std::vector<Place>& places, int count = 20) {
        std::vector<Place> steps;
        for (std::size_t i = 1; i < places.size(); ++i) {
            for (int k = 0; k <= count; ++k) {
                const double share = static_cast<double>(k) / count;
                steps.push_back({places[i - 1].x + (places[i].x - places[i - 1].x) * share,
                                 places[i - 1].y + (places[i].y - places[i - 1].y) * share});
            }
        }
        return steps;
    }

    static bool isInsideAny(const std::vector<Outline>& outlines, Place place) {
        return std::any_of(outlines.begin(), outlines.end(),
                           [&](const Outline& o) { return airframe::isInside(place, o); });
    }

    static double leastMetres(const std::vector<Outline>& outlines, Place place) {
        double least = 1e9;
        for (const Outline& outline : outlines)
            least = std::min(least, metresToEdge(place, outline));
        return least;
    }

    /// Every corner of the grown outlines is as far from the true ones as it should be, and none of them lies
    /// open.
    static void checkGrowth(const Ground& ground, const std::vector<Outline>& solids, double clearance) {
        constexpr double grid = 3e-6;
        for (const Outline& outline : ground.obstacles()) {
            for (const Place place : inSteps(outline, 4)) {
                const double metres = leastMetres(solids, place);
                QVERIFY(metres <= clearance + grid);
                QVERIFY(metres >= clearance - Ground::toleranceMetres - grid);
                QVERIFY(clearance < 0.002 || !isInsideAny(solids, place));
            }
        }
    }

    /// Gives the number of bends.
    static int checkWay(const Ground& ground, const std::vector<Outline>& solids, double clearance,
                        Place from, Place to, double metres) {
        const auto way = ground.way(from, to);
        const auto back = ground.way(to, from);
        if (!way || !back) {
            // Outlines that overlap can wall a place in; then every answer says so.
            [&] { QVERIFY(!way && !back && (std::isinf(metres) || from == to)); }();
            return 0;
        }
        const bool startsInside = leastMetres(solids, from) < clearance;
        const bool endsInside = leastMetres(solids, to) < clearance;
        [&] {
            QVERIFY(near(way->metres, metres));
            QVERIFY(near(way->metres, back->metres));
            QVERIFY(std::fabs(way->metres - length(way->places)) <
                    (startsInside && endsInside ? 1e-5 : 1e-9));
            QVERIFY(way->metres >= std::hypot(to.x - from.x, to.y - from.y) - 1e-9);
            QVERIFY(way->places.front() == from && way->places.back() == to);
            for (const Place at : inSteps(way->places))
                for (const Outline& outline : solids)
                    QVERIFY(!deepIn(outline, at));
            // Between the ends one keeps away; side by side in one margin one stays in it.
            auto open = way->places;
            if (startsInside) open.erase(open.begin());
            if (endsInside && !open.empty()) open.pop_back();
            if (startsInside && endsInside && open.size() < 2) return;
            for (const Place at : inSteps(open))
                QVERIFY(leastMetres(solids, at) > clearance - Ground::toleranceMetres - 1e-5);
        }();
        return static_cast<int>(way->places.size()) - 2;
    }
};

QTEST_APPLESS_MAIN(TestWays)
#include "tst_ways.moc"
