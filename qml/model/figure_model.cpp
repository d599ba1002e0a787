#include "model/figure_model.hpp"

#include "model/length.hpp"
#include "model/words.hpp"

#include <QPolygonF>

namespace ambit::view {

namespace {

/// The screen's y runs down, the airframe's forward.
QPointF screen(airframe::Place place) {
    return {place.x, -place.y};
}

QVariantList pointsOf(const std::vector<airframe::Place>& places) {
    QVariantList points;
    points.reserve(static_cast<qsizetype>(places.size()));
    for (const auto& place : places)
        points << screen(place);
    return points;
}

QRectF boundsOf(const airframe::Airframe& airframe, const airframe::Walk& walk) {
    QPolygonF all;
    const auto add = [&](const airframe::Outline& outline) {
        for (const auto& place : outline)
            all << screen(place);
    };
    for (const auto& part : airframe.parts)
        add(part.outline);
    for (const auto& zone : airframe.zones)
        add(zone.outline);
    for (const auto& stand : airframe.stands)
        add({stand.at});
    add({walk.start, walk.end});
    return all.boundingRect();
}

/// Of the area, so that an arrow ends well inside.
QPointF middleOf(const airframe::Zone& zone) {
    double twice = 0;
    QPointF sum;
    for (std::size_t i = 0; i < zone.outline.size(); ++i) {
        const QPointF a = screen(zone.outline[i]);
        const QPointF b = screen(zone.outline[(i + 1) % zone.outline.size()]);
        const double cross = a.x() * b.y() - b.x() * a.y();
        twice += cross;
        sum += (a + b) * cross;
    }
    return twice == 0 ? screen(zone.outline.front()) : sum / (3 * twice);
}

} // namespace

FigureModel::FigureModel(const airframe::Airframe& description, const std::string& walkId, QObject* parent)
    : QObject(parent), airframe(&description), walk(description.walk(walkId)), ground(description),
      box(boundsOf(description, *walk)) {}

void FigureModel::update(const Scene& scene) {
    updateParts(scene);
    standRows.update(scene);
    updateMarked(scene);
    updateWay(scene);
    zoneRows.update(scene);
    updateReach(scene);
}

void FigureModel::updateParts(const Scene& scene) {
    if (partsShown && shownSettings == scene.state.settings) return;
    partsShown = true;
    shownSettings = scene.state.settings;
    drawn.clear();
    for (const auto& part : airframe->parts)
        if (airframe::holds(part.when, shownSettings))
            drawn << QVariantMap{{QStringLiteral("id"), text(part.id)},
                                 {QStringLiteral("kind"), QString::fromLatin1(airframe::toText(part.kind))},
                                 {QStringLiteral("outline"), pointsOf(part.outline)},
                                 {QStringLiteral("solid"), part.solid}};
    emit partsChanged();
}

/// An area's number never means another one: the numbers tell whether anything has changed.
void FigureModel::updateMarked(const Scene& scene) {
    std::vector<std::int64_t> numbers;
    std::vector<airframe::Outline> outlines;
    for (const auto& [number, area] : scene.state.marked) {
        numbers.push_back(number);
        outlines.push_back(area.outline);
    }
    if (numbers == shownMarks) return;
    shownMarks = std::move(numbers);
    marks.clear();
    for (const auto& [number, area] : scene.state.marked)
        marks << QVariantMap{{QStringLiteral("area"), static_cast<int>(number)},
                             {QStringLiteral("why"), text(area.why)},
                             {QStringLiteral("outline"), pointsOf(area.outline)}};
    ground = walk::Ground(*airframe, outlines);
    legs.clear();
    wayShown = false;
    emit markedChanged();
}

void FigureModel::updateWay(const Scene& scene) {
    std::vector<std::string> goes;
    for (const auto& step : scene.left)
        if (const auto* go = std::get_if<walk::Go>(&step)) goes.push_back(go->stand);
    if (wayShown && goes == aheadStands && scene.state.standsReached == doneStands) return;
    wayShown = true;
    aheadStands = std::move(goes);
    doneStands = scene.state.standsReached;
    const auto draw = [&](std::string place, const std::vector<std::string>& stands) {
        QVariantList way;
        for (const auto& stand : stands) {
            if (stand != place) way << leg(place, stand);
            place = stand;
        }
        return way;
    };
    done = draw({}, doneStands);
    ahead = draw(scene.state.stand.value_or(""), aheadStands);
    // Home again: the last leg is costed too.
    if (const std::string last = aheadStands.empty() ? scene.state.stand.value_or("") : aheadStands.back();
        !last.empty() && scene.state.phase != round::Phase::sealed)
        ahead << leg(last, {});
    emit wayChanged();
}

/// "" is the walk's start where one comes from, its end where one goes to.
const QVariant& FigureModel::leg(const std::string& fromStand, const std::string& toStand) {
    const auto [known, isNew] = legs.try_emplace({fromStand, toStand});
    if (!isNew) return known->second;
    const airframe::Place start = fromStand.empty() ? walk->start : airframe->stand(fromStand)->at;
    const airframe::Place goal = toStand.empty() ? walk->end : airframe->stand(toStand)->at;
    const auto way = ground.way(start, goal);
    // Where there is no way none is drawn: a straight line would lead through the machine.
    known->second = way ? pointsOf(way->places) : QVariantList{};
    return known->second;
}

void FigureModel::updateReach(const Scene& scene) {
    const airframe::Stand* stand = scene.state.stand ? airframe->stand(*scene.state.stand) : nullptr;
    const airframe::Zone* zone =
        stand == nullptr || scene.point == nullptr ? nullptr : airframe->zone(scene.point->zone);
    const QPointF start = stand == nullptr ? QPointF() : screen(stand->at);
    if (zone == reachZone && start == from) return;
    reachZone = zone;
    from = start;
    if (zone != nullptr) to = middleOf(*zone);
    emit reachChanged();
}

// --- zones ------------------------------------------------------------------------------------------------

namespace {

/// A finding is shown whatever is left beside it; then what is left; then what wasn't looked at.
Look together(Look a, Look b) {
    for (const Look look : {Look::finding, Look::todo, Look::notInspected, Look::sound})
        if (a == look || b == look) return look;
    return Look::none;
}

} // namespace

void ZonesModel::update(const Scene& scene) {
    std::vector<Row> next;
    next.reserve(scene.airframe.zones.size());
    for (const auto& zone : scene.airframe.zones)
        next.push_back({&zone});
    const auto rowOf = [&](const std::string& zone) {
        return std::find_if(next.begin(), next.end(), [&](const Row& row) { return row.zone->id == zone; });
    };
    for (const auto& point : scene.airframe.points) {
        const auto now = scene.state.points.find(point.id);
        if (now == scene.state.points.end()) continue;
        const auto row = rowOf(point.zone);
        if (row == next.end()) continue;
        row->look = together(row->look, lookOf(now->second));
        row->current = row->current || &point == scene.point;
        ++row->total;
        if (now->second.settled) ++row->settled;
        for (const auto& opening : point.closes)
            row->openOwed = row->openOwed || scene.state.openings.at(opening).owed;
    }
    sync(rows, std::move(next), {LookRole, CurrentRole, OpenOwedRole, SettledRole});
}

int ZonesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows.size());
}

