// JSON out, in the one canonical form of RFC 8785 (JCS).
#pragma once

#include "base/parse.hpp"

#include <string>

namespace ambit {

/// The canonical form: names sorted by UTF-16 code units, shortest number forms as ECMAScript writes them, no
/// space. Precondition: no NaN or infinity (parseJson never gives one), all strings UTF-8.
[[nodiscard]] std::string canonicalJson(const Json& value);

/// A double as ECMAScript's Number::toString writes it (RFC 8785, 3.2.2.3): 1e+30, 4.5, 0.002, 1e-27, 0 for
/// -0.
[[nodiscard]] std::string canonicalNumber(double value);

/// The order of names in canonical form: by UTF-16 code units (RFC 8785, 3.2.3). Both are UTF-8.
[[nodiscard]] bool lessInUtf16(std::string_view a, std::string_view b);

} // namespace ambit
