// A set of tasks of a fixed number of words: the search copies and compares millions of them.
#pragma once

#include <array>
#include <bit>
#include <cstdint>
#include <vector>

namespace ambit::sop {

template<std::size_t words> struct Bits {
    std::array<std::uint64_t, words> word{};

    Bits() = default;
    explicit Bits(const std::vector<std::uint64_t>& row) {
        for (std::size_t w = 0; w < row.size() && w < words; ++w)
            word[w] = row[w];
    }

    [[nodiscard]] bool has(std::size_t bit) const { return (word[bit / 64] >> (bit % 64) & 1) != 0; }
    void add(std::size_t bit) { word[bit / 64] |= std::uint64_t{1} << (bit % 64); }
    [[nodiscard]] bool within(const Bits& other) const {
        for (std::size_t w = 0; w < words; ++w)
            if ((word[w] & ~other.word[w]) != 0) return false;
        return true;
    }
    /// How many of the first `end` bits are not in the set.
    [[nodiscard]] int missingBelow(std::size_t end) const {
        int missing = 0;
        for (std::size_t w = 0; w < end / 64; ++w)
            missing += std::popcount(~word[w]);
        if (end % 64 != 0) missing += std::popcount(~word[end / 64] & ((std::uint64_t{1} << (end % 64)) - 1));
        return missing;
    }
    [[nodiscard]] std::size_t hash() const {
        std::uint64_t h = 0x9e3779b97f4a7c15U;
        for (const std::uint64_t w : word) {
            h = (h ^ w) * 0xff51afd7ed558ccdU;
            h ^= h >> 32;
        }
        return static_cast<std::size_t>(h);
    }
    friend bool operator==(const Bits&, const Bits&) = default;
};

} // namespace ambit::sop
