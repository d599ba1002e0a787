// A signed record: content and its signatures, as one canonical JSON text.
#pragma once

#include "record/content.hpp"
#include "record/key.hpp"

#include <nlohmann/json.hpp>
#include <optional>

namespace ambit::record {

/// The content's identity: SHA-256 of its canonical form, hex.
[[nodiscard]] std::string identityOf(const Json& content);

/// {"content": …, "signatures": [{"protected": …, "signature": …}]} in canonical form: the exact bytes of
/// record.json.
[[nodiscard]] Result<std::string> signRecord(const Json& content, const Signer& signer);

inline constexpr std::size_t mostSignatures = 8; ///< of one record

/// The record with one more signature, by another person: JSON as signRecord gives it. Its protected header
/// names the hash of the signature before it, so that it vouches for all of them, and says who signs as what,
/// and when (`at`: the device's clock). Refused unless the record holds, the key is that of `who` and hasn't
/// signed it yet. Source: RECORD.md, “Countersignatures”.
[[nodiscard]] Result<std::string> countersignRecord(std::string_view recordJson, const Signer& signer,
                                                    const round::Person& who, Instant at);

struct SignatureReport {
    Certificate certificate;
    bool lowS = false;         ///< declared and kept
    round::Person who;         ///< as the content (the first) or the signature's own header (later ones) says
    std::optional<Instant> at; ///< of a countersignature: when, by the signer's device
};

struct RecordReport {
    std::string sha256; ///< identity
    Json content;
    std::vector<SignatureReport> signatures; ///< one to eight, in the order given
};

/// What holds, where it lies: `content` and `contentBytes` are in the bytes judged, and on the judge's tape.
struct Judged {
    std::string sha256; ///< identity
    JsonView content;
    std::string_view contentBytes;
    std::vector<SignatureReport> signatures; ///< as in RecordReport
};

/// Judges records, one after another: each time what was judged before is forgotten, its room is used again.
class Judge {
public:
    /// As verifyRecord, which asks this.
    [[nodiscard]] Result<Judged> operator()(std::string_view bytes);

private:
    JsonTape tape;
};

/// Everything must hold: the bytes are exactly the canonical form; every signature verifies over the
/// canonical content with its own certificate; the first certificate's name is the content's signer; every
/// later signature names the one before it and is by a key of its own; the content is a known kind and
/// version. `where` names the signature or pointer that failed.
[[nodiscard]] Result<RecordReport> verifyRecord(std::string_view bytes);

} // namespace ambit::record
