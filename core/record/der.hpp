// DER (ITU-T X.690) as far as a signature needs it: written piece by piece. Inside core/record only.
#pragma once

#include <string>
#include <string_view>

namespace ambit::record::der {

enum Tag : unsigned char {
    integer = 0x02,
    octets = 0x04,
    object = 0x06,
    sequence = 0x30,
    set = 0x31,
    context0 = 0xA0
};

/// Tag, length, content.
[[nodiscard]] std::string item(Tag tag, std::string_view content);

/// A non-negative INTEGER from its big-endian bytes, leading zeros or not.
[[nodiscard]] std::string number(std::string_view bigEndian);

/// The length of the whole first item of `bytes`, header and all; 0 if it isn't there whole.
[[nodiscard]] std::size_t sizeOfFirst(std::string_view bytes);

} // namespace ambit::record::der
