#include "judge/fit.hpp"

#include "judge/slopes.hpp"
#include "judge/student.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace ambit::judge {

namespace {

long double exact(const Decimal& number) {
    long double value = 0;
    std::from_chars(number.text().data(), number.text().data() + number.text().size(), value);
    return value;
}

tl::unexpected<Error> tooFew() {
    return fail(ErrorCode::invalid, say("A line needs values at different places."), {},
                say("Measure again later."));
}

/// The figures as integers of one unit, the finest entered.
Result<std::vector<std::int64_t>> onGrid(const std::vector<Sample>& samples, Decimal Sample::*which) {
    const auto decimalsOf = [&](const Sample& sample) {
        const std::string& text = (sample.*which).text();
        const std::size_t dot = text.find('.');
        return dot == std::string::npos ? 0 : text.size() - dot - 1;
    };
    std::size_t finest = 0;
    for (const Sample& sample : samples)
        finest = std::max(finest, decimalsOf(sample));
    std::vector<std::int64_t> grid;
    grid.reserve(samples.size());
    for (const Sample& sample : samples) {
        std::string digits = (sample.*which).text() + std::string(finest - decimalsOf(sample), '0');
        std::erase(digits, '.');
        std::int64_t units = 0;
        const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), units);
        if (read.ec != std::errc{} || std::abs(units) >= 1'000'000'000'000'000)
            return fail(ErrorCode::invalid, say("These figures together take more than 15 digits."),
                        (sample.*which).text(), say("Use fewer decimals."));
        grid.push_back(units);
    }
    return grid;
}

double medianOf(std::vector<double> values) {
    const std::size_t half = values.size() / 2;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(half);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1) return *middle;
    return (*std::max_element(values.begin(), middle) + *middle) / 2;
}

/// Kendall's correction for values that are equal.
double tied(std::vector<std::int64_t> values) {
    std::sort(values.begin(), values.end());
    double sum = 0;
    for (auto from = values.begin(); from != values.end();) {
        const auto to = std::upper_bound(from, values.end(), *from);
        const auto k = static_cast<double>(to - from);
        sum += k * (k - 1) * (2 * k + 5);
        from = to;
    }
    return sum;
}

} // namespace

Result<LeastSquares> leastSquares(const std::vector<Sample>& samples) {
    if (samples.size() < 3) return tooFew();
    const auto n = static_cast<long double>(samples.size());
    long double meanX = 0;
    long double meanY = 0;
    for (const Sample& sample : samples) {
        meanX += exact(sample.x) / n;
        meanY += exact(sample.y) / n;
    }
    long double xx = 0;
    long double xy = 0;
    for (const Sample& sample : samples) {
        const long double x = exact(sample.x) - meanX;
        xx += x * x;
        xy += x * (exact(sample.y) - meanY);
    }
    const auto [first, last] = std::minmax_element(
        samples.begin(), samples.end(), [](const Sample& a, const Sample& b) { return a.x < b.x; });
    if (first->x == last->x) return tooFew();
    const long double slope = xy / xx;
    long double squares = 0;
    for (const Sample& sample : samples) {
        const long double off = exact(sample.y) - meanY - slope * (exact(sample.x) - meanX);
        squares += off * off;
    }
    const long double residual = std::sqrt(squares / (n - 2));
    return LeastSquares{{static_cast<double>(slope), static_cast<double>(meanY - slope * meanX)},
                        samples.size(),
                        static_cast<double>(meanX),
                        static_cast<double>(meanY),
                        static_cast<double>(xx),
                        static_cast<double>(residual),
                        static_cast<double>(residual / std::sqrt(xx)),
                        static_cast<double>(residual * std::sqrt(1 / n + meanX * meanX / xx))};
}

