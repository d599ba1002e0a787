#include "model/zone_findings.hpp"

#include "model/file_words.hpp"
#include "model/words.hpp"

#include <QPolygonF>

namespace ambit::view {

namespace {

/// The screen's y runs down, the airframe's forward.
QVariantList outlineOf(const airframe::Outline& outline, QPolygonF& all) {
    QVariantList points;
    for (const auto& place : outline) {
        points << QPointF(place.x, -place.y);
        all << QPointF(place.x, -place.y);
    }
    return points;
}

/// The zone's id; where the airframe has changed since, the record's own word for it may still name one.
std::string zoneOf(const file::Discrepancy& one, const airframe::Airframe& airframe) {
    if (const auto* point = airframe.point(one.id.point)) return point->zone;
    for (const auto& zone : airframe.zones)
        if (zone.name == one.zone) return zone.id;
    return {};
}

int levelOf(int count) {
    return count == 0 ? 0 : count == 1 ? 1 : count < 4 ? 2 : 3;
}

} // namespace

ZoneFindings::ZoneFindings(const Services& handedIn, const AircraftFileView& of, QObject* parent)
    : QObject(parent), services(&handedIn), file(&of) {
    connect(file, &AircraftFileView::changed, this, &ZoneFindings::tell);
}

QVariantList ZoneFindings::times() const {
    const auto time = [](int days, const QString& name) {
        return QVariantMap{{QStringLiteral("days"), days}, {QStringLiteral("name"), name}};
    };
    return {time(30, tr("30 days")), time(365, tr("1 year")), time(0, tr("All"))};
}

void ZoneFindings::setDays(int days) {
    if (days == chosenDays) return;
    chosenDays = days;
    tell();
}

bool ZoneFindings::isIn(Instant at) const {
    constexpr std::int64_t day = 86'400'000;
    return chosenDays == 0 || at.ms >= services->now().at.ms - day * chosenDays;
}

int ZoneFindings::findingsOf(const file::Discrepancy& one) const {
    return (isIn(one.found.at) ? 1 : 0) +
           static_cast<int>(std::count_if(one.again.begin(), one.again.end(),
                                          [&](const file::Word& word) { return isIn(word.at); }));
}

void ZoneFindings::tell() {
    parts.clear();
    zones.clear();
    bounds = {};
    total = 0;
    const auto reading = file->lastReading();
    if (!reading || !reading->airframe) {
        emit changed();
        return;
    }
    const airframe::Airframe& airframe = *reading->airframe;
    std::map<std::string, int> counts;
    for (const file::Discrepancy& one : reading->file.discrepancies) {
        const int findings = findingsOf(one);
        counts[zoneOf(one, *reading->written)] += findings;
        total += findings;
    }
    QPolygonF all;
    const airframe::Settings settings = airframe.initialSettings();
    for (const auto& part : airframe.parts)
        if (airframe::holds(part.when, settings))
            parts << QVariantMap{{QStringLiteral("kind"), QString::fromLatin1(airframe::toText(part.kind))},
                                 {QStringLiteral("outline"), outlineOf(part.outline, all)}};
    for (const auto& zone : airframe.zones) {
        const int count = counts[zone.id];
        zones << QVariantMap{
            {QStringLiteral("zoneId"), text(zone.id)},
            {QStringLiteral("name"), text(zone.name)},
            {QStringLiteral("outline"), outlineOf(zone.outline, all)},
            {QStringLiteral("count"), count},
            {QStringLiteral("level"), levelOf(count)},
            {QStringLiteral("text"), count == 1 ? tr("%1: 1 finding").arg(text(zone.name))
                                                : tr("%1: %2 findings").arg(text(zone.name)).arg(count)}};
    }
    bounds = all.boundingRect();
    emit changed();
}

QVariantList ZoneFindings::foundIn(const QString& zoneId) const {
    QVariantList rows;
    const auto reading = file->lastReading();
    if (!reading || !reading->airframe) return rows;
    const auto& all = reading->file.discrepancies;
    for (auto one = all.rbegin(); one != all.rend(); ++one)
        if (findingsOf(*one) > 0 && zoneOf(*one, *reading->written) == zoneId.toStdString())
            rows << file->row(*one);
    return rows;
}

} // namespace ambit::view
