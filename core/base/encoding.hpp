// base64, base64url (RFC 4648) and hex; strict both ways: one text for one value, anything else is refused.
#pragma once

#include "base/result.hpp"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace ambit {

[[nodiscard]] std::string toHex(std::span<const std::uint8_t> bytes);
[[nodiscard]] Result<std::string> fromHex(std::string_view text); ///< refuses capitals
[[nodiscard]] std::string toBase64(std::string_view bytes);       ///< with padding
[[nodiscard]] std::string toBase64Url(std::string_view bytes);    ///< without padding (RFC 7515, section 2)
/// The same letters written to `to`, which has room for four of every three bytes; returns how many.
std::size_t toBase64Url(std::string_view bytes, char* to);
[[nodiscard]] Result<std::string>
fromBase64(std::string_view text); ///< refuses space, missing padding, unused bits set
[[nodiscard]] Result<std::string>
fromBase64Url(std::string_view text); ///< refuses padding, other letters, unused bits set

} // namespace ambit
