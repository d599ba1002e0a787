// A hand on the screens of a running window: finds what bears an object name, brings it into view, touches
// it, types into it. Knows nothing of the items but what a person could see.
#pragma once

#include "base/result.hpp"

#include <QPointF>
#include <QString>

class QQuickItem;
class QQuickWindow;

namespace ambit::desktop {

class Hand {
public:
    explicit Hand(QQuickWindow& onWindow) : window(&onWindow) {}

    /// Waits until the item is visible, enabled and at rest, and touches it: at its `touchPoint` if it has
    /// one, else in its middle. Error notFound: it isn't there in time; refused: it lies outside the window.
    [[nodiscard]] Result<void> touch(const QString& name);
    /// Where on it the next touch goes, for an item with a property `aim` (OBJECT-NAMES.md says in what
    /// measure).
    [[nodiscard]] Result<void> aim(const QString& name, QPointF at);
    /// Touches a field, replaces what is in it, and makes sure that it is there.
    [[nodiscard]] Result<void> type(const QString& name, const QString& words);
    /// Waits until it is in sight.
    [[nodiscard]] Result<void> see(const QString& name);
    /// In sight now?
    [[nodiscard]] bool sees(const QString& name) const;

    /// Lets the window work off what is due, at least `milliseconds`.
    void rest(int milliseconds = 0) const;

private:
    [[nodiscard]] QQuickItem* find(const QString& name) const;
    [[nodiscard]] Result<QQuickItem*> waitFor(const QString& name) const;
    [[nodiscard]] QQuickItem* searchByScrolling(const QString& name) const;
    void bringIntoView(QQuickItem& item) const;
    void press(QPointF at);

    QQuickWindow* window;
    quint64 time = 1000; ///< of the events sent, ms: never two touches within a double touch's time
};

} // namespace ambit::desktop
