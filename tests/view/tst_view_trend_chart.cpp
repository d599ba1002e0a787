// The chart of where a value is going: what of an event's figures is seen, and where.
#include "model/trend_chart.hpp"
#include "round/trended.hpp"

#include <QImage>
#include <QPainter>
#include <QtTest>

#include <limits>

using namespace ambit;

namespace {

constexpr int width = 400;
constexpr int height = 240;

airframe::Limit atMost(const char* max) {
    airframe::Limit limit;
    limit.quantity = "Clearance";
    limit.unit = "mm";
    limit.max = Decimal::parse(max).value();
    return limit;
}

round::Trended worn() {
    round::Trended trended;
    trended.over = "hours";
    trended.values = {{"100", "1.00", "0.04", false},
                      {"120", "1.12", "0.04", false},
                      {"140", "1.19", "0.04", false},
                      {"160", "1.32", "0.04", false},
                      {"180", "1.38", "0.04", false}};
    trended.line = {{"100", "1.01", "", false}, {"260", "1.78", "", false}};
    trended.band = {{"100", "0.9", "1.12"}, {"180", "1.28", "1.5"}, {"260", "1.62", "1.96"}};
    trended.earliest = "20";
    trended.best = "44";
    trended.latest = "70";
    return trended;
}

/// Colours that are nowhere mixed, so that each can be looked for.
view::ChartLook look() {
    view::ChartLook look;
    look.ground = Qt::white;
    look.ink = Qt::black;
    look.quiet = Qt::green;
    look.band = Qt::yellow;
    look.limit = Qt::red;
    look.across = QStringLiteral("Airframe time, h");
    look.up = QStringLiteral("Clearance, mm");
    return look;
}

QImage drawn(const round::Trended& trended, const airframe::Limit& limit, const view::ChartLook& how,
             const QRectF& box = {0, 0, width, height}) {
    QImage picture(width, height, QImage::Format_RGB32);
    picture.fill(how.ground);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    view::drawTrend(painter, box, trended, limit, how);
    return picture;
}

/// The rows and columns where a colour is, nearly pure.
QRect where(const QImage& picture, const QColor& color) {
    QRect found;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x) {
            const QColor here = picture.pixelColor(x, y);
            if (std::abs(here.red() - color.red()) + std::abs(here.green() - color.green()) +
                    std::abs(here.blue() - color.blue()) <
                60)
                found |= QRect(x, y, 1, 1);
        }
    return found;
}

int count(const QImage& picture, const QColor& color, const QRect& inside) {
    int pixels = 0;
    for (int y = inside.top(); y <= inside.bottom(); ++y)
        for (int x = inside.left(); x <= inside.right(); ++x)
            pixels += picture.pixelColor(x, y) == color ? 1 : 0;
    return pixels;
}

} // namespace

class TestTrendChart : public QObject {
    Q_OBJECT

private slots:
    void ticksAreRound_data() {
        QTest::addColumn<double>("from");
        QTest::addColumn<double>("to");
        QTest::addColumn<int>("most");
        QTest::addColumn<double>("step");
        QTest::addColumn<int>("decimals");
        QTest::addColumn<double>("first");
        QTest::addColumn<int>("count");
        QTest::newRow("ones") << 0.5 << 4.5 << 5 << 1.0 << 0 << 1.0 << 4;
        QTest::newRow("twos") << 0.0 << 9.9 << 5 << 2.0 << 0 << 0.0 << 5;
        QTest::newRow("fives") << 1203.0 << 1219.0 << 4 << 5.0 << 0 << 1205.0 << 3;
        QTest::newRow("tenths") << 1.97 << 2.44 << 5 << 0.1 << 1 << 2.0 << 5;
        QTest::newRow("hundredths") << 0.031 << 0.069 << 2 << 0.02 << 2 << 0.04 << 2;
        QTest::newRow("across zero") << -7.0 << 7.0 << 3 << 5.0 << 0 << -5.0 << 3;
        QTest::newRow("ends count") << 0.1 << 0.3 << 3 << 0.1 << 1 << 0.1 << 3;
        QTest::newRow("ten thousands") << 8000.0 << 71000.0 << 4 << 20000.0 << 0 << 20000.0 << 3;
    }
    void ticksAreRound() {
        QFETCH(double, from);
        QFETCH(double, to);
        QFETCH(int, most);
        const view::Ticks ticks = view::ticksOf(from, to, most);
        QTEST(ticks.step, "step");
        QTEST(ticks.decimals, "decimals");
        QTEST(static_cast<int>(ticks.at.size()), "count");
        QTEST(ticks.at.front(), "first");
    }
    void nothingToCount() {
        QVERIFY(view::ticksOf(2, 2, 5).at.empty());
        QVERIFY(view::ticksOf(0, std::numeric_limits<double>::quiet_NaN(), 5).at.empty());
    }

