// Shortest ways on foot round what one can't walk through.
#pragma once

#include "airframe/airframe.hpp"

#include <optional>
#include <vector>

namespace ambit::walk {

/// The ground round one airframe: its solid parts and keep-out areas, and what else is marked as in the way.
/// Built once, asked often; immutable.
class Ground {
public:
    explicit Ground(const airframe::Airframe& airframe, const std::vector<airframe::Outline>& marked = {});

    struct Way {
        std::vector<airframe::Place> places; ///< corners on the way, both ends included
        double metres = 0;
    };

    /// nullopt: there is no way.
    [[nodiscard]] std::optional<Way> way(airframe::Place from, airframe::Place to) const;
    /// Metres of the way from each place to each, much faster than one by one; infinite where there is no
    /// way.
    [[nodiscard]] std::vector<std::vector<double>> metres(const std::vector<airframe::Place>& places) const;

private:
    struct Obstacle {
        airframe::Outline outline;
        airframe::Place low, high; ///< its bounding box
    };
    struct Reach { ///< shortest ways from one place to every corner
        std::vector<double> metres;
        std::vector<std::size_t> via;
    };

    [[nodiscard]] bool inside(airframe::Place place) const;
    [[nodiscard]] bool buried(airframe::Place place) const;
    [[nodiscard]] bool passable(airframe::Place place, airframe::Place direction) const;
    [[nodiscard]] bool free(airframe::Place from, airframe::Place to) const;
    [[nodiscard]] std::vector<double> sightOf(airframe::Place from) const;
    [[nodiscard]] Reach reachFrom(std::vector<double> sight) const;

    std::vector<Obstacle> obstacles;
    std::vector<airframe::Place> corners;     ///< where a shortest way can bend
    std::vector<std::vector<double>> lengths; ///< between corners that see each other; infinite: they don't
};

} // namespace ambit::walk
