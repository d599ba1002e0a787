// What the measurements share. Every figure is a ratio to something measured beside it in the same run, or an
// absolute with its limit.
#pragma once

#include <QDir>
#include <QElapsedTimer>
#include <QString>
#include <algorithm>
#include <cstdio>
#include <vector>

namespace ambit::bench {

/// The value below which a share of all lies; the list is not empty.
inline double quantile(std::vector<double> values, double share) {
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}
inline double median(const std::vector<double>& values) {
    return quantile(values, 0.5);
}

inline double milliseconds(const QElapsedTimer& timer) {
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

/// One line of the table; the limit is the issue's. Returns whether it holds.
inline bool report(const char* what, double value, const char* unit, double most, const char* detail) {
    const bool holds = value <= most;
    std::printf("%-34s %8.2f %-3s (at most %g) %s  %s\n", what, value, unit, most, holds ? "holds" : "MISSED",
                detail);
    std::fflush(stdout);
    return holds;
}

/// Folders of the source tree.
inline QString demoFolder() {
    return QStringLiteral(AMBIT_DEMO_AIRCRAFT);
}

[[nodiscard]] bool touch(const QString& workFolder);
[[nodiscard]] bool start(const QString& programFolder, const QString& workFolder);
[[nodiscard]] bool record(const QString& workFolder);
[[nodiscard]] bool plan();
/// The solver on TSPLIB's instances, so many seconds each.
[[nodiscard]] bool published(double seconds);
/// Theil and Sen's line through 10,000 values, beside all their slopes listed; their chart.
[[nodiscard]] bool trend();
/// An archive of so many records.
[[nodiscard]] bool archive(const QString& workFolder, std::size_t records);
/// A walk that is followed: how soon, by how many, and what the walk has to do with it.
[[nodiscard]] bool link(const QString& workFolder);
/// Finding an ID-1 card in so many invented photos of that width, pixels.
[[nodiscard]] bool card(std::size_t photos, std::size_t from, int width);
/// Prints the weights of core/measure/likeness as learnt from the photos of seeds below `count`.
void cardWeights(std::size_t count);
/// Taking in photos: figures, no limits.
void photo();
[[nodiscard]] bool memory(const QString& programFolder, const QString& workFolder);
/// The rival of `start`: a Qt Quick window with nothing in it, gone after its first frame.
[[nodiscard]] int emptyWindow(int argc, char** argv);

} // namespace ambit::bench
