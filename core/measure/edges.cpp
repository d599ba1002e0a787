#include "measure/edges.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

constexpr std::size_t stretches = 32;
constexpr std::size_t parts = 8;     // of these, for profiles
constexpr double margin = 0.09;      // of the side, left out at either end: corners are round
constexpr std::size_t mostEdges = 5; // of a side
constexpr double widestTurn = 0.06;  // of an edge against the supposed side

double medianOf(std::vector<double> values) {
    if (values.empty()) return 0;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

/// The side's surroundings: one row a stretch of it, each the mean of some pixels side by side.
struct Strip {
    Pixel a;
    Pixel along;
    Pixel out;
    double length = 0;
    int half = 0; // columns, a pixel apart, on either side of the middle one
    std::size_t columns = 0;
    std::vector<double> grey;
    std::vector<double> rise; // grey levels a pixel
    std::vector<double> root; // its root, signed
    double noise = 0;         // of rise: median of its size
    double rootNoise = 0;

    [[nodiscard]] double where(std::size_t row) const {
        return length * (margin + (1 - 2 * margin) * (static_cast<double>(row) + 0.5) / stretches);
    }
    [[nodiscard]] std::size_t index(std::size_t row, int column) const {
        return row * columns + static_cast<std::size_t>(column + half);
    }
};

Strip stripAlong(const Picture& p, Pixel a, Pixel b, double reach) {
    Strip s;
    s.a = a;
    s.length = std::hypot(b.x - a.x, b.y - a.y);
    s.along = {(b.x - a.x) / s.length, (b.y - a.y) / s.length};
    s.out = {s.along.y, -s.along.x};
    s.half = static_cast<int>(std::ceil(reach)) + 4;
    s.columns = 2 * static_cast<std::size_t>(s.half) + 1;
    s.grey.resize(stretches * s.columns);
    s.rise.resize(s.grey.size());
    s.root.resize(s.grey.size());
    const double rowLength = s.length * (1 - 2 * margin) / stretches;
    const int beside = std::clamp(static_cast<int>(rowLength), 1, 9);
    for (std::size_t row = 0; row < stretches; ++row)
        for (int k = 0; k < beside; ++k) {
            const double u = s.where(row) + ((k + 0.5) / beside - 0.5) * rowLength;
            for (int c = -s.half; c <= s.half; ++c) {
                const double v = c;
                s.grey[s.index(row, c)] +=
                    greyAt(p, {a.x + s.along.x * u + s.out.x * v, a.y + s.along.y * u + s.out.y * v}) /
                    beside;
            }
        }
    std::vector<double> sizes;
    for (std::size_t row = 0; row < stretches; ++row)
        for (int c = -s.half + 2; c <= s.half - 2; ++c) {
            const double* g = &s.grey[s.index(row, c)];
            const double rise = (g[1] - g[-1]) / 3 + (g[2] - g[-2]) / 6;
            s.rise[s.index(row, c)] = rise;
            s.root[s.index(row, c)] = std::copysign(std::sqrt(std::abs(rise)), rise);
            sizes.push_back(std::abs(rise));
        }
    s.noise = std::max(0.15, medianOf(sizes));
    s.rootNoise = std::sqrt(s.noise);
    return s;
}

struct Seed {
    double from = 0; // columns, at the first and last row
    double to = 0;
    double evidence = 0;
};

/// Lines from every column of the first row to every one of the last; those better than all beside them.
std::vector<Seed> seedsOf(const Strip& s) {
    const int reach = s.half - 3;
    const int slack = std::min(2 * reach, 2 + static_cast<int>(s.length * widestTurn));
    const int wide = 2 * reach + 1;
    const auto cell = [&](int from, int to) {
        return static_cast<std::size_t>(from + reach) * static_cast<std::size_t>(wide) +
               static_cast<std::size_t>(to + reach);
    };
    std::vector<double> evidence(static_cast<std::size_t>(wide * wide));
    for (int from = -reach; from <= reach; ++from)
        for (int to = std::max(-reach, from - slack); to <= std::min(reach, from + slack); ++to) {
            double sum = 0;
            double size = 0;
            for (std::size_t row = 0; row < stretches; ++row) {
                const double at =
                    from + (to - from) * (static_cast<double>(row) + 0.5) / static_cast<double>(stretches);
                const double root = s.root[s.index(row, static_cast<int>(std::floor(at + 0.5)))];
                sum += root;
                size += std::max(0.0, std::abs(root) - 1.4 * s.rootNoise);
            }
            evidence[cell(from, to)] = std::max(std::abs(sum), size) / stretches;
        }
    std::vector<Seed> seeds;
    for (int from = -reach; from <= reach; ++from)
        for (int to = std::max(-reach, from - slack); to <= std::min(reach, from + slack); ++to) {
            const double here = evidence[cell(from, to)];
            if (here < 0.8 * s.rootNoise) continue;
            bool top = true;
            for (int i = std::max(-reach, from - 2); i <= std::min(reach, from + 2) && top; ++i)
                for (int j = std::max(-reach, to - 2); j <= std::min(reach, to + 2) && top; ++j)
                    top = evidence[cell(i, j)] <= here;
            if (top) seeds.push_back({static_cast<double>(from), static_cast<double>(to), here});
        }
    std::sort(seeds.begin(), seeds.end(),
              [](const Seed& a, const Seed& b) { return a.evidence > b.evidence; });
    return seeds;
}

/// What of the edge is seen in one row.
struct Sample {
    double along = 0;  // pixels from the side's first corner
    double across = 0; // outwards
    double rise = 0;   // the steepest
    std::size_t row = 0;
};

std::vector<Sample> samplesBy(const Strip& s, double shift, double slope, double within) {
    std::vector<Sample> samples;
    for (std::size_t row = 0; row < stretches; ++row) {
        const double u = s.where(row);
        const double at = shift + slope * u;
        const int from = std::max(-s.half + 3, static_cast<int>(std::ceil(at - within)));
        const int to = std::min(s.half - 3, static_cast<int>(std::floor(at + within)));
        if (from > to) continue;
        int best = from;
        for (int c = from; c <= to; ++c)
            if (std::abs(s.rise[s.index(row, c)]) > std::abs(s.rise[s.index(row, best)])) best = c;
        const double* r = &s.rise[s.index(row, best)];
        if (std::abs(r[0]) < 2.5 * s.noise) continue;
        // The middle of the steep part, by its weight: a parabola's top would be drawn to whole columns.
        double sum = 0;
        double moment = 0;
        for (int k = -2; k <= 2; ++k) {
            const double weight = std::max(0.0, r[k] / r[0] - 0.35);
            sum += weight;
            moment += weight * k;
        }
        samples.push_back({u, best + moment / sum, r[0], row});
    }
    return samples;
}

/// An edge's line against the side: outwards by `shift` at its first corner.
struct Fit {
    double shift = 0;
    double slope = 0;
    double spread = 0;    // of samples about it, pixels
    double deviation = 0; // of its place at that end of the side which is less known
};

/// Least squares with Tukey's weights (c = 4.685), from a line that is near; false, and all as it was, if too
/// little is seen.
bool fitted(const std::vector<Sample>& samples, double within, double length, Fit& fit) {
    constexpr double sharpest = 0.15; // pixels: what light and grid leave open however alike samples are
    constexpr double shared = 2;      // samples that share pixels, or what lies beneath, count as one
    Fit near = fit;
    double scale = within / 3;
    for (int round = 0; round < 5; ++round) {
        double w = 0;
        double x = 0;
        double y = 0;
        double xx = 0;
        double xy = 0;
        std::vector<double> offs;
        for (const Sample& e : samples) {
            const double off = e.across - near.shift - near.slope * e.along;
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
        if (offs.size() < 6 || !(det > 1e-6 * w * xx)) return false;
        near.slope = (w * xy - x * y) / det;
        near.shift = (y - near.slope * x) / w;
        near.spread = 1.4826 * medianOf(offs);
        // A regression's, away from the middle of what is seen (any textbook).
        const double away = std::max(x / w, length - x / w);
        near.deviation =
            std::max(near.spread, sharpest) * std::sqrt(shared * (1 / w + away * away * w / det));
        scale = std::clamp(near.spread, 0.12, within / 3);
    }
    fit = near;
    return true;
}

/// The longest run of rows without a sample, over all.
double gapOf(const std::vector<Sample>& samples) {
    std::size_t longest = 0;
    std::size_t next = 0;
    for (const Sample& e : samples) {
        longest = std::max(longest, e.row - next);
        next = e.row + 1;
    }
    return static_cast<double>(std::max(longest, stretches - next)) / stretches;
}

/// Adds the grey across the line in one row, every `profileStep`.
void addProfile(const Strip& s, std::size_t row, double shift, double slope, std::vector<double>& profile) {
    const int half = 2 * s.half;
    const double at = shift + slope * s.where(row);
    for (int k = -half; k <= half; ++k) {
        const double c = std::clamp(at + k * profileStep, static_cast<double>(-s.half), s.half - 0.001);
        const int whole = static_cast<int>(std::floor(c));
        const double* g = &s.grey[s.index(row, whole)];
        profile[static_cast<std::size_t>(k) + static_cast<std::size_t>(half)] +=
            g[0] + (g[1] - g[0]) * (c - whole);
    }
}

/// Profiles of its parts; step and width of what is across where it was seen.
void profiled(const Strip& s, const std::vector<Sample>& samples, double shift, double slope, Edge& edge) {
    const std::size_t size = 4 * static_cast<std::size_t>(s.half) + 1;
    edge.partLength = s.length * (1 - 2 * margin) / parts;
    edge.profiles.assign(parts, std::vector<double>(size));
    for (std::size_t row = 0; row < stretches; ++row)
        addProfile(s, row, shift, slope, edge.profiles[row * parts / stretches]);
    for (auto& profile : edge.profiles)
        for (double& grey : profile)
            grey *= static_cast<double>(parts) / stretches;
    if (samples.empty()) return;
    std::vector<double> mean(size);
    for (const Sample& e : samples)
        addProfile(s, e.row, shift, slope, mean);
    std::vector<double> rise(size);
    for (std::size_t i = 2; i + 2 < size; ++i)
        rise[i] = (mean[i + 2] - mean[i - 2]) / 4 / static_cast<double>(samples.size());
    const std::size_t middle = size / 2;
    std::size_t best = middle;
    for (std::size_t i = middle - 4; i <= middle + 4; ++i)
        if (std::abs(rise[i]) > std::abs(rise[best])) best = i;
    double sum = rise[best];
    for (std::size_t i = best + 1; i + 2 < size && rise[i] / rise[best] > 0.2; ++i)
        sum += rise[i];
    for (std::size_t i = best - 1; i >= 2 && rise[i] / rise[best] > 0.2; --i)
        sum += rise[i];
    edge.step = sum;
    // Of an edge blurred like a bell, its height over its steepest: 2.56 / 2.51 of it from a tenth to nine
    // tenths.
    edge.width = rise[best] == 0 ? 0 : std::abs(sum / rise[best]) * profileStep;
}

} // namespace

double greyAt(const Picture& p, Pixel at) {
    const double x = std::clamp(at.x, 0.0, p.width - 1.001);
    const double y = std::clamp(at.y, 0.0, p.height - 1.001);
    const int ix = static_cast<int>(x);
    const int iy = static_cast<int>(y);
    const std::uint8_t* row = p.pixels + static_cast<std::ptrdiff_t>(iy) * p.stride + ix;
    const double fx = x - ix;
    const double fy = y - iy;
    return (row[0] * (1 - fx) + row[1] * fx) * (1 - fy) +
           (row[p.stride] * (1 - fx) + row[p.stride + 1] * fx) * fy;
}

std::vector<Edge> edgesAlong(const Picture& picture, Pixel a, Pixel b, double reach) {
    const Strip s = stripAlong(picture, a, b, reach);
    std::vector<Edge> edges;
    const double within = 1.6; // pixels
    for (const Seed& seed : seedsOf(s)) {
        if (edges.size() >= mostEdges) break;
        const double first = s.length * margin;
        const double last = s.length * (1 - margin);
        const double slope = (seed.to - seed.from) / (last - first);
        Fit fit{seed.from - slope * first, slope, 0.5, 0};
        const auto samples = samplesBy(s, fit.shift, fit.slope, within);
        const bool seen = fitted(samples, within, s.length, fit);
        Edge edge;
        edge.evidence = seed.evidence;
        edge.deviation = fit.deviation;
        std::vector<Sample> on;
        double brighter = 0;
        for (const Sample& e : samples)
            if (std::abs(e.across - fit.shift - fit.slope * e.along) < std::max(0.8, 2.5 * fit.spread)) {
                on.push_back(e);
                brighter += e.rise > 0 ? 1 : 0;
            }
        const auto count = static_cast<double>(on.size());
        edge.seen = seen ? std::max(brighter, count - brighter) / stretches : 0;
        on.erase(std::remove_if(on.begin(), on.end(),
                                [&](const Sample& e) { return (e.rise > 0) != (2 * brighter > count); }),
                 on.end());
        edge.gap = gapOf(on);
        profiled(s, on, fit.shift, fit.slope, edge);
        const double u = s.length / 2;
        const double v = fit.shift + fit.slope * u;
        edge.at = {s.a.x + s.along.x * u + s.out.x * v, s.a.y + s.along.y * u + s.out.y * v};
        const double size = std::hypot(1.0, fit.slope);
        edge.along = {(s.along.x + s.out.x * fit.slope) / size, (s.along.y + s.out.y * fit.slope) / size};
        // The same again, or what joins pieces of a stronger one with something else.
        const bool known = std::any_of(edges.begin(), edges.end(), [&](const Edge& e) {
            const double off = e.along.y * (edge.at.x - e.at.x) - e.along.x * (edge.at.y - e.at.y);
            const double turn = (e.along.x * edge.along.y - e.along.y * edge.along.x) * s.length / 2;
            return std::abs(off) < (edge.evidence < 0.6 * e.evidence ? std::abs(turn) : 0) + 0.8 &&
                   (edge.evidence < 0.6 * e.evidence || std::abs(turn) < 1.5);
        });
        if (!known) edges.push_back(std::move(edge));
    }
    return edges;
}

} // namespace ambit::measure
