// A walk as the local searches see it: task after task, each at its place.
#pragma once

#include "sop/problem.hpp"

namespace ambit::sop {

struct Stop {
    Number task = 0;
    Number place = 0;
};
using Sequence = std::vector<Stop>;

/// Of a walk that does all tasks; empty if it doesn't. Stops with nothing to do are passed over.
[[nodiscard]] Sequence sequenceOf(const Problem& problem, const Walk& walk);
/// Whatever may be done where one comes by is done there; stops left with nothing to do are left out.
[[nodiscard]] Walk walkOf(const Problem& problem, const Sequence& sequence);

/// Random numbers, the same on every machine: the standard library's distributions differ.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : state(seed * 0x9e3779b97f4a7c15U | 1U) {}
    /// 0 to end - 1.
    std::size_t below(std::size_t end) {
        state ^= state << 13U;
        state ^= state >> 7U;
        state ^= state << 17U;
        return static_cast<std::size_t>((state >> 16U) % end);
    }

private:
    std::uint64_t state;
};

} // namespace ambit::sop
