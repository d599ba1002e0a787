// English read back into the sentence that it was, for whatever is kept as text only and is to be said in
// another language later. A grammar of patterns: each part of one is told by a reader of its own.
#pragma once

#include "base/sentence.hpp"

#include <functional>
#include <optional>
#include <string_view>

namespace ambit {

/// A pattern of the catalogues that is said and read (the target `languages` finds it by this word).
[[nodiscard]] constexpr const char* pattern(const char* english) {
    return english;
}

/// A whole text as what it was said to be; nullopt: it isn't that.
using PartReader = std::function<std::optional<Sentence>(std::string_view)>;

struct Phrase {
    const char* pattern;
    std::vector<PartReader> parts; ///< of "%1", "%2"…, which it names in this order, once each
};

/// The whole text by the first phrase that fits. Where names could be cut in several ways, the first way from
/// the left; the sentence's English is `text` in any case. The time is that of all ways to cut it: a power of
/// its length, one more for each part.
[[nodiscard]] std::optional<Sentence> readBack(std::string_view text, const std::vector<Phrase>& phrases);

/// What `quoted` has made of a name whose own quotation marks, if any, are in pairs.
[[nodiscard]] std::optional<Sentence> readQuoted(std::string_view text);
/// Digits.
[[nodiscard]] std::optional<Sentence> readCount(std::string_view text);
/// A name as somebody wrote it: anything but nothing.
[[nodiscard]] std::optional<Sentence> readName(std::string_view text);

} // namespace ambit
