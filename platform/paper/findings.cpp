// Findings with what was seen and the photos; also those that no longer count.
#include "judge/limit.hpp"
#include "paper/item.hpp"
#include "paper/measured_marks.hpp"
#include "paper/sections.hpp"

namespace ambit::paper {

namespace {

struct Finding {
    const PointView& point;
    const Entry& entry;
    bool counts;
};

/// What the finding's place and time were.
QString whereWords(const Context& context, const Finding& finding) {
    const airframe::Zone* zone = context.view.airframe->zone(finding.point.point->zone);
    QStringList words;
    if (zone != nullptr) words << shown(zone->name);
    words << QStringLiteral("from: ") + standName(context.view, finding.entry.stand);
    words << howWords(*finding.point.point);
    words << QStringLiteral("at ") + context.clock.time(finding.entry.at) + QStringLiteral(" local time");
    return words.join(QStringLiteral(" · "));
}

/// After what it took back: how the point was settled then, and why again.
QString takenBackWords(const Context& context, const Finding& finding) {
    const auto& entries = finding.point.entries;
    QString why;
    for (const Entry* entry = &finding.entry + 1; entry <= &entries.back() && !entry->settled; ++entry)
        if (entry->kind != Entry::Kind::declined) {
            why = againWords(*entry);
            why.front() = why.front().toUpper();
        }
    const Entry& last = finding.point.counting();
    return why +
           (why.endsWith(u'.') ? QStringLiteral(" Settled again at ")
                               : QStringLiteral(". Settled again at ")) +
           context.clock.time(last.at) + QStringLiteral(": ") + outcomeWord(last.settled->outcome) + u'.';
}

void addDetails(const Context& context, const Finding& finding) {
    Sheet& sheet = context.sheet;
    const airframe::Point& point = *finding.point.point;
    const round::Settled& settled = *finding.entry.settled;
    if (settled.value && point.limit) {
        const QString measured = shown(point.limit->quantity) + u' ' + valueWords(point, settled) +
                                 QStringLiteral("; limit ") + shown(judge::toText(*point.limit)) +
                                 QStringLiteral(" (") + shown(point.limit->source) + u')';
        addLabelled(sheet, QStringLiteral("Measured"), measured);
    }
    addLabelled(sheet, QStringLiteral("Sound would be"), shown(point.sound));
    if (!finding.counts) addLabelled(sheet, QStringLiteral("Afterwards"), takenBackWords(context, finding));
}

void addFinding(const Context& context, const Finding& finding) {
    Sheet& sheet = context.sheet;
    const round::Settled& settled = *finding.entry.settled;
    const Text name = textOf(finding.point.point->name, style::subheading, wide);
    const Text what(severityWords(settled.severity) +
                        (finding.counts ? QString() : QStringLiteral(" (taken back)")),
                    {Face::bold, 8.5, 12, finding.counts ? colorOf(settled.severity) : ink::grey}, wide);
    const Text where(whereWords(context, finding), style::quiet, wide);
    const Text words = textOf(settled.words, style::body, wide);
    const double photos = settled.photos.empty() ? 0 : photoRowHeight(context, settled.photos);
    // Head, words if short, and the first photos stay together.
    sheet.gap(12);
    sheet.need(std::min(area::height,
                        60 + name.height() + where.height() + std::min(words.height(), 120.0) + photos));
    if (finding.counts) sheet.mark(finding.point.point->id);
    addItemHead(sheet, finding.counts ? markOf(settled) : Mark::hollow, finding.point.number, name);
    sheet.text(what, area::left + indent);
    sheet.text(where, area::left + indent);
    sheet.y += 5;
    sheet.text(words, area::left + indent);
    sheet.y += 5;
    addDetails(context, finding);
    addPhotos(context, settled.photos, finding.point.number, measuredOver(settled));
}

} // namespace

void addFindings(const Context& context) {
    if (!context.view.hasFindings()) return;
    context.sheet.newPage();
    addHeading(context.sheet, QStringLiteral("Findings"),
               QStringLiteral("What was found, in the words of the person who walked the round. Numbers are "
                              "those of the list of points."));
    for (const bool counts : {true, false})
        for (const PointView& point : context.view.points)
            for (const Entry& entry : point.entries)
                if (entry.settled && entry.settled->outcome == round::Outcome::finding &&
                    (&entry == &point.counting()) == counts)
                    addFinding(context, {point, entry, counts});
}

} // namespace ambit::paper
