// Rounds and records in the archive: what is appended and what seals it.
#include "archive/connection.hpp"
#include "base/canonical.hpp"

#include <nlohmann/json.hpp>

namespace ambit::archive {

Result<std::vector<RoundInfo>> Archive::rounds(const std::string& registration) const {
    std::vector<RoundInfo> list;
    Statement select = connection->prepare(
        "SELECT id, registration, walk, opened_ms, (SELECT max(seq) FROM event WHERE event.round = "
        "round.key), sealed"
        " FROM round WHERE ?1 = '' OR registration = ?1 ORDER BY opened_ms DESC, key DESC");
    select.text(registration);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        list.push_back({select.textAt(0), select.textAt(1), select.textAt(2), Instant{select.integerAt(3)},
                        select.integerAt(4), select.integerAt(5) != 0});
    if (code != SQLITE_DONE) return connection->failed(say("list its rounds"));
    return list;
}

Result<std::vector<round::Event>> Archive::events(const std::string& roundId) const {
    auto key = connection->roundKey(roundId);
    if (!key) return tl::unexpected(key.error());
    std::vector<round::Event> list;
    JsonTape tape;
    Statement select = connection->prepare("SELECT json, digest FROM event WHERE round = ? ORDER BY seq");
    select.integer(*key);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW) {
        const std::string text = select.textAt(0);
        const JsonView json = tape.read(text);
        auto event = json ? round::eventFrom(json) : fail(ErrorCode::syntax, say("This is not canonical."));
        const auto seq = static_cast<std::int64_t>(list.size()) + 1;
        const bool isStored = json && shortDigest(text) == select.integerAt(1);
        const std::string where = connection->file + ", round " + roundId + ", event " + std::to_string(seq);
        // What is as it was stored and can't be read here was stored by one that can.
        if (!event && isStored && json["seq"].integer() == seq)
            return fail(ErrorCode::unsupported, say("This archive was made by a newer Ambit."), where,
                        say("Update Ambit; the archive is untouched."));
        if (!event || !isStored || event->seq != seq)
            return fail(ErrorCode::storage, say("An event of this round is damaged in the archive."), where,
                        say("Keep the file, copy it away, and go on with a backup."));
        list.push_back(std::move(*event));
    }
    if (code != SQLITE_DONE) return connection->failed(say("read the round"));
    return list;
}

Result<std::string> Archive::eventText(const std::string& roundId, std::int64_t seq) const {
    auto key = connection->roundKey(roundId);
    if (!key) return tl::unexpected(key.error());
    Statement select = connection->prepare("SELECT json, digest FROM event WHERE round = ? AND seq = ?");
    const int code = select.integer(*key).integer(seq).step();
    if (code == SQLITE_DONE) return std::string();
    if (code != SQLITE_ROW) return connection->failed(say("read the round"));
    std::string text = select.textAt(0);
    if (shortDigest(text) != select.integerAt(1))
        return fail(ErrorCode::storage, say("An event of this round is damaged in the archive."),
                    connection->file + ", round " + roundId + ", event " + std::to_string(seq),
                    say("Keep the file, copy it away, and go on with a backup."));
    return text;
}

Result<std::int64_t> Connection::roundKey(const std::string& roundId) {
    if (lastKey != 0 && lastRound == roundId) return lastKey;
    Statement select = prepare("SELECT key FROM round WHERE id = ?");
    const int code = select.text(roundId).step();
    if (code == SQLITE_DONE) return fail(ErrorCode::notFound, say("The archive has no such round."), roundId);
    if (code != SQLITE_ROW) return failed(say("find the round"));
    lastRound = roundId;
    lastKey = select.integerAt(0);
    return lastKey;
}

/// Only as the next of its round: the select gives no row otherwise, and nothing is inserted.
Result<void> Connection::insertEvent(std::int64_t round, const round::Event& event, std::string_view json) {
    Statement insert = prepare("INSERT INTO event SELECT ?1, ?2, ?3, ?4"
                               " WHERE ?2 = 1 + coalesce((SELECT max(seq) FROM event WHERE round = ?1), 0)");
    insert.integer(round).integer(event.seq).text(json).integer(shortDigest(json));
    if (insert.step() != SQLITE_DONE) return failed(say("keep the event"));
    if (sqlite3_changes(db) != 1)
        return fail(ErrorCode::conflict, say("This is not the next event of the round."),
                    "event " + std::to_string(event.seq),
                    say("Another program may be walking it; open the round again."));
    return {};
}

