// The shape of a JSON value, as a table: which fields, of which kinds. Inside core/record only.
#pragma once

#include "base/tape.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace ambit::record {

struct Field;

struct Shape {
    enum class Is { object, list, text, textOrEmpty, integer, flag, hash, decimal, instant, date, anything };
    explicit Shape(Is kind);

    Is is;
    std::vector<Field> fields;           ///< of an object, by name: no others may be there
    std::vector<Shape> of;               ///< of a list: one
    std::vector<std::string_view> words; ///< of a text: one of these, if any
    std::int64_t least = 0;              ///< of an integer
    std::int64_t most = 0;               ///< of an integer
};

struct Field {
    std::string_view name; ///< ASCII, a literal
    Shape shape;
    bool required = true;
};

[[nodiscard]] Shape object(std::vector<Field> fields);
[[nodiscard]] Shape list(Shape element);
[[nodiscard]] Shape word(std::vector<std::string_view> words);
[[nodiscard]] Shape integer(std::int64_t least, std::int64_t most);
/// Who signs, as a content's `signer` and a countersignature's header name them.
[[nodiscard]] Shape person();

/// A thing that isn't as the shape says, at its pointer: the first by canonical order, unknown fields last.
[[nodiscard]] Result<void> checkShape(JsonView value, const Shape& shape, std::string_view pointer = {});
/// The same, by its canonical form.
[[nodiscard]] Result<void> checkShape(const Json& value, const Shape& shape, std::string_view pointer = {});

/// Texts, each once, in the order of their bytes?
[[nodiscard]] bool sortedOnce(JsonView list);

} // namespace ambit::record
