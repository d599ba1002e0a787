// Keys of invented people. They are worked out from a seed, so that the same fleet comes out byte for byte: a
// demonstration's signatures hold, and protect nothing, since anybody can make these keys.
#pragma once

#include "record/key.hpp"

#include <cstdint>

namespace ambit::fleet {

/// The key that goes with this seed and label, and a self-signed certificate bearing `name`, 20 years long
/// from `from`. Signing the same digest twice gives the same signature. May be used by several threads.
/// `name` is 1 to 64 bytes.
[[nodiscard]] Result<record::Signer> derivedKey(std::uint64_t seed, const std::string& label,
                                                const std::string& name, Instant from);

} // namespace ambit::fleet
