// One key that answers: a clicker's, a headset's, a volume key, any key of a Bluetooth keyboard. Times its
// presses.
#pragma once

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

namespace ambit::view {

class Clicker : public QObject {
    Q_OBJECT
    QML_ELEMENT
    /// Held down now.
    Q_PROPERTY(bool held READ held NOTIFY heldChanged)
public:
    /// A press so long means another thing than a short one. Longer than any tap, so that a stiff key in a
    /// glove isn't taken for it. Common practice, no source.
    static constexpr int longMs = 800;
    /// A second press within this of the first one's end belongs to it: so a single one is told that much
    /// later.
    static constexpr int againMs = 400;

    explicit Clicker(QObject* parent = nullptr);

    /// Does this key of a keyboard answer? Letters and digits, which mean something of their own, Tab and the
    /// arrow keys, which move, don't.
    Q_INVOKABLE [[nodiscard]] static bool answers(int qtKey);

    /// A key that repeats itself while held is pressed once: leave repeats out.
    Q_INVOKABLE void press();
    Q_INVOKABLE void release();
    /// Whatever was begun is none: the screen is another one now.
    Q_INVOKABLE void forget();

    [[nodiscard]] bool held() const { return isHeld; }

signals:
    void once();    ///< one press
    void twice();   ///< two presses, told at the second one's end
    void longOne(); ///< a long one, told when it is long enough, not when it ends
    void heldChanged();

private:
    void setHeld(bool now);

    QTimer longTimer;
    QTimer againTimer;
    bool isHeld = false;
    bool isLong = false; ///< told already
    int presses = 0;     ///< ended, and not told
};

} // namespace ambit::view
