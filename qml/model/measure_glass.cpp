#include "model/measure_glass.hpp"

#include <QPainter>
#include <QPolygonF>
#include <algorithm>

namespace ambit::view {

namespace {

constexpr double closely = 2; ///< pixels of the screen to one of the photo
constexpr double crossGap = 5;

QTransform transformOf(const measure::Homography& map) {
    const auto& m = map.matrix(); // by rows: x' = (m0 x + m1 y + m2) / (m6 x + m7 y + m8)
    return {m[0], m[3], m[6], m[1], m[4], m[7], m[2], m[5], m[8]};
}

/// The same place and direction in both: the first mark, and the way to the second; else the card's.
struct Anchor {
    QPointF at;
    QPointF to;
};

Anchor anchorOf(const QTransform& toPlane, const std::vector<QPointF>& marks) {
    if (marks.size() >= 2) return {toPlane.map(marks[0]), toPlane.map(marks[1])};
    return {{0, 0}, {1, 0}};
}

} // namespace

MeasureGlass::MeasureGlass(QQuickItem* parent) : QQuickPaintedItem(parent) {
    setClip(true);
    connect(this, &MeasureGlass::lookChanged, this, [this] { update(); });
}

void MeasureGlass::setView(MeasureView* view) {
    if (shown == view) return;
    if (shown != nullptr) shown->disconnect(this);
    shown = view;
    if (shown != nullptr)
        for (const auto signal :
             {&MeasureView::changed, &MeasureView::heldChanged, &MeasureView::lastChanged})
            connect(shown, signal, this, [this] { update(); });
    emit viewChanged();
    update();
}

QTransform MeasureGlass::whole(const QSizeF& size) const {
    const double scale = std::min(width() / size.width(), height() / size.height());
    QTransform to;
    to.translate(width() / 2, height() / 2);
    to.scale(scale, scale);
    to.translate(-size.width() / 2, -size.height() / 2);
    return to;
}

QTransform MeasureGlass::place() const {
    if (shown == nullptr || shown->picture().isNull()) return {};
    if (shown->held() < 0) return whole(shown->picture().size());
    const QPointF at = shown->heldAt();
    QTransform to;
    to.translate(width() / 2, height() / 2);
    to.scale(closely, closely);
    to.translate(-at.x(), -at.y());
    return to;
}

/// The old photo's plane laid over the new one's, and that into the new picture.
QTransform MeasureGlass::lastPlace() const {
    const auto now = shown->plane();
    const auto then = shown->lastPlane();
    if (!now || !then || shown->held() >= 0) return whole(shown->lastPicture().size());
    const QTransform fromOld = transformOf(*then).inverted();
    const QTransform toNew = transformOf(*now);
    const Anchor old = anchorOf(fromOld, shown->lastMarks());
    const Anchor anew = anchorOf(toNew.inverted(), shown->marks());
    const QLineF a(old.at, old.to);
    const QLineF b(anew.at, anew.to);
    QTransform moved;
    moved.translate(anew.at.x(), anew.at.y());
    moved.rotate(a.angle() - b.angle()); // QLineF counts the other way round
    moved.translate(-old.at.x(), -old.at.y());
    return fromOld * moved * toNew * place();
}

QPointF MeasureGlass::onScreen(qreal x, qreal y) const {
    return place().map(QPointF(x, y));
}

void MeasureGlass::touch(qreal x, qreal y, qreal reach) {
    if (shown == nullptr || shown->held() >= 0) return;
    bool can = false;
    const QTransform back = place().inverted(&can);
    if (!can) return;
    const QPointF at = back.map(QPointF(x, y));
    shown->touch(at.x(), at.y(), reach * back.m11());
}

void MeasureGlass::draw(qreal dx, qreal dy) {
    if (shown != nullptr) shown->nudge(-dx / closely, -dy / closely);
}

void MeasureGlass::step(int dx, int dy) {
    if (shown != nullptr) shown->nudge(dx, dy);
}

void MeasureGlass::paint(QPainter* painter) {
    painter->fillRect(QRectF(0, 0, width(), height()), ground);
    if (shown == nullptr) return;
    painter->setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    const bool old = showsLast && !shown->lastPicture().isNull();
    const QImage& image = old ? shown->lastPicture() : shown->picture();
    if (image.isNull()) return;
    const QTransform to = old ? lastPlace() : place();
    painter->save();
    painter->setTransform(to, true);
    painter->setOpacity(shine);
    painter->drawImage(QPointF(-0.5, -0.5), image); // the first pixel's middle is at 0, 0
    painter->restore();
    if (old) return;
    drawMarks(*painter, to);
    if (shown->held() >= 0) drawCross(*painter);
}

void MeasureGlass::drawMarks(QPainter& painter, const QTransform& to) const {
    const auto twice = [&](double wide, const auto& how) {
        for (const auto& [color, width] : {std::pair(rim, wide + 2), std::pair(ink, wide)}) {
            painter.setPen(QPen(color, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
            painter.setBrush(Qt::NoBrush);
            how();
        }
    };
    const auto& corners = shown->corners();
    if (shown->withCard() && corners.size() == 4 && (shown->looksAtCorners() || shown->isMarking())) {
        QPolygonF card;
        for (const QPointF& corner : corners)
            card << to.map(corner);
        twice(stroke / 2, [&] { painter.drawPolygon(card); });
        if (shown->asksSide()) twice(stroke * 2, [&] { painter.drawLine(card[0], card[1]); });
    }
    if (!shown->isMarking()) return;
    QPolygonF marks;
    for (const QPointF& mark : shown->marks())
        marks << to.map(mark);
    using What = round::Measurement::What;
    twice(stroke, [&] {
        switch (shown->kind()) {
        case What::distance:
            painter.drawPolyline(marks);
            break;
        case What::margin:
            if (marks.size() == 3) painter.drawLine(marks[1], marks[2]);
            break;
        case What::area:
        case What::width:
            if (marks.size() > 2) painter.drawPolygon(marks);
            if (marks.size() == 2) painter.drawPolyline(marks);
            break;
        case What::slip:
        case What::offset:
            if (marks.size() > 1) painter.drawLine(marks[0], marks[1]);
            if (marks.size() > 3) painter.drawLine(marks[2], marks[3]);
            break;
        }
    });
    for (const QPointF& end : shown->known())
        marks << to.map(end);
    for (int i = 0; i < marks.size(); ++i)
        if (i != shown->held()) twice(stroke, [&] { painter.drawEllipse(marks[i], stroke * 3, stroke * 3); });
}

void MeasureGlass::drawCross(QPainter& painter) const {
    const QPointF middle(width() / 2, height() / 2);
    const double reach = std::min(width(), height()) * 0.2;
    for (const auto& [color, wide] : {std::pair(rim, stroke + 2), std::pair(ink, stroke)}) {
        painter.setPen(QPen(color, wide));
        for (const QPointF& way : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)})
            painter.drawLine(middle + way * crossGap, middle + way * reach);
        painter.drawPoint(middle);
    }
}

} // namespace ambit::view
