// Core's sentences in the language spoken.
#include "model/sentence.hpp"

#include <QCoreApplication>
#include <QDate>

namespace ambit::view {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

} // namespace

QString figureText(const std::string& decimal) {
    QString figure = QString::fromStdString(decimal);
    return figure.replace(QLatin1Char('.'), Words::tr(".", "between a number's whole and its fraction"));
}

QString measureText(const std::string& decimal, const std::string& unit) {
    return figureText(decimal) + QLatin1Char(' ') + QString::fromStdString(unit);
}

std::string typedDecimal(const QString& typed) {
    const QString point = Words::tr(".", "between a number's whole and its fraction");
    return typed.trimmed().replace(point, QStringLiteral(".")).toStdString();
}

QString dayInWords(const std::string& date) {
    const QDate day = QDate::fromString(QString::fromStdString(date), Qt::ISODate);
    return day.isValid() ? day.toString(Words::tr("yyyy-MM-dd", "a day, in a sentence"))
                         : QString::fromStdString(date);
}

QString text(const Sentence& sentence) {
    const QString english = QString::fromStdString(sentence);
    if (sentence.kind() == Sentence::Kind::figure) return figureText(sentence);
    if (sentence.kind() == Sentence::Kind::day) return dayInWords(sentence);
    const Sentence::Made* made = sentence.made();
    // What somebody wrote: a name that an airframe may have in this language.
    if (made == nullptr) return QCoreApplication::translate(airframeContext, sentence.c_str());
    const QString pattern = qtTrId(made->pattern.c_str());
    QString said;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const int part =
            i + 1 < pattern.size() && pattern[i] == QLatin1Char('%') ? pattern[i + 1].digitValue() : -1;
        if (part < 1 || static_cast<std::size_t>(part) > made->parts.size()) {
            said += pattern[i];
            continue;
        }
        said += text(made->parts[static_cast<std::size_t>(part) - 1]);
        ++i;
    }
    return said;
}

QString errorText(const Error& error) {
    QString said = text(error.what);
    const QString where = QString::fromStdString(error.where);
    if (!where.isEmpty() && !said.contains(where)) {
        if (said.endsWith(QLatin1Char('.'))) said.chop(1);
        said += QStringLiteral(" (") + where + QStringLiteral(").");
    }
    if (!error.remedy.empty()) said += QLatin1Char(' ') + text(error.remedy);
    return said;
}

} // namespace ambit::view
