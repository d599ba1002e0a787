#include "model/round_view.hpp"

#include "airframe/read.hpp"
#include "model/shown_airframe.hpp"
#include "model/words.hpp"
#include "round/order.hpp"

namespace ambit::view {

namespace {

Result<void> noPoint() {
    return fail(ErrorCode::refused, say("There is no point on the card."), "",
                say("Go to where the next one is."));
}

std::string wordsOf(const QString& words) {
    return words.trimmed().toStdString();
}

} // namespace

RoundView::RoundView(const Services& handedIn, const Habits& its, Report whereTo,
                     std::unique_ptr<const airframe::Airframe> description, archive::OpenRound openRound,
                     QObject* parent)
    : QObject(parent), services(&handedIn), habits(&its), photosAhead(handedIn), report(std::move(whereTo)),
      written(std::move(description)), round(std::move(openRound)),
      airframe(std::make_unique<airframe::Airframe>(airframeShown(services->archive, *written))),
      figureModel(new FigureModel(*airframe, state().opened.walk, this)) {
    if (auto found = LastTime::before(services->archive, *airframe, state()))
        earlier = std::move(*found);
    else
        report(found.error());
    loggedSeq = state().lastSeq;
    connect(&minuteTimer, &QTimer::timeout, this, &RoundView::minutesChanged);
    connect(this, &RoundView::cardChanged, this, &RoundView::readingChanged);
    minuteTimer.start(10'000);
    refresh();
}

// --- touches ----------------------------------------------------------------------------------------------

Result<void> RoundView::act(round::What what, const std::vector<archive::PhotoBytes>& photos) {
    return round.act(std::move(what), now(), photos);
}

bool RoundView::committed(const Result<void>& result) {
    if (!result) report(result.error());
    // What only turns the card over is neither.
    const bool isLogged = state().lastSeq != loggedSeq;
    refresh();
    if (services->feel && (isLogged || !result)) services->feel(result ? Haptic::taken : Haptic::refused);
    if (result) emit touched();
    return result.has_value();
}

bool RoundView::atStand() {
    if (card.target == nullptr)
        return committed(fail(ErrorCode::refused, say("The plan leads nowhere else now.")));
    return committed(reach(card.target->id));
}

bool RoundView::goTo(const QString& standId) {
    return committed(reach(standId.toStdString()));
}

/// Whoever stands elsewhere than the plan says gets the rest ordered from there.
Result<void> RoundView::reach(const std::string& standId) {
    auto done = round.actAndReplan(round::StandReached{standId}, now());
    if (done) chosen = nullptr;
    return done;
}

bool RoundView::changeSetting() {
    if (card.kind != QStringLiteral("set"))
        return committed(fail(ErrorCode::refused, say("There is nothing to set now.")));
    return committed(round.actAndReplan(
        round::SettingChanged{card.settingId.toStdString(), card.settingTo.toStdString()}, now()));
}

bool RoundView::settle(round::Settled what, const std::vector<archive::PhotoBytes>& photos) {
    if (card.point == nullptr) return committed(noPoint());
    what.point = card.point->id;
    auto done = round.actAndReplan(std::move(what), now(), photos);
    if (done) {
        chosen = nullptr;
        kept.clear();
        readTold = {};
        tellTrends();
    }
    return committed(done);
}

bool RoundView::settleSound(const QString& value, const QString& unit, bool renewed) {
    round::Settled what;
    what.outcome = round::Outcome::sound;
    std::vector<archive::PhotoBytes> pictures;
    takeMeasured(what, value, unit, renewed, pictures);
    return settle(std::move(what), pictures);
}

void RoundView::expectPhotos(const QVariantList& photos) {
    QList<QUrl> urls;
    for (const QVariant& url : photos)
        urls << url.toUrl();
    photosAhead.expect(urls, habits->photoData());
}

bool RoundView::settleFinding(const QString& words, bool grounds, const QVariantList& photos,
                              const QString& value, const QString& unit, bool renewed) {
    round::Settled what;
    what.outcome = round::Outcome::finding;
    what.words = wordsOf(words);
    what.severity = grounds ? round::Severity::grounds : round::Severity::assess;
    std::vector<archive::PhotoBytes> pictures;
    takeMeasured(what, value, unit, renewed, pictures);
    for (const QVariant& url : photos) {
        auto picture = photosAhead.read(url.toUrl(), habits->photoData());
        if (!picture) return committed(tl::unexpected(picture.error()));
        what.photos.push_back(picture->photo);
        pictures.push_back(std::move(*picture));
    }
    return settle(std::move(what), pictures);
}

bool RoundView::settleNotInspected(const QString& reason, const QString& basis) {
    round::Settled what;
    what.outcome = round::Outcome::notInspected;
    what.why = wordsOf(reason);
    what.basis = wordsOf(basis);
    return settle(std::move(what));
}

bool RoundView::commit(round::What what) {
    return committed(round.actAndReplan(std::move(what), now()));
}

bool RoundView::settleByKey(round::Outcome outcome) {
    round::Settled what;
    what.outcome = outcome;
    what.by = round::By::key;
    if (outcome == round::Outcome::finding) {
        what.words = tr("Told by key: not as it should be.").toStdString();
        if (card.point != nullptr) what.severity = card.point->finding;
    }
    return settle(std::move(what));
}

bool RoundView::choosePoint(const QString& pointId) {
    const std::string id = pointId.toStdString();
    if (!id.empty() && !state().points.contains(id))
        return committed(fail(ErrorCode::notFound, say("This walk has no such point."), id));
    chosen = id.empty() ? nullptr : airframe->point(id);
    return committed({});
}

bool RoundView::reopen(const QString& pointId, const QString& reason) {
    const std::string id = pointId.toStdString();
    auto done = round.actAndReplan(round::Reopened{id, wordsOf(reason)}, now());
    if (done) {
        // Re-opened where it can be settled at once, it stays in hand.
        const auto here = pointsHere(state(), *airframe);
        const auto point =
            std::find_if(here.begin(), here.end(), [&](const auto* one) { return one->id == id; });
        chosen = point == here.end() ? nullptr : *point;
    }
    return committed(done);
}

bool RoundView::tapZone(const QString& zoneId) {
    auto done = round.goToZone(zoneId.toStdString(), now());
    if (done) chosen = nullptr;
    return committed(done);
}

bool RoundView::made(const QString& openingId) {
    return committed(round.actAndReplan(round::OpeningMade{openingId.toStdString()}, now()));
}

bool RoundView::closed(const QString& openingId) {
    return committed(round.actAndReplan(round::OpeningClosed{openingId.toStdString()}, now()));
}

bool RoundView::pause() {
    return committed(act(round::Paused{}));
}

bool RoundView::resume() {
    // Asked for in the pause, a point is ordered in now, and that is the reason.
    const std::string asked = round::causeOf(state(), *written, round::Resumed{}, false);
    auto done = act(round::Resumed{});
    if (done && (!asked.empty() || !round::holdsStill(state(), *airframe)))
        done = round.replan(asked.empty() ? "The round goes on" : asked, now());
    return committed(done);
}

bool RoundView::note(const QString& words) {
    return committed(act(round::Note{wordsOf(words)}));
}

bool RoundView::restNotInspected(const QString& reason, const QString& basis) {
    chosen = nullptr;
    for (const auto& point : airframe->points) {
        const auto found = state().points.find(point.id);
        if (found == state().points.end() || found->second.settled) continue;
        round::Settled what;
        what.point = point.id;
        what.outcome = round::Outcome::notInspected;
        what.why = wordsOf(reason);
        what.basis = wordsOf(basis);
        if (auto done = act(std::move(what)); !done) return committed(done);
    }
    return committed({});
}

bool RoundView::conclude(bool fit, const QString& words) {
    return committed(act(round::Concluded{fit, wordsOf(words)}));
}

bool RoundView::withdraw(const QString& reason) {
    return committed(act(round::Withdrawn{wordsOf(reason)}));
}

QStringList RoundView::against(bool fit) const {
    QStringList obstacles;
    for (const auto& obstacle : round::against(state(), *written, fit))
        obstacles << text(round::toText(obstacle, *written));
    return obstacles;
}

// --- after each event -------------------------------------------------------------------------------------

void RoundView::refresh() {
    left = round::remaining(state(), *airframe);
    card = makeCard(state(), *airframe, left, chosen);
    settled = state().settledCount();
    findings = state().findingCount();
    const Scene scene{state(), *airframe, left, card.point};
    figureModel->update(scene);
    hereRows.update(scene, carried);
    owedRows.update(scene);
    reviewRows.update(scene);
    wordTrend();
    announce();
    if (state().lastSeq == loggedSeq) return;
    loggedSeq = state().lastSeq;
    emit logged();
}

void RoundView::sayAnew() {
    trendFor.clear();
    airframe::reword(*airframe, airframeShown(services->archive, *written));
    plannedAt = 0;
    refresh();
    figureModel->sayAnew();
    for (RowsModel* rows : std::initializer_list<RowsModel*>{&hereRows, &owedRows, &reviewRows})
        rows->sayAnew();
    emit wordsChanged();
}

void RoundView::setCarried(Carried known) {
    if (known == carried) return;
    carried = std::move(known);
    refresh();
}

/// The values are new already; who shows them is told when the touch has returned. A screen's layout takes
/// longer than everything else here together, and a touch of two events (a stand, a new plan) would cost two
/// of them.
void RoundView::announce() {
    if (const auto seq = planSeq(); plannedAt != seq) {
        plannedAt = seq;
        planWords = costOfTheRest();
    }
    tellOrder();
    if (announcing) return;
    announcing = true;
    QMetaObject::invokeMethod(this, &RoundView::tell, Qt::QueuedConnection);
}

void RoundView::tell() {
    announcing = false;
    const Told before = told;
    told = {state().phase, state().stand, plannedAt, orderWords, differsSeq, asks()};
    emit progressChanged();
    emit cardChanged();
    emit minutesChanged();
    if (before.stand != told.stand || before.planSeq != told.planSeq) emit standChanged();
    if (before.planSeq != told.planSeq) emit planChanged();
    if (before.phase != told.phase) emit phaseChanged();
    if (before.order != told.order) emit orderChanged();
    if (before.differsSeq != told.differsSeq) emit differsChanged();
    if (before.asks != told.asks) emit asksChanged();
}

/// Number of the event that made the plan.
std::int64_t RoundView::planSeq() const {
    const auto& log = round.events();
    for (auto event = log.rbegin(); event != log.rend(); ++event)
        if (std::holds_alternative<round::Planned>(event->what)) return event->seq;
    return 1;
}

} // namespace ambit::view
