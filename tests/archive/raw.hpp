// A database without the archive around it, for whoever tampers with one.
#pragma once

#include <QtGlobal>
#include <sqlite3.h>
#include <string>
#include <vector>

namespace ambit::test {

class Raw {
public:
    explicit Raw(const std::string& file) { sqlite3_open(file.c_str(), &db); }
    Raw(const Raw&) = delete;
    Raw& operator=(const Raw&) = delete;
    ~Raw() { sqlite3_close(db); }

    void run(const std::string& sql) {
        if (sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
            qFatal("%s: %s", sql.c_str(), sqlite3_errmsg(db));
    }
    /// The same, with blobs for ?1, ?2, …
    void run(const std::string& sql, const std::vector<std::string>& blobs) {
        sqlite3_stmt* statement = nullptr;
        if (sqlite3_prepare_v2(db, sql.c_str(), -1, &statement, nullptr) != SQLITE_OK)
            qFatal("%s: %s", sql.c_str(), sqlite3_errmsg(db));
        int at = 0;
        for (const std::string& blob : blobs)
            sqlite3_bind_blob64(statement, ++at, blob.data(), blob.size(), SQLITE_TRANSIENT);
        if (sqlite3_step(statement) != SQLITE_DONE) qFatal("%s: %s", sql.c_str(), sqlite3_errmsg(db));
        sqlite3_finalize(statement);
    }
    /// All cells, each followed by a space; or what went wrong.
    std::string ask(const char* sql) {
        std::string all;
        const auto row = [](void* out, int count, char** cells, char** /*names*/) {
            for (int i = 0; i < count; ++i)
                static_cast<std::string*>(out)->append(cells[i] == nullptr ? "NULL" : cells[i]).append(" ");
            return 0;
        };
        if (sqlite3_exec(db, sql, row, &all, nullptr) != SQLITE_OK) return sqlite3_errmsg(db);
        return all;
    }
    /// Every row's cells, as text or bytes.
    std::vector<std::vector<std::string>> rows(const std::string& sql) {
        std::vector<std::vector<std::string>> all;
        sqlite3_stmt* statement = nullptr;
        if (sqlite3_prepare_v2(db, sql.c_str(), -1, &statement, nullptr) != SQLITE_OK)
            qFatal("%s: %s", sql.c_str(), sqlite3_errmsg(db));
        while (sqlite3_step(statement) == SQLITE_ROW) {
            all.emplace_back();
            for (int i = 0; i < sqlite3_column_count(statement); ++i) {
                const auto* bytes = static_cast<const char*>(sqlite3_column_blob(statement, i));
                const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement, i));
                all.back().emplace_back(bytes == nullptr ? "" : bytes, size);
            }
        }
        sqlite3_finalize(statement);
        return all;
    }

    sqlite3* db = nullptr;
};

} // namespace ambit::test
