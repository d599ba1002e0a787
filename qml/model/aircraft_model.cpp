#include "model/aircraft_model.hpp"

#include "model/language.hpp"
#include "model/shown_airframe.hpp"
#include "model/words.hpp"

namespace ambit::view {

AircraftModel::AircraftModel(const Services& handedIn, Report whereTo, QObject* parent)
    : RowsModel(parent), services(&handedIn), report(std::move(whereTo)) {}

void AircraftModel::refresh() {
    const auto aircraft = services->archive.aircraft();
    if (!aircraft) return report(aircraft.error());
    std::vector<Row> next;
    for (const auto& one : *aircraft) {
        auto row = rowOf(one);
        if (!row) return report(row.error());
        next.push_back(std::move(*row));
    }
    sync(rows, std::move(next),
         {SerialRole, AirframeNameRole, CategoryRole, OpenRoundIdRole, OpenRoundTextRole, LastConclusionRole,
          LastTextRole});
}

/// What the airframe's text alone can tell is read once an airframe, not once a look.
Result<AircraftModel::Kind> AircraftModel::kindOf(const std::string& sha256) {
    const std::pair its(sha256, Language::spoken());
    if (const auto known = kinds.find(its); known != kinds.end()) return known->second;
    const auto airframe = airframeShown(services->archive, sha256);
    if (!airframe) return tl::unexpected(airframe.error());
    Kind kind{text(airframe->name), QString::fromLatin1(airframe::toText(airframe->category)), {}};
    for (const auto& walk : airframe->walks)
        kind.walks.emplace(walk.id, text(walk.name));
    return kinds.emplace(its, std::move(kind)).first->second;
}

Result<AircraftModel::Row> AircraftModel::rowOf(const archive::Aircraft& aircraft) {
    const auto kind = kindOf(aircraft.airframeSha256);
    if (!kind) return tl::unexpected(kind.error());
    const Instant now = services->now().at;
    Row row{text(aircraft.registration), text(aircraft.serial), kind->name, kind->category, {}, {}, {}, {}};
    const auto rounds = services->archive.rounds(aircraft.registration);
    if (!rounds) return tl::unexpected(rounds.error());
    const auto open =
        std::find_if(rounds->begin(), rounds->end(), [](const auto& round) { return !round.sealed; });
    if (open != rounds->end()) {
        const auto walk = kind->walks.find(open->walk);
        row.openRoundId = text(open->id);
        row.openRoundText = tr("%1, started %2")
                                .arg(walk == kind->walks.end() ? text(open->walk) : walk->second,
                                     agoText(open->openedAt, now));
    }
    const auto records = services->archive.records(aircraft.registration);
    if (!records) return tl::unexpected(records.error());
    if (open == rounds->end()) row.lastText = tr("No round yet");
    const auto last = std::find_if(records->begin(), records->end(),
                                   [](const auto& record) { return record.kind == "round"; });
    if (last != records->end()) {
        row.lastConclusion = text(last->conclusion);
        row.lastText = QStringList{conclusionText(last->conclusion == "fit"), agoText(last->concludedAt, now),
                                   text(last->signer)}
                           .join(QStringLiteral("\u00a0· "));
    }
    return row;
}

int AircraftModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows.size());
}

QVariant AircraftModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const Row& row = rows[static_cast<std::size_t>(at.row())];
    switch (role) {
    case RegistrationRole:
        return row.registration;
    case SerialRole:
        return row.serial;
    case AirframeNameRole:
        return row.airframeName;
    case CategoryRole:
        return row.category;
    case OpenRoundIdRole:
        return row.openRoundId;
    case OpenRoundTextRole:
        return row.openRoundText;
    case LastConclusionRole:
        return row.lastConclusion;
    case LastTextRole:
        return row.lastText;
    default:
        return {};
    }
}

QHash<int, QByteArray> AircraftModel::roleNames() const {
    return {{RegistrationRole, "registration"},     {SerialRole, "serial"},
            {AirframeNameRole, "airframeName"},     {CategoryRole, "category"},
            {OpenRoundIdRole, "openRoundId"},       {OpenRoundTextRole, "openRoundText"},
            {LastConclusionRole, "lastConclusion"}, {LastTextRole, "lastText"}};
}

} // namespace ambit::view
