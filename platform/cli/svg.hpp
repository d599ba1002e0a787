// SVG as text: numbers without locale, texts without harm.
#pragma once

#include "airframe/airframe.hpp"

#include <string>
#include <string_view>

namespace ambit::cli::svg {

/// Decimals fixed, a point whatever the locale, never "-0".
[[nodiscard]] std::string number(double value, int places = 4);

/// For text and attributes. What XML 1.0 can't hold becomes U+FFFD.
[[nodiscard]] std::string escaped(std::string_view text);

/// "x,y x,y …", y turned to point down, as SVG has it.
[[nodiscard]] std::string points(const std::vector<airframe::Place>& places);

/// Lines of at most `most` letters, broken at spaces, or anywhere in a word that is longer.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, std::size_t most);

/// Code points; of invalid UTF-8, something not above its bytes.
[[nodiscard]] std::size_t letters(std::string_view text);

} // namespace ambit::cli::svg
