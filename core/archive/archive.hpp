// The archive: one SQLite file with aircraft, airframes, event logs, photos and records. ARCHIVE.md says what
// is where.
#pragma once

#include "base/result.hpp"
#include "round/event.hpp"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

struct sqlite3;

namespace ambit::archive {

struct Aircraft {
    std::string registration; ///< unique in an archive
    std::string serial;
    std::string airframeSha256;
    std::string airframeName;
};

struct RoundInfo {
    std::string id;
    std::string registration;
    std::string walk;
    Instant openedAt;
    std::int64_t events = 0;
    bool sealed = false;
};

struct RecordInfo {
    std::string sha256; ///< of the canonical content: the record's identity
    std::string registration;
    std::string kind;       ///< "round", or one of record::kindOf
    std::string conclusion; ///< "fit" or "not fit"; of a round only
    Instant concludedAt;
    std::string signer;
    int findings = 0;
};

/// A picture as it came: bytes of a JPEG or PNG file.
struct PhotoBytes {
    round::Photo photo;
    std::string bytes;
};

/// One connection, one thread. WAL, synchronous=FULL: what a call that returns a value stored, survives a
/// power cut.
class Archive {
public:
    /// Opens or makes the file; moves an older schema up, refuses a newer one (unsupported). A damaged
    /// database is refused (storage) and left as it is.
    [[nodiscard]] static Result<Archive> open(const std::filesystem::path& path);

    Archive(Archive&&) noexcept;
    Archive& operator=(Archive&&) noexcept;
    ~Archive();

    // Aircraft and airframes
    /// Keeps the airframe's whole text (checked by the caller) and the aircraft. Same again: no change.
    /// Another serial for a known registration: conflict.
    [[nodiscard]] Result<void> addAircraft(const Aircraft& aircraft, std::string_view airframeText);
    [[nodiscard]] Result<std::vector<Aircraft>> aircraft() const;
    [[nodiscard]] Result<std::string> airframeText(const std::string& sha256) const;

    // Rounds
    [[nodiscard]] Result<std::vector<RoundInfo>>
    rounds(const std::string& registration = {}) const; ///< newest first
    [[nodiscard]] Result<std::vector<round::Event>> events(const std::string& roundId) const;
    /// One transaction: the event, its photos. The event's number must be the next one (conflict otherwise).
    [[nodiscard]] Result<void> append(const std::string& roundId, const round::Event& event,
                                      const std::vector<PhotoBytes>& photos = {});
    [[nodiscard]] Result<std::string> photo(const std::string& sha256) const;

    // Records
    /// One transaction: the record's JSON (its exact bytes), its PDF, and the `signed` event that seals the
    /// round.
    [[nodiscard]] Result<void> seal(const std::string& roundId, const round::Event& signedEvent,
                                    const RecordInfo& info, std::string_view recordJson,
                                    std::string_view pdf);
    /// A record from elsewhere, verified by the caller (archive::importRecord). False: it was there already,
    /// and nothing changed.
    [[nodiscard]] Result<bool> addRecord(const RecordInfo& info, std::string_view recordJson);
    [[nodiscard]] Result<std::vector<RecordInfo>>
    records(const std::string& registration = {}) const; ///< newest first
    [[nodiscard]] Result<std::string> recordJson(const std::string& sha256) const;
    [[nodiscard]] Result<std::string> recordPdf(const std::string& sha256) const;
    /// Hashes of the aircraft's latest records: those that no other record here names as its predecessor.
    /// Sorted.
    [[nodiscard]] Result<std::vector<std::string>> heads(const std::string& registration) const;

private:
    struct Connection;
    explicit Archive(std::unique_ptr<Connection> connection);
    std::unique_ptr<Connection> connection;
};

} // namespace ambit::archive
