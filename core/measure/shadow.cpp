#include "measure/shadow.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

constexpr double mostTurned = 10; // pixels at either end against the other
constexpr double darkest =
    0.45; // a shadow beside a card takes no more of the light (common practice, no source)
constexpr double simpler = 1.35; // times as much may be left by an edge without a rim
constexpr double rootTwoPi = 2.5066282746310002;
constexpr double open = 4; // chi² up to which a place is as good as the best: two deviations

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

/// What of a part's rises (squared) an edge and a rim can't explain, for each place of the edge.
class Left {
public:
    Left(const Edge& edge, double bell, double reach) : step(edge.profileStep), parts(edge.profiles.size()) {
        const std::size_t size = edge.profiles[0].size();
        middle = static_cast<int>(size / 2);
        const int window = static_cast<int>((reach + 2 * bell) / step);
        first = std::max(2, middle - window);
        last = std::min(static_cast<int>(size) - 3, middle + window);
        from = -static_cast<int>(reach / step);
        to = static_cast<int>((0.6 * bell) / step) + 1;
        for (const auto& profile : edge.profiles) {
            std::vector<double> rise(size);
            for (std::size_t i = 2; i + 2 < size; ++i)
                rise[i] = (profile[i + 2] - profile[i - 2]) / 4;
            rises.push_back(std::move(rise));
            outside.push_back(*std::max_element(profile.begin() + middle, profile.end()));
        }
    }

    [[nodiscard]] int places() const { return to - from + 1; }
    [[nodiscard]] double at(int place) const { return (place + from) * step; }
    [[nodiscard]] int samples() const { return last - first + 1; }

    /// By part, then by place.
    [[nodiscard]] std::vector<double> with(double bell, const Rim& rim) const {
        std::vector<double> left(parts * static_cast<std::size_t>(places()));
        std::vector<double> a(static_cast<std::size_t>(samples()));
        std::vector<double> b(a.size());
        for (int place = 0; place < places(); ++place) {
            double aa = 0;
            double bb = 0;
            double ab = 0;
            for (std::size_t i = 0; i < a.size(); ++i) {
                const double x = (first + static_cast<int>(i) - middle) * step - at(place);
                a[i] = std::exp(-x * x / (2 * bell * bell));
                b[i] =
                    rim.wide > 0 ? std::exp(-(x - rim.away) * (x - rim.away) / (2 * rim.wide * rim.wide)) : 0;
                aa += a[i] * a[i];
                bb += b[i] * b[i];
                ab += a[i] * b[i];
            }
            const double det = aa * bb - ab * ab;
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
                // Brighter outwards, and by no more than a shadow takes.
                const double most =
                    rim.wide > 0 ? darkest * outside[part] * step / (rim.wide * rootTwoPi) : 0;
                const double rimStep = most > 0 ? std::clamp((by * aa - ay * ab) / det, 0.0, most) : 0;
                const double edgeStep = (ay - rimStep * ab) / aa;
                left[part * static_cast<std::size_t>(places()) + static_cast<std::size_t>(place)] =
                    yy - 2 * (edgeStep * ay + rimStep * by) + edgeStep * edgeStep * aa +
                    rimStep * rimStep * bb + 2 * edgeStep * rimStep * ab;
            }
        }
        return left;
    }

private:
    double step;
    std::size_t parts;
    int middle = 0;
    int first = 0;
    int last = 0;
    int from = 0;
    int to = 0;
    std::vector<std::vector<double>> rises;
    std::vector<double> outside; // of each part, the brightest grey there
};

/// Places at either end of the line, at the first part's middle and the last one's.
struct Ends {
    int first = 0;
    int last = 0;
};

} // namespace

bool withoutShadow(Edge& edge, double sharp, double reach) {
    // From a tenth to nine tenths of a bell's integral are 2.56 of its deviations.
    const double bell = sharp / 2.56;
    const Left left(edge, bell, reach);
    const int places = left.places();
    const std::size_t parts = edge.profiles.size();
    if (left.samples() < 8 || places < 2) return false;
    const int slack = static_cast<int>(mostTurned / edge.profileStep);
    const auto count = static_cast<std::size_t>(places);
    std::vector<double> least(count * count, 1e300); // of each line, with the rim that suits it best
    double alone = 1e300;
    const auto lines = [&](const std::vector<double>& each, const auto& take) {
        for (int a = 0; a < places; ++a)
            for (int b = std::max(0, a - slack); b <= std::min(places - 1, a + slack); ++b) {
                double sum = 0;
                for (std::size_t part = 0; part < parts; ++part) {
                    const double at =
                        a + (b - a) * static_cast<double>(part) / static_cast<double>(parts - 1);
                    sum += each[part * count + static_cast<std::size_t>(std::lround(at))];
                }
                take(static_cast<std::size_t>(a) * count + static_cast<std::size_t>(b), sum);
            }
    };
    for (const double softer : {1.0, 1.15, 1.3})
        lines(left.with(softer * bell, {}), [&](std::size_t, double sum) { alone = std::min(alone, sum); });
    for (const Rim& rim : rimsOf(bell, reach))
        lines(left.with(bell, rim),
              [&](std::size_t line, double sum) { least[line] = std::min(least[line], sum); });
    const auto best = static_cast<std::size_t>(std::min_element(least.begin(), least.end()) - least.begin());
    if (alone < simpler * least[best]) return false;
    // What is left is texture, print and what the model leaves out, alike over many places: it counts as a
    // dozen, by how far edges were off in the invented pictures.
    const double noise = least[best] / 12;
    std::array<double, 2> from{1e9, 1e9};
    std::array<double, 2> to{-1e9, -1e9};
    std::array<double, 2> sum{};
    double weights = 0;
    for (std::size_t i = 0; i < least.size(); ++i) {
        if (least[i] > least[best] + open * noise) continue;
        const std::array<double, 2> at{left.at(static_cast<int>(i / count)),
                                       left.at(static_cast<int>(i % count))};
        const double weight = std::exp((least[best] - least[i]) / noise / 2);
        weights += weight;
        for (std::size_t end = 0; end < 2; ++end) {
            from[end] = std::min(from[end], at[end]);
            to[end] = std::max(to[end], at[end]);
            sum[end] += weight * at[end];
        }
    }
    const double one = sum[0] / weights;
    const double two = sum[1] / weights;
    const double turn = (two - one) / (edge.partLength * static_cast<double>(parts - 1));
    const Pixel out{edge.along.y, -edge.along.x};
    edge.at = {edge.at.x + out.x * (one + two) / 2, edge.at.y + out.y * (one + two) / 2};
    const double size = std::hypot(1.0, turn);
    edge.along = {(edge.along.x + out.x * turn) / size, (edge.along.y + out.y * turn) / size};
    edge.deviation = std::max(0.1, std::max(to[0] - from[0], to[1] - from[1]) / 4);
    return true;
}

} // namespace ambit::measure
