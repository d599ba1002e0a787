// Who may watch. An invitation's word lets one unknown device in, once, within five minutes; from then on its
// certificate does, until it is taken back. What guesses is counted for all connections together: a stranger
// can open as many as it likes. Nothing here grows with guesses.
#pragma once

#include "base/result.hpp"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace ambit::watch {

/// Milliseconds of a clock that only goes forward, whatever happens to the time of day.
struct Tick {
    std::int64_t ms = 0;
    friend auto operator<=>(const Tick&, const Tick&) = default;
};

/// Another person's device, known by its key.
struct Peer {
    std::string certificateSha256; ///< of the DER certificate, hex
    std::string name;              ///< as on that certificate
    friend bool operator==(const Peer&, const Peer&) = default;
};

/// Somebody at the door: TLS has proven that they hold the certificate's key.
struct Knock {
    Peer who;
    std::string word; ///< of `hello`; "": none
};

struct Admitted {
    bool isNew = false; ///< by the word: the peers have changed, store them
};
struct Refused {
    Error why;      ///< for `bye`, and to be logged
    Tick notBefore; ///< the answer waits until then
};
using Answer = std::variant<Admitted, Refused>;

class Door {
public:
    static constexpr std::int64_t wordLivesMs = 300'000; ///< five minutes
    static constexpr int mostWrong = 5;                  ///< wrong words; then the word is dead
    static constexpr std::int64_t firstWaitMs = 1000;    ///< for the first wrong word's answer; then doubled
    static constexpr std::int64_t longestWaitMs = 60'000;
    static constexpr std::size_t mostPeers = 256;
    static constexpr std::size_t wordBytes = 5; ///< random bytes in a word: 40 bits

    /// `known`: as stored.
    explicit Door(std::vector<Peer> known = {}) : peers(std::move(known)) {}

    /// Makes a new word of random bytes, which must come from the system's generator and serve nothing else;
    /// the one before it is dead. Its odds: mostWrong in 2^40 that a stranger guesses it. Refused: fewer
    /// bytes than wordBytes, or no room for another peer.
    [[nodiscard]] Result<std::string> invite(std::span<const std::uint8_t> random, Tick now);
    void closeInvitation(); ///< nobody new comes in any more

    [[nodiscard]] Answer knock(const Knock& knock, Tick now);

    /// From now on it is unknown; its connection is for the caller to end. False: it wasn't known.
    bool takeBack(std::string_view certificateSha256);
    [[nodiscard]] const std::vector<Peer>& known() const {
        return peers;
    } ///< to be stored; in order of coming
    [[nodiscard]] bool knows(std::string_view certificateSha256) const;

    /// How long the word still lives; 0: none is open.
    [[nodiscard]] std::int64_t openForMs(Tick now) const;
    [[nodiscard]] int wrongWords() const { return wrong; } ///< of the word that was last shown

private:
    enum class Ending { none, used, old, guessed, closed };

    void expire(Tick now);
    void kill(Ending how);
    [[nodiscard]] Refused refused(Sentence what, Tick notBefore) const;
    [[nodiscard]] bool isTheWord(std::string_view given) const;
    Answer takeWord(const Knock& knock, Tick now);
    Refused wrongWord(Tick now);

    std::vector<Peer> peers;
    std::string word; ///< "": none is open
    Tick since;
    Ending ended = Ending::none; ///< of the last word
    int wrong = 0;
    Tick free; ///< the answer to the last wrong word goes out then: the next one later
};

} // namespace ambit::watch
