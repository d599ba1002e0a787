#include "made.hpp"

#include <cstdint>
#include <vector>

namespace ambit::test {

namespace {

std::string number(std::uint32_t value, int width, bool isBig) {
    std::string out;
    for (int i = 0; i < width; ++i)
        out += static_cast<char>(value >> (8 * (isBig ? width - 1 - i : i)) & 0xFF);
    return out;
}

struct Entry {
    std::uint32_t tag, type, count;
    std::string value; ///< padded to 4 bytes, or put behind the directory
};

std::string directory(std::size_t at, const std::vector<Entry>& entries, std::uint32_t next, bool isBig) {
    std::string out = number(static_cast<std::uint32_t>(entries.size()), 2, isBig);
    std::string behind;
    const std::size_t from = at + 2 + 12 * entries.size() + 4;
    for (const Entry& one : entries) {
        out += number(one.tag, 2, isBig) + number(one.type, 2, isBig) + number(one.count, 4, isBig);
        if (one.value.size() <= 4)
            out += one.value + std::string(4 - one.value.size(), '\0');
        else {
            out += number(static_cast<std::uint32_t>(from + behind.size()), 4, isBig);
            behind += one.value;
        }
    }
    return out + number(next, 4, isBig) + behind;
}

} // namespace

std::string cameraExif(const Told& told) {
    const bool big = told.isBig;
    const auto ascii = [](std::uint32_t tag, const std::string& text) {
        return Entry{tag, 2, static_cast<std::uint32_t>(text.size() + 1), text + '\0'};
    };
    const auto pointer = [&](std::uint32_t tag, std::size_t to) {
        return Entry{tag, 4, 1, number(static_cast<std::uint32_t>(to), 4, big)};
    };
    constexpr std::size_t inner = 1000;
    constexpr std::size_t gps = 2000;
    constexpr std::size_t second = 3000;
    constexpr std::size_t thumbnail = 4000;
    std::string out = (big ? std::string("MM\0*", 4) : std::string("II*\0", 4)) + number(8, 4, big);
    const auto put = [&](std::size_t at, const std::string& bytes) {
        out.resize(at, '\0');
        out += bytes;
    };
    put(8, directory(8,
                     {ascii(0x010F, "MAKER of cameras"),
                      {0x0112, 3, 1, number(static_cast<std::uint32_t>(told.orientation), 2, big)},
                      ascii(0x013B, "ARTIST Example"),
                      pointer(0x8769, inner),
                      pointer(0x8825, gps)},
                     second, big));
    std::vector<Entry> taken;
    if (!told.takenAt.empty()) taken.push_back(ascii(0x9003, told.takenAt));
    if (!told.offset.empty()) taken.push_back(ascii(0x9011, told.offset));
    taken.push_back({0x927C, 7, 20, "MAKER note, anything"});
    taken.push_back(ascii(0xA431, "SERIAL 0000-0000"));
    put(inner, directory(inner, taken, 0, big));
    put(gps, directory(gps, {ascii(1, "N"), ascii(0x001B, "PLACE 50.0000 10.0000")}, 0, big));
    put(second, directory(second, {pointer(0x0201, thumbnail), pointer(0x0202, 5)}, 0, big));
    put(thumbnail, "THUMB");
    return out;
}

std::string segment(int marker, const std::string& inside) {
    return '\xFF' + std::string(1, static_cast<char>(marker)) +
           number(static_cast<std::uint32_t>(inside.size() + 2), 2, true) + inside;
}

std::string asCamera(const std::string& jpeg, const Told& told) {
    using namespace std::string_literals;
    return "\xFF\xD8" + segment(0xE1, "Exif\0\0"s + cameraExif(told)) +
           segment(0xE1, "http://ns.adobe.com/xap/1.0/\0<XMP>"s) + segment(0xE2, "MPF\0MAKER"s) +
           segment(0xED, "IPTC") + segment(0xFE, "COMMENT") + jpeg.substr(2) + "BEHIND the picture: a film";
}

std::string chunk(const std::string& type, const std::string& inside) {
    const std::string summed = type + inside;
    std::uint32_t sum = 0xFFFFFFFF; // ISO/IEC 15948, annex D
    for (const char one : summed) {
        sum ^= static_cast<unsigned char>(one);
        for (int bit = 0; bit < 8; ++bit)
            sum = (sum & 1) != 0 ? 0xEDB88320 ^ sum >> 1 : sum >> 1;
    }
    return number(static_cast<std::uint32_t>(inside.size()), 4, true) + summed + number(~sum, 4, true);
}

} // namespace ambit::test
