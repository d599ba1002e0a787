#include "model/words.hpp"

#include "judge/units.hpp"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QStringList>
#include <QTimeZone>

namespace ambit::view {

namespace {

/// Not a class of its own, so tr() has its context from here.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

constexpr std::size_t digitsOfComparison = 9; ///< of a value brought into the limit's unit

QString howWord(airframe::How how) {
    using airframe::How;
    switch (how) {
    case How::look:
        return Words::tr("Look");
    case How::feel:
        return Words::tr("Feel");
    case How::move:
        return Words::tr("Move");
    case How::turn:
        return Words::tr("Turn");
    case How::drain:
        return Words::tr("Drain");
    case How::measure:
        return Words::tr("Measure");
    case How::count:
        return Words::tr("Count");
    case How::listen:
        return Words::tr("Listen");
    }
    return {};
}

QString accessText(airframe::Access access) {
    using airframe::Access;
    switch (access) {
    case Access::ground:
        return Words::tr("On the ground");
    case Access::kneel:
        return Words::tr("Kneeling");
    case Access::step:
        return Words::tr("Raised");
    case Access::ladder:
        return Words::tr("On a ladder");
    }
    return {};
}

/// The catalogue's own language: pages are drawn in English whatever the device speaks.
QLocale spoken() {
    return QLocale(Words::tr("en", "the language of this catalogue, ISO 639-1"));
}

QDateTime local(Instant at, int offsetMinutes) {
    return QDateTime::fromMSecsSinceEpoch(at.ms, Qt::OffsetFromUTC, offsetMinutes * 60);
}

} // namespace

QString howText(const std::vector<airframe::How>& how) {
    QStringList words;
    for (const auto one : how)
        words << howWord(one);
    return words.join(QStringLiteral("\u00a0· "));
}

QString standText(const airframe::Stand& stand) {
    const QString hands = stand.hands == 0   ? Words::tr("no hand free")
                          : stand.hands == 1 ? Words::tr("one hand free")
                                             : Words::tr("both hands free");
    return accessText(stand.access) + QStringLiteral("\u00a0· ") + hands;
}

QString settingsText(const airframe::Airframe& airframe, const airframe::Settings& when) {
    QStringList words;
    for (const auto& [id, stateId] : when) {
        const airframe::Setting* setting = airframe.setting(id);
        const airframe::SettingState* state = setting == nullptr ? nullptr : setting->state(stateId);
        if (state != nullptr) words << text(state->name);
    }
    return words.join(QStringLiteral("\u00a0· "));
}

QString valueText(const round::Settled& settled, const airframe::Point& point) {
    if (!settled.value || !point.limit) return {};
    return estimateText(*settled.value, settled.unit.empty() ? point.limit->unit : settled.unit,
                        round::uncertaintyOf(settled));
}

QString estimateText(const std::string& value, const std::string& unit, const std::string& uncertainty) {
    const QString words = measureText(value, unit);
    return uncertainty.empty() ? words : words + QStringLiteral(" ± ") + figureText(uncertainty);
}

QString intervalText(const std::string& low, const std::string& high, const std::string& unit) {
    return Words::tr("%1 to %2 in 95 of 100 cases").arg(figureText(low), measureText(high, unit));
}

QString reachesBeyondText(const airframe::Limit& limit, const Decimal& value, const std::string& unit,
                          const std::string& uncertainty) {
    const auto standard = Decimal::parse(uncertainty);
    if (!standard) return {};
    const auto its = judge::shownIn(value, unit, limit.unit, digitsOfComparison);
    const auto spread = judge::differenceIn(*standard, unit, limit.unit, digitsOfComparison);
    if (!its || !spread || !judge::mayBeBeyond(limit, its->value, spread->value)) return {};
    return Words::tr("Its interval reaches beyond the limit: %1").arg(limitText(limit));
}

QString limitText(const airframe::Limit& limit) {
    return text(judge::toText(limit));
}

QString unitText(const std::string& unit) {
    if (unit == "landings") return Words::tr("landings");
    if (unit == "cycles") return Words::tr("cycles");
    if (unit == "starts") return Words::tr("starts");
    return text(unit);
}

bool saysItsUnit(const QString& name, const QString& unit) {
    return unit.isEmpty() || name.compare(unit, Qt::CaseInsensitive) == 0;
}

QString counterText(const airframe::Counter& counter, const std::string& value) {
    const QString unit = unitText(counter.unit);
    return saysItsUnit(text(counter.name), unit) ? figureText(value)
                                                 : figureText(value) + QLatin1Char(' ') + unit;
}

QString withUnit(const QString& name, const QString& unit) {
    return saysItsUnit(name, unit) ? name : name + QStringLiteral(", ") + unit;
}

QString roleText(const std::string& role) {
    if (role == "pilot") return Words::tr("Pilot");
    if (role == "instructor") return Words::tr("Instructor");
    if (role == "owner") return Words::tr("Owner");
    if (role == "mechanic") return Words::tr("Mechanic");
    return text(role);
}

QString outcomeText(round::Outcome outcome) {
    switch (outcome) {
    case round::Outcome::sound:
        return Words::tr("sound");
    case round::Outcome::finding:
        return Words::tr("finding");
    case round::Outcome::notInspected:
        return Words::tr("not inspected");
    }
    return {};
}

QString conclusionText(bool fit) {
    return fit ? Words::tr("Fit for flight") : Words::tr("Not fit for flight");
}

QString agoText(Instant then, Instant now) {
    const auto minutes = static_cast<int>(std::max<std::int64_t>(0, now.ms - then.ms) / 60000);
    if (minutes < 1) return Words::tr("just now");
    if (minutes < 120) return Words::tr("%1 min ago").arg(minutes);
    if (minutes < 48 * 60) return Words::tr("%1 h ago").arg(minutes / 60);
    return Words::tr("%1 days ago").arg(minutes / (24 * 60));
}

QString clockText(Instant at, int offsetMinutes) {
    return local(at, offsetMinutes).toString(QStringLiteral("HH:mm"));
}

QString secondText(Instant at, int offsetMinutes) {
    return clockText(at, offsetMinutes) +
           QStringLiteral(":%1").arg(at.ms / 1000 % 60, 2, 10, QLatin1Char('0'));
}

QString dayText(Instant at, int offsetMinutes) {
    return spoken().toString(local(at, offsetMinutes), Words::tr("d MMM yyyy, HH:mm"));
}

QString zonedText(Instant at, int offsetMinutes) {
    QString zone = QStringLiteral(" UTC");
    const int minutes = std::abs(offsetMinutes);
    if (minutes != 0)
        zone += (offsetMinutes < 0 ? QStringLiteral("−%1") : QStringLiteral("+%1")).arg(minutes / 60);
    if (minutes % 60 != 0) zone += QStringLiteral(":%1").arg(minutes % 60, 2, 10, QLatin1Char('0'));
    return dayText(at, offsetMinutes) + zone;
}

QString saidOf(const QString& of, const QString& what) {
    return what.isEmpty() ? of : Words::tr("%1: %2").arg(of, what);
}

QString fingerprintText(const std::string& sha256) {
    QString grouped;
    for (std::size_t i = 0; i < sha256.size(); i += 4)
        grouped += (i == 0 ? QString() : QStringLiteral(" ")) + text(sha256.substr(i, 4));
    return grouped;
}

QString quoted(const QString& name) {
    return text(ambit::quoted(name.toStdString()));
}

QString photoSource(const std::string& sha256) {
    return QStringLiteral("image://photo/") + text(sha256);
}

QString askKindName(round::Statement::Kind kind) {
    switch (kind) {
    case round::Statement::Kind::lookAgain:
        return QStringLiteral("lookAgain");
    case round::Statement::Kind::question:
        return QStringLiteral("question");
    case round::Statement::Kind::remark:
        break;
    }
    return QStringLiteral("remark");
}

QString askTitle(round::Statement::Kind kind, const QString& point) {
    const QString name = quoted(point);
    switch (kind) {
    case round::Statement::Kind::lookAgain:
        return Words::tr("Look again at %1").arg(name);
    case round::Statement::Kind::question:
        return point.isEmpty() ? Words::tr("A question") : Words::tr("A question on %1").arg(name);
    case round::Statement::Kind::remark:
        break;
    }
    return point.isEmpty() ? Words::tr("A remark") : Words::tr("A remark on %1").arg(name);
}

QString quickText(int points, std::int64_t ms) {
    const double seconds = static_cast<double>(ms) / 1000;
    return Words::tr("%1 points in %2 s")
        .arg(points)
        .arg(QLocale::c().toString(seconds, 'g', seconds < 10 ? 2 : 3));
}

QString lastedText(std::int64_t seconds) {
    constexpr std::int64_t minute = 60, hour = 60 * minute, day = 24 * hour;
    if (seconds < 2 * minute) return Words::tr("%1 s").arg(seconds);
    if (seconds < 2 * hour) return Words::tr("%1 min").arg(seconds / minute);
    if (seconds < 2 * day) return Words::tr("%1 h %2 min").arg(seconds / hour).arg(seconds % hour / minute);
    return Words::tr("%1 days").arg(seconds / day);
}

QString causeText(round::Interrupted::Cause cause, std::int64_t seconds) {
    using Cause = round::Interrupted::Cause;
    const QString lasted = lastedText(seconds);
    switch (cause) {
    case Cause::paused:
        return Words::tr("Paused for %1").arg(lasted);
    case Cause::call:
        return Words::tr("A call of %1").arg(lasted);
    case Cause::locked:
        return Words::tr("The screen was locked for %1").arg(lasted);
    case Cause::away:
        return Words::tr("Away from this screen for %1").arg(lasted);
    case Cause::silent:
        return Words::tr("Nothing was told for %1").arg(lasted);
    case Cause::stopped:
        break;
    }
    return Words::tr("The program was closed for %1").arg(lasted);
}

QString backRuleText(const round::BackRule& rule) {
    switch (rule.from) {
    case round::BackRule::From::points:
        return rule.points == 1 ? Words::tr("back one point") : Words::tr("back %1 points").arg(rule.points);
    case round::BackRule::From::stand:
        return Words::tr("the stand again");
    case round::BackRule::From::start:
        break;
    }
    return Words::tr("from the start");
}

QString interruptedText(const round::Interrupted& what) {
    const auto again = static_cast<int>(what.again.size());
    return Words::tr("%1: %2; %3")
        .arg(causeText(what.cause, what.seconds), backRuleText(what.rule),
             again == 0   ? Words::tr("nothing to settle again")
             : again == 1 ? Words::tr("one point to settle again")
                          : Words::tr("%1 points to settle again").arg(again));
}

} // namespace ambit::view
