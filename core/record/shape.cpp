#include "record/shape.hpp"

#include "base/decimal.hpp"
#include "base/pointer.hpp"
#include "base/time.hpp"

#include <algorithm>
#include <optional>

namespace ambit::record {

namespace {

constexpr std::size_t longestText = 8192; ///< bytes; as in events
constexpr std::size_t longestList = 20000;

std::optional<Error> wrong(Sentence what, const Where& where) {
    return Error{ErrorCode::invalid, std::move(what), where.text(), {}};
}

/// Nullopt: as the shape says. An error is made only where something is wrong.
using Wrong = std::optional<Error>;

Wrong check(JsonView value, const Shape& shape, const Where& where);

/// Fields and members both stand sorted, so that one goes along the other.
Wrong checkObject(JsonView value, const Shape& shape, const Where& where) {
    if (!value.isObject()) return wrong(say("An object is expected here."), where);
    std::optional<std::string_view> unknown;
    auto member = value.members().begin();
    const auto end = value.members().end();
    for (const Field& field : shape.fields) {
        while (!(member == end) && (*member).name < field.name) {
            if (!unknown) unknown = (*member).name;
            ++member;
        }
        const bool there = !(member == end) && (*member).name == field.name;
        if (!there && field.required) return wrong(say("This field is missing."), Where(where, field.name));
        if (!there) continue;
        if (auto bad = check((*member).value, field.shape, Where(where, field.name))) return bad;
        ++member;
    }
    if (!unknown && !(member == end)) unknown = (*member).name;
    if (unknown) return wrong(say("This field is not known."), Where(where, *unknown));
    return std::nullopt;
}

Wrong checkList(JsonView value, const Shape& shape, const Where& where) {
    if (!value.isList() || value.size() > longestList) return wrong(say("A list is expected here."), where);
    std::size_t i = 0;
    for (const JsonView one : value.elements())
        if (auto bad = check(one, shape.of.front(), Where(where, i++))) return bad;
    return std::nullopt;
}

bool isHash(std::string_view text) {
    return text.size() == 64 && std::all_of(text.begin(), text.end(), [](char c) {
               return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
           });
}

Wrong checkText(JsonView value, const Shape& shape, const Where& where) {
    const std::string_view text = value.text();
    if (text.size() > longestText || !value.isPlain())
        return wrong(say("Plain text of at most 8192 bytes is expected here."), where);
    if (text.empty() && shape.is != Shape::Is::textOrEmpty) return wrong(say("This text is empty."), where);
    if (!shape.words.empty() && std::find(shape.words.begin(), shape.words.end(), text) == shape.words.end())
        return wrong(say("This word is not one of those that can stand here."), where);
    switch (shape.is) {
    case Shape::Is::hash:
        if (!isHash(text)) return wrong(say("A SHA-256 in lower-case hex is expected here."), where);
        break;
    case Shape::Is::decimal:
        if (!Decimal::parse(text)) return wrong(say("A decimal number is expected here."), where);
        break;
    case Shape::Is::instant:
        if (!parseInstant(text)) return wrong(say("A time in UTC is expected here."), where);
        break;
    case Shape::Is::date:
        if (!parseInstant(std::string(text) + "T00:00:00.000Z"))
            return wrong(say("A date is expected here, as 2026-06-20."), where);
        break;
    default:
        break;
    }
    return std::nullopt;
}

Wrong checkInteger(JsonView value, const Shape& shape, const Where& where) {
    const auto integer = value.integer();
    if (integer && *integer >= shape.least && *integer <= shape.most) return std::nullopt;
    return wrong(say("An integer from %1 to %2 is expected here.", figure(std::to_string(shape.least)),
                     figure(std::to_string(shape.most))),
                 where);
}

Wrong check(JsonView value, const Shape& shape, const Where& where) {
    switch (shape.is) {
    case Shape::Is::anything:
        return std::nullopt;
    case Shape::Is::object:
        return checkObject(value, shape, where);
    case Shape::Is::list:
        return checkList(value, shape, where);
    case Shape::Is::integer:
        return checkInteger(value, shape, where);
    case Shape::Is::flag:
        return value.isFlag() ? std::nullopt : wrong(say("True or false is expected here."), where);
    default:
        if (!value.isText()) return wrong(say("A text is expected here."), where);
        return checkText(value, shape, where);
    }
}

} // namespace

Shape::Shape(Is kind) : is(kind) {}

Shape object(std::vector<Field> fields) {
    Shape shape(Shape::Is::object);
    shape.fields = std::move(fields);
    std::sort(shape.fields.begin(), shape.fields.end(),
              [](const Field& a, const Field& b) { return a.name < b.name; });
    return shape;
}

Shape list(Shape element) {
    Shape shape(Shape::Is::list);
    shape.of.push_back(std::move(element));
    return shape;
}

Shape word(std::vector<std::string_view> words) {
    Shape shape(Shape::Is::text);
    shape.words = std::move(words);
    return shape;
}

Shape integer(std::int64_t least, std::int64_t most) {
    Shape shape(Shape::Is::integer);
    shape.least = least;
    shape.most = most;
    return shape;
}

Shape person() {
    return object({{"name", Shape(Shape::Is::text)},
                   {"role", word({"pilot", "instructor", "owner", "mechanic"})},
                   {"certificate", Shape(Shape::Is::textOrEmpty)}});
}

Result<void> checkShape(JsonView value, const Shape& shape, std::string_view pointer) {
    if (auto bad = check(value, shape, Where(pointer))) return tl::unexpected(std::move(*bad));
    return {};
}

Result<void> checkShape(const Json& value, const Shape& shape, std::string_view pointer) {
    JsonTape tape;
    const auto read = tape.write(value);
    if (!read) return tl::unexpected(read.error());
    return checkShape(*read, shape, pointer);
}

bool sortedOnce(JsonView list) {
    std::optional<std::string_view> last;
    for (const JsonView one : list.elements()) {
        if (last && *last >= one.text()) return false;
        last = one.text();
    }
    return true;
}

} // namespace ambit::record
