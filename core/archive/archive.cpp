#include "archive/archive.hpp"

#include "archive/connection.hpp"
#include "archive/schema.hpp"
#include "base/canonical.hpp"
#include "base/hash.hpp"

namespace ambit::archive {

namespace {

/// Checking every page of a large archive would hold up the start; `ambit archive verify` is for that.
constexpr std::uintmax_t checkedWhole = std::uintmax_t{32} << 20;

Error atFile(Error error, const std::string& file) {
    error.where = file;
    return error;
}

} // namespace

Archive::Connection::~Connection() {
    for (const auto& [sql, statement] : statements)
        sqlite3_finalize(statement);
    sqlite3_close(db);
}

Statement Archive::Connection::prepare(const char* sql) {
    sqlite3_stmt*& statement = statements[sql];
    if (statement == nullptr) sqlite3_prepare_v3(db, sql, -1, SQLITE_PREPARE_PERSISTENT, &statement, nullptr);
    return Statement(statement);
}

Result<void> Archive::Connection::run(const char* sql, const std::string& doing) {
    if (sqlite3_exec(db, sql, nullptr, nullptr, nullptr) != SQLITE_OK) return failed(doing);
    return {};
}

std::int64_t Archive::Connection::number(const char* sql) {
    Statement statement = prepare(sql);
    return statement.step() == SQLITE_ROW ? statement.integerAt(0) : -1;
}

tl::unexpected<Error> Archive::Connection::failed(const std::string& doing) const {
    return archive::failed(db, doing, file);
}

namespace {

template<class Connection> Result<void> migrate(Connection& connection) {
    const std::int64_t version = connection.number("PRAGMA user_version");
    const std::int64_t id = connection.number("PRAGMA application_id");
    if (version < 0 || id < 0) return connection.failed("be read");
    const std::int64_t tables = connection.number("SELECT count(*) FROM sqlite_schema");
    if (tables < 0) return connection.failed("be read");
    if (tables > 0 && id != applicationId)
        return fail(ErrorCode::unsupported, "This database is not an Ambit archive.", connection.file,
                    "Choose another file.");
    if (version > static_cast<std::int64_t>(migrations.size()))
        return fail(ErrorCode::unsupported, "This archive was made by a newer Ambit.", connection.file,
                    "Update Ambit; the archive is untouched.");
    if (version == static_cast<std::int64_t>(migrations.size())) return {};
    return connection.transaction([&]() -> Result<void> {
        for (auto step = static_cast<std::size_t>(version); step < migrations.size(); ++step)
            if (auto done = connection.run(migrations[step], "be set up"); !done) return done;
        const std::string stamps = "PRAGMA application_id = " + std::to_string(applicationId) +
                                   "; PRAGMA user_version = " + std::to_string(migrations.size());
        return connection.run(stamps.c_str(), "be set up");
    });
}

template<class Connection> Result<void> checkWhole(Connection& connection) {
    std::error_code none;
    const auto size = std::filesystem::file_size(connection.file, none);
    if (none || size > checkedWhole) return {};
    Statement check = connection.prepare("PRAGMA quick_check(1)");
    if (check.step() != SQLITE_ROW) return connection.failed("be checked");
    if (check.textAt(0) == "ok") return {};
    return fail(
        ErrorCode::storage, "The archive is damaged: " + check.textAt(0) + ".", connection.file,
        "Nothing was changed. Keep the file, copy it away, and go on with a backup or a new archive.");
}

} // namespace

Archive::Archive(std::unique_ptr<Connection> opened) : connection(std::move(opened)) {}
Archive::Archive(Archive&&) noexcept = default;
Archive& Archive::operator=(Archive&&) noexcept = default;
Archive::~Archive() = default;

Result<Archive> Archive::open(const std::filesystem::path& path) {
    auto connection = std::make_unique<Connection>();
    connection->file = path.string();
    const int flags =
        SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE;
    if (sqlite3_open_v2(connection->file.c_str(), &connection->db, flags, nullptr) != SQLITE_OK)
        return connection->failed("be opened");
    sqlite3_busy_timeout(connection->db, 2000);
    // Looked at before anything is written: a damaged or foreign file stays as it is.
    if (auto sane = checkWhole(*connection); !sane) return tl::unexpected(sane.error());
    for (const char* setting : {"PRAGMA foreign_keys = ON", "PRAGMA trusted_schema = OFF"})
        if (auto set = connection->run(setting, "be opened"); !set) return tl::unexpected(set.error());
    if (connection->number("SELECT count(*) FROM sqlite_schema") > 0 &&
        connection->number("PRAGMA application_id") != applicationId)
        return fail(ErrorCode::unsupported, "This database is not an Ambit archive.", connection->file,
                    "Choose another file.");
    // fullfsync: on Apple a plain fsync leaves the data in the drive's cache; elsewhere it changes nothing.
    for (const char* setting :
         {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "PRAGMA fullfsync = ON"})
        if (auto set = connection->run(setting, "be opened"); !set) return tl::unexpected(set.error());
    if (auto moved = migrate(*connection); !moved)
        return tl::unexpected(atFile(moved.error(), connection->file));
    return Archive(std::move(connection));
}

Result<void> Archive::addAircraft(const Aircraft& aircraft, std::string_view airframeText) {
    if (aircraft.registration.empty() || aircraft.serial.empty())
        return fail(ErrorCode::invalid, "An aircraft needs a registration and a serial number.",
                    aircraft.registration, "Fill in both.");
    return connection->transaction([&]() -> Result<void> {
        {
            Statement known = connection->prepare("SELECT serial FROM aircraft WHERE registration = ?");
            known.text(aircraft.registration);
            if (known.step() == SQLITE_ROW && known.textAt(0) != aircraft.serial)
                return fail(ErrorCode::conflict,
                            "The archive knows " + aircraft.registration + " with the serial number " +
                                known.textAt(0) + ".",
                            aircraft.registration,
                            "Look at the data plate; one registration is one machine here.");
        }
        Statement airframe = connection->prepare("INSERT OR IGNORE INTO airframe VALUES(?, ?)");
        if (airframe.text(aircraft.airframeSha256).blob(airframeText).step() != SQLITE_DONE)
            return connection->failed("keep the airframe");
        Statement machine = connection->prepare(
            "INSERT INTO aircraft VALUES(?1, ?2, ?3, ?4) ON CONFLICT(registration) DO UPDATE"
            " SET airframe = ?3, airframe_name = ?4");
        machine.text(aircraft.registration)
            .text(aircraft.serial)
            .text(aircraft.airframeSha256)
            .text(aircraft.airframeName);
        if (machine.step() != SQLITE_DONE) return connection->failed("keep the aircraft");
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
    if (code != SQLITE_DONE) return connection->failed("list its aircraft");
    return list;
}

namespace {

/// One blob by its key; notFound if there is none.
template<class Connection>
Result<std::string> fetch(Connection& connection, const char* sql, const std::string& key, const char* what) {
    Statement select = connection.prepare(sql);
    const int code = select.text(key).step();
    if (code == SQLITE_ROW) return select.textAt(0);
    if (code == SQLITE_DONE)
        return fail(ErrorCode::notFound, std::string("The archive has no such ") + what + ".", key);
    return connection.failed(std::string("read the ") + what);
}

} // namespace

Result<std::string> Archive::airframeText(const std::string& sha256) const {
    return fetch(*connection, "SELECT bytes FROM airframe WHERE sha256 = ?", sha256, "airframe");
}

Result<std::string> Archive::photo(const std::string& sha256) const {
    return fetch(*connection, "SELECT bytes FROM photo WHERE sha256 = ?", sha256, "photo");
}

Result<std::string> Archive::recordJson(const std::string& sha256) const {
    return fetch(*connection, "SELECT json FROM record WHERE sha256 = ?", sha256, "record");
}

Result<std::string> Archive::recordPdf(const std::string& sha256) const {
    return fetch(*connection, "SELECT pdf FROM record WHERE sha256 = ?", sha256, "record");
}

} // namespace ambit::archive
