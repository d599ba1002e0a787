#include "judge/student.hpp"

#include <cmath>
#include <numbers>

namespace ambit::judge {

namespace {

/// Halves the interval until it is one double: slow and sure, and no start to choose.
template<class Within> double inverse(double confidence, const Within& within) {
    double low = 0;
    double high = 1;
    while (within(high) < confidence && high < 1e300)
        high *= 2;
    while (true) {
        const double middle = low + (high - low) / 2;
        if (middle <= low || middle >= high) return high;
        (within(middle) < confidence ? low : high) = middle;
    }
}

} // namespace

double studentWithin(double t, std::size_t freedom) {
    const auto n = static_cast<double>(freedom);
    const double angle = std::atan2(t, std::sqrt(n));
    const double sine = std::sin(angle);
    const double cosine2 = n / (n + t * t);
    const bool odd = freedom % 2 == 1;
    double term = odd ? std::sqrt(cosine2) : 1;
    double sum = freedom == 1 ? 0 : term;
    for (std::size_t k = odd ? 3 : 2; k + 2 <= freedom; k += 2) {
        const auto i = static_cast<double>(k);
        term *= cosine2 * (i - 1) / i;
        if (term < 1e-18 * sum) break;
        sum += term;
    }
    return odd ? 2 / std::numbers::pi * (angle + sine * sum) : sine * sum;
}

double studentQuantile(double confidence, std::size_t freedom) {
    return inverse(confidence, [freedom](double t) { return studentWithin(t, freedom); });
}

double normalQuantile(double confidence) {
    return inverse(confidence, [](double z) { return std::erf(z / std::numbers::sqrt2); });
}

} // namespace ambit::judge
