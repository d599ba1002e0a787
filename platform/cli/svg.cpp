#include "cli/svg.hpp"

#include <algorithm>
#include <array>
#include <charconv>

namespace ambit::cli::svg {

namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD";

bool isFollower(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0) == 0x80;
}

/// U+FFFE and U+FFFF are no characters in XML.
bool startsWithNoCharacter(std::string_view text) {
    return text.starts_with("\xEF\xBF\xBE") || text.starts_with("\xEF\xBF\xBF");
}

} // namespace

std::string number(double value, int places) {
    std::array<char, 400> room{}; // the largest double, in full
    const auto [end, error] =
        std::to_chars(room.data(), room.data() + room.size(), value, std::chars_format::fixed, places);
    if (error != std::errc()) return "0";
    std::string text(room.data(), end);
    if (text.front() == '-' && text.find_first_not_of("-0.") == std::string::npos) text.erase(0, 1);
    return text;
}

std::string escaped(std::string_view text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char byte = text[i];
        if (byte == '&')
            out += "&amp;";
        else if (byte == '<')
            out += "&lt;";
        else if (byte == '>')
            out += "&gt;";
        else if (byte == '"')
            out += "&quot;";
        else if (byte == '\'')
            out += "&#39;";
        else if (byte == '\t' || byte == '\n' || byte == '\r')
            out += ' ';
        else if (static_cast<unsigned char>(byte) < 0x20)
            out += replacement;
        else if (startsWithNoCharacter(text.substr(i))) {
            out += replacement;
            i += 2;
        } else
            out += byte;
    }
    return out;
}

std::string points(const std::vector<airframe::Place>& places) {
    std::string out;
    for (const airframe::Place& place : places)
        out += (out.empty() ? "" : " ") + number(place.x) + ',' + number(-place.y);
    return out;
}

std::size_t letters(std::string_view text) {
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return !isFollower(c); }));
}

std::vector<std::string> wrapped(std::string_view text, std::size_t most) {
    std::vector<std::string> lines;
    while (letters(text) > most) {
        std::size_t end = 0; // of what fits
        for (std::size_t count = 0; end < text.size(); ++end) {
            if (!isFollower(text[end]) && ++count > most) break;
        }
        const std::size_t space = text.substr(0, end + 1).rfind(' ');
        const bool atSpace = space != std::string_view::npos && space > 0;
        lines.emplace_back(text.substr(0, atSpace ? space : end));
        text.remove_prefix(atSpace ? space + 1 : end);
    }
    lines.emplace_back(text);
    return lines;
}

} // namespace ambit::cli::svg
