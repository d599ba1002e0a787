#include "base/phrase.hpp"

#include <algorithm>

namespace ambit {

namespace {

constexpr std::string_view open = "“", close = "”";

/// Reads `text` by what is left of a pattern; the parts before it are in `made`.
bool fits(std::string_view text, std::string_view left, const Phrase& phrase, Sentence::Made& made) {
    const std::size_t at = made.parts.size();
    const std::string name = "%" + std::to_string(at + 1);
    const std::size_t begins = left.find(name);
    if (begins == std::string_view::npos || at >= phrase.parts.size()) return text == left;
    if (!text.starts_with(left.substr(0, begins))) return false;
    text.remove_prefix(begins);
    left.remove_prefix(begins + name.size());
    const std::string_view next = left.substr(0, left.find('%')); // what ends the part
    for (std::size_t end = next.empty() ? text.size() : text.find(next); end <= text.size();
         end = text.find(next, end + 1)) {
        if (auto part = phrase.parts[at](text.substr(0, end))) {
            made.parts.push_back(std::move(*part));
            if (fits(text.substr(end), left, phrase, made)) return true;
            made.parts.resize(at);
        }
        if (next.empty()) break;
    }
    return false;
}

} // namespace

std::optional<Sentence> readBack(std::string_view text, const std::vector<Phrase>& phrases) {
    for (const Phrase& phrase : phrases) {
        Sentence::Made made{phrase.pattern, {}};
        if (fits(text, made.pattern, phrase, made)) return Sentence(std::move(made));
    }
    return std::nullopt;
}

std::optional<Sentence> readQuoted(std::string_view text) {
    if (text.size() < open.size() + close.size() || !text.starts_with(open) || !text.ends_with(close))
        return std::nullopt;
    const std::string_view name = text.substr(open.size(), text.size() - open.size() - close.size());
    int within = 0;
    for (std::size_t i = 0; i < name.size(); ++i) {
        if (name.substr(i).starts_with(open)) ++within;
        if (name.substr(i).starts_with(close) && --within < 0) return std::nullopt;
    }
    if (within != 0) return std::nullopt;
    return quoted(Sentence(std::string(name)));
}

std::optional<Sentence> readCount(std::string_view text) {
    const bool digits =
        !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    return digits ? std::optional(figure(std::string(text))) : std::nullopt;
}

std::optional<Sentence> readName(std::string_view text) {
    return text.empty() ? std::nullopt : std::optional<Sentence>(std::string(text));
}

} // namespace ambit
