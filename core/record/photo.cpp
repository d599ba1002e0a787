#include "record/photo.hpp"

namespace ambit::record {

std::optional<JpegFrame> jpegFrame(std::string_view bytes) {
    const auto at = [&](std::size_t i) { return static_cast<int>(static_cast<unsigned char>(bytes[i])); };
    const auto pair = [&](std::size_t i) { return at(i) << 8 | at(i + 1); };
    if (!bytes.starts_with("\xFF\xD8\xFF")) return std::nullopt;
    // Segments follow each other: FF, marker, length (which counts itself), until the frame header.
    for (std::size_t here = 2; here + 10 <= bytes.size();) {
        if (at(here) != 0xFF) return std::nullopt;
        const int marker = at(here + 1);
        if (marker >= 0xC0 && marker <= 0xC2) {
            if (at(here + 4) != 8) return std::nullopt;
            return JpegFrame{pair(here + 7), pair(here + 5), at(here + 9)};
        }
        if (marker == 0xFF) { // padding before a marker
            ++here;
            continue;
        }
        const int length = pair(here + 2);
        if (marker == 0xD9 || marker == 0xDA || length < 2) return std::nullopt;
        here += 2 + static_cast<std::size_t>(length);
    }
    return std::nullopt;
}

} // namespace ambit::record
