#include "record/shape.hpp"

#include "base/decimal.hpp"
#include "base/pointer.hpp"
#include "base/time.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::record {

namespace {

constexpr std::size_t longestText = 8192; ///< bytes; as in events
constexpr std::size_t longestList = 20000;

tl::unexpected<Error> wrong(std::string what, const Where& where) {
    return fail(ErrorCode::invalid, std::move(what), where.text());
}

Result<void> check(const Json& value, const Shape& shape, const Where& where);

Result<void> checkObject(const Json& value, const Shape& shape, const Where& where) {
    if (!value.is_object()) return wrong("An object is expected here.", where);
    std::size_t known = 0;
    for (const Field& field : shape.fields) {
        const auto found = value.find(field.name);
        const Where at(where, std::string_view(field.name));
        if (found == value.end()) {
            if (field.required) return wrong("This field is missing.", at);
            continue;
        }
        ++known;
        if (auto good = check(*found, field.shape, at); !good) return good;
    }
    if (known == value.size()) return {};
    for (const auto& [name, unused] : value.items()) {
        const bool expected = std::any_of(shape.fields.begin(), shape.fields.end(),
                                          [&name = name](const Field& field) { return name == field.name; });
        if (!expected) return wrong("This field is not known.", Where(where, std::string_view(name)));
    }
    return {};
}

Result<void> checkList(const Json& value, const Shape& shape, const Where& where) {
    if (!value.is_array() || value.size() > longestList) return wrong("A list is expected here.", where);
    for (std::size_t i = 0; i < value.size(); ++i)
        if (auto good = check(value[i], shape.of.front(), Where(where, i)); !good) return good;
    return {};
}

Result<void> checkText(const std::string& text, const Shape& shape, const Where& where) {
    if (text.size() > longestText || !isPlainText(text))
        return wrong("Plain text of at most 8192 bytes is expected here.", where);
    const auto is = [&](Shape::Is kind) { return shape.is == kind; };
    if (text.empty() && !is(Shape::Is::textOrEmpty)) return wrong("This text is empty.", where);
    if (!shape.words.empty() && std::find(shape.words.begin(), shape.words.end(), text) == shape.words.end())
        return wrong("This word is not one of those that can stand here.", where);
    const bool isHash = text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string::npos;
    if (is(Shape::Is::hash) && !isHash) return wrong("A SHA-256 in lower-case hex is expected here.", where);
    if (is(Shape::Is::decimal) && !Decimal::parse(text))
        return wrong("A decimal number is expected here.", where);
    if (is(Shape::Is::instant) && !parseInstant(text)) return wrong("A time in UTC is expected here.", where);
    if (is(Shape::Is::date) && !parseInstant(text + "T00:00:00.000Z"))
        return wrong("A date is expected here, as 2026-06-20.", where);
    return {};
}

Result<void> checkInteger(const Json& value, const Shape& shape, const Where& where) {
    const bool fits =
        value.is_number_integer() &&
        (!value.is_number_unsigned() || value.get<std::uint64_t>() <= std::uint64_t{INT64_MAX}) &&
        value.get<std::int64_t>() >= shape.least && value.get<std::int64_t>() <= shape.most;
    if (fits) return {};
    return wrong("An integer from " + std::to_string(shape.least) + " to " + std::to_string(shape.most) +
                     " is expected here.",
                 where);
}

Result<void> check(const Json& value, const Shape& shape, const Where& where) {
    switch (shape.is) {
    case Shape::Is::anything:
        return {};
    case Shape::Is::object:
        return checkObject(value, shape, where);
    case Shape::Is::list:
        return checkList(value, shape, where);
    case Shape::Is::integer:
        return checkInteger(value, shape, where);
    case Shape::Is::flag:
        return value.is_boolean() ? Result<void>() : wrong("True or false is expected here.", where);
    default:
        if (!value.is_string()) return wrong("A text is expected here.", where);
        return checkText(value.get_ref<const std::string&>(), shape, where);
    }
}

} // namespace

Shape::Shape(Is kind) : is(kind) {}

Shape object(std::vector<Field> fields) {
    Shape shape(Shape::Is::object);
    shape.fields = std::move(fields);
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

Result<void> checkShape(const Json& value, const Shape& shape, const std::string& pointer) {
    return check(value, shape, Where(pointer));
}

} // namespace ambit::record
