#include "model/touch_guard.hpp"

#include <QCoreApplication>
#include <QMouseEvent>
#include <QPointingDevice>
#include <QTouchEvent>
#include <cmath>

namespace ambit::view {

namespace {

/// No finger has this number.
constexpr int asMouse = -1;

/// The system says so, or it comes from the glass.
bool isTouchInDisguise(const QMouseEvent& event) {
    return event.source() != Qt::MouseEventNotSynthesized ||
           (event.pointingDevice() != nullptr &&
            event.pointingDevice()->type() == QInputDevice::DeviceType::TouchScreen);
}

bool isPress(QEvent::Type type) {
    return type == QEvent::MouseButtonPress || type == QEvent::MouseButtonDblClick;
}

} // namespace

// --- whose touch ------------------------------------------------------------------------------------------

void TouchJudge::down(int contact, QPointF at, qint64 now) {
    if (touches(contact)) return;
    if (touching()) {
        verdict = Verdict::together;
    } else {
        const qint64 free = now - quietFrom;
        // A clock that ran back is no reason to wait.
        verdict = free >= 0 && free < wait ? Verdict::hurried : Verdict::hand;
        allDrawn = true;
    }
    contacts[contact] = {at, now, false};
}

void TouchJudge::move(int contact, QPointF at) {
    const auto found = contacts.find(contact);
    if (found == contacts.end()) return;
    const QPointF way = at - found->second.from;
    if (std::hypot(way.x(), way.y()) > drag) found->second.drawn = true;
}

TouchJudge::Verdict TouchJudge::up(int contact, qint64 now) {
    const auto found = contacts.find(contact);
    if (found == contacts.end()) return verdict;
    if (verdict == Verdict::hand && now - found->second.since < leastRest) verdict = Verdict::brief;
    allDrawn = allDrawn && found->second.drawn;
    contacts.erase(found);
    quietFrom = now;
    wait = verdict == Verdict::hand ? betweenTouches : quietAfterGhost;
    return verdict;
}

void TouchJudge::forget() {
    contacts.clear();
    verdict = Verdict::hand;
    wait = 0;
}

// --- before the window ------------------------------------------------------------------------------------

TouchGuard::TouchGuard(QObject* parent) : QObject(parent) {
    elapsed.start();
    silence.setSingleShot(true);
    silence.setInterval(saidFor);
    connect(&silence, &QTimer::timeout, this, [this] { say(QString()); });
}

void TouchGuard::setOver(QQuickWindow* watched) {
    if (window == watched) return;
    if (window != nullptr) window->removeEventFilter(this);
    window = watched;
    if (window != nullptr) window->installEventFilter(this);
    emit overChanged();
}

qint64 TouchGuard::timeOf(const QInputEvent& event) const {
    if (clock) return clock();
    // When it happened: the screen may have been busy since.
    return event.timestamp() > 0 ? static_cast<qint64>(event.timestamp()) : elapsed.elapsed();
}

bool TouchGuard::eventFilter(QObject* watched, QEvent* event) {
    switch (event->type()) {
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
        return keepsBack(static_cast<QTouchEvent&>(*event));
    case QEvent::TouchCancel:
        if (!isCancelling) {
            judge.forget();
            isCancelled = false;
        }
        return false;
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonDblClick:
    case QEvent::MouseMove:
    case QEvent::MouseButtonRelease:
        return keepsBack(static_cast<QMouseEvent&>(*event));
    default:
        return QObject::eventFilter(watched, event);
    }
}

bool TouchGuard::keepsBack(QTouchEvent& event) {
    const qint64 now = timeOf(event);
    // What comes down first: a finger that lifts as another comes down was not alone.
    for (const QEventPoint& point : event.points()) {
        if (point.state() == QEventPoint::State::Pressed) judge.down(point.id(), point.scenePosition(), now);
        if (point.state() == QEventPoint::State::Updated) judge.move(point.id(), point.scenePosition());
    }
    auto verdict = TouchJudge::Verdict::hand;
    for (const QEventPoint& point : event.points())
        if (point.state() == QEventPoint::State::Released) verdict = judge.up(point.id(), now);
    const bool ends = !judge.touching();
    if (!isCancelled && verdict != TouchJudge::Verdict::hand) {
        cancel(event);
        isCancelled = true;
    } else if (!isCancelled) {
        return false;
    }
    if (ends) {
        isCancelled = false;
        if (!judge.drawn()) say(verdict);
    }
    event.accept(); // else the system makes a mouse's press of it
    return true;
}

bool TouchGuard::keepsBack(QMouseEvent& event) {
    if (!isTouchInDisguise(event)) return false;
    const qint64 now = timeOf(event);
    if (judge.touching() && !judge.touches(asMouse)) return true; // the same finger, told a second time
    if (isPress(event.type())) judge.down(asMouse, event.scenePosition(), now);
    if (event.type() == QEvent::MouseMove) judge.move(asMouse, event.scenePosition());
    if (event.type() != QEvent::MouseButtonRelease || !judge.touches(asMouse)) return false;
    const auto verdict = judge.up(asMouse, now);
    if (verdict == TouchJudge::Verdict::hand) return false;
    // A mouse has no cancellation: whoever holds it loses it.
    event.setExclusiveGrabber(event.point(0), nullptr);
    event.clearPassiveGrabbers(event.point(0));
    if (!judge.drawn()) say(verdict);
    event.accept();
    return true;
}

void TouchGuard::cancel(const QTouchEvent& event) {
    isCancelling = true;
    QTouchEvent cancelled(QEvent::TouchCancel, event.pointingDevice(), event.modifiers());
    QCoreApplication::sendEvent(window, &cancelled);
    isCancelling = false;
}

void TouchGuard::say(TouchJudge::Verdict verdict) {
    switch (verdict) {
    case TouchJudge::Verdict::hand:
        return;
    case TouchJudge::Verdict::together:
        return say(tr("Two places were touched at once: nothing was taken."));
    case TouchJudge::Verdict::brief:
        return say(tr("That touch was too short: nothing was taken."));
    case TouchJudge::Verdict::hurried:
        return say(tr("That touch came too soon after the last: nothing was taken."));
    }
}

void TouchGuard::say(const QString& text) {
    if (!text.isEmpty()) silence.start();
    if (words == text) return;
    words = text;
    emit ignoredChanged();
}

} // namespace ambit::view
