// What somebody who follows the walk says, into the log of the round in hand.
#pragma once

#include "archive/open_round.hpp"
#include "record/key.hpp"

namespace ambit::archive {

/// `statement` and `jws`: canonical JSON as it came, by a connection whose certificate is `peer`. Checked
/// (record::askedBy), then committed as `asked`; a look again orders what is left anew. Said again, the same
/// statement is in the log already: no change. Errors: those of the check; nothing is in the log then.
[[nodiscard]] Result<void> hear(OpenRound& round, const record::Certificate& peer, std::string_view statement,
                                std::string_view jws, Instant at);

} // namespace ambit::archive
