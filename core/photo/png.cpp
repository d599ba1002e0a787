#include "photo/png.hpp"

#include "photo/bounds.hpp"

#include <algorithm>
#include <array>

namespace ambit::photo {

namespace {

constexpr std::size_t signatureBytes = 8;
constexpr std::size_t frameBytes = 12; ///< length, type and checksum of a chunk
/// What pixels are made of, and what colours they mean.
constexpr std::array<std::string_view, 9> shown{"IHDR", "PLTE", "IDAT", "IEND", "tRNS",
                                                "gAMA", "cHRM", "sRGB", "iCCP"};

/// ISO/IEC 15948, annex D: of a chunk's type and what is inside.
std::uint32_t checksum(std::string_view bytes) {
    static constexpr auto table = [] {
        std::array<std::uint32_t, 256> all{};
        for (std::uint32_t i = 0; i < all.size(); ++i) {
            all[i] = i;
            for (int bit = 0; bit < 8; ++bit)
                all[i] = (all[i] & 1) != 0 ? 0xEDB88320 ^ all[i] >> 1 : all[i] >> 1;
        }
        return all;
    }();
    std::uint32_t sum = 0xFFFFFFFF;
    for (const char one : bytes)
        sum = table[(sum ^ static_cast<unsigned char>(one)) & 0xFF] ^ sum >> 8;
    return ~sum;
}

std::uint32_t numberAt(std::string_view bytes, std::size_t at) {
    std::uint32_t value = 0;
    for (std::size_t i = at; i < at + 4; ++i)
        value = value << 8 | static_cast<unsigned char>(bytes[i]);
    return value;
}

} // namespace

Result<Png> readPng(std::string_view bytes) {
    if (kindOf(bytes) != Kind::png) return damaged();
    Png png;
    png.bare = bytes.substr(0, signatureBytes);
    for (std::size_t at = signatureBytes;;) {
        if (bytes.size() - at < frameBytes) return damaged();
        const std::size_t length = numberAt(bytes, at);
        if (length > bytes.size() - at - frameBytes) return damaged();
        const std::string_view type = bytes.substr(at + 4, 4);
        const std::string_view inside = bytes.substr(at + 8, length);
        if ((at == signatureBytes) != (type == "IHDR")) return damaged();
        if (type == "IHDR") {
            if (length != 13) return damaged();
            if (auto fits = checkSize(numberAt(inside, 0), numberAt(inside, 4)); !fits)
                return tl::unexpected(fits.error());
            png.width = static_cast<int>(numberAt(inside, 0));
            png.height = static_cast<int>(numberAt(inside, 4));
        }
        if (checksum(bytes.substr(at + 4, length + 4)) != numberAt(bytes, at + 8 + length)) return damaged();
        if (type == "acTL")
            return fail(ErrorCode::unsupported, say("This file holds more than one picture."), "",
                        say("Choose another file."));
        if (type == "eXIf") png.exif = readExif(inside);
        if (std::find(shown.begin(), shown.end(), type) != shown.end())
            png.bare += bytes.substr(at, length + frameBytes);
        at += length + frameBytes;
        if (type != "IEND") continue;
        png.end = at;
        return png;
    }
}

} // namespace ambit::photo
