// How whoever uses this device wants to be asked: the operator's and the pilot's choices, kept from round to
// round.
#pragma once

#include "model/services.hpp"
#include "round/event.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

class QSettings;

namespace ambit::view {

class Habits : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// Where one hand is free, a key answers: a clicker, a headset, a volume key.
    Q_PROPERTY(bool keys READ keys WRITE setKeys NOTIFY changed)
    /// Where none is, points are told before the climb and asked for after it.
    Q_PROPERTY(bool portions READ portions WRITE setPortions NOTIFY changed)
    /// Points in a portion: 1 to 9.
    Q_PROPERTY(int portionSize READ portionSize WRITE setPortionSize NOTIFY changed)
    /// Every card is read aloud; portions and what a key answers are in any case.
    Q_PROPERTY(bool aloud READ aloud WRITE setAloud NOTIFY changed)
    /// All that the camera wrote is kept in a photo: place, device. Otherwise only the time is.
    Q_PROPERTY(bool photosAsTaken READ photosAsTaken WRITE setPhotosAsTaken NOTIFY changed)
    /// What an interruption asks for again: "points", "stand", "start"; and how many, 1 to 9.
    Q_PROPERTY(QString backFrom READ backFrom WRITE setBackFrom NOTIFY changed)
    Q_PROPERTY(int backPoints READ backPoints WRITE setBackPoints NOTIFY changed)
    /// "back 3 points"
    Q_PROPERTY(QString backText READ backText NOTIFY changed)
public:
    /// `kept`: nullptr: nothing is remembered. What is there and makes no sense counts as not there.
    explicit Habits(QSettings* kept, QObject* parent = nullptr);

    static constexpr int fewest = 1;
    static constexpr int most = 9;

    [[nodiscard]] bool keys() const { return byKeys; }
    [[nodiscard]] bool portions() const { return inPortions; }
    [[nodiscard]] int portionSize() const { return size; }
    [[nodiscard]] bool aloud() const { return isAloud; }
    [[nodiscard]] bool photosAsTaken() const { return asTaken; }
    [[nodiscard]] PhotoData photoData() const { return asTaken ? PhotoData::asTaken : PhotoData::time; }
    [[nodiscard]] QString backFrom() const;
    [[nodiscard]] int backPoints() const { return back.points; }
    [[nodiscard]] QString backText() const;
    [[nodiscard]] const round::BackRule& backRule() const { return back; }

    /// No keys, no portions: the screen is touched wherever one stands. Nothing is remembered of it.
    void touchOnly();

    void setKeys(bool on);
    void setPortions(bool on);
    void setPortionSize(int points); ///< kept within 1 to 9
    void setAloud(bool on);
    void setPhotosAsTaken(bool on);
    void setBackFrom(const QString& from); ///< another word changes nothing
    void setBackPoints(int points);

signals:
    void changed();

private:
    template<class T> void set(T& its, T value, const char* name);

    QSettings* settings;
    bool byKeys = true;
    bool inPortions = true;
    int size = 5;
    bool isAloud = false;
    bool asTaken = false;
    round::BackRule back;
};

} // namespace ambit::view
