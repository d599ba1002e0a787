// The archive's connection: one SQLite handle and its prepared statements, each prepared once.
#pragma once

#include "archive/archive.hpp"
#include "archive/database.hpp"
#include "archive/packing.hpp"
#include "base/hash.hpp"
#include "base/phrase.hpp"
#include "record/parts.hpp"

namespace ambit::archive {

/// The first eight bytes of the SHA-256: finds what rots on a disk unnoticed. Against malice there are
/// signatures.
[[nodiscard]] inline std::int64_t shortDigest(std::string_view bytes) {
    const Digest whole = sha256(bytes);
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < 8; ++i)
        value = (value << 8U) | whole[i];
    return static_cast<std::int64_t>(value);
}

struct Connection {
    Connection() = default;
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;
    ~Connection();

    /// The statement of this text; the text must be a literal, its address is its name.
    [[nodiscard]] Statement prepare(const char* sql);
    /// Runs SQL that gives no rows.
    [[nodiscard]] Result<void> run(const char* sql, const char* doing);
    [[nodiscard]] tl::unexpected<Error> failed(const Sentence& doing) const;

    /// Everything `work` does is one transaction; undone if it gives an error.
    template<class Work> [[nodiscard]] Result<void> transaction(Work work) {
        if (auto begun = run("BEGIN IMMEDIATE", pattern("begin")); !begun) return begun;
        Result<void> result = work();
        if (result) result = run("COMMIT", pattern("commit"));
        if (!result) {
            if (sqlite3_get_autocommit(db) == 0) (void)run("ROLLBACK", pattern("undo"));
            ids.clear();
            walkIds.clear();
            packing.forget();
            walks.clear();
        }
        return result;
    }

    /// A second connection to the same file, only to read: for another thread.
    [[nodiscard]] Result<std::unique_ptr<Connection>> beside() const;

    // --- rounds: log.cpp
    [[nodiscard]] Result<void> insertEvent(std::int64_t round, const round::Event& event,
                                           std::string_view json);
    [[nodiscard]] Result<std::int64_t> roundKey(const std::string& roundId);

    [[nodiscard]] Result<void> markSealed(std::int64_t round);

    // --- records in: keep.cpp. Inside a transaction.
    /// Keeps the record or, if it is there, what is new of its signatures.
    [[nodiscard]] Result<Kept> keepRecord(const file::Told& told, std::string_view recordJson);
    [[nodiscard]] Result<void> keepPdf(const file::Told& told, std::string_view pdf);
    [[nodiscard]] Result<void> awaitPhoto(const std::string& sha256); ///< named, and not here yet
    [[nodiscard]] Result<void> keepPhoto(const PhotoBytes& photo);
    /// Takes a record out, with all that was kept for it; its signed stub must be here: remove.cpp.
    [[nodiscard]] Result<void> takeOut(const file::Told& told);
    /// Records of schema version 1 go where version 2 has them; one that doesn't hold stays where it is.
    [[nodiscard]] Result<void> moveFirstRecords();
    /// 0: there is no such record.
    [[nodiscard]] Result<std::int64_t> recordKey(const std::string& sha256);

    // --- records out: records.cpp
    [[nodiscard]] Result<void> content(std::int64_t dictionary, std::string_view packed, std::string& out);
    [[nodiscard]] Result<std::string> dictionary(std::int64_t id);
    [[nodiscard]] Result<std::shared_ptr<const file::Walked>> walked(std::int64_t id);
    /// Of a row of `pagesWhere`.
    [[nodiscard]] Result<file::Told> toldIn(const Statement& row);
    /// Is the record as it was kept, and of a version that only a newer Ambit knows?
    [[nodiscard]] bool isNewer(std::int64_t record, const std::string& sha256);
    /// Each way through the record's signatures from a first to a last one: the longest first.
    [[nodiscard]] Result<std::vector<std::vector<record::SignatureText>>> chains(std::int64_t record);

    /// Opens `file`, or only to read it where it can't be written to.
    [[nodiscard]] Result<void> open();

    sqlite3* db = nullptr;
    std::string file;
    std::string unchanging; ///< URI to open it by, where nobody can write to it; else empty
    std::map<const char*, sqlite3_stmt*> statements;
    std::string lastRound; ///< of roundKey: a round appends many times in a row
    std::int64_t lastKey = 0;
    Packing packing;
    std::map<std::int64_t, std::shared_ptr<const file::Walked>> walks;             ///< shared by many rounds
    std::unordered_map<std::shared_ptr<const file::Walked>, std::int64_t> walkIds; ///< keep.cpp
    std::unordered_map<std::string, std::int64_t> ids; ///< of what is kept once and named often: keep.cpp
};

/// SQL: rows of `page` with their file and signer, as Connection::toldIn reads them.
[[nodiscard]] std::string pagesWhere(const char* condition);

// Times come first in a record's key: whatever is listed by key is listed by time.
constexpr int keyTail = 15; ///< bits that tell records of one millisecond apart
[[nodiscard]] inline std::int64_t firstKeyAt(Instant at) {
    return at.ms << keyTail;
}
[[nodiscard]] inline Instant timeOfKey(std::int64_t key) {
    return {key >> keyTail};
}

} // namespace ambit::archive
