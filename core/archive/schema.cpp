#include "archive/schema.hpp"

#include "archive/database.hpp"

#include <array>
#include <filesystem>
#include <fstream>

namespace ambit::archive {

namespace {

constexpr std::array<const char*, 2> released{R"sql(
CREATE TABLE airframe(
    sha256 TEXT PRIMARY KEY,
    bytes BLOB NOT NULL
) STRICT;
CREATE TABLE aircraft(
    registration TEXT PRIMARY KEY,
    serial TEXT NOT NULL,
    airframe TEXT NOT NULL REFERENCES airframe(sha256),
    airframe_name TEXT NOT NULL
) STRICT;
CREATE TABLE round(
    key INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    registration TEXT NOT NULL REFERENCES aircraft(registration),
    walk TEXT NOT NULL,
    opened_ms INTEGER NOT NULL,
    sealed INTEGER NOT NULL DEFAULT 0
) STRICT;
CREATE TABLE event(
    round INTEGER NOT NULL REFERENCES round(key),
    seq INTEGER NOT NULL CHECK(seq > 0),
    json TEXT NOT NULL,
    digest INTEGER NOT NULL,
    PRIMARY KEY(round, seq)
) STRICT, WITHOUT ROWID;
CREATE TABLE photo(
    sha256 TEXT PRIMARY KEY,
    bytes BLOB NOT NULL
) STRICT;
CREATE TABLE record(
    sha256 TEXT PRIMARY KEY,
    registration TEXT NOT NULL,
    kind TEXT NOT NULL,
    conclusion TEXT NOT NULL,
    concluded_ms INTEGER NOT NULL,
    signer TEXT NOT NULL,
    findings INTEGER NOT NULL,
    json_digest INTEGER NOT NULL,
    pdf_digest INTEGER NOT NULL,
    json BLOB NOT NULL,
    pdf BLOB NOT NULL
) STRICT;
CREATE TABLE predecessor(
    record TEXT NOT NULL REFERENCES record(sha256),
    sha256 TEXT NOT NULL,
    PRIMARY KEY(record, sha256)
) STRICT, WITHOUT ROWID;
CREATE INDEX round_of_aircraft ON round(registration, opened_ms);
CREATE INDEX record_of_aircraft ON record(registration, concluded_ms);
CREATE INDEX predecessor_by_hash ON predecessor(sha256);
)sql",
                                              R"sql(
DROP INDEX record_of_aircraft;
DROP TABLE predecessor;
ALTER TABLE record RENAME TO record_1;
CREATE TABLE file(
    id INTEGER PRIMARY KEY,
    registration TEXT NOT NULL UNIQUE,
    settled INTEGER NOT NULL DEFAULT 0
) STRICT;
CREATE TABLE signer(
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    role TEXT NOT NULL,
    certificate TEXT NOT NULL,
    key TEXT NOT NULL,
    UNIQUE(name, role, certificate, key)
) STRICT;
CREATE TABLE walked(
    id INTEGER PRIMARY KEY,
    digest BLOB NOT NULL UNIQUE,
    json TEXT NOT NULL
) STRICT;
CREATE TABLE dictionary(
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE,
    bytes BLOB NOT NULL
) STRICT;
CREATE TABLE header(
    id INTEGER PRIMARY KEY,
    digest BLOB NOT NULL UNIQUE,
    text TEXT NOT NULL
) STRICT;
CREATE TABLE record(
    key INTEGER PRIMARY KEY,
    sha256 BLOB NOT NULL UNIQUE,
    file INTEGER NOT NULL REFERENCES file(id),
    dictionary INTEGER NOT NULL,
    content BLOB NOT NULL
) STRICT;
CREATE TABLE signature(
    record INTEGER NOT NULL REFERENCES record(key),
    n INTEGER NOT NULL,
    after INTEGER NOT NULL,
    header INTEGER NOT NULL REFERENCES header(id),
    value BLOB NOT NULL,
    PRIMARY KEY(record, n)
) STRICT, WITHOUT ROWID;
CREATE TABLE page(
    file INTEGER NOT NULL,
    record INTEGER NOT NULL,
    sha256 BLOB NOT NULL,
    kind TEXT NOT NULL,
    signer INTEGER NOT NULL REFERENCES signer(id),
    conclusion TEXT NOT NULL,
    findings INTEGER NOT NULL,
    walked INTEGER NOT NULL,
    previous BLOB NOT NULL,
    told BLOB NOT NULL,
    PRIMARY KEY(file, record)
) STRICT, WITHOUT ROWID;
CREATE TABLE head(
    file INTEGER NOT NULL,
    sha256 BLOB NOT NULL,
    PRIMARY KEY(file, sha256)
) STRICT, WITHOUT ROWID;
CREATE TABLE hole(
    file INTEGER NOT NULL,
    sha256 BLOB NOT NULL,
    PRIMARY KEY(file, sha256)
) STRICT, WITHOUT ROWID;
CREATE TABLE gone(
    file INTEGER NOT NULL,
    sha256 BLOB NOT NULL,
    PRIMARY KEY(file, sha256)
) STRICT, WITHOUT ROWID;
CREATE TABLE photo_hole(
    sha256 TEXT PRIMARY KEY
) STRICT, WITHOUT ROWID;
CREATE TABLE discrepancy(
    file INTEGER NOT NULL,
    record INTEGER NOT NULL,
    point TEXT NOT NULL,
    state TEXT NOT NULL,
    PRIMARY KEY(file, record, point)
) STRICT, WITHOUT ROWID;
CREATE INDEX discrepancy_in_state ON discrepancy(state, record);
CREATE TABLE pdf(
    record INTEGER NOT NULL REFERENCES record(key),
    sha256 BLOB NOT NULL,
    photos TEXT NOT NULL,
    bytes BLOB NOT NULL,
    PRIMARY KEY(record, sha256)
) STRICT;
CREATE VIRTUAL TABLE words USING fts5(aircraft, person, part, jasc, kind, text,
    content = '', tokenize = 'unicode61 remove_diacritics 2');
)sql"};

/// Checking every page of a large archive would hold up the start.
constexpr std::uintmax_t checkedWhole = std::uintmax_t{32} << 20;

Sentence leftAsItIs() {
    return say("Nothing was changed. Keep the file, copy it away, and go on with a backup or a new archive.");
}

Result<void> run(sqlite3* db, const std::string& file, const char* sql) {
    if (sqlite3_exec(db, sql, nullptr, nullptr, nullptr) != SQLITE_OK)
        return failed(db, say("be opened"), file);
    return {};
}

/// The first column of the first row.
Result<std::string> ask(sqlite3* db, const std::string& file, const char* sql) {
    sqlite3_stmt* prepared = nullptr;
    if (sqlite3_prepare_v2(db, sql, -1, &prepared, nullptr) != SQLITE_OK)
        return failed(db, say("be read"), file);
    const std::unique_ptr<sqlite3_stmt, int (*)(sqlite3_stmt*)> owner(prepared, sqlite3_finalize);
    Statement statement(prepared);
    if (statement.step() != SQLITE_ROW) return failed(db, say("be read"), file);
    return statement.textAt(0);
}

/// What the file's header says it must be long, at least; 0: it says nothing (file format of SQLite, 1.3).
std::uintmax_t sizeByHeader(const std::string& file) {
    std::array<char, 100> header{};
    std::ifstream in(file, std::ios::binary);
    if (!in.read(header.data(), header.size())) return 0;
    const auto number = [&](std::size_t at, std::size_t bytes) {
        std::uint32_t value = 0;
        for (std::size_t i = at; i < at + bytes; ++i)
            value = (value << 8U) | static_cast<unsigned char>(header[i]);
        return value;
    };
    const std::uint32_t pageSize = number(16, 2) == 1 ? 65536 : number(16, 2);
    const bool holds = number(24, 4) == number(92, 4); // the count is that of the last change
    return holds ? std::uintmax_t{pageSize} * number(28, 4) : 0;
}

/// SQLite takes a file of no or a few bytes for a new database, throws away the log of an empty one, and
/// takes zeros for what is missing of a last page.
Result<void> checkSize(const std::string& file) {
    constexpr std::uintmax_t smallestPage = 512;
    std::error_code none;
    const auto size = std::filesystem::file_size(file, none);
    if (none) return {};
    std::error_code noLog;
    const auto logSize = std::filesystem::file_size(file + "-wal", noLog);
    const bool hasLog = !noLog && logSize > 0; // what isn't in the file yet may be there
    const bool whole = size >= smallestPage ? hasLog || size >= sizeByHeader(file) : size == 0 && !hasLog;
    if (whole) return {};
    return fail(ErrorCode::storage, say("The archive is damaged: the file was cut off."), file, leftAsItIs());
}

Result<void> checkWhole(sqlite3* db, const std::string& file) {
    std::error_code none;
    const auto size = std::filesystem::file_size(file, none);
    if (none || size > checkedWhole) return {};
    const auto said = ask(db, file, "PRAGMA quick_check(1)");
    if (!said) return tl::unexpected(said.error());
    if (*said == "ok") return {};
    return fail(ErrorCode::storage, say("The archive is damaged: %1.", *said), file, leftAsItIs());
}

/// The schema's version; 0 for a database that holds nothing yet.
Result<std::size_t> versionOf(sqlite3* db, const std::string& file, std::size_t newest) {
    const auto stamps = ask(db, file,
                            "SELECT (SELECT application_id FROM pragma_application_id) || ' ' ||"
                            " (SELECT count(*) FROM sqlite_schema)");
    if (!stamps) return tl::unexpected(stamps.error());
    const auto version = ask(db, file, "PRAGMA user_version");
    if (!version) return tl::unexpected(version.error());
    if (*stamps == "0 0" && *version == "0") return 0;
    if (!stamps->starts_with(std::to_string(applicationId) + ' '))
        return fail(ErrorCode::unsupported, say("This database is not an Ambit archive."), file,
                    say("Choose another file."));
    if (version->size() > 9 || version->starts_with('-') || *version == "0")
        return fail(ErrorCode::storage, say("The archive is damaged: its version is %1.", *version), file,
                    leftAsItIs());
    const auto number = static_cast<std::size_t>(std::stoul(*version));
    if (number > newest)
        return fail(ErrorCode::unsupported, say("This archive was made by a newer Ambit."), file,
                    say("Update Ambit; the archive is untouched."));
    return number;
}

Result<void> moveUp(sqlite3* db, const std::string& file, std::span<const char* const> steps) {
    // Read again inside the transaction: another program may have moved it up since.
    const auto version = versionOf(db, file, steps.size());
    if (!version) return tl::unexpected(version.error());
    for (const char* step : steps.subspan(*version))
        if (auto done = run(db, file, step); !done) return done;
    const std::string stamps = "PRAGMA application_id = " + std::to_string(applicationId) +
                               "; PRAGMA user_version = " + std::to_string(steps.size());
    return run(db, file, stamps.c_str());
}

Result<void> migrate(sqlite3* db, const std::string& file, std::span<const char* const> steps) {
    if (auto begun = run(db, file, "BEGIN IMMEDIATE"); !begun) return begun;
    Result<void> moved = moveUp(db, file, steps);
    if (moved) moved = run(db, file, "COMMIT");
    if (!moved && sqlite3_get_autocommit(db) == 0) (void)run(db, file, "ROLLBACK");
    return moved;
}

} // namespace

