#include "archive/aircraft_file.hpp"

#include "archive/connection.hpp"

namespace ambit::archive {

Result<file::AircraftFile> fileOf(const Archive& archive, const std::string& registration) {
    const auto told = archive.told(registration);
    if (!told) return tl::unexpected(told.error());
    if (told->empty())
        return fail(ErrorCode::notFound, say("The archive has no record of this aircraft."), registration,
                    say("Look at its registration, or import its records."));
    return file::fold(*told);
}

Result<file::Renewals> renewals(const Archive& archive, const std::string& registration) {
    Connection& connection = archive.inside();
    {
        Statement select =
            connection.prepare("SELECT 1 FROM page WHERE file = (SELECT id FROM file WHERE registration = ?)"
                               " AND kind = 'renewal' LIMIT 1");
        const int code = select.text(registration).step();
        if (code == SQLITE_DONE) return file::Renewals();
        if (code != SQLITE_ROW) return connection.failed(say("read the point's history"));
    }
    auto file = fileOf(archive, registration);
    if (!file) return tl::unexpected(file.error());
    return std::move(file->renewals);
}

namespace {

struct Unsettled {
    std::int64_t id;
    std::string registration;
};

Result<std::vector<Unsettled>> unsettled(Connection& connection) {
    std::vector<Unsettled> list;
    Statement select = connection.prepare("SELECT id, registration FROM file WHERE settled = 0");
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        list.push_back({select.integerAt(0), select.textAt(1)});
    if (code != SQLITE_DONE) return connection.failed(say("list its files"));
    return list;
}

Result<void> note(Connection& connection, std::int64_t id, const file::AircraftFile& file) {
    {
        Statement clear = connection.prepare("DELETE FROM discrepancy WHERE file = ?");
        if (clear.integer(id).step() != SQLITE_DONE) return connection.failed(say("note its discrepancies"));
    }
    for (const file::Discrepancy& one : file.discrepancies) {
        const auto key = connection.recordKey(one.id.record);
        if (!key) return tl::unexpected(key.error());
        Statement insert = connection.prepare("INSERT INTO discrepancy VALUES(?, ?, ?, ?)");
        insert.integer(id).integer(*key).text(one.id.point).text(file::toText(one.state));
        if (insert.step() != SQLITE_DONE) return connection.failed(say("note its discrepancies"));
    }
    Statement done = connection.prepare("UPDATE file SET settled = 1 WHERE id = ?");
    if (done.integer(id).step() != SQLITE_DONE) return connection.failed(say("note its discrepancies"));
    return {};
}

} // namespace

Result<void> settle(const Archive& archive) {
    Connection& connection = archive.inside();
    const auto list = unsettled(connection);
    if (!list) return tl::unexpected(list.error());
    for (const Unsettled& one : *list) {
        auto done = connection.transaction([&]() -> Result<void> {
            const auto told = archive.told(one.registration);
            if (!told) return tl::unexpected(told.error());
            return note(connection, one.id, file::fold(*told));
        });
        if (!done) return done;
    }
    return {};
}

} // namespace ambit::archive
