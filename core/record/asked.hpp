// What somebody who follows a round says to whoever walks it, signed by them: EVENT.md, “What is asked”.
#pragma once

#include "record/key.hpp"
#include "round/state.hpp"

namespace ambit::record {

/// On the device of whoever says it. Refused unless the key is that of `statement.who`.
[[nodiscard]] Result<round::Jws> signStatement(const round::Statement& statement, const Signer& signer);

/// What goes to the walker's device: both in canonical JSON.
struct Said {
    std::string statement;
    std::string jws;
};
/// The statement as it is sent. Errors: those of signStatement.
[[nodiscard]] Result<Said> said(const round::Statement& statement, const Signer& signer);

/// Does it hold: by a key whose certificate bears the name that the statement gives? Gives the certificate;
/// whose key it is, people settle. Error signature, `where`: the member's pointer in the event.
[[nodiscard]] Result<Certificate> checkAsked(const round::Asked& asked);

/// On the device of whoever walks, before it is committed: what came, as the event that it becomes in this
/// round. `peer`: the certificate of the connection by which it came; a statement signed by another's key is
/// refused, as is one that the round's rules forbid (replayed, of another round, too many). Nothing is
/// committed here.
[[nodiscard]] Result<round::Asked> askedBy(const Certificate& peer, JsonView statement, JsonView jws,
                                           const round::State& state, const airframe::Airframe& airframe);

} // namespace ambit::record
