// What records say of points over time: measured values, and the last photos.
#pragma once

#include "archive/archive.hpp"
#include "round/trended.hpp"

#include <map>

namespace ambit::archive {

/// By point: the oldest first.
using Series = std::map<std::string, std::vector<round::Past>>;

/// What was measured at these points of an aircraft, the newest `most` values of each. One pass over its
/// rounds.
[[nodiscard]] Result<Series> series(const Archive& archive, const std::string& registration,
                                    const std::vector<std::string>& points, std::size_t most = 10000);

/// A photo that a record has of one point.
struct PhotoSeen {
    round::Photo photo;
    std::string record;
    std::string by; ///< who signed it
    Instant at;
    std::vector<round::Measurement> measurements; ///< in this photo
};

/// The last photo of each of the newest records that have one of the point, the newest first.
[[nodiscard]] Result<std::vector<PhotoSeen>> photosOf(const Archive& archive, const std::string& registration,
                                                      const std::string& point, std::size_t most = 10);

} // namespace ambit::archive
