// Words for a person that can be said in another language: English as text, and what it was made of.
#pragma once

#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace ambit {

/// English words, used as the string they are. Made by `say`, they know their pattern and parts: a front end
/// looks the pattern up in its catalogue and puts the parts in. Any other string is told as it is.
class Sentence : public std::string {
public:
    struct Made {
        std::string pattern;         ///< English; "%1" to "%9" stand for the parts
        std::vector<Sentence> parts; ///< sentences, names as somebody wrote them, figures
    };
    enum class Kind {
        words,
        figure, ///< a decimal number: its point is written as the reader is used to
        day,    ///< yyyy-mm-dd
    };

    Sentence() = default;
    Sentence(const char* words) : std::string(words) {}
    Sentence(std::string words) : std::string(std::move(words)) {}
    Sentence(std::string words, Kind what) : std::string(std::move(words)), its(what) {}
    explicit Sentence(Made of);

    /// Nullptr: told as it is. What was changed since it was made is told as it is, too.
    [[nodiscard]] const Made* made() const;
    [[nodiscard]] Kind kind() const { return its; }

private:
    std::shared_ptr<const Made> from;
    Kind its = Kind::words;
};

[[nodiscard]] inline Sentence figure(std::string decimal) {
    return {std::move(decimal), Sentence::Kind::figure};
}
[[nodiscard]] inline Sentence figure(std::size_t count) {
    return {std::to_string(count), Sentence::Kind::figure};
}
[[nodiscard]] inline Sentence onDay(std::string date) {
    return {std::move(date), Sentence::Kind::day};
}

/// A pattern of the catalogues (the target `languages` finds them by this word) with its parts. A part that
/// it doesn't name is left out.
template<class... Parts> [[nodiscard]] Sentence say(const char* pattern, Parts&&... parts) {
    return Sentence(Sentence::Made{pattern, {Sentence(std::forward<Parts>(parts))...}});
}

/// “name”
[[nodiscard]] Sentence quoted(Sentence name);

/// With a full stop, unless it has one.
[[nodiscard]] Sentence ended(Sentence words);

/// `first` and then `second`; either may be empty.
[[nodiscard]] Sentence joined(Sentence first, Sentence second);

} // namespace ambit
