#include "base/fields.hpp"

#include "base/decimal.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit {

namespace {

constexpr std::size_t longestText = 8192; ///< bytes

} // namespace

Fields::Fields(const Json& json, std::string where, std::optional<Error>& first)
    : object(json.is_object() ? &json : nullptr), pointer(std::move(where)), error(&first) {
    if (object == nullptr && !*error)
        *error = Error{ErrorCode::invalid, "An object is expected here.", pointer, {}};
}

void Fields::fail(const std::string& what, const std::string& name) {
    if (!*error) *error = Error{ErrorCode::invalid, what, pointerTo(pointer, std::string_view(name)), {}};
}

const Json* Fields::find(const char* name) {
    if (object == nullptr) return nullptr;
    const auto found = object->find(name);
    if (found != object->end()) {
        if (std::find(read.begin(), read.end(), &*found) == read.end()) read.push_back(&*found);
        return &*found;
    }
    fail("This field is missing.", name);
    return nullptr;
}

bool Fields::has(const char* name) const { return object != nullptr && object->contains(name); }

std::string Fields::text(const char* name, bool mayBeEmpty) {
    const Json* found = find(name);
    if (found == nullptr) return {};
    if (!found->is_string()) {
        fail("A text is expected here.", name);
        return {};
    }
    const auto& text = found->get_ref<const std::string&>();
    if (text.empty() && !mayBeEmpty) fail("This text is empty.", name);
    if (text.size() > longestText)
        fail("This text is longer than " + std::to_string(longestText) + " bytes.", name);
    if (!isPlainText(text)) fail("This text holds control characters or is not UTF-8.", name);
    return text;
}

std::string Fields::text(const char* name) {
    return text(name, false);
}

std::string Fields::textOrEmpty(const char* name) {
    return text(name, true);
}

std::string Fields::textIfThere(const char* name) {
    return has(name) ? text(name, false) : std::string();
}

std::string Fields::decimal(const char* name) {
    std::string written = text(name);
    if (!*error && !Decimal::parse(written)) fail("A decimal number in quotes is expected here.", name);
    return written;
}

std::string Fields::hash(const char* name) {
    std::string digits = text(name);
    if (digits.size() != 64 || digits.find_first_not_of("0123456789abcdef") != std::string::npos)
        fail("A SHA-256 of 64 lower-case hex digits is expected here.", name);
    return digits;
}

std::int64_t Fields::integer(const char* name, std::int64_t least, std::int64_t most) {
    const Json* found = find(name);
    if (found == nullptr) return 0;
    // A parser gives non-negative integers as unsigned ones; beyond int64 they are out of range anyway.
    const bool tooLarge =
        found->is_number_unsigned() && found->get<std::uint64_t>() > static_cast<std::uint64_t>(INT64_MAX);
    if (!found->is_number_integer() || tooLarge || found->get<std::int64_t>() < least ||
        found->get<std::int64_t>() > most) {
        fail("An integer from " + std::to_string(least) + " to " + std::to_string(most) +
                 " is expected here.",
             name);
        return 0;
    }
    return found->get<std::int64_t>();
}

std::size_t Fields::word(const char* name, const std::vector<std::string_view>& words) {
    const std::string given = text(name);
    const auto found = std::find(words.begin(), words.end(), given);
    if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
    std::string choice;
    for (const std::string_view one : words)
        choice += (choice.empty() ? "" : ", ") + std::string(one);
    fail("One of these words is expected here: " + choice + ".", name);
    return 0;
}

Fields Fields::inner(const char* name) {
    static const Json empty = Json::object();
    const Json* found = find(name);
    return {found == nullptr ? empty : *found, pointerTo(pointer, std::string_view(name)), *error};
}

std::vector<Fields> Fields::list(const char* name, std::size_t most) {
    const Json* found = find(name);
    std::vector<Fields> all;
    if (found == nullptr) return all;
    if (!found->is_array() || found->size() > most) {
        fail("A list of at most " + std::to_string(most) + " is expected here.", name);
        return all;
    }
    const std::string where = pointerTo(pointer, std::string_view(name));
    for (std::size_t i = 0; i < found->size(); ++i)
        all.emplace_back((*found)[i], pointerTo(where, i), *error);
    return all;
}

const Json* Fields::any(const char* name) {
    return has(name) ? find(name) : nullptr;
}

void Fields::end() {
    if (object == nullptr || read.size() == object->size()) return;
    for (const auto& [name, value] : object->items())
        if (std::find(read.begin(), read.end(), &value) == read.end()) fail("This field is not known.", name);
}

} // namespace ambit