namespace {

Result<void> insertRound(Connection& connection, const std::string& roundId, const round::Event& first) {
    const auto* opened = std::get_if<round::Opened>(&first.what);
    if (opened == nullptr || first.seq != 1 || round::roundId(first) != roundId)
        return fail(ErrorCode::conflict,
                    say("The archive has no such round, and this event does not open it."), roundId);
    Statement insert =
        connection.prepare("INSERT INTO round(id, registration, walk, opened_ms) VALUES(?, ?, ?, ?)");
    insert.text(roundId).text(opened->registration).text(opened->walk).integer(first.at.ms);
    if (insert.step() == SQLITE_DONE) return {};
    if ((sqlite3_errcode(connection.db) & 0xFF) == SQLITE_CONSTRAINT)
        return fail(ErrorCode::notFound,
                    say("The archive does not know the aircraft %1.", opened->registration),
                    opened->registration, say("Add the aircraft first."));
    return connection.failed(say("keep the round"));
}

/// A log that is written here never names a photo that isn't there.
Result<void> checkPhotos(Connection& connection, const round::Event& event, Photos photos) {
    const auto* settled = std::get_if<round::Settled>(&event.what);
    if (settled == nullptr) return {};
    for (const round::Photo& photo : settled->photos) {
        if (photos == Photos::mayFollow) {
            if (auto awaited = connection.awaitPhoto(photo.sha256); !awaited) return awaited;
            continue;
        }
        Statement select = connection.prepare("SELECT 1 FROM photo WHERE sha256 = ?");
        const int code = select.text(photo.sha256).step();
        if (code == SQLITE_DONE)
            return fail(ErrorCode::notFound, say("The event names a photo that is not there."), photo.sha256,
                        say("Give the photo's bytes with it."));
        if (code != SQLITE_ROW) return connection.failed(say("look for the photo"));
    }
    return {};
}

bool namesPhotos(const round::Event& event) {
    const auto* settled = std::get_if<round::Settled>(&event.what);
    return settled != nullptr && !settled->photos.empty();
}

} // namespace

Result<void> Archive::append(const std::string& roundId, const round::Event& event,
                             const std::vector<PhotoBytes>& photos) {
    const std::string json = canonicalJson(toJson(event));
    auto key = connection->roundKey(roundId);
    if (!key && key.error().code != ErrorCode::notFound) return tl::unexpected(key.error());
    // The common case is a transaction by itself: one statement.
    if (key && photos.empty() && !namesPhotos(event)) return connection->insertEvent(*key, event, json);
    auto done = connection->transaction([&]() -> Result<void> {
        if (!key) {
            if (auto made = insertRound(*connection, roundId, event); !made) return made;
            key = connection->roundKey(roundId);
            if (!key) return tl::unexpected(key.error());
        }
        for (const PhotoBytes& one : photos)
            if (auto kept = connection->keepPhoto(one); !kept) return kept;
        if (auto there = checkPhotos(*connection, event, Photos::mustBeHere); !there) return there;
        return connection->insertEvent(*key, event, json);
    });
    if (!done) connection->lastKey = 0; // it may have been the key of a round that was undone
    return done;
}

Result<void> Archive::appendLog(const std::string& roundId, std::span<const round::Event> events,
                                Photos photos) {
    auto done = connection->transaction([&]() -> Result<void> {
        for (const round::Event& event : events) {
            auto key = connection->roundKey(roundId);
            if (!key && key.error().code != ErrorCode::notFound) return tl::unexpected(key.error());
            if (!key) {
                if (auto made = insertRound(*connection, roundId, event); !made) return made;
                key = connection->roundKey(roundId);
                if (!key) return tl::unexpected(key.error());
            }
            if (auto there = checkPhotos(*connection, event, photos); !there) return there;
            if (auto in = connection->insertEvent(*key, event, canonicalJson(toJson(event))); !in) return in;
            if (!std::holds_alternative<round::Signed>(event.what)) continue;
            if (auto sealed = connection->markSealed(*key); !sealed) return sealed;
        }
        return {};
    });
    if (!done) connection->lastKey = 0;
    return done;
}

Result<void> Connection::markSealed(std::int64_t round) {
    Statement sealed = prepare("UPDATE round SET sealed = 1 WHERE key = ?");
    if (sealed.integer(round).step() != SQLITE_DONE) return failed(say("seal the round"));
    return {};
}

Result<void> Archive::seal(const std::string& roundId, const round::Event& signedEvent,
                           const file::Told& told, std::string_view recordJson, std::string_view pdf) {
    auto key = connection->roundKey(roundId);
    if (!key) return tl::unexpected(key.error());
    const std::string json = canonicalJson(toJson(signedEvent));
    return connection->transaction([&]() -> Result<void> {
        const auto isNew = connection->keepRecord(told, recordJson);
        if (!isNew) return tl::unexpected(isNew.error());
        if (!isNew->isNew)
            return fail(ErrorCode::conflict, say("The archive has this record already."), told.sha256,
                        say("Open the round again."));
        if (auto kept = connection->keepPdf(told, pdf); !kept) return kept;
        if (auto sealed = connection->markSealed(*key); !sealed) return sealed;
        return connection->insertEvent(*key, signedEvent, json);
    });
}

} // namespace ambit::archive
