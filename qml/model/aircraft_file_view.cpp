#include "model/aircraft_file_view.hpp"

#include "model/file_words.hpp"
#include "model/words.hpp"

namespace ambit::view {

namespace {

/// Its state by shape, as everywhere: filled = in order, a cut corner = something is the matter, hatched =
/// nobody knows.
QString lookOf(judge::DueVerdict verdict) {
    switch (verdict) {
    case judge::DueVerdict::fine:
        return QStringLiteral("sound");
    case judge::DueVerdict::unknown:
        return QStringLiteral("notInspected");
    default:
        return QStringLiteral("finding");
    }
}

QVariantMap named(const std::string& id, const std::string& name) {
    return {{QStringLiteral("id"), text(id)}, {QStringLiteral("name"), text(name)}};
}

QVariantMap rowOf(const AircraftReading& reading, const file::Item& item) {
    return {{QStringLiteral("id"), text(item.id)},
            {QStringLiteral("name"), text(nameOf(reading, item))},
            {QStringLiteral("verdict"), QString::fromLatin1(judge::toText(item.due.verdict))},
            {QStringLiteral("verdictText"), verdictText(item.due.verdict)},
            {QStringLiteral("words"), text(item.words)},
            {QStringLiteral("source"), text(item.source)},
            {QStringLiteral("look"), lookOf(item.due.verdict)}};
}

QVariantMap placeOf(const std::string& position, const std::string& name, const file::Fitted* fitted) {
    const record::Part part = fitted == nullptr ? record::Part() : fitted->part;
    QString words;
    if (fitted != nullptr)
        words = AircraftFileView::tr("%1, serial %2, fitted %3")
                    .arg(text(part.name), text(part.serial), text(fitted->on));
    return {{QStringLiteral("position"), text(position)},  {QStringLiteral("name"), text(name)},
            {QStringLiteral("part"), text(part.name)},     {QStringLiteral("number"), text(part.number)},
            {QStringLiteral("serial"), text(part.serial)}, {QStringLiteral("fittedText"), words}};
}

QVariantList placesOf(const AircraftReading& reading) {
    QVariantList places;
    const auto& fitted = reading.file.parts;
    if (reading.airframe)
        for (const auto& one : reading.airframe->lifeLimits) {
            const auto its = fitted.find(one.id);
            places << placeOf(one.id, one.name, its == fitted.end() ? nullptr : &its->second);
        }
    const auto isLife = [&](const std::string& position) {
        if (!reading.airframe) return false;
        const auto& lives = reading.airframe->lifeLimits;
        return std::any_of(lives.begin(), lives.end(), [&](const auto& one) { return one.id == position; });
    };
    for (const auto& [position, its] : fitted)
        if (!isLife(position)) places << placeOf(position, position, &its);
    return places;
}

/// What of one discrepancy stands against fit; "": nothing.
QString againstOf(const file::Discrepancy& one, const file::AircraftFile& its, const QString& today) {
    file::AircraftFile only;
    only.discrepancies.push_back(one);
    only.counters = its.counters;
    const auto reasons = file::standsAgainst(only, today.toStdString());
    return reasons.empty() ? QString() : text(reasons.front());
}

QVariantMap rowOf(const file::KnownKey& one, Instant now, int offset) {
    const bool revoked = one.revoked && now >= *one.revoked;
    QStringList roles;
    for (const auto& [role, from] : one.roles)
        roles << text(role);
    return {{QStringLiteral("key"), text(one.key)},
            {QStringLiteral("name"), text(one.name)},
            {QStringLiteral("fingerprint"), fingerprintText(one.key)},
            {QStringLiteral("words"), signedText(one)},
            {QStringLiteral("standing"), standingText(one, offset)},
            {QStringLiteral("look"), revoked                           ? QStringLiteral("finding")
                                     : one.owner || !one.roles.empty() ? QStringLiteral("sound")
                                                                       : QStringLiteral("todo")},
            {QStringLiteral("owner"), one.owner},
            {QStringLiteral("revoked"), one.revoked.has_value()},
            {QStringLiteral("roles"), roles}};
}

} // namespace

AircraftFileView::AircraftFileView(const Services& handedIn, Background& beside, QObject* parent)
    : QObject(parent), services(&handedIn), background(&beside) {}

QString AircraftFileView::today() const {
    const auto date = Date::of(services->now());
    return date ? text(toText(*date)) : QString();
}

void AircraftFileView::show(const QString& registration) {
    if (shown == registration) return;
    closeDiscrepancy();
    shown = registration;
    last = nullptr;
    tell();
    refresh();
}

void AircraftFileView::refresh() {
    const auto date = Date::of(services->now());
    const int question = ++asked;
    awaited = !shown.isEmpty() && date.has_value();
    if (awaited)
        background->run<AircraftReading>(
            this,
            [registration = shown.toStdString(), today = *date](const archive::Archive& archive) {
                return readAircraft(archive, registration, today);
            },
            [this, question](Result<AircraftReading> reading) {
                if (question == asked) take(std::move(reading));
            });
    emit changed();
}

void AircraftFileView::take(Result<AircraftReading> reading) {
    awaited = false;
    last = reading ? std::make_shared<const AircraftReading>(std::move(*reading)) : nullptr;
    tell();
    if (!reading) trouble = errorText(reading.error());
    if (opened != nullptr && !openDiscrepancy(opened->key())) closeDiscrepancy();
    emit changed();
}

QVariantMap AircraftFileView::row(const file::Discrepancy& one) const {
    QString where = text(zoneNameOf(*last, one));
    if (!one.jasc.empty()) where += QStringLiteral("\u00a0· JASC\u00a0") + text(one.jasc);
    return {{QStringLiteral("key"), keyOf(one.id)},
            {QStringLiteral("pointId"), text(one.id.point)},
            {QStringLiteral("name"), text(nameOf(*last, one))},
            {QStringLiteral("where"), where},
            {QStringLiteral("words"), text(one.found.words)},
            {QStringLiteral("stateText"), stateText(one, last->airframe.get())},
            {QStringLiteral("sinceText"), sinceText(one, services->now().at)},
            {QStringLiteral("state"), QString::fromLatin1(file::toText(one.state))},
            {QStringLiteral("grounds"), one.state == file::Discrepancy::State::grounding}};
}

void AircraftFileView::tell() {
    trouble.clear();
    for (QStringList* list : {&against, &conflicts})
        list->clear();
    for (QVariantList* list : {&open, &putRight, &due, &counters, &inspections, &points, &places, &keys})
        list->clear();
    holes = 0;
    if (!last) return;
    const file::AircraftFile& its = last->file;
    for (const Sentence& reason : last->against)
        against << text(reason);
    for (const file::Conflict& conflict : its.conflicts)
        conflicts << text(conflict.what);
    holes = static_cast<int>(its.holes.size());
    // What grounds, what nobody has assessed, what may wait; of each the oldest first.
    using State = file::Discrepancy::State;
    for (const State state : {State::grounding, State::open, State::deferred, State::rectified})
        for (const file::Discrepancy& one : its.discrepancies)
            if (one.state == state) {
                QVariantMap map = row(one);
                map.insert(QStringLiteral("against"), againstOf(one, its, today()));
                (state == State::rectified ? putRight : open) << map;
            }
    for (const file::Item& item : last->due)
        due << rowOf(*last, item);
    const int offset = services->now().offsetMinutes;
    places = placesOf(*last);
    for (const file::KnownKey& one : its.keys)
        keys << rowOf(one, services->now().at, offset);
    const auto counter = [&](const std::string& id, const std::string& name, const std::string& unit) {
        QVariantMap map = named(id, name);
        const auto read = its.counters.find(id);
        const bool isKnown = read != its.counters.end();
        map.insert(QStringLiteral("unit"), unitText(unit));
        map.insert(QStringLiteral("label"), withUnit(text(name), unitText(unit)));
        map.insert(QStringLiteral("value"), isKnown ? figureText(read->second.value) : QString());
        map.insert(QStringLiteral("whenText"), isKnown ? dayText(read->second.at, offset) : QString());
        counters << map;
    };
    if (!last->airframe) {
        for (const auto& [id, count] : its.counters)
            counter(id, id, {});
        return;
    }
    for (const auto& one : last->airframe->counters)
        counter(one.id, one.name, one.unit);
    for (const auto& one : last->airframe->inspections)
        inspections << named(one.id, one.name);
    for (const auto& one : last->airframe->points)
        points << named(one.id, one.name);
}

bool AircraftFileView::openDiscrepancy(const QString& key) {
    if (!last) return false;
    for (const file::Discrepancy& one : last->file.discrepancies) {
        if (keyOf(one.id) != key) continue;
        closeDiscrepancy();
        opened = new DiscrepancyView(one, *last, services->now(), this);
        emit discrepancyChanged();
        return true;
    }
    return false;
}

void AircraftFileView::closeDiscrepancy() {
    if (opened == nullptr) return;
    opened->deleteLater(); // a screen may still be reading it
    opened = nullptr;
    emit discrepancyChanged();
}

} // namespace ambit::view
