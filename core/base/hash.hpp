// SHA-256 (FIPS 180-4), from OpenSSL.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace ambit {

using Digest = std::array<std::uint8_t, 32>;

[[nodiscard]] Digest sha256(std::string_view bytes);
[[nodiscard]] std::string sha256Hex(std::string_view bytes); ///< 64 lower-case hex digits

} // namespace ambit
