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

/// A pointer that is written only when it is asked for. Each must outlive those made from it.
class Where {
public:
    explicit Where(std::string_view pointer) : name(pointer) {} ///< as it stands
    Where(const Where& parent, std::string_view member) : above(&parent), name(member) {}
    Where(const Where& parent, std::size_t element) : above(&parent), index(element), isElement(true) {}

    [[nodiscard]] std::string text() const {
        if (above == nullptr) return std::string(name);
        return isElement ? pointerTo(above->text(), index) : pointerTo(above->text(), name);
    }

private:
    const Where* above = nullptr;
    std::string_view name;
    std::size_t index = 0;
    bool isElement = false;
};

} // namespace ambit
