// Touch to committed and view models updated, against a bare SQLite commit of the same bytes; and the frame
// after it.
#include "../view/well_within.hpp"
#include "airframe/read.hpp"
#include "base/canonical.hpp"
#include "base/files.hpp"
#include "bench.hpp"
#include "model/app.hpp"

#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QSignalSpy>
#include <nlohmann/json.hpp>
#include <sqlite3.h>

namespace ambit::bench {

namespace {

/// The least that makes bytes durable: one table, one prepared insert, WAL and synchronous=FULL as in the
/// archive.
class BareLog {
public:
    explicit BareLog(const QString& file) {
        sqlite3_open(file.toUtf8().constData(), &db);
        run("PRAGMA journal_mode=WAL");
        run("PRAGMA synchronous=FULL");
        run("CREATE TABLE log(seq INTEGER PRIMARY KEY, json TEXT)");
        sqlite3_prepare_v2(db, "INSERT INTO log(json) VALUES(?)", -1, &insert, nullptr);
    }
    BareLog(const BareLog&) = delete;
    BareLog& operator=(const BareLog&) = delete;
    ~BareLog() {
        sqlite3_finalize(insert);
        sqlite3_close(db);
    }
    void commit(const std::string& bytes) {
        sqlite3_bind_text(insert, 1, bytes.data(), static_cast<int>(bytes.size()), SQLITE_STATIC);
        sqlite3_step(insert);
        sqlite3_reset(insert);
    }

private:
    void run(const char* sql) { sqlite3_exec(db, sql, nullptr, nullptr, nullptr); }
    sqlite3* db = nullptr;
    sqlite3_stmt* insert = nullptr;
};

/// Does what the card says, settling sound; false at the end.
bool touchCard(view::RoundView& round, const airframe::Airframe& airframe) {
    const QString kind = round.cardKind();
    if (kind == QLatin1String("go")) return round.atStand();
    if (kind == QLatin1String("set")) return round.changeSetting();
    if (kind != QLatin1String("settle")) return false;
    const auto* point = airframe.point(round.pointId().toStdString());
    return round.settleSound(point->limit ? QString::fromStdString(test::wellWithin(*point->limit))
                                          : QString());
}

std::string lastEvent(view::RoundView& round) {
    return canonicalJson(toJson(round.openRound().events().back()));
}

struct Times {
    std::vector<double> touch, bare, frame;
};

/// One round; with a window, the frame after each touch too.
void walkOnce(view::App& app, const airframe::Airframe& airframe, BareLog& bare, QQuickWindow* window,
              Times& times) {
    while (true) {
        QElapsedTimer timer;
        timer.start();
        if (!touchCard(*app.round(), airframe)) return;
        times.touch.push_back(milliseconds(timer));
        const std::string bytes = lastEvent(*app.round());
        timer.start();
        bare.commit(bytes);
        times.bare.push_back(milliseconds(timer));
        QCoreApplication::processEvents();
        if (window == nullptr) continue;
        QSignalSpy swapped(window, &QQuickWindow::frameSwapped);
        timer.start();
        window->update();
        swapped.wait(1000);
        times.frame.push_back(milliseconds(timer));
    }
}

std::optional<Times> walk(view::App& app, const airframe::Airframe& airframe, BareLog& bare,
                          QQuickWindow* window) {
    Times times;
    for (int round = 0; round < 5; ++round) {
        if (!app.begin(QStringLiteral("OX-BENCH"), QString::fromStdString(airframe.walks.front().id),
                       QStringLiteral("Bench Example"), QStringLiteral("pilot"), {}, {}))
            return std::nullopt;
        walkOnce(app, airframe, bare, window, times);
        app.leaveRound();
    }
    if (times.touch.size() >= 5 * airframe.walks.front().points.size()) return times;
    std::fprintf(stderr, "ambit-bench: the round stopped early: %s\n", qPrintable(app.problem()));
    return std::nullopt;
}

std::string detailOf(const Times& times) {
    char detail[160];
    std::snprintf(detail, sizeof detail,
                  "%zu touches: median %.3f ms, p99 %.2f; bare commit %.3f ms, p99 %.2f", times.touch.size(),
                  median(times.touch), quantile(times.touch, 0.99), median(times.bare),
                  quantile(times.bare, 0.99));
    return detail;
}

} // namespace

bool touch(const QString& workFolder) {
    const std::string store = (workFolder + QStringLiteral("/touch.sqlite")).toStdString();
    auto archive = archive::Archive::open(store);
    const std::string file = (demoFolder() + QStringLiteral("/helicopter/airframe.json")).toStdString();
    auto text = readFile(file);
    auto airframe = airframe::readFrom(file);
    if (!archive || !text || !airframe) return false;
    if (!archive->addAircraft({"OX-BENCH", "BENCH-1", airframe->sha256, airframe->name}, *text)) return false;
    std::int64_t clock = 1'750'000'000'000;
    view::Services services{*archive, store, [&] { return LocalInstant{{clock += 1000}, 120}; },
                            {},       {},    workFolder.toStdString(),
                            {}};
    view::App app(services);
    BareLog bare(workFolder + QStringLiteral("/bare.sqlite"));
    const auto alone = walk(app, *airframe, bare, nullptr);
    if (!alone) return false;
    const bool holds = report("touch / bare commit", median(alone->touch) / median(alone->bare), "x", 1.5,
                              detailOf(*alone).c_str());

    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.setInitialProperties({{QStringLiteral("app"), QVariant::fromValue(&app)}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Ambit/Main.qml")));
    if (engine.rootObjects().isEmpty()) return false;
    const auto shown = walk(app, *airframe, bare, qobject_cast<QQuickWindow*>(engine.rootObjects().first()));
    if (!shown) return false;
    std::printf("%-34s %8.2f x   %s\n", "the same with the screens' bindings",
                median(shown->touch) / median(shown->bare), detailOf(*shown).c_str());
    std::printf("%-34s %8.2f ms  p99 %.2f (software rendering)\n", "the frame drawn after a touch",
                median(shown->frame), quantile(shown->frame, 0.99));
    return holds;
}

} // namespace ambit::bench
