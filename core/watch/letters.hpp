// The letters that invitations are written with: base 32 of digits and capitals without I, L, O and U, which
// look or sound like others. Inside core/watch only.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace ambit::watch {

inline constexpr unsigned letterBits = 5;

[[nodiscard]] char letterOf(unsigned value); ///< value < 32

/// 0 to 31, of exactly these letters.
[[nodiscard]] std::optional<unsigned> valueOf(char letter);

/// The same, forgiving a hand and an eye: small letters; I and L for 1, O for 0, U for V.
[[nodiscard]] std::optional<unsigned> tolerantValueOf(char letter);

[[nodiscard]] bool areLetters(std::string_view text);

/// Bits as letters, the first bit first; zeros fill the last letter.
class LetterWriter {
public:
    void add(std::uint64_t value, unsigned bits); ///< the lowest `bits` (1 to 64) of value, the highest first
    void add(std::span<const std::uint8_t> bytes);
    [[nodiscard]] std::string end();

private:
    std::string text;
    unsigned held = 0;
    unsigned count = 0;
};

/// Letters as bits. Precondition: areLetters.
class LetterReader {
public:
    explicit LetterReader(std::string_view its) : text(its) {}
    [[nodiscard]] std::uint64_t take(unsigned bits); ///< zeros beyond the end
    [[nodiscard]] std::size_t left() const;          ///< bits

private:
    std::string_view text;
    std::size_t at = 0; ///< bits
};

/// Two letters that make of `text` a word of a Reed-Solomon code over 32 letters: one wrong letter is always
/// noticed, as are two neighbours that changed places, at any length; any two wrong letters up to 31 in all;
/// of other errors 1023 in 1024.
[[nodiscard]] std::string checkLetters(std::string_view text);

} // namespace ambit::watch
