// ambit-app: the one place where a desktop's services are built. Everything else is handed what it needs.
#include "archive/archive.hpp"
#include "desktop/demo.hpp"
#include "desktop/demo_walk.hpp"
#include "desktop/fonts.hpp"
#include "desktop/links.hpp"
#include "desktop/position.hpp"
#include "desktop/voice.hpp"
#include "model/photos.hpp"
#include "model/screens.hpp"
#include "paper/pages.hpp"

#include <QCommandLineParser>
#include <QDateTime>
#include <QDir>
#include <QGuiApplication>
#include <QLocale>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QSettings>
#include <QStandardPaths>
#include <QStyleHints>
#include <QTemporaryDir>
#include <algorithm>
#include <cstdio>
#include <string_view>

namespace ambit::desktop {

namespace {

struct Options {
    QString archive, demo, nmea, receiver, script, out;
    bool night = false, position = false, nmeaOfNow = false, untilFirstFrame = false;
};

Options parse(const QGuiApplication& application) {
    QCommandLineParser parser;
    parser.setApplicationDescription(
        QStringLiteral("Guides a pilot round a light aircraft before flight and leaves a signed record.\n"
                       "Exit codes: 0 done, 1 something went wrong (said on stderr), 2 wrong options."));
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption archive(QStringLiteral("archive"),
                                     QStringLiteral("The archive's file; made if it isn't there."),
                                     QStringLiteral("FILE"));
    const QCommandLineOption demo(
        QStringLiteral("demo"),
        QStringLiteral("Puts the demo aircraft of each folder in DIR into the archive, which is then one of "
                       "its own unless --archive says otherwise."),
        QStringLiteral("DIR"));
    const QCommandLineOption night(QStringLiteral("night"),
                                   QStringLiteral("Starts in the night appearance."));
    const QCommandLineOption position(
        QStringLiteral("position"),
        QStringLiteral("Asks the system where the device is; the place goes into the record."));
    const QCommandLineOption nmea(
        QStringLiteral("nmea"),
        QStringLiteral("Takes the place from a recorded NMEA file. Its times are of "
                       "when it was recorded and say nothing of the device's clock."),
        QStringLiteral("FILE"));
    const QCommandLineOption nmeaOfNow(
        QStringLiteral("nmea-of-now"),
        QStringLiteral(
            "Takes the recording's times for those of now: the device's clock is held against them."));
    const QCommandLineOption receiver(
        QStringLiteral("receiver"),
        QStringLiteral("Takes place and time from a receiver that sends NMEA: serial:/dev/ttyACM0 or "
                       "socket://HOST:PORT. A clock that is out by more than a minute is said on stderr."),
        QStringLiteral("SOURCE"));
    const QCommandLineOption script(
        QStringLiteral("script"),
        QStringLiteral(
            "Walks a recorded round by touches on the screens, in a fresh archive; needs --demo and --out."),
        QStringLiteral("FILE"));
    const QCommandLineOption out(
        QStringLiteral("out"),
        QStringLiteral("Where --script leaves record.json, record.pdf, photos/ and screens/."),
        QStringLiteral("DIR"));
    QCommandLineOption untilFirstFrame(QStringLiteral("until-first-frame"),
                                       QStringLiteral("Ends once the first frame is drawn; for measuring."));
    untilFirstFrame.setFlags(QCommandLineOption::HiddenFromHelp);
    parser.addOptions(
        {archive, demo, night, position, nmea, nmeaOfNow, receiver, script, out, untilFirstFrame});
    parser.process(application);
    Options options{parser.value(archive),        parser.value(demo),     parser.value(nmea),
                    parser.value(receiver),       parser.value(script),   parser.value(out),
                    parser.isSet(night),          parser.isSet(position), parser.isSet(nmeaOfNow),
                    parser.isSet(untilFirstFrame)};
    const int places = int{parser.isSet(nmea)} + int{parser.isSet(receiver)} + int{options.position};
    if (places > 1 || (options.nmeaOfNow && options.nmea.isEmpty())) {
        std::fprintf(stderr, "ambit-app: the place comes from one of --position, --nmea and --receiver, and "
                             "--nmea-of-now goes with --nmea. See --help.\n");
        std::exit(2);
    }
    if (!parser.positionalArguments().isEmpty() || options.script.isEmpty() != options.out.isEmpty() ||
        (!options.script.isEmpty() && options.demo.isEmpty())) {
        std::fprintf(
            stderr,
            "ambit-app: --script, --out and --demo go together, and nothing stands alone. See --help.\n");
        std::exit(2);
    }
    return options;
}

int complain(const Error& error) {
    std::fprintf(stderr, "ambit-app: %s\n", toText(error).c_str());
    return 1;
}

LocalInstant systemTime() {
    const QDateTime now = QDateTime::currentDateTime();
    return {{now.toMSecsSinceEpoch()}, now.offsetFromUtc() / 60};
}

std::unique_ptr<Positioning> positioningFor(const Options& options) {
    const auto clock = [] { return systemTime().at; };
    using Recording = Positioning::Recording;
    if (!options.nmea.isEmpty())
        return Positioning::fromNmea(options.nmea, clock,
                                     options.nmeaOfNow ? Recording::ofNow : Recording::ofThen);
    if (!options.receiver.isEmpty()) return Positioning::fromReceiver(options.receiver, clock);
    if (options.position) return Positioning::fromSystem(clock);
    return nullptr;
}

/// Loads the screens; nullptr if they can't be.
QQuickWindow* show(QQmlApplicationEngine& engine, view::App& app, const archive::Archive& archive) {
    view::prepareEngine(engine, archive);
    if (!view::showMain(engine, app)) return nullptr;
    return qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
}

/// Where things are when no option says so.
QDir dataFolder() {
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    folder.mkpath(QStringLiteral("."));
    return folder;
}

int runForPerson(const Options& options) {
    const QDir data = dataFolder();
    const QString own = data.filePath(options.demo.isEmpty() ? QStringLiteral("archive.sqlite")
                                                             : QStringLiteral("demo.sqlite"));
    const std::string file = (options.archive.isEmpty() ? own : options.archive).toStdString();
    auto archive = archive::Archive::open(file);
    if (!archive) return complain(archive.error());
    if (!options.demo.isEmpty())
        if (auto added = addDemoAircraft(*archive, options.demo.toStdString()); !added)
            return complain(added.error());
    QSettings settings(data.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
    const auto positioning = positioningFor(options);
    view::Services services{
        *archive,         file,
        systemTime,       [&] { return positioning ? positioning->last() : std::nullopt; },
        view::readPhoto,  data.filePath(QStringLiteral("keys")).toStdString(),
        paper::drawRecord};
    services.settings = &settings;
    services.locales = QLocale::system().uiLanguages();
    services.lengths = QLocale::system().measurementSystem();
    Voice voice;
    if (positioning) services.clockOff = [&] { return positioning->clockOff(); };
    services.speak = [&voice](const QString& words) { return voice.speak(words); };
    addLinks(services, data.path().toStdString());
    view::App app(std::move(services));
    if (options.night) app.setNight(true);
    QQmlApplicationEngine engine;
    QQuickWindow* window = show(engine, app, *archive);
    if (window == nullptr) return 1;
    if (options.untilFirstFrame)
        QObject::connect(window, &QQuickWindow::frameSwapped, qApp, &QCoreApplication::quit,
                         Qt::QueuedConnection);
    return QGuiApplication::exec();
}

/// A fresh archive, a fresh key, the script's own time and place: the same round each time.
int runScript(const Options& options) {
    const QTemporaryDir scratch;
    auto script = script::readScriptFrom(options.script.toStdString());
    if (!script) return complain(script.error());
    const QString own = scratch.filePath(QStringLiteral("archive.sqlite"));
    const std::string file = (options.archive.isEmpty() ? own : options.archive).toStdString();
    auto archive = archive::Archive::open(file);
    if (!archive) return complain(archive.error());
    if (auto added = addDemoAircraft(*archive, options.demo.toStdString()); !added)
        return complain(added.error());
    ScriptClock clock{script->open.at};
    auto place = script->open.position;
    view::App app({*archive, file, [&] { return clock.now; }, [&] { return place; }, view::readPhoto,
                   scratch.filePath(QStringLiteral("keys")).toStdString(), paper::drawRecord});
    app.setNight(options.night);
    QQmlApplicationEngine engine;
    QQuickWindow* window = show(engine, app, *archive);
    if (window == nullptr) return 1;
    QGuiApplication::styleHints()->setCursorFlashTime(0); // the same pictures each time
    DemoWalk walk(app, *window, clock, std::move(*script), options.out.toStdString());
    if (auto walked = walk.run(); !walked) return complain(walked.error());
    return 0;
}

} // namespace

} // namespace ambit::desktop

int main(int argc, char** argv) {
    const bool scripted = std::any_of(
        argv, argv + argc, [](const char* word) { return std::string_view(word).starts_with("--script"); });
    const ambit::desktop::OwnFonts fonts(scripted);
    QGuiApplication application(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("Ambit"));
    QGuiApplication::setApplicationVersion(QStringLiteral(AMBIT_VERSION));
    const auto options = ambit::desktop::parse(application);
    ambit::view::prepareApplication();
    return options.script.isEmpty() ? ambit::desktop::runForPerson(options)
                                    : ambit::desktop::runScript(options);
}
