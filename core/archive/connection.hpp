// The archive's connection: one SQLite handle and its prepared statements, each prepared once.
#pragma once

#include "archive/archive.hpp"
#include "archive/database.hpp"
#include "base/hash.hpp"

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

struct Archive::Connection {
    Connection() = default;
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;
    ~Connection();

    /// The statement of this text; the text must be a literal, its address is its name.
    [[nodiscard]] Statement prepare(const char* sql);
    /// Runs SQL that gives no rows.
    [[nodiscard]] Result<void> run(const char* sql, const std::string& doing);
    [[nodiscard]] tl::unexpected<Error> failed(const std::string& doing) const;

    /// Everything `work` does is one transaction; undone if it gives an error.
    template<class Work> [[nodiscard]] Result<void> transaction(Work work) {
        if (auto begun = run("BEGIN IMMEDIATE", "begin"); !begun) return begun;
        Result<void> result = work();
        if (result) result = run("COMMIT", "commit");
        if (!result && sqlite3_get_autocommit(db) == 0) (void)run("ROLLBACK", "undo");
        return result;
    }

    [[nodiscard]] Result<void> insertEvent(std::int64_t round, const round::Event& event,
                                           std::string_view json);
    [[nodiscard]] Result<std::int64_t> roundKey(const std::string& roundId);

    sqlite3* db = nullptr;
    std::string file;
    std::map<const char*, sqlite3_stmt*> statements;
    std::string lastRound; ///< of roundKey: a round appends many times in a row
    std::int64_t lastKey = 0;
};

} // namespace ambit::archive
