// What a round's events alone say, in the form RECORD.md gives it: built into each content, and held against
// each content that is checked. Inside core/record only.
#pragma once

#include "round/event.hpp"

#include <vector>

namespace ambit::record {

/// The fields of a content that come from events, without what only the airframe knows (names, units, limits,
/// openings). Refused (`where`: the event) unless the log is whole: numbered without a gap, from opened to
/// concluded, settled and re-opened by turns, what differs begun and ended by turns.
[[nodiscard]] Result<Json> summaryOf(const std::vector<round::Event>& events);

/// The content's version: that of EVENT.md which brought the latest kind among the events.
[[nodiscard]] int versionOf(const std::vector<round::Event>& events);

} // namespace ambit::record
