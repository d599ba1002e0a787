// JSON pointers (RFC 6901), written.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace ambit {

/// The pointer to member `name` of what `parent` points to; "~" and "/" in the name are escaped.
[[nodiscard]] inline std::string pointerTo(const std::string& parent, std::string_view name) {
    std::string pointer = parent + '/';
    for (const char c : name) {
        if (c == '~')
            pointer += "~0";
        else if (c == '/')
            pointer += "~1";
        else
            pointer += c;
    }
    return pointer;
}

/// The pointer to element `index` of the array `parent` points to.
[[nodiscard]] inline std::string pointerTo(const std::string& parent, std::size_t index) {
    return parent + '/' + std::to_string(index);
}

} // namespace ambit
