// The round in hand as all watchers are told of it. One for all of them: what is said here costs the walk the
// same with none and with fifty.
#pragma once

#include "watch/frames.hpp"

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace ambit::watch {

class InHand {
public:
    /// An event was committed to the log: the next one, or `opened`, which begins another round. Of a round
    /// that is taken up again, every event from the first on.
    void append(const round::Event& event);
    /// A round's record as it is signed by now; again with each further signature. Of another round than the
    /// one in hand: nothing is told, since a signature may come when the next one has begun.
    void seal(Sealed sealed);
    /// Who watches now, in the order they came; cut to what a frame holds.
    void watch(std::vector<std::string> names);

    [[nodiscard]] const std::string& round() const { return id; } ///< "": none yet
    [[nodiscard]] std::int64_t events() const { return count; }
    [[nodiscard]] const std::optional<Sealed>& sealed() const { return record; }
    [[nodiscard]] const std::vector<std::string>& watching() const { return who; }
    /// The log, or the record in hand, names this file.
    [[nodiscard]] bool names(const std::string& sha256) const;

    /// These change with what they count.
    [[nodiscard]] std::uint64_t sealedTurn() const { return sealings; }
    [[nodiscard]] std::uint64_t watchingTurn() const { return watchings; }

private:
    std::string id;
    std::int64_t count = 0;
    std::set<std::string, std::less<>> named;
    std::optional<Sealed> record;
    std::uint64_t sealings = 0;
    std::vector<std::string> who;
    std::uint64_t watchings = 0;
};

} // namespace ambit::watch
