// Day, twilight or night where the device is, as far as it knows where it is.
#pragma once

#include "model/services.hpp"
#include "sky/sun_day.hpp"

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

namespace ambit::view {

class Daylight : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// "Day; the sun sets at 20:41", "Night; the sun rises at 05:12", "Day; the sun doesn't set today"; ""
    /// where the place isn't known.
    Q_PROPERTY(QString text READ text NOTIFY changed)
public:
    explicit Daylight(const Services& services, QObject* parent = nullptr);

    /// None where the place isn't known.
    [[nodiscard]] std::optional<sky::Light> light() const { return now; }
    /// Night, or evening twilight that becomes night: a flight that begins now is flown in the dark.
    [[nodiscard]] bool goesIntoTheDark() const { return dark; }
    [[nodiscard]] QString text() const { return words; }

    void look(); ///< called by itself every minute

signals:
    void changed();
    void lightChanged(); ///< another light than before; not told when the place becomes known by day

private:
    const Services* services;
    std::optional<sky::Light> now;
    bool dark = false;
    QString words;
    QTimer timer;
};

/// The place of a fix, for the sun; none if it makes no sense.
[[nodiscard]] std::optional<sky::Place> placeOf(const round::Position& position);

} // namespace ambit::view
