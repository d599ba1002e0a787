// Records into the archive, and with each what is found by it.
#include "archive/connection.hpp"
#include "archive/words.hpp"
#include "base/canonical.hpp"
#include "base/encoding.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::archive {

namespace {

constexpr std::size_t largestDictionary = std::size_t{112} << 10;
constexpr std::size_t mostIds = 20000; ///< remembered at once
constexpr std::size_t mostWalks = 256;

std::string digestOf(std::string_view text) {
    const Digest digest = sha256(text);
    return {reinterpret_cast<const char*>(digest.data()), digest.size()};
}

/// What is kept once and named by a number.
struct Once {
    std::string name; ///< in Connection::ids
    const char* select;
    const char* insert;
};

/// The row that `select` finds, or else `insert` makes; `find` and `make` bind their values.
template<class Find, class Make>
Result<std::int64_t> idOf(Connection& connection, const Once& once, Find find, Make make) {
    if (const auto known = connection.ids.find(once.name); known != connection.ids.end())
        return known->second;
    std::int64_t id = 0;
    {
        Statement select = connection.prepare(once.select);
        find(select);
        const int code = select.step();
        if (code == SQLITE_ROW) id = select.integerAt(0);
        if (code != SQLITE_ROW && code != SQLITE_DONE) return connection.failed(say("keep the record"));
    }
    if (id == 0) {
        Statement insert = connection.prepare(once.insert);
        make(insert);
        if (insert.step() != SQLITE_DONE) return connection.failed(say("keep the record"));
        id = sqlite3_last_insert_rowid(connection.db);
    }
    if (connection.ids.size() >= mostIds) connection.ids.clear();
    connection.ids.emplace(once.name, id);
    return id;
}

Result<std::int64_t> fileId(Connection& connection, const std::string& registration) {
    const auto bind = [&](Statement& to) { to.text(registration); };
    return idOf(connection,
                {"file/" + registration, "SELECT id FROM file WHERE registration = ?",
                 "INSERT INTO file(registration) VALUES(?)"},
                bind, bind);
}

Result<std::int64_t> signerId(Connection& connection, const file::Told& told) {
    const record::Person& who = told.signer;
    const auto bind = [&](Statement& to) {
        to.text(who.name).text(who.role).text(who.certificate).text(told.key);
    };
    return idOf(connection,
                {"signer/" + who.name + '\n' + who.role + '\n' + who.certificate + '\n' + told.key,
                 "SELECT id FROM signer WHERE name = ? AND role = ? AND certificate = ? AND key = ?",
                 "INSERT INTO signer(name, role, certificate, key) VALUES(?, ?, ?, ?)"},
                bind, bind);
}

Result<std::int64_t> walkedId(Connection& connection, const file::Told& told) {
    const file::RoundTold* round = told.round();
    if (round == nullptr) return 0;
    // Rounds of one walk share it, so that it is mostly known by its address.
    if (const auto known = connection.walkIds.find(round->walked); known != connection.walkIds.end())
        return known->second;
    const std::string json = file::toJson(*round->walked).dump();
    const std::string digest = digestOf(json);
    auto id = idOf(
        connection,
        {"walked/" + digest, "SELECT id FROM walked WHERE digest = ?",
         "INSERT INTO walked(digest, json) VALUES(?, ?)"},
        [&](Statement& to) { to.blob(digest); }, [&](Statement& to) { to.blob(digest).text(json); });
    if (connection.walkIds.size() >= mostWalks) connection.walkIds.clear();
    if (id) connection.walkIds.emplace(round->walked, *id);
    return id;
}

Result<std::int64_t> headerId(Connection& connection, const std::string& text) {
    if (const auto known = connection.ids.find(text); known != connection.ids.end()) return known->second;
    const std::string digest = digestOf(text);
    return idOf(
        connection,
        {text, "SELECT id FROM header WHERE digest = ?", "INSERT INTO header(digest, text) VALUES(?, ?)"},
        [&](Statement& to) { to.blob(digest); }, [&](Statement& to) { to.blob(digest).text(text); });
}

/// The first content of a name is the dictionary of those that come after it.
Result<std::int64_t> dictionaryId(Connection& connection, const file::Told& told, std::string_view content) {
    const file::RoundTold* round = told.round();
    const std::string name =
        round == nullptr ? told.kind() : "round/" + round->walked->airframe + '/' + round->walked->walk;
    return idOf(
        connection,
        {"dictionary/" + name, "SELECT id FROM dictionary WHERE name = ?",
         "INSERT INTO dictionary(name, bytes) VALUES(?, ?)"},
        [&](Statement& to) { to.text(name); },
        [&](Statement& to) { to.text(name).blob(content.substr(0, largestDictionary)); });
}

std::string packedHashes(const std::vector<std::string>& hashes) {
    std::string bytes;
    for (const std::string& hex : hashes)
        bytes += fromHex(hex).value_or(std::string(32, '\0'));
    return bytes;
}

/// A key for the record's time that no other has. The hash makes it the same in every archive, mostly.
Result<std::int64_t> freeKey(Connection& connection, Instant at, const std::string& digest) {
    const std::int64_t first = firstKeyAt(at);
    constexpr std::int64_t room = std::int64_t{1} << keyTail;
    const std::int64_t start = (std::int64_t{static_cast<unsigned char>(digest[0])} << 7) |
                               (static_cast<unsigned char>(digest[1]) >> 1);
    for (std::int64_t i = 0; i < room; ++i) {
        const std::int64_t key = first + (start + i) % room;
        Statement taken = connection.prepare("SELECT 1 FROM record WHERE key = ?");
        const int code = taken.integer(key).step();
        if (code == SQLITE_DONE) return key;
        if (code != SQLITE_ROW) return connection.failed(say("keep the record"));
    }
    return fail(ErrorCode::unsupported, say("More than 32768 records bear the very same time."), toText(at),
                say("Look at where they come from."));
}

Result<void> insertPage(Connection& connection, const file::Told& told, std::int64_t file, std::int64_t key,
                        const std::string& digest) {
    const auto signer = signerId(connection, told);
    if (!signer) return tl::unexpected(signer.error());
    const auto walked = walkedId(connection, told);
    if (!walked) return tl::unexpected(walked.error());
    const std::string previous = packedHashes(told.previous);
    const std::string rest = file::packed(told);
    const char* conclusion = told.round() == nullptr ? "" : told.round()->fit ? "fit" : "not fit";
    Statement insert = connection.prepare("INSERT INTO page VALUES(?, ?, ?, ?, ?, ?, ?, ?, ?, ?)");
    insert.integer(file).integer(key).blob(digest).text(told.kind()).integer(*signer).text(conclusion);
    insert.integer(told.findings()).integer(*walked).blob(previous).blob(rest);
    if (insert.step() != SQLITE_DONE) return connection.failed(say("keep the record"));
    return {};
}

Result<void> insertWords(Connection& connection, const file::Told& told, std::int64_t key) {
    const Words words = wordsOf(told);
    Statement insert = connection.prepare("INSERT INTO words(rowid, aircraft, person, part, jasc, kind, text)"
                                          " VALUES(?, ?, ?, ?, ?, ?, ?)");
    insert.integer(key).text(words.aircraft).text(words.person).text(words.part).text(words.jasc);
    insert.text(words.kind).text(words.text);
    if (insert.step() != SQLITE_DONE) return connection.failed(say("keep the record"));
    return {};
}

/// One row of one of two like tables.
Result<int> change(Connection& connection, const char* sql, std::int64_t file, std::string_view digest) {
    Statement statement = connection.prepare(sql);
    if (statement.integer(file).blob(digest).step() != SQLITE_DONE)
        return connection.failed(say("link the record"));
    return sqlite3_changes(connection.db);
}

/// Which records no other names, and which are named and not here. A record that was let go counts as named,
/// and so does what it named.
Result<void> link(Connection& connection, const file::Told& told, std::int64_t file,
                  const std::string& digest) {
    std::vector<std::string> gone;
    if (told.entry() != nullptr)
        if (const auto* removal = std::get_if<record::Removal>(told.entry()))
            for (const auto& one : removal->records) {
                gone.push_back(one.record);
                gone.insert(gone.end(), one.previous.begin(), one.previous.end());
            }
    for (const std::string& hex : gone) {
        const std::string one = fromHex(hex).value_or(std::string());
        for (const char* sql :
             {"INSERT OR IGNORE INTO gone VALUES(?, ?)", "DELETE FROM head WHERE file = ? AND sha256 = ?"})
            if (auto done = change(connection, sql, file, one); !done) return tl::unexpected(done.error());
    }
    const auto awaited = change(connection, "DELETE FROM hole WHERE file = ? AND sha256 = ?", file, digest);
    if (!awaited) return tl::unexpected(awaited.error());
    if (*awaited == 0) {
        auto done = change(connection,
                           "INSERT OR IGNORE INTO head SELECT ?1, ?2"
                           " WHERE NOT EXISTS(SELECT 1 FROM gone WHERE file = ?1 AND sha256 = ?2)",
                           file, digest);
        if (!done) return tl::unexpected(done.error());
    }
    for (const std::string& hex : told.previous) {
        const std::string earlier = fromHex(hex).value_or(std::string());
        const auto head = change(connection, "DELETE FROM head WHERE file = ? AND sha256 = ?", file, earlier);
        if (!head) return tl::unexpected(head.error());
        if (*head > 0) continue;
        auto done = change(connection,
                           "INSERT OR IGNORE INTO hole SELECT ?1, ?2"
                           " WHERE NOT EXISTS(SELECT 1 FROM record WHERE sha256 = ?2 AND file = ?1)",
                           file, earlier);
        if (!done) return tl::unexpected(done.error());
    }
    return {};
}

/// Photos that it names and that aren't here are awaited.
Result<void> awaitPhotos(Connection& connection, const file::Told& told) {
    if (told.round() == nullptr) return {};
    for (const std::string& hash : told.round()->photos)
        if (auto awaited = connection.awaitPhoto(hash); !awaited) return awaited;
    return {};
}

struct KeptSignature {
    std::int64_t n, after, header;
    std::string value;
};

Result<std::vector<KeptSignature>> signaturesOf(Connection& connection, std::int64_t record) {
    std::vector<KeptSignature> list;
    Statement select =
        connection.prepare("SELECT n, after, header, value FROM signature WHERE record = ? ORDER BY n");
    select.integer(record);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        list.push_back({select.integerAt(0), select.integerAt(1), select.integerAt(2), select.textAt(3)});
    if (code != SQLITE_DONE) return connection.failed(say("read the record's signatures"));
    return list;
}

/// Each after the one before it. Those that are known already stay as they are: a tree, of which a
/// record.json is one way from a first signature outwards.
Result<int> keepSignatures(Connection& connection, std::int64_t record,
                           const std::vector<record::SignatureText>& row, bool isNew) {
    std::vector<KeptSignature> known;
    if (!isNew) {
        auto list = signaturesOf(connection, record);
        if (!list) return tl::unexpected(list.error());
        known = std::move(*list);
    }
    std::int64_t after = -1;
    int added = 0;
    for (const record::SignatureText& one : row) {
        const auto header = headerId(connection, one.header);
        if (!header) return tl::unexpected(header.error());
        const auto same = std::find_if(known.begin(), known.end(), [&](const KeptSignature& other) {
            return other.after == after && other.header == *header && other.value == one.value;
        });
        if (same != known.end()) {
            after = same->n;
            continue;
        }
        const auto n = static_cast<std::int64_t>(known.size());
        Statement insert = connection.prepare("INSERT INTO signature VALUES(?, ?, ?, ?, ?)");
        insert.integer(record).integer(n).integer(after).integer(*header).blob(one.value);
        if (insert.step() != SQLITE_DONE) return connection.failed(say("keep the signature"));
        known.push_back({n, after, *header, one.value});
        after = n;
        ++added;
    }
    return added;
}

Result<std::int64_t> insertRecord(Connection& connection, const file::Told& told, std::string_view content) {
    const std::string digest = fromHex(told.sha256).value_or(std::string());
    auto file = fileId(connection, told.registration);
    if (!file) return file;
    auto dictionary = dictionaryId(connection, told, content);
    if (!dictionary) return dictionary;
    const auto packed = connection.packing.pack(content, *dictionary,
                                                [&](std::int64_t id) { return connection.dictionary(id); });
    if (!packed) return tl::unexpected(packed.error());
    auto key = freeKey(connection, told.at, digest);
    if (!key) return key;
    {
        Statement insert = connection.prepare("INSERT INTO record VALUES(?, ?, ?, ?, ?)");
        insert.integer(*key).blob(digest).integer(*file).integer(*dictionary).blob(*packed);
        if (insert.step() != SQLITE_DONE) return connection.failed(say("keep the record"));
    }
    if (auto done = insertPage(connection, told, *file, *key, digest); !done)
        return tl::unexpected(done.error());
    if (auto done = insertWords(connection, told, *key); !done) return tl::unexpected(done.error());
    if (auto done = link(connection, told, *file, digest); !done) return tl::unexpected(done.error());
    if (auto done = awaitPhotos(connection, told); !done) return tl::unexpected(done.error());
    Statement changed = connection.prepare("UPDATE file SET settled = 0 WHERE id = ? AND settled <> 0");
    if (changed.integer(*file).step() != SQLITE_DONE) return connection.failed(say("keep the record"));
    return key;
}

} // namespace

