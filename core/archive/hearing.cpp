#include "archive/hearing.hpp"

#include "base/canonical.hpp"
#include "record/asked.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::archive {

Result<void> hear(OpenRound& round, const record::Certificate& peer, std::string_view statement,
                  std::string_view jws, Instant at) {
    JsonTape said, proof;
    const JsonView what = said.read(statement);
    const JsonView signature = proof.read(jws);
    if (!what || !signature)
        return fail(ErrorCode::syntax, say("What was said is not canonical JSON."),
                    what ? "/jws" : "/statement");
    const auto& asks = round.state().asks;
    const bool known = std::any_of(asks.begin(), asks.end(), [&](const auto& one) {
        return canonicalJson(toJson(one.what)) == statement;
    });
    if (known) return {};
    auto asked = record::askedBy(peer, what, signature, round.state(), round.airframe());
    if (!asked) return tl::unexpected(asked.error());
    return round.actAndReplan(std::move(*asked), at);
}

} // namespace ambit::archive
