// Says in a script what comes from another device in a real round: an ask, signed by who asks.
#pragma once

#include "record/key.hpp"
#include "round/state.hpp"
#include "script/script.hpp"

namespace ambit::script {

class Asker {
public:
    /// `folder`: where the paths of keys start.
    explicit Asker(std::filesystem::path folder) : beside(std::move(folder)) {}

    /// The next ask of this round. Its id comes from the round and its number, so that the same script says
    /// the same; only the signature is another each time. Errors: the key file is missing, doesn't open, or
    /// is another person's.
    [[nodiscard]] Result<round::Asked> say(const Ask& ask, const round::State& state, Instant at);

private:
    [[nodiscard]] Result<const record::Signer*> keyOf(const Ask& ask, Instant at);

    std::filesystem::path beside;
    std::map<std::string, record::Signer> keys; ///< opened ones by path, made ones by name
};

} // namespace ambit::script
