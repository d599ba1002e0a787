// Lengths, margins, areas and angles in a plane, against the invented views they come from: values,
// intervals, and what must be refused. Seeded: the same views every time.
#include "measure/pose.hpp"
#include "measure/stripe.hpp"

#include "views.hpp"

#include <QTest>
#include <algorithm>

using namespace ambit;
using namespace ambit::measure;
using views::Random;
using views::View;

namespace {

Corners exactly(const Quad& quad, double deviation = 0.5) {
    Corners corners;
    for (std::size_t i = 0; i < 4; ++i)
        corners[i] = {quad[i], deviation};
    return corners;
}

Corners found(Random& random, const Quad& quad, double deviation) {
    Corners corners;
    for (std::size_t i = 0; i < 4; ++i)
        corners[i] = views::marked(random, quad[i], deviation);
    return corners;
}

/// Straight above: `scale` pixels a millimetre.
View above(double scale = 12) {
    View view;
    view.turned = {1, 0, 0, 0, 1, 0, 0, 0, 1};
    view.place = {0, 0, view.focal / scale};
    return view;
}

View tilted(double degrees, double scale = 12) {
    View view = above(scale);
    const double c = std::cos(degrees / 57.29577951308232);
    const double s = std::sin(degrees / 57.29577951308232);
    view.turned = {1, 0, 0, 0, c, -s, 0, s, c};
    return view;
}

Spot anySpot(Random& random, double within) {
    return {views::uniform(random, -within, within), views::uniform(random, -within, within)};
}

template<class T> std::string whyNot(const Result<T>& result) {
    return result ? "(not refused)" : result.error().what;
}

Mark at(const View& view, Spot spot, double deviation = 1) {
    return {view.see(spot), deviation};
}

} // namespace

class TestMeasure : public QObject {
    Q_OBJECT

private slots:
    void exactWithoutNoise() {
        Random random(1);
        int measured = 0;
        double worst = 0;
        for (int i = 0; i < 2000; ++i) {
            const View view = views::anyView(random, 40, views::uniform(random, 0.12, 0.35));
            const auto plane = Plane::of(exactly(view.card()), view.frame, 0, Lies::longSideFirst);
            QVERIFY2(plane, whyNot(plane).c_str());
            const Spot a = anySpot(random, 120);
            const Spot b = anySpot(random, 120);
            const double truth = std::hypot(a.x - b.x, a.y - b.y);
            const auto length = plane->distance(at(view, a), at(view, b));
            QVERIFY2(length, whyNot(length).c_str());
            ++measured;
            worst = std::max(worst, std::abs(length->value - truth));
        }
        QCOMPARE(measured, 2000);
        QVERIFY2(worst < 1e-8, std::to_string(worst).c_str());
    }

    /// A rectangle's area, its diagonal, and a margin, by hand.
    void byHand() {
        const View view = tilted(30);
        const auto plane = Plane::of(exactly(view.card()), view.frame);
        QVERIFY2(plane, whyNot(plane).c_str());
        QCOMPARE(plane->lies(), Lies::longSideFirst);
        QVERIFY(std::abs(plane->tilt() - 30) < 1);
        const std::vector<Mark> outline{at(view, {50, 0}), at(view, {80, 0}), at(view, {80, 40}),
                                        at(view, {50, 40})};
        QVERIFY(std::abs(plane->area(outline)->value - 1200) < 1e-6);
        QVERIFY(std::abs(plane->largestWidth(outline)->value - 50) < 1e-8);
        const auto margin = plane->margin(at(view, {60, 7}), at(view, {50, 0}), at(view, {90, 0}));
        QVERIFY(std::abs(margin->value - 7) < 1e-8);
        QVERIFY(margin->low < 7 && margin->high > 7 && margin->low > 6);
        const auto other = plane->margin(at(view, {60, -7}), at(view, {50, 0}), at(view, {90, 0}));
        QVERIFY(std::abs(other->value - 7) < 1e-8);
    }

