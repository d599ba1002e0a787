// Records out of the archive: lists, exact bytes, and what they tell.
#include "archive/connection.hpp"
#include "base/encoding.hpp"
#include "record/content.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::archive {

namespace {

tl::unexpected<Error> rotten(const std::string& id) {
    return fail(ErrorCode::storage, say("The archive is damaged: this is not what was stored."), id,
                say("Keep the file, copy it away, and go on with a backup."));
}

std::string hexOf(const std::string& digest) {
    return toHex({reinterpret_cast<const std::uint8_t*>(digest.data()), digest.size()});
}

std::vector<std::string> hashesIn(const std::string& bytes) {
    std::vector<std::string> hashes;
    for (std::size_t at = 0; at + 32 <= bytes.size(); at += 32)
        hashes.push_back(hexOf(bytes.substr(at, 32)));
    return hashes;
}

tl::unexpected<Error> noSuchRecord(const std::string& sha256) {
    return fail(ErrorCode::notFound, say("The archive has no such record."), sha256);
}

struct KeptSignature {
    std::int64_t after;
    record::SignatureText text;
};

/// Every way from a first signature to one that no other comes after.
void collect(const std::vector<KeptSignature>& all, std::int64_t last, std::vector<record::SignatureText> row,
             std::vector<std::vector<record::SignatureText>>& rows) {
    bool ends = true;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].after != last) continue;
        ends = false;
        auto longer = row;
        longer.push_back(all[i].text);
        // A row is as old as its first: numbers only grow, so this ends.
        collect(all, static_cast<std::int64_t>(i), std::move(longer), rows);
    }
    if (ends && (!row.empty() || all.empty())) rows.push_back(std::move(row));
}

} // namespace

Result<std::string> Connection::dictionary(std::int64_t id) {
    Statement select = prepare("SELECT bytes FROM dictionary WHERE id = ?");
    const int code = select.integer(id).step();
    if (code == SQLITE_DONE) return rotten("dictionary " + std::to_string(id));
    if (code != SQLITE_ROW) return failed(say("read the record"));
    return select.textAt(0);
}

std::string pagesWhere(const char* condition) {
    return "SELECT page.record, page.sha256, page.kind, file.registration, signer.name, signer.role,"
           " signer.certificate, signer.key, page.walked, page.previous, page.told"
           " FROM page JOIN file ON file.id = page.file JOIN signer ON signer.id = page.signer WHERE " +
           std::string(condition);
}

Result<std::shared_ptr<const file::Walked>> Connection::walked(std::int64_t id) {
    if (id == 0) return std::make_shared<const file::Walked>();
    if (const auto known = walks.find(id); known != walks.end()) return known->second;
    Statement select = prepare("SELECT json FROM walked WHERE id = ?");
    if (select.integer(id).step() != SQLITE_ROW) return rotten("walk " + std::to_string(id));
    auto read = file::walkedFrom(select.textAt(0));
    if (!read) return tl::unexpected(read.error());
    if (walks.size() > 1024) walks.clear();
    return walks[id] = std::make_shared<const file::Walked>(std::move(*read));
}

Result<file::Told> Connection::toldIn(const Statement& row) {
    file::Told told;
    told.at = timeOfKey(row.integerAt(0));
    told.sha256 = hexOf(row.textAt(1));
    const std::string kind = row.textAt(2);
    told.registration = row.textAt(3);
    told.signer = {row.textAt(4), row.textAt(5), row.textAt(6)};
    told.key = row.textAt(7);
    auto itsWalk = walked(row.integerAt(8));
    if (!itsWalk) return tl::unexpected(itsWalk.error());
    told.previous = hashesIn(row.textAt(9));
    if (auto unpacked = file::unpack(told, row.textAt(10), kind, *itsWalk); !unpacked) {
        if (isNewer(row.integerAt(0), told.sha256))
            return fail(ErrorCode::unsupported, say("This archive was made by a newer Ambit."), told.sha256,
                        say("Update Ambit; the archive is untouched."));
        return tl::unexpected(unpacked.error());
    }
    return told;
}

bool Connection::isNewer(std::int64_t record, const std::string& sha256) {
    Statement select = prepare("SELECT dictionary, content FROM record WHERE key = ?");
    std::string bytes;
    if (select.integer(record).step() != SQLITE_ROW) return false;
    if (!content(select.integerAt(0), select.viewAt(1), bytes) || sha256Hex(bytes) != sha256) return false;
    const auto read = parseJson(bytes);
    const Json version = read && read->is_object() ? read->value("version", Json()) : Json();
    return version.is_number_integer() && version.get<std::int64_t>() > record::newestVersion;
}

Result<void> Connection::content(std::int64_t id, std::string_view packed, std::string& out) {
    return packing.unpack(packed, id, out, [&](std::int64_t one) { return dictionary(one); });
}

Result<std::vector<std::vector<record::SignatureText>>> Connection::chains(std::int64_t record) {
    std::vector<KeptSignature> all;
    Statement select =
        prepare("SELECT signature.n, signature.after, header.text, signature.value FROM signature"
                " JOIN header ON header.id = signature.header WHERE record = ? ORDER BY n");
    select.integer(record);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW) {
        const std::int64_t after = select.integerAt(1);
        if (select.integerAt(0) != static_cast<std::int64_t>(all.size()) ||
            after >= static_cast<std::int64_t>(all.size()))
            return rotten("signatures of record " + std::to_string(record));
        all.push_back({after, {select.textAt(2), select.textAt(3)}});
    }
    if (code != SQLITE_DONE) return failed(say("read the record's signatures"));
    std::vector<std::vector<record::SignatureText>> rows;
    collect(all, -1, {}, rows);
    std::sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) {
        return a.size() != b.size() ? a.size() > b.size() : a < b;
    });
    return rows;
}

