#include "archive/remove.hpp"

#include "archive/connection.hpp"
#include "archive/sealing.hpp"
#include "archive/words.hpp"

#include <algorithm>

namespace ambit::archive {

namespace {

Result<void> change(Connection& connection, const char* sql, std::int64_t key) {
    Statement statement = connection.prepare(sql);
    if (statement.integer(key).step() != SQLITE_DONE) return connection.failed(say("let the record go"));
    return {};
}

/// A contentless index forgets a row only when told again what it had.
Result<void> forgetWords(Connection& connection, const file::Told& told, std::int64_t key) {
    const Words words = wordsOf(told);
    Statement forget =
        connection.prepare("INSERT INTO words(words, rowid, aircraft, person, part, jasc, kind, text)"
                           " VALUES('delete', ?, ?, ?, ?, ?, ?, ?)");
    forget.integer(key).text(words.aircraft).text(words.person).text(words.part).text(words.jasc);
    forget.text(words.kind).text(words.text);
    if (forget.step() != SQLITE_DONE) return connection.failed(say("let the record go"));
    return {};
}

/// Photos that no other record names go with it.
Result<void> takePhotosOut(Connection& connection, const file::Told& told) {
    if (told.round() == nullptr) return {};
    for (const std::string& hash : told.round()->photos) {
        {
            Statement others =
                connection.prepare("SELECT 1 FROM page WHERE instr(told, CAST(? AS BLOB)) > 0 LIMIT 1");
            const int code = others.text(hash).step();
            if (code == SQLITE_ROW) continue;
            if (code != SQLITE_DONE) return connection.failed(say("let the photo go"));
        }
        for (const char* sql :
             {"DELETE FROM photo WHERE sha256 = ?", "DELETE FROM photo_hole WHERE sha256 = ?"}) {
            Statement gone = connection.prepare(sql);
            if (gone.text(hash).step() != SQLITE_DONE) return connection.failed(say("let the photo go"));
        }
    }
    return {};
}

Result<record::Removal> stubOf(const Archive& archive, const Removing& removing,
                               const std::vector<std::string>& heads, std::vector<file::Told>& all) {
    record::Removal removal;
    removal.basis = removing.basis;
    for (const std::string& sha256 : removing.records) {
        auto told = archive.toldBy(sha256);
        if (!told) return tl::unexpected(told.error());
        if (told->registration != removing.registration)
            return fail(ErrorCode::refused, say("This record is of another aircraft."), sha256,
                        say("Look at its identity."));
        if (std::find(heads.begin(), heads.end(), sha256) != heads.end())
            return fail(ErrorCode::refused,
                        say("This record is the latest of its file: the next one names it."), sha256,
                        say("Let it go when there are later ones."));
        if (told->kind() == std::string("removal"))
            return fail(ErrorCode::refused,
                        say("This record says what was let go: without it the chain breaks."), sha256);
        removal.records.push_back({sha256, told->previous, told->kind(), told->at});
        all.push_back(std::move(*told));
    }
    return removal;
}

} // namespace

Result<void> Connection::takeOut(const file::Told& told) {
    const auto key = recordKey(told.sha256);
    if (!key) return tl::unexpected(key.error());
    if (auto done = forgetWords(*this, told, *key); !done) return done;
    for (const char* sql :
         {"DELETE FROM page WHERE file = (SELECT file FROM record WHERE key = ?1) AND record = ?1",
          "DELETE FROM discrepancy WHERE record = ?", "DELETE FROM pdf WHERE record = ?",
          "DELETE FROM signature WHERE record = ?", "DELETE FROM record WHERE key = ?"})
        if (auto done = change(*this, sql, *key); !done) return done;
    return takePhotosOut(*this, told);
}

Result<std::string> removeRecords(Archive& archive, const Removing& removing, const record::Signer& signer,
                                  const record::DrawPages& draw) {
    const auto heads = archive.heads(removing.registration);
    if (!heads) return tl::unexpected(heads.error());
    std::vector<file::Told> going;
    const auto removal = stubOf(archive, removing, *heads, going);
    if (!removal) return tl::unexpected(removal.error());
    if (going.empty()) return fail(ErrorCode::invalid, say("No record is named that is to go."));
    const auto stub =
        signEntry(archive, {removing.registration, going.front().serial, removing.at, *heads, removing.who},
                  *removal, signer, draw);
    if (!stub) return tl::unexpected(stub.error());
    Connection& connection = archive.inside();
    const auto done = connection.transaction([&]() -> Result<void> {
        if (auto kept = connection.keepRecord(stub->told, stub->json); !kept)
            return tl::unexpected(kept.error());
        for (const std::string& pdf : stub->pdfs)
            if (auto kept = connection.keepPdf(stub->told, pdf); !kept) return tl::unexpected(kept.error());
        for (const file::Told& one : going)
            if (auto out = connection.takeOut(one); !out) return out;
        return {};
    });
    if (!done) return tl::unexpected(done.error());
    return stub->told.sha256;
}

} // namespace ambit::archive
