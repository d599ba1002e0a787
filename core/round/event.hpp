// What happened in a round, as values; EVENT.md is the format. Stored words never change.
#pragma once

#include "airframe/airframe.hpp"
#include "base/tape.hpp"
#include "base/time.hpp"
#include "round/measured.hpp"
#include "walk/plan.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ambit::round {

using airframe::Severity;

struct Person {
    std::string name;
    std::string role;        ///< pilot, instructor, owner, mechanic
    std::string certificate; ///< certificate or licence number; may be empty
    friend bool operator==(const Person&, const Person&) = default;
};

/// Degrees, WGS 84, as decimal strings; from the caller's positioning.
struct Position {
    std::string latitude;
    std::string longitude;
    friend bool operator==(const Position&, const Position&) = default;
};

struct CounterReading {
    std::string id;
    std::string value; ///< decimal string in the airframe's unit
    friend bool operator==(const CounterReading&, const CounterReading&) = default;
};

/// A photo by the SHA-256 of its bytes; the bytes are kept by the archive.
struct Photo {
    std::string sha256;
    std::string type; ///< image/jpeg or image/png
    std::int64_t bytes = 0;
    friend bool operator==(const Photo&, const Photo&) = default;
};

// --- the events
// ------------------------------------------------------------------------------------------------------

struct Opened { ///< "opened"
    std::string registration;
    std::string serial;
    std::string airframe;       ///< its id
    std::string airframeSha256; ///< its identity
    std::string walk;
    Person who;
    std::vector<CounterReading> counters;
    int offsetMinutes = 0; ///< local time's offset from UTC
    std::optional<Position> position;
    std::vector<walk::Step> plan;
};

struct Planned {  ///< "planned": what is left was ordered anew
    Sentence why; ///< in English
    std::vector<walk::Step> plan;
};

struct StandReached { ///< "stand"
    std::string stand;
};

struct SettingChanged { ///< "setting"
    std::string setting;
    std::string to;
};

enum class Outcome { sound, finding, notInspected }; ///< "sound", "finding", "not inspected"

enum class By {
    touch,
    key
}; ///< how it was told: on the screen (not written), or "key": a clicker, a headset

struct Settled { ///< "settled"
    std::string point;
    Outcome outcome{};
    By by = By::touch;
    std::optional<std::string> value; ///< decimal string, in `unit`
    // finding
    std::string words;
    Severity severity{};
    std::vector<Photo> photos; ///< of what is sound too, to be compared with (version 5)
    // not inspected
    std::string why;
    std::string basis; ///< what allows flight without it; empty: none stated
    // Version 5
    std::string unit;                      ///< in which the value was entered; empty: the limit's
    bool renewed = false;                  ///< the part was renewed or repainted: its values begin anew
    std::vector<Measurement> measurements; ///< in the photos
    bool byPhoto = false;                  ///< the value is that of the first measurement
    // Version 6, of a value that isn't
    std::optional<airframe::Means> from; ///< what it was read from; none: not said
    std::string uncertainty;             ///< standard, in the value's unit; empty: not stated
};

/// The value's standard uncertainty, whatever it is from, in the value's unit; empty: not stated.
[[nodiscard]] const std::string& uncertaintyOf(const Settled& settled);
/// What the value was read from, in EVENT.md's word: "photo", "gauge" …; empty: not said.
[[nodiscard]] std::string fromOf(const Settled& settled);
/// Such a word for people: "measured in a photo", "read on a gauge"; empty of any other.
[[nodiscard]] Sentence fromText(std::string_view from);

/// The value, in the limit's unit, was read from what its airframe says it usually is, and as well.
void readAsUsual(Settled& settled, const airframe::Limit& limit);

struct Reopened { ///< "reopened": a settled point is to be settled again; what was said before stays in the
                  ///< log
    std::string point;
    std::string why;
};

struct OpeningMade { ///< "opening made"
    std::string opening;
};
struct OpeningClosed { ///< "opening closed"
    std::string opening;
};
struct Paused {};  ///< "paused"
struct Resumed {}; ///< "resumed"
struct Note {      ///< "note"
    std::string words;
};

struct Concluded { ///< "concluded"
    bool fit = false;
    std::string reasons;
};

struct Withdrawn { ///< "withdrawn": the conclusion is taken back before signing, the round goes on
    std::string why;
};

struct StandBlocked { ///< "stand blocked": it can't be used, today
    std::string stand;
    std::string why;
};
struct StandFree { ///< "stand free": it can be used again
    std::string stand;
};

/// A corner of a marked area: metres on the figure, decimal strings from -100 to 100, at most 3 decimals.
struct Corner {
    std::string x;
    std::string y;
    friend bool operator==(const Corner&, const Corner&) = default;
};

struct AreaMarked {        ///< "area marked": something that isn't the aircraft's stands in the way
    std::int64_t area = 0; ///< its number: 1, 2, 3 … as marked in this round
    std::vector<Corner> outline;
    std::string why; ///< what it is: "Wall"
};
struct AreaCleared { ///< "area cleared": it isn't in the way any more
    std::int64_t area = 0;
};

struct Light { ///< "light": how much there is to see by
    bool low = false;
};

/// What somebody who follows the round says to whoever walks it, as they signed it.
struct Statement {
    enum class Kind { lookAgain, question, remark }; ///< "look again", "question", "remark"
    std::string round;                               ///< its id: said of this round and no other
    std::string id; ///< 32 lower-case hex digits, chosen by who says it: the same words are not told twice
    Kind kind{};
    std::string point; ///< empty: of none; a look again has one
    std::string words; ///< may be empty in a look again only
    Instant at;        ///< by their clock
    Person who;
};

