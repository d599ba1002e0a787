// Where the device is, by Qt Positioning: the place goes into a round's opening event.
#pragma once

#include "round/event.hpp"

#include <QFile>
#include <memory>

class QGeoPositionInfo;
class QGeoPositionInfoSource;

namespace ambit::desktop {

class Positioning {
public:
    /// A recorded NMEA file stands in for a receiver. An unreadable one: no position, and a word on stderr.
    [[nodiscard]] static std::unique_ptr<Positioning> fromNmea(const QString& path);
    /// The system's own source; it asks the person where the system wants that.
    [[nodiscard]] static std::unique_ptr<Positioning> fromSystem();
    ~Positioning();

    /// The last place told; none before the first. Degrees, WGS 84, six decimals: a tenth of a metre.
    [[nodiscard]] std::optional<round::Position> last() const;

private:
    Positioning();
    QFile file; ///< before the source, which reads it
    std::unique_ptr<QGeoPositionInfoSource> source;
};

} // namespace ambit::desktop
