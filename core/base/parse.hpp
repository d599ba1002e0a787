// Strict JSON in (RFC 8259, the I-JSON subset of RFC 7493): what other readers could understand differently
// is refused.
#pragma once

#include "base/result.hpp"

#include <cstddef>
#include <nlohmann/json_fwd.hpp> // most readers only pass it on; who looks inside includes json.hpp
#include <string_view>

namespace ambit {

using Json = nlohmann::json;

struct ParseLimits {
    std::size_t bytes = std::size_t{16} << 20; ///< largest text, bytes
    int depth = 24;                            ///< deepest nesting of arrays and objects
};

/// Parses one JSON text. Refused, with the JSON pointer or byte offset in `where`: a byte-order mark, bytes
/// that are not UTF-8, duplicate names in an object, more than `limits`, numbers that overflow a double, lone
/// surrogates, anything after the value.
[[nodiscard]] Result<Json> parseJson(std::string_view text, const ParseLimits& limits = {});

/// True if `text` is well-formed UTF-8 (no overlong forms, no surrogates, at most U+10FFFF).
[[nodiscard]] bool isUtf8(std::string_view text);

/// True if `text` may stand in a record: UTF-8 without control characters other than \n (U+007F and
/// U+0080–U+009F count as such) and without noncharacters, so that `jq -cS` and RFC 8785 write it alike.
[[nodiscard]] bool isPlainText(std::string_view text);

} // namespace ambit
