// How much a search may do.
#pragma once

#include <algorithm>
#include <cstdint>
#include <functional>
#include <limits>

namespace ambit::sop {

/// Counted in steps of about a nanosecond on a desktop of 2020, not in seconds: the same input gives the same
/// answer on every machine. `stop` is for who would rather have a limit in time.
class Work {
public:
    static constexpr std::uint64_t endless = std::numeric_limits<std::uint64_t>::max() / 2;

    explicit Work(std::uint64_t most, std::function<bool()> stop = {}) : limit(most), told(std::move(stop)) {}
    /// A part of another's, no more than is left of that.
    Work(Work& whole, std::uint64_t most) : limit(std::min(most, whole.left())), parent(&whole) {}
    Work(const Work&) = delete;
    Work& operator=(const Work&) = delete;
    ~Work() = default;

    void add(std::uint64_t steps) {
        spent += steps;
        if (parent != nullptr) parent->add(steps);
    }
    [[nodiscard]] bool over() const {
        return spent >= limit || (told && told()) || (parent != nullptr && parent->over());
    }
    [[nodiscard]] std::uint64_t left() const { return spent < limit ? limit - spent : 0; }
    [[nodiscard]] std::uint64_t done() const { return spent; }

private:
    std::uint64_t limit;
    std::uint64_t spent = 0;
    std::function<bool()> told;
    Work* parent = nullptr;
};

} // namespace ambit::sop
