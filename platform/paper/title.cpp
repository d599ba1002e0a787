// A round's first page: whose record this is, what was concluded, what stands out, who signed.
#include "judge/limit.hpp"
#include "model/words.hpp"
#include "paper/frame.hpp"
#include "paper/marks.hpp"
#include "paper/sections.hpp"

#include <QStringList>

namespace ambit::paper {

namespace {

using round::Outcome;

QString tookWords(const RecordView& view) {
    const std::int64_t whole = view.concludedAt.ms - view.state.openedAt.ms;
    if (whole < 0) return QStringLiteral("unknown: the clock was set back");
    QString words = duration(whole);
    if (view.pauses > 0)
        words += QStringLiteral(", of which ") + duration(view.state.pausedMs) + QStringLiteral(" in ") +
                 counted(view.pauses, QStringLiteral("pause"), QStringLiteral("pauses"));
    return words;
}

std::vector<Fact> factsOf(const Context& context) {
    const RecordView& view = context.view;
    std::vector<Fact> facts{
        {QStringLiteral("Opened"), context.clock.both(view.state.openedAt)},
        {QStringLiteral("Concluded"), context.clock.both(view.concludedAt)},
        {QStringLiteral("Took"), tookWords(view)},
    };
    facts[2].value += QStringLiteral("\nLocal time was ") + context.clock.zone();
    for (const round::CounterReading& reading : view.opened().counters) {
        const airframe::Counter& counter = *view.airframe->counter(reading.id); // the fold has checked it
        const QString unit = shown(counter.unit);
        facts.push_back({shown(counter.name), ambit::view::saysItsUnit(shown(counter.name), unit)
                                                  ? shown(reading.value)
                                                  : shown(reading.value) + u' ' + unit});
    }
    if (const auto& place = view.opened().position)
        facts.push_back({QStringLiteral("Place"), shown(place->latitude) + QStringLiteral("°, ") +
                                                      shown(place->longitude) +
                                                      QStringLiteral("° (WGS 84)")});
    if (const auto ahead = view.state.clockAheadMs)
        facts.push_back(
            {QStringLiteral("Clock"), QStringLiteral("the device's was ") + lasted(std::abs(*ahead)) +
                                          (*ahead < 0 ? QStringLiteral(" behind satellite time")
                                                      : QStringLiteral(" ahead of satellite time"))});
    return facts;
}

void addHead(const Context& context) {
    const RecordView& view = context.view;
    addHead(context.sheet,
            {QStringLiteral("Record of an inspection before flight"), view.opened().registration,
             view.opened().serial, view.airframe->name, QStringLiteral("Walk: ") + shown(view.walk->name)});
    addFacts(context.sheet, factsOf(context));
}

/// Fit stands in a heavy frame, not fit on solid black: neither can be taken for the other, in no light and
/// on no printer.
void addConclusion(const Context& context) {
    Sheet& sheet = context.sheet;
    const bool fit = context.view.conclusion().fit;
    const round::Person& who = context.view.opened().who;
    const QColor front = fit ? ink::black : ink::paper;
    const QString words = (fit ? QStringLiteral("Concluded fit for flight by ")
                               : QStringLiteral("Concluded not fit for flight by ")) +
                          shown(who.name);
    constexpr double inner = area::width - 36;
    const Text conclusion(words, {Face::bold, 19.5, 25, front}, inner);
    const QString whose = QStringLiteral("The decision of the signer, ") + shown(who.role) +
                          QStringLiteral(", on their own judgement. Ambit decides nothing.");
    const Text decision(whose, {Face::regular, 8.5, 12, front}, inner);
    sheet.gap(10);
    const double height = conclusion.height() + decision.height() + 30;
    sheet.need(height);
    sheet.put([=, box = QRectF(area::left, sheet.y, area::width, height)](QPainter& painter) {
        if (fit) {
            painter.setPen(QPen(ink::black, 2.2, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
            painter.drawRect(box.adjusted(1.1, 1.1, -1.1, -1.1));
        } else {
            painter.fillRect(box, ink::black);
        }
        conclusion.draw(painter, box.topLeft() + QPointF(18, 12));
        decision.draw(painter, box.topLeft() + QPointF(18, 16 + conclusion.height()));
    });
    sheet.y += height + 8;
    const std::string& reasons = context.view.conclusion().reasons;
    if (reasons.empty()) return;
    sheet.textAt(Text(QStringLiteral("Reasons"), style::label, 70), {area::left + 18, sheet.y + 1});
    sheet.text(textOf(reasons, style::body, area::width - 88), area::left + 88);
    sheet.y += 4;
}

void addCounts(const Context& context) {
    Sheet& sheet = context.sheet;
    const RecordView& view = context.view;
    const std::array counts{std::pair{Mark::sound, view.count(Outcome::sound)},
                            std::pair{Mark::assess, view.count(Outcome::finding)},
                            std::pair{Mark::notInspected, view.count(Outcome::notInspected)}};
    const bool grounds = std::any_of(view.points.begin(), view.points.end(), [](const PointView& point) {
        return markOf(*point.counting().settled) == Mark::grounds;
    });
    double x = area::left;
    for (const auto& [kind, number] : counts) {
        const Mark mark = kind == Mark::assess && grounds ? Mark::grounds : kind;
        const QString word = kind == Mark::assess
                                 ? (number == 1 ? QStringLiteral("finding") : QStringLiteral("findings"))
                                 : markWords(kind);
        const Text figure(QString::number(number), {Face::bold, 20, 26, ink::black}, 60);
        sheet.put([=, at = QPointF(x, sheet.y)](QPainter& painter) {
            drawMark(painter, at + QPointF(0, 7), 12, mark);
            figure.draw(painter, at + QPointF(20, 0));
            Text(word, style::body, 100).draw(painter, at + QPointF(26 + figure.widest(), 8));
        });
        x += column + gutter;
    }
    sheet.y += 32;
    QStringList also{QStringLiteral("of %1 points in this walk").arg(view.points.size())};
    if (view.reopenings > 0)
        also << counted(view.reopenings, QStringLiteral("re-opened and settled again"),
                        QStringLiteral("re-opened and settled again"));
    if (const auto cuts = static_cast<int>(view.state.interruptions.size()); cuts > 0)
        also << counted(cuts, QStringLiteral("interruption"), QStringLiteral("interruptions"));
    if (view.state.night) also << QStringLiteral("for a flight that goes into the dark");
    if (const auto asks = static_cast<int>(view.state.asks.size()); asks > 0)
        also << counted(asks, QStringLiteral("thing asked by who followed"),
                        QStringLiteral("things asked by those who followed"));
    sheet.text(Text(also.join(QStringLiteral("; ")) + u'.', style::quiet, area::width));
}

QString shortWords(const round::Settled& settled) {
    if (settled.outcome == Outcome::finding) return severityWords(settled.severity);
    return settled.basis.empty() ? QStringLiteral("Not inspected, no basis stated")
                                 : QStringLiteral("Not inspected, basis stated");
}

/// What was told of a value that is at its limit, or may come there: by the figures of its own event.
QString comingWords(const RecordView& view, const airframe::Point& point, const round::Trended& trend) {
    const airframe::Counter* counter = view.airframe->counter(trend.over);
    const QString unit = counter == nullptr ? shown(trend.over) : shown(counter->unit);
    QString words;
    if (trend.is == judge::Standing::passed)
        words = QStringLiteral("Beyond its limit");
    else if (trend.earliest.empty())
        words = QStringLiteral("May be at its limit");
    else if (trend.latest.empty())
        words = QStringLiteral("Limit in %1 %2 at the earliest, 95 %").arg(shown(trend.earliest), unit);
    else
        words = QStringLiteral("Limit in %1 to %2 %3, 95 %")
                    .arg(shown(trend.earliest), shown(trend.latest), unit);
    const round::TrendValue& last = trend.values.back();
    words += QStringLiteral("; now ") + shown(last.value);
    if (!last.uncertainty.empty()) words += QStringLiteral(" ± ") + shown(last.uncertainty);
    words +=
        u' ' + shown(point.limit->unit) + QStringLiteral(", limit ") + shown(judge::toText(*point.limit));
    return words + (trend.stands ? QStringLiteral("; stands against fit") : QStringLiteral("; warns"));
}

/// `more`: the mark of the page that says more.
void addRow(const Context& context, const PointView& point, const QString& says, const std::string& more) {
    Sheet& sheet = context.sheet;
    const round::Settled& settled = *point.counting().settled;
    const Text name = textOf(point.point->name, style::smallStrong, 236);
    const Text words(says, style::small, 140);
    const double height = std::max(name.height(), words.height()) + 6;
    sheet.need(height);
    sheet.line(area::left, area::right, ink::line);
    sheet.put([=, &sheet, at = QPointF(area::left, sheet.y + 3), number = point.number, id = more,
               mark = markOf(settled)](QPainter& painter) {
        drawMark(painter, at + QPointF(0, 1.5), 8, mark);
        Text(QString::number(number), style::quiet, 22, Align::right).draw(painter, at + QPointF(12, 0));
        name.draw(painter, at + QPointF(44, 0));
        words.draw(painter, at + QPointF(290, 0));
        const QString where = QStringLiteral("page %1").arg(sheet.pageOf(id));
        Text(where, style::quiet, 50, Align::right).draw(painter, at + QPointF(area::width - 50, 0));
    });
    sheet.y += height;
}

void addStandingOut(const Context& context) {
    Sheet& sheet = context.sheet;
    sheet.gap(14);
    sheet.need(110);
    sheet.text(Text(QStringLiteral("What stands out"), style::subheading, area::width));
    sheet.y += 4;
    addCounts(context);
    sheet.y += 6;
    bool any = false;
    for (const Outcome outcome : {Outcome::finding, Outcome::notInspected})
        for (const PointView& point : context.view.points)
            if (point.outcome() == outcome) {
                addRow(context, point, shortWords(*point.counting().settled), point.point->id);
                any = true;
            }
    bool coming = false;
    for (const PointView& point : context.view.points) {
        const auto& trend = context.view.state.points.at(point.point->id).trend;
        if (!trend || trend->is == judge::Standing::within || !point.point->limit) continue;
        addRow(context, point, comingWords(context.view, *point.point, *trend), trendMark(point.point->id));
        coming = true;
    }
    if (any || coming) sheet.line(area::left, area::right, ink::line);
    if (!any)
        sheet.text(Text(QStringLiteral("Every point was inspected and nothing was found."), style::body,
                        area::width));
}

} // namespace

void addTitle(const Context& context) {
    addHead(context);
    addConclusion(context);
    addStandingOut(context);
    const RecordView& view = context.view;
    addSigner(context.sheet, view.opened().who, context.signer.sha256, view.identity);
    addNotice(context.sheet, {context.statement, view.airframe->notice, view.previous, context.shownWhole});
}

} // namespace ambit::paper
