#include "model/student.hpp"

#include "model/words.hpp"

namespace ambit::view {

Student::Student(std::uint64_t number, std::function<Instant()> clock, QObject* parent)
    : QObject(parent), its(number), now(std::move(clock)) {}

void Student::letGo(std::unique_ptr<Student> student) {
    student->setRound({}, nullptr); // its figure goes after what draws it
    student.release()->deleteLater();
}

// --- the connection ---------------------------------------------------------------------------------------

void Student::setPeer(const watch::Peer& who) {
    peer = who;
    emit linkChanged();
}

void Student::setLink(watch::LinkState next, const Error& why) {
    state = next;
    stateWhy = why;
    emit linkChanged();
    judge();
}

void Student::setOthers(const QString& names) {
    others = names;
    emit linkChanged();
}

QString Student::fingerprint() const {
    return peer.certificateSha256.empty() ? QString() : fingerprintText(peer.certificateSha256);
}

QString Student::link() const {
    switch (state) {
    case watch::LinkState::connecting:
        return QStringLiteral("connecting");
    case watch::LinkState::in:
        return QStringLiteral("in");
    case watch::LinkState::lost:
        return QStringLiteral("lost");
    case watch::LinkState::over:
        break;
    }
    return QStringLiteral("over");
}

QString Student::linkText() const {
    switch (state) {
    case watch::LinkState::connecting:
        return tr("Not here yet; looked for.");
    case watch::LinkState::in:
        return {};
    case watch::LinkState::lost:
        return tr("No connection just now; tried again by itself. Nothing is lost.");
    case watch::LinkState::over:
        break;
    }
    return stateWhy.what.empty() ? tr("Ended.") : errorText(stateWhy);
}

// --- the round --------------------------------------------------------------------------------------------

void Student::setRound(const std::string& awaited, std::unique_ptr<FollowedRound> next) {
    const bool isAnother = awaits != awaited;
    awaits = awaited;
    if (isAnother) {
        record.clear();
        isSignedHere = isSignedThere = false;
        lookedUpTo = 0;
        emit recordChanged();
    }
    if (next) next->setNow(now);
    std::swap(walk, next);
    emit roundChanged();
    FollowedRound::letGo(std::move(next));
    judge();
}

bool Student::add(const std::string& roundId, const std::vector<round::Event>& events) {
    if (!walk || walk->lastState().id != roundId || !walk->add(events)) return false;
    judge();
    return true;
}

void Student::look() {
    if (!walk) return;
    lookedUpTo = walk->lastState().lastSeq;
    judge();
}

void Student::judge() {
    watch::Attention next;
    if (walk) {
        const bool isSealed = walk->lastState().phase == round::Phase::sealed;
        next = watch::attentionOf({walk->described(), walk->lastState(), walk->events(), walk->lastPace(),
                                   lookedUpTo, walk->walkerNow(), state == watch::LinkState::in,
                                   isSealed && !record.empty() && !isSignedHere});
    }
    if (next == attention) return;
    attention = next;
    emit needChanged();
}

QString Student::need() const {
    switch (attention.need) {
    case watch::Need::grounds:
        return QStringLiteral("grounds");
    case watch::Need::toSign:
        return QStringLiteral("toSign");
    case watch::Need::quick:
        return QStringLiteral("quick");
    case watch::Need::replied:
        return QStringLiteral("replied");
    case watch::Need::found:
        return QStringLiteral("found");
    case watch::Need::stuck:
        return QStringLiteral("stuck");
    case watch::Need::away:
        return QStringLiteral("away");
    case watch::Need::paused:
        return QStringLiteral("paused");
    case watch::Need::nothing:
        break;
    }
    return QStringLiteral("nothing");
}

QString Student::needText() const {
    switch (attention.need) {
    case watch::Need::grounds:
        return tr("Found what grounds");
    case watch::Need::toSign:
        return tr("Concluded: the record waits for you");
    case watch::Need::quick: {
        const QVariantList all = walk->quick();
        return all.isEmpty() ? QString() : all.last().toMap().value(QStringLiteral("text")).toString();
    }
    case watch::Need::replied:
        return tr("Has replied");
    case watch::Need::found:
        return tr("Not sound, or not inspected");
    case watch::Need::stuck:
        return tr("Longer at this than it takes");
    case watch::Need::away:
        return tr("No connection");
    case watch::Need::paused:
        return tr("Paused");
    case watch::Need::nothing:
        break;
    }
    return {};
}

// --- what goes to them ------------------------------------------------------------------------------------

void Student::sent(const std::string& id, const QString& what, bool isSignature) {
    waiting[id] = {what, isSignature};
    said = tr("%1: on its way").arg(what);
    emit saidChanged();
}

void Student::heard(const std::string& id, const std::string& why) {
    const auto sent = waiting.find(id);
    if (sent == waiting.end()) return;
    said = why.empty() ? tr("%1: has arrived").arg(sent->second.what)
                       : tr("%1: not taken. %2").arg(sent->second.what, text(why));
    if (sent->second.isSignature && why.empty()) {
        isSignedThere = true;
        emit recordChanged();
    }
    waiting.erase(sent);
    emit saidChanged();
}

void Student::setRecord(const std::string& sha256, bool hasMine) {
    record = sha256;
    if (hasMine) isSignedHere = isSignedThere = true;
    emit recordChanged();
    judge();
}

void Student::setSignedHere() {
    isSignedHere = true;
    emit recordChanged();
    judge();
}

} // namespace ambit::view
