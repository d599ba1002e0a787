#include "paper/entry_page.hpp"

#include "model/entry_words.hpp"
#include "paper/frame.hpp"
#include "paper/wording.hpp"
#include "record/record.hpp"

#include <nlohmann/json.hpp>

namespace ambit::paper {

namespace {

/// A name and what is said under it; a question takes the room that its answer doesn't need.
void addLine(Sheet& sheet, const QString& label, const QString& words) {
    const bool question = label.endsWith(u'?');
    const double valueAt = question ? area::width - 60 : 120;
    const Text name(label, question ? style::small : style::label, valueAt - 12);
    QString lines = words;
    const Text value(lines.replace(u'\n', QChar(QChar::LineSeparator)), style::body, area::width - valueAt);
    sheet.need(std::min(std::max(name.height(), value.height()), area::height) + 8);
    sheet.line(area::left, area::right, ink::line);
    sheet.y += 4;
    sheet.textAt(name, {area::left, sheet.y + 1});
    const int page = sheet.page();
    const double lowest = sheet.y + name.height() + 1;
    sheet.text(value, area::left + valueAt);
    if (sheet.page() == page) sheet.y = std::max(sheet.y, lowest);
    sheet.y += 4;
}

/// What the signature means, where the kind of record has a rule for it.
QString meaningOf(const record::Entry& entry) {
    const bool isWork = std::holds_alternative<record::Rectification>(entry) ||
                        std::holds_alternative<record::PartChange>(entry);
    return isWork ? QStringLiteral("The signature approves the aircraft for return to service for the work "
                                   "described here and no other (14 CFR 43.9(a)(4)).")
                  : QString();
}

} // namespace

EntryPage entryPage(const Json& content, const airframe::Airframe* airframe,
                    const record::Certificate& signer, bool shownWhole) {
    const auto [heading, entry] = record::entryFrom(content);
    const std::string identity = record::identityOf(content);
    const QString title = view::titleOf(entry);
    const QString registration = shown(heading.registration);
    const Clock clock(heading.at.at, heading.at.offsetMinutes);

    Sheet sheet({registration + QStringLiteral(" · ") + title, clock.date(heading.at.at),
                 registration + QStringLiteral(" · record ") + shortHash(identity) + QStringLiteral(" …")});
    addHead(sheet, {QStringLiteral("Entry in an aircraft’s file"), heading.registration, heading.serial,
                    airframe == nullptr ? "" : airframe->name, QString()});
    addFacts(sheet, {{QStringLiteral("Written"), clock.both(heading.at.at)}});
    sheet.gap(8);
    sheet.text(Text(title, style::heading, area::width));
    sheet.y += 6;
    for (const QVariant& one : view::linesOf(entry, airframe)) {
        const QVariantMap line = one.toMap();
        addLine(sheet, line[QStringLiteral("name")].toString(),
                shown(line[QStringLiteral("text")].toString().toStdString()));
    }
    sheet.line(area::left, area::right, ink::line);
    if (const QString meaning = meaningOf(entry); !meaning.isEmpty()) {
        const Text words(meaning, style::body, area::width);
        sheet.gap(10);
        sheet.need(words.height());
        sheet.text(words);
    }
    addSigner(sheet, heading.signer, signer.sha256, identity);
    const auto statement = content.find("statement");
    addNotice(sheet, {statement != content.end() && statement->is_string()
                          ? shown(statement->get_ref<const std::string&>())
                          : QString(),
                      airframe == nullptr ? "" : airframe->notice, heading.previous, shownWhole});
    return {std::move(sheet),
            registration + QStringLiteral(", ") + title + QStringLiteral(", ") + clock.date(heading.at.at),
            heading.at.at, identity};
}

} // namespace ambit::paper
