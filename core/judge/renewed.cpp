#include "judge/renewed.hpp"

#include "judge/student.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::judge {

namespace {

constexpr double toDeviation = 1.4826; ///< of a normal distribution: standard to median absolute deviation

double medianOf(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
}

} // namespace

double noiseFloor(const std::vector<Measured>& values) {
    double squares = 0;
    std::size_t decimals = 0;
    for (const Measured& value : values) {
        const double own = value.uncertainty ? value.uncertainty->approximate() : 0;
        squares += own * own;
        const std::string& text = value.y.text();
        const std::size_t dot = text.find('.');
        if (dot != std::string::npos) decimals = std::max(decimals, text.size() - dot - 1);
    }
    const double digit = std::pow(10.0, -static_cast<double>(decimals));
    return std::max(std::sqrt(squares / static_cast<double>(values.size())), digit / std::sqrt(12.0));
}

std::size_t renewedAt(const std::vector<Measured>& values, const airframe::Limit& limit) {
    if (limit.min.has_value() == limit.max.has_value() || values.size() < 5) return 0;
    const double up = limit.min ? 1 : -1; // against the wear is up
    std::vector<double> y;
    y.reserve(values.size());
    for (const Measured& value : values)
        y.push_back(up * value.y.approximate());
    const double least = noiseFloor(values);
    for (std::size_t at = y.size() - 2; at >= 2; --at) {
        const double apart = std::min(y[at], y[at + 1]) - std::max(y[at - 1], y[at - 2]);
        if (apart <= 0) continue;
        std::vector<double> steps;
        for (std::size_t i = 1; i < y.size(); ++i)
            if (i != at) steps.push_back(y[i] - y[i - 1]);
        const double usual = medianOf(steps);
        std::vector<double> off;
        off.reserve(steps.size());
        for (const double step : steps)
            off.push_back(std::abs(step - usual));
        // A step is the difference of two values.
        const double noise = std::max(toDeviation * medianOf(off) / std::sqrt(2.0), least);
        if (apart > studentQuantile(0.999, steps.size() - 1) * noise) return at;
    }
    return 0;
}

} // namespace ambit::judge
