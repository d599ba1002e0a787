// What a photo may be, before anything of it is decoded: its kind by its bytes, its size by its header.
#pragma once

#include "base/result.hpp"

#include <cstdint>
#include <optional>
#include <string_view>

namespace ambit::photo {

enum class Kind { jpeg, png, heif };

inline constexpr std::size_t mostFileBytes = std::size_t{40} << 20;
inline constexpr std::int64_t mostPixels = 50'000'000;
inline constexpr std::int64_t mostAspect = 20; ///< longer side against the shorter: a panorama has some 10

/// By the first bytes; nothing: another kind of file, also a sequence of HEIF pictures.
[[nodiscard]] std::optional<Kind> kindOf(std::string_view bytes);

/// Errors unsupported: more than 50 megapixels, or more than 20 times as long as wide; invalid: no pixels.
[[nodiscard]] Result<void> checkSize(std::int64_t width, std::int64_t height);

/// What is said of a file that doesn't hold together. Code invalid.
[[nodiscard]] tl::unexpected<Error> damaged();

} // namespace ambit::photo
