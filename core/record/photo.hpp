// What a JPEG says of itself. Inside core/record only.
#pragma once

#include <optional>
#include <string_view>

namespace ambit::record {

struct JpegFrame {
    int width = 0;
    int height = 0;
    int channels = 0;
};

/// From the frame header of a baseline or progressive JPEG of 8 bits a sample (ITU-T T.81); nullopt: not such
/// a file.
[[nodiscard]] std::optional<JpegFrame> jpegFrame(std::string_view bytes);

} // namespace ambit::record
