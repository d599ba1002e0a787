#include "model/followed_round.hpp"

#include "airframe/read.hpp"
#include "model/story.hpp"
#include "model/words.hpp"
#include "watch/attention.hpp"

#include <QLocale>
#include <algorithm>

namespace ambit::view {

namespace {

constexpr int tickMs = 1000;
constexpr int playMs = 50;

/// "0:07", "12:40"
QString spanText(std::int64_t ms) {
    const std::int64_t seconds = (ms + 500) / 1000;
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

QString secondText(Instant at, int offsetMinutes) {
    const std::int64_t seconds = at.ms / 1000 % 60;
    return ambit::view::clockText(at, offsetMinutes) +
           QStringLiteral(":%1").arg(seconds, 2, 10, QLatin1Char('0'));
}

const char* lookOf(const round::What& what) {
    if (const auto* settled = std::get_if<round::Settled>(&what)) {
        if (settled->outcome == round::Outcome::finding) return "finding";
        return settled->outcome == round::Outcome::sound ? "sound" : "notInspected";
    }
    return "";
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

// --- what is told -----------------------------------------------------------------------------------------

int ToldModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows.size());
}

QVariant ToldModel::data(const QModelIndex& at, int role) const {
    if (!at.isValid() || at.row() >= rowCount({})) return {};
    const Row& row = rows[static_cast<std::size_t>(at.row())];
    switch (role) {
    case SeqRole:
        return static_cast<int>(row.seq);
    case AtTextRole:
        return row.at;
    case ToldRole:
        return row.told;
    case LookRole:
        return row.look;
    default:
        return {};
    }
}

QHash<int, QByteArray> ToldModel::roleNames() const {
    return {{SeqRole, "seq"}, {AtTextRole, "atText"}, {ToldRole, "told"}, {LookRole, "look"}};
}

// --- the log ----------------------------------------------------------------------------------------------

Result<std::unique_ptr<FollowedRound>> FollowedRound::make(std::unique_ptr<const airframe::Airframe> airframe,
                                                           std::vector<round::Event> events) {
    auto state = round::fold(*airframe, events);
    if (!state) return tl::unexpected(state.error());
    return std::unique_ptr<FollowedRound>(
        new FollowedRound(std::move(airframe), std::move(events), std::move(*state)));
}

FollowedRound::FollowedRound(std::unique_ptr<const airframe::Airframe> description,
                             std::vector<round::Event> events, round::State state)
    : airframe(std::make_unique<airframe::Airframe>(*description)), log(std::move(events)),
      last(std::move(state)), figureModel(new FigureModel(*airframe, last.opened.walk, this)) {
    connect(&ticker, &QTimer::timeout, this, &FollowedRound::tick);
    ticker.start(tickMs);
    measure();
    update();
    tellLog();
}

void FollowedRound::sayIn(airframe::Airframe other) {
    airframe::reword(*airframe, std::move(other));
    update();
    tellLog();
    figureModel->sayAnew();
    hereRows.sayAnew();
    emit wordsChanged();
    emit grown();
    emit momentChanged();
}

void FollowedRound::letGo(std::unique_ptr<FollowedRound> round) {
    if (!round) return;
    round->stop();
    QMetaObject::invokeMethod(round.release(), &QObject::deleteLater, Qt::QueuedConnection);
}

Result<void> FollowedRound::add(const std::vector<round::Event>& events) {
    Result<void> done;
    const std::size_t before = log.size();
    for (const round::Event& event : events) {
        if (event.seq <= last.lastSeq) continue; // kept by an earlier connection, told again
        done = round::apply(last, *airframe, event);
        if (!done) break;
        log.push_back(event);
    }
    if (log.size() == before) return done;
    if (now) {
        const std::int64_t behind = now().ms - log.back().at.ms;
        behindMs = isBehindKnown ? std::min(behindMs, behind) : behind;
        isBehindKnown = true;
    }
    measure();
    if (!cursor) update();
    tellLog();
    emit grown();
    if (!cursor) emit momentChanged();
    emit ticked();
    return done;
}

/// Time walked at each event that is new, and the pace.
void FollowedRound::measure() {
    pace = round::paceOf(*airframe, log);
    for (std::size_t i = walkedMs.size(); i < log.size(); ++i) {
        if (i == 0) {
            walkedMs.push_back(0);
            continue;
        }
        const bool pausing = std::holds_alternative<round::Paused>(log[i - 1].what);
        const std::int64_t ms = pausing ? 0 : std::max<std::int64_t>(0, log[i].at.ms - log[i - 1].at.ms);
        walkedMs.push_back(walkedMs.back() + ms);
    }
}

void FollowedRound::tellLog() {
    std::vector<ToldModel::Row> rows;
    rows.reserve(log.size());
    for (auto event = log.rbegin(); event != log.rend(); ++event)
        if (const QString words = sentence(event->what, *airframe); !words.isEmpty())
            rows.push_back({event->seq, secondText(event->at, last.opened.offsetMinutes), words,
                            QString::fromLatin1(lookOf(event->what))});
    toldRows.update(std::move(rows));
}

Instant FollowedRound::walkerNow() const {
    if (!now || !isBehindKnown) return log.back().at;
    return {std::max(log.back().at.ms, now().ms - behindMs)};
}

// --- the moment -------------------------------------------------------------------------------------------

double FollowedRound::seconds() const {
    return cursor ? moment : length();
}

double FollowedRound::length() const {
    return static_cast<double>(walkedMs.back()) / 1000;
}

void FollowedRound::showCount(std::optional<std::size_t> count) {
    if (count && *count >= log.size()) count.reset();
    if (count != cursor || (count && !shown)) {
        cursor = count;
        if (cursor)
            shown = round::fold(*airframe, {log.begin(), log.begin() + static_cast<std::ptrdiff_t>(*cursor)})
                        .value();
        else
            shown.reset();
        update();
        emit momentChanged();
    }
    emit ticked();
}

void FollowedRound::showEnd() {
    stop();
    showCount(std::nullopt);
}

void FollowedRound::showAt(double wanted) {
    moment = std::clamp(wanted, 0.0, length());
    const auto ms = static_cast<std::int64_t>(moment * 1000);
    const auto after = std::upper_bound(walkedMs.begin(), walkedMs.end(), ms);
    showCount(std::max<std::size_t>(1, static_cast<std::size_t>(after - walkedMs.begin())));
}

void FollowedRound::showEvent(int seq) {
    stop();
    const auto count = static_cast<std::size_t>(std::clamp<std::int64_t>(seq, 1, last.lastSeq));
    moment = static_cast<double>(walkedMs[count - 1]) / 1000;
    showCount(count);
}

void FollowedRound::setSpeed(int speed) {
    times = std::clamp(speed, 1, 64);
    emit playingChanged();
}

void FollowedRound::play() {
    if (atEnd()) showAt(0);
    isPlaying = true;
    playedAt.start();
    ticker.start(playMs);
    emit playingChanged();
}

void FollowedRound::stop() {
    if (!isPlaying) return;
    isPlaying = false;
    ticker.start(tickMs);
    emit playingChanged();
}

void FollowedRound::tick() {
    if (!isPlaying) {
        emit ticked();
        return;
    }
    const double passed = static_cast<double>(playedAt.restart()) / 1000 * times;
    showAt(moment + passed);
    if (atEnd()) stop();
}

void FollowedRound::update() {
    left = round::remaining(state(), *airframe);
    card = makeCard(state(), *airframe, left, nullptr);
    const Scene scene{state(), *airframe, left, card.point};
    figureModel->update(scene);
    hereRows.update(scene, {});
}

round::Pace FollowedRound::shownPace() const {
    if (!cursor) return pace;
    return round::paceOf(*airframe, {log.begin(), log.begin() + static_cast<std::ptrdiff_t>(*cursor)});
}

// --- in words ---------------------------------------------------------------------------------------------

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

QVariantList FollowedRound::marks() const {
    QVariantList list;
    const auto mark = [&](std::size_t at, const QString& look) {
        list << QVariantMap{{QStringLiteral("seconds"), static_cast<double>(walkedMs[at]) / 1000},
                            {QStringLiteral("look"), look}};
    };
    for (std::size_t i = 0; i < log.size(); ++i) {
        const QString look = QString::fromLatin1(lookOf(log[i].what));
        if (!look.isEmpty() && look != QStringLiteral("sound")) mark(i, look);
        if (std::holds_alternative<round::Asked>(log[i].what)) mark(i, QStringLiteral("asked"));
    }
    for (const round::Quick& one : pace.quick)
        mark(static_cast<std::size_t>(one.lastSeq - 1), QStringLiteral("quick"));
    return list;
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