    /// 10,000 views, corners and marks off by chance, cards of any size within the limits: 93 to 97 % of the
    /// intervals hold the truth; and so at the far end of what is measured.
    void intervalsHold_data() {
        QTest::addColumn<double>("nearest");
        QTest::addColumn<double>("furthest");
        QTest::newRow("beside the card") << 0.0 << 100.0;
        QTest::newRow("as far as it goes") << 170.0 << 205.0;
    }
    void intervalsHold() {
        QFETCH(double, nearest);
        QFETCH(double, furthest);
        Random random(2);
        std::array<int, 3> held{};
        int all = 0;
        for (int i = 0; i < 10'000; ++i) {
            const View view = views::anyView(random, 50, views::uniform(random, 0.12, 0.35));
            const double deviation = views::uniform(random, 0.3, 1.0);
            // A card that is longer than the nominal one: the plane's millimetres are too short for it.
            const double x = views::uniform(random, card::leastLength, card::mostLength) / 2;
            const double y = views::uniform(random, card::leastWidth, card::mostWidth) / 2;
            const Quad quad{view.see({-x, -y}), view.see({x, -y}), view.see({x, y}), view.see({-x, y})};
            const auto plane = Plane::of(found(random, quad, deviation), view.frame, 0, Lies::longSideFirst);
            if (!plane) continue;
            const double away = views::uniform(random, nearest, furthest);
            const double where = views::uniform(random, 0, 6.283185307179586);
            const Spot a{away * std::cos(where), away * std::sin(where)};
            const double beside = where + 40 / std::max(away, 30.0);
            const Spot b{(away + 2) * std::cos(beside) - 10, (away + 2) * std::sin(beside) - 10};
            const Spot c{a.x * 0.6 + 12, a.y * 0.6 - 9};
            const auto touch = [&](Spot spot) { return views::marked(random, view.see(spot), 2); };
            const auto length = plane->distance(touch(a), touch(b));
            const auto margin = plane->margin(touch(c), touch(a), touch(b));
            const auto area = plane->area({touch(a), touch(b), touch(c)});
            if (!length || !margin || !area) continue;
            ++all;
            const auto holds = [](const Estimate& e, double truth) {
                return e.low <= truth && truth <= e.high;
            };
            const double twice = std::abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
            const double truth = std::hypot(a.x - b.x, a.y - b.y);
            held[0] += holds(*length, truth) ? 1 : 0;
            held[1] += holds(*margin, twice / truth) ? 1 : 0;
            held[2] += holds(*area, twice / 2) ? 1 : 0;
        }
        QVERIFY2(all > 8000, std::to_string(all).c_str());
        for (const int count : held) {
            const double share = static_cast<double>(count) / all;
            QVERIFY2(share > 0.93 && share < 0.97, std::to_string(share).c_str());
        }
    }

    /// The uncertainty against the spread of 4,000 repetitions of the same view.
    void uncertaintyIsTheSpread() {
        Random random(3);
        for (int i = 0; i < 5; ++i) {
            const View view = views::anyView(random, 50, 0.2);
            const Spot a{60, 10};
            const Spot b{-30, 70};
            const Quad quad = view.card();
            const auto plane = Plane::of(exactly(quad, 0.7), view.frame, 0, Lies::longSideFirst);
            QVERIFY2(plane, whyNot(plane).c_str());
            const auto told = plane->distance(at(view, a), at(view, b));
            double sum = 0;
            double squares = 0;
            constexpr int times = 4000;
            for (int k = 0; k < times; ++k) {
                const double length = views::uniform(random, card::leastLength, card::mostLength);
                const double width = views::uniform(random, card::leastWidth, card::mostWidth);
                Quad moved;
                for (std::size_t c = 0; c < 4; ++c)
                    moved[c] = views::marked(random, quad[c], 0.7).at;
                const auto map = Homography::of(moved, length, width);
                const auto p = map.toPlane(views::marked(random, view.see(a), 1).at);
                const auto q = map.toPlane(views::marked(random, view.see(b), 1).at);
                const double d = std::hypot(p->x - q->x, p->y - q->y) - told->value;
                sum += d;
                squares += d * d;
            }
            const double spread = std::sqrt(squares / times - (sum / times) * (sum / times));
            // The spread of 4,000 is itself known to 1.1 %.
            QVERIFY2(std::abs(spread / told->uncertainty - 1) < 0.05,
                     (std::to_string(spread) + " " + std::to_string(told->uncertainty)).c_str());
        }
    }

