#include "round/agreement.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::round {

namespace {

constexpr double normal95 = 1.959963984540054; ///< of the normal distribution: 95 % lie within so many errors

bool isTable(const Contingency& table) {
    return std::all_of(table.begin(), table.end(), [&](const std::vector<std::int64_t>& row) {
        return row.size() == table.size() &&
               std::all_of(row.begin(), row.end(), [](std::int64_t count) { return count >= 0; });
    });
}

double square(double value) {
    return value * value;
}

} // namespace

Result<Agreement> agreementOf(const Contingency& table) {
    if (!isTable(table)) return fail(ErrorCode::invalid, say("A table of agreement is square and counts."));
    Agreement agreement;
    std::vector<std::int64_t> rows(table.size(), 0);
    std::vector<std::int64_t> columns(table.size(), 0);
    for (std::size_t i = 0; i < table.size(); ++i) {
        agreement.same += table[i][i];
        for (std::size_t k = 0; k < table.size(); ++k) {
            agreement.count += table[i][k];
            rows[i] += table[i][k];
            columns[k] += table[i][k];
        }
    }
    if (agreement.count == 0) return fail(ErrorCode::refused, say("There is nothing that both settled."));
    // By counts, so that no rounding decides it: all the rows' and all the columns' are in one and the same.
    for (std::size_t i = 0; i < table.size(); ++i)
        if (rows[i] == agreement.count && columns[i] == agreement.count)
            return fail(
                ErrorCode::refused,
                say("Both settled every point with the same word: chance alone would agree as well, and "
                    "kappa is undefined."));
    const auto n = static_cast<double>(agreement.count);
    const auto share = [&](std::int64_t count) { return static_cast<double>(count) / n; };
    agreement.observed = share(agreement.same);
    for (std::size_t i = 0; i < table.size(); ++i)
        agreement.chance += share(rows[i]) * share(columns[i]);
    agreement.kappa = (agreement.observed - agreement.chance) / (1 - agreement.chance);
    const double beyond = 1 - agreement.kappa;
    double agreed = 0;
    double parted = 0;
    for (std::size_t i = 0; i < table.size(); ++i) {
        agreed += share(table[i][i]) * square(1 - (share(rows[i]) + share(columns[i])) * beyond);
        for (std::size_t k = 0; k < table.size(); ++k)
            if (i != k) parted += share(table[i][k]) * square(share(columns[i]) + share(rows[k]));
    }
    const double variance =
        agreed + square(beyond) * parted - square(agreement.kappa - agreement.chance * beyond);
    agreement.error = std::sqrt(std::max(0.0, variance)) / ((1 - agreement.chance) * std::sqrt(n));
    agreement.low = std::max(-1.0, agreement.kappa - normal95 * agreement.error);
    agreement.high = std::min(1.0, agreement.kappa + normal95 * agreement.error);
    return agreement;
}

} // namespace ambit::round
