// The network of a desktop, for the screens.
#pragma once

#include "model/services.hpp"

#include <filesystem>

namespace ambit::desktop {

/// Both ends of a live watch. `folder`: where it is kept whom this device knows, and what it watched. `port`:
/// where walkers listen; 0: any free one. `shown`: addresses in invitations; none: this machine's own.
void addLinks(view::Services& services, const std::filesystem::path& folder,
              std::uint16_t port = watch::usualPort, std::vector<watch::Address> shown = {});

} // namespace ambit::desktop
