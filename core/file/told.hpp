// What one record tells its aircraft's file: all that the fold, lists and searches need of it, and no more.
#pragma once

#include "record/entry.hpp"
#include "record/key.hpp"

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ambit::record {
struct RecordReport;
struct Judged;
} // namespace ambit::record

namespace ambit::file {

/// A point that a round settled.
struct PointName {
    std::string id, name, zone;
    std::string jasc; ///< may be empty
    friend bool operator==(const PointName&, const PointName&) = default;
};
/// What rounds of one walk have in common, and share.
struct Walked {
    std::string airframe;          ///< hash of its description
    std::string walk;              ///< its name
    std::vector<PointName> points; ///< every point that was settled, sorted by id
    friend bool operator==(const Walked&, const Walked&) = default;
};

/// A point of a round that wasn't simply sound.
struct Seen {
    std::string point;
    round::Outcome outcome{};
    std::string words; ///< of a finding; why it was not inspected
    bool grounds = false;
    std::string basis; ///< of what was not inspected; may be empty
    std::string value; ///< decimal; empty: nothing was measured
    std::string unit;
    std::string verdict;                      ///< within, below, above
    std::string uncertainty = {};             ///< standard, in `unit`; empty: not stated
    bool renewed = false;                     ///< the part was renewed or repainted before it
    std::optional<airframe::Means> from = {}; ///< what the value was read from; none: not said, or a photo

    /// What the value was read from, in RECORD.md's word, "photo" too; empty: not said.
    [[nodiscard]] std::string fromWord() const;
};

struct RoundTold {
    std::string round; ///< its id
    bool fit = false;
    std::string reasons;
    std::vector<round::CounterReading> counters;
    std::shared_ptr<const Walked> walked = std::make_shared<const Walked>(); ///< never null
    std::vector<Seen> seen; ///< in the order settled; points that were sound and not measured aren't here
    std::vector<std::string> photos; ///< hashes

    /// Nullptr: nothing but sound, or not in this round.
    [[nodiscard]] const Seen* seenAt(const std::string& point) const;
    /// Nullptr: this round had no such point.
    [[nodiscard]] const PointName* point(const std::string& id) const;
};

struct Told {
    std::string sha256; ///< the record's identity
    std::string registration;
    std::string serial;
    Instant at;                        ///< concluded, or said
    std::vector<std::string> previous; ///< sorted
    record::Person signer;
    std::string key; ///< fingerprint of the first signer's certificate
    std::variant<RoundTold, record::Entry> what;

    [[nodiscard]] const RoundTold* round() const { return std::get_if<RoundTold>(&what); }
    [[nodiscard]] const record::Entry* entry() const { return std::get_if<record::Entry>(&what); }
    [[nodiscard]] const char* kind() const; ///< "round", or one of record::kindOf
    [[nodiscard]] int findings() const;     ///< of a round
};

/// What a content tells that record::checkContent lets pass.
[[nodiscard]] Told toldBy(std::string sha256, JsonView content, std::string key);
[[nodiscard]] Told toldBy(std::string sha256, const Json& content, std::string key);
[[nodiscard]] Told toldBy(const record::Judged& judged);
[[nodiscard]] Told toldBy(const record::RecordReport& report);

/// The same as bytes, to be kept beside the record, without what is kept elsewhere: identity, key, `walked`.
/// A row of texts, each behind its length (a number of seven bits a byte, the lowest first; the high bit says
/// that it goes on): a round is read by the thousand. An entry is JSON in one of them.
[[nodiscard]] std::string packed(const Told& told);
[[nodiscard]] Json toJson(const Walked& walked);
/// Error storage: this isn't what toJson wrote.
[[nodiscard]] Result<Walked> walkedFrom(std::string_view kept);
/// The other way. `told` brings what is kept elsewhere; serial and `what` are filled in.
/// Error storage: this isn't what `packed` wrote.
[[nodiscard]] Result<void> unpack(Told& told, std::string_view kept, const std::string& kind,
                                  std::shared_ptr<const Walked> walked);

/// In a few words, for a list: "Tail rotor blades: nick at the tip; …", "Replaced the belt."
[[nodiscard]] std::string gloss(const Told& told);

} // namespace ambit::file