Result<ThroughOrigin> throughOrigin(const std::vector<Sample>& samples) {
    long double xx = 0;
    long double xy = 0;
    for (const Sample& sample : samples) {
        xx += exact(sample.x) * exact(sample.x);
        xy += exact(sample.x) * exact(sample.y);
    }
    if (samples.size() < 2 || xx == 0) return tooFew();
    const long double slope = xy / xx;
    long double squares = 0;
    for (const Sample& sample : samples) {
        const long double off = exact(sample.y) - slope * exact(sample.x);
        squares += off * off;
    }
    const long double residual = std::sqrt(squares / static_cast<long double>(samples.size() - 1));
    return ThroughOrigin{static_cast<double>(slope), static_cast<double>(residual / std::sqrt(xx)),
                         static_cast<double>(residual)};
}

namespace {

Interval around(const LeastSquares& fit, double x, double confidence, double one) {
    const double aside = x - fit.meanX;
    const double half = studentQuantile(confidence, fit.count - 2) * fit.residual *
                        std::sqrt(one + 1 / static_cast<double>(fit.count) + aside * aside / fit.spreadX);
    const double middle = fit.meanY + fit.line.slope * aside;
    return {middle - half, middle + half};
}

} // namespace

Interval confidenceAt(const LeastSquares& fit, double x, double confidence) {
    return around(fit, x, confidence, 0);
}

Interval predictionAt(const LeastSquares& fit, double x, double confidence) {
    return around(fit, x, confidence, 1);
}

Result<Robust> theilSen(const std::vector<Sample>& samples, double confidence) {
    if (samples.size() < 3) return tooFew();
    const auto xs = onGrid(samples, &Sample::x);
    if (!xs) return tl::unexpected(xs.error());
    const auto ys = onGrid(samples, &Sample::y);
    if (!ys) return tl::unexpected(ys.error());
    std::vector<GridPoint> points(samples.size());
    for (std::size_t i = 0; i < points.size(); ++i)
        points[i] = {(*xs)[i], (*ys)[i]};
    const Slopes slopes(points);
    const std::uint64_t count = slopes.count();
    if (count == 0) return tooFew();

    // A grid's unit is a power of ten; any sample but zero tells which.
    std::vector<double> x(points.size());
    std::vector<double> y(points.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        x[i] = samples[i].x.approximate();
        y[i] = samples[i].y.approximate();
    }
    const auto unitOf = [](const std::vector<std::int64_t>& grid, const std::vector<double>& values) {
        for (std::size_t i = 0; i < grid.size(); ++i)
            if (grid[i] != 0) return std::round(static_cast<double>(grid[i]) / values[i]);
        return 1.0;
    };
    const double scale = unitOf(*xs, x) / unitOf(*ys, y);
    const auto number = [scale](const Slope& slope) {
        return static_cast<double>(slope.rise) / static_cast<double>(slope.run) * scale;
    };

    Robust robust;
    const Slope lower = slopes.ranked((count - 1) / 2);
    robust.line.slope = number(lower);
    if (count % 2 == 0)
        robust.line.slope = (robust.line.slope + number(slopes.next((count - 1) / 2, lower))) / 2;
    std::vector<double> left(points.size());
    for (std::size_t i = 0; i < left.size(); ++i)
        left[i] = y[i] - robust.line.slope * x[i];
    robust.line.intercept = medianOf(left);
    robust.through = medianOf(y) - robust.line.slope * medianOf(x);

    const auto n = static_cast<double>(points.size());
    const double variance = (n * (n - 1) * (2 * n + 5) - tied(*xs) - tied(*ys)) / 18;
    const double reach = normalQuantile(confidence) * std::sqrt(std::max(0.0, variance));
    const auto pairs = static_cast<double>(count);
    const double low = std::max(std::nearbyint((pairs - reach) / 2) - 1, 0.0);
    const double high = std::clamp(std::nearbyint((pairs + reach) / 2), 0.0, pairs - 1);
    robust.slope = {number(slopes.ranked(static_cast<std::uint64_t>(low))),
                    number(slopes.ranked(static_cast<std::uint64_t>(high)))};
    return robust;
}

} // namespace ambit::judge