    /// Never the wrong way round: told right, or refused.
    void whichWayItLies() {
        Random random(4);
        int told = 0;
        int wrong = 0;
        int straight = 0;
        for (int i = 0; i < 4000; ++i) {
            const View view =
                views::anyView(random, i % 2 == 0 ? 20 : 55, views::uniform(random, 0.12, 0.35));
            Quad quad = view.card();
            const bool turned = i % 4 < 2;
            if (turned) std::rotate(quad.begin(), quad.begin() + 1, quad.end());
            const auto plane = Plane::of(found(random, quad, 0.5), view.frame);
            if (!plane) continue;
            ++told;
            if (i % 2 == 0) ++straight;
            if (plane->lies() != (turned ? Lies::shortSideFirst : Lies::longSideFirst)) ++wrong;
        }
        QVERIFY2(wrong <= told / 500, std::to_string(wrong).c_str());
        QVERIFY2(straight > 1960, std::to_string(straight).c_str());
        QVERIFY2(told > 3000, std::to_string(told).c_str());
    }

    /// The quick look throws no card away, and what is far from a card's ratio it does.
    void quickLook() {
        Random random(11);
        for (int i = 0; i < 200; ++i) {
            const auto view = views::anyView(random, 55, views::uniform(random, 0.12, 0.35));
            QVERIFY(mayBeCard(view.card(), view.frame, 3, 12));
            const auto flat = views::anyView(random, 20, 0.3);
            const Quad strip{flat.see({-43, -7}), flat.see({43, -7}), flat.see({43, 7}), flat.see({-43, 7})};
            QVERIFY(!mayBeCard(strip, view.frame, 1, 12));
        }
    }

    void refusals() {
        const View view = above();
        Corners corners = exactly(view.card());
        QVERIFY(Plane::of(corners, view.frame));
        std::swap(corners[1], corners[2]);
        QVERIFY(whyNot(Plane::of(corners, view.frame)).find("go round") != std::string::npos);
        QCOMPARE(whyNot(Plane::of(exactly(above(1).card()), view.frame)),
                 "The card is too small in the picture.");
        QCOMPARE(whyNot(Plane::of(exactly(tilted(63).card()), view.frame, 0, Lies::longSideFirst)),
                 "The camera looks at the card too flat.");
        QVERIFY(Plane::of(exactly(tilted(57).card()), view.frame, 0, Lies::longSideFirst));
        QCOMPARE(whyNot(Plane::of(exactly(view.card()), view.frame, 14)), "The picture is blurred.");
        QVERIFY(Plane::of(exactly(view.card()), view.frame, 5));
        // A square is no card, whichever way round.
        const Quad square{Pixel{1000, 1000}, Pixel{1600, 1000}, Pixel{1600, 1600}, Pixel{1000, 1600}};
        QCOMPARE(whyNot(Plane::of(exactly(square), view.frame, 0, Lies::longSideFirst)),
                 "These four corners are not those of a card of this size.");

        const auto plane = Plane::of(exactly(view.card()), view.frame);
        QVERIFY2(plane, whyNot(plane).c_str());
        const Mark here = at(view, {0, 0});
        QCOMPARE(whyNot(plane->distance(here, at(view, {220, 0}))),
                 "A mark is too far from the card to be measured.");
        QVERIFY(plane->distance(here, at(view, {210, 0})));
        QCOMPARE(whyNot(plane->distance(here, here)), "Two marks are in the same place.");
        QCOMPARE(whyNot(plane->area({here, at(view, {10, 0})})), "An outline needs three marks or more.");
        QCOMPARE(whyNot(plane->area({here, at(view, {10, 10}), at(view, {10, 0}), at(view, {0, 10})})),
                 "The outline crosses itself.");
        QCOMPARE(whyNot(plane->distance(here, {{std::nan(""), 0}, 1})), "A mark's place is no number.");
    }

