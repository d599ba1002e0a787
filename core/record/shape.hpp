// The shape of a JSON value, as a table: which fields, of which kinds. Inside core/record only.
#pragma once

#include "base/parse.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace ambit::record {

struct Field;

struct Shape {
    enum class Is { object, list, text, textOrEmpty, integer, flag, hash, decimal, instant, date, anything };
    explicit Shape(Is kind);

    Is is;
    std::vector<Field> fields;           ///< of an object: no others may be there
    std::vector<Shape> of;               ///< of a list: one
    std::vector<std::string_view> words; ///< of a text: one of these, if any
    std::int64_t least = 0;              ///< of an integer
    std::int64_t most = 0;               ///< of an integer
};

struct Field {
    const char* name;
    Shape shape;
    bool required = true;
};

[[nodiscard]] Shape object(std::vector<Field> fields);
[[nodiscard]] Shape list(Shape element);
[[nodiscard]] Shape word(std::vector<std::string_view> words);
[[nodiscard]] Shape integer(std::int64_t least, std::int64_t most);
/// Who signs, as a content's `signer` and a countersignature's header name them.
[[nodiscard]] Shape person();

/// The first thing that isn't as the shape says, at its pointer.
[[nodiscard]] Result<void> checkShape(const Json& value, const Shape& shape, const std::string& pointer = {});

} // namespace ambit::record
