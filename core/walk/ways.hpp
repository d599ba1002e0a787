// Shortest ways on foot round what one can't walk through.
#pragma once

#include "airframe/airframe.hpp"

#include <optional>
#include <vector>

namespace ambit::walk {

/// The ground round one airframe: its solid parts and keep-out areas. Built once, asked often; immutable.
class Ground {
public:
    explicit Ground(const airframe::Airframe& airframe);

    struct Way {
        std::vector<airframe::Place> places; ///< corners on the way, both ends included
        double metres = 0;
    };

    /// nullopt: there is no way.
    [[nodiscard]] std::optional<Way> way(airframe::Place from, airframe::Place to) const;

private:
    std::vector<airframe::Outline> obstacles;
    std::vector<airframe::Place> corners;
};

} // namespace ambit::walk
