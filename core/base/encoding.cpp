#include "base/encoding.hpp"

#include <array>

namespace ambit {

namespace {

constexpr std::string_view plainLetters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
constexpr std::string_view urlLetters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

std::string encode(std::string_view bytes, std::string_view letters) {
    std::string text;
    text.reserve((bytes.size() + 2) / 3 * 4);
    std::uint32_t held = 0;
    unsigned bits = 0;
    for (const char c : bytes) {
        held = (held << 8U) | static_cast<unsigned char>(c);
        bits += 8;
        while (bits >= 6) {
            bits -= 6;
            text += letters[(held >> bits) & 0x3FU];
        }
    }
    if (bits > 0) text += letters[(held << (6 - bits)) & 0x3FU];
    return text;
}

std::array<std::int8_t, 256> valuesOf(std::string_view letters) {
    std::array<std::int8_t, 256> values{};
    values.fill(-1);
    for (std::size_t i = 0; i < letters.size(); ++i) {
        values[static_cast<unsigned char>(letters[i])] = static_cast<std::int8_t>(i);
    }
    return values;
}

/// Decodes text without padding.
Result<std::string> decode(std::string_view text, std::string_view letters) {
    const auto values = valuesOf(letters);
    std::string bytes;
    bytes.reserve(text.size() / 4 * 3 + 2);
    std::uint32_t held = 0;
    unsigned bits = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const std::int8_t value = values[static_cast<unsigned char>(text[i])];
        if (value < 0) return fail(ErrorCode::syntax, "This is not base64.", "byte " + std::to_string(i));
        held = (held << 6U) | static_cast<std::uint32_t>(value);
        bits += 6;
        if (bits >= 8) {
            bits -= 8;
            bytes += static_cast<char>((held >> bits) & 0xFFU);
        }
    }
    // A lone last letter carries no byte, and bits that carry none must be zero: else two texts would mean
    // one value.
    if (bits >= 6 || (held & ((1U << bits) - 1)) != 0) {
        return fail(ErrorCode::syntax, "This base64 doesn't end as it must.",
                    "byte " + std::to_string(text.size()));
    }
    return bytes;
}

} // namespace

std::string toHex(std::span<const std::uint8_t> bytes) {
    static constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    text.reserve(bytes.size() * 2);
    for (const std::uint8_t byte : bytes) {
        text += digits[byte >> 4U];
        text += digits[byte & 0xFU];
    }
    return text;
}

std::string toBase64(std::string_view bytes) {
    std::string text = encode(bytes, plainLetters);
    while (text.size() % 4 != 0)
        text += '=';
    return text;
}

std::string toBase64Url(std::string_view bytes) {
    return encode(bytes, urlLetters);
}

Result<std::string> fromBase64(std::string_view text) {
    if (text.size() % 4 != 0) {
        return fail(ErrorCode::syntax, "This base64 lacks its padding.",
                    "byte " + std::to_string(text.size()));
    }
    const std::size_t padding = text.ends_with("==") ? 2 : text.ends_with('=') ? 1 : 0;
    return decode(text.substr(0, text.size() - padding), plainLetters);
}

Result<std::string> fromBase64Url(std::string_view text) {
    return decode(text, urlLetters);
}

} // namespace ambit
