#include "base/encoding.hpp"

#include <array>
#include <bit>
#include <cstring>

namespace ambit {

namespace {

constexpr std::string_view plainLetters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
constexpr std::string_view urlLetters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/// Two letters for every twelve bits.
using Pairs = std::array<std::array<char, 2>, 4096>;
Pairs pairsOf(std::string_view letters) {
    Pairs pairs{};
    for (std::size_t i = 0; i < pairs.size(); ++i)
        pairs[i] = {letters[i >> 6U], letters[i & 0x3FU]};
    return pairs;
}

/// Eight bytes, the first highest. Of a loop over bytes compilers make eight loads.
std::uint64_t bigEndian(const char* bytes) {
    std::uint64_t held = 0;
    std::memcpy(&held, bytes, sizeof held);
    return std::endian::native == std::endian::little ? __builtin_bswap64(held) : held;
}

constexpr std::size_t lettersOf(std::size_t bytes) {
    return (bytes * 8 + 5) / 6;
}

void encode(std::string_view bytes, const Pairs& pairs, char* out) {
    const auto put = [&out](const std::array<char, 2>& pair) {
        std::memcpy(out, pair.data(), 2); // one store, as it wouldn't be letter by letter
        out += 2;
    };
    const auto byte = [&](std::size_t i) -> std::uint32_t { return static_cast<unsigned char>(bytes[i]); };
    std::size_t i = 0;
    for (; i + 8 <= bytes.size(); i += 6) { // the first six of eight bytes
        const std::uint64_t held = bigEndian(bytes.data() + i);
        put(pairs[held >> 52U]);
        put(pairs[(held >> 40U) & 0xFFFU]);
        put(pairs[(held >> 28U) & 0xFFFU]);
        put(pairs[(held >> 16U) & 0xFFFU]);
    }
    for (; i + 3 <= bytes.size(); i += 3) {
        const std::uint32_t held = (byte(i) << 16U) | (byte(i + 1) << 8U) | byte(i + 2);
        put(pairs[held >> 12U]);
        put(pairs[held & 0xFFFU]);
    }
    if (bytes.size() - i == 1) put(pairs[byte(i) << 4U]);
    if (bytes.size() - i == 2) {
        const std::uint32_t held = (byte(i) << 10U) | (byte(i + 1) << 2U);
        put(pairs[held >> 6U]);
        *out = pairs[held & 0x3FU][1];
    }
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
        if (value < 0)
            return fail(ErrorCode::syntax, say("This is not base64."), "byte " + std::to_string(i));
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
        return fail(ErrorCode::syntax, say("This base64 doesn't end as it must."),
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

Result<std::string> fromHex(std::string_view text) {
    const auto digit = [](char c) {
        if (c >= '0' && c <= '9') return c - '0';
        return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
    };
    std::string bytes(text.size() / 2, '\0');
    for (std::size_t i = 0; i < text.size(); ++i)
        if (text.size() % 2 != 0 || digit(text[i]) < 0)
            return fail(ErrorCode::syntax, say("This is not hex."), "byte " + std::to_string(i));
    for (std::size_t i = 0; i < bytes.size(); ++i)
        bytes[i] = static_cast<char>(digit(text[2 * i]) * 16 + digit(text[2 * i + 1]));
    return bytes;
}

std::string toBase64(std::string_view bytes) {
    static const Pairs pairs = pairsOf(plainLetters);
    std::string text(lettersOf(bytes.size()), '\0');
    encode(bytes, pairs, text.data());
    while (text.size() % 4 != 0)
        text += '=';
    return text;
}

std::size_t toBase64Url(std::string_view bytes, char* to) {
    static const Pairs pairs = pairsOf(urlLetters);
    encode(bytes, pairs, to);
    return lettersOf(bytes.size());
}

std::string toBase64Url(std::string_view bytes) {
    std::string text(lettersOf(bytes.size()), '\0');
    toBase64Url(bytes, text.data());
    return text;
}

Result<std::string> fromBase64(std::string_view text) {
    if (text.size() % 4 != 0) {
        return fail(ErrorCode::syntax, say("This base64 lacks its padding."),
                    "byte " + std::to_string(text.size()));
    }
    const std::size_t padding = text.ends_with("==") ? 2 : text.ends_with('=') ? 1 : 0;
    return decode(text.substr(0, text.size() - padding), plainLetters);
}

Result<std::string> fromBase64Url(std::string_view text) {
    return decode(text, urlLetters);
}

} // namespace ambit
