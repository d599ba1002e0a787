#include "paper/pin.hpp"

#include <algorithm>

namespace ambit::paper {

namespace {

/// Writes `text` over what follows each `before`, up to its end or `stop`.
void overwrite(std::string& pdf, const std::string& before, const std::string& text, char stop) {
    for (std::size_t found = pdf.find(before); found != std::string::npos;
         found = pdf.find(before, found + before.size())) {
        const std::size_t start = found + before.size();
        for (std::size_t i = 0; start + i < pdf.size() && pdf[start + i] != stop; ++i)
            if (i < text.size()) pdf[start + i] = text[i];
    }
}

} // namespace

void pinPdf(std::string& pdf, Instant at, const std::string& identity) {
    const std::string zulu = toText(at);          // 2026-06-20T05:30:00.000Z
    const std::string stamp = zulu.substr(0, 19); // without fraction and zone
    std::string digits = stamp;
    digits.erase(std::remove_if(digits.begin(), digits.end(), [](char c) { return c < '0' || c > '9'; }),
                 digits.end());
    // The zone is written in as many characters as Qt used: Z, or hours and minutes.
    const auto place = [&](const char* before, const std::string& text, const char* zone, char stop) {
        const std::size_t start = pdf.find(before);
        if (start == std::string::npos) return;
        const std::size_t from = start + std::char_traits<char>::length(before);
        const bool asZulu = pdf.find(stop, from) == from + text.size() + 1;
        overwrite(pdf, before, text + (asZulu ? "Z" : zone), stop);
    };
    place("/CreationDate (D:", digits, "+00'00'", ')');
    place("xmp:CreateDate=\"", stamp, "+00:00", '"');
    place("xmp:ModifyDate=\"", stamp, "+00:00", '"');
    const std::string id = identity.substr(0, 32);
    const std::size_t trailer = pdf.rfind("/ID [ <");
    if (trailer == std::string::npos || id.size() < 32) return;
    for (std::size_t open = pdf.find('<', trailer); open != std::string::npos && open + 33 < pdf.size();
         open = pdf.find('<', open + 1))
        pdf.replace(open + 1, 32, id);
}

} // namespace ambit::paper