    void allIsThere() {
        const QImage picture = drawn(worn(), atMost("1.6"), look());
        for (const QColor& color : {look().ink, look().quiet, look().band, look().limit})
            QVERIFY(!where(picture, color).isEmpty());
        // The first value is a whole dot, the last one hollow.
        const QRect all = picture.rect();
        QVERIFY(count(picture, Qt::black, all) > 4 * 12);
        // The band lies above and below the line, and reaches as far to the right as the event tells.
        QVERIFY(where(picture, look().band).right() > 0.9 * width);
    }
    void withinItsBox() {
        const QRectF box(60, 40, 290, 170);
        const QImage picture = drawn(worn(), atMost("1.6"), look(), box);
        int outside = 0;
        for (int y = 0; y < picture.height(); ++y)
            for (int x = 0; x < picture.width(); ++x)
                outside += !box.contains(x, y) && picture.pixelColor(x, y) != look().ground ? 1 : 0;
        QCOMPARE(outside, 0);
        QVERIFY(!where(picture, look().limit).isEmpty());
    }
    void noRoomNoValues() {
        const QImage none = drawn({}, atMost("1.6"), look());
        const QImage small = drawn(worn(), atMost("1.6"), look(), {0, 0, 60, 30});
        for (const QImage& picture : {none, small})
            QCOMPARE(count(picture, look().ground, picture.rect()), width * height);
    }

    /// Only what the event tells: without it, the axis bears nothing, though line and band say it all.
    void crossingIsTold() {
        const int axis = 3 * height / 4;
        const QRect foot(0, axis, width, height - axis);
        round::Trended trended = worn();
        const int told = count(drawn(trended, atMost("1.6"), look()), look().limit, foot);
        trended.latest.clear();
        const int open = count(drawn(trended, atMost("1.6"), look()), look().limit, foot);
        trended.earliest.clear();
        trended.best.clear();
        QCOMPARE(count(drawn(trended, atMost("1.6"), look()), look().limit, foot), 0);
        QVERIFY(told > 60);
        QVERIFY(open > told); // to the right edge
    }
    void limitsOnTheirSide() {
        const QRect max = where(drawn(worn(), atMost("1.6"), look()), look().limit);
        airframe::Limit least;
        least.min = Decimal::parse("0.5").value();
        round::Trended trended = worn();
        trended.earliest.clear();
        const QRect min = where(drawn(trended, least, look()), look().limit);
        QVERIFY(max.top() < height / 4);
        QVERIFY(min.top() > height / 2);
    }
    void uncertaintyIsDrawn() {
        round::Trended trended = worn();
        trended.values[1].uncertainty = "0.3";
        const int wide = count(drawn(trended, atMost("1.6"), look()), Qt::black, {0, 0, 400, 240});
        trended.values[1].uncertainty.clear();
        const int without = count(drawn(trended, atMost("1.6"), look()), Qt::black, {0, 0, 400, 240});
        QVERIFY(wide > without);
    }
    void renewedIsMarked() {
        round::Trended trended = worn();
        const QImage before = drawn(trended, atMost("1.6"), look());
        trended.values[2].renewed = true;
        const QImage after = drawn(trended, atMost("1.6"), look());
        QRect changed;
        for (int y = 0; y < before.height(); ++y)
            for (int x = 0; x < before.width(); ++x)
                if (before.pixel(x, y) != after.pixel(x, y)) changed |= QRect(x, y, 1, 1);
        QVERIFY(changed.height() > height / 2);
    }

    /// One far value among thousands is still seen.
    void noValueIsLost() {
        round::Trended trended;
        for (int i = 0; i < 10000; ++i)
            trended.values.push_back({std::to_string(i), i == 5000 ? "9" : "1", "", false});
        const QImage picture = drawn(trended, atMost("10"), look());
        const QRect middle(190, 30, 60, 60);
        QVERIFY(count(picture, Qt::black, middle) > 0);
    }
};

QTEST_MAIN(TestTrendChart)
#include "tst_view_trend_chart.moc"
