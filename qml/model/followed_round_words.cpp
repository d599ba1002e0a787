// What a followed round says of its moment, in words: for the screens.
#include "model/followed_round.hpp"
#include "model/words.hpp"
#include "watch/attention.hpp"

#include <algorithm>

namespace ambit::view {

namespace {

/// "0:07", "12:40"
QString spanText(std::int64_t ms) {
    const std::int64_t seconds = (ms + 500) / 1000;
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

QString becameName(round::Ask::Became became) {
    switch (became) {
    case round::Ask::Became::open:
        return QStringLiteral("open");
    case round::Ask::Became::settled:
        return QStringLiteral("settled");
    case round::Ask::Became::answered:
        return QStringLiteral("answered");
    case round::Ask::Became::declined:
        return QStringLiteral("declined");
    case round::Ask::Became::told:
        break;
    }
    return QStringLiteral("told");
}

QString becameText(const round::Ask& ask) {
    switch (ask.became) {
    case round::Ask::Became::open:
        return FollowedRound::tr("open");
    case round::Ask::Became::settled:
        return FollowedRound::tr("looked at again");
    case round::Ask::Became::answered:
        return FollowedRound::tr("answered: %1").arg(text(ask.words));
    case round::Ask::Became::declined:
        return FollowedRound::tr("declined: %1").arg(text(ask.words));
    case round::Ask::Became::told:
        break;
    }
    return FollowedRound::tr("told");
}

} // namespace

QString FollowedRound::roundId() const {
    return text(last.id);
}
QString FollowedRound::registration() const {
    return text(last.opened.registration);
}
QString FollowedRound::walkName() const {
    const auto* walk = airframe->walk(last.opened.walk);
    return text(walk == nullptr ? last.opened.walk : walk->name);
}
QString FollowedRound::person() const {
    return text(last.opened.who.name);
}

QString FollowedRound::clockText() const {
    Instant at = log[shownCount() - 1].at;
    if (cursor)
        at.ms +=
            std::max<std::int64_t>(0, static_cast<std::int64_t>(moment * 1000) - walkedMs[shownCount() - 1]);
    return secondText(at, last.opened.offsetMinutes);
}

QString FollowedRound::phase() const {
    switch (state().phase) {
    case round::Phase::walking:
        return QStringLiteral("walking");
    case round::Phase::paused:
        return QStringLiteral("paused");
    case round::Phase::concluded:
        return QStringLiteral("concluded");
    case round::Phase::sealed:
        break;
    }
    return QStringLiteral("sealed");
}

QString FollowedRound::conclusionText() const {
    return state().conclusion ? ambit::view::conclusionText(state().conclusion->fit) : QString();
}
QString FollowedRound::reasons() const {
    return state().conclusion ? text(state().conclusion->reasons) : QString();
}
QString FollowedRound::pointId() const {
    return card.point == nullptr ? QString() : text(card.point->id);
}

const airframe::Stand* FollowedRound::stand() const {
    return state().stand ? airframe->stand(*state().stand) : nullptr;
}
QString FollowedRound::standId() const {
    return stand() == nullptr ? QString() : text(stand()->id);
}
QString FollowedRound::standName() const {
    return stand() == nullptr ? QString() : text(stand()->name);
}
int FollowedRound::standNumber() const {
    return stand() == nullptr ? 0 : figureModel->stands()->numberOf(stand()->id);
}
QString FollowedRound::standText() const {
    return stand() == nullptr ? QString() : ambit::view::standText(*stand());
}
QString FollowedRound::targetStandId() const {
    return card.target == nullptr ? QString() : text(card.target->id);
}

QString FollowedRound::inHandText() const {
    if (state().phase == round::Phase::paused) return tr("Paused");
    if (state().phase != round::Phase::walking || card.kind == QStringLiteral("done")) return {};
    const Instant since = shownPace().inHandSince;
    Instant until = walkerNow();
    if (cursor) {
        until = log[shownCount() - 1].at;
        until.ms +=
            std::max<std::int64_t>(0, static_cast<std::int64_t>(moment * 1000) - walkedMs[shownCount() - 1]);
    }
    const QString spent = spanText(std::max<std::int64_t>(0, until.ms - since.ms));
    if (card.kind == QStringLiteral("go")) return tr("On the way for %1").arg(spent);
    const auto expected = watch::expectedInHand(*airframe, state());
    return expected ? tr("In hand for %1, takes about %2").arg(spent, spanText(*expected))
                    : tr("In hand for %1").arg(spent);
}

QVariantList FollowedRound::stands() const {
    const round::Pace its = shownPace();
    QVariantList list;
    for (const round::StandPace& one : its.stands) {
        const auto* place = airframe->stand(one.stand);
        QStringList hasty;
        for (const round::Quick& quick : its.quick)
            if (quick.stand == one.stand) hasty << quickText(quick.points, quick.ms);
        const double share =
            one.expectedMs == 0 ? 0 : static_cast<double>(one.ms) / static_cast<double>(one.expectedMs);
        list << QVariantMap{{QStringLiteral("stand"), text(one.stand)},
                            {QStringLiteral("name"), text(place == nullptr ? one.stand : place->name)},
                            {QStringLiteral("number"), figureModel->stands()->numberOf(one.stand)},
                            {QStringLiteral("spentText"), spanText(one.ms)},
                            {QStringLiteral("expectedText"), spanText(one.expectedMs)},
                            {QStringLiteral("share"), std::min(2.0, share)},
                            {QStringLiteral("settled"), one.settled},
                            {QStringLiteral("quickText"), hasty.join(QStringLiteral(", "))},
                            {QStringLiteral("here"), state().stand == one.stand}};
    }
    return list;
}

QVariantList FollowedRound::quick() const {
    QVariantList list;
    for (const round::Quick& one : shownPace().quick) {
        const auto* place = airframe->stand(one.stand);
        const auto at = static_cast<std::size_t>(one.firstSeq - 1);
        list << QVariantMap{{QStringLiteral("seq"), static_cast<int>(one.firstSeq)},
                            {QStringLiteral("seconds"), static_cast<double>(walkedMs[at]) / 1000},
                            {QStringLiteral("text"), quickText(one.points, one.ms)},
                            {QStringLiteral("standName"), place == nullptr ? QString() : text(place->name)}};
    }
    return list;
}

QVariantList FollowedRound::asks() const {
    QVariantList list;
    int number = 0;
    for (const round::Ask& ask : state().asks) {
        const auto* point = airframe->point(ask.what.point);
        list << QVariantMap{{QStringLiteral("ask"), ++number},
                            {QStringLiteral("kind"), askKindName(ask.what.kind)},
                            {QStringLiteral("title"),
                             askTitle(ask.what.kind, point == nullptr ? QString() : text(point->name))},
                            {QStringLiteral("words"), text(ask.what.words)},
                            {QStringLiteral("who"), text(ask.what.who.name)},
                            {QStringLiteral("became"), becameName(ask.became)},
                            {QStringLiteral("becameText"), becameText(ask)}};
    }
    return list;
}

QVariantList FollowedRound::findings() const {
    QVariantList list;
    for (const auto& point : airframe->points) {
        const auto found = state().points.find(point.id);
        if (found == state().points.end() || found->second.outcome() != round::Outcome::finding) continue;
        const round::Settled& what = found->second.last()->what;
        QStringList photos;
        for (const round::Photo& photo : what.photos)
            photos << (photoFrom ? photoFrom(photo.sha256) : photoSource(photo.sha256));
        const bool grounds = what.severity == round::Severity::grounds;
        list << QVariantMap{
            {QStringLiteral("id"), text(point.id)},
            {QStringLiteral("name"), text(point.name)},
            {QStringLiteral("words"), text(what.words)},
            {QStringLiteral("severity"), grounds ? QStringLiteral("grounds") : QStringLiteral("assess")},
            {QStringLiteral("photos"), photos}};
    }
    return list;
}

QVariantList FollowedRound::points(const QString& zoneId) const {
    QVariantList list;
    const std::string zone = zoneId.toStdString();
    for (const auto& point : airframe->points)
        if (last.points.contains(point.id) && (zone.empty() || point.zone == zone))
            list << QVariantMap{{QStringLiteral("id"), text(point.id)},
                                {QStringLiteral("name"), text(point.name)}};
    return list;
}

} // namespace ambit::view
