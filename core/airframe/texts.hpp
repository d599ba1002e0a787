// The texts for people in a file and in an airframe: names, what is looked for, cautions. Not ids, units,
// codes and sources, which say the same in every language. The one list of them; what translates, goes
// through it.
#pragma once

#include "airframe/draft.hpp"

namespace ambit::airframe {

struct Text {
    std::string* text;
    std::size_t most;               ///< characters, repetitions put in; a name's are one line
    const Repeat* repeat = nullptr; ///< of what it is repeated over; nullptr: written once
};

/// In the order of AIRFRAME.md's table; pointers live as long as `draft` is neither moved nor changed.
[[nodiscard]] std::vector<Text> textsOf(Draft& draft);

/// The same of an airframe, repetitions expanded: two airframes of one file give as many, in one order.
[[nodiscard]] std::vector<std::string*> textsOf(Airframe& airframe);

} // namespace ambit::airframe
