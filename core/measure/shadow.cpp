#include "measure/shadow.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>

namespace ambit::measure {
namespace {

constexpr double mostTurned = 10; // pixels at either end against the other
constexpr double rootTwoPi = 2.5066282746310002;
/// What is left is texture, print and what the model leaves out, alike over many places: it counts as so many
/// values, by how far edges were off in the invented pictures.
constexpr double values = 12;
/// The logarithm of how much more likely an edge without a rim is, fitting alike: it takes less to be there.
constexpr double litCounts = 1.8;
constexpr double leastLog = -8; // of what is still worth adding

double logLikely(double left) {
    return -values / 2 * std::log(std::max(1e-9, left));
}

/// How far the rim is from the edge, and its deviation.
struct Rim {
    double away = 0;
    double wide = 0;
};

std::vector<Rim> rimsOf(double bell, double reach) {
    std::vector<Rim> rims;
    double away = 0.5 * bell;
    while (away <= reach) {
        for (const double soft : {0.3, 0.7})
            rims.push_back({away, std::hypot(bell, soft * away)});
        away += 0.25 + 0.18 * away;
    }
    return rims;
}

/// Shares of the light that a shadow may take (no more than two fifths: common practice, no source).
constexpr std::array<double, 7> shares{0.05, 0.09, 0.14, 0.19, 0.25, 0.32, 0.4};

/// By share of the light taken, by part, by place of the edge.
using Rest = std::vector<double>;

/// What of a part's rises (squared) an edge and a rim can't explain, for each place of the edge.
class Left {
public:
    Left(const Edge& its, double sharp, double reach)
        : edge(&its), bell(sharp / 2.56), parts(its.profiles.size()) {
        // From a tenth to nine tenths of a bell's integral are 2.56 of its deviations.
        const std::size_t size = its.profiles[0].size();
        middle = static_cast<int>(size / 2);
        const int window = static_cast<int>((reach + 2 * bell) / profileStep);
        first = std::max(2, middle - window);
        last = std::min(static_cast<int>(size) - 3, middle + window);
        from = -static_cast<int>(reach / profileStep);
        to = static_cast<int>((0.6 * bell) / profileStep) + 1;
        for (const auto& profile : its.profiles) {
            std::vector<double> rise(size);
            for (std::size_t i = 2; i + 2 < size; ++i)
                rise[i] = (profile[i + 2] - profile[i - 2]) / 4;
            rises.push_back(std::move(rise));
        }
        if (!isWide()) return;
        layLines();
        lit.assign(ends.size(), 1e300);
        for (const double softer : {1.0, 1.15, 1.3})
            lower(with(softer * bell, {}, 1), 0, lit);
        leastLit = *std::min_element(lit.begin(), lit.end());
        all.assign(shares.size(), std::vector<double>(ends.size(), 1e300));
        for (const Rim& rim : rimsOf(bell, reach)) {
            const Rest rest = with(bell, rim, shares.size());
            for (std::size_t k = 0; k < shares.size(); ++k)
                lower(rest, k, all[k]);
        }
        for (const auto& lines : all)
            least.push_back(*std::min_element(lines.begin(), lines.end()));
    }

    [[nodiscard]] bool isWide() const { return last - first + 1 >= 8 && places() >= 2; }
    /// Pixels outwards of a line's first and last part.
    [[nodiscard]] std::array<double, 2> endsOf(std::size_t line) const {
        return {(ends[line][0] + from) * profileStep, (ends[line][1] + from) * profileStep};
    }

    const Edge* edge;
    std::vector<double> lit; ///< of each line without a rim, the edge being a little softer, too
    double leastLit = 0;
    std::vector<double> least;            ///< of the best with one, by share
    std::vector<std::vector<double>> all; ///< of each line with the rim that suits it best, by share

private:
    double bell;
    std::size_t parts;
    int middle = 0;
    int first = 0;
    int last = 0;
    int from = 0;
    int to = 0;
    std::vector<std::vector<double>> rises;
    std::vector<std::array<int, 2>> ends;
    std::vector<std::uint16_t> placeOf;

    [[nodiscard]] int places() const { return to - from + 1; }

    /// Every line's place in every part, one line after the other; `ends` are their first and last places.
    void layLines() {
        const int slack = static_cast<int>(mostTurned / profileStep);
        for (int a = 0; a < places(); ++a)
            for (int b = std::max(0, a - slack); b <= std::min(places() - 1, a + slack); ++b) {
                ends.push_back({a, b});
                for (std::size_t part = 0; part < parts; ++part)
                    placeOf.push_back(static_cast<std::uint16_t>(std::lround(
                        a + (b - a) * static_cast<double>(part) / static_cast<double>(parts - 1))));
            }
    }

    /// Lowers what is left of each line to that with one rim.
    void lower(const Rest& rest, std::size_t share, std::vector<double>& lines) const {
        const double* its = rest.data() + share * parts * static_cast<std::size_t>(places());
        const std::uint16_t* place = placeOf.data();
        for (double& line : lines) {
            double sum = 0;
            for (std::size_t part = 0; part < parts; ++part)
                sum += its[part * static_cast<std::size_t>(places()) + *place++];
            line = std::min(line, sum);
        }
    }

