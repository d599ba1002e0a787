#include "model/conditions_view.hpp"

#include "model/words.hpp"
#include "round/back.hpp"

#include <QGuiApplication>
#include <algorithm>

namespace ambit::view {

namespace {

using Cause = round::Interrupted::Cause;

constexpr int tickMs = 5000;
constexpr std::int64_t mostAfter = 4; ///< events: so long what was quick is asked about

/// A clock that was set back took no time.
std::int64_t secondsBetween(Instant from, Instant to) {
    return std::max<std::int64_t>(0, to.ms - from.ms) / 1000;
}

} // namespace

ConditionsView::ConditionsView(const Services& handedIn, Habits& its, Daylight& light, QObject* parent)
    : QObject(parent), services(&handedIn), habits(&its), daylight(&light) {
    connect(daylight, &Daylight::changed, this, &ConditionsView::lookAround);
    connect(&timer, &QTimer::timeout, this, &ConditionsView::tick);
    // Behind other programs, or the screen is off: which of the two, Qt doesn't tell.
    if (auto* program = qobject_cast<QGuiApplication*>(QCoreApplication::instance()))
        connect(program, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
            state == Qt::ApplicationActive ? comeBack() : leave(QStringLiteral("away"));
        });
}

void ConditionsView::setRound(RoundView* next) {
    if (round != nullptr) round->disconnect(this);
    round = next;
    away.reset();
    quick.reset();
    isQuickKnown = true; // what was before isn't asked about
    isSilent = nightSaid = false;
    lastWords.clear();
    lastNames.clear();
    timer.stop();
    if (round != nullptr) {
        lookedAt = state().lastSeq;
        connect(round, &RoundView::logged, this, &ConditionsView::look);
        connect(round, &RoundView::cardChanged, this, &ConditionsView::changed);
        timer.start(tickMs);
        // Taken up again after the program had ended; of one that was paused, its end tells.
        if (isWalked() && state().lastSeq > 1) goBack(Cause::stopped, state().lastAt);
        for (const round::Event& event : round->openRound().events())
            if (const auto* told = std::get_if<round::Night>(&event.what))
                nightSaid = nightSaid || !told->bySun;
        lookAround();
    }
    emit changed();
}

bool ConditionsView::isWalked() const {
    // Up there nothing is told for long, and the screen may well be locked: that is no interruption.
    return round != nullptr && state().phase == round::Phase::walking &&
           !(state().portion && state().portion->running);
}

// --- interruptions ----------------------------------------------------------------------------------------

void ConditionsView::leave(const QString& cause) {
    if (away || !isWalked()) return;
    away = Away{cause == QStringLiteral("call")     ? Cause::call
                : cause == QStringLiteral("locked") ? Cause::locked
                                                    : Cause::away,
                now()};
}

void ConditionsView::comeBack() {
    if (round == nullptr) return;
    const std::optional<Away> was = std::exchange(away, std::nullopt);
    const bool wasSilent = std::exchange(isSilent, false);
    if (isWalked()) {
        // Nothing was told since before one left: the longer of the two.
        if (wasSilent)
            goBack(Cause::silent, state().lastAt);
        else if (was)
            goBack(was->cause, was->since);
    }
    emit changed();
}

void ConditionsView::goBack(Cause cause, Instant since) {
    const std::int64_t seconds = secondsBetween(since, now());
    if (seconds < leastSeconds && cause != Cause::call) return;
    const round::BackRule& rule = habits->backRule();
    round::Interrupted what{cause, seconds, rule,
                            round::askedBack(state(), round->openRound().airframe(), rule)};
    QStringList names;
    for (const std::string& id : what.again)
        names << text(round->shown().point(id)->name);
    const QString words = view::interruptedText(what);
    if (!round->commit(std::move(what))) return;
    lastWords = words;
    lastNames = names;
    emit changed();
}

void ConditionsView::read() {
    lastWords.clear();
    lastNames.clear();
    emit changed();
}

void ConditionsView::tick() {
    if (!isWalked() || away || isSilent || !lastWords.isEmpty()) return;
    if (secondsBetween(state().lastAt, now()) < silentSeconds) return;
    isSilent = true;
    emit changed();
}

QString ConditionsView::silentText() const {
    if (!isSilent || round == nullptr) return {};
    return causeText(Cause::silent, secondsBetween(state().lastAt, now()));
}

// --- what the log says ------------------------------------------------------------------------------------

void ConditionsView::look() {
    const auto& events = round->openRound().events();
    std::optional<Instant> pausedAt;
    for (std::size_t i = static_cast<std::size_t>(lookedAt); i < events.size(); ++i) {
        if (!std::holds_alternative<round::Resumed>(events[i].what)) continue;
        // The pause that this one ends.
        for (std::size_t k = i; k-- > 0 && !pausedAt;)
            if (std::holds_alternative<round::Paused>(events[k].what)) pausedAt = events[k].at;
    }
    lookedAt = static_cast<std::int64_t>(events.size());
    isQuickKnown = false;
    if (pausedAt && isWalked()) goBack(Cause::paused, *pausedAt);
}

const std::optional<round::Quick>& ConditionsView::quickNow() const {
    if (isQuickKnown) return quick;
    isQuickKnown = true;
    quick.reset();
    if (!isWalked() || state().quickRun) return quick;
    const auto pace = round::paceOf(round->openRound().airframe(), round->openRound().events());
    // One that was over long ago isn't dug out again.
    if (!pace.quick.empty() && pace.quick.back().lastSeq + mostAfter >= state().lastSeq)
        quick = pace.quick.back();
    return quick;
}

QString ConditionsView::quickText() const {
    if (round == nullptr || !quickNow()) return {};
    return view::quickText(quick->points, quick->ms);
}

bool ConditionsView::answerQuick(bool again) {
    if (round == nullptr || !quickNow()) return false;
    return round->commit(round::asking(state(), *quick, again));
}

// --- the night --------------------------------------------------------------------------------------------

bool ConditionsView::nightPossible() const {
    return round != nullptr && !round->openRound().airframe().walk(state().opened.walk)->night.empty();
}

bool ConditionsView::tellNight(bool expected) {
    if (round == nullptr || !round->commit(round::Night{expected, false})) return false;
    nightSaid = true;
    return true;
}

/// The sun adds what is asked for at night; that it isn't, only a person says.
void ConditionsView::lookAround() {
    if (!isWalked()) return;
    if (daylight->goesIntoTheDark() && nightPossible() && !state().night && !nightSaid)
        (void)round->commit(round::Night{true, true});
    const auto off = services->clockOff ? services->clockOff() : std::nullopt;
    if (!off || !off->out) return;
    // Once, unless it has become another error since.
    const auto known = state().clockAheadMs;
    if (!known || std::abs(*known - off->ms) > sky::mostOffMs)
        (void)round->commit(round::Clock{{now().ms - off->ms}});
}

QString ConditionsView::clockText() const {
    if (round == nullptr || !state().clockAheadMs) return {};
    const std::int64_t ms = *state().clockAheadMs;
    if (std::abs(ms) <= sky::mostOffMs) return {};
    const QString lasted = lastedText(std::abs(ms) / 1000);
    return ms > 0 ? tr("This device's clock is %1 ahead of satellite time.").arg(lasted)
                  : tr("This device's clock is %1 behind satellite time.").arg(lasted);
}

} // namespace ambit::view
