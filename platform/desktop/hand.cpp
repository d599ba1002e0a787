#include "desktop/hand.hpp"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPointingDevice>
#include <QQuickItem>
#include <QQuickWindow>
#include <cmath>

namespace ambit::desktop {

namespace {

constexpr int patience = 4000; // ms
constexpr int frame = 8;       // ms

bool inSight(const QQuickItem& item) {
    return item.isVisible() && item.opacity() > 0 && item.width() > 0 && item.height() > 0;
}

QQuickItem* findIn(QQuickItem& parent, const QString& name) {
    if (!parent.isVisible()) return nullptr;
    if (parent.objectName() == name) return &parent;
    const auto children = parent.childItems();
    for (QQuickItem* child : children)
        if (QQuickItem* found = findIn(*child, name)) return found;
    return nullptr;
}

bool isFlickable(const QQuickItem& item) {
    return item.inherits("QQuickFlickable");
}

void flickablesIn(QQuickItem& parent, QList<QQuickItem*>& found) {
    if (!parent.isVisible()) return;
    if (isFlickable(parent)) found << &parent;
    const auto children = parent.childItems();
    for (QQuickItem* child : children)
        flickablesIn(*child, found);
}

/// Where in the item a finger goes.
QPointF touchPoint(const QQuickItem& item) {
    const QVariant own = item.property("touchPoint");
    return own.isValid() ? own.toPointF() : QPointF(item.width() / 2, item.height() / 2);
}

Error missing(const QString& name) {
    return {ErrorCode::notFound,
            "Nothing on the screen can be touched by the name “" + name.toStdString() + "”.",
            name.toStdString(), "See OBJECT-NAMES.md for what each screen must have."};
}

} // namespace

void Hand::rest(int milliseconds) const {
    QElapsedTimer timer;
    timer.start();
    do {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents(QEventLoop::AllEvents, frame);
    } while (timer.elapsed() < milliseconds);
}

QQuickItem* Hand::find(const QString& name) const {
    QQuickItem* item = findIn(*window->contentItem(), name);
    return item != nullptr && inSight(*item) ? item : nullptr;
}

bool Hand::sees(const QString& name) const {
    return find(name) != nullptr;
}

/// A list makes only the rows in view: looks through each that can be scrolled.
QQuickItem* Hand::searchByScrolling(const QString& name) const {
    QList<QQuickItem*> scrolled;
    flickablesIn(*window->contentItem(), scrolled);
    for (QQuickItem* flickable : scrolled) {
        const double top = flickable->property("originY").toDouble();
        const double start = flickable->property("contentY").toDouble();
        const double most = flickable->property("contentHeight").toDouble() - flickable->height();
        const double step = flickable->height() * 0.8;
        const int steps = step > 0 && most > 0 ? static_cast<int>(std::ceil(most / step)) : 0;
        for (int i = 0; i <= steps; ++i) {
            flickable->setProperty("contentY", top + std::clamp(i * step, 0.0, std::max(0.0, most)));
            rest();
            if (QQuickItem* item = find(name)) return item;
        }
        flickable->setProperty("contentY", start);
    }
    return nullptr;
}

Result<QQuickItem*> Hand::waitFor(const QString& name) const {
    QElapsedTimer timer;
    timer.start();
    QPointF before(-1e9, -1e9);
    while (timer.elapsed() < patience) {
        QQuickItem* item = find(name);
        if (item == nullptr && timer.elapsed() > patience / 8) item = searchByScrolling(name);
        const QPointF now = item == nullptr ? QPointF(-1e9, -1e9) : item->mapToScene(QPointF());
        if (item != nullptr && item->isEnabled() && now == before) return item;
        before = now;
        rest(frame);
    }
    return tl::unexpected(missing(name));
}

Result<void> Hand::see(const QString& name) {
    auto item = waitFor(name);
    if (!item) return tl::unexpected(item.error());
    return {};
}

void Hand::bringIntoView(QQuickItem& item) const {
    for (QQuickItem* parent = item.parentItem(); parent != nullptr; parent = parent->parentItem()) {
        if (!isFlickable(*parent)) continue;
        const QPointF point = item.mapToItem(parent, touchPoint(item));
        const double reach = std::min(item.height() / 2 + 8, parent->height() / 2);
        double shift = 0;
        if (point.y() < reach) shift = point.y() - reach;
        if (point.y() > parent->height() - reach) shift = point.y() - parent->height() + reach;
        if (shift == 0) continue;
        const double top = parent->property("originY").toDouble();
        const double most =
            std::max(top, top + parent->property("contentHeight").toDouble() - parent->height());
        parent->setProperty("contentY",
                            std::clamp(parent->property("contentY").toDouble() + shift, top, most));
        rest(frame);
    }
}

void Hand::press(QPointF at) {
    const auto send = [&](QEvent::Type type, Qt::MouseButtons buttons) {
        QMouseEvent event(type, at, at, window->mapToGlobal(at), Qt::LeftButton, buttons, Qt::NoModifier,
                          QPointingDevice::primaryPointingDevice());
        event.setTimestamp(time);
        QCoreApplication::sendEvent(window, &event);
        time += 60;
        rest();
    };
    send(QEvent::MouseButtonPress, Qt::LeftButton);
    send(QEvent::MouseButtonRelease, Qt::NoButton);
    time += 1000;
}

Result<void> Hand::touch(const QString& name) {
    auto item = waitFor(name);
    if (!item) return tl::unexpected(item.error());
    bringIntoView(**item);
    const QPointF at = (*item)->mapToScene(touchPoint(**item));
    if (!QRectF(QPointF(), QSizeF(window->size())).contains(at))
        return fail(ErrorCode::refused, "“" + name.toStdString() + "” lies outside the window.",
                    name.toStdString());
    press(at);
    return {};
}

Result<void> Hand::aim(const QString& name, QPointF at) {
    auto item = waitFor(name);
    if (!item) return tl::unexpected(item.error());
    (*item)->setProperty("aim", at);
    return {};
}

Result<void> Hand::type(const QString& name, const QString& words) {
    if (auto touched = touch(name); !touched) return touched;
    const auto key = [&](int code, Qt::KeyboardModifiers modifiers, const QString& written) {
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, code, modifiers, written);
            QCoreApplication::sendEvent(window, &event);
        }
    };
    key(Qt::Key_A, Qt::ControlModifier, {});
    key(Qt::Key_Delete, Qt::NoModifier, {});
    for (const QChar letter : words)
        key(Qt::Key_unknown, Qt::NoModifier, letter);
    rest();
    const QQuickItem* item = find(name);
    if (item == nullptr) return tl::unexpected(missing(name));
    if (const QString there = item->property("text").toString(); there != words)
        return fail(ErrorCode::refused,
                    "“" + name.toStdString() + "” holds “" + there.toStdString() + "” after “" +
                        words.toStdString() + "” was typed.",
                    name.toStdString());
    return {};
}

} // namespace ambit::desktop
