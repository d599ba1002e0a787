// The archive's tables, and the steps from each version to the next (ARCHIVE.md).
#pragma once

#include "base/result.hpp"

#include <span>
#include <sqlite3.h>
#include <string>

namespace ambit::archive {

constexpr int applicationId = 0x416D6269; ///< "Ambi": tells an archive from any other SQLite file

/// Element n takes a database from user_version n to n + 1. A step, once released, never changes.
[[nodiscard]] std::span<const char* const> migrations();

/// Makes a fresh connection to `file` fit for use: looks at the database before anything is written, sets the
/// connection up (WAL, synchronous FULL, foreign keys) and moves an older schema up, all in one transaction.
/// Errors: unsupported (another program's database, a newer version), storage (damaged, not writable); the
/// file is then as it was, even when the connection closes.
[[nodiscard]] Result<void> prepareSchema(sqlite3* db, const std::string& file,
                                         std::span<const char* const> steps = migrations());

} // namespace ambit::archive
