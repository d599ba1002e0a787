#include "photo/bounds.hpp"

#include <algorithm>
#include <array>

namespace ambit::photo {

std::optional<Kind> kindOf(std::string_view bytes) {
    if (bytes.starts_with("\xFF\xD8\xFF")) return Kind::jpeg;
    if (bytes.starts_with("\x89PNG\r\n\x1A\n")) return Kind::png;
    // ISO/IEC 14496-12, 4.3: a file type box first, its major brand at byte 8. The brands of single pictures
    // coded with HEVC, and the one of any coding (ISO/IEC 23008-12, 10.2 and B.4.1).
    if (bytes.size() >= 12 && bytes.substr(4, 4) == "ftyp") {
        const std::array<std::string_view, 5> brands{"heic", "heix", "heim", "heis", "mif1"};
        if (std::find(brands.begin(), brands.end(), bytes.substr(8, 4)) != brands.end()) return Kind::heif;
    }
    return std::nullopt;
}

Result<void> checkSize(std::int64_t width, std::int64_t height) {
    if (width <= 0 || height <= 0) return damaged();
    // A side alone can be too much, and then the product may not be one.
    if (width > mostPixels || height > mostPixels || width * height > mostPixels)
        return fail(ErrorCode::unsupported, say("This photo has more than 50 megapixels."), "",
                    say("Take it with fewer, or save it smaller."));
    if (std::max(width, height) > mostAspect * std::min(width, height))
        return fail(ErrorCode::unsupported, say("This picture is too long and narrow for a photo."), "",
                    say("Choose another file."));
    return {};
}

tl::unexpected<Error> damaged() {
    return fail(ErrorCode::invalid, say("This photo is damaged: its file breaks off or contradicts itself."),
                "", say("Take it again, or save it anew as JPEG."));
}

} // namespace ambit::photo
