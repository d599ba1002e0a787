#include "model/trend_chart.hpp"

#include "model/trend_figures.hpp"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace ambit::view {

namespace {

using Figures = TrendFigures;
using Value = Figures::Value;
using Band = Figures::Band;
using Range = AxisRange;

constexpr std::size_t mostWhole = 400; ///< values drawn each for itself

class Chart {
public:
    Chart(QPainter& target, const Figures& told, const ChartLook& how)
        : painter(target), figures(told), look(how), metrics(how.font), em(metrics.height() * how.fontScale) {
    }

    void draw(const QRectF& box) {
        if (box.width() < 12 * em || box.height() < 8 * em) return;
        layOut(box);
        const QRectF words(box.left(), box.top(), box.width(), em);
        say(fitting(look.up, words.width()), words.topLeft(), look.ink);
        drawGrid();
        painter.save();
        painter.setClipRect(plot, Qt::IntersectClip);
        drawBand();
        drawRenewed();
        if (figures.min) drawLimit(*figures.min, false);
        if (figures.max) drawLimit(*figures.max, true);
        drawLine();
        drawValues();
        painter.restore();
        drawAxes();
        drawCrossing();
        drawFoot(box.bottom() - em);
    }

private:
    QPainter& painter;
    const Figures& figures;
    const ChartLook& look;
    QFontMetricsF metrics;
    double em;
    QRectF plot;
    Range x, y;
    Ticks xTicks, yTicks;

    [[nodiscard]] double width(const QString& words) const {
        return metrics.horizontalAdvance(words) * look.fontScale;
    }
    [[nodiscard]] QString fitting(const QString& words, double room) const {
        return metrics.elidedText(words, Qt::ElideRight, room / look.fontScale);
    }
    [[nodiscard]] QString figure(double value, int decimals) const {
        return QString::fromStdString(fixed(value, decimals))
            .replace(u'.', look.point)
            .replace(u'-', QChar(0x2212));
    }
    [[nodiscard]] QPointF at(double px, double py) const {
        return {plot.left() + (px - x.from) / x.span() * plot.width(),
                plot.bottom() - (py - y.from) / y.span() * plot.height()};
    }

    void say(const QString& words, const QPointF& corner, const QColor& color) {
        painter.save();
        painter.translate(corner);
        painter.scale(look.fontScale, look.fontScale);
        painter.setFont(look.font);
        painter.setPen(color);
        painter.drawText(QPointF(0, metrics.ascent()), words);
        painter.restore();
    }
    /// With what lies behind it covered.
    void label(const QString& words, const QPointF& corner, const QColor& color) {
        painter.fillRect(QRectF(corner, QSizeF(width(words), em)).adjusted(-em * 0.2, 0, em * 0.2, 0),
                         look.ground);
        say(words, corner, color);
    }

    [[nodiscard]] double widestOf(const Ticks& ticks) const {
        double widest = 0;
        for (const double tick : ticks.at)
            widest = std::max(widest, width(figure(tick, ticks.decimals)));
        return widest;
    }

    void layOut(const QRectF& box) {
        x = figures.across();
        y = figures.up();
        const double top = box.top() + 1.4 * em;
        const double bottom = box.bottom() - 2.6 * em;
        // Beyond a limit there is room for its words.
        const double words = std::min(0.3, 1.7 * em / (bottom - top));
        const double below = figures.min && *figures.min <= y.from ? words : 0.05;
        const double above = figures.max && *figures.max >= y.to ? words : 0.05;
        y.pad(below / (1 - below - above), above / (1 - below - above));
        yTicks = ticksOf(y.from, y.to, std::clamp(static_cast<int>((bottom - top) / (1.6 * em)), 3, 6));
        const double left = box.left() + widestOf(yTicks) + 0.7 * em;
        plot = QRectF(QPointF(left, top), QPointF(box.right() - 0.3 * em, bottom));
        for (int most = 8; most >= 2; --most) {
            xTicks = ticksOf(x.from, x.to, most);
            if ((widestOf(xTicks) + em) * static_cast<double>(xTicks.at.size()) <= plot.width()) break;
        }
    }

    void drawGrid() {
        for (const double tick : yTicks.at) {
            const QString words = figure(tick, yTicks.decimals);
            const double height = at(x.from, tick).y();
            say(words, {plot.left() - 0.5 * em - width(words), height - em / 2}, look.quiet);
        }
        for (const double tick : xTicks.at) {
            const QString words = figure(tick, xTicks.decimals);
            const double middle = at(tick, y.from).x();
            const double from = std::clamp(middle - width(words) / 2, plot.left() - 0.5 * em,
                                           plot.right() + 0.3 * em - width(words));
            say(words, {from, plot.bottom() + 0.35 * em}, look.quiet);
        }
    }

