// Reads one JSON object field by field and refuses what isn't wanted. The first thing wrong is kept; reading
// goes on with empty values.
#pragma once

#include "base/parse.hpp"
#include "base/pointer.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ambit {

class Fields {
public:
    /// `json` must outlive this; `pointer` is where it stands.
    Fields(const Json& json, std::string pointer, std::optional<Error>& error);

    [[nodiscard]] bool has(const char* name) const;
    std::string text(const char* name);        ///< plain text, 1 to 8192 bytes
    std::string textOrEmpty(const char* name); ///< the same, may be empty
    std::string textIfThere(const char* name); ///< the same, 1 byte at least if there; "" if not
    std::string decimal(const char* name);     ///< a decimal string
    std::string hash(const char* name);        ///< 64 lower-case hex digits
    std::int64_t integer(const char* name, std::int64_t least, std::int64_t most);
    /// One of the words; gives its number.
    std::size_t word(const char* name, const std::vector<std::string_view>& words);
    Fields inner(const char* name);
    /// The elements of an array of objects, at most `most`.
    std::vector<Fields> list(const char* name, std::size_t most);
    /// Any value, for the caller to look into; nullptr if it isn't there.
    [[nodiscard]] const Json* any(const char* name);
    [[nodiscard]] std::string at(const char* name) const {
        return pointerTo(pointer, std::string_view(name));
    }
    /// Every field must have been read by now.
    void end();
    void fail(const std::string& what, const std::string& name);

private:
    const Json* find(const char* name);
    std::string text(const char* name, bool mayBeEmpty);

    const Json* object = nullptr; ///< none: not an object
    std::string pointer;
    std::optional<Error>* error;
    std::vector<const Json*> read; ///< each once
};

} // namespace ambit
