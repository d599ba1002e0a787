// What is said of an aircraft between its rounds, each a record of its own: RECORD.md, "Other kinds".
#pragma once

#include "base/tape.hpp"
#include "base/time.hpp"
#include "round/event.hpp"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ambit::record {

using round::Person;

/// A discrepancy is named by the record that brought it and the point it is at.
struct DiscrepancyId {
    std::string record; ///< identity of the round's record in which it was found
    std::string point;
    friend auto operator<=>(const DiscrepancyId&, const DiscrepancyId&) = default;
};

/// One of the questions a deferral answers, as it was put, and the answer.
struct Answer {
    std::string question;
    bool yes = false;
};

/// How an item may stay as it is for a while (14 CFR 91.213(d) for those without a minimum equipment list).
struct Deferral {
    std::string basis;           ///< one of deferralBases()
    std::string reference;       ///< where the basis says so: list and item, approval; may be empty
    std::vector<Answer> answers; ///< 91.213(d): all of file/deferral's questions
    bool removed = false;        ///< removed from the aircraft; else deactivated
    std::string placard;         ///< what it says and where it is
    std::string limits;          ///< what the aircraft is not used for meanwhile; may be empty
    std::string until;           ///< date, yyyy-mm-dd; empty: none
    std::vector<round::CounterReading> untilCounters;
    Person determinedBy; ///< who found that it is no hazard
};
[[nodiscard]] const std::vector<std::string_view>& deferralBases();

/// A discrepancy is deferred, or grounds the aircraft.
struct Assessment {
    DiscrepancyId of;
    std::string words;
    std::optional<Deferral> deferral; ///< none: it grounds
};

/// Work done (14 CFR 43.9(a): description, date of completion, who did it, and the signature, certificate
/// number and kind of certificate of who approves the aircraft for return to service: the signer).
struct Rectification {
    std::vector<DiscrepancyId> of;        ///< none: other work, an inspection say
    std::vector<std::string> inspections; ///< ids of the airframe's that were done with it
    std::string description;
    std::string completedOn;                     ///< date
    std::string performedBy;                     ///< name; empty: the signer
    std::string certificateKind;                 ///< of the signer: "mechanic, airframe and powerplant"
    std::vector<round::CounterReading> counters; ///< then
};

/// What the counters say.
struct Reading {
    std::vector<round::CounterReading> counters;
};

/// One part out, another in, or only one of both.
struct Part {
    std::string name, number, serial;
    std::vector<round::CounterReading> counters; ///< its own life when fitted or removed
};
struct PartChange {
    std::string position; ///< where: one part at a time in a place, "main rotor blade A"
    std::optional<Part> off, on;
    std::string description;
    std::string completedOn;                     ///< date
    std::string certificateKind;                 ///< of the signer
    std::vector<round::CounterReading> counters; ///< the aircraft's then
};

/// The aircraft and its file go to another owner (14 CFR 91.417(b)(2): the records are transferred).
struct HandOver {
    std::string to;
    std::string words; ///< may be empty
};

/// The owner says whose key is good for what.
struct Trust {
    std::string name;
    std::string key;                ///< fingerprint: SHA-256 of the certificate, hex
    std::vector<std::string> roles; ///< pilot, instructor, owner, mechanic
    Instant from;
};

/// From a time on a key is good for nothing.
struct Revocation {
    std::string key;
    Instant from;
    std::string why;
};

/// What is left of records that were let go (14 CFR 91.417(b)(1) says when they may be): the chain holds.
struct Removal {
    struct Gone {
        std::string record; ///< identity
        std::vector<std::string> previous;
        std::string kind;
        Instant at;
    };
    std::vector<Gone> records;
    std::string basis;
};

/// A measured value is named by the round's record that has it and the point it is of.
struct ValueId {
    std::string record;
    std::string point;
    friend auto operator<=>(const ValueId&, const ValueId&) = default;
};

/// Said afterwards, by the owner or a mechanic: whether the part was renewed or repainted before this value,
/// whatever the round says of it. The latest word counts; so one is taken back by another.
struct Renewal {
    ValueId of;
    bool renewed = true;
    std::string words; ///< may be empty
};

using Entry = std::variant<Assessment, Rectification, Reading, PartChange, HandOver, Trust, Revocation,
                           Removal, Renewal>;

/// What every entry says beside its own.
struct Heading {
    std::string registration;
    std::string serial;
    LocalInstant at;
    std::vector<std::string> previous; ///< identities of the aircraft's latest records known, sorted
    Person signer;
};

/// "assessment", "rectification", "reading", "part change", "hand-over", "trust", "revocation", "removal",
/// "renewal".
[[nodiscard]] const char* kindOf(const Entry& entry);
/// The version of RECORD.md that brought such a kind; 0: no entry is of it.
[[nodiscard]] int entryVersion(std::string_view kind);

/// The content, ready to be signed. Errors: those of checkEntry.
[[nodiscard]] Result<Json> entryContent(const Heading& heading, const Entry& entry);

struct ReadEntry {
    Heading heading;
    Entry entry;
};
/// Of a content that checkEntry lets pass.
[[nodiscard]] ReadEntry entryFrom(JsonView content);
[[nodiscard]] ReadEntry entryFrom(const Json& content); ///< by its canonical form

/// An entry's own fields, and back: of a content that checkEntry lets pass, or of what toJson wrote. `kind`
/// is one of those of kindOf.
[[nodiscard]] Json toJson(const Entry& entry);
[[nodiscard]] Entry entryFrom(std::string_view kind, JsonView own);

/// Is the content of a kind other than a round as RECORD.md has it? invalid, at the pointer of what isn't.
[[nodiscard]] Result<void> checkEntry(JsonView content);
[[nodiscard]] Result<void> checkEntry(const Json& content); ///< by its canonical form
/// The same of an entry's own fields, by their shape alone.
[[nodiscard]] Result<void> checkOwn(std::string_view kind, JsonView own);
/// Is it one of these kinds at all?
[[nodiscard]] bool isEntry(JsonView content);
[[nodiscard]] bool isEntry(const Json& content);

} // namespace ambit::record
