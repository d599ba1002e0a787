// What a round's view shows: words and numbers from its state, worked out when a screen asks.
#include "model/round_view.hpp"

#include "judge/units.hpp"
#include "model/length.hpp"
#include "model/words.hpp"

#include <cmath>

namespace ambit::view {

QString RoundView::outOfLimit(const QString& value, const QString& unit) const {
    const auto number = Decimal::parse(typedDecimal(value));
    if (limit() == nullptr || !number) return {};
    const std::string entered = unit.isEmpty() ? limit()->unit : unit.toStdString();
    const QString measuredValue = measureText(number->text(), entered);
    const auto verdict = judge::against(*limit(), *number, entered);
    if (!verdict) return errorText(verdict.error());
    switch (*verdict) {
    case judge::Verdict::within:
        return {};
    case judge::Verdict::below:
        return tr("%1 is below the limit: %2").arg(measuredValue, limitText());
    case judge::Verdict::above:
        return tr("%1 is above the limit: %2").arg(measuredValue, limitText());
    }
    return {};
}

QString RoundView::roundId() const {
    return text(state().id);
}
QString RoundView::registration() const {
    return text(state().opened.registration);
}
QString RoundView::walkName() const {
    return text(airframe->walk(state().opened.walk)->name);
}
QString RoundView::notice() const {
    return text(airframe->notice);
}
QStringList RoundView::generalCautions() const {
    QStringList list;
    for (const auto& caution : airframe->cautions)
        list << text(caution);
    return list;
}
QString RoundView::person() const {
    return text(state().opened.who.name);
}
int RoundView::pointCount() const {
    return static_cast<int>(state().points.size());
}

QString RoundView::costOfTheRest() const {
    const auto cost = walk::walkThrough(*airframe, state().opened.walk, situation(state(), *airframe), left);
    if (!cost) return {};
    const QString climbs = cost->climbs == 0   ? tr("no climb")
                           : cost->climbs == 1 ? tr("1 climb")
                                               : tr("%1 climbs").arg(cost->climbs);
    return QStringList{lengthText(cost->metres, Grain::whole), climbs,
                       tr("about %1 min").arg(std::lround(cost->seconds / 60))}
        .join(QStringLiteral("\u00a0· "));
}

int RoundView::minutes() const {
    const bool over = state().phase == round::Phase::concluded || state().phase == round::Phase::sealed;
    const Instant end = over ? state().lastAt : state().pausedSince.value_or(now());
    return static_cast<int>(std::max<std::int64_t>(0, end.ms - state().openedAt.ms - state().pausedMs) /
                            60000);
}

QString RoundView::phase() const {
    switch (state().phase) {
    case round::Phase::walking:
        return QStringLiteral("walking");
    case round::Phase::paused:
        return QStringLiteral("paused");
    case round::Phase::concluded:
        return QStringLiteral("concluded");
    case round::Phase::sealed:
        return QStringLiteral("sealed");
    }
    return {};
}

QString RoundView::pausedText() const {
    if (!state().pausedSince) return {};
    return tr("Paused since %1").arg(clockText(*state().pausedSince, state().opened.offsetMinutes));
}
bool RoundView::concludedFit() const {
    return state().conclusion && state().conclusion->fit;
}
QString RoundView::conclusionText() const {
    return state().conclusion ? view::conclusionText(state().conclusion->fit) : QString();
}
QString RoundView::reasons() const {
    return state().conclusion ? text(state().conclusion->reasons) : QString();
}
QString RoundView::pointId() const {
    return card.point == nullptr ? QString() : text(card.point->id);
}
QString RoundView::sound() const {
    return card.point == nullptr ? QString() : text(card.point->sound);
}
QString RoundView::unsound() const {
    return card.point == nullptr ? QString() : text(card.point->unsound);
}
QString RoundView::why() const {
    return card.point == nullptr ? QString() : text(card.point->why);
}
const airframe::Limit* RoundView::limit() const {
    return card.point == nullptr || !card.point->limit ? nullptr : &*card.point->limit;
}
bool RoundView::measured() const {
    return limit() != nullptr;
}
QString RoundView::quantity() const {
    return limit() == nullptr ? QString() : text(limit()->quantity);
}
QString RoundView::unit() const {
    return limit() == nullptr ? QString() : text(limit()->unit);
}
QString RoundView::limitText() const {
    return limit() == nullptr ? QString() : view::limitText(*limit());
}
QString RoundView::limitSource() const {
    return limit() == nullptr ? QString() : text(limit()->source);
}
bool RoundView::findingGrounds() const {
    return card.point != nullptr && card.point->finding == airframe::Severity::grounds;
}
QString RoundView::carriedText() const {
    return card.point == nullptr ? QString() : carried.at(card.point->id, now());
}

QString RoundView::lastTime() const {
    return card.point == nullptr ? QString() : earlier.at(card.point->id, now());
}

QString RoundView::openedText() const {
    QStringList names;
    for (const airframe::Opening& opening : airframe->openings)
        if (const auto its = state().openings.find(opening.id);
            its != state().openings.end() && its->second.ever)
            names << text(opening.name);
    return names.join(QStringLiteral(", "));
}

QString RoundView::positionText() const {
    const int row = hereRows.rowOf(card.point);
    if (row < 0) return {};
    return (standRaised() ? tr("%1 of %2 up here") : tr("%1 of %2 here")).arg(row + 1).arg(hereRows.count());
}

const airframe::Stand* RoundView::stand() const {
    return state().stand ? airframe->stand(*state().stand) : nullptr;
}
QString RoundView::standId() const {
    return stand() == nullptr ? QString() : text(stand()->id);
}
QString RoundView::standName() const {
    return stand() == nullptr ? QString() : text(stand()->name);
}
int RoundView::standNumber() const {
    return stand() == nullptr ? 0 : figureModel->stands()->numberOf(stand()->id);
}
QString RoundView::standText() const {
    return stand() == nullptr ? QString() : view::standText(*stand());
}
int RoundView::standHands() const {
    return stand() == nullptr ? 2 : stand()->hands;
}
bool RoundView::standRaised() const {
    return stand() != nullptr && stand()->raised();
}
QString RoundView::targetStandId() const {
    return card.target == nullptr ? QString() : text(card.target->id);
}
QString RoundView::targetStandName() const {
    return card.target == nullptr ? QString() : text(card.target->name);
}
int RoundView::targetStandNumber() const {
    return card.target == nullptr ? 0 : figureModel->stands()->numberOf(card.target->id);
}
QString RoundView::targetStandText() const {
    return card.target == nullptr ? QString() : view::standText(*card.target);
}

QVariantList RoundView::openable() const {
    QVariantList list;
    for (const auto& opening : airframe->openings)
        if (!state().openings.at(opening.id).owed)
            list << QVariantMap{{QStringLiteral("id"), text(opening.id)},
                                {QStringLiteral("name"), text(opening.name)}};
    return list;
}

QVariantList RoundView::settledPoints() const {
    QVariantList list;
    for (const auto& point : airframe->points) {
        const auto found = state().points.find(point.id);
        if (found == state().points.end() || !found->second.settled) continue;
        list << QVariantMap{{QStringLiteral("id"), text(point.id)},
                            {QStringLiteral("name"), text(point.name)},
                            {QStringLiteral("outcome"), QString::fromLatin1(toText(lookOf(found->second)))},
                            {QStringLiteral("outcomeText"), view::outcomeText(*found->second.outcome())}};
    }
    return list;
}

} // namespace ambit::view
