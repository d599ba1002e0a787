// The frames of the watch protocol as values; WATCH.md is the specification. Bytes of others are hostile
// until read here.
#pragma once

#include "base/result.hpp"
#include "round/event.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace ambit::watch {

inline constexpr int version = 1;
inline constexpr std::size_t largestFrame = std::size_t{256} << 10; ///< bytes
inline constexpr std::int64_t mostEvents = 200'000;                 ///< of one round
inline constexpr int mostRoom = 1024;                               ///< events asked for at a time
inline constexpr std::size_t longestName = 200;                     ///< bytes, of a person
inline constexpr std::size_t longestWhy = 1000;                     ///< bytes, of a reason
inline constexpr std::size_t longestStatement = std::size_t{32} << 10;
inline constexpr std::size_t longestJws = std::size_t{16} << 10;
inline constexpr std::size_t mostWatching = 64;
inline constexpr std::size_t wordLetters = 8;                      ///< of an invitation's one-time word
inline constexpr std::size_t largestPiece = std::size_t{96} << 10; ///< bytes
inline constexpr std::int64_t largestAirframe = std::int64_t{2} << 20;
inline constexpr std::int64_t largestPhoto = std::int64_t{64} << 20; ///< as in EVENT.md
inline constexpr std::int64_t largestRecord = std::int64_t{16} << 20;
inline constexpr std::int64_t largestPdf = std::int64_t{128} << 20;

/// Who speaks; certified by their own key, which the connection knows.
enum class Side { walker, watcher };

struct Hello { ///< watcher, first
    std::string name;
    std::string word; ///< the invitation's, at the first meeting; else empty
};

struct Welcome { ///< walker's answer to a hello it accepts
    std::string name;
};

struct Round {               ///< walker: what is walked now
    std::string round;       ///< its id
    std::int64_t events = 0; ///< how far it is
    friend bool operator==(const Round&, const Round&) = default;
};

struct Have { ///< watcher: I have its events up to this one, and room for so many more
    std::string round;
    std::int64_t upTo = 0;
    int room = 0;
    std::string last; ///< SHA-256 of event upTo: in the first `have` for a round, if upTo > 0; else empty
};

struct Logged { ///< walker, "event": the next one
    std::string round;
    std::string json;   ///< canonical: the log's very bytes
    round::Event event; ///< the same, read; what is written is `json`
};

struct Watching { ///< walker: who watches now
    std::vector<std::string> names;
};

struct Say {               ///< watcher: to be put into the log by the walker's device
    std::string id;        ///< 32 hex digits, the watcher's choice; the same again is the same statement
    std::string statement; ///< canonical JSON
    std::string jws;       ///< detached, over the statement
};

struct Heard { ///< walker: what became of a `say` or an `offer`
    std::string id;
    std::string why; ///< empty: it is in the log, or kept
};

enum class FileKind { json, pdf };

struct File {
    FileKind kind{};
    std::string sha256; ///< of its bytes
    std::int64_t size = 0;
    friend bool operator==(const File&, const File&) = default;
};

struct Sealed { ///< walker: the round's record, as it is signed by now
    std::string round;
    std::string recordSha256; ///< its identity: of the canonical content
    std::vector<File> files;  ///< record.json and, if there is one, record.pdf
    friend bool operator==(const Sealed&, const Sealed&) = default;
};

struct Offer {      ///< watcher: the same record with one more signature
    std::string id; ///< as in `say`
    std::string recordSha256;
    std::vector<File> files;
};

struct Want { ///< either: the bytes of a file that the other has named, from this offset on
    std::string sha256;
    std::int64_t from = 0;
};

struct Piece { ///< the answer
    std::string sha256;
    std::int64_t from = 0;
    std::int64_t size = 0; ///< of the whole
    std::string bytes;     ///< 1 to largestPiece
};

struct Gone { ///< the other answer: no such bytes here
    std::string sha256;
};

struct Bye {                       ///< either, last
    std::string why;               ///< for people
    std::optional<ErrorCode> code; ///< for programs; nothing: nothing went wrong
};

using Frame = std::variant<Hello, Welcome, Round, Have, Logged, Watching, Say, Heard, Sealed, Offer, Want,
                           Piece, Gone, Bye>;

/// The word of a frame's kind, as written.
[[nodiscard]] const char* kindOf(const Frame& frame);

/// Its canonical form (RFC 8785). Only an event can come out larger than `largestFrame`; a reason that is too
/// long is cut, and what isn't plain in it left out.
[[nodiscard]] std::string toText(const Frame& frame);

/// Reads what `from` has sent: canonical JSON, at most `largestFrame` bytes, exactly the fields of its kind,
/// of a kind that this side may send. Error: syntax (too large, not canonical), unsupported (a version or
/// kind not known), refused (the other side's kind), invalid (a field, at its pointer).
[[nodiscard]] Result<Frame> frameFrom(std::string_view text, Side from);

/// The same on a caller's tape, whose room is used again.
[[nodiscard]] Result<Frame> frameFrom(std::string_view text, Side from, JsonTape& tape);

/// An error as the last frame.
[[nodiscard]] Bye byeFor(const Error& error);

} // namespace ambit::watch
