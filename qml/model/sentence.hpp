// What core says, in the language spoken: patterns from the catalogue, figures and days as its readers write
// them, names as the airframe has them in it.
#pragma once

#include "base/result.hpp"

#include <QString>

namespace ambit::view {

/// The context under which a translator may know an airframe's names.
inline constexpr const char* airframeContext = "airframe";

[[nodiscard]] QString text(const Sentence& sentence);
[[nodiscard]] QString errorText(const Error& error); ///< what, where unless it is in it, and what to do
[[nodiscard]] QString figureText(const std::string& decimal);                           ///< "2.1", "2,1"
[[nodiscard]] QString measureText(const std::string& decimal, const std::string& unit); ///< "2,1 mm"
/// What a person typed as a number, as core reads one: "2,1" where numbers are written so.
[[nodiscard]] std::string typedDecimal(const QString& typed);
[[nodiscard]] QString dayInWords(const std::string& date); ///< of yyyy-mm-dd: "2026-06-20", "20.06.2026"

} // namespace ambit::view
