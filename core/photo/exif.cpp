#include "photo/exif.hpp"

#include <algorithm>
#include <cstdint>
#include <optional>

namespace ambit::photo {

namespace {

constexpr std::uint32_t orientationTag = 0x0112;
constexpr std::uint32_t exifIfdTag = 0x8769;
constexpr std::uint32_t versionTag = 0x9000;
constexpr std::uint32_t takenAtTag = 0x9003;
constexpr std::uint32_t offsetTag = 0x9011;

constexpr std::uint32_t asciiType = 2;
constexpr std::uint32_t shortType = 3;
constexpr std::uint32_t longType = 4;
constexpr std::uint32_t undefinedType = 7;

constexpr std::uint32_t entryBytes = 12;
constexpr std::uint32_t headBytes = 8;                    ///< of a TIFF file
constexpr std::size_t mostBlock = (std::size_t{1} << 16); ///< what a JPEG's segment can hold

/// Reads only what lies in the block; beyond it there are zeros.
class Tiff {
public:
    explicit Tiff(std::string_view block)
        : bytes(block.substr(0, mostBlock)), isBig(block.starts_with("MM")) {}

    [[nodiscard]] bool isOne() const {
        return (isBig || bytes.starts_with("II")) && number(2, 2) == 42 && bytes.size() >= headBytes;
    }
    [[nodiscard]] std::uint32_t number(std::size_t at, std::size_t width) const {
        std::uint32_t value = 0;
        for (std::size_t i = 0; i < width; ++i) {
            const std::size_t from = at + (isBig ? i : width - 1 - i);
            value = value << 8 | (from < bytes.size() ? static_cast<unsigned char>(bytes[from]) : 0U);
        }
        return value;
    }
    /// Where in this directory the tag's entry begins, if it is of that type.
    [[nodiscard]] std::optional<std::size_t> entry(std::size_t directory, std::uint32_t tag,
                                                   std::uint32_t type) const {
        if (directory < headBytes || directory + 2 > bytes.size()) return std::nullopt;
        const std::size_t most = (bytes.size() - directory - 2) / entryBytes;
        const std::size_t count = std::min<std::size_t>(number(directory, 2), most);
        for (std::size_t i = 0; i < count; ++i) {
            const std::size_t at = directory + 2 + i * entryBytes;
            if (number(at, 2) == tag) return number(at + 2, 2) == type ? std::optional(at) : std::nullopt;
        }
        return std::nullopt;
    }
    /// An ASCII value of exactly that many characters and the zero after them; "": it isn't.
    [[nodiscard]] std::string_view text(std::size_t directory, std::uint32_t tag, std::size_t length) const {
        const auto at = entry(directory, tag, asciiType);
        if (!at || number(*at + 4, 4) != length + 1) return {};
        const std::size_t from = number(*at + 8, 4); // longer than the 4 bytes that would fit in there
        if (from > bytes.size() || bytes.size() - from < length) return {};
        return bytes.substr(from, length);
    }

private:
    std::string_view bytes;
    bool isBig;
};

/// '0' in the pattern: a digit; '+': a sign; anything else: itself.
bool isLike(std::string_view text, std::string_view pattern) {
    return std::equal(text.begin(), text.end(), pattern.begin(), pattern.end(), [](char its, char asked) {
        if (asked == '0') return its >= '0' && its <= '9';
        return asked == '+' ? its == '+' || its == '-' : its == asked;
    });
}

int numberAt(std::string_view text, std::size_t at) {
    return (text[at] - '0') * 10 + (text[at + 1] - '0');
}

/// No other bytes than a time's get through.
bool isTime(std::string_view text) {
    if (!isLike(text, "0000:00:00 00:00:00")) return false;
    const int month = numberAt(text, 5);
    const int day = numberAt(text, 8);
    return month >= 1 && month <= 12 && day >= 1 && day <= 31 && numberAt(text, 11) < 24 &&
           numberAt(text, 14) < 60 && numberAt(text, 17) <= 60;
}

bool isOffset(std::string_view text) {
    return isLike(text, "+00:00") && numberAt(text, 1) <= 14 && numberAt(text, 4) < 60;
}

void put(std::string& out, std::uint32_t value, int width) {
    for (int i = width - 1; i >= 0; --i)
        out += static_cast<char>(value >> (8 * i) & 0xFF);
}

void putEntry(std::string& out, std::uint32_t tag, std::uint32_t type, std::uint32_t count,
              std::uint32_t value) {
    put(out, tag, 2);
    put(out, type, 2);
    put(out, count, 4);
    put(out, value, 4);
}

} // namespace

Exif readExif(std::string_view block) {
    Exif exif;
    const Tiff tiff(block);
    if (!tiff.isOne()) return exif;
    const std::size_t first = tiff.number(4, 4);
    if (const auto at = tiff.entry(first, orientationTag, shortType)) {
        const auto value = tiff.number(*at + 8, 2);
        if (value >= 1 && value <= 8) exif.orientation = static_cast<int>(value);
    }
    const auto inner = tiff.entry(first, exifIfdTag, longType);
    if (!inner) return exif;
    const std::size_t directory = tiff.number(*inner + 8, 4);
    if (const auto time = tiff.text(directory, takenAtTag, 19); isTime(time)) exif.takenAt = time;
    if (const auto offset = tiff.text(directory, offsetTag, 6); !exif.takenAt.empty() && isOffset(offset))
        exif.offset = offset;
    return exif;
}

std::string writeExif(const Exif& exif) {
    if (exif.takenAt.empty()) return {};
    const std::uint32_t count = exif.offset.empty() ? 2 : 3;
    const std::uint32_t directory = headBytes + 2 + entryBytes + 4; // after the first one, of one entry
    const std::uint32_t texts = directory + 2 + count * entryBytes + 4;
    std::string out{"MM\0*", 4};
    put(out, headBytes, 4);
    put(out, 1, 2);
    putEntry(out, exifIfdTag, longType, 1, directory);
    put(out, 0, 4); // no further directory: no thumbnail
    put(out, count, 2);
    putEntry(out, versionTag, undefinedType, 4, 0x30323331); // "0231"
    putEntry(out, takenAtTag, asciiType, 20, texts);
    if (!exif.offset.empty()) putEntry(out, offsetTag, asciiType, 7, texts + 20);
    put(out, 0, 4);
    out += exif.takenAt;
    out += '\0';
    if (!exif.offset.empty()) {
        out += exif.offset;
        out += '\0';
    }
    return out;
}

std::string_view exifInHeif(std::string_view heif) {
    constexpr std::string_view signature("Exif\0\0", 6); // a JPEG's, and a HEIF's item begins with it, too
    for (std::size_t at = heif.find(signature); at != std::string_view::npos;
         at = heif.find(signature, at + 1)) {
        const std::string_view block = heif.substr(at + signature.size());
        if (block.starts_with(std::string_view("MM\0*", 4)) ||
            block.starts_with(std::string_view("II*\0", 4)))
            return block.substr(0, mostBlock);
    }
    return {};
}

} // namespace ambit::photo
