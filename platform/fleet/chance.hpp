// Chance that comes out the same on every machine: the standard library's distributions needn't.
#pragma once

#include <cstdint>
#include <initializer_list>
#include <vector>

namespace ambit::fleet {

/// Numbers from a seed. Two of them with different seeds have nothing to do with each other, so that each
/// aircraft can have its own, whoever makes it and when.
class Chance {
public:
    explicit Chance(std::initializer_list<std::uint64_t> seeds) {
        for (const std::uint64_t seed : seeds)
            state = mixed(state + seed + step);
    }

    std::uint64_t next() {
        state += step;
        return mixed(state);
    }
    /// From 0 up to but not 1.
    double share() { return static_cast<double>(next() >> 11U) * 0x1.0p-53; }
    double between(double low, double high) { return low + (high - low) * share(); }
    /// Both ends belong to it.
    int whole(int low, int high) { return low + static_cast<int>(share() * (high - low + 1)); }
    bool happens(double probability) { return share() < probability; }
    /// The list is not empty.
    template<class List> const auto& of(const List& list) {
        return list[static_cast<std::size_t>(whole(0, static_cast<int>(list.size()) - 1))];
    }

private:
    // Weyl steps of the golden ratio, then a finalizer that lets each bit reach every other.
    static constexpr std::uint64_t step = 0x9E3779B97F4A7C15U;
    static std::uint64_t mixed(std::uint64_t bits) {
        bits = (bits ^ (bits >> 30U)) * 0xBF58476D1CE4E5B9U;
        bits = (bits ^ (bits >> 27U)) * 0x94D049BB133111EBU;
        return bits ^ (bits >> 31U);
    }

    std::uint64_t state = 0;
};

} // namespace ambit::fleet