std::span<const char* const> migrations() {
    return released;
}

Result<void> prepareSchema(sqlite3* db, const std::string& file, std::span<const char* const> steps) {
    if (auto sized = checkSize(file); !sized) return sized;
    // Rows of some 2 kB: fewer gaps than in 4 KiB. Only a new file takes it.
    if (auto set = run(db, file, "PRAGMA page_size = 8192"); !set) return set;
    // Closing would write the log back into a file that is refused below.
    sqlite3_db_config(db, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    const auto version = versionOf(db, file, steps.size());
    if (!version) return tl::unexpected(version.error());
    if (auto sane = checkWhole(db, file); !sane) return sane;
    // fullfsync: on Apple a plain fsync leaves the data in the drive's cache; elsewhere it changes nothing.
    for (const char* setting :
         {"PRAGMA trusted_schema = OFF", "PRAGMA foreign_keys = ON", "PRAGMA journal_mode = WAL",
          "PRAGMA synchronous = FULL", "PRAGMA fullfsync = ON", "PRAGMA checkpoint_fullfsync = ON",
          "PRAGMA cache_size = -32000"})
        if (auto set = run(db, file, setting); !set) return set;
    if (*version < steps.size())
        if (auto moved = migrate(db, file, steps); !moved) return moved;
    sqlite3_db_config(db, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 0, nullptr);
    return {};
}

} // namespace ambit::archive
