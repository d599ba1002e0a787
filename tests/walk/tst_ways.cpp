// Shortest ways round obstacles.
#include "walk/ways.hpp"

#include <QTest>
#include <cmath>
#include <random>

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

    // No judge from outside here, but what a shortest way must obey: taut, through nothing, the same both
    // ways.
    void randomScenes() {
        std::mt19937 random(20260620);
        const auto number = [&](double low, double high) {
            return low +
                   (high - low) * static_cast<double>(random()) / static_cast<double>(std::mt19937::max());
        };
        int bends = 0;
        for (int scene = 0; scene < 200; ++scene) {
            std::vector<Outline> solids;
            for (int i = 0; i < 6; ++i) {
                const Place middle{number(-8, 8), number(-8, 8)};
                Outline outline;
                const double radius = number(0.3, 3);
                for (int corner = 0; corner < 5; ++corner) {
                    const double angle = 6.283185307 * (corner + number(0, 0.8)) / 5;
                    outline.push_back(
                        {middle.x + radius * std::cos(angle), middle.y + radius * std::sin(angle)});
                }
                solids.push_back(outline);
            }
            const Ground ground(with(solids));
            std::vector<Place> places;
            while (places.size() < 4) {
                const Place place{number(-9, 9), number(-9, 9)};
                if (std::none_of(solids.begin(), solids.end(),
                                 [&](const Outline& o) { return deepIn(o, place); }))
                    places.push_back(place);
            }
            const auto metres = ground.metres(places);
            for (std::size_t a = 0; a < places.size(); ++a)
                for (std::size_t b = 0; b < places.size(); ++b)
                    bends += checkWay(ground, solids, places[a], places[b], metres[a][b]);
        }
        QVERIFY(bends > 500);
    }

private:
    /// Gives the number of bends.
    static int checkWay(const Ground& ground, const std::vector<Outline>& solids, Place from, Place to,
                        double metres) {
        const auto way = ground.way(from, to);
        const auto back = ground.way(to, from);
        if (!way || !back) {
            // Parts that overlap can wall a place in; then every answer says so.
            [&] { QVERIFY(!way && !back && (std::isinf(metres) || from == to)); }();
            return 0;
        }
        [&] {
            QVERIFY(near(way->metres, metres));
            QVERIFY(near(way->metres, back->metres));
            QVERIFY(near(way->metres, length(way->places)));
            QVERIFY(way->metres >= std::hypot(to.x - from.x, to.y - from.y) - 1e-9);
            for (std::size_t i = 1; i < way->places.size(); ++i) {
                for (int k = 0; k <= 200; ++k) {
                    const double share = k / 200.0;
                    const Place a = way->places[i - 1];
                    const Place b = way->places[i];
                    const Place at{a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share};
                    for (const Outline& outline : solids)
                        QVERIFY(!deepIn(outline, at));
                }
            }
        }();
        return static_cast<int>(way->places.size()) - 2;
    }
};

QTEST_APPLESS_MAIN(TestWays)
#include "tst_ways.moc"
