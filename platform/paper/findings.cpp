// Findings with what was seen and the photos; also those that no longer count.
#include "judge/limit.hpp"
#include "paper/marks.hpp"
#include "paper/sections.hpp"

namespace ambit::paper {

namespace {

constexpr double indent = 44;
constexpr double wide = area::width - indent;
constexpr double between = 12;
constexpr double photoWidth = (wide - between) / 2;
constexpr double mostPhotoHeight = 210;

struct Finding {
    const PointView& point;
    const Entry& entry;
    bool counts;
};

QSizeF sizeOf(const Picture& picture) {
    if (!picture.fault.isEmpty()) return {photoWidth, 60};
    const double height = photoWidth / picture.aspect();
    if (height <= mostPhotoHeight) return {photoWidth, std::max(height, 4.0)};
    return {std::max(mostPhotoHeight * picture.aspect(), 4.0), mostPhotoHeight};
}

void addPhoto(const Context& context, const round::Photo& photo, int number, const QPointF& at) {
    const Picture picture = context.pictures.of(photo);
    const QRectF box(at, sizeOf(picture));
    const Text caption(QStringLiteral("To point %1 · photo ").arg(number) + shortHash(photo.sha256) +
                           QStringLiteral(" …"),
                       style::quiet, photoWidth);
    const QString why = QStringLiteral("This photo can’t be shown here: ") + picture.fault + u'.';
    const Text fault(why, style::small, photoWidth - 20);
    context.sheet.put([=, &pictures = context.pictures](QPainter& painter) {
        if (picture.fault.isEmpty()) {
            pictures.draw(painter, box, photo);
        } else {
            painter.setPen(QPen(ink::grey, 0.7, Qt::DashLine));
            painter.drawRect(box);
            fault.draw(painter, box.topLeft() + QPointF(10, 8));
        }
        caption.draw(painter, box.bottomLeft() + QPointF(0, 2));
    });
}

double rowHeight(const Context& context, const std::vector<round::Photo>& photos, std::size_t from) {
    double height = 0;
    for (std::size_t i = from; i < std::min(from + 2, photos.size()); ++i)
        height = std::max(height, sizeOf(context.pictures.of(photos[i])).height());
    return height + 20;
}

void addPhotos(const Context& context, const std::vector<round::Photo>& photos, int number) {
    for (std::size_t row = 0; row < photos.size(); row += 2) {
        const double height = rowHeight(context, photos, row);
        context.sheet.gap(6);
        context.sheet.need(height);
        for (std::size_t i = row; i < std::min(row + 2, photos.size()); ++i)
            addPhoto(context, photos[i], number,
                     {area::left + indent + static_cast<double>(i - row) * (photoWidth + between),
                      context.sheet.y});
        context.sheet.y += height;
    }
}

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

void addLabelled(Sheet& sheet, const QString& label, const QString& words) {
    constexpr double labelWidth = 82;
    const Text text(words, style::small, wide - labelWidth);
    sheet.need(2 * text.leading());
    sheet.textAt(Text(label, style::label, labelWidth), {area::left + indent, sheet.y});
    sheet.text(text, area::left + indent + labelWidth);
    sheet.y += 2;
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
    const double photos = settled.photos.empty() ? 0 : rowHeight(context, settled.photos, 0);
    // Head, words if short, and the first photos stay together.
    sheet.gap(12);
    sheet.need(std::min(area::height,
                        60 + name.height() + where.height() + std::min(words.height(), 120.0) + photos));
    if (finding.counts) sheet.mark(finding.point.point->id);
    if (!sheet.atTop()) {
        sheet.line(area::left, area::right, ink::black, 0.8);
        sheet.y += 8;
    }
    const Text number(QString::number(finding.point.number), {Face::bold, 11.5, 16, ink::black}, 26);
    sheet.put([=, at = QPointF(area::left, sheet.y),
               mark = finding.counts ? markOf(settled) : Mark::hollow](QPainter& painter) {
        drawMark(painter, at + QPointF(0, 2.5), 11, mark);
        number.draw(painter, at + QPointF(17, 0));
    });
    sheet.text(name, area::left + indent);
    sheet.text(what, area::left + indent);
    sheet.text(where, area::left + indent);
    sheet.y += 5;
    sheet.text(words, area::left + indent);
    sheet.y += 5;
    addDetails(context, finding);
    addPhotos(context, settled.photos, finding.point.number);
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