    void drawAxes() {
        painter.setPen(QPen(look.quiet, look.stroke, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(plot.topLeft(), plot.bottomLeft());
        painter.drawLine(plot.bottomLeft(), plot.bottomRight());
        for (const double tick : yTicks.at) {
            const QPointF from(plot.left(), at(x.from, tick).y());
            painter.drawLine(from, from - QPointF(0.3 * em, 0));
        }
        for (const double tick : xTicks.at) {
            const QPointF from(at(tick, y.from).x(), plot.bottom());
            painter.drawLine(from, from + QPointF(0, 0.3 * em));
        }
    }

    void drawBand() {
        if (figures.band.size() < 2) return;
        QPolygonF outline;
        for (const Band& one : figures.band)
            outline << at(one.x, one.high);
        const qsizetype turn = outline.size();
        for (auto one = figures.band.rbegin(); one != figures.band.rend(); ++one)
            outline << at(one->x, one->low);
        painter.setPen(Qt::NoPen);
        painter.setBrush(look.band);
        painter.drawPolygon(outline);
        // Its edges, so that it is seen where a printer leaves the light grey out.
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(look.quiet, look.stroke * 0.6));
        painter.drawPolyline(outline.mid(0, turn));
        painter.drawPolyline(outline.mid(turn));
    }

    /// Their words stand after the line and beside the limit: what is renewed begins far from it.
    void drawRenewed() {
        double height = plot.top() + 0.3 * em;
        if (figures.max)
            height = at(x.from, *figures.max).y() + 0.4 * em;
        else if (figures.min)
            height = at(x.from, *figures.min).y() - 1.4 * em;
        double free = plot.left();
        for (const Value& value : figures.values) {
            if (!value.renewed) continue;
            const double across = at(value.x, y.from).x();
            painter.setPen(QPen(look.ink, look.stroke, Qt::DotLine, Qt::FlatCap));
            painter.drawLine(QPointF(across, plot.top()), QPointF(across, plot.bottom()));
            const double length = width(look.renewed);
            const bool before = across + 0.4 * em + length > plot.right();
            const double from = before ? across - 0.4 * em - length : across + 0.4 * em;
            if (from < free) continue;
            label(look.renewed, {from, height}, look.ink);
            free = from + length + 0.4 * em;
        }
    }

    void drawLimit(double bound, bool isMax) {
        const double height = at(x.from, bound).y();
        const double beyond = isMax ? -1 : 1;
        const double reach = 0.45 * em;
        painter.setPen(QPen(look.limit, look.stroke, Qt::SolidLine, Qt::FlatCap));
        QList<QLineF> strokes;
        const int count = static_cast<int>(plot.width() / (0.8 * em)) + 1;
        for (int i = 0; i < count; ++i) {
            const double from = plot.left() + 0.8 * em * i;
            strokes << QLineF(from, height, from + reach, height + beyond * reach);
        }
        painter.drawLines(strokes);
        QPen dashes(look.limit, look.stroke * 1.8, Qt::CustomDashLine, Qt::FlatCap);
        dashes.setDashPattern({5, 2.5});
        painter.setPen(dashes);
        painter.drawLine(QPointF(plot.left(), height), QPointF(plot.right(), height));
        int decimals = yTicks.decimals;
        while (decimals < 6 && std::abs(bound - Decimal::parse(fixed(bound, decimals))->approximate()) > 1e-9)
            ++decimals;
        label(look.limitWords + u' ' + figure(bound, decimals),
              {plot.left() + 0.5 * em, height + (isMax ? -1.35 * em : 0.35 * em)}, look.limit);
    }

    void drawLine() {
        if (figures.line.size() < 2) return;
        QPolygonF way;
        for (const QPointF& end : figures.line)
            way << at(end.x(), end.y());
        painter.setPen(QPen(look.ink, look.stroke * 1.4));
        painter.drawPolyline(way);
    }

    void drawValues() {
        if (figures.values.size() <= mostWhole)
            drawEach();
        else
            drawPlaces();
        const Value& last = figures.values.back();
        painter.setPen(QPen(look.ink, look.stroke * 1.6));
        painter.setBrush(look.ground);
        painter.drawEllipse(at(last.x, last.y), look.dot * 1.5, look.dot * 1.5);
    }

    void drawEach() {
        QList<QLineF> reaches;
        const QPointF cap(look.dot * 0.8, 0);
        for (const Value& value : figures.values) {
            if (value.reach <= 0) continue;
            const QPointF low = at(value.x, value.y - value.reach);
            const QPointF high = at(value.x, value.y + value.reach);
            reaches << QLineF(low, high) << QLineF(low - cap, low + cap) << QLineF(high - cap, high + cap);
        }
        painter.setPen(QPen(look.ink, look.stroke * 0.8, Qt::SolidLine, Qt::FlatCap));
        painter.drawLines(reaches);
        painter.setPen(Qt::NoPen);
        painter.setBrush(look.ink);
        for (const Value& value : figures.values)
            painter.drawEllipse(at(value.x, value.y), look.dot, look.dot);
    }

    void drawPlaces() {
        const double side = look.dot;
        const auto columns = static_cast<std::size_t>(plot.width() / side) + 2;
        const auto rows = static_cast<std::size_t>(plot.height() / side) + 2;
        std::vector<bool> drawn(columns * rows);
        for (const Value& value : figures.values) {
            const QPointF place = (at(value.x, value.y) - plot.topLeft()) / side;
            const auto column = static_cast<std::size_t>(std::max(0.0, place.x()));
            const auto row = static_cast<std::size_t>(std::max(0.0, place.y()));
            if (column >= columns || row >= rows || drawn[row * columns + column]) continue;
            drawn[row * columns + column] = true;
            painter.fillRect(QRectF(plot.left() + static_cast<double>(column) * side,
                                    plot.top() + static_cast<double>(row) * side, side, side),
                             look.ink);
        }
    }

    [[nodiscard]] bool crosses() const { return figures.earliest && *figures.earliest <= x.to; }

    void drawInterval(double from, double to, double height, bool open) {
        const double thick = 0.15 * em;
        painter.setPen(Qt::NoPen);
        painter.setBrush(look.limit);
        painter.drawRect(QRectF(QPointF(from, height - thick), QPointF(to, height + thick)));
        painter.setPen(QPen(look.limit, look.stroke * 1.6, Qt::SolidLine, Qt::FlatCap));
        const QPointF up(0, 0.4 * em);
        painter.drawLine(QPointF(from, height) - up, QPointF(from, height) + up);
        if (!open) painter.drawLine(QPointF(to, height) - up, QPointF(to, height) + up);
        painter.setPen(Qt::NoPen);
        if (!open) return;
        const QPointF tip(to + 0.3 * em, height);
        painter.drawPolygon(
            QPolygonF({tip, tip + QPointF(-0.6 * em, -0.45 * em), tip + QPointF(-0.6 * em, 0.45 * em)}));
    }

    void drawCrossing() {
        if (!crosses()) return;
        const double from = at(*figures.earliest, y.from).x();
        const bool open = !figures.latest || *figures.latest > x.to;
        const double axis = plot.bottom();
        drawInterval(from, open ? plot.right() : at(*figures.latest, y.from).x(), axis, open);
        if (figures.best && *figures.best <= x.to) {
            const QPointF best(at(*figures.best, y.from).x(), axis - 0.25 * em);
            painter.drawPolygon(QPolygonF(
                {best, best + QPointF(-0.4 * em, -0.65 * em), best + QPointF(0.4 * em, -0.65 * em)}));
        }
    }

    /// What the axis counts, and what is marked on it.
    void drawFoot(double top) {
        const QString across = fitting(look.across, plot.width());
        const double from = plot.right() - width(across);
        say(across, {from, top}, look.ink);
        const double sample = 1.2 * em;
        if (!crosses() || plot.left() + sample + width(look.crossing) + 1.5 * em > from) return;
        drawInterval(plot.left(), plot.left() + sample, top + 0.55 * em, false);
        say(look.crossing, {plot.left() + sample + 0.5 * em, top}, look.limit);
    }
};

} // namespace

Ticks ticksOf(double from, double to, int most) {
    Ticks ticks;
    if (!(to > from) || most < 1) return ticks;
    // The smallest step with no more of its multiples in the range.
    const double least = (to - from) / (most + 1);
    int power = static_cast<int>(std::floor(std::log10(least)));
    for (;; ++power)
        for (const int digit : {1, 2, 5}) {
            ticks.step = digit * std::pow(10.0, power);
            const double first = std::ceil(from / ticks.step - 1e-9);
            const double last = std::floor(to / ticks.step + 1e-9);
            if (last - first + 1 > most) continue;
            ticks.decimals = std::max(0, -power);
            const int count = static_cast<int>(last - first) + 1;
            for (int i = 0; i < count; ++i)
                ticks.at.push_back((first + i) * ticks.step);
            return ticks;
        }
}

void drawTrend(QPainter& painter, const QRectF& box, const round::Trended& trended,
               const airframe::Limit& limit, const ChartLook& look) {
    const Figures figures(trended, limit);
    if (figures.values.empty()) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    Chart(painter, figures, look).draw(box);
    painter.restore();
}

} // namespace ambit::view
