// One UTF-8 sequence at a time. Inside core/base only.
#pragma once

#include <cstddef>
#include <string_view>

namespace ambit::utf8 {

/// A code point and how many bytes it takes; length 0: it isn't well formed.
struct Sequence {
    char32_t point = 0;
    std::size_t length = 0;
};

/// At the start of `text`, which isn't empty.
[[nodiscard]] inline Sequence first(std::string_view text) {
    const auto lead = static_cast<unsigned char>(text[0]);
    if (lead < 0x80) return {lead, 1};
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || text.size() < length) return {};
    char32_t point = lead & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        if ((byte & 0xC0U) != 0x80) return {};
        point = (point << 6U) | (byte & 0x3FU);
    }
    const bool overlong = (length == 3 && point < 0x800) || (length == 4 && point < 0x10000);
    const bool surrogate = point >= 0xD800 && point <= 0xDFFF;
    if (overlong || surrogate || point > 0x10FFFF) return {};
    return {point, length};
}

/// May it stand in a record's text (isPlainText)?
[[nodiscard]] inline bool isPlain(char32_t point) {
    const bool control = (point < 0x20 && point != '\n') || (point >= 0x7F && point <= 0x9F);
    const bool nonCharacter = (point >= 0xFDD0 && point <= 0xFDEF) || (point & 0xFFFEU) == 0xFFFE;
    return !control && !nonCharacter;
}

} // namespace ambit::utf8
