#include "paper/wording.hpp"

#include "paper/fonts.hpp"

#include <QDateTime>
#include <QStringList>

#include <array>

namespace ambit::paper {

namespace {

constexpr std::array months{"January", "February", "March",     "April",   "May",      "June",
                            "July",    "August",   "September", "October", "November", "December"};

QDateTime at(Instant instant, int offsetMinutes) {
    return QDateTime::fromMSecsSinceEpoch(instant.ms + std::int64_t{60000} * offsetMinutes, Qt::UTC);
}

QString dateWords(const QDate& date) {
    return QStringLiteral("%1 %2 %3")
        .arg(date.day())
        .arg(QLatin1String(months[static_cast<std::size_t>(date.month() - 1)]))
        .arg(date.year());
}

} // namespace

QString Clock::time(Instant instant) const {
    const QDateTime local = at(instant, offset);
    QString clock = local.time().toString(QStringLiteral("HH:mm"));
    if (local.date() == at(first, offset).date()) return clock;
    const QString month = QLatin1String(months[static_cast<std::size_t>(local.date().month() - 1)]);
    return QStringLiteral("%1 %2 %3").arg(local.date().day()).arg(month.left(3), clock);
}

QString Clock::seconds(Instant instant) const {
    return time(instant) + at(instant, offset).time().toString(QStringLiteral(":ss"));
}

QString Clock::date(Instant instant) const {
    return dateWords(at(instant, offset).date());
}

QString Clock::both(Instant at) const {
    return date(at) + QStringLiteral(", ") + time(at).right(5) + QStringLiteral(" local time\n") +
           utcDate(at) + QStringLiteral(", ") + utcTime(at) + QStringLiteral(" UTC");
}

QString Clock::zone() const {
    const int minutes = std::abs(offset);
    return QStringLiteral("UTC%1%2:%3")
        .arg(offset < 0 ? QChar(0x2212) : QChar(u'+'))
        .arg(minutes / 60, 2, 10, QChar(u'0'))
        .arg(minutes % 60, 2, 10, QChar(u'0'));
}

QString utcTime(Instant instant) {
    return at(instant, 0).time().toString(QStringLiteral("HH:mm"));
}
QString utcDate(Instant instant) {
    return dateWords(at(instant, 0).date());
}

QString duration(std::int64_t ms) {
    const std::int64_t minutes = (ms + 30000) / 60000;
    if (minutes < 60) return QStringLiteral("%1 min").arg(minutes);
    const std::int64_t hours = minutes / 60;
    if (hours < 24) return QStringLiteral("%1 h %2 min").arg(hours).arg(minutes % 60);
    return counted(static_cast<int>(hours / 24), QStringLiteral("day"), QStringLiteral("days")) +
           QStringLiteral(" %1 h").arg(hours % 24);
}

QString lasted(std::int64_t ms) {
    return ms < 120'000 ? QStringLiteral("%1 s").arg(ms / 1000) : duration(ms);
}

QString groups(const std::string& hex) {
    QStringList parts;
    for (std::size_t i = 0; i < hex.size(); i += 4)
        parts << QString::fromStdString(hex.substr(i, 4));
    return parts.join(u' ');
}

QString shortHash(const std::string& hex) {
    return groups(hex.substr(0, 12));
}

QString howWords(const airframe::Point& point) {
    QStringList words;
    for (const airframe::How how : point.how)
        words << QString::fromUtf8(airframe::toText(how));
    return words.join(QStringLiteral(", "));
}

QString outcomeWord(round::Outcome outcome) {
    return QString::fromUtf8(round::toText(outcome));
}

QString againWords(const Entry& entry) {
    const QString words = entry.words.empty() ? QString() : QStringLiteral(": ") + shown(entry.words);
    switch (entry.kind) {
    case Entry::Kind::asked:
        return QStringLiteral("asked by %1 to be looked at again").arg(shown(entry.by)) + words;
    case Entry::Kind::declined:
        return QStringLiteral("what %1 asked was declined").arg(shown(entry.by)) + words;
    case Entry::Kind::back:
        return QStringLiteral("to be settled again: ") + shown(entry.words);
    case Entry::Kind::reopened:
    case Entry::Kind::settled:
        break;
    }
    return QStringLiteral("re-opened") + words;
}

QString severityWords(airframe::Severity severity) {
    return severity == airframe::Severity::grounds ? QStringLiteral("Grounds the aircraft")
                                                   : QStringLiteral("For assessment");
}

QString standName(const RecordView& view, const std::string& id) {
    const airframe::Stand* stand = view.airframe->stand(id);
    return stand == nullptr ? QStringLiteral("before the first stand") : shown(stand->name);
}

QString valueWords(const airframe::Point& point, const round::Settled& settled) {
    if (!settled.value) return {};
    const std::string own = point.limit ? point.limit->unit : std::string();
    return shown(*settled.value) + u' ' + shown(settled.unit.empty() ? own : settled.unit);
}

QString ranges(const std::vector<int>& numbers) {
    QStringList parts;
    for (std::size_t i = 0; i < numbers.size();) {
        std::size_t end = i;
        while (end + 1 < numbers.size() && numbers[end + 1] == numbers[end] + 1)
            ++end;
        if (end > i + 1)
            parts << QStringLiteral("%1–%2").arg(numbers[i]).arg(numbers[end]);
        else
            for (std::size_t k = i; k <= end; ++k)
                parts << QString::number(numbers[k]);
        i = end + 1;
    }
    return parts.join(QStringLiteral(", "));
}

QString counted(int n, const QString& one, const QString& many) {
    return QStringLiteral("%1 %2").arg(n).arg(n == 1 ? one : many);
}

} // namespace ambit::paper