Result<std::vector<std::string>> Archive::signedCopies(const std::string& sha256) const {
    const auto key = connection->recordKey(sha256);
    if (!key) return tl::unexpected(key.error());
    if (*key == 0) return noSuchRecord(sha256);
    std::string content;
    {
        Statement select = connection->prepare("SELECT dictionary, content FROM record WHERE key = ?");
        if (select.integer(*key).step() != SQLITE_ROW) return connection->failed(say("read the record"));
        if (auto done = connection->content(select.integerAt(0), select.textAt(1), content); !done)
            return tl::unexpected(done.error());
    }
    if (sha256Hex(content) != sha256) return rotten(sha256);
    const auto chains = connection->chains(*key);
    if (!chains) return tl::unexpected(chains.error());
    std::vector<std::string> copies;
    for (const auto& chain : *chains)
        copies.push_back(record::assembled(content, chain));
    return copies;
}

Result<std::string> Archive::recordJson(const std::string& sha256) const {
    auto copies = signedCopies(sha256);
    if (!copies) return tl::unexpected(copies.error());
    return std::move(copies->front());
}

Result<std::vector<std::string>> Archive::recordPdfs(const std::string& sha256) const {
    const auto key = connection->recordKey(sha256);
    if (!key) return tl::unexpected(key.error());
    if (*key == 0) return noSuchRecord(sha256);
    std::vector<std::string> pdfs;
    Statement select = connection->prepare(
        "SELECT sha256, photos, bytes FROM pdf WHERE record = ? ORDER BY length(bytes) DESC, sha256");
    select.integer(*key);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW) {
        std::string bytes = select.textAt(2);
        const auto places = parseJson(select.textAt(1));
        if (!places || !places->is_array()) return rotten(sha256);
        for (std::size_t i = places->size(); i-- > 0;) {
            const Json& place = (*places)[i];
            if (!place.is_array() || place.size() != 2 || !place[0].is_number_unsigned() ||
                !place[1].is_string())
                return rotten(sha256);
            const auto its = photo(place[1]);
            if (!its) return tl::unexpected(its.error());
            if (place[0].get<std::size_t>() > bytes.size()) return rotten(sha256);
            bytes.insert(place[0].get<std::size_t>(), *its);
        }
        if (sha256Hex(bytes) != hexOf(select.textAt(0))) return rotten(sha256);
        pdfs.push_back(std::move(bytes));
    }
    if (code != SQLITE_DONE) return connection->failed(say("read the record's PDF"));
    return pdfs;
}

Result<std::string> Archive::recordPdf(const std::string& sha256) const {
    auto pdfs = recordPdfs(sha256);
    if (!pdfs) return tl::unexpected(pdfs.error());
    return pdfs->empty() ? std::string() : std::move(pdfs->front());
}

Result<std::vector<RecordInfo>> Archive::records(const std::string& registration) const {
    std::vector<RecordInfo> list;
    Statement select = connection->prepare(
        "SELECT page.sha256, file.registration, kind, conclusion, record, signer.name, findings FROM page"
        " JOIN file ON file.id = page.file JOIN signer ON signer.id = page.signer"
        " WHERE ?1 = '' OR file.registration = ?1 ORDER BY record DESC, page.sha256");
    select.text(registration);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        list.push_back({hexOf(select.textAt(0)), select.textAt(1), select.textAt(2), select.textAt(3),
                        timeOfKey(select.integerAt(4)), select.textAt(5),
                        static_cast<int>(select.integerAt(6))});
    if (code != SQLITE_DONE) return connection->failed(say("list its records"));
    return list;
}

Result<std::vector<file::Told>> Archive::told(const std::string& registration) const {
    std::vector<file::Told> list;
    static const std::string sql = pagesWhere("file.registration = ? ORDER BY page.record");
    Statement select = connection->prepare(sql.c_str());
    select.text(registration);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW) {
        auto one = connection->toldIn(select);
        if (!one) return tl::unexpected(one.error());
        list.push_back(std::move(*one));
    }
    if (code != SQLITE_DONE) return connection->failed(say("read the aircraft's records"));
    return list;
}

Result<file::Told> Archive::toldBy(const std::string& sha256) const {
    const auto key = connection->recordKey(sha256);
    if (!key) return tl::unexpected(key.error());
    if (*key == 0) return noSuchRecord(sha256);
    static const std::string sql =
        pagesWhere("page.file = (SELECT file FROM record WHERE key = ?1) AND page.record = ?1");
    Statement select = connection->prepare(sql.c_str());
    if (select.integer(*key).step() != SQLITE_ROW) return rotten(sha256);
    return connection->toldIn(select);
}

Result<std::vector<std::string>> Archive::heads(const std::string& registration) const {
    std::vector<std::string> list;
    Statement select = connection->prepare("SELECT head.sha256 FROM head JOIN file ON file.id = head.file"
                                           " WHERE file.registration = ? ORDER BY head.sha256");
    select.text(registration);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        list.push_back(hexOf(select.textAt(0)));
    if (code != SQLITE_DONE) return connection->failed(say("find the latest records"));
    return list;
}

Result<std::vector<std::string>> Archive::files() const {
    std::vector<std::string> list;
    Statement select = connection->prepare("SELECT registration FROM file ORDER BY registration");
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        list.push_back(select.textAt(0));
    if (code != SQLITE_DONE) return connection->failed(say("list its files"));
    return list;
}

} // namespace ambit::archive
