#include "archive/connection.hpp"
#include "archive/merge.hpp"
#include "base/files.hpp"

#include <cerrno>
#include <charconv>
#include <chrono>
#include <csignal>
#include <unistd.h>

namespace ambit::archive {

namespace {

constexpr int pagesAtOnce = 2048;

constexpr std::string_view partBegins = ".ambit-backup-";
constexpr std::string_view partEnds = ".part";

constexpr std::chrono::hours quietFor{1};

/// Parts of backups that were killed lie there for ever otherwise. One whose process lives is left alone, and
/// one that was written to lately: the folder may be shared with a machine whose processes aren't seen here.
void removeDeadParts(const std::filesystem::path& folder) {
    std::error_code none;
    for (const auto& entry : std::filesystem::directory_iterator(folder, none)) {
        const std::string name = entry.path().filename().string();
        const std::size_t dot = name.find(partEnds);
        if (!name.starts_with(partBegins) || dot == std::string::npos) continue;
        const std::string number = name.substr(partBegins.size(), dot - partBegins.size());
        int process = 0;
        const auto read = std::from_chars(number.data(), number.data() + number.size(), process);
        const bool isNumber = read.ec == std::errc() && read.ptr == number.data() + number.size();
        const auto written = entry.last_write_time(none);
        const bool quiet = !none && written + quietFor < std::filesystem::file_time_type::clock::now();
        if (isNumber && process > 0 && quiet && ::kill(process, 0) != 0 && errno == ESRCH)
            std::filesystem::remove(entry.path(), none);
    }
}

/// The copy while it is made; gone unless `keep` was called.
class Part {
public:
    explicit Part(const std::filesystem::path& to)
        : whole(to.string()), path(to.parent_path() / (std::string(partBegins) + std::to_string(::getpid()) +
                                                       std::string(partEnds))) {
        removeDeadParts(to.has_parent_path() ? to.parent_path() : ".");
        remove();
    }
    Part(const Part&) = delete;
    Part& operator=(const Part&) = delete;
    ~Part() {
        sqlite3_close(db);
        remove();
    }

    Result<void> open() {
        const int flags =
            SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE;
        if (sqlite3_open_v2(path.c_str(), &db, flags, nullptr) != SQLITE_OK)
            return failed(say("make its copy"));
        return {};
    }
    [[nodiscard]] tl::unexpected<Error> failed(const Sentence& doing) const {
        return archive::failed(db, doing, whole);
    }
    /// Reads the copy through, and folds its log into it.
    Result<void> check() {
        sqlite3_stmt* prepared = nullptr;
        if (sqlite3_prepare_v2(db, "PRAGMA quick_check(1)", -1, &prepared, nullptr) != SQLITE_OK)
            return failed(say("read its copy"));
        const std::unique_ptr<sqlite3_stmt, int (*)(sqlite3_stmt*)> owner(prepared, sqlite3_finalize);
        Statement statement(prepared);
        if (statement.step() != SQLITE_ROW) return failed(say("read its copy"));
        if (const std::string said = statement.textAt(0); said != "ok")
            return fail(ErrorCode::storage,
                        say("The archive is damaged, and so would be its copy: %1.", said), whole,
                        say("Nothing was written. Go on with an earlier backup."));
        return {};
    }
    Result<void> keep(const std::filesystem::path& to) {
        if (sqlite3_close(db) != SQLITE_OK) return failed(say("finish its copy"));
        db = nullptr;
        return finishFile(path, to);
    }

    sqlite3* db = nullptr;

private:
    void remove() const {
        std::error_code none;
        for (const char* tail : {"", "-wal", "-shm", "-journal"})
            std::filesystem::remove(path.string() + tail, none);
    }
    std::string whole; ///< what it becomes
    std::filesystem::path path;
};

} // namespace

Result<void> backUp(const Archive& archive, const std::filesystem::path& to, const Copied& progress) {
    std::error_code none;
    if (std::filesystem::exists(to, none))
        return fail(ErrorCode::storage, say("There is a file already; a backup never overwrites one."),
                    to.string(), say("Choose another name."));
    Connection& connection = archive.inside();
    Part part(to);
    if (auto opened = part.open(); !opened) return opened;
    // A reader's moment: what others write from here on isn't in the copy, and doesn't make it start again.
    if (auto begun = connection.run("BEGIN; SELECT count(*) FROM file", pattern("be read")); !begun)
        return begun;
    sqlite3_backup* copy = sqlite3_backup_init(part.db, "main", connection.db, "main");
    int code = copy == nullptr ? SQLITE_ERROR : SQLITE_OK;
    bool stopped = false;
    while (code == SQLITE_OK && !stopped) {
        code = sqlite3_backup_step(copy, pagesAtOnce);
        const int all = sqlite3_backup_pagecount(copy);
        stopped = code == SQLITE_OK && progress && !progress(all - sqlite3_backup_remaining(copy), all);
    }
    if (copy != nullptr) sqlite3_backup_finish(copy);
    (void)connection.run("COMMIT", pattern("be read"));
    if (stopped)
        return fail(ErrorCode::refused, say("The backup was stopped; nothing is left of it."), to.string());
    if (code != SQLITE_DONE) return part.failed(say("be copied"));
    if (auto good = part.check(); !good) return good;
    return part.keep(to);
}

} // namespace ambit::archive
