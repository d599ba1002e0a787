// Shortest ways on foot round what one can't walk through. Exact: no way is longer than it must be, beyond
// the rounding of a double.
#pragma once

#include "walk/taken.hpp"

#include <optional>
#include <vector>

namespace ambit::walk {

/// The ground round one airframe. In the way are its solid parts and keep-out areas and what else is marked,
/// each grown on every side by the room a body needs (Costs::clearanceMetres), then united. Built once, asked
/// often; immutable; all of it on a grid of micrometres.
///
/// Ground that the grown outlines close in stays free, and no way leads into it or out of it. Where two of
/// them touch there is no way between.
///
/// One stands closer to what one feels than one walks by it. A place in the **margin**, within the grown
/// outlines and outside the true ones, has one way out: straight to the nearest point of the open ground's
/// edge, of those square to it or at its corners that are seen past the true outlines; where none is seen, to
/// that of closed-in ground; or none. It counts as walked, both ways. Two that come out square to the same
/// edge, both no deeper than the clearance less toleranceMetres, needn't come out: one goes along the edge
/// and in or out by the difference. Inside a true outline, or where two of them touch, nobody stands: no way.
///
/// So metres(a, a) = 0, metres(a, b) = metres(b, a) and metres(a, c) <= metres(a, b) + metres(b, c), up to
/// rounding, for all places from and to which there is a way.
class Ground {
public:
    /// A grown corner is an arc of straight edges; a way keeps from the true outlines by the clearance less
    /// this.
    static constexpr double toleranceMetres = 0.001;

    explicit Ground(const airframe::Airframe& airframe, const std::vector<airframe::Outline>& marked = {});
    /// Simple polygons by themselves, within ±1000 m.
    explicit Ground(const std::vector<airframe::Outline>& outlines, double clearanceMetres = 0);

    struct Way {
        std::vector<airframe::Place> places; ///< corners on the way, both ends included, to the micrometre
        double metres = 0;
    };

    /// nullopt: there is no way.
    [[nodiscard]] std::optional<Way> way(airframe::Place from, airframe::Place to) const;
    /// Metres of the way from each place to each, much faster than one by one; infinite where there is no
    /// way.
    [[nodiscard]] std::vector<std::vector<double>> metres(const std::vector<airframe::Place>& places) const;

    /// What ways keep out of, grown and united: what is taken lies left of each edge, so that outer edges run
    /// against the clock and those of holes with it.
    [[nodiscard]] const std::vector<airframe::Outline>& obstacles() const { return outlines; }

private:
    /// Where a place has its way out to the open ground; at the place itself if it is open.
    struct Exit {
        Spot place;
        Spot at;
        double depth = 0;                ///< m from the place
        std::optional<std::size_t> edge; ///< left square to this edge, counted through all rings, and shallow
    };
    struct Seen {
        std::size_t corner = 0;
        double metres = 0;
    };
    struct Bends {
        std::vector<Spot> spots;
        double metres = 0;
    };
    struct Reach { ///< shortest ways from one place to every corner; infinite: none
        std::vector<double> metres;
        std::vector<std::size_t> via;
    };

    [[nodiscard]] std::optional<Exit> exitOf(const airframe::Place& place) const;
    [[nodiscard]] std::vector<Seen> sightOf(Spot from) const;
    [[nodiscard]] Reach reachFrom(const std::vector<Seen>& sight) const;
    [[nodiscard]] std::optional<Bends> bendsBetween(Spot from, Spot to) const;
    [[nodiscard]] bool areSideBySide(const Exit& one, const Exit& other) const;
    [[nodiscard]] static double sideways(const Exit& one, const Exit& other);
    [[nodiscard]] static airframe::Place turnBeside(const Exit& one, const Exit& other);

    double clearance;
    Taken solid; ///< the true outlines, united
    Taken grown;
    std::vector<Taken::Corner> corners;  ///< of the grown ones
    std::vector<std::vector<Seen>> seen; ///< from each corner: the others a shortest way can come from
    std::vector<airframe::Outline> outlines;
};

} // namespace ambit::walk
