// The file's `translations`: taken, checked against the texts they translate, put in their place.
#pragma once

#include "airframe/draft.hpp"

namespace ambit::airframe {

/// Takes `translations` of the file's top level. `draft`: all that they may translate. What translates
/// nothing is noted only if nothing else is wrong so far: what is wrong elsewhere may be what it translates.
[[nodiscard]] Translations takeTranslations(Fields& file, Draft& draft);

/// Puts every text that the language has in the place of what it translates; true if there is one.
bool translate(Draft& draft, const std::string& language);

/// The texts that the language has nothing for, as written, in the file's order, each once.
[[nodiscard]] std::vector<std::string> missing(Draft& draft, const std::string& language);

} // namespace ambit::airframe
