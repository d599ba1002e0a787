// One aircraft's file: what all its records together say of it now. A fold that doesn't ask in which order
// the records came in; what they say against each other is shown, never settled silently.
#pragma once

#include "file/keys.hpp"
#include "file/told.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace ambit::file {

/// One record in the file's order.
struct Page {
    std::string sha256;
    std::string kind;
    Instant at; ///< concluded, or said
    record::Person signer;
    std::string key; ///< fingerprint of the first signer's
    Standing standing = Standing::unsaid;
};

/// Somebody's word on a discrepancy.
struct Word {
    std::string record;
    Instant at;
    std::string by;
    std::string words;
};

/// Found → again seen, deferred, grounding → rectified → seen sound in a later round: closed.
struct Discrepancy {
    enum class State { open, deferred, grounding, rectified, closed };
    record::DiscrepancyId id;
    std::string name; ///< of the point
    std::string zone;
    std::string jasc; ///< may be empty
    Word found;
    bool grounds = false; ///< so said a round that found it
    std::vector<Word> again;
    std::vector<Word> seenSound; ///< though nobody had put it right
    std::optional<Word> assessed;
    std::optional<record::Deferral> deferral;
    std::optional<Word> rectified;
    std::optional<Word> closed;
    State state = State::open;

    [[nodiscard]] bool isOpen() const { return state != State::rectified && state != State::closed; }
};

/// Something records say against each other, or that can't be.
struct Conflict {
    Sentence what;
    std::vector<std::string> records; ///< those that say it
};

/// A record that others name and nobody has.
struct Hole {
    std::string sha256;
    std::vector<std::string> namedBy;
};

struct Count {
    std::string value; ///< decimal, in the airframe's unit
    Instant at;
    std::string record;
};

/// When an inspection was done.
struct Done {
    std::string on; ///< date
    std::vector<round::CounterReading> counters;
    std::string record;
};

struct Fitted {
    record::Part part;
    std::string on;                              ///< date
    std::vector<round::CounterReading> counters; ///< the aircraft's, then
    std::string record;
};

/// Whether a part was renewed before a value, as said afterwards.
struct Renewed {
    bool renewed = false;
    Word word; ///< the latest
};
using Renewals = std::map<record::ValueId, Renewed>;
/// Does the part's series begin anew with this value of that record? As said last, else as its round says.
[[nodiscard]] bool isRenewed(const Renewals& said, const std::string& record, const Seen& value);

struct AircraftFile {
    std::vector<Page> pages;                              ///< each after those it names
    std::vector<Discrepancy> discrepancies;               ///< in the order found
    std::map<std::string, Count> counters;                ///< by id, the latest
    std::map<std::string, std::vector<Done>> inspections; ///< by id, the earliest first
    std::map<std::string, Fitted> parts;                  ///< by position
    Renewals renewals;                                    ///< of values of which somebody spoke afterwards
    std::vector<std::string> heads; ///< those that no other names: the next record names them
    std::vector<Hole> holes;
    std::map<std::string, std::string> removed; ///< let go on purpose: identity → the record that says so
    std::vector<Conflict> conflicts;
    std::vector<KnownKey> keys; ///< by name

    [[nodiscard]] const Discrepancy* discrepancy(const record::DiscrepancyId& id) const;
};

/// `records`: of one aircraft, in any order, each once or more often.
[[nodiscard]] AircraftFile fold(const std::vector<Told>& records);

/// What in the file stands against *fit* today (date, yyyy-mm-dd), in words: what grounds, what nobody has
/// assessed, deferrals that have run out.
[[nodiscard]] std::vector<Sentence> standsAgainst(const AircraftFile& file, const std::string& today);

[[nodiscard]] const char* toText(Discrepancy::State state);

} // namespace ambit::file
