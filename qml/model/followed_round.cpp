#include "model/followed_round.hpp"

#include "airframe/read.hpp"
#include "model/story.hpp"
#include "model/words.hpp"

#include <QLocale>
#include <algorithm>

namespace ambit::view {

namespace {

constexpr int tickMs = 1000;
constexpr int playMs = 50;

const char* lookOf(const round::What& what) {
    if (const auto* settled = std::get_if<round::Settled>(&what)) {
        if (settled->outcome == round::Outcome::finding) return "finding";
        return settled->outcome == round::Outcome::sound ? "sound" : "notInspected";
    }
    return "";
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

} // namespace ambit::view
