// The page with the figure: zones by state, callouts for what is not sound, a legend in words, and what was
// not inspected.
#include "paper/figure.hpp"
#include "paper/sections.hpp"

#include <QStringList>

namespace ambit::paper {

namespace {

/// The figure gives way a little so that what was not inspected can stand below it.
double figureHeight(const RecordView& view) {
    return std::clamp(490.0 - 42 * view.count(round::Outcome::notInspected), 330.0, 430.0);
}

constexpr double calloutWidth = 84; // a wide wing needs the room

struct Callout {
    QPointF at; ///< in the zone
    Text name;
    Text points;
    double y = 0; ///< where the words stand

    [[nodiscard]] double height() const { return name.height() + points.height(); }
};

QString numbersIn(const RecordView& view, const std::string& zone, round::Outcome outcome) {
    std::vector<int> numbers;
    for (const PointView& point : view.points)
        if (point.point->zone == zone && point.outcome() == outcome) numbers.push_back(point.number);
    return ranges(numbers);
}

QString pointWords(const RecordView& view, const std::string& zone) {
    QStringList words;
    const QString findings = numbersIn(view, zone, round::Outcome::finding);
    const QString unseen = numbersIn(view, zone, round::Outcome::notInspected);
    if (!findings.isEmpty()) words << QStringLiteral("finding ") + findings;
    if (!unseen.isEmpty()) words << QStringLiteral("not inspected ") + unseen;
    return words.join(QStringLiteral("; "));
}

/// Moves callouts apart, keeping their order from top to bottom.
void spread(std::vector<Callout>& side, const QRectF& box) {
    std::sort(side.begin(), side.end(),
              [](const Callout& a, const Callout& b) { return a.at.y() < b.at.y(); });
    constexpr double between = 6;
    double free = box.top();
    for (Callout& callout : side) {
        callout.y = std::max(free, callout.at.y() - callout.height() / 2);
        free = callout.y + callout.height() + between;
    }
    double limit = box.bottom();
    for (auto callout = side.rbegin(); callout != side.rend(); ++callout) {
        callout->y = std::min(callout->y, limit - callout->height());
        limit = callout->y - between;
    }
}

void drawCallouts(QPainter& painter, const std::vector<Callout>& side, double x, bool onLeft) {
    for (const Callout& callout : side) {
        const double words = onLeft ? x + calloutWidth + 4 : x - 4;
        const QPointF from(words, callout.y + callout.name.leading() / 2);
        painter.setPen(QPen(ink::black, 0.45));
        painter.drawLine(from, callout.at);
        painter.setBrush(ink::black);
        painter.drawEllipse(callout.at, 1.4, 1.4);
        painter.setBrush(Qt::NoBrush);
        callout.name.draw(painter, {x, callout.y});
        callout.points.draw(painter, {x, callout.y + callout.name.height()});
    }
}

struct Callouts {
    std::vector<Callout> left, right;
};

Callouts calloutsOf(const RecordView& view, const Scale& scale, const std::map<std::string, Mark>& marks,
                    double middle) {
    Callouts out;
    for (const airframe::Zone& zone : view.airframe->zones) {
        const auto mark = marks.find(zone.id);
        if (mark == marks.end() || mark->second <= Mark::sound) continue;
        const QPainterPath area = scale.map(zone.outline);
        QPointF at = area.boundingRect().center();
        if (!area.contains(at)) at = scale.map(zone.outline.front());
        const bool onLeft =
            at.x() < middle - 0.5 || (at.x() < middle + 0.5 && out.left.size() <= out.right.size());
        const Align align = onLeft ? Align::right : Align::left;
        (onLeft ? out.left : out.right)
            .push_back({at, textOf(zone.name, {Face::bold, 7.5, 10, ink::black}, calloutWidth, align, 2),
                        Text(pointWords(view, zone.id), {Face::regular, 7.5, 10, ink::black}, calloutWidth,
                             align, 3)});
    }
    return out;
}

void addLegend(Sheet& sheet, const std::map<std::string, Mark>& marks, const RecordView& view) {
    std::set<Mark> used{Mark::sound, Mark::notInspected, Mark::assess};
    for (const auto& mark : marks)
        used.insert(mark.second);
    for (const airframe::Zone& zone : view.airframe->zones)
        if (!marks.contains(zone.id)) used.insert(Mark::hollow);
    double x = area::left;
    for (const Mark mark : {Mark::sound, Mark::assess, Mark::grounds, Mark::notInspected, Mark::hollow}) {
        if (!used.contains(mark)) continue;
        const Text words(markWords(mark), style::small, 160);
        if (x + 14 + words.widest() > area::right) {
            x = area::left;
            sheet.y += 14;
        }
        sheet.put([=, at = QPointF(x, sheet.y)](QPainter& painter) {
            drawMark(painter, at + QPointF(0, 1.5), 8, mark);
            words.draw(painter, at + QPointF(13, 0));
        });
        x += 13 + words.widest() + 18;
    }
    sheet.y += 16;
    sheet.text(Text(QStringLiteral("A zone shows the worst of its points."), style::quiet, area::width));
}

void addDrawing(const Context& context) {
    Sheet& sheet = context.sheet;
    const RecordView& view = context.view;
    const QRectF box(area::left, sheet.y, area::width, figureHeight(view));
    const Scale scale(view, box.adjusted(calloutWidth + 8, 4, -calloutWidth - 8, -4));
    const auto marks = zoneMarks(view);
    Callouts callouts = calloutsOf(view, scale, marks, box.center().x());
    spread(callouts.left, box);
    spread(callouts.right, box);
    sheet.put([=, &view](QPainter& painter) {
        drawFigure(painter, view, scale, marks);
        drawCallouts(painter, callouts.left, area::left, true);
        drawCallouts(painter, callouts.right, area::right - calloutWidth, false);
    });
    sheet.y += box.height() + 12;
    addLegend(sheet, marks, view);
}

void addLabelled(Sheet& sheet, const QString& label, const QString& words) {
    constexpr double indent = 44;
    constexpr double labelWidth = 40;
    const Text text(words, style::small, area::width - indent - labelWidth);
    sheet.need(2 * text.leading());
    sheet.textAt(Text(label, style::label, labelWidth), {area::left + indent, sheet.y});
    sheet.text(text, area::left + indent + labelWidth);
}

void addUnseen(const Context& context, const PointView& point) {
    Sheet& sheet = context.sheet;
    const round::Settled& settled = *point.counting().settled;
    const Text name = textOf(point.point->name, style::strong, area::width - 44);
    sheet.need(name.height() + 44);
    sheet.mark(point.point->id);
    sheet.line(area::left, area::right, ink::line);
    sheet.y += 5;
    sheet.put([at = QPointF(area::left, sheet.y), number = point.number](QPainter& painter) {
        drawMark(painter, at + QPointF(0, 2.5), 9, Mark::notInspected);
        Text(QString::number(number), style::quiet, 22, Align::right).draw(painter, at + QPointF(12, 1));
    });
    sheet.text(name, area::left + 44);
    addLabelled(sheet, QStringLiteral("Why"), shown(settled.why));
    addLabelled(sheet, QStringLiteral("Basis"),
                settled.basis.empty() ? QStringLiteral("none stated") : shown(settled.basis));
    sheet.y += 6;
}

} // namespace

void addFigure(const Context& context) {
    Sheet& sheet = context.sheet;
    sheet.newPage();
    addHeading(sheet, QStringLiteral("The aircraft"),
               QStringLiteral("Seen from above, as it was left at the end of the round."));
    addDrawing(context);
    sheet.gap(14);
    sheet.need(80);
    sheet.text(Text(QStringLiteral("Not inspected"), style::subheading, area::width));
    sheet.y += 4;
    bool any = false;
    for (const PointView& point : context.view.points)
        if (point.outcome() == round::Outcome::notInspected) {
            addUnseen(context, point);
            any = true;
        }
    if (!any)
        sheet.text(Text(QStringLiteral("Nothing: every point of this walk was inspected."), style::body,
                        area::width));
}

} // namespace ambit::paper
