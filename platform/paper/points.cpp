// The list of every point, with nothing left out: earlier settlings and re-openings stand under their point.
#include "paper/marks.hpp"
#include "paper/sections.hpp"

namespace ambit::paper {

namespace {

struct Column {
    const char* head;
    double x; ///< from the left margin
    double width;
    Align align = Align::left;
};

constexpr std::array<Column, 7> columns{{{"No.", 0, 18, Align::right},
                                         {"Point", 26, 132, Align::left},
                                         {"Stand", 166, 92, Align::left},
                                         {"How", 266, 64, Align::left},
                                         {"Outcome", 338, 74, Align::left},
                                         {"Value", 414, 36, Align::right},
                                         {"Local", 452, 27.3, Align::right}}};

const Style cell{Face::regular, 7.8, 10.2, ink::black};
const Style cellStrong{Face::bold, 7.8, 10.2, ink::black};
const Style cellQuiet{Face::regular, 7.4, 10.2, ink::grey};

void addHeader(Sheet& sheet) {
    for (const Column& column : columns)
        sheet.textAt(Text(QLatin1String(column.head), style::label, column.width, column.align),
                     {area::left + column.x, sheet.y});
    sheet.y += 14;
    sheet.line(area::left, area::right, ink::black, 0.8);
}

/// How it was told, where that wasn't by touch at the stand.
QString toldWords(const Entry& entry) {
    QString words;
    if (entry.fromPortion) words += QStringLiteral(", told down again");
    if (entry.settled->by == round::By::key) words += QStringLiteral(", by key");
    return words;
}

/// One settling, said in a line under the one that counts.
QString earlierWords(const Context& context, const PointView& point, const Entry& entry) {
    const QString at = context.clock.time(entry.at) + u' ';
    if (!entry.settled) return at + againWords(entry);
    const round::Settled& settled = *entry.settled;
    QString words = at + outcomeWord(settled.outcome);
    words += toldWords(entry);
    if (settled.value) words += QStringLiteral(", ") + valueWords(*point.point, settled);
    if (settled.outcome == round::Outcome::finding)
        words += QStringLiteral(" (") + severityWords(settled.severity).toLower() + QStringLiteral("): ") +
                 shown(settled.words);
    if (settled.outcome == round::Outcome::notInspected) words += QStringLiteral(": ") + shown(settled.why);
    return words;
}

std::vector<Text> cellsOf(const Context& context, const PointView& point) {
    const Entry& entry = point.counting();
    const round::Settled& settled = *entry.settled;
    const bool sound = settled.outcome == round::Outcome::sound;
    QString outcome = outcomeWord(settled.outcome);
    if (settled.outcome == round::Outcome::finding)
        outcome += settled.severity == airframe::Severity::grounds ? QStringLiteral(", grounds")
                                                                   : QStringLiteral(", for assessment");
    outcome += toldWords(entry);
    const std::array<QString, 7> words{QString::number(point.number),
                                       shown(point.point->name),
                                       standName(context.view, entry.stand),
                                       howWords(*point.point),
                                       outcome,
                                       valueWords(*point.point, settled),
                                       context.clock.time(entry.at)};
    std::vector<Text> cells;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const bool strong = (i == 1 || i == 4) && !sound;
        const double mark = i == 4 ? 12 : 0; // room for the mark
        const Style& style = i == 0 ? cellQuiet : strong ? cellStrong : cell;
        cells.emplace_back(words[i], style, columns[i].width - mark, columns[i].align);
    }
    return cells;
}

std::vector<Text> earlierOf(const Context& context, const PointView& point) {
    std::vector<Text> lines;
    for (const Entry& entry : point.entries)
        if (&entry != &point.counting()) {
            const double x = columns[1].x;
            lines.emplace_back(earlierWords(context, point, entry), cellQuiet, area::width - x);
        }
    return lines;
}

void addPoint(const Context& context, const PointView& point) {
    Sheet& sheet = context.sheet;
    const std::vector<Text> cells = cellsOf(context, point);
    const std::vector<Text> earlier = earlierOf(context, point);
    double height = 0;
    for (const Text& text : cells)
        height = std::max(height, text.height());
    // A row stays whole, with what was said earlier unless that is long.
    double with = 0;
    for (const Text& line : earlier)
        with += line.height();
    with = std::min(with, 100.0);
    sheet.need(height + with + 7);
    sheet.y += 3.2;
    sheet.put(
        [=, at = QPointF(area::left, sheet.y), mark = markOf(*point.counting().settled)](QPainter& painter) {
            for (std::size_t i = 0; i < cells.size(); ++i)
                cells[i].draw(painter, at + QPointF(columns[i].x + (i == 4 ? 12 : 0), 0));
            drawMark(painter, at + QPointF(columns[4].x, 1.6), 7, mark);
        });
    sheet.y += height;
    for (const Text& line : earlier)
        sheet.text(line, area::left + columns[1].x);
    sheet.y += 3.2;
    sheet.line(area::left, area::right, ink::line);
}

} // namespace

void addPoints(const Context& context) {
    Sheet& sheet = context.sheet;
    sheet.newPage();
    addHeading(sheet, QStringLiteral("Every point"),
               QStringLiteral("In the order in which the description of the airframe lists them. Where a "
                              "point was settled more than "
                              "once, what was said earlier stands below it; the upper line counts."));
    addHeader(sheet);
    sheet.onNewPage = [&sheet] { addHeader(sheet); };
    for (const PointView& point : context.view.points)
        addPoint(context, point);
    sheet.onNewPage = nullptr;
}

} // namespace ambit::paper
