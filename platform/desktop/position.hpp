// Where the device is and what the time is there, by Qt Positioning: the place goes into a round's opening
// event, and the satellites' time shows what the device's clock is worth.
#pragma once

#include "round/event.hpp"
#include "sky/clock.hpp"

#include <QFile>
#include <functional>
#include <memory>
#include <optional>

class QGeoPositionInfo;
class QGeoPositionInfoSource;

namespace ambit::desktop {

/// One place that came in, by both clocks.
struct Fix {
    round::Position position; ///< degrees, WGS 84, six decimals: a tenth of a metre
    /// The satellites' time of it. Empty where the time told needn't be theirs, or is of another day (a
    /// recording).
    std::optional<Instant> satellites;
    Instant device; ///< the device's clock when it came: late by what the receiver and the line take, seconds
                    ///< at most
};

class Positioning {
public:
    using Clock = std::function<Instant()>; ///< the device's

    /// A recording's times are of when it was made: nothing to hold a clock against, unless it is believed to
    /// be of now.
    enum class Recording { ofThen, ofNow };

    /// A recorded NMEA file stands in for a receiver, at the pace it was recorded with. An unreadable one: no
    /// fix, and a word on stderr.
    [[nodiscard]] static std::unique_ptr<Positioning> fromNmea(const QString& path, Clock clock,
                                                               Recording recording = Recording::ofThen);
    /// A receiver that sends NMEA now: "serial:/dev/ttyACM0", "socket://HOST:PORT", as Qt's plugin nmea has
    /// them.
    [[nodiscard]] static std::unique_ptr<Positioning> fromReceiver(const QString& source, Clock clock);
    /// The system's own source; it asks the person where the system wants that. Its times count as the
    /// satellites' only if it knows no other way to a place: others stamp a place with the device's own time.
    [[nodiscard]] static std::unique_ptr<Positioning> fromSystem(Clock clock);
    ~Positioning();
    Positioning(const Positioning&) = delete;
    Positioning& operator=(const Positioning&) = delete;

    /// The last one to come in; none before the first. What a source remembers from earlier doesn't count.
    [[nodiscard]] std::optional<Fix> fix() const { return latest; }
    [[nodiscard]] std::optional<round::Position> last() const;
    /// The device's clock at the last fix, held against the satellites'; empty where they told no time. After
    /// a device has slept, what waited on the line comes first and lets its clock look ahead, until the next
    /// fix.
    [[nodiscard]] std::optional<sky::ClockOff> clockOff() const;

private:
    explicit Positioning(Clock clock);
    void listen(std::unique_ptr<QGeoPositionInfoSource> to, bool timeIsTheSatellites);
    void take(const QGeoPositionInfo& told);

    Clock clock;
    bool believed = false; ///< the times that come are the satellites', and of now
    bool said = false;     ///< that the clock is out: once, until it is right again
    std::optional<Fix> latest;
    QFile file; ///< before the source, which reads it
    std::unique_ptr<QGeoPositionInfoSource> source;
};

/// "3 min 12 s ahead of the satellites' time": how far a clock is out, for people.
[[nodiscard]] QString toWords(const sky::ClockOff& off);

} // namespace ambit::desktop
