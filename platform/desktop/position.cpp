#include "desktop/position.hpp"

#include <QDateTime>
#include <QGeoPositionInfoSource>
#include <QNmeaPositionInfoSource>
#include <cmath>

namespace ambit::desktop {

namespace {

std::string degrees(double value) {
    // Adding 0 turns a negative zero into a plain one: "-0.000000" is no decimal of ours.
    const double rounded = std::round(value * 1e6) / 1e6 + 0.0;
    return QString::number(rounded, 'f', 6).toStdString();
}

const char* reason(QGeoPositionInfoSource::Error error) {
    switch (error) {
    case QGeoPositionInfoSource::AccessError:
        return "it isn't allowed";
    case QGeoPositionInfoSource::ClosedError:
        return "the source has gone";
    default:
        return "the source doesn't work";
    }
}

} // namespace

Positioning::Positioning(Clock given) : clock(std::move(given)) {}
Positioning::~Positioning() = default;

std::unique_ptr<Positioning> Positioning::fromNmea(const QString& path, Clock clock, Recording recording) {
    std::unique_ptr<Positioning> positioning(new Positioning(std::move(clock)));
    positioning->file.setFileName(path);
    if (!positioning->file.open(QIODevice::ReadOnly)) {
        qWarning("No position: %s (%s)", qPrintable(positioning->file.errorString()), qPrintable(path));
        return positioning;
    }
    auto source = std::make_unique<QNmeaPositionInfoSource>(QNmeaPositionInfoSource::SimulationMode);
    source->setDevice(&positioning->file);
    positioning->listen(std::move(source), recording == Recording::ofNow);
    return positioning;
}

std::unique_ptr<Positioning> Positioning::fromReceiver(const QString& source, Clock clock) {
    std::unique_ptr<Positioning> positioning(new Positioning(std::move(clock)));
    // The plugin would also read a file: that is a recording.
    const bool now =
        source.startsWith(QLatin1String("serial:")) || source.startsWith(QLatin1String("socket:"));
    QVariantMap parameters;
    parameters[QStringLiteral("nmea.source")] = source;
    std::unique_ptr<QGeoPositionInfoSource> receiver(
        now ? QGeoPositionInfoSource::createSource(QStringLiteral("nmea"), parameters, nullptr) : nullptr);
    if (receiver)
        positioning->listen(std::move(receiver), true);
    else
        qWarning("No position: Qt can't listen to this receiver (%s)", qPrintable(source));
    return positioning;
}

std::unique_ptr<Positioning> Positioning::fromSystem(Clock clock) {
    std::unique_ptr<Positioning> positioning(new Positioning(std::move(clock)));
    std::unique_ptr<QGeoPositionInfoSource> source(QGeoPositionInfoSource::createDefaultSource(nullptr));
    if (!source) return positioning;
    const bool satellitesOnly =
        source->supportedPositioningMethods() == QGeoPositionInfoSource::SatellitePositioningMethods;
    positioning->listen(std::move(source), satellitesOnly);
    return positioning;
}

void Positioning::listen(std::unique_ptr<QGeoPositionInfoSource> to, bool timeIsTheSatellites) {
    believed = timeIsTheSatellites;
    source = std::move(to);
    QObject::connect(source.get(), &QGeoPositionInfoSource::positionUpdated, source.get(),
                     [this](const QGeoPositionInfo& told) { take(told); });
    QObject::connect(source.get(), &QGeoPositionInfoSource::errorOccurred, source.get(),
                     [](QGeoPositionInfoSource::Error error) {
                         if (error == QGeoPositionInfoSource::UpdateTimeoutError) return; // it goes on trying
                         qWarning("No position: %s", reason(error));
                     });
    source->startUpdates();
}

void Positioning::take(const QGeoPositionInfo& told) {
    const auto place = told.coordinate();
    if (!place.isValid()) return;
    Fix fix{{degrees(place.latitude()), degrees(place.longitude())}, std::nullopt, clock()};
    if (believed && told.timestamp().isValid())
        fix.satellites = Instant{told.timestamp().toMSecsSinceEpoch()};
    latest = std::move(fix);
    const auto off = clockOff();
    if (!off) return;
    if (off->out && !said) qWarning("This device's clock is %s.", qPrintable(toWords(*off)));
    said = off->out;
}

std::optional<round::Position> Positioning::last() const {
    if (!latest) return std::nullopt;
    return latest->position;
}

std::optional<sky::ClockOff> Positioning::clockOff() const {
    if (!latest || !latest->satellites) return std::nullopt;
    return sky::clockOff(latest->device, *latest->satellites);
}

QString toWords(const sky::ClockOff& off) {
    const std::int64_t seconds = (std::abs(off.ms) + 500) / 1000;
    const std::int64_t minutes = seconds / 60;
    const std::int64_t hours = minutes / 60;
    const QString many = hours >= 48   ? QStringLiteral("%1 days").arg(hours / 24)
                         : hours > 0   ? QStringLiteral("%1 h %2 min").arg(hours).arg(minutes % 60)
                         : minutes > 0 ? QStringLiteral("%1 min %2 s").arg(minutes).arg(seconds % 60)
                                       : QStringLiteral("%1 s").arg(seconds);
    return many + (off.ms < 0 ? QStringLiteral(" behind the satellites' time")
                              : QStringLiteral(" ahead of the satellites' time"));
}

} // namespace ambit::desktop