    [[nodiscard]] Rest with(double blur, const Rim& rim, std::size_t count) const {
        Rest rest(count * parts * static_cast<std::size_t>(places()));
        std::vector<double> a(static_cast<std::size_t>(last - first + 1));
        std::vector<double> b(a.size());
        for (int place = 0; place < places(); ++place) {
            double aa = 0;
            double bb = 0;
            double ab = 0;
            const double edgeAt = (place + from) * profileStep;
            for (std::size_t i = 0; i < a.size(); ++i) {
                const double x = (first + static_cast<int>(i) - middle) * profileStep - edgeAt;
                a[i] = std::exp(-x * x / (2 * blur * blur));
                b[i] =
                    rim.wide > 0 ? std::exp(-(x - rim.away) * (x - rim.away) / (2 * rim.wide * rim.wide)) : 0;
                aa += a[i] * a[i];
                bb += b[i] * b[i];
                ab += a[i] * b[i];
            }
            // Where the rim is over.
            const int over = std::min(
                last - 2, middle + static_cast<int>((edgeAt + rim.away + 1.5 * rim.wide) / profileStep) + 1);
            for (std::size_t part = 0; part < parts; ++part) {
                const double* rise = &rises[part][static_cast<std::size_t>(first)];
                double ay = 0;
                double by = 0;
                double yy = 0;
                for (std::size_t i = 0; i < a.size(); ++i) {
                    ay += a[i] * rise[i];
                    by += b[i] * rise[i];
                    yy += rise[i] * rise[i];
                }
                double bright = 0;
                for (int i = over; i <= last; ++i)
                    bright += edge->profiles[part][static_cast<std::size_t>(i)];
                bright /= last - over + 1;
                for (std::size_t k = 0; k < count; ++k) {
                    const double rimStep =
                        rim.wide > 0 ? shares[k] * bright * profileStep / (rim.wide * rootTwoPi) : 0;
                    const double edgeStep = (ay - rimStep * ab) / aa;
                    rest[(k * parts + part) * static_cast<std::size_t>(places()) +
                         static_cast<std::size_t>(place)] =
                        yy - 2 * (edgeStep * ay + rimStep * by) + edgeStep * edgeStep * aa +
                        rimStep * rimStep * bb + 2 * edgeStep * rimStep * ab;
                }
            }
        }
        return rest;
    }
};

using Others = std::array<double, shares.size()>; // what other sides say of each share, as a logarithm

/// What this side says, whether or not it lies in the shadow.
void add(const Left& left, Others& others) {
    const double lit = litCounts + logLikely(left.leastLit);
    double most = lit;
    for (const double least : left.least)
        most = std::max(most, logLikely(least));
    for (std::size_t k = 0; k < shares.size(); ++k)
        others[k] += std::log(1e-30 + std::exp(logLikely(left.least[k]) - most) + std::exp(lit - most));
}

/// Sums over where an edge's ends may be.
struct Likely {
    double weights = 0;
    std::array<double, 2> sum{};
    std::array<double, 2> squares{};

    void add(const Left& left, const std::vector<double>& lines, double log) {
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const double its = log + logLikely(lines[i]);
            if (its < leastLog) continue;
            const double weight = std::exp(its);
            const std::array<double, 2> at = left.endsOf(i);
            weights += weight;
            for (std::size_t end = 0; end < 2; ++end) {
                sum[end] += weight * at[end];
                squares[end] += weight * at[end] * at[end];
            }
        }
    }
};

/// Moves the edge to its likely place if it likely has a shadow beside it; what is left open, and whether it
/// has, goes into its deviation.
bool moved(const Left& left, const Others& others, Edge& edge) {
    // A side towards the light has no shadow, whatever the others say.
    double any = 0;
    for (const double other : others)
        any += std::exp(other);
    const double lit = litCounts + std::log(any);
    double most = lit + logLikely(left.leastLit);
    for (std::size_t k = 0; k < shares.size(); ++k)
        most = std::max(most, others[k] + logLikely(left.least[k]));
    Likely likely;
    for (std::size_t k = 0; k < shares.size(); ++k)
        likely.add(left, left.all[k], others[k] - most);
    const double shadowed = likely.weights;
    likely.add(left, left.lit, lit - most);
    std::array<double, 2> mean{};
    std::array<double, 2> square{};
    for (std::size_t end = 0; end < 2; ++end) {
        mean[end] = likely.sum[end] / likely.weights;
        square[end] = likely.squares[end] / likely.weights;
    }
    if (shadowed < 0.5 * likely.weights) {
        edge.deviation = std::hypot(edge.deviation, std::sqrt(std::max(square[0], square[1])));
        return false;
    }
    const double turn =
        (mean[1] - mean[0]) / (edge.partLength * static_cast<double>(edge.profiles.size() - 1));
    const Pixel out{edge.along.y, -edge.along.x};
    edge.at = {edge.at.x + out.x * (mean[0] + mean[1]) / 2, edge.at.y + out.y * (mean[0] + mean[1]) / 2};
    const double size = std::hypot(1.0, turn);
    edge.along = {(edge.along.x + out.x * turn) / size, (edge.along.y + out.y * turn) / size};
    const double variance = std::max(square[0] - mean[0] * mean[0], square[1] - mean[1] * mean[1]);
    edge.deviation = std::sqrt(std::max(0.01, variance));
    return true;
}

} // namespace

int withoutShadow(std::array<Edge, 4>& edges, double sharp, const std::array<double, 4>& reach) {
    std::array<std::optional<Left>, 4> left;
    for (std::size_t i = 0; i < 4; ++i) {
        if (reach[i] <= 0) continue;
        Left its(edges[i], sharp, reach[i]);
        if (!its.isWide()) continue;
        const double least = *std::min_element(its.least.begin(), its.least.end());
        edges[i].rim = std::log(std::max(1.0, its.leastLit / std::max(1e-9, least)));
        left[i] = std::move(its);
    }
    int told = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        if (!left[i]) continue;
        Others others{};
        for (std::size_t j = 0; j < 4; ++j)
            if (j != i && left[j]) add(*left[j], others);
        told += moved(*left[i], others, edges[i]) ? 1 : 0;
    }
    return told;
}

} // namespace ambit::measure
