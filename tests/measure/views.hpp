// Invented views of a card: a camera that looks at a plane from anywhere above it, and what it would see.
#pragma once

#include "measure/plane.hpp"

#include <cmath>
#include <random>

namespace ambit::measure::views {

using Random = std::mt19937_64;

inline double uniform(Random& random, double from, double to) {
    return from + (to - from) * static_cast<double>(random() >> 11) * 0x1.0p-53;
}

/// Box and Muller; the standard library's differs between machines.
inline double normal(Random& random) {
    const double u = uniform(random, 0x1.0p-53, 1);
    return std::sqrt(-2 * std::log(u)) * std::cos(6.283185307179586 * uniform(random, 0, 1));
}

/// A camera of `focal` pixels over a 4000 × 3000 picture; the plane's x and y in mm, the card's middle at (0,
/// 0).
struct View {
    Frame frame{4000, 3000};
    double focal = 3000;
    std::array<double, 9> turned{}; // plane to camera, by rows
    std::array<double, 3> place{};  // of the plane's origin, before the camera

    [[nodiscard]] Pixel see(Spot s) const {
        std::array<double, 3> p{};
        for (std::size_t i = 0; i < 3; ++i)
            p[i] = turned[3 * i] * s.x + turned[3 * i + 1] * s.y + place[i];
        return {(frame.width - 1) / 2.0 + focal * p[0] / p[2],
                (frame.height - 1) / 2.0 + focal * p[1] / p[2]};
    }
    /// Long side first, the first corner at (-length / 2, -width / 2).
    [[nodiscard]] Quad card() const {
        const double x = card::length / 2;
        const double y = card::width / 2;
        return {see({-x, -y}), see({x, -y}), see({x, y}), see({-x, y})};
    }
};

/// Tilt at most so many degrees, the card's long side some `share` of the picture's width.
inline View anyView(Random& random, double atMostTilted, double share) {
    View view;
    view.focal = uniform(random, 0.65, 1.6) * view.frame.width;
    const double tilt = uniform(random, 0, atMostTilted) / 57.29577951308232;
    const double axis = uniform(random, 0, 6.283185307179586);
    const double spin = uniform(random, 0, 6.283185307179586);
    const double c = std::cos(tilt);
    const double s = std::sin(tilt);
    const double ax = std::cos(axis);
    const double ay = std::sin(axis);
    // About the axis (ax, ay, 0), after a turn in the plane.
    const std::array<double, 9> r{c + ax * ax * (1 - c),
                                  ax * ay * (1 - c),
                                  ay * s,
                                  ax * ay * (1 - c),
                                  c + ay * ay * (1 - c),
                                  -ax * s,
                                  -ay * s,
                                  ax * s,
                                  c};
    const double cs = std::cos(spin);
    const double sn = std::sin(spin);
    for (std::size_t i = 0; i < 3; ++i) {
        view.turned[3 * i] = r[3 * i] * cs + r[3 * i + 1] * sn;
        view.turned[3 * i + 1] = -r[3 * i] * sn + r[3 * i + 1] * cs;
        view.turned[3 * i + 2] = r[3 * i + 2];
    }
    const double away = view.focal * card::length / (share * view.frame.width);
    view.place = {uniform(random, -0.2, 0.2) * away * view.frame.width / view.focal,
                  uniform(random, -0.2, 0.2) * away * view.frame.height / view.focal, away};
    return view;
}

/// Touched or found with that standard deviation.
inline Mark marked(Random& random, Pixel at, double deviation) {
    return {{at.x + deviation * normal(random), at.y + deviation * normal(random)}, deviation};
}

} // namespace ambit::measure::views
