// Takes the members of one JSON object one by one, and refuses what was not asked for.
#pragma once

#include "base/parse.hpp"
#include "base/pointer.hpp"

#include <cstdint>
#include <optional>
#include <set>
#include <string>

namespace ambit {

/// Ask for every field, then finish(): the first thing wrong on the way is the error, at its pointer. Values
/// asked for after an error are empty. The JSON must outlive this.
class Fields {
public:
    explicit Fields(const Json& object, std::string pointer = {}) : json(object), at(std::move(pointer)) {
        if (!json.is_object()) wrong(nullptr, "This must be an object.");
    }

    /// Plain text (isPlainText) of 1 to `most` bytes.
    std::string text(const char* name, std::size_t most = 2000) { return textOf(name, true, false, most); }
    std::string textOrEmpty(const char* name, std::size_t most = 2000) {
        return textOf(name, true, true, most);
    }
    std::optional<std::string> optionalText(const char* name, std::size_t most = 2000) {
        if (!has(name)) return std::nullopt;
        return text(name, most);
    }
    std::int64_t integer(const char* name, std::int64_t least, std::int64_t most) {
        const Json* value = take(name, true);
        if (value == nullptr) return 0;
        const bool fits =
            value->is_number_integer() &&
            (!value->is_number_unsigned() || value->get<std::uint64_t>() <= std::uint64_t{INT64_MAX});
        if (!fits || value->get<std::int64_t>() < least || value->get<std::int64_t>() > most) {
            wrong(name, "This must be a whole number from " + std::to_string(least) + " to " +
                            std::to_string(most) + ".");
            return 0;
        }
        return value->get<std::int64_t>();
    }
    bool boolean(const char* name) {
        const Json* value = take(name, true);
        if (value == nullptr) return false;
        if (!value->is_boolean()) wrong(name, "This must be true or false.");
        return value->is_boolean() && value->get<bool>();
    }
    /// Any value; nullptr where it is missing (an error if `required`).
    const Json* value(const char* name, bool required = true) { return take(name, required); }
    [[nodiscard]] bool has(const char* name) const { return json.is_object() && json.contains(name); }
    [[nodiscard]] std::string pointer(const char* name) const { return pointerTo(at, name); }

    /// Says that a field's value is wrong for a reason only the caller knows.
    void wrong(const char* name, std::string what) {
        if (error) return;
        error = Error{ErrorCode::invalid, std::move(what), name != nullptr ? pointer(name) : at, {}};
    }
    void wrong(std::nullptr_t, std::string what) {
        wrong(static_cast<const char*>(nullptr), std::move(what));
    }

    [[nodiscard]] Result<void> finish() {
        if (!error && json.is_object())
            for (const auto& [name, unused] : json.items())
                if (!asked.contains(name)) {
                    wrong(name.c_str(), "Unknown field.");
                    break;
                }
        if (error) return tl::unexpected(*error);
        return {};
    }

private:
    const Json* take(const char* name, bool required) {
        asked.insert(name);
        if (error) return nullptr;
        const auto found = json.find(name);
        if (found != json.end()) return &*found;
        if (required) wrong(name, "This field is missing.");
        return nullptr;
    }
    std::string textOf(const char* name, bool required, bool mayBeEmpty, std::size_t most) {
        const Json* value = take(name, required);
        if (value == nullptr) return {};
        if (!value->is_string()) {
            wrong(name, "This must be a text.");
            return {};
        }
        const auto& text = value->get_ref<const std::string&>();
        if ((text.empty() && !mayBeEmpty) || text.size() > most || !isPlainText(text)) {
            wrong(name, "This must be plain text of " + std::string(mayBeEmpty ? "0" : "1") + " to " +
                            std::to_string(most) + " bytes, without control characters.");
            return {};
        }
        return text;
    }

    const Json& json;
    std::string at;
    std::set<std::string> asked;
    std::optional<Error> error;
};

} // namespace ambit
