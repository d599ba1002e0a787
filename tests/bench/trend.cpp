// How long Theil and Sen's slope through 10,000 values takes, against listing all 50 million slopes.
#include "bench.hpp"

#include "judge/slopes.hpp"

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

} // namespace

bool trend() {
    const bool smooth = median("median slope, little noise", 10);
    return median("median slope, much noise", 2000) && smooth;
}

} // namespace ambit::bench
