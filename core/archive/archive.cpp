#include "archive/archive.hpp"

#include "archive/connection.hpp"
#include "archive/schema.hpp"
#include "base/encoding.hpp"

#include <cctype>
#include <unistd.h>

namespace ambit::archive {

Connection::~Connection() {
    for (const auto& [sql, statement] : statements)
        sqlite3_finalize(statement);
    sqlite3_close(db);
}

Statement Connection::prepare(const char* sql) {
    sqlite3_stmt*& statement = statements[sql];
    if (statement == nullptr) sqlite3_prepare_v3(db, sql, -1, SQLITE_PREPARE_PERSISTENT, &statement, nullptr);
    return Statement(statement);
}

Result<void> Connection::run(const char* sql, const char* doing) {
    if (sqlite3_exec(db, sql, nullptr, nullptr, nullptr) != SQLITE_OK) return failed(say(doing));
    return {};
}

tl::unexpected<Error> Connection::failed(const Sentence& doing) const {
    return archive::failed(db, doing, file);
}

namespace {

/// There, and neither it nor what SQLite lays beside it can be written: a medium that is write-protected,
/// somebody else's folder. What is in a log beside it can't be read without writing.
bool isOnlyToRead(const std::filesystem::path& file) {
    std::error_code none;
    if (!std::filesystem::is_regular_file(file, none)) return false;
    const std::filesystem::path folder = file.has_parent_path() ? file.parent_path() : ".";
    if (::access(file.c_str(), W_OK) == 0 && ::access(folder.c_str(), W_OK) == 0) return false;
    const auto log = std::filesystem::file_size(file.string() + "-wal", none);
    return none || log == 0;
}

/// SQLite's URI (sqlite.org/uri.html) of a file that stays as it is while it is open.
std::string unchangingUri(const std::string& file) {
    std::string uri = "file:";
    for (const char c : file) {
        const bool isPlain =
            std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '/' || c == '.' || c == '-' || c == '_';
        if (isPlain)
            uri += c;
        else
            uri += '%' + toHex({reinterpret_cast<const std::uint8_t*>(&c), 1});
    }
    return uri + "?immutable=1";
}

} // namespace

Result<void> Connection::open() {
    if (isOnlyToRead(file)) unchanging = unchangingUri(file);
    const int how = unchanging.empty() ? SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE
                                       : SQLITE_OPEN_READONLY | SQLITE_OPEN_URI;
    const std::string& name = unchanging.empty() ? file : unchanging;
    if (sqlite3_open_v2(name.c_str(), &db, how | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE, nullptr) !=
        SQLITE_OK)
        return failed(say("be opened"));
    sqlite3_busy_timeout(db, 2000);
    return {};
}

Result<std::unique_ptr<Connection>> Connection::beside() const {
    auto other = std::make_unique<Connection>();
    other->file = file;
    const int flags = SQLITE_OPEN_READONLY | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE |
                      (unchanging.empty() ? 0 : SQLITE_OPEN_URI);
    if (sqlite3_open_v2((unchanging.empty() ? file : unchanging).c_str(), &other->db, flags, nullptr) !=
        SQLITE_OK)
        return other->failed(say("be opened"));
    sqlite3_busy_timeout(other->db, 2000);
    // 16 MB of pages: going through all records in the order of time, one comes to each aircraft's pages
    // again.
    for (const char* setting : {"PRAGMA trusted_schema = OFF", "PRAGMA cache_size = -16000"})
        if (auto set = other->run(setting, pattern("be opened")); !set) return tl::unexpected(set.error());
    return other;
}

Archive::Archive(std::unique_ptr<Connection> opened) : connection(std::move(opened)) {}
Archive::Archive(Archive&&) noexcept = default;
Archive& Archive::operator=(Archive&&) noexcept = default;
Archive::~Archive() = default;

Result<Archive> Archive::open(const std::filesystem::path& path) {
    auto connection = std::make_unique<Connection>();
    connection->file = path.string();
    if (auto opened = connection->open(); !opened) return tl::unexpected(opened.error());
    if (auto fit = prepareSchema(connection->db, connection->file); !fit) return tl::unexpected(fit.error());
    if (auto moved = connection->moveFirstRecords(); !moved) return tl::unexpected(moved.error());
    return Archive(std::move(connection));
}

Result<void> Archive::addAircraft(const Aircraft& aircraft, std::string_view airframeText) {
    if (aircraft.registration.empty() || aircraft.serial.empty())
        return fail(ErrorCode::invalid, say("An aircraft needs a registration and a serial number."),
                    aircraft.registration, say("Fill in both."));
    if (sha256Hex(airframeText) != aircraft.airframeSha256)
        return fail(ErrorCode::conflict, say("The airframe's text is not that of its hash."),
                    aircraft.airframeSha256);
    return connection->transaction([&]() -> Result<void> {
        {
            Statement known = connection->prepare("SELECT serial FROM aircraft WHERE registration = ?");
            known.text(aircraft.registration);
            if (known.step() == SQLITE_ROW && known.textAt(0) != aircraft.serial)
                return fail(ErrorCode::conflict,
                            say("The archive knows %1 with the serial number %2.", aircraft.registration,
                                known.textAt(0)),
                            aircraft.registration,
                            say("Look at the data plate; one registration is one machine here."));
        }
        Statement airframe = connection->prepare("INSERT OR IGNORE INTO airframe VALUES(?, ?)");
        if (airframe.text(aircraft.airframeSha256).blob(airframeText).step() != SQLITE_DONE)
            return connection->failed(say("keep the airframe"));
        Statement machine = connection->prepare(
            "INSERT INTO aircraft VALUES(?1, ?2, ?3, ?4) ON CONFLICT(registration) DO UPDATE"
            " SET airframe = ?3, airframe_name = ?4");
        machine.text(aircraft.registration)
            .text(aircraft.serial)
            .text(aircraft.airframeSha256)
            .text(aircraft.airframeName);
        if (machine.step() != SQLITE_DONE) return connection->failed(say("keep the aircraft"));
        return {};
    });
}

Result<std::vector<Aircraft>> Archive::aircraft() const {
    std::vector<Aircraft> list;
    Statement select = connection->prepare(
        "SELECT registration, serial, airframe, airframe_name FROM aircraft ORDER BY registration");
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        list.push_back({select.textAt(0), select.textAt(1), select.textAt(2), select.textAt(3)});
    if (code != SQLITE_DONE) return connection->failed(say("list its aircraft"));
    return list;
}

namespace {

/// A disk can rot without SQLite noticing.
tl::unexpected<Error> rotten(const std::string& id) {
    return fail(ErrorCode::storage, say("The archive is damaged: this is not what was stored."), id,
                say("Keep the file, copy it away, and go on with a backup."));
}

/// One blob by its key; notFound if there is none. `isWhole` gets the row and its blob.
template<class Check>
Result<std::string> fetch(Connection& connection, const char* sql, const std::string& key, const char* what,
                          Check isWhole) {
    Statement select = connection.prepare(sql);
    const int code = select.text(key).step();
    if (code == SQLITE_DONE)
        return fail(ErrorCode::notFound, say("The archive has no such %1.", say(what)), key);
    if (code != SQLITE_ROW) return connection.failed(say("read the %1", say(what)));
    std::string bytes = select.textAt(0);
    if (!isWhole(select, bytes)) return rotten(key);
    return bytes;
}

/// What is named by its hash.
Result<std::string> fetchHashed(Connection& connection, const char* sql, const std::string& sha256,
                                const char* what) {
    return fetch(connection, sql, sha256, what,
                 [&](const Statement&, const std::string& bytes) { return sha256Hex(bytes) == sha256; });
}

} // namespace

Result<std::string> Archive::airframeText(const std::string& sha256) const {
    return fetchHashed(*connection, "SELECT bytes FROM airframe WHERE sha256 = ?", sha256,
                       pattern("airframe"));
}

Result<std::string> Archive::photo(const std::string& sha256) const {
    return fetchHashed(*connection, "SELECT bytes FROM photo WHERE sha256 = ?", sha256, pattern("photo"));
}

} // namespace ambit::archive