QVariant ZonesModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const Row& row = rows[static_cast<std::size_t>(at.row())];
    switch (role) {
    case ZoneIdRole:
        return text(row.zone->id);
    case NameRole:
        return text(row.zone->name);
    case OutlineRole:
        return pointsOf(row.zone->outline);
    case LookRole:
        return QString::fromLatin1(toText(row.look));
    case CurrentRole:
        return row.current;
    case OpenOwedRole:
        return row.openOwed;
    case SettledRole:
        return row.settled;
    case TotalRole:
        return row.total;
    default:
        return {};
    }
}

QHash<int, QByteArray> ZonesModel::roleNames() const {
    return {{ZoneIdRole, "zoneId"},   {NameRole, "name"},       {OutlineRole, "outline"},
            {LookRole, "look"},       {CurrentRole, "current"}, {OpenOwedRole, "openOwed"},
            {SettledRole, "settled"}, {TotalRole, "total"}};
}

// --- stands -----------------------------------------------------------------------------------------------

void StandsModel::update(const Scene& scene) {
    std::vector<Row> next;
    const auto add = [&](const std::string& id, Where where) {
        const airframe::Stand* stand = scene.airframe.stand(id);
        const auto row =
            std::find_if(next.begin(), next.end(), [&](const Row& one) { return one.stand == stand; });
        if (row != next.end())
            row->where = where;
        else
            next.push_back({stand, static_cast<int>(next.size()) + 1, where, {}});
    };
    for (const auto& stand : scene.state.standsReached)
        add(stand, Where::done);
    for (const auto& step : scene.left)
        if (const auto* go = std::get_if<walk::Go>(&step)) add(go->stand, Where::ahead);
    if (scene.state.stand) add(*scene.state.stand, Where::current);
    for (const auto& [id, blocked] : scene.state.blocked) {
        const airframe::Stand* stand = scene.airframe.stand(id);
        auto row = std::find_if(next.begin(), next.end(), [&](const Row& one) { return one.stand == stand; });
        if (row == next.end()) row = next.insert(row, {stand, 0, Where::ahead, {}});
        row->blocked = blocked.why;
    }
    sync(rows, std::move(next), {NumberRole, LookRole, BlockedRole});
}

int StandsModel::numberOf(const std::string& stand) const {
    const auto row =
        std::find_if(rows.begin(), rows.end(), [&](const Row& one) { return one.stand->id == stand; });
    return row == rows.end() ? 0 : row->number;
}

int StandsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows.size());
}

QVariant StandsModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const Row& row = rows[static_cast<std::size_t>(at.row())];
    switch (role) {
    case StandIdRole:
        return text(row.stand->id);
    case NameRole:
        return text(row.stand->name);
    case NumberRole:
        return row.number;
    case PlaceXRole:
        return screen(row.stand->at).x();
    case PlaceYRole:
        return screen(row.stand->at).y();
    case RaisedRole:
        return row.stand->raised();
    case LookRole:
        return row.where == Where::done      ? QStringLiteral("done")
               : row.where == Where::current ? QStringLiteral("current")
                                             : QStringLiteral("ahead");
    case BlockedRole:
        return text(row.blocked);
    default:
        return {};
    }
}

QHash<int, QByteArray> StandsModel::roleNames() const {
    return {{StandIdRole, "standId"}, {NameRole, "name"},      {NumberRole, "number"},
            {PlaceXRole, "placeX"},   {PlaceYRole, "placeY"},  {RaisedRole, "raised"},
            {LookRole, "look"},       {BlockedRole, "blocked"}};
}

QString FigureModel::lengthText(double metres) {
    return view::lengthText(metres, Grain::fine);
}

void FigureModel::sayAnew() {
    zoneRows.sayAnew();
    standRows.sayAnew();
}

} // namespace ambit::view
