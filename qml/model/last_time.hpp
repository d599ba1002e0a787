// What was found at each point in the aircraft's newest earlier record.
#pragma once

#include "archive/archive.hpp"
#include "round/state.hpp"

#include <QString>
#include <map>

namespace ambit::view {

class LastTime {
public:
    LastTime() = default;
    /// Reads the newest record of the round's aircraft once. No record: nothing to say; an unreadable one:
    /// the error.
    [[nodiscard]] static Result<LastTime>
    before(const archive::Archive& archive, const airframe::Airframe& airframe, const round::State& state);

    /// "sound · 3 days, 4.2 h ago"; a finding with its words; "" where there is no earlier record of the
    /// point.
    [[nodiscard]] QString at(const std::string& point, Instant now) const;

private:
    struct Entry {
        round::Settled what;
        Instant at;
    };
    std::map<std::string, Entry> points;
    QString hoursAgo; ///< "4.2"; "" where no counter in hours is in both
};

} // namespace ambit::view
