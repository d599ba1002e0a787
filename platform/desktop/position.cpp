#include "desktop/position.hpp"

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

} // namespace

Positioning::Positioning() = default;
Positioning::~Positioning() = default;

std::unique_ptr<Positioning> Positioning::fromNmea(const QString& path) {
    std::unique_ptr<Positioning> positioning(new Positioning);
    positioning->file.setFileName(path);
    if (!positioning->file.open(QIODevice::ReadOnly)) {
        qWarning("No position: %s (%s)", qPrintable(positioning->file.errorString()), qPrintable(path));
        return positioning;
    }
    auto source = std::make_unique<QNmeaPositionInfoSource>(QNmeaPositionInfoSource::SimulationMode);
    source->setDevice(&positioning->file);
    positioning->source = std::move(source);
    positioning->source->startUpdates();
    return positioning;
}

std::unique_ptr<Positioning> Positioning::fromSystem() {
    std::unique_ptr<Positioning> positioning(new Positioning);
    positioning->source.reset(QGeoPositionInfoSource::createDefaultSource(nullptr));
    if (positioning->source) positioning->source->startUpdates();
    return positioning;
}

std::optional<round::Position> Positioning::last() const {
    if (!source) return std::nullopt;
    const auto place = source->lastKnownPosition().coordinate();
    if (!place.isValid()) return std::nullopt;
    return round::Position{degrees(place.latitude()), degrees(place.longitude())};
}

} // namespace ambit::desktop
