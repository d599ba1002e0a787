#include "watch/letters.hpp"

#include <array>

namespace ambit::watch {

namespace {

constexpr std::string_view alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
static_assert(alphabet.size() == 1U << letterBits);

constexpr unsigned field = 32;
constexpr unsigned polynomial = 0b100101; ///< x^5 + x^2 + 1, primitive: x has order 31

/// Times x in the field of 32.
constexpr unsigned timesX(unsigned a) {
    const unsigned doubled = a << 1U;
    return (doubled & field) != 0 ? doubled ^ polynomial : doubled;
}

} // namespace

char letterOf(unsigned value) {
    return alphabet[value % field];
}

std::optional<unsigned> valueOf(char letter) {
    const std::size_t at = alphabet.find(letter);
    return at == std::string_view::npos ? std::nullopt : std::optional(static_cast<unsigned>(at));
}

std::optional<unsigned> tolerantValueOf(char letter) {
    if (letter >= 'a' && letter <= 'z') letter = static_cast<char>(letter - 'a' + 'A');
    if (letter == 'I' || letter == 'L') letter = '1';
    if (letter == 'O') letter = '0';
    if (letter == 'U') letter = 'V';
    return valueOf(letter);
}

bool areLetters(std::string_view text) {
    return text.find_first_not_of(alphabet) == std::string_view::npos;
}

void LetterWriter::add(std::uint64_t value, unsigned bits) {
    while (bits > 0) {
        --bits;
        held = (held << 1U) | static_cast<unsigned>((value >> bits) & 1U);
        if (++count < letterBits) continue;
        text += letterOf(held);
        held = count = 0;
    }
}

void LetterWriter::add(std::span<const std::uint8_t> bytes) {
    for (const std::uint8_t byte : bytes)
        add(byte, 8);
}

std::string LetterWriter::end() {
    while (count != 0)
        add(0, 1);
    return text;
}

std::uint64_t LetterReader::take(unsigned bits) {
    std::uint64_t value = 0;
    for (; bits > 0; --bits, ++at) {
        const std::size_t letter = at / letterBits;
        const unsigned its = letter < text.size() ? valueOf(text[letter]).value_or(0) : 0;
        value = (value << 1U) | ((its >> (letterBits - 1 - at % letterBits)) & 1U);
    }
    return value;
}

std::size_t LetterReader::left() const {
    const std::size_t all = text.size() * letterBits;
    return all > at ? all - at : 0;
}

/// The remainder of text·x² by (x - a)(x - a²), a the field's generator; a + a² = 0b00110, a³ = 0b01000.
std::string checkLetters(std::string_view text) {
    const auto timesSum = [](unsigned v) { return timesX(v) ^ timesX(timesX(v)); };
    const auto timesProduct = [](unsigned v) { return timesX(timesX(timesX(v))); };
    unsigned high = 0;
    unsigned low = 0;
    for (const char letter : text) {
        const unsigned out = high ^ valueOf(letter).value_or(0);
        high = low ^ timesSum(out);
        low = timesProduct(out);
    }
    return {letterOf(high), letterOf(low)};
}

} // namespace ambit::watch
