#include "paper/measured_marks.hpp"

#include "base/decimal.hpp"

#include <QPolygonF>

namespace ambit::paper {

namespace {

using round::Measurement;

/// From the upright photo's pixels to the box in which it stands.
class Places {
public:
    Places(const QRectF& its, const Measurement& in)
        : box(its), across(box.width() / static_cast<double>(in.width)),
          down(box.height() / static_cast<double>(in.height)) {}

    [[nodiscard]] QPointF at(const round::PhotoPlace& place) const {
        return {box.left() + (number(place.x) + 0.5) * across, box.top() + (number(place.y) + 0.5) * down};
    }
    [[nodiscard]] QPolygonF all(const std::vector<round::PhotoPlace>& places) const {
        QPolygonF line;
        for (const round::PhotoPlace& place : places)
            line << at(place);
        return line;
    }

private:
    static double number(const std::string& text) {
        const auto value = Decimal::parse(text);
        return value ? value->approximate() : 0;
    }
    QRectF box;
    double across;
    double down;
};

/// Black on white.
void drawTwice(QPainter& painter, double width, Qt::PenStyle style,
               const std::function<void(QPainter&)>& draw) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink::paper, width + 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    draw(painter);
    painter.setPen(QPen(ink::black, width, style, Qt::FlatCap, Qt::RoundJoin));
    draw(painter);
}

void drawCross(QPainter& painter, const QPointF& at) {
    constexpr double reach = 4;
    drawTwice(painter, 0.9, Qt::SolidLine, [&](QPainter& on) {
        on.drawLine(at - QPointF(reach, 0), at + QPointF(reach, 0));
        on.drawLine(at - QPointF(0, reach), at + QPointF(0, reach));
    });
}

void drawLines(QPainter& painter, const Measurement& measurement, const QPolygonF& marks) {
    drawTwice(painter, 0.8, Qt::SolidLine, [&](QPainter& on) {
        switch (measurement.what) {
        case Measurement::What::area:
        case Measurement::What::width:
            on.drawPolygon(marks);
            break;
        case Measurement::What::margin: // of the first mark to the line through the others
            on.drawPolyline(marks.mid(1));
            break;
        case Measurement::What::slip: // the bolt's half of the stripe, and the part's
        case Measurement::What::offset:
            on.drawPolyline(marks.mid(0, 2));
            on.drawPolyline(marks.mid(2));
            break;
        case Measurement::What::distance:
            on.drawPolyline(marks);
            break;
        }
    });
}

void drawOver(QPainter& painter, const QRectF& box, const Measurement& measurement) {
    const Places places(box, measurement);
    painter.save();
    painter.setClipRect(box, Qt::IntersectClip);
    if (measurement.card)
        drawTwice(painter, 0.8, Qt::DashLine,
                  [&](QPainter& on) { on.drawPolygon(places.all(measurement.card->corners)); });
    if (measurement.known)
        drawTwice(painter, 0.8, Qt::DotLine,
                  [&](QPainter& on) { on.drawPolyline(places.all(measurement.known->marks)); });
    const QPolygonF marks = places.all(measurement.marks);
    drawLines(painter, measurement, marks);
    // Of an outline the corners are plain enough.
    if (marks.size() <= 4)
        for (const QPointF& mark : marks)
            drawCross(painter, mark);
    painter.restore();
}

} // namespace

std::vector<Over> measuredOver(const round::Settled& settled) {
    std::vector<Over> over;
    for (const round::Photo& photo : settled.photos) {
        std::vector<Measurement> its;
        for (const Measurement& one : settled.measurements)
            if (one.photo == photo.sha256) its.push_back(one);
        if (its.empty())
            over.emplace_back();
        else
            over.emplace_back([its](QPainter& painter, const QRectF& box) {
                for (const Measurement& one : its)
                    drawOver(painter, box, one);
            });
    }
    return over;
}

} // namespace ambit::paper