Result<std::int64_t> Connection::recordKey(const std::string& sha256) {
    const auto digest = fromHex(sha256);
    if (!digest || digest->size() != 32) return 0;
    Statement select = prepare("SELECT key FROM record WHERE sha256 = ?");
    const int code = select.blob(*digest).step();
    if (code == SQLITE_DONE) return 0;
    if (code != SQLITE_ROW) return failed(say("look for the record"));
    return select.integerAt(0);
}

Result<Kept> Connection::keepRecord(const file::Told& told, std::string_view recordJson) {
    const auto parts = record::partsOf(recordJson);
    if (!parts) return tl::unexpected(parts.error());
    auto key = recordKey(told.sha256);
    if (!key) return tl::unexpected(key.error());
    Kept kept;
    if (*key == 0) {
        kept.isNew = true;
        key = insertRecord(*this, told, parts->content);
        if (!key) return tl::unexpected(key.error());
    }
    const auto added = keepSignatures(*this, *key, parts->signatures, kept.isNew);
    if (!added) return tl::unexpected(added.error());
    kept.signatures = *added;
    return kept;
}

Result<void> Connection::awaitPhoto(const std::string& sha256) {
    Statement insert = prepare("INSERT OR IGNORE INTO photo_hole SELECT ?1"
                               " WHERE NOT EXISTS(SELECT 1 FROM photo WHERE sha256 = ?1)");
    if (insert.text(sha256).step() != SQLITE_DONE) return failed(say("await a photo"));
    return {};
}

