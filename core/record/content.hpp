// What a round's record says: RECORD.md. Built from the round's events and the airframe alone; same input,
// same bytes.
#pragma once

#include "base/tape.hpp"
#include "round/state.hpp"

namespace ambit::record {

/// The newest version of records that is known here: that of EVENT.md.
inline constexpr int newestVersion = 7;

/// Content of a concluded round. `previous`: the aircraft's latest records known, sorted hex hashes. Refused
/// unless the round is concluded.
[[nodiscard]] Result<Json> roundContent(const airframe::Airframe& airframe,
                                        const std::vector<round::Event>& events,
                                        const std::vector<std::string>& previous);

/// Checks a content against RECORD.md: fields, types, plain text, integers only, the events fold consistently
/// with the summary as far as can be told without the airframe.
[[nodiscard]] Result<void> checkContent(JsonView content);
[[nodiscard]] Result<void> checkContent(const Json& content); ///< by its canonical form

} // namespace ambit::record
