// What happened when, what was opened and closed, and the cautions of the walk.
#include "paper/marks.hpp"
#include "paper/sections.hpp"

#include <QStringList>
#include <algorithm>

namespace ambit::paper {

namespace {

using Kind = TimelineEntry::Kind;

constexpr double timeWidth = 84;
constexpr double kindWidth = 78;

struct Line {
    QString kind;
    QString words;
    bool strong = false;
};

QString settingWords(const RecordView& view, const TimelineEntry& entry) {
    const airframe::Setting& setting = *view.airframe->setting(entry.id); // the fold has checked both
    return shown(setting.name) + QStringLiteral(": ") + shown(setting.state(entry.words)->name);
}

QString pointWords(const RecordView& view, const TimelineEntry& entry) {
    const auto point = std::find_if(view.points.begin(), view.points.end(),
                                    [&](const PointView& one) { return one.point->id == entry.id; });
    return QString::number(point->number) + QStringLiteral(", ") + shown(point->point->name) +
           QStringLiteral(": ") + shown(entry.words);
}

QString concludedWords(const RecordView& view, const TimelineEntry& entry) {
    const QString who = shown(view.opened().who.name);
    const QString words =
        (entry.fit ? QStringLiteral("fit for flight, by ") : QStringLiteral("not fit for flight, by ")) + who;
    return entry.words.empty() ? words : words + QStringLiteral(": ") + shown(entry.words);
}

QString areaWords(const std::string& number) {
    return QStringLiteral("area ") + shown(number);
}

const round::Ask& askOf(const RecordView& view, const TimelineEntry& entry) {
    return *view.state.ask(std::stoll(entry.id)); // the fold has checked it
}

/// Whose ask it ends.
QString toWhom(const RecordView& view, const TimelineEntry& entry) {
    const round::Ask& ask = askOf(view, entry);
    return shown(ask.what.who.name) + QStringLiteral(", ") + askWords(view, ask) + QStringLiteral(": ");
}

QString causeWords(round::Interrupted::Cause cause) {
    using Cause = round::Interrupted::Cause;
    switch (cause) {
    case Cause::paused:
        return QStringLiteral("paused");
    case Cause::call:
        return QStringLiteral("a call");
    case Cause::locked:
        return QStringLiteral("the screen was locked");
    case Cause::away:
        return QStringLiteral("away from the screen");
    case Cause::silent:
        return QStringLiteral("nothing was told");
    case Cause::stopped:
        break;
    }
    return QStringLiteral("the program was closed");
}

QString againWordsOf(const TimelineEntry& entry) {
    return entry.numbers.empty() ? QStringLiteral("; nothing to settle again")
                                 : QStringLiteral("; to be settled again: ") + ranges(entry.numbers);
}

QString interruptionWords(const RecordView& view, const TimelineEntry& entry) {
    const round::Interrupted& what = view.state.interruptions[std::stoul(entry.id)].what;
    QString rule = QStringLiteral("from the start");
    if (what.rule.from == round::BackRule::From::stand) rule = QStringLiteral("the stand again");
    if (what.rule.from == round::BackRule::From::points)
        rule = QStringLiteral("back ") +
               counted(what.rule.points, QStringLiteral("point"), QStringLiteral("points"));
    return causeWords(what.cause) + QStringLiteral(" for ") + lasted(what.seconds * 1000) +
           QStringLiteral("; rule: ") + rule + againWordsOf(entry);
}

QString quickWords(const RecordView& view, const TimelineEntry& entry) {
    const round::QuickRun& run = *view.state.quickRun; // one in a round
    return QStringLiteral("%1 points within %2 s, less than one of them takes; ")
               .arg(run.points)
               .arg(QString::number(static_cast<double>(run.ms) / 1000, 'f', 1)) +
           (run.again.empty() ? QStringLiteral("said to be meant so")
                              : QStringLiteral("looked at again: ") + ranges(entry.numbers));
}

Line lineOf(const RecordView& view, const TimelineEntry& entry) {
    switch (entry.kind) {
    case Kind::opened:
        return {QStringLiteral("Round opened"),
                QStringLiteral("by ") + shown(view.opened().who.name) + QStringLiteral(", ") +
                    shown(view.opened().who.role),
                true};
    case Kind::stand:
        return {QStringLiteral("At"), standName(view, entry.id), true};
    case Kind::settled:
        return {QStringLiteral("Settled"), ranges(entry.numbers)};
    case Kind::setting:
        return {QStringLiteral("Set"), settingWords(view, entry)};
    case Kind::opening:
        return {QStringLiteral("Opened"), shown(view.airframe->opening(entry.id)->name)};
    case Kind::closing:
        return {QStringLiteral("Closed"), shown(view.airframe->opening(entry.id)->name)};
    case Kind::reopened:
        return {QStringLiteral("Re-opened"), pointWords(view, entry)};
    case Kind::paused:
        return {QStringLiteral("Paused"), {}};
    case Kind::resumed:
        return {QStringLiteral("Resumed"), {}};
    case Kind::note:
        return {QStringLiteral("Note"), shown(entry.words)};
    case Kind::planned:
        return {QStringLiteral("New order"), shown(entry.words)};
    case Kind::blocked:
        return {QStringLiteral("Blocked"),
                standName(view, entry.id) + QStringLiteral(": ") + shown(entry.words)};
    case Kind::usable:
        return {QStringLiteral("Free again"), standName(view, entry.id)};
    case Kind::marked:
        return {QStringLiteral("In the way"),
                areaWords(entry.id) + QStringLiteral(": ") + shown(entry.words)};
    case Kind::cleared:
        return {QStringLiteral("Out of the way"), areaWords(entry.id)};
    case Kind::light:
        return {QStringLiteral("Light"), entry.low ? QStringLiteral("low") : QStringLiteral("good again")};
    case Kind::alone:
        return {QStringLiteral("On one's own"), QStringLiteral("what others found that day was not shown")};
    case Kind::portion:
        return {QStringLiteral("In one go"), ranges(entry.numbers)};
    case Kind::down:
        return {QStringLiteral("Down again"), shown(entry.words)};
    case Kind::interrupted:
        return {QStringLiteral("Interrupted"), interruptionWords(view, entry)};
    case Kind::quick:
        return {QStringLiteral("Quick"), quickWords(view, entry)};
    case Kind::clock:
        return {QStringLiteral("Clock"), QStringLiteral("satellite time was ") + shown(entry.words)};
    case Kind::night:
        return {QStringLiteral("Night"), !entry.low ? QStringLiteral("the flight doesn't go into the dark")
                                         : entry.words == "sun"
                                             ? QStringLiteral("it was dark")
                                             : QStringLiteral("the flight goes into the dark")};
    case Kind::asked: {
        const round::Ask& ask = askOf(view, entry);
        return {QStringLiteral("Asked"),
                shown(ask.what.who.name) + QStringLiteral(", ") + askWords(view, ask) +
                    (entry.words.empty() ? QString() : QStringLiteral(": ")) + shown(entry.words)};
    }
    case Kind::answered:
        return {QStringLiteral("Answered"), toWhom(view, entry) + shown(entry.words)};
    case Kind::declined:
        return {QStringLiteral("Declined"), toWhom(view, entry) + shown(entry.words)};
    case Kind::withdrawn:
        return {QStringLiteral("Taken back"), QStringLiteral("the conclusion: ") + shown(entry.words), true};
    case Kind::concluded:
        return {QStringLiteral("Concluded"), concludedWords(view, entry)};
    }
    return {};
}

void addLine(const Context& context, const TimelineEntry& entry) {
    Sheet& sheet = context.sheet;
    const Line line = lineOf(context.view, entry);
    const double x = area::left + timeWidth + kindWidth;
    const Text words(line.words, line.strong ? style::smallStrong : style::small, area::right - x);
    sheet.need(std::max(1, std::min(words.lines(), 2)) * style::small.leading);
    sheet.textAt(Text(context.clock.seconds(entry.at), style::quiet, timeWidth - 8), {area::left, sheet.y});
    sheet.textAt(Text(line.kind, line.strong ? style::smallStrong : style::small, kindWidth),
                 {area::left + timeWidth, sheet.y});
    if (words.lines() == 0)
        sheet.y += style::small.leading;
    else
        sheet.text(words, x);
    sheet.y += 1.5;
}

void addOpenings(const Context& context) {
    Sheet& sheet = context.sheet;
    sheet.gap(18);
    sheet.need(90);
    sheet.text(Text(QStringLiteral("Opened and closed"), style::subheading, area::width));
    sheet.y += 4;
    if (context.view.openings.empty())
        sheet.text(Text(QStringLiteral("Nothing was opened or found open."), style::body, area::width));
    for (const OpeningView& opening : context.view.openings) {
        const Text name = textOf(opening.opening->name, style::small, 220);
        const QString made = opening.met ? QStringLiteral("so at the start")
                                         : QStringLiteral("opened ") + context.clock.time(opening.made);
        const QString closed = opening.closed
                                   ? QStringLiteral("put right ") + context.clock.time(*opening.closed)
                                   : QStringLiteral("still open");
        sheet.need(name.height() + 5);
        sheet.line(area::left, area::right, ink::line);
        sheet.y += 2.5;
        sheet.textAt(Text(made, style::small, 110), {area::left + 236, sheet.y});
        sheet.textAt(Text(closed, style::small, 120), {area::left + 356, sheet.y});
        sheet.text(name);
        sheet.y += 2.5;
    }
}

/// Where it was, roughly: the outline itself is in the record.
QString extentWords(const airframe::Outline& outline) {
    const auto [left, right] = std::minmax_element(outline.begin(), outline.end(),
                                                   [](const auto& a, const auto& b) { return a.x < b.x; });
    const auto [aft, forward] = std::minmax_element(outline.begin(), outline.end(),
                                                    [](const auto& a, const auto& b) { return a.y < b.y; });
    const auto metres = [](double value) { return QString::number(value, 'f', 1); };
    return QStringLiteral("x %1 to %2 m, y %3 to %4 m on the figure")
        .arg(metres(left->x), metres(right->x), metres(aft->y), metres(forward->y));
}

QString differenceWords(const RecordView& view, const DifferenceView& one) {
    switch (one.kind) {
    case Kind::blocked:
        return standName(view, one.id) + QStringLiteral(": ") + shown(one.why);
    case Kind::marked:
        return QStringLiteral("In the way, ") + areaWords(one.id) + QStringLiteral(": ") + shown(one.why) +
               QStringLiteral(" (") + extentWords(one.outline) + QStringLiteral(")");
    default:
        return QStringLiteral("Low light");
    }
}

/// Only where there is something to say: most rounds go as the machine's description has it.
void addDifferences(const Context& context) {
    if (context.view.differences.empty()) return;
    Sheet& sheet = context.sheet;
    sheet.gap(18);
    sheet.need(90);
    sheet.text(Text(QStringLiteral("What could not be used, and what was in the way"), style::subheading,
                    area::width));
    sheet.y += 4;
    for (const DifferenceView& one : context.view.differences) {
        const Text words(differenceWords(context.view, one), style::small, 330);
        QString time = context.clock.time(one.since);
        time += one.until ? QStringLiteral(" to ") + context.clock.time(*one.until)
                          : QStringLiteral(" to the end");
        sheet.need(words.height() + 5);
        sheet.line(area::left, area::right, ink::line);
        sheet.y += 2.5;
        sheet.textAt(Text(time, style::small, 120), {area::left + 356, sheet.y});
        sheet.text(words);
        sheet.y += 2.5;
    }
}

void addCautions(const Context& context) {
    const auto& cautions = context.view.airframe->cautions;
    if (cautions.empty()) return;
    std::vector<Text> words;
    double height = 22;
    for (const std::string& caution : cautions) {
        words.push_back(textOf(caution, style::small, area::width - 34));
        height += words.back().height() + 15;
    }
    Sheet& sheet = context.sheet;
    sheet.gap(18);
    sheet.need(height < area::height / 2 ? height : 90); // few of them stay together
    sheet.text(Text(QStringLiteral("Cautions for this walk"), style::subheading, area::width));
    sheet.y += 6;
    for (const Text& text : words) {
        sheet.need(text.height() + 10);
        sheet.put(
            [text, box = QRectF(area::left, sheet.y, area::width, text.height() + 10)](QPainter& painter) {
                drawCutBox(painter, box, ink::amber);
                text.draw(painter, box.topLeft() + QPointF(22, 5));
            });
        sheet.y += text.height() + 15;
    }
}

} // namespace

void addTimeline(const Context& context) {
    Sheet& sheet = context.sheet;
    sheet.newPage();
    addHeading(sheet, QStringLiteral("How the round went"),
               QStringLiteral("Local times, ") + context.clock.zone() +
                   QStringLiteral(". Numbers are those of the list of points."));
    for (const TimelineEntry& entry : context.view.timeline)
        addLine(context, entry);
    addAsks(context);
    addDifferences(context);
    addOpenings(context);
    addCautions(context);
}

} // namespace ambit::paper
