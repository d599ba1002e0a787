// How far two people's words on the same things agree, beyond what chance alone would give.
#pragma once

#include "base/result.hpp"

#include <cstdint>
#include <vector>

namespace ambit::round {

/// How often the first said the row's word and the second the column's: square, both in the same order.
using Contingency = std::vector<std::vector<std::int64_t>>;

struct Agreement {
    std::int64_t count = 0; ///< things that both spoke of: the table's sum, n
    std::int64_t same = 0;  ///< its diagonal's
    double observed = 0;    ///< pₒ = same / n
    double chance = 0;      ///< pₑ = Σ pᵢ. p.ᵢ: what two who don't look would agree in
    double kappa = 0;       ///< (pₒ - pₑ) / (1 - pₑ), -1 to 1
    double error = 0;       ///< its standard error, for the interval
    double low = 0;         ///< of the 95 % interval, κ ± 1.96 errors within -1 to 1
    double high = 0;
};

/// Cohen's kappa (Cohen 1960) with its large-sample standard error for an interval (Fleiss, Cohen and Everitt
/// 1969), pᵢⱼ being the shares of the table, pᵢ. its rows' sums, p.ᵢ its columns':
///   error = √(A + B - C) / ((1 - pₑ) √n)
///   A = Σᵢ pᵢᵢ (1 - (pᵢ. + p.ᵢ)(1 - κ))²,  B = (1 - κ)² Σᵢ≠ⱼ pᵢⱼ (p.ᵢ + pⱼ.)²,  C = (κ - pₑ (1 - κ))²
/// Invalid: no square table of counts. Refused, in words: it is empty, or chance alone gives all of the
/// agreement (both said one and the same word throughout), where kappa is undefined.
[[nodiscard]] Result<Agreement> agreementOf(const Contingency& table);

} // namespace ambit::round
