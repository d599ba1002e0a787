// A whole round in which something was measured, and its signed files.
#pragma once

#include "rounds.hpp"

namespace ambit::test {

/// In a photo of plate(): 5 mm, seen from straight above, 10 pixels a millimetre.
[[nodiscard]] round::Measurement fiveMillimetres(const round::Photo& photo);

/// The demo helicopter's round with one shoe measured in a photo, the other in inches and its trend told, a
/// finding measured in a photo, and a photo of what is sound. `wrong`: the shoe's value isn't what its marks
/// say.
[[nodiscard]] TestRound measuredRound(bool wrong = false);

struct Files {
    std::string json;
    std::string pdf;
};
/// By Robin Example. Needs a QGuiApplication.
[[nodiscard]] Files signedFiles(const TestRound& round);

} // namespace ambit::test
