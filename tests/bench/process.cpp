// Whole processes: start to the first usable frame against an empty window; memory after a full round.
#include "bench.hpp"

#include <QFile>
#include <QGuiApplication>
#include <QProcess>
#include <QQmlApplicationEngine>
#include <QQuickWindow>

namespace ambit::bench {

int emptyWindow(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    QQmlApplicationEngine engine;
    engine.loadData("import QtQuick\nWindow { width: 390; height: 844; visible: true }");
    if (engine.rootObjects().isEmpty()) return 1;
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().first());
    QObject::connect(window, &QQuickWindow::frameSwapped, qApp, &QCoreApplication::quit,
                     Qt::QueuedConnection);
    return QGuiApplication::exec();
}

namespace {

/// The most memory a process has held since it became this program, MB; 0 if it is gone. What getrusage says
/// of a child counts what its parent held when it was forked, too.
double peakOf(qint64 pid) {
    QFile status(QStringLiteral("/proc/%1/status").arg(pid));
    if (!status.open(QIODevice::ReadOnly)) return 0;
    for (const QByteArray& line : status.readAll().split('\n'))
        if (line.startsWith("VmHWM:")) return line.mid(6).trimmed().split(' ').first().toDouble() / 1024;
    return 0;
}

/// Wall time of a process that ends by itself; negative if it failed. `peak`: its memory, MB, looked at every
/// 20 ms.
double run(const QString& program, const QStringList& arguments, double* peak = nullptr) {
    QElapsedTimer timer;
    timer.start();
    QProcess process;
    process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    process.start(program, arguments);
    while (peak != nullptr && process.state() != QProcess::NotRunning && timer.elapsed() < 300'000) {
        *peak = std::max(*peak, peakOf(process.processId()));
        if (process.waitForFinished(20)) break;
    }
    const bool ended = (process.state() == QProcess::NotRunning || process.waitForFinished(300'000)) &&
                       process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0;
    return ended ? milliseconds(timer) : -1;
}

} // namespace

bool start(const QString& programFolder, const QString& workFolder) {
    const QString app = programFolder + QStringLiteral("/ambit-app");
    const QStringList arguments{QStringLiteral("--archive"), workFolder + QStringLiteral("/start.sqlite"),
                                QStringLiteral("--demo"), demoFolder(),
                                QStringLiteral("--until-first-frame")};
    (void)run(app, arguments); // seeds the archive
    std::vector<double> ours, empty;
    for (int i = 0; i < 11; ++i) {
        ours.push_back(run(app, arguments));
        empty.push_back(
            run(programFolder + QStringLiteral("/ambit-bench"), {QStringLiteral("--empty-window")}));
    }
    if (quantile(ours, 0) < 0 || quantile(empty, 0) < 0) {
        std::fprintf(stderr, "ambit-bench: a program did not start\n");
        return false;
    }
    char detail[160];
    std::snprintf(detail, sizeof detail, "median of %zu: %.0f ms against %.0f ms", ours.size(), median(ours),
                  median(empty));
    return report("start / empty window", median(ours) / median(empty), "x", 2.5, detail);
}

bool memory(const QString& programFolder, const QString& workFolder) {
    double peak = 0;
    const double took = run(programFolder + QStringLiteral("/ambit-app"),
                            {QStringLiteral("--demo"), demoFolder(), QStringLiteral("--script"),
                             demoFolder() + QStringLiteral("/helicopter/round.jsonl"),
                             QStringLiteral("--out"), workFolder + QStringLiteral("/out")},
                            &peak);
    if (took < 0) return false;
    char detail[120];
    std::snprintf(detail, sizeof detail,
                  "peak of the app over the whole demo round, screenshots included (%.1f s)", took / 1000);
    return report("memory", peak, "MB", 200, detail);
}

} // namespace ambit::bench
