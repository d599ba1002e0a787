#include "model/point_history_view.hpp"

#include "model/file_words.hpp"
#include "model/words.hpp"

#include <algorithm>

namespace ambit::view {

namespace {

constexpr std::size_t page = 50;

/// The shape of an outcome; what was said or done about the point has the frame of what leads on.
QString lookOf(const std::string& outcome) {
    if (outcome == "sound" || outcome == "finding") return text(outcome);
    return outcome == "not inspected" ? QStringLiteral("notInspected") : QStringLiteral("next");
}

QString outcomeWords(const std::string& outcome) {
    if (outcome == "sound") return PointHistoryView::tr("Sound");
    if (outcome == "finding") return PointHistoryView::tr("Finding");
    if (outcome == "not inspected") return PointHistoryView::tr("Not inspected");
    return kindText(outcome);
}

QString limitWord(const std::string& verdict) {
    if (verdict == "within") return PointHistoryView::tr("within");
    if (verdict == "below") return PointHistoryView::tr("below");
    if (verdict == "above") return PointHistoryView::tr("above");
    return text(verdict);
}

/// "4.8 qt ± 0.15, read on the dipstick, within"
QString valueWords(const archive::Sighting& one) {
    if (one.value.empty()) return {};
    QStringList words{estimateText(one.value, one.unit, one.uncertainty)};
    if (!one.from.empty()) words << text(round::fromText(one.from));
    words << limitWord(one.verdict);
    if (one.renewed) words << PointHistoryView::tr("renewed before it");
    return words.join(QStringLiteral(", "));
}

} // namespace

void SightingsModel::update(const std::vector<archive::Sighting>& sightings, LocalInstant now) {
    std::vector<Row> next;
    next.reserve(sightings.size());
    for (const archive::Sighting& one : sightings) {
        next.push_back({text(one.record), lookOf(one.what), outcomeWords(one.what), text(one.words),
                        valueWords(one), dayText(one.at, now.offsetMinutes), agoText(one.at, now.at),
                        text(one.by), one.grounds});
    }
    sync(rows, std::move(next), {AgoTextRole});
}

int SightingsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows.size());
}

QVariant SightingsModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const Row& row = rows[static_cast<std::size_t>(at.row())];
    switch (role) {
    case RecordIdRole:
        return row.recordId;
    case LookRole:
        return row.look;
    case OutcomeTextRole:
        return row.outcomeText;
    case GroundsRole:
        return row.grounds;
    case WordsRole:
        return row.words;
    case ValueTextRole:
        return row.valueText;
    case WhenTextRole:
        return row.whenText;
    case AgoTextRole:
        return row.agoText;
    case ByRole:
        return row.by;
    default:
        return {};
    }
}

QHash<int, QByteArray> SightingsModel::roleNames() const {
    return {{RecordIdRole, "recordId"}, {LookRole, "look"},       {OutcomeTextRole, "outcomeText"},
            {GroundsRole, "grounds"},   {WordsRole, "words"},     {ValueTextRole, "valueText"},
            {WhenTextRole, "whenText"}, {AgoTextRole, "agoText"}, {ByRole, "by"}};
}

PointHistoryView::PointHistoryView(const Services& handedIn, Background& beside, Report whereTo,
                                   QObject* parent)
    : QObject(parent), services(&handedIn), background(&beside), report(std::move(whereTo)) {}

void PointHistoryView::show(const QString& aircraft, const QString& point) {
    registration = aircraft;
    pointId = point;
    found.clear();
    rows.update(found, services->now());
    canMore = false;
    valuesWanted = valuesAtOnce;
    ++question;
    awaited = false;
    emit shown(aircraft, point);
    if (!point.isEmpty()) return ask({});
    emit changed();
}

QVariantList PointHistoryView::values() const {
    const int offset = services->now().offsetMinutes;
    QVariantList list;
    for (const archive::Sighting& one : found) {
        if (one.value.empty()) continue;
        if (list.size() == static_cast<qsizetype>(valuesWanted)) break;
        list << QVariantMap{{QStringLiteral("recordId"), text(one.record)},
                            {QStringLiteral("text"), estimateText(one.value, one.unit, one.uncertainty)},
                            {QStringLiteral("whenText"), dayText(one.at, offset)},
                            {QStringLiteral("by"), text(one.by)},
                            {QStringLiteral("renewed"), one.renewed}};
    }
    return list;
}

void PointHistoryView::more() {
    if (!awaited && !found.empty()) ask(found.back().record);
}

std::size_t PointHistoryView::measured() const {
    return static_cast<std::size_t>(
        std::ranges::count_if(found, [](const archive::Sighting& one) { return !one.value.empty(); }));
}

void PointHistoryView::moreValues() {
    valuesWanted += valuesAtOnce;
    emit changed();
    fillValues();
}

void PointHistoryView::fillValues() {
    if (canMore && measured() < valuesWanted) more();
}

void PointHistoryView::ask(const std::string& after) {
    awaited = true;
    background->run<std::vector<archive::Sighting>>(
        this,
        [aircraft = registration.toStdString(), point = pointId.toStdString(),
         after](const archive::Archive& archive) {
            return archive::history(archive, aircraft, point, page, after);
        },
        [this, mine = ++question](Result<std::vector<archive::Sighting>> sightings) {
            if (mine != question) return;
            awaited = false;
            if (sightings) {
                canMore = sightings->size() == page;
                found.insert(found.end(), std::make_move_iterator(sightings->begin()),
                             std::make_move_iterator(sightings->end()));
                rows.update(found, services->now());
            } else {
                report(sightings.error());
            }
            emit changed();
            if (valuesWanted > valuesAtOnce) fillValues(); // a page of records may have none
        });
    emit changed();
}

} // namespace ambit::view
