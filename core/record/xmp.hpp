// What a PDF says of itself: the same in its Info dictionary and in XMP (ISO 16684-1), as PDF/A demands.
// Inside core/record only.
#pragma once

#include "base/parse.hpp"
#include "base/time.hpp"

#include <string>

namespace ambit::record {

struct About {
    std::string title;
    std::string author;
    std::string producer;
    LocalInstant at; ///< whole seconds count

    /// Of a checked content.
    [[nodiscard]] static About of(const Json& content);
};

[[nodiscard]] std::string oneLine(std::string text); ///< line breaks become spaces
[[nodiscard]] std::string pdfDate(LocalInstant at);  ///< D:20260620073000+02'00'
[[nodiscard]] std::string xmpOf(const About& about);

} // namespace ambit::record