    void aCardThatIsntFlatWithThePart() {
        const View view = above();
        const auto plane = Plane::of(exactly(view.card()), view.frame);
        QVERIFY2(plane, whyNot(plane).c_str());
        const Mark a = at(view, {-40, 60});
        const Mark b = at(view, {60, 60});
        QVERIFY(plane->agreesWith({100, 0.1}, a, b));
        QCOMPARE(
            whyNot(plane->agreesWith({95, 0.1}, a, b)),
            "The second length measures 100.0 mm and should be 95.0 mm: the card isn't flat with the part.");
    }

    void slipOfAStripe_data() {
        QTest::addColumn<double>("angle");
        for (const double angle : {0.0, 5.0, -12.0, 90.0, 179.9})
            QTest::addRow("%g", angle) << angle;
    }
    void slipOfAStripe() {
        QFETCH(double, angle);
        const View view = tilted(35);
        const auto plane = Plane::of(exactly(view.card()), view.frame);
        QVERIFY2(plane, whyNot(plane).c_str());
        const double turned = (20 + angle) / 57.29577951308232;
        const double along = 20 / 57.29577951308232;
        const Spot joint{50, 30};
        // The bolt's half lies at 20 degrees, the part's so much further clockwise.
        const Spot before{joint.x - 8 * std::cos(along), joint.y - 8 * std::sin(along)};
        const Spot after{joint.x + 8 * std::cos(turned), joint.y + 8 * std::sin(turned)};
        const auto seen = slip(*plane, {at(view, before), at(view, joint), at(view, joint), at(view, after)});
        QVERIFY2(seen, whyNot(seen).c_str());
        QVERIFY2(std::abs(seen->angle.value - angle) < 1e-7, std::to_string(seen->angle.value).c_str());
        QVERIFY(std::abs(seen->offset.value) < 1e-8);
        QVERIFY(seen->angle.uncertainty > 0.1 && seen->angle.uncertainty < 3);
    }

    void offsetOfAStripe() {
        const View view = tilted(35);
        const auto plane = Plane::of(exactly(view.card()), view.frame);
        QVERIFY2(plane, whyNot(plane).c_str());
        // Along x; the part's half lies 1.5 mm further down, to the right of who looks along.
        const auto seen = slip(
            *plane, {at(view, {40, 30}), at(view, {50, 30}), at(view, {50, 31.5}), at(view, {60, 31.5})});
        QVERIFY(std::abs(seen->offset.value - 1.5) < 1e-8);
        QVERIFY(std::abs(seen->angle.value) < 1e-7);
    }

    /// Without a card: the interval holds the true angle from wherever the camera looks within its tilt.
    void slipWithoutACard() {
        Random random(5);
        int held = 0;
        constexpr int all = 2000;
        for (int i = 0; i < all; ++i) {
            const double angle = views::uniform(random, -30, 30) / 57.29577951308232;
            const double c = std::cos(views::uniform(random, 0, 25) / 57.29577951308232);
            const double axis = views::uniform(random, 0, 3.14159);
            const auto seen = [&](Spot s) {
                const double x = std::cos(axis) * s.x + std::sin(axis) * s.y;
                const double y = c * (std::cos(axis) * s.y - std::sin(axis) * s.x);
                return views::marked(
                    random,
                    {std::cos(axis) * x - std::sin(axis) * y, std::sin(axis) * x + std::cos(axis) * y}, 1);
            };
            const auto told = slipAngle({seen({-80, 0}), seen({0, 0}), seen({0, 0}),
                                         seen({80 * std::cos(angle), 80 * std::sin(angle)})},
                                        25);
            QVERIFY(told);
            const double truth = angle * 57.29577951308232;
            if (told->low <= truth && truth <= told->high) ++held;
        }
        QVERIFY2(held >= all * 95 / 100, std::to_string(held).c_str());
        const Stripe stripe{{{0, 0}, 1}, {{10, 0}, 1}, {{10, 0}, 1}, {{20, 1}, 1}};
        QVERIFY(!slipAngle(stripe, 31));
        QVERIFY(!slipAngle({{{0, 0}, 1}, {{0, 0}, 1}, {{10, 0}, 1}, {{20, 1}, 1}}, 10));
    }
};

QTEST_APPLESS_MAIN(TestMeasure)
#include "tst_measure.moc"
