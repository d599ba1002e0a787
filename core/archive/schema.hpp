// The archive's tables, and the steps from each version to the next (ARCHIVE.md). A step, once released,
// never changes.
#pragma once

#include <array>

namespace ambit::archive {

constexpr int applicationId = 0x416D6269; ///< "Ambi": tells an archive from any other SQLite file

/// migrations[n] takes a database from user_version n to n + 1.
constexpr std::array<const char*, 1> migrations{R"sql(
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
    seq INTEGER NOT NULL,
    json TEXT NOT NULL,
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
)sql"};

} // namespace ambit::archive
