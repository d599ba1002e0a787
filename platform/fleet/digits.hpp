// Numbers in names.
#pragma once

#include <cstddef>
#include <string>

namespace ambit::fleet {

/// 7 as "0007"; 12345 as it is.
inline std::string fourDigits(std::size_t number) {
    std::string digits = std::to_string(number);
    return digits.size() < 4 ? std::string(4 - digits.size(), '0') + digits : digits;
}

} // namespace ambit::fleet
