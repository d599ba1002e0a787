#include "model/round_models.hpp"

#include "model/words.hpp"

namespace ambit::view {

// --- points here ------------------------------------------------------------------------------------------

void StandPointsModel::update(const Scene& scene, const Carried& carried) {
    std::vector<Row> next;
    for (const auto* point : pointsHere(scene.state, scene.airframe)) {
        Row row{point, lookOf(scene.state.points.at(point->id)), point == scene.point,
                carried.inAWord(point->id)};
        if (row.current && row.look == Look::todo) row.look = Look::next;
        next.push_back(std::move(row));
    }
    sync(rows, std::move(next), {LookRole, CurrentRole, CarriedRole});
}

int StandPointsModel::rowOf(const airframe::Point* point) const {
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.point == point; });
    return found == rows.end() ? -1 : static_cast<int>(found - rows.begin());
}

int StandPointsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows.size());
}

QVariant StandPointsModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const Row& row = rows[static_cast<std::size_t>(at.row())];
    switch (role) {
    case PointIdRole:
        return text(row.point->id);
    case NameRole:
        return text(row.point->name);
    case LookRole:
        return QString::fromLatin1(toText(row.look));
    case CurrentRole:
        return row.current;
    case CarriedRole:
        return row.carried;
    default:
        return {};
    }
}

QHash<int, QByteArray> StandPointsModel::roleNames() const {
    return {{PointIdRole, "pointId"},
            {NameRole, "name"},
            {LookRole, "look"},
            {CurrentRole, "current"},
            {CarriedRole, "carried"}};
}

// --- owed -------------------------------------------------------------------------------------------------

void OwedModel::update(const Scene& scene) {
    std::vector<Row> next;
    for (const auto& opening : scene.airframe.openings) {
        const auto now = scene.state.openings.find(opening.id);
        if (now == scene.state.openings.end() || !now->second.owed) continue;
        const Instant since = now->second.since.value_or(scene.state.openedAt);
        next.push_back({&opening, since, since == scene.state.openedAt, scene.state.opened.offsetMinutes});
    }
    sync(rows, std::move(next), {SinceTextRole});
}

int OwedModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows.size());
}

QVariant OwedModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const Row& row = rows[static_cast<std::size_t>(at.row())];
    switch (role) {
    case OpeningIdRole:
        return text(row.opening->id);
    case NameRole:
        return text(row.opening->name);
    case OwedTextRole:
        return text(row.opening->owed);
    case SinceTextRole:
        return row.fromStart ? tr("from the start")
                             : tr("since %1").arg(clockText(row.since, row.offsetMinutes));
    default:
        return {};
    }
}

QHash<int, QByteArray> OwedModel::roleNames() const {
    return {{OpeningIdRole, "openingId"},
            {NameRole, "name"},
            {OwedTextRole, "owedText"},
            {SinceTextRole, "sinceText"}};
}

// --- review -----------------------------------------------------------------------------------------------

void ReviewModel::update(const Scene& scene) {
    std::vector<Row> next;
    const auto kindOf = [](const round::Settled& settled) {
        if (settled.outcome == round::Outcome::notInspected) return Kind::notInspected;
        return settled.severity == round::Severity::grounds ? Kind::grounds : Kind::assess;
    };
    for (const auto& point : scene.airframe.points) {
        const auto now = scene.state.points.find(point.id);
        if (now == scene.state.points.end()) continue;
        const auto outcome = now->second.outcome();
        if (outcome == round::Outcome::sound) continue;
        Row row{Kind::unsettled, &point, nullptr, now->second.settlings.size(), nullptr};
        if (outcome) {
            row.settled = &now->second.last()->what;
            row.kind = kindOf(*row.settled);
        }
        next.push_back(row);
    }
    for (const auto& opening : scene.airframe.openings)
        if (const auto now = scene.state.openings.find(opening.id);
            now != scene.state.openings.end() && now->second.owed)
            next.push_back({Kind::owed, nullptr, &opening, 0, nullptr});
    std::stable_sort(next.begin(), next.end(), [](const Row& a, const Row& b) { return a.kind < b.kind; });
    sync(rows, std::move(next), {DetailRole, BasisRole, ValueRole, PhotosRole});
}

int ReviewModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows.size());
}

namespace {

QStringList photosOf(const round::Settled* settled) {
    QStringList sources;
    if (settled != nullptr)
        for (const auto& photo : settled->photos)
            sources << photoSource(photo.sha256);
    return sources;
}

} // namespace

QVariant ReviewModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const Row& row = rows[static_cast<std::size_t>(at.row())];
    const round::Settled* settled = row.settled;
    switch (role) {
    case KindRole:
        return row.kind == Kind::owed           ? QStringLiteral("owed")
               : row.kind == Kind::unsettled    ? QStringLiteral("unsettled")
               : row.kind == Kind::notInspected ? QStringLiteral("notInspected")
                                                : QStringLiteral("finding");
    case ItemIdRole:
        return text(row.point != nullptr ? row.point->id : row.opening->id);
    case TitleRole:
        return text(row.point != nullptr ? row.point->name : row.opening->name);
    case DetailRole:
        if (row.kind == Kind::owed) return text(row.opening->owed);
        if (settled == nullptr) return tr("not settled");
        return text(row.kind == Kind::notInspected ? settled->why : settled->words);
    case BasisRole:
        return settled == nullptr ? QString() : text(settled->basis);
    case SeverityRole:
        return row.kind == Kind::grounds || row.kind == Kind::assess
                   ? QString::fromLatin1(airframe::toText(settled->severity))
                   : QString();
    case ValueRole:
        return settled == nullptr ? QString() : valueText(*settled, *row.point);
    case PhotosRole:
        return photosOf(settled);
    default:
        return {};
    }
}

QHash<int, QByteArray> ReviewModel::roleNames() const {
    return {{KindRole, "kind"},   {ItemIdRole, "itemId"},     {TitleRole, "title"}, {DetailRole, "detail"},
            {BasisRole, "basis"}, {SeverityRole, "severity"}, {ValueRole, "value"}, {PhotosRole, "photos"}};
}

} // namespace ambit::view
