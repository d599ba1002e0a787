#include "paper/frame.hpp"

#include "paper/wording.hpp"

#include <QStringList>

namespace ambit::paper {

namespace {

QString roleWords(const round::Person& who) {
    QString words = shown(who.role);
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    if (who.certificate.empty()) return words + QStringLiteral(", no certificate number given");
    return words + QStringLiteral(", certificate number ") + shown(who.certificate);
}

} // namespace

void addHead(Sheet& sheet, const Head& head) {
    sheet.y = 52;
    sheet.textAt(Text(head.what, style::label, area::width), {area::left, sheet.y});
    sheet.textAt(Text(QStringLiteral("Ambit"), style::label, area::width, Align::right),
                 {area::left, sheet.y});
    sheet.y += 15;
    sheet.line(area::left, area::right, ink::black, 2);
    sheet.y += 14;
    sheet.text(textOf(head.registration, {Face::bold, 36, 42, ink::black}, area::width));
    sheet.y += 2;
    QStringList machine;
    if (!head.machine.empty()) machine << shown(head.machine);
    machine << QStringLiteral("serial number ") + shown(head.serial);
    sheet.text(Text(machine.join(QStringLiteral(" · ")), style::subheading, area::width));
    sheet.text(Text(head.under, style::body, area::width));
    sheet.y += 12;
}

void addFacts(Sheet& sheet, const std::vector<Fact>& facts) {
    for (std::size_t row = 0; row < facts.size(); row += columns) {
        double deepest = 0;
        for (std::size_t i = row; i < std::min(row + columns, facts.size()); ++i) {
            const double x = area::left + static_cast<double>(i - row) * (column + gutter);
            const Text label(facts[i].label, style::label, column);
            QString words = facts[i].value;
            const Text value(words.replace(u'\n', QChar(QChar::LineSeparator)), style::small, column);
            sheet.textAt(label, {x, sheet.y});
            sheet.textAt(value, {x, sheet.y + label.height()});
            deepest = std::max(deepest, label.height() + value.height());
        }
        sheet.y += deepest + 5;
    }
}

void addSigner(Sheet& sheet, const round::Person& who, const std::string& key, const std::string& identity) {
    constexpr double inner = area::width - 32;
    std::vector<Text> parts{
        Text(QStringLiteral("Signed by"), style::label, inner),
        textOf(who.name, {Face::bold, 12, 17, ink::black}, inner),
        Text(roleWords(who), style::small, inner),
        Text(QStringLiteral("Fingerprint of the signer’s key (SHA-256 of the certificate)"), style::label,
             inner),
        Text(groups(key), style::hash, inner),
        Text(QStringLiteral("Identity of this record (SHA-256 of its content)"), style::label, inner),
        Text(groups(identity), style::hash, inner)};
    double height = 20 + 10;
    for (const Text& part : parts)
        height += part.height();
    sheet.gap(12);
    sheet.need(height);
    sheet.put([=, box = QRectF(area::left, sheet.y, area::width, height)](QPainter& painter) {
        painter.fillRect(box, ink::shade);
        double y = box.top() + 10;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            if (i == 3 || i == 5) y += 5; // between person, key and record
            parts[i].draw(painter, {box.left() + 16, y});
            y += parts[i].height();
        }
    });
    sheet.y += height;
}

void addNotice(Sheet& sheet, const Notice& notice) {
    QStringList words;
    words << (notice.statement.isEmpty()
                  ? QStringLiteral("The manufacturer’s handbook and the local rules have the last word.")
                  : notice.statement);
    if (!notice.machine.empty()) words << shown(notice.machine);
    words << QStringLiteral(
        "The signature of this file can be checked with any PDF reader; the record itself, for "
        "programs, is attached as record.json.");
    if (!notice.previous.empty()) {
        QStringList hashes;
        for (const std::string& hash : notice.previous)
            hashes << shortHash(hash) + QStringLiteral(" …");
        words << QStringLiteral("Follows the aircraft’s records ") + hashes.join(QStringLiteral(", ")) + u'.';
    }
    if (!notice.shownWhole)
        words << QStringLiteral("□ stands for a character that the typeface of these pages lacks; the "
                                "attached record.json has it.");
    sheet.gap(10);
    const Style fine{Face::regular, 7.3, 9.8, ink::grey};
    const Text text(words.join(u' '), fine, area::width);
    sheet.need(text.height());
    sheet.text(text);
}

} // namespace ambit::paper
