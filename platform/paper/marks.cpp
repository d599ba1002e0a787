#include "paper/marks.hpp"

namespace ambit::paper {

namespace {

void hatch(QPainter& painter, const QPainterPath& area, double step, double thickness) {
    const QRectF box = area.boundingRect();
    painter.save();
    painter.setClipPath(area, Qt::IntersectClip);
    painter.setPen(QPen(ink::black, thickness, Qt::SolidLine, Qt::FlatCap));
    // Lines on one grid for the whole page, so that neighbours join.
    const double from = std::floor((box.left() + box.top()) / step) * step;
    const int lines = static_cast<int>((box.right() + box.bottom() - from) / step);
    for (int i = 0; i <= lines; ++i) {
        const double sum = from + i * step;
        painter.drawLine(QPointF(sum - box.top(), box.top()), QPointF(sum - box.bottom(), box.bottom()));
    }
    painter.restore();
}

void cutCorner(QPainter& painter, const QPointF& corner, double size, const QColor& color) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    painter.drawPolygon(QPolygonF({corner, corner + QPointF(size, 0), corner + QPointF(0, size)}));
    painter.setBrush(Qt::NoBrush);
}

} // namespace

Mark markOf(const round::Settled& settled) {
    switch (settled.outcome) {
    case round::Outcome::sound:
        return Mark::sound;
    case round::Outcome::notInspected:
        return Mark::notInspected;
    case round::Outcome::finding:
        break;
    }
    return settled.severity == airframe::Severity::grounds ? Mark::grounds : Mark::assess;
}

QString markWords(Mark mark) {
    switch (mark) {
    case Mark::sound:
        return QStringLiteral("sound");
    case Mark::notInspected:
        return QStringLiteral("not inspected");
    case Mark::assess:
        return QStringLiteral("finding, for assessment");
    case Mark::grounds:
        return QStringLiteral("finding, grounds the aircraft");
    case Mark::hollow:
        break;
    }
    return QStringLiteral("not in this walk");
}

void drawMark(QPainter& painter, const QPointF& at, double side, Mark mark) {
    const QRectF box(at, QSizeF(side, side));
    QPainterPath path;
    path.addRect(box);
    if (mark == Mark::sound) {
        painter.fillPath(path, ink::solid);
        return;
    }
    if (mark == Mark::notInspected) hatch(painter, path, side / 3.5, side / 12);
    if (mark == Mark::assess) cutCorner(painter, box.topLeft(), side * 0.8, ink::amber);
    if (mark == Mark::grounds) cutCorner(painter, box.topLeft(), side * 0.8, ink::red);
    painter.setPen(QPen(ink::black, side / 10, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.setBrush(Qt::NoBrush);
    const double inset = side / 20;
    painter.drawRect(box.adjusted(inset, inset, -inset, -inset));
}

void fillArea(QPainter& painter, const QPainterPath& area, Mark mark) {
    if (mark == Mark::hollow) return;
    const bool finding = mark == Mark::assess || mark == Mark::grounds;
    if (mark == Mark::sound) painter.fillPath(area, ink::fill);
    if (mark == Mark::notInspected) {
        painter.fillPath(area, ink::paper);
        hatch(painter, area, 4, 0.6);
    }
    if (finding) {
        painter.fillPath(area, mark == Mark::grounds ? ink::redFill : ink::amberFill);
        const QRectF box = area.boundingRect();
        painter.save();
        painter.setClipPath(area, Qt::IntersectClip);
        cutCorner(painter, box.topLeft(), std::max(7.0, std::min(box.width(), box.height()) * 0.55),
                  mark == Mark::grounds ? ink::red : ink::amber);
        painter.restore();
    }
}

void drawCutBox(QPainter& painter, const QRectF& box, const QColor& color) {
    cutCorner(painter, box.topLeft(), std::min(14.0, box.height()), color);
    painter.setPen(QPen(color, 0.9, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter.drawRect(box);
}

} // namespace ambit::paper
