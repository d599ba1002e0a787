#include "measure/sides.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace ambit::measure {
namespace {

/// Between the pixels; beyond the picture its rim carries on.
double greyAt(const Picture& p, double x, double y) {
    x = std::clamp(x, 0.0, p.width - 1.001);
    y = std::clamp(y, 0.0, p.height - 1.001);
    const int ix = static_cast<int>(x);
    const int iy = static_cast<int>(y);
    const std::uint8_t* row = p.pixels + static_cast<std::ptrdiff_t>(iy) * p.stride + ix;
    const double fx = x - ix;
    const double fy = y - iy;
    return (row[0] * (1 - fx) + row[1] * fx) * (1 - fy) +
           (row[p.stride] * (1 - fx) + row[p.stride + 1] * fx) * fy;
}

struct Edge {
    double along = 0;  // pixels from the side's first corner
    double across = 0; // outwards
    double step = 0;   // grey levels over the edge, signed
    double width = 0;  // pixels, a tenth to nine tenths
};

struct Line2 {
    double slope = 0;
    double shift = 0;
    double spread = 0; // robust, pixels
};

/// The steepest place of a profile across the side; each value is a mean of some beside it along the side.
bool steepest(const Picture& p, Pixel at, Pixel along, Pixel out, double reach, double sigma, Edge& edge) {
    const double step = std::max(1.0, sigma);
    const int n = static_cast<int>(reach / step) + 3;
    std::vector<double> grey(2 * static_cast<std::size_t>(n) + 1);
    for (int i = -n; i <= n; ++i) {
        double sum = 0;
        for (int k = -2; k <= 2; ++k)
            sum += greyAt(p, at.x + out.x * i * step + along.x * k * step,
                          at.y + out.y * i * step + along.y * k * step);
        grey[static_cast<std::size_t>(i) + static_cast<std::size_t>(n)] = sum / 5;
    }
    std::vector<double> rise(grey.size());
    std::size_t best = 0;
    for (std::size_t i = 2; i + 2 < grey.size(); ++i) {
        rise[i] = (grey[i + 1] - grey[i - 1]) / 3 + (grey[i + 2] - grey[i - 2]) / 6;
        if (best == 0 || std::abs(rise[i]) > std::abs(rise[best])) best = i;
    }
    if (best < 3 || best + 3 >= grey.size() || std::abs(rise[best]) < 1) return false;
    // The middle of the slope, by its weight: a parabola's top would be drawn to whole steps.
    double sum = 0;
    double moment = 0;
    std::size_t from = best;
    std::size_t to = best;
    while (from > 2 && rise[from - 1] * rise[best] > 0 &&
           std::abs(rise[from - 1]) > 0.5 * std::abs(rise[best]) && best - from < 6)
        --from;
    while (to + 3 < grey.size() && rise[to + 1] * rise[best] > 0 &&
           std::abs(rise[to + 1]) > 0.5 * std::abs(rise[best]) && to - best < 6)
        ++to;
    for (std::size_t i = from; i <= to; ++i) {
        sum += rise[i];
        moment += rise[i] * (static_cast<double>(i) - n);
    }
    edge.across = moment / sum * step;
    edge.step = sum * step;
    // Of an edge blurred like a bell, its height over its steepest: 2.56 / 2.51 of it from a tenth to nine
    // tenths.
    edge.width = std::abs(sum / rise[best]) * step;
    return true;
}

double medianOf(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

/// Starts from the pair of samples that most others agree with, then least squares with Tukey's weights (c
/// = 4.685).
Line2 fitted(const std::vector<Edge>& edges, double within) {
    Line2 line;
    double most = -1;
    for (std::size_t i = 0; i < edges.size(); ++i)
        for (std::size_t j = i + edges.size() / 4 + 1; j < edges.size(); ++j) {
            const double slope = (edges[j].across - edges[i].across) / (edges[j].along - edges[i].along);
            const double shift = edges[i].across - slope * edges[i].along;
            double agree = 0;
            for (const Edge& e : edges) {
                const double off = (e.across - shift - slope * e.along) / within;
                if (std::abs(off) < 1) agree += 1 - off * off;
            }
            if (agree > most) {
                most = agree;
                line.slope = slope;
                line.shift = shift;
            }
        }
    double scale = within / 3;
    for (int round = 0; round < 6; ++round) {
        double w = 0;
        double x = 0;
        double y = 0;
        double xx = 0;
        double xy = 0;
        std::vector<double> offs;
        for (const Edge& e : edges) {
            const double off = e.across - line.shift - line.slope * e.along;
            const double u = off / (4.685 * scale);
            if (std::abs(u) >= 1) continue;
            offs.push_back(std::abs(off));
            const double weight = (1 - u * u) * (1 - u * u);
            w += weight;
            x += weight * e.along;
            y += weight * e.across;
            xx += weight * e.along * e.along;
            xy += weight * e.along * e.across;
        }
        const double det = w * xx - x * x;
        if (offs.size() < 4 || !(det > 0)) break;
        line.slope = (w * xy - x * y) / det;
        line.shift = (y - line.slope * x) / w;
        line.spread = 1.4826 * medianOf(offs);
        scale = std::clamp(line.spread, 0.15, within / 3);
    }
    return line;
}

struct Side {
    Pixel at;
    Pixel along;
    double deviation = 0; // of its place, at an end
    double seen = 0;
};

constexpr int samples = 40;

/// One side from `a` to `b`; its edges' widths are added to `widths`.
bool sideOf(const Picture& p, Pixel a, Pixel b, double reach, std::vector<double>& widths, double& strength,
            Side& side) {
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    const Pixel along{(b.x - a.x) / length, (b.y - a.y) / length};
    const Pixel out{along.y, -along.x}; // clockwise with y down: outwards
    std::vector<Edge> edges;
    for (int i = 0; i < samples; ++i) {
        Edge edge;
        edge.along = length * (0.1 + 0.8 * (i + 0.5) / samples);
        if (steepest(p, {a.x + along.x * edge.along, a.y + along.y * edge.along}, along, out, reach,
                     reach / 14, edge))
            edges.push_back(edge);
    }
    if (edges.size() < samples / 4) return false;
    const double within = std::max(1.5, reach / 6);
    const Line2 line = fitted(edges, within);
    int on = 0;
    int brighter = 0;
    for (const Edge& e : edges)
        if (std::abs(e.across - line.shift - line.slope * e.along) < within) {
            ++on;
            strength += std::abs(e.step) / std::max(1.0, e.width) / (4 * samples);
            brighter += e.step > 0 ? 1 : 0;
            widths.push_back(e.width);
        }
    side.seen = static_cast<double>(std::max(brighter, on - brighter)) / samples;
    side.at = {a.x + out.x * line.shift, a.y + out.y * line.shift};
    const double size = std::hypot(1.0, line.slope);
    side.along = {(along.x + out.x * line.slope) / size, (along.y + out.y * line.slope) / size};
    // A straight line through n points over 0.8 of the side, at its end: 2.4 deviations over root n (the
    // regression's textbook formula), n being fewer than the samples where neighbours share pixels.
    side.deviation = 2.4 * std::max(line.spread, 0.15) / std::sqrt(std::max(4.0, on / 2.0));
    return side.seen > 0.25;
}

/// 1: the outline crosses the corner's bisector where a card's does, 0.41 radii from where its sides would
/// meet; -1 where they meet; 0 neither.
double roundAt(const Picture& p, const Homography& map, Spot corner, Spot inwards, double pixelsAMm) {
    constexpr double arc = (1.4142135623730951 - 1) * card::cornerRadius;
    const double step = std::max(0.12, 0.7 / pixelsAMm);
    double best = 0;
    double where = 0;
    const int steps = static_cast<int>(4.8 / step);
    for (int i = 0; i <= steps; ++i) {
        const double at = i * step - 1.2;
        const auto grey = [&](double d) {
            double sum = 0;
            for (int k = -1; k <= 1; ++k) {
                const double beside = k * 0.25;
                const Pixel q = map.toPicture({corner.x + inwards.x * d - inwards.y * beside,
                                               corner.y + inwards.y * d + inwards.x * beside});
                sum += greyAt(p, q.x, q.y);
            }
            return sum / 3;
        };
        const double rise = std::abs(grey(at + step) - grey(at - step));
        if (rise <= best) continue;
        best = rise;
        where = at;
    }
    if (best < 4) return 0;
    if (std::abs(where - arc) < 0.55) return 1;
    return std::abs(where) < 0.55 ? -1 : 0;
}

} // namespace

bool refined(const Picture& picture, const Quad& quad, double reach, Sides& sides) {
    std::array<Side, 4> side;
    std::vector<double> widths;
    sides.seen = 1;
    sides.seenAll = 0;
    sides.strength = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        if (!sideOf(picture, quad[i], quad[(i + 1) % 4], reach, widths, sides.strength, side[i]))
            return false;
        sides.seen = std::min(sides.seen, side[i].seen);
        sides.seenAll += side[i].seen / 4;
    }
    Quad met;
    for (std::size_t i = 0; i < 4; ++i) {
        const Side& a = side[(i + 3) % 4];
        const Side& b = side[i];
        const double sine = a.along.x * b.along.y - a.along.y * b.along.x;
        if (std::abs(sine) < 0.2) return false;
        const double t = ((b.at.x - a.at.x) * b.along.y - (b.at.y - a.at.y) * b.along.x) / sine;
        met[i] = {a.at.x + t * a.along.x, a.at.y + t * a.along.y};
        sides.corners[i] = {met[i],
                            std::hypot(a.deviation, b.deviation) / std::abs(sine) / 1.4142135623730951};
    }
    if (!goesRound(met) || widths.empty()) return false;
    sides.edgeWidth = medianOf(widths);

    const double first = std::hypot(met[1].x - met[0].x, met[1].y - met[0].y) +
                         std::hypot(met[2].x - met[3].x, met[2].y - met[3].y);
    const double last = std::hypot(met[2].x - met[1].x, met[2].y - met[1].y) +
                        std::hypot(met[3].x - met[0].x, met[3].y - met[0].y);
    const double x = first > last ? card::length : card::width;
    const double y = first > last ? card::width : card::length;
    const Homography map = Homography::of(met, x, y);
    const double pixelsAMm = (first + last) / 2 / (x + y);
    constexpr double root = 0.7071067811865476;
    sides.round = (roundAt(picture, map, {0, 0}, {root, root}, pixelsAMm) +
                   roundAt(picture, map, {x, 0}, {-root, root}, pixelsAMm) +
                   roundAt(picture, map, {x, y}, {-root, -root}, pixelsAMm) +
                   roundAt(picture, map, {0, y}, {root, -root}, pixelsAMm)) /
                  4;
    sides.score = 0.35 * sides.seenAll + 0.3 * sides.seen + 0.35 * std::max(0.0, sides.round);
    return true;
}

} // namespace ambit::measure
