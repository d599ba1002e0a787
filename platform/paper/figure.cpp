#include "paper/figure.hpp"

namespace ambit::paper {

namespace {

using airframe::PartKind;

QColor fillOf(PartKind kind) {
    switch (kind) {
    case PartKind::glass:
        return {0xe2, 0xe6, 0xea};
    case PartKind::rotor:
    case PartKind::propeller:
        return ink::paper;
    case PartKind::gear:
    case PartKind::tread:
        return {0xe9, 0xe9, 0xe6};
    case PartKind::body:
    case PartKind::wing:
    case PartKind::tail:
        break;
    }
    return {0xf6, 0xf6, 0xf3};
}

QRectF boundsOf(const RecordView& view) {
    QPolygonF all;
    const auto take = [&](const airframe::Outline& outline) {
        for (const airframe::Place& place : outline)
            all << QPointF(place.x, place.y);
    };
    for (const airframe::Part& part : view.airframe->parts)
        if (airframe::holds(part.when, view.state.settings)) take(part.outline);
    for (const airframe::Zone& zone : view.airframe->zones)
        take(zone.outline);
    return all.boundingRect();
}

/// The aircraft's outline as one area. All parts run the same way round, so that their overlaps stay filled.
QPainterPath silhouette(const RecordView& view, const Scale& scale) {
    QPainterPath whole;
    whole.setFillRule(Qt::WindingFill);
    for (const airframe::Part& part : view.airframe->parts) {
        if (!airframe::holds(part.when, view.state.settings)) continue;
        double twiceArea = 0;
        for (std::size_t i = 0; i < part.outline.size(); ++i) {
            const airframe::Place& a = part.outline[i];
            const airframe::Place& b = part.outline[(i + 1) % part.outline.size()];
            twiceArea += a.x * b.y - b.x * a.y;
        }
        airframe::Outline outline = part.outline;
        if (twiceArea < 0) std::reverse(outline.begin(), outline.end());
        whole.addPath(scale.map(outline));
    }
    return whole;
}

/// Sound colours the aircraft within the zone; what isn't sound takes the whole zone and is seen at once.
void fillZone(QPainter& painter, const QPainterPath& zone, const QPainterPath& aircraft, Mark mark) {
    painter.save();
    if (mark == Mark::sound && zone.intersects(aircraft)) painter.setClipPath(aircraft, Qt::IntersectClip);
    fillArea(painter, zone, mark);
    painter.restore();
}

void strokeZone(QPainter& painter, const QPainterPath& area, Mark mark) {
    QPen pen(mark > Mark::sound ? ink::black : ink::edge, mark > Mark::sound ? 0.8 : 0.4);
    if (mark == Mark::hollow) pen.setDashPattern({3, 3});
    pen.setJoinStyle(Qt::MiterJoin);
    painter.strokePath(area, pen);
}

} // namespace

std::map<std::string, Mark> zoneMarks(const RecordView& view) {
    std::map<std::string, Mark> marks;
    for (const PointView& point : view.points) {
        Mark& worst = marks[point.point->zone];
        worst = std::max(worst, markOf(*point.counting().settled));
    }
    return marks;
}

Scale::Scale(const RecordView& view, const QRectF& box) {
    const QRectF metres = boundsOf(view);
    points =
        std::min(box.width() / std::max(metres.width(), 0.1), box.height() / std::max(metres.height(), 0.1));
    origin = box.center() - QPointF(metres.center().x() * points, -metres.center().y() * points);
}

QPointF Scale::map(const airframe::Place& place) const {
    return origin + QPointF(place.x * points, -place.y * points);
}

QPainterPath Scale::map(const airframe::Outline& outline) const {
    QPolygonF polygon;
    for (const airframe::Place& place : outline)
        polygon << map(place);
    QPainterPath path;
    path.addPolygon(polygon);
    path.closeSubpath();
    return path;
}

void drawFigure(QPainter& painter, const RecordView& view, const Scale& scale,
                const std::map<std::string, Mark>& marks) {
    const auto& parts = view.airframe->parts;
    for (const airframe::Part& part : parts)
        if (airframe::holds(part.when, view.state.settings))
            painter.fillPath(scale.map(part.outline), fillOf(part.kind));
    const QPainterPath aircraft = silhouette(view, scale);
    const auto markFor = [&](const airframe::Zone& zone) {
        const auto found = marks.find(zone.id);
        return found == marks.end() ? Mark::hollow : found->second;
    };
    for (const airframe::Zone& zone : view.airframe->zones)
        fillZone(painter, scale.map(zone.outline), aircraft, markFor(zone));
    QPen outline(ink::black, 0.5);
    outline.setJoinStyle(Qt::RoundJoin);
    for (const airframe::Part& part : parts)
        if (airframe::holds(part.when, view.state.settings))
            painter.strokePath(scale.map(part.outline), outline);
    // What is not sound gets the last word where zones overlap.
    for (const bool sound : {true, false})
        for (const airframe::Zone& zone : view.airframe->zones)
            if ((markFor(zone) <= Mark::sound) == sound)
                strokeZone(painter, scale.map(zone.outline), markFor(zone));
}

} // namespace ambit::paper
