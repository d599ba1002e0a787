#include "base/fields.hpp"

#include "base/decimal.hpp"

#include <algorithm>

namespace ambit {

namespace {

constexpr std::size_t longestText = 8192; ///< bytes
constexpr std::size_t mostFields = 64;    ///< told apart; no object that is read here has so many

} // namespace

Fields::Fields(JsonView json, const Where& its, std::optional<Error>& first)
    : object(json.isObject() ? json : JsonView()), where(its), error(&first) {
    if (!object && !*error)
        *error = Error{ErrorCode::invalid, say("An object is expected here."), where.text(), {}};
}

void Fields::fail(const Sentence& what, std::string_view name) {
    if (!*error) *error = Error{ErrorCode::invalid, what, Where(where, name).text(), {}};
}

JsonView Fields::find(std::string_view name) {
    if (!object) return {};
    std::size_t place = 0;
    for (const JsonView::Member member : object.members()) {
        if (member.name == name) {
            if (place < mostFields) read |= std::uint64_t{1} << place;
            return member.value;
        }
        ++place;
    }
    fail(say("This field is missing."), name);
    return {};
}

bool Fields::has(std::string_view name) const {
    return static_cast<bool>(object[name]);
}

std::string_view Fields::view(const char* name, bool mayBeEmpty) {
    const JsonView found = find(name);
    if (!found) return {};
    if (!found.isText()) {
        fail(say("A text is expected here."), name);
        return {};
    }
    const std::string_view text = found.text();
    if (text.empty() && !mayBeEmpty) fail(say("This text is empty."), name);
    if (text.size() > longestText)
        fail(say("This text is longer than %1 bytes.", figure(std::to_string(longestText))), name);
    if (!found.isPlain()) fail(say("This text holds control characters or is not UTF-8."), name);
    return text;
}

std::string Fields::textIfThere(const char* name) {
    return has(name) ? text(name) : std::string();
}

std::string Fields::decimal(const char* name) {
    const std::string_view written = view(name);
    if (!*error && !Decimal::parse(written)) fail(say("A decimal number in quotes is expected here."), name);
    return std::string(written);
}

std::string Fields::hash(const char* name) {
    const std::string_view digits = view(name);
    if (digits.size() != 64 || digits.find_first_not_of("0123456789abcdef") != std::string_view::npos)
        fail(say("A SHA-256 of 64 lower-case hex digits is expected here."), name);
    return std::string(digits);
}

std::int64_t Fields::integer(const char* name, std::int64_t least, std::int64_t most) {
    const JsonView found = find(name);
    if (!found) return 0;
    const auto value = found.integer();
    if (value && *value >= least && *value <= most) return *value;
    fail(say("An integer from %1 to %2 is expected here.", figure(std::to_string(least)),
             figure(std::to_string(most))),
         name);
    return 0;
}

std::size_t Fields::word(const char* name, std::initializer_list<std::string_view> words) {
    const std::string_view given = view(name);
    const auto* const found = std::find(words.begin(), words.end(), given);
    if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
    std::string choice;
    for (const std::string_view one : words)
        choice += (choice.empty() ? "" : ", ") + std::string(one);
    fail(say("One of these words is expected here: %1.", choice), name);
    return 0;
}

Fields Fields::inner(const char* name) {
    return {find(name), Where(where, std::string_view(name)), *error};
}

FieldList Fields::list(const char* name, std::size_t most) {
    JsonView found = find(name);
    if (found && (!found.isList() || found.size() > most)) {
        fail(say("A list of at most %1 is expected here.", figure(std::to_string(most))), name);
        found = {};
    }
    return {found, Where(where, std::string_view(name)), *error};
}

JsonView Fields::any(const char* name) {
    return has(name) ? find(name) : JsonView();
}

void Fields::end() {
    if (!object) return;
    std::size_t place = 0;
    for (const JsonView::Member member : object.members()) {
        const bool known = place < mostFields && (read >> place & 1U) != 0;
        if (!known) fail(say("This field is not known."), member.name);
        ++place;
    }
}

} // namespace ambit
