// Repetitions: a point written once, one for each member of its repeat; and what a reference to it then
// means.
#pragma once

#include "airframe/draft.hpp"

#include <map>

namespace ambit::airframe {

/// `text` with every {repeat} in it replaced.
[[nodiscard]] std::string fill(const std::string& text, const std::string& repeat, const std::string& with);

/// A point of its own. Its lists other than `after` have the indices of those in the file ("" where
/// unreadable).
struct Expanded {
    Point point;
    std::string at; ///< pointer to the point it was written as

    struct Wanted {
        std::string setting;
        std::string state;
        std::string at;
    };
    std::vector<Wanted> wanted; ///< its `when` and its member's, each with its pointer
};

struct Expansion {
    std::vector<Expanded> points;
    /// For each point as written, the ids that stand for it; none if its repeat can't be read.
    std::map<std::string, std::vector<std::string>> ids;
    bool complete =
        true; ///< false: some points could not be repeated, so that what is absent may yet be there
};

/// `needs` and walks refer to points through this. An unknown point is noted at `where`.
[[nodiscard]] std::vector<std::string> resolve(const Expansion& expansion, const std::string& reference,
                                               const std::string& where, Errors& errors);

/// All references in a list at the pointer `at`, no id twice.
[[nodiscard]] std::vector<std::string> resolveAll(const Expansion& expansion,
                                                  const std::vector<std::string>& references,
                                                  const std::string& at, Errors& errors);

[[nodiscard]] Expansion expand(const Draft& draft, Errors& errors);

} // namespace ambit::airframe
