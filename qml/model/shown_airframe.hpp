// An airframe as it is read: its texts for people in the language of the screens. What is recorded, signed
// and sent is as written, and comes from archive::OpenRound::airframe or airframe::read.
#pragma once

#include "airframe/airframe.hpp"
#include "archive/archive.hpp"

namespace ambit::view {

/// By its hash, from the archive; on any thread. What its file doesn't translate stays as written.
[[nodiscard]] Result<airframe::Airframe> airframeShown(const archive::Archive& archive,
                                                       const std::string& sha256);

/// The same, never without: one that the archive can't give any more stays as written.
[[nodiscard]] airframe::Airframe airframeShown(const archive::Archive& archive,
                                               const airframe::Airframe& written);

} // namespace ambit::view
