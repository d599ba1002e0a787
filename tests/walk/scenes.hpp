// Random ground to walk on: simple polygons, some over or against each other, on the grid of micrometres.
#pragma once

#include "airframe/airframe.hpp"

#include <cmath>
#include <cstdint>
#include <random>
#include <vector>

class Scenes {
public:
    explicit Scenes(std::uint32_t seed) : random(seed) {}

    double number(double low, double high) {
        const double share = static_cast<double>(random()) / static_cast<double>(std::mt19937::max());
        return std::round((low + (high - low) * share) * 1e6) / 1e6;
    }

    ambit::airframe::Place place(double most) {
        const double x = number(-most, most);
        return {x, number(-most, most)};
    }

    /// As seen from its middle each corner is farther round than the one before: simple, and often hollow.
    ambit::airframe::Outline star() {
        const auto middle = place(8);
        const double most = number(0.4, 4);
        const int corners = 3 + static_cast<int>(random() % 7);
        ambit::airframe::Outline outline;
        for (int i = 0; i < corners; ++i) {
            const double angle = 6.283185307 * (i + number(0, 0.8)) / corners;
            const double radius = most * number(0.3, 1);
            outline.push_back({std::round((middle.x + radius * std::cos(angle)) * 1e6) / 1e6,
                               std::round((middle.y + radius * std::sin(angle)) * 1e6) / 1e6});
        }
        return outline;
    }

    /// On whole metres: many of these share edges or corners.
    ambit::airframe::Outline box() {
        const auto whole = [&](int low, int high) {
            return low + static_cast<double>(random() % static_cast<unsigned>(high - low + 1));
        };
        const double left = whole(-7, 5);
        const double bottom = whole(-7, 5);
        const double right = left + whole(1, 3);
        const double top = bottom + whole(1, 3);
        return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
    }

    /// A ring of four walls that overlap.
    std::vector<ambit::airframe::Outline> ring() {
        const auto middle = place(3);
        const double outer = number(2, 5);
        const double inner = outer - number(0.2, 1);
        const auto wall = [&](double left, double bottom, double right, double top) {
            const auto at = [&](double x, double y) {
                return ambit::airframe::Place{std::round((middle.x + x) * 1e6) / 1e6,
                                              std::round((middle.y + y) * 1e6) / 1e6};
            };
            return ambit::airframe::Outline{at(left, bottom), at(right, bottom), at(right, top),
                                            at(left, top)};
        };
        return {wall(-outer, -outer, outer, -inner), wall(-outer, inner, outer, outer),
                wall(-outer, -outer, -inner, outer), wall(inner, -outer, outer, outer)};
    }

    /// Every other one close to some edge, on either side.
    ambit::airframe::Place placeBeside(const std::vector<ambit::airframe::Outline>& outlines) {
        if (outlines.empty() || random() % 2 == 0) return place(9);
        const auto& outline = outlines[random() % outlines.size()];
        const std::size_t at = random() % outline.size();
        const auto a = outline[at];
        const auto b = outline[(at + 1) % outline.size()];
        return {std::round(((a.x + b.x) / 2 + number(-0.3, 0.3)) * 1e6) / 1e6,
                std::round(((a.y + b.y) / 2 + number(-0.3, 0.3)) * 1e6) / 1e6};
    }

    std::vector<ambit::airframe::Outline> outlines() {
        std::vector<ambit::airframe::Outline> all;
        if (random() % 10 == 0) all = ring();
        for (auto stars = random() % 8; stars > 0; --stars)
            all.push_back(star());
        for (auto boxes = random() % 4; boxes > 0; --boxes)
            all.push_back(box());
        return all;
    }

private:
    std::mt19937 random;
};

/// Metres from a place to the nearest of an outline's edges.
inline double metresToEdge(ambit::airframe::Place place, const ambit::airframe::Outline& outline) {
    double least = 1e9;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const auto a = outline[i];
        const auto b = outline[(i + 1) % outline.size()];
        const double x = b.x - a.x;
        const double y = b.y - a.y;
        const double share =
            std::fmin(1, std::fmax(0, ((place.x - a.x) * x + (place.y - a.y) * y) / (x * x + y * y)));
        least = std::fmin(least, std::hypot(place.x - a.x - share * x, place.y - a.y - share * y));
    }
    return least;
}
