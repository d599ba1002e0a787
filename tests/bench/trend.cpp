// How long Theil and Sen's slope through 10,000 values takes, against listing all 50 million slopes; and how
// long they take to draw.
#include "bench.hpp"

#include "judge/slopes.hpp"
#include "model/trend_chart.hpp"

#include <QImage>
#include <QPainter>
#include <random>

namespace ambit::bench {

namespace {

constexpr int count = 10'000;

/// Tenths of an hour and hundredths of a millimetre; `noise` in those.
std::vector<judge::GridPoint> worn(int noise) {
    std::mt19937_64 chance(1);
    std::vector<judge::GridPoint> points;
    for (std::int64_t i = 0; i < count; ++i) {
        const std::int64_t x = i * 7 + static_cast<std::int64_t>(chance() % 10);
        points.push_back(
            {x, 100'000 - x / 20 + static_cast<std::int64_t>(chance() % static_cast<unsigned>(noise))});
    }
    return points;
}

bool median(const char* what, int noise) {
    const auto points = worn(noise);
    std::vector<double> times;
    judge::Slope found;
    for (int run = 0; run < 9; ++run) {
        QElapsedTimer timer;
        timer.start();
        const judge::Slopes slopes(points);
        const std::uint64_t middle = (slopes.count() - 1) / 2;
        found = slopes.ranked(middle);
        if (slopes.count() % 2 == 0) found = slopes.next(middle, found);
        times.push_back(milliseconds(timer));
    }
    QElapsedTimer timer;
    timer.start();
    std::vector<double> all;
    all.reserve(std::size_t{count} * (count - 1) / 2);
    for (std::size_t i = 0; i < points.size(); ++i)
        for (std::size_t j = i + 1; j < points.size(); ++j)
            if (points[i].x != points[j].x)
                all.push_back(static_cast<double>(points[j].y - points[i].y) /
                              static_cast<double>(points[j].x - points[i].x));
    const auto middle = all.begin() + static_cast<std::ptrdiff_t>(all.size() / 2);
    std::nth_element(all.begin(), middle, all.end());
    const double listed = milliseconds(timer);
    const bool same = *middle == static_cast<double>(found.rise) / static_cast<double>(found.run);
    const QByteArray detail =
        "all listed: " + QByteArray::number(listed, 'f', 0) + " ms" + (same ? "" : ", ANOTHER SLOPE");
    return report(what, bench::median(times), "ms", 5, detail.constData()) && same;
}

/// As a screen draws them, with so many scattered over `noise` hundredths.
bool drawn(const char* what, std::size_t values, int noise) {
    round::Trended trended;
    for (const judge::GridPoint& point : worn(noise)) {
        if (trended.values.size() == values) break;
        trended.values.push_back({fixed(static_cast<double>(point.x) / 10, 1),
                                  fixed(static_cast<double>(point.y) / 100, 2), "0.05", false});
    }
    airframe::Limit limit;
    limit.min = Decimal::parse("950").value();
    QImage picture(800, 480, QImage::Format_ARGB32_Premultiplied);
    picture.fill(Qt::white);
    view::ChartLook look;
    look.across = QStringLiteral("Airframe time, h");
    look.up = QStringLiteral("Lining, mm");
    std::vector<double> times;
    for (int run = 0; run < 21; ++run) {
        QElapsedTimer timer;
        timer.start();
        QPainter painter(&picture);
        view::drawTrend(painter, picture.rect(), trended, limit, look);
        painter.end();
        times.push_back(milliseconds(timer));
    }
    return report(what, bench::median(times), "ms", 16, "800 × 480");
}

} // namespace

bool trend() {
    const bool quick = drawn("10,000 values drawn, little noise", count, 10) &
                       drawn("10,000 values drawn, much noise", count, 20000) &
                       drawn("400 values drawn", 400, 2000);
    const bool smooth = median("median slope, little noise", 10);
    return median("median slope, much noise", 2000) && smooth && quick;
}

} // namespace ambit::bench