Result<void> Connection::keepPhoto(const PhotoBytes& photo) {
    if (sha256Hex(photo.bytes) != photo.photo.sha256)
        return fail(ErrorCode::conflict, say("The photo's bytes are not those of its hash."),
                    photo.photo.sha256, say("Take the photo again."));
    Statement insert = prepare("INSERT OR IGNORE INTO photo VALUES(?, ?)");
    if (insert.text(photo.photo.sha256).blob(photo.bytes).step() != SQLITE_DONE)
        return failed(say("keep the photo"));
    Statement here = prepare("DELETE FROM photo_hole WHERE sha256 = ?");
    if (here.text(photo.photo.sha256).step() != SQLITE_DONE) return failed(say("keep the photo"));
    return {};
}

Result<void> Connection::keepPdf(const file::Told& told, std::string_view pdf) {
    const auto key = recordKey(told.sha256);
    if (!key) return tl::unexpected(key.error());
    // Photos are kept once: where one stands in the pages, its hash stands in for it.
    std::string cut(pdf);
    Json photos = Json::array();
    if (const file::RoundTold* round = told.round()) {
        for (const std::string& hash : round->photos) {
            Statement select = prepare("SELECT bytes FROM photo WHERE sha256 = ?");
            if (select.text(hash).step() != SQLITE_ROW) continue;
            const std::string bytes = select.textAt(0);
            const std::size_t at = bytes.empty() ? std::string::npos : cut.find(bytes);
            if (at == std::string::npos) continue;
            cut.erase(at, bytes.size());
            photos.push_back(Json::array({at, hash})); // put back in the other order
        }
    }
    const std::string where = photos.dump();
    const std::string digest = digestOf(pdf);
    Statement insert = prepare("INSERT OR IGNORE INTO pdf VALUES(?, ?, ?, ?)");
    insert.integer(*key).blob(digest).text(where).blob(cut);
    if (insert.step() != SQLITE_DONE) return failed(say("keep the record's PDF"));
    return {};
}

Result<std::vector<Kept>> Archive::keep(const std::vector<Incoming>& records) {
    std::vector<Kept> all;
    auto done = connection->transaction([&]() -> Result<void> {
        for (const Incoming& one : records) {
            auto kept = connection->keepRecord(one.told, one.json);
            if (!kept) return tl::unexpected(kept.error());
            for (const PhotoBytes& photo : one.photos)
                if (auto in = connection->keepPhoto(photo); !in) return in;
            for (const std::string& pdf : one.pdfs)
                if (auto in = connection->keepPdf(one.told, pdf); !in) return in;
            all.push_back(*kept);
        }
        return {};
    });
    if (!done) return tl::unexpected(done.error());
    return all;
}

} // namespace ambit::archive
