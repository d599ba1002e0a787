// What was asked by those who followed the round, and what came of it.
#include "paper/sections.hpp"

#include <algorithm>

namespace ambit::paper {

namespace {

using Kind = round::Statement::Kind;

constexpr double wordsWidth = 330;
constexpr double besideAt = 356;
constexpr double besideWidth = 123;

QString becameWords(const Context& context, const round::Ask& ask) {
    const QString words = ask.words.empty() ? QString() : QStringLiteral(": ") + shown(ask.words);
    switch (ask.became) {
    case round::Ask::Became::settled:
        return QStringLiteral("Settled after it, ") + context.clock.time(*ask.until) + u'.';
    case round::Ask::Became::answered:
        return QStringLiteral("Answered, ") + context.clock.time(*ask.until) + words;
    case round::Ask::Became::declined:
        return QStringLiteral("Declined, ") + context.clock.time(*ask.until) + words;
    case round::Ask::Became::told:
    case round::Ask::Became::open: // a concluded round has none
        break;
    }
    return {};
}

QString whoWords(const round::Person& who) {
    const QString words = shown(who.name) + QStringLiteral(", ") + shown(who.role);
    return who.certificate.empty() ? words : words + QStringLiteral(", ") + shown(who.certificate);
}

QString askedWords(const RecordView& view, const round::Ask& ask) {
    QString words = askWords(view, ask);
    words.front() = words.front().toUpper();
    return ask.what.words.empty() ? words + u'.' : words + QStringLiteral(": ") + shown(ask.what.words);
}

void addAsk(const Context& context, const round::Ask& ask, const std::string& key) {
    Sheet& sheet = context.sheet;
    const Text asked(askedWords(context.view, ask), style::small, wordsWidth);
    const Text became(becameWords(context, ask), style::small, wordsWidth);
    const Text who(whoWords(ask.what.who), style::small, besideWidth);
    const Text when(context.clock.time(ask.at) + QStringLiteral(" · key ") + shortHash(key) +
                        QStringLiteral(" …"),
                    style::quiet, besideWidth);
    const double beside = who.height() + when.height();
    // As long as texts may be, they go on over pages; short ones stay whole.
    sheet.need(std::max(std::min(asked.height() + became.height(), 100.0), beside) + 5);
    sheet.line(area::left, area::right, ink::line);
    sheet.y += 2.5;
    const double top = sheet.y;
    sheet.textAt(who, {area::left + besideAt, top});
    sheet.textAt(when, {area::left + besideAt, top + who.height()});
    sheet.text(asked);
    if (became.lines() > 0) sheet.text(became);
    if (sheet.y > top) sheet.y = std::max(sheet.y, top + beside);
    sheet.y += 2.5;
}

} // namespace

QString askWords(const RecordView& view, const round::Ask& ask) {
    const auto point = std::find_if(view.points.begin(), view.points.end(),
                                    [&](const PointView& one) { return one.point->id == ask.what.point; });
    const QString name = point == view.points.end() ? QString()
                                                    : QString::number(point->number) + QStringLiteral(", ") +
                                                          shown(point->point->name);
    const auto at = [&](const QString& words) {
        return name.isEmpty() ? words : words + QStringLiteral(" at ") + name;
    };
    switch (ask.what.kind) {
    case Kind::lookAgain:
        return at(QStringLiteral("look again"));
    case Kind::question:
        return at(QStringLiteral("question"));
    case Kind::remark:
        break;
    }
    return at(QStringLiteral("remark"));
}

void addAsks(const Context& context) {
    const auto& asks = context.view.state.asks;
    if (asks.empty()) return;
    Sheet& sheet = context.sheet;
    sheet.gap(18);
    sheet.need(90);
    sheet.text(Text(QStringLiteral("What was asked, and what came of it"), style::subheading, area::width));
    sheet.y += 2;
    sheet.text(Text(QStringLiteral("By those who followed the round; each signed it with their own key."),
                    style::quiet, area::width));
    sheet.y += 4;
    for (std::size_t i = 0; i < asks.size(); ++i)
        addAsk(context, asks[i], context.view.askKeys[i]);
}

} // namespace ambit::paper
