#include "model/clicker.hpp"

#include <Qt>
#include <algorithm>
#include <array>

namespace ambit::view {

Clicker::Clicker(QObject* parent) : QObject(parent) {
    longTimer.setSingleShot(true);
    longTimer.setInterval(longMs);
    longTimer.setTimerType(Qt::PreciseTimer);
    againTimer.setSingleShot(true);
    againTimer.setInterval(againMs);
    againTimer.setTimerType(Qt::PreciseTimer);
    connect(&longTimer, &QTimer::timeout, this, [this] {
        isLong = true;
        presses = 0; // a short one before it was begun in error
        emit longOne();
    });
    connect(&againTimer, &QTimer::timeout, this, [this] {
        presses = 0;
        emit once();
    });
}

bool Clicker::answers(int qtKey) {
    constexpr std::array keys{Qt::Key_Space,      Qt::Key_Return,
                              Qt::Key_Enter,      Qt::Key_PageUp,
                              Qt::Key_PageDown,   Qt::Key_VolumeUp,
                              Qt::Key_VolumeDown, Qt::Key_MediaPlay,
                              Qt::Key_MediaPause, Qt::Key_MediaTogglePlayPause,
                              Qt::Key_MediaNext,  Qt::Key_MediaPrevious,
                              Qt::Key_Call,       Qt::Key_ToggleCallHangup,
                              Qt::Key_Hangup,     Qt::Key_Camera,
                              Qt::Key_Select,     Qt::Key_Yes,
                              Qt::Key_F5,         Qt::Key_Period};
    return std::find(keys.begin(), keys.end(), qtKey) != keys.end();
}

void Clicker::press() {
    if (isHeld) return;
    againTimer.stop();
    isLong = false;
    setHeld(true);
    longTimer.start();
}

void Clicker::release() {
    if (!isHeld) return;
    setHeld(false);
    longTimer.stop();
    if (isLong) return;
    if (++presses < 2) return againTimer.start();
    presses = 0;
    emit twice();
}

void Clicker::forget() {
    longTimer.stop();
    againTimer.stop();
    presses = 0;
    isLong = true; // what is still held tells nothing when it is let go
    setHeld(false);
}

void Clicker::setHeld(bool now) {
    if (isHeld == now) return;
    isHeld = now;
    emit heldChanged();
}

} // namespace ambit::view
