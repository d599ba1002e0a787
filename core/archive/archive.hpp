// The archive: one SQLite file with aircraft, airframes, event logs, photos and records. ARCHIVE.md says what
// is where.
#pragma once

#include "base/result.hpp"
#include "file/told.hpp"
#include "round/event.hpp"

#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ambit::archive {

struct Connection;

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

/// Of a log from elsewhere.
enum class Photos { mustBeHere, mayFollow };

/// What keeping a record did.
struct Kept {
    bool isNew = false; ///< it wasn't there
    int signatures = 0; ///< that were new, of a record new or known
};

/// A record from elsewhere, verified by the caller.
struct Incoming {
    file::Told told;
    std::string json;
    std::vector<std::string> pdfs;
    std::vector<PhotoBytes> photos;
};

/// One connection, one thread. WAL, synchronous=FULL: what a call that returns a value stored, survives a
/// power cut, unless it was said that it needn't (unflushed.hpp).
class Archive {
public:
    /// Opens or makes the file; moves an older schema up, refuses a newer one (unsupported). A damaged
    /// database is refused (storage) and left as it is. One on a medium or in a folder that can't be written
    /// to can be read: whatever would write is then refused (storage).
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
    /// Errors: storage (an event isn't what was stored); unsupported (it is, and a newer Ambit wrote it).
    [[nodiscard]] Result<std::vector<round::Event>> events(const std::string& roundId) const;
    /// One transaction: the event, its photos. The event's number must be the next one (conflict otherwise).
    [[nodiscard]] Result<void> append(const std::string& roundId, const round::Event& event,
                                      const std::vector<PhotoBytes>& photos = {});
    /// The rest of a round's log, from elsewhere: one transaction. The first must be the next event; a last
    /// one `signed` seals it. Photos it names must be here, or are awaited as those of records are.
    [[nodiscard]] Result<void> appendLog(const std::string& roundId, std::span<const round::Event> events,
                                         Photos photos = Photos::mustBeHere);
    /// One event's canonical JSON, the very bytes; "": the log doesn't go so far.
    [[nodiscard]] Result<std::string> eventText(const std::string& roundId, std::int64_t seq) const;
    [[nodiscard]] Result<std::string> photo(const std::string& sha256) const;

    // Records
    /// One transaction: the record's JSON, its PDF, and the `signed` event that seals the round.
    [[nodiscard]] Result<void> seal(const std::string& roundId, const round::Event& signedEvent,
                                    const file::Told& told, std::string_view recordJson,
                                    std::string_view pdf);
    /// Records from elsewhere, all in one transaction: what each changed. Of a record that is there already
    /// the signatures, PDFs and photos are kept that weren't.
    [[nodiscard]] Result<std::vector<Kept>> keep(const std::vector<Incoming>& records);
    [[nodiscard]] Result<std::vector<RecordInfo>>
    records(const std::string& registration = {}) const; ///< newest first
    /// The exact bytes of record.json; with countersignatures in more than one order, the longest row of
    /// them.
    [[nodiscard]] Result<std::string> recordJson(const std::string& sha256) const;
    /// All of those, the longest first: mostly one.
    [[nodiscard]] Result<std::vector<std::string>> signedCopies(const std::string& sha256) const;
    /// The longest of its PDFs; "" if only JSON came.
    [[nodiscard]] Result<std::string> recordPdf(const std::string& sha256) const;
    [[nodiscard]] Result<std::vector<std::string>> recordPdfs(const std::string& sha256) const;
    /// What the aircraft's records tell its file, the oldest first.
    [[nodiscard]] Result<std::vector<file::Told>> told(const std::string& registration) const;
    [[nodiscard]] Result<file::Told> toldBy(const std::string& sha256) const;
    /// Hashes of the aircraft's latest records: those that no other record here names as its predecessor.
    /// Sorted.
    [[nodiscard]] Result<std::vector<std::string>> heads(const std::string& registration) const;
    /// Aircraft of which there are records, by registration.
    [[nodiscard]] Result<std::vector<std::string>> files() const;

    /// For the rest of core/archive.
    [[nodiscard]] Connection& inside() const { return *connection; }

private:
    explicit Archive(std::unique_ptr<Connection> connection);
    std::unique_ptr<Connection> connection;
};

} // namespace ambit::archive
