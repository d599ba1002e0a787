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
                const double size = std::hypot(region.cosines, region.sines);
                const double along =
                    (p.dx[i] * region.cosines + p.dy[i] * region.sines) / (size * strength[i]);
                if (along < sameDirection) continue;
                used[i] = 1;
                region.pixels.push_back(i);
                region.cosines += p.dx[i] / strength[i];
                region.sines += p.dy[i] / strength[i];
            }
    }
    return region;
}

/// Its axis by the moments of the gradients' strength; false if it is no thin, long edge.
bool fitted(const Region& region, const Reduced& p, const std::vector<float>& strength, Line& line) {
    if (static_cast<double>(region.pixels.size()) < leastLength) return false;
    double sum = 0;
    double mx = 0;
    double my = 0;
    for (const std::size_t i : region.pixels) {
        sum += strength[i];
        mx += strength[i] * columnOf(i, p);
        my += strength[i] * rowOf(i, p);
    }
    mx /= sum;
    my /= sum;
    double xx = 0;
    double yy = 0;
    double xy = 0;
    for (const std::size_t i : region.pixels) {
        const double x = columnOf(i, p) - mx;
        const double y = rowOf(i, p) - my;
        xx += strength[i] * x * x;
        yy += strength[i] * y * y;
        xy += strength[i] * x * y;
    }
    const double angle = std::atan2(2 * xy, xx - yy) / 2;
    Pixel normal{-std::sin(angle), std::cos(angle)};
    const double across = normal.x * region.cosines + normal.y * region.sines;
    if (across < 0) normal = {-normal.x, -normal.y};
    if (std::abs(across) < 0.8 * static_cast<double>(region.pixels.size())) return false;
    double from = 0;
    double to = 0;
    double apart = 0;
    for (const std::size_t i : region.pixels) {
        const double x = columnOf(i, p) - mx;
        const double y = rowOf(i, p) - my;
        const double along = -normal.y * x + normal.x * y;
        from = std::min(from, along);
        to = std::max(to, along);
        apart += strength[i] * std::abs(normal.x * x + normal.y * y) / sum;
    }
    line = {{mx, my}, normal, {{from, to}}, to - from};
    return line.length >= leastLength && apart < std::max(1.5, line.length / 20);
}

/// Takes `other` in if it carries this one on.
bool joined(Line& line, const Line& other) {
    if (line.normal.x * other.normal.x + line.normal.y * other.normal.y < 0.996) return false; // 5 degrees
    std::array<double, 2> ends{};
    for (std::size_t i = 0; i < 2; ++i) {
        const double x = other.at.x - other.normal.y * other.seen[0][i] - line.at.x;
        const double y = other.at.y + other.normal.x * other.seen[0][i] - line.at.y;
        if (std::abs(line.normal.x * x + line.normal.y * y) > 2) return false;
        ends[i] = -line.normal.y * x + line.normal.x * y;
    }
    line.seen.push_back({std::min(ends[0], ends[1]), std::max(ends[0], ends[1])});
    line.length += other.length;
    return true;
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
            Line line;
            if (used[seed] == 0 && fitted(grown(p, strength, used, seed), p, strength, line))
                segments.push_back(std::move(line));
        }
    std::sort(segments.begin(), segments.end(),
              [](const Line& a, const Line& b) { return a.length > b.length; });
    std::vector<char> taken(segments.size());
    std::vector<Line> lines;
    for (std::size_t i = 0; i < std::min<std::size_t>(segments.size(), 400); ++i) {
        if (taken[i] != 0) continue;
        Line line = segments[i];
        for (std::size_t j = i + 1; j < segments.size(); ++j)
            if (taken[j] == 0 && joined(line, segments[j])) taken[j] = 1;
        lines.push_back(std::move(line));
    }
    std::sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) { return a.length > b.length; });
    if (lines.size() > most) lines.resize(most);
    return lines;
}

} // namespace ambit::measure
