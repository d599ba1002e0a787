// The typefaces of a record's pages. They are our own copies under names of our own: a typeface of the same
// name on the machine, newer, older or a different cut, never gets in.
#pragma once

#include "base/result.hpp"

#include <QFont>
#include <QString>

namespace ambit::paper {

enum class Face { regular, bold, mono };

/// Text is laid out and drawn in steps of 1/20 pt.
inline constexpr int stepsPerPoint = 20;

/// Once a process. Error storage: a typeface can't be read. Precondition of everything below.
[[nodiscard]] Result<void> loadFonts();

/// `size` in points; the font's own unit is the step.
[[nodiscard]] QFont fontOf(Face face, double size);

/// Can the bundled typefaces draw it? Never true for characters that only direct others (bidirectional
/// overrides and such): what is signed must read as it stands.
[[nodiscard]] bool canShow(char32_t character);

/// As it will be drawn: composed (NFC), \n as line separator, and □ for each character that can't be shown.
[[nodiscard]] QString shown(std::string_view utf8);

/// Does `shown` put a □ in it?
[[nodiscard]] bool isShownWhole(std::string_view utf8);

} // namespace ambit::paper