/// A detached JWS (RFC 7515, appendix F) over the statement's canonical form; core/record makes and checks
/// it.
struct Jws {
    std::string header; ///< "protected"
    std::string signature;
};

inline constexpr std::int64_t mostAsks = 1000; ///< in one round

struct Asked { ///< "asked": somebody who follows asks for a second look, asks something or remarks on it
    std::int64_t ask = 0; ///< its number: 1, 2, 3 … in this round
    Statement statement;
    Jws jws;
};
struct Answered { ///< "answered": a question is, by whoever walks
    std::int64_t ask = 0;
    std::string words;
};
struct Declined { ///< "declined": a look again or a question is not taken up
    std::int64_t ask = 0;
    std::string why;
};

struct Alone {
}; ///< "alone": walked without being shown what others found that day, to be compared with theirs

// Version 4: no free hand, interrupted, in the dark.

inline constexpr std::size_t mostInPortion = 20; ///< points: more than anybody keeps in mind

/// "portion begun": points of the stand where one is, told before the climb, are being looked at; nothing is
/// settled until it has ended.
struct PortionBegun {
    std::vector<std::string> points; ///< in the order in which they are told and asked for
};
struct PortionEnded {   ///< "portion ended": down again
    bool looked = true; ///< "looked at": each of its points may be settled now; else "given up"
};

/// What the operator wants after an interruption. Published advice differs (back some points; the stand
/// again; from the start): so it is a setting, and stands in the log.
struct BackRule {
    enum class From { points, stand, start }; ///< "points", "stand", "start"
    From from = From::points;
    int points = 3; ///< of From::points: 1 to mostBack
    friend bool operator==(const BackRule&, const BackRule&) = default;
};
inline constexpr int mostBack = 20;

struct Interrupted { ///< "interrupted": and over; what the rule wants is to be settled again
    enum class Cause { paused, call, locked, away, silent, stopped };
    ///< "paused"; "call"; "locked": the screen; "away": the program was behind others; "silent": nothing was
    ///< told for long; "stopped": the program ended
    Cause cause{};
    std::int64_t seconds = 0; ///< how long, as the device's clock says; of a clock set back, 0
    BackRule rule;
    std::vector<std::string> again; ///< points, in the order in which they were settled (askedBack)
};

/// "quick run": several points settled within the time that one of them takes (pace.hpp), asked about once.
/// A number, not a judgement.
struct QuickRun {
    std::int64_t first = 0; ///< seq of the events that settled them
    std::int64_t last = 0;
    std::int64_t points = 0;
    std::int64_t ms = 0;
    std::vector<std::string> again; ///< to be settled again; none: it was meant so
};

struct Clock { ///< "clock": the device's against the satellites': the event's own time is the device's
    Instant satellite;
};

/// "night": the flight goes into the dark, so that what the airframe asks for then belongs to the walk; or
/// it doesn't after all.
struct Night {
    bool expected = true; ///< "expected", "not expected"
    bool bySun = false;   ///< by where the sun is; else whoever walks says so: "sun", "pilot"
};

struct Signed {                    ///< "signed": the round is sealed
    std::string recordSha256;      ///< of the record's canonical content
    std::string certificateSha256; ///< of the signer's DER certificate
    std::string name;
};

using What = std::variant<Opened, Planned, StandReached, SettingChanged, Settled, Reopened, OpeningMade,
                          OpeningClosed, Paused, Resumed, Note, StandBlocked, StandFree, AreaMarked,
                          AreaCleared, Light, Concluded, Withdrawn, Signed, Asked, Answered, Declined, Alone,
                          PortionBegun, PortionEnded, Interrupted, QuickRun, Clock, Night, Trended>;

struct Event {
    std::int64_t seq = 0; ///< 1, 2, 3 … without a gap
    Instant at;
    What what;
};

/// The word of an event's kind, as stored.
[[nodiscard]] const char* kindOf(const What& what);

/// The version of EVENT.md that brought this kind, or what is told in it: 1 to 7.
[[nodiscard]] int versionOf(const What& what);

[[nodiscard]] Json toJson(const Event& event);
/// Its canonical form is what is signed.
[[nodiscard]] Json toJson(const Statement& statement);
/// Refuses unknown kinds, unknown or missing fields, wrong types, texts that are not plain; `where` is a JSON
/// pointer.
[[nodiscard]] Result<Event> eventFrom(JsonView json);
[[nodiscard]] Result<Event> eventFrom(const Json& json); ///< by its canonical form

/// The same of the two members of an `asked` event that come from elsewhere.
[[nodiscard]] Result<Statement> statementFrom(JsonView json);
[[nodiscard]] Result<Jws> jwsFrom(JsonView json);

[[nodiscard]] const char* toText(Outcome);
[[nodiscard]] const char* toText(Statement::Kind);
[[nodiscard]] const char* toText(BackRule::From);
[[nodiscard]] const char* toText(Interrupted::Cause);

/// A place as a corner is stored, rounded to the centimetre.
[[nodiscard]] Corner cornerAt(airframe::Place place);
/// An area's corners as places, for walking round it and drawing it.
[[nodiscard]] airframe::Outline outlineOf(const std::vector<Corner>& corners);

/// The round's id: first 32 hex digits of the SHA-256 of the first event's canonical form.
[[nodiscard]] std::string roundId(const Event& opened);
/// The same of an event that eventFrom accepts.
[[nodiscard]] std::string roundIdOf(JsonView opened);

} // namespace ambit::round
