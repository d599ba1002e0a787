// Files as cameras and others make them, put together byte by byte.
#pragma once

#include <string>

namespace ambit::test {

/// What must not be found in a photo that is kept: place, device, names, thumbnail, whatever rides along.
inline const std::string secrets[] = {"PLACE", "MAKER", "SERIAL",  "ARTIST", "THUMB",
                                      "XMP",   "IPTC",  "COMMENT", "BEHIND"};

struct Told {
    int orientation = 1;
    std::string takenAt = "2026:06:20 07:30:00";
    std::string offset = "+02:00";
    bool isBig = true; ///< byte order
};

/// A TIFF block as a camera writes it: with every secret that goes into one.
[[nodiscard]] std::string cameraExif(const Told& told);

/// marker FF xx, length, inside.
[[nodiscard]] std::string segment(int marker, const std::string& inside);

/// The JPEG with all that a camera may write, before the picture and behind it.
[[nodiscard]] std::string asCamera(const std::string& jpeg, const Told& told);

/// Length, type, inside, checksum.
[[nodiscard]] std::string chunk(const std::string& type, const std::string& inside);

} // namespace ambit::test
