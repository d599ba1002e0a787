// A thin hold on SQLite: statements that clean up after themselves, errors in words.
#pragma once

#include "base/result.hpp"

#include <cerrno>
#include <cstdint>
#include <map>
#include <memory>
#include <sqlite3.h>
#include <string>
#include <string_view>

namespace ambit::archive {

/// What SQLite just said, for a person.
[[nodiscard]] inline tl::unexpected<Error> failed(sqlite3* db, const Sentence& doing,
                                                  const std::string& where) {
    const int code = sqlite3_errcode(db) & 0xFF;
    Sentence remedy = say("Nothing was changed. Try again; if it stays so, look at the disk.");
    // Where SQLite makes room itself, for what lies beside the file, it says only that it failed.
    const bool isFull = code == SQLITE_FULL || (code == SQLITE_IOERR && sqlite3_system_errno(db) == ENOSPC);
    if (isFull) remedy = say("The disk is full. Make room and try again; nothing was lost.");
    if (code == SQLITE_BUSY || code == SQLITE_LOCKED)
        remedy = say("Another program has the archive open. Close it and try again.");
    if (code == SQLITE_READONLY) remedy = say("It can only be read here. Copy it to where you may write.");
    if (code == SQLITE_CANTOPEN) remedy = say("Look whether its folder is there and may be written to.");
    if (code == SQLITE_CORRUPT || code == SQLITE_NOTADB)
        remedy = say("The file is damaged. Keep it, copy it away, and go on with a backup or a new archive.");
    return fail(ErrorCode::storage, say("The archive could not %1: %2.", doing, sqlite3_errmsg(db)), where,
                remedy);
}

/// A prepared statement in use; reset when it goes. Texts and blobs bound must live until then.
class Statement {
public:
    explicit Statement(sqlite3_stmt* prepared) : statement(prepared) {}
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;
    ~Statement() {
        sqlite3_reset(statement);
        sqlite3_clear_bindings(statement);
    }

    Statement& text(std::string_view value) {
        sqlite3_bind_text64(statement, ++bound, value.data(), value.size(), SQLITE_STATIC, SQLITE_UTF8);
        return *this;
    }
    Statement& blob(std::string_view value) {
        // A null pointer would bind NULL, not an empty blob.
        sqlite3_bind_blob64(statement, ++bound, value.empty() ? "" : value.data(), value.size(),
                            SQLITE_STATIC);
        return *this;
    }
    Statement& text(const char* value) { return text(std::string_view(value)); }
    // What goes before the statement is run can't be bound.
    Statement& text(std::string&& gone) = delete;
    Statement& blob(std::string&& gone) = delete;
    Statement& integer(std::int64_t value) {
        sqlite3_bind_int64(statement, ++bound, value);
        return *this;
    }
    /// SQLITE_ROW, SQLITE_DONE or an error.
    int step() { return sqlite3_step(statement); }

    [[nodiscard]] std::string textAt(int column) const { return std::string(viewAt(column)); }
    /// The same without a copy: holds until the statement is asked for anything else.
    [[nodiscard]] std::string_view viewAt(int column) const {
        const auto* bytes = static_cast<const char*>(sqlite3_column_blob(statement, column));
        const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement, column));
        return bytes == nullptr ? std::string_view() : std::string_view(bytes, size);
    }
    [[nodiscard]] std::int64_t integerAt(int column) const { return sqlite3_column_int64(statement, column); }

private:
    sqlite3_stmt* statement;
    int bound = 0;
};

} // namespace ambit::archive
