// What moving costs in one walk: between stands, from the walk's start, to its end.
#pragma once

#include "airframe/airframe.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

namespace ambit::walk {

struct Leg {
    double metres = 0;
    std::int64_t ms = 0; ///< walking, climbing (up and down again), kneeling; the walk rounded up, once, here
    std::int64_t weighsMs = 0; ///< and what the airframe adds for a climb
    bool climb = false;        ///< steps up from the ground
};

/// Stands are numbered as the airframe lists them; start() stands for the walk's start. Immutable; outlives
/// the airframe.
class Legs {
public:
    /// `marked`: what else is in the way.
    Legs(const airframe::Airframe& airframe, const airframe::Walk& walk,
         const std::vector<airframe::Outline>& marked);

    /// The legs of a walk, remembered by the airframe's hash for the next call (shortest ways take a while).
    /// Any thread.
    [[nodiscard]] static std::shared_ptr<const Legs> of(const airframe::Airframe& airframe,
                                                        const airframe::Walk& walk,
                                                        const std::vector<airframe::Outline>& marked);

    [[nodiscard]] std::size_t start() const { return legs.size() - 1; }
    /// nullopt: one can't go there from here, for want of a way on foot or since it is reached from other
    /// stands only.
    [[nodiscard]] const std::optional<Leg>& leg(std::size_t from, std::size_t to) const {
        return legs[from][to];
    }
    /// To the walk's end; straight where there is no way.
    [[nodiscard]] const Leg& home(std::size_t from) const { return homes[from]; }

private:
    std::vector<std::vector<std::optional<Leg>>> legs;
    std::vector<Leg> homes;
};

/// Rounded to the nearest, halves up.
[[nodiscard]] std::int64_t milliseconds(double seconds);

} // namespace ambit::walk
