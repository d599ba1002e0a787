#include "record/der.hpp"

namespace ambit::record::der {

std::string item(Tag tag, std::string_view content) {
    std::string length;
    for (std::size_t rest = content.size(); rest > 0; rest >>= 8U)
        length.insert(length.begin(), static_cast<char>(rest & 0xFFU));
    std::string out(1, static_cast<char>(tag));
    if (content.size() < 0x80)
        out += static_cast<char>(content.size());
    else
        (out += static_cast<char>(0x80U | length.size())) += length;
    return out += content;
}

std::string number(std::string_view bigEndian) {
    while (bigEndian.size() > 1 && bigEndian[0] == '\0')
        bigEndian.remove_prefix(1);
    const bool looksNegative = bigEndian.empty() || (static_cast<unsigned char>(bigEndian[0]) & 0x80U) != 0;
    std::string content(looksNegative ? 1 : 0, '\0');
    content += bigEndian;
    return item(integer, content);
}

std::size_t sizeOfFirst(std::string_view bytes) {
    if (bytes.size() < 2) return 0;
    const auto at = [&](std::size_t i) { return static_cast<unsigned char>(bytes[i]); };
    std::size_t header = 2;
    std::size_t length = at(1);
    if (length >= 0x80) {
        const std::size_t count = length - 0x80;
        if (count == 0 || count > 4 || bytes.size() < header + count) return 0;
        length = 0;
        for (std::size_t i = 0; i < count; ++i)
            length = (length << 8U) | at(header + i);
        header += count;
    }
    return length <= bytes.size() - header ? header + length : 0;
}

} // namespace ambit::record::der
