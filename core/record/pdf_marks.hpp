// Where a PDF's signature stands in its bytes; shared by writing and checking. Inside core/record only.
#pragma once

#include <algorithm>
#include <string>
#include <string_view>

namespace ambit::record::pdf {

/// The two dictionary keys exactly as they are written, once for each signature.
inline constexpr std::string_view byteRangeKey = "/ByteRange ";
inline constexpr std::string_view contentsKey = "/Contents <";
inline constexpr const char* filter = "/Adobe.PPKLite";
inline constexpr const char* subFilter = "/ETSI.CAdES.detached";
inline constexpr const char* attachment = "record.json";
inline constexpr int widgetFlags = 132; ///< of a signature's field: print, locked

/// Signed is [0, gap) and [gapEnd, end of the file): all but the text of /Contents, from its < to its >.
struct Gap {
    std::size_t begin = 0;
    std::size_t end = 0;
};

inline std::string_view before(std::string_view file, Gap gap) {
    return file.substr(0, gap.begin);
}
inline std::string_view after(std::string_view file, Gap gap) {
    return file.substr(gap.end);
}

/// "[ 0 a b c ]" padded to a fixed width.
inline std::string byteRange(std::size_t fileSize, Gap gap) {
    constexpr std::size_t width = 38; // what four numbers of 1, 10, 10 and 10 digits take
    std::string text = "[ 0 " + std::to_string(gap.begin) + ' ' + std::to_string(gap.end) + ' ' +
                       std::to_string(fileSize - gap.end) + ' ';
    text.resize(std::max(width - 1, text.size()), ' ');
    return text + ']';
}

/// The one place where `what` stands; npos: nowhere, or more than once.
inline std::size_t onlyPlaceOf(std::string_view what, std::string_view file) {
    const std::size_t first = file.find(what);
    return first == std::string_view::npos || file.find(what, first + 1) == std::string_view::npos
               ? first
               : std::string_view::npos;
}

} // namespace ambit::record::pdf
