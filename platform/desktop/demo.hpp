// Puts the demo aircraft into an archive.
#pragma once

#include "archive/archive.hpp"

namespace ambit::desktop {

/// Each folder in `folder` that has airframe.json and round.jsonl: registration and serial are those of the
/// script's first line.
[[nodiscard]] Result<void> addDemoAircraft(archive::Archive& archive, const std::filesystem::path& folder);

} // namespace ambit::desktop
