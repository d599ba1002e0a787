// What was measured in a photo, drawn over it: the card's outline and the marks, as lines that stand out on
// light and dark alike.
#pragma once

#include "paper/item.hpp"

namespace ambit::paper {

/// For each of the settling's photos.
[[nodiscard]] std::vector<Over> measuredOver(const round::Settled& settled);

} // namespace ambit::paper
