#include "measure/lines.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

std::size_t index(int x, int y, int width) {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x);
}

/// Means of squares of `factor` pixels.
std::vector<float> shrunk(const Picture& picture, int factor, int width, int height) {
    std::vector<float> small(index(0, height, width));
    const auto used = static_cast<std::size_t>(width) * static_cast<std::size_t>(factor);
    std::vector<std::uint16_t> sums(used);
    const float share = 1.0F / static_cast<float>(factor * factor);
    for (int y = 0; y < height; ++y) {
        std::fill(sums.begin(), sums.end(), std::uint16_t{0});
        for (int k = 0; k < factor; ++k) {
            const std::uint8_t* row =
                picture.pixels + static_cast<std::ptrdiff_t>(y * factor + k) * picture.stride;
            for (std::size_t x = 0; x < used; ++x)
                sums[x] = static_cast<std::uint16_t>(sums[x] + row[x]);
        }
        for (int x = 0; x < width; ++x) {
            unsigned sum = 0;
            for (int k = 0; k < factor; ++k)
                sum += sums[index(k, x, factor)];
            small[index(x, y, width)] = static_cast<float>(sum) * share;
        }
    }
    return small;
}

void smooth(std::vector<float>& grey, int width, int height) {
    std::vector<float> rows(grey.size());
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            rows[index(x, y, width)] =
                (grey[index(std::max(0, x - 1), y, width)] + 2 * grey[index(x, y, width)] +
                 grey[index(std::min(width - 1, x + 1), y, width)]) /
                4;
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            grey[index(x, y, width)] =
                (rows[index(x, std::max(0, y - 1), width)] + 2 * rows[index(x, y, width)] +
                 rows[index(x, std::min(height - 1, y + 1), width)]) /
                4;
}

double columnOf(std::size_t i, const Reduced& p) {
    return static_cast<double>(i % static_cast<std::size_t>(p.width));
}

double rowOf(std::size_t i, const Reduced& p) {
    const std::size_t row = i / static_cast<std::size_t>(p.width);
    return static_cast<double>(row);
}

/// What has been grown so far.
struct Region {
    std::vector<std::size_t> pixels;
    double cosines = 0;
    double sines = 0;
};

constexpr double leastGradient = 1.5;        // grey levels a pixel: a step of 5, smoothed
constexpr double sameDirection = 0.92387953; // cos 22.5°
constexpr double leastLength = 10;

Region grown(const Reduced& p, const std::vector<float>& strength, std::vector<char>& used,
             std::size_t seed) {
    Region region;
    region.pixels.push_back(seed);
    used[seed] = 1;
    region.cosines = p.dx[seed] / strength[seed];
    region.sines = p.dy[seed] / strength[seed];
    for (std::size_t next = 0; next < region.pixels.size(); ++next) {
        const int x = static_cast<int>(region.pixels[next] % static_cast<std::size_t>(p.width));
        const int y = static_cast<int>(region.pixels[next] / static_cast<std::size_t>(p.width));
        for (int ny = std::max(0, y - 1); ny <= std::min(p.height - 1, y + 1); ++ny)
            for (int nx = std::max(0, x - 1); nx <= std::min(p.width - 1, x + 1); ++nx) {
                const std::size_t i = index(nx, ny, p.width);
                if (used[i] != 0 || strength[i] < leastGradient) continue;
                const double size = std::sqrt(region.cosines * region.cosines + region.sines * region.sines);
                const double along = p.dx[i] * region.cosines + p.dy[i] * region.sines;
                if (along < sameDirection * size * strength[i]) continue;
                used[i] = 1;
                region.pixels.push_back(i);
                region.cosines += p.dx[i] / strength[i];
                region.sines += p.dy[i] / strength[i];
            }
    }
    return region;
}

/// Where pixels lie against their axis.
struct Axis {
    Line line;
    double apart = 0; // mean distance, pixels
};

/// By the moments of the gradients' strength.
Axis axisOf(const std::vector<std::size_t>& pixels, const Reduced& p, const std::vector<float>& strength) {
    double sum = 0;
    double mx = 0;
    double my = 0;
    double gx = 0;
    double gy = 0;
    for (const std::size_t i : pixels) {
        sum += strength[i];
        mx += strength[i] * columnOf(i, p);
        my += strength[i] * rowOf(i, p);
        gx += p.dx[i];
        gy += p.dy[i];
    }
    mx /= sum;
    my /= sum;
    double xx = 0;
    double yy = 0;
    double xy = 0;
    for (const std::size_t i : pixels) {
        const double x = columnOf(i, p) - mx;
        const double y = rowOf(i, p) - my;
        xx += strength[i] * x * x;
        yy += strength[i] * y * y;
        xy += strength[i] * x * y;
    }
    const double angle = std::atan2(2 * xy, xx - yy) / 2;
    Pixel normal{-std::sin(angle), std::cos(angle)};
    if (normal.x * gx + normal.y * gy < 0) normal = {-normal.x, -normal.y};
    double from = 0;
    double to = 0;
    Axis axis;
    for (const std::size_t i : pixels) {
        const double x = columnOf(i, p) - mx;
        const double y = rowOf(i, p) - my;
        const double along = -normal.y * x + normal.x * y;
        from = std::min(from, along);
        to = std::max(to, along);
        axis.apart += strength[i] * std::abs(normal.x * x + normal.y * y) / sum;
    }
    axis.line = {{mx, my}, normal, {{from, to}}, to - from};
    return axis;
}

