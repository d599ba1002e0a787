// A JPEG file's outline: what lies where, and what of it is needed to show it. Nothing is decoded.
// ITU-T T.81, annex B.
#pragma once

#include "base/result.hpp"
#include "photo/exif.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace ambit::photo {

/// Its views are into the bytes that it was read from: they must outlive it.
struct Jpeg {
    struct Segment {
        int marker = 0;          ///< the byte after FF
        std::string_view inside; ///< after the length
    };

    int width = 0;  ///< as stored: not turned upright
    int height = 0; ///< likewise
    int channels = 0;
    std::string_view picture;      ///< from its start to its end: without what a file carries behind it
    std::vector<Segment> segments; ///< up to the first scan's header
    int scans = 0;
    std::string_view scan;    ///< from the first scan's header to the end, both markers included
    bool isScanAlone = false; ///< nothing but coded data between those two
    Exif exif;
    std::string profile; ///< ICC, put together from its parts; "": none or not whole

    /// Keeps the coded picture as it is, and of everything else only what it takes to decode it, and the
    /// time. Made of such a file, it is that file again. "": not of a picture that must be turned or whose
    /// colours must be converted (the caller tells: `hasOwnColours`), nor of one coded in a rarer way or
    /// with tables that hold more than tables.
    [[nodiscard]] std::string stripped(bool hasOwnColours) const;
};

/// Errors invalid: it breaks off or contradicts itself; unsupported: too large, or of a kind that cameras
/// don't write (12 bits, arithmetic, for print).
[[nodiscard]] Result<Jpeg> readJpeg(std::string_view bytes);

/// The same picture with the time put in before all else but the JFIF header. `jpeg` must begin with one of
/// 16 bytes, as encoders write it. No time: no change.
[[nodiscard]] std::string withTime(const std::string& jpeg, const Exif& exif);

} // namespace ambit::photo
