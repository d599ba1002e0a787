// The little of a photo's EXIF block that Ambit asks for, and the block it writes. The rest (places, makers'
// notes, thumbnails, names) is never looked into.
// JEITA CP-3451 (Exif 2.31): 4.6.2 how a block is built; 4.6.4, 4.6.5 the tags.
#pragma once

#include <string>
#include <string_view>

namespace ambit::photo {

struct Exif {
    int orientation = 1; ///< 1 to 8: what turns the stored picture upright
    std::string takenAt; ///< DateTimeOriginal, "2026:06:20 07:30:00", local time; "": not told
    std::string offset;  ///< OffsetTimeOriginal, "+02:00", from UTC; "": not told

    friend bool operator==(const Exif&, const Exif&) = default;
};

/// Of bytes that begin with the TIFF header. What isn't there, isn't well-formed or isn't a time stays as a
/// fresh Exif has it: a photo is no worse for it.
[[nodiscard]] Exif readExif(std::string_view tiff);

/// The TIFF header and the time alone, what readExif understands; "" if no time is told.
[[nodiscard]] std::string writeExif(const Exif& exif);

/// Where the EXIF block in a HEIF file begins, by its signature; its end isn't known. "": none.
[[nodiscard]] std::string_view exifInHeif(std::string_view heif);

} // namespace ambit::photo
