#include "base/sentence.hpp"

namespace ambit {

namespace {

std::string english(const Sentence::Made& made) {
    std::string text;
    const std::string& pattern = made.pattern;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const bool isPart =
            pattern[i] == '%' && i + 1 < pattern.size() && pattern[i + 1] >= '1' && pattern[i + 1] <= '9';
        if (!isPart) {
            text += pattern[i];
            continue;
        }
        const auto part = static_cast<std::size_t>(pattern[++i] - '1');
        if (part < made.parts.size()) text += made.parts[part];
    }
    return text;
}

} // namespace

Sentence::Sentence(Made of) : std::string(english(of)), from(std::make_shared<const Made>(std::move(of))) {}

const Sentence::Made* Sentence::made() const {
    return from != nullptr && english(*from) == *this ? from.get() : nullptr;
}

Sentence quoted(Sentence name) {
    return say("“%1”", std::move(name));
}

Sentence ended(Sentence words) {
    if (words.ends_with('.')) return words;
    return Sentence(Sentence::Made{"%1.", {std::move(words)}});
}

Sentence joined(Sentence first, Sentence second) {
    if (first.empty()) return second;
    if (second.empty()) return first;
    return Sentence(Sentence::Made{"%1 %2", {std::move(first), std::move(second)}});
}

} // namespace ambit
