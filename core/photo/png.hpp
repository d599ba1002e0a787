// A PNG file's outline (ISO/IEC 15948). Nothing is decoded.
#pragma once

#include "base/result.hpp"
#include "photo/exif.hpp"

#include <string>
#include <string_view>

namespace ambit::photo {

struct Png {
    int width = 0;
    int height = 0;
    Exif exif;
    std::size_t end = 0; ///< of the picture: what a file carries behind it begins there
    /// The same picture without what it takes no more than that to show: texts, which small as they are may
    /// unfold to gigabytes, times, places.
    std::string bare;
};

/// Errors invalid: it breaks off or contradicts itself; unsupported: too large, or several pictures.
[[nodiscard]] Result<Png> readPng(std::string_view bytes);

} // namespace ambit::photo
