// Water on the glass touches it too: at two places at once, for an instant, in bursts. Such touches press
// nothing.
#pragma once

#include <QElapsedTimer>
#include <QPointF>
#include <QPointer>
#include <QQuickWindow>
#include <QTimer>
#include <QtQml/qqmlregistration.h>
#include <functional>
#include <map>

class QInputEvent;
class QMouseEvent;
class QTouchEvent;

namespace ambit::view {

/// Tells a hand's touches from water's, touch by touch as they come. Values in, values out; times are ms of
/// any clock. Everything from the first contact until the glass is free again is one touch: whatever of it is
/// no hand's spoils all of it.
class TouchJudge {
public:
    enum class Verdict {
        hand,
        together, ///< two places at once
        brief,    ///< shorter than a finger rests
        hurried,  ///< too soon after the last, or before the glass was quiet
    };

    // Common practice, no source: nobody has published how wet gloves touch.
    /// A finger that means a key rests 80 ms and more on it, a gloved one longer; a drop's contact mostly
    /// lasts one or two scans of the glass, 8 to 16 ms each.
    static constexpr qint64 leastRest = 50;
    /// Nobody reads a card and presses again in this time; a bouncing finger and a burst do.
    static constexpr qint64 betweenTouches = 150;
    /// After a touch that was no hand's the glass must be free for so long before one counts again.
    static constexpr qint64 quietAfterGhost = 300;
    /// Pixels: who moves farther draws or scrolls, and doesn't expect a key to go down.
    static constexpr double drag = 16;

    void down(int contact, QPointF at, qint64 now);
    void move(int contact, QPointF at);
    /// What the touch was as far as it goes: anything but `hand` means that it presses nothing, now or later.
    Verdict up(int contact, qint64 now);
    /// The system took the touch back.
    void forget();

    [[nodiscard]] bool touching() const { return !contacts.empty(); }
    [[nodiscard]] bool touches(int contact) const { return contacts.contains(contact); }
    /// Of the last touch: all of its contacts were drawn across the glass, as in a scroll or a pinch.
    [[nodiscard]] bool drawn() const { return allDrawn; }

private:
    struct Contact {
        QPointF from;
        qint64 since = 0;
        bool drawn = false;
    };

    std::map<int, Contact> contacts;
    Verdict verdict = Verdict::hand;
    bool allDrawn = false;
    qint64 quietFrom = 0; ///< when the glass last became free
    qint64 wait = 0;      ///< and for how long it must have been
};

/// Stands before a window. A touch goes through as it comes, so that keys go down, lists scroll, a long press
/// is one and two fingers pinch; whether it was a hand's is known when it ends. If not, the window is told
/// that it was cancelled, not that it ended: nothing in Ambit commits anything before a finger is lifted.
/// Touches that the system hands over as a mouse's are judged the same way; a real mouse, and keys, are not
/// looked at.
class TouchGuard : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QQuickWindow* over READ over WRITE setOver NOTIFY overChanged)
    /// What was not taken and why, for a while after; "" otherwise.
    Q_PROPERTY(QString ignored READ ignored NOTIFY ignoredChanged)
public:
    /// How long `ignored` is said, ms.
    static constexpr int saidFor = 4000;

    explicit TouchGuard(QObject* parent = nullptr);

    [[nodiscard]] QQuickWindow* over() const { return window; }
    void setOver(QQuickWindow* watched);
    [[nodiscard]] QString ignored() const { return words; }
    /// For tests: the time of each event instead of the system's.
    void setClock(std::function<qint64()> own) { clock = std::move(own); }

    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    void overChanged();
    void ignoredChanged();

private:
    [[nodiscard]] bool keepsBack(QTouchEvent& event);
    [[nodiscard]] bool keepsBack(QMouseEvent& event);
    [[nodiscard]] qint64 timeOf(const QInputEvent& event) const;
    void cancel(const QTouchEvent& event);
    void say(TouchJudge::Verdict verdict);
    void say(const QString& text);

    QPointer<QQuickWindow> window;
    TouchJudge judge;
    bool isCancelled = false;  ///< the rest of this touch is kept back
    bool isCancelling = false; ///< the cancellation is our own
    QString words;
    QTimer silence;
    QElapsedTimer elapsed;
    std::function<qint64()> clock;
};

} // namespace ambit::view