/// Cuts what is bent (a side that goes over into another, or round a corner) where it is furthest from the
/// line through its ends, and keeps the straight pieces.
void straightPieces(const std::vector<std::size_t>& pixels, const Reduced& p,
                    const std::vector<float>& strength, std::vector<Line>& pieces) {
    constexpr double most = 0.8; // pixels off
    if (static_cast<double>(pixels.size()) < leastLength) return;
    const Axis axis = axisOf(pixels, p, strength);
    const Line& line = axis.line;
    if (line.length < leastLength) return;
    const auto bins = static_cast<std::size_t>(line.length / 2) + 1;
    std::vector<double> off(bins);
    std::vector<double> weight(bins);
    const auto alongOf = [&](std::size_t i) {
        return -line.normal.y * (columnOf(i, p) - line.at.x) + line.normal.x * (rowOf(i, p) - line.at.y);
    };
    const auto binOf = [&](std::size_t i) {
        return std::min(bins - 1, static_cast<std::size_t>(std::max(0.0, alongOf(i) - line.seen[0][0]) / 2));
    };
    for (const std::size_t i : pixels) {
        off[binOf(i)] += strength[i] * (line.normal.x * (columnOf(i, p) - line.at.x) +
                                        line.normal.y * (rowOf(i, p) - line.at.y));
        weight[binOf(i)] += strength[i];
    }
    double worst = 0;
    for (std::size_t b = 0; b < bins; ++b) {
        off[b] = weight[b] > 0 ? off[b] / weight[b] : 0;
        worst = std::max(worst, std::abs(off[b]));
    }
    if (worst <= most) {
        if (axis.apart < std::max(1.5, line.length / 20)) pieces.push_back(line);
        return;
    }
    std::size_t cut = 0;
    double furthest = 0;
    for (std::size_t b = 1; b + 1 < bins; ++b) {
        const double chord =
            off[0] + (off[bins - 1] - off[0]) * static_cast<double>(b) / static_cast<double>(bins - 1);
        if (std::abs(off[b] - chord) <= furthest) continue;
        furthest = std::abs(off[b] - chord);
        cut = b;
    }
    if (cut == 0) return;
    std::array<std::vector<std::size_t>, 2> parts;
    for (const std::size_t i : pixels)
        parts[binOf(i) < cut ? 0 : 1].push_back(i);
    for (const auto& part : parts)
        if (part.size() < pixels.size()) straightPieces(part, p, strength, pieces);
}

/// Adds what was seen of `other` where it carries this one on.
void carriedOn(Line& line, const Line& other) {
    if (line.normal.x * other.normal.x + line.normal.y * other.normal.y < 0.996) return; // 5 degrees
    std::array<double, 2> ends{};
    for (std::size_t i = 0; i < 2; ++i) {
        const double x = other.at.x - other.normal.y * other.seen[0][i] - line.at.x;
        const double y = other.at.y + other.normal.x * other.seen[0][i] - line.at.y;
        if (std::abs(line.normal.x * x + line.normal.y * y) > 2) return;
        ends[i] = -line.normal.y * x + line.normal.x * y;
    }
    line.seen.push_back({std::min(ends[0], ends[1]), std::max(ends[0], ends[1])});
    line.length += other.length;
}

} // namespace

Reduced reduced(const Picture& picture, int longest) {
    Reduced r;
    r.factor = std::max(1, (std::max(picture.width, picture.height) + longest - 1) / longest);
    r.width = picture.width / r.factor;
    r.height = picture.height / r.factor;
    std::vector<float> grey = shrunk(picture, r.factor, r.width, r.height);
    smooth(grey, r.width, r.height);
    r.dx.assign(grey.size(), 0);
    r.dy.assign(grey.size(), 0);
    for (int y = 1; y + 1 < r.height; ++y)
        for (int x = 1; x + 1 < r.width; ++x) {
            const std::size_t i = index(x, y, r.width);
            r.dx[i] = (grey[i + 1] - grey[i - 1]) / 2;
            r.dy[i] = (grey[index(x, y + 1, r.width)] - grey[index(x, y - 1, r.width)]) / 2;
        }
    return r;
}

std::vector<Line> linesOf(const Reduced& p, std::size_t most) {
    std::vector<float> strength(p.dx.size());
    std::vector<std::vector<std::size_t>> byStrength(64);
    for (std::size_t i = 0; i < strength.size(); ++i) {
        strength[i] = std::sqrt(p.dx[i] * p.dx[i] + p.dy[i] * p.dy[i]);
        if (strength[i] >= leastGradient)
            byStrength[std::min<std::size_t>(63, static_cast<std::size_t>(strength[i]))].push_back(i);
    }
    std::vector<char> used(strength.size());
    std::vector<Line> segments;
    for (auto bin = byStrength.rbegin(); bin != byStrength.rend(); ++bin)
        for (const std::size_t seed : *bin) {
            if (used[seed] == 0) straightPieces(grown(p, strength, used, seed).pixels, p, strength, segments);
        }
    std::sort(segments.begin(), segments.end(),
              [](const Line& a, const Line& b) { return a.length > b.length; });
    // Each stays a line of its own: what carries a short side on by chance may be far longer than it, and
    // turn it by more than a card's corner may be off.
    if (segments.size() > most) segments.resize(most);
    std::vector<Line> lines = segments;
    for (std::size_t i = 0; i < segments.size(); ++i)
        for (std::size_t j = 0; j < segments.size(); ++j)
            if (i != j) carriedOn(lines[i], segments[j]);
    return lines;
}

} // namespace ambit::measure
