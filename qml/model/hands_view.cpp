#include "model/hands_view.hpp"

#include "model/words.hpp"
#include "round/portion.hpp"

namespace ambit::view {

HandsView::HandsView(const Services& handedIn, Habits& its, QObject* parent)
    : QObject(parent), services(&handedIn), habits(&its) {
    connect(habits, &Habits::changed, this, &HandsView::follow);
}

void HandsView::setRound(RoundView* next) {
    if (round != nullptr) round->disconnect(this);
    hush();
    round = next;
    touchSeq = cautionSeq = -1;
    lastWords.clear();
    if (round != nullptr) {
        // Told after each touch, when all of its events are in.
        connect(round, &RoundView::cardChanged, this, &HandsView::follow);
        lastWords = words(); // what was said before the program ended isn't said unasked
    }
    emit changed();
}

// --- how the card is answered -----------------------------------------------------------------------------

HandsView::Mode HandsView::now() const {
    if (round == nullptr || state().phase != round::Phase::walking) return Mode::touch;
    if (state().portion && state().portion->running) return Mode::up; // whatever the habits are by now
    const auto handsAt = [&](const std::string& id) { return airframe().stand(id)->hands; };
    if (round->cardKind() == QStringLiteral("go")) {
        // Up there it is too late to look for a key on the screen.
        const bool byKey = habits->keys() && handsAt(round->targetStandId().toStdString()) == 1 &&
                           touchSeq != state().standSeq;
        return byKey ? Mode::key : Mode::touch;
    }
    if (!state().stand || touchSeq == state().standSeq || !round->cardOutcome().isEmpty()) return Mode::touch;
    const bool does =
        round->cardKind() == QStringLiteral("settle") || round->cardKind() == QStringLiteral("set");
    const int hands = handsAt(*state().stand);
    if (hands == 1 && habits->keys() && does) return Mode::key;
    if (hands == 0 && habits->portions() && round::leftOfPortion(state()).empty() && !told().empty())
        return Mode::read;
    return Mode::touch;
}

QString HandsView::mode() const {
    switch (now()) {
    case Mode::touch:
        break;
    case Mode::key:
        return QStringLiteral("key");
    case Mode::read:
        return QStringLiteral("read");
    case Mode::up:
        return QStringLiteral("up");
    }
    return QStringLiteral("touch");
}

std::vector<std::string> HandsView::told() const {
    if (round == nullptr) return {};
    if (state().portion && state().portion->running) return state().portion->points;
    return round::nextPortion(state(), airframe(), habits->portionSize());
}

QVariantList HandsView::portion() const {
    QVariantList list;
    const Mode mode = now();
    if (mode != Mode::read && mode != Mode::up) return list;
    for (const std::string& id : told()) {
        const airframe::Point& point = *airframe().point(id);
        list << QVariantMap{{QStringLiteral("name"), text(point.name)},
                            {QStringLiteral("how"), howText(point.how)},
                            {QStringLiteral("sound"), text(point.sound)},
                            {QStringLiteral("setting"), settingsText(airframe(), point.when)}};
    }
    return list;
}

int HandsView::pointsAfter() const {
    if (now() != Mode::read) return 0;
    int here = 0;
    for (const walk::Step& step : round->whatIsLeft()) {
        if (std::holds_alternative<walk::Go>(step)) break;
        if (std::holds_alternative<walk::Settle>(step)) ++here;
    }
    return here - static_cast<int>(told().size());
}

int HandsView::asking() const {
    return round == nullptr ? 0 : static_cast<int>(round::leftOfPortion(state()).size());
}

bool HandsView::toTheFoot() const {
    return round != nullptr && habits->portions() && round->cardKind() == QStringLiteral("go") &&
           airframe().stand(round->targetStandId().toStdString())->hands == 0;
}

// --- answers ----------------------------------------------------------------------------------------------

bool HandsView::answerOnce() {
    switch (now()) {
    case Mode::touch:
        return false;
    case Mode::read:
        return climb();
    case Mode::up:
        sayAgain();
        return true;
    case Mode::key:
        break;
    }
    if (round->cardKind() == QStringLiteral("go")) return round->atStand();
    if (round->cardKind() == QStringLiteral("set")) return round->changeSetting();
    if (round->measured()) {
        say(tr("This needs a value. Give it when both hands are free."));
        return false;
    }
    return round->settleByKey(round::Outcome::sound);
}

bool HandsView::answerLong() {
    const Mode mode = now();
    if (mode == Mode::up) return down();
    if (mode != Mode::key || round->cardKind() != QStringLiteral("settle") || round->measured()) return false;
    return round->settleByKey(round::Outcome::finding);
}

bool HandsView::climb() {
    if (now() != Mode::read) return false;
    hush();
    return round->commit(round::PortionBegun{told()});
}

bool HandsView::down() {
    if (now() != Mode::up) return false;
    hush();
    return round->commit(round::PortionEnded{true});
}

bool HandsView::giveUp() {
    if (now() != Mode::up) return false;
    lastWords.clear(); // told again
    return round->commit(round::PortionEnded{false});
}

void HandsView::touchInstead() {
    if (round == nullptr) return;
    hush();
    touchSeq = state().standSeq;
    emit changed();
}

QVariantList HandsView::unworded() const {
    QVariantList list;
    if (round == nullptr) return list;
    for (const airframe::Point& point : airframe().points) {
        const auto its = state().points.find(point.id);
        if (its == state().points.end() || its->second.outcome() != round::Outcome::finding) continue;
        if (its->second.last()->what.by == round::By::key)
            list << QVariantMap{{QStringLiteral("id"), text(point.id)},
                                {QStringLiteral("name"), text(point.name)}};
    }
    return list;
}

bool HandsView::putIntoWords(const QString& pointId, const QString& what) {
    if (round == nullptr) return false;
    const std::string id = pointId.toStdString(), said = what.trimmed().toStdString();
    const auto its = state().points.find(id);
    if (its == state().points.end() || its->second.outcome() != round::Outcome::finding) return false;
    if (said.empty()) return round->commit(round::Note{}); // refused in words
    round::Settled settled = its->second.last()->what;
    settled.by = round::By::touch;
    settled.words = said;
    // Asked on a copy first, so that nothing is re-opened that can't be settled again.
    round::State then = state();
    const round::Event open{then.lastSeq + 1, then.lastAt,
                            round::Reopened{id, tr("To be put into words.").toStdString()}};
    const bool isHere = round::apply(then, airframe(), open) && round::allowed(then, airframe(), settled);
    if (isHere) return round->commit(open.what) && round->commit(std::move(settled));
    return round->commit(round::Note{round->openRound().airframe().point(id)->name + ": " + said});
}

// --- read aloud -------------------------------------------------------------------------------------------

/// Short, in the trade's words: where, what to mind, what, and what sound looks like.
QString HandsView::cardWords() const {
    QStringList said;
    if (round->cardKind() == QStringLiteral("settle")) {
        said << round->cardTitle() << round->cardHow() << round->sound();
    } else {
        said << round->cardTitle() << round->cardHow();
    }
    said.removeAll(QString());
    return said.join(QStringLiteral(". "));
}

QString HandsView::words() const {
    if (round == nullptr || state().phase != round::Phase::walking) return {};
    const Mode mode = now();
    if (mode == Mode::touch && !habits->aloud()) return {};
    if (mode == Mode::touch || mode == Mode::key) return cardWords();
    QStringList said;
    const QVariantList points = portion();
    said << (points.size() == 1 ? tr("One point") : tr("%1 points").arg(points.size()));
    int number = 0;
    for (const QVariant& one : points) {
        const QVariantMap its = one.toMap();
        said << tr("%1: %2").arg(++number).arg(its.value(QStringLiteral("name")).toString())
             << its.value(QStringLiteral("sound")).toString();
    }
    return said.join(QStringLiteral(". "));
}

void HandsView::follow() {
    const QString next = words();
    if (round != nullptr && next != lastWords) {
        lastWords = next;
        // The stand's cautions once, on the way to it or at it; not with each point.
        QString first;
        if (!next.isEmpty() && now() != Mode::up && cautionSeq != state().standSeq &&
            !round->cautions().isEmpty()) {
            first = tr("Caution. %1").arg(round->cautions().join(QLatin1Char(' '))) + QLatin1Char(' ');
            cautionSeq = state().standSeq;
        }
        if (now() != Mode::up) say(first + next); // up there it was told before
    }
    emit changed();
}

void HandsView::sayAgain() {
    say(words());
}

void HandsView::hush() {
    // An engine isn't started to be told to stop: that takes longer than the program's start.
    if (std::exchange(hasSaid, false)) (void)services->speak({});
}

void HandsView::say(const QString& what) {
    const bool isHeard = services->speak && services->speak(what);
    hasSaid = hasSaid || isHeard;
    const QString why =
        isHeard || what.isEmpty() ? QString() : tr("There is no voice on this device: read it here.");
    if (why == voiceWords) return;
    voiceWords = why;
    emit voiceChanged();
}

} // namespace ambit::view
