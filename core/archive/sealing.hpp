// From a concluded round, or something else said of an aircraft, to its signed record in the archive; from
// there to files.
#pragma once

#include "archive/open_round.hpp"
#include "record/entry.hpp"
#include "record/pdf.hpp"

#include <filesystem>

namespace ambit::archive {

/// Builds the content (its predecessors are the aircraft's latest records here), signs it, has its pages
/// drawn and signed, and stores both with the Signed event in one transaction. Gives the record's identity.
/// Refused unless the round is concluded and the certificate bears the signer's name.
[[nodiscard]] Result<std::string> sealRound(OpenRound& round, const record::Signer& signer,
                                            const record::DrawPages& draw, Instant at);

/// An entry signed, its page drawn and signed (`draw` empty: none), both verified and ready to be kept.
/// Errors: those of record::entryContent, of the archive and of `draw`.
[[nodiscard]] Result<Incoming> signEntry(const Archive& archive, const record::Heading& heading,
                                         const record::Entry& entry, const record::Signer& signer,
                                         const record::DrawPages& draw);
/// The same, and keeps it. Gives the record's identity.
[[nodiscard]] Result<std::string> sealEntry(Archive& archive, const record::Heading& heading,
                                            const record::Entry& entry, const record::Signer& signer,
                                            const record::DrawPages& draw);

/// Puts another person's signature under a record here: its JSON gets one more and, where its PDF bears the
/// same signatures, the PDF too; the record's identity stays. Errors: those of record::countersignRecord;
/// nothing is kept then.
[[nodiscard]] Result<void> countersign(Archive& archive, const std::string& recordSha256,
                                       const record::Signer& signer, const record::Person& who, Instant at);

/// Writes record.json, record.pdf (if there is one) and photos/<sha256>.jpg or .png into the folder, making
/// it if needed. Gives the paths written.
[[nodiscard]] Result<std::vector<std::filesystem::path>>
exportRecord(const Archive& archive, const std::string& recordSha256, const std::filesystem::path& folder);

} // namespace ambit::archive
