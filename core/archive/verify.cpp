#include "archive/verify.hpp"

#include "archive/connection.hpp"
#include "base/encoding.hpp"
#include "record/pdf.hpp"
#include "record/recheck.hpp"

#include <algorithm>
#include <array>
#include <atomic>
#include <mutex>
#include <set>
#include <thread>

namespace ambit::archive {

namespace {

using Bytes = std::array<std::uint8_t, 32>; // unsigned: zeros come first

std::string hexOf(std::string_view digest) {
    return toHex({reinterpret_cast<const std::uint8_t*>(digest.data()), digest.size()});
}
std::string hexOf(const Bytes& digest) {
    return toHex(digest);
}
Bytes bytesOf(std::string_view digest) {
    Bytes bytes{};
    std::transform(digest.begin(),
                   digest.begin() + static_cast<std::ptrdiff_t>(std::min(digest.size(), bytes.size())),
                   bytes.begin(), [](char c) { return static_cast<std::uint8_t>(c); });
    return bytes;
}

Error changed(std::string what) {
    return {ErrorCode::signature, std::move(what), "", "Go on with a backup."};
}

struct Named {
    Bytes what, by;
    friend auto operator<=>(const Named&, const Named&) = default;
};

/// What a worker found.
struct Found {
    std::vector<Bytes> here;
    std::vector<Named> named;
    std::vector<Bytes> gone; ///< let go, as signed stubs say
    std::vector<Broken> broken;
};

/// One row of `record` with its page.
struct Row {
    std::int64_t key = 0;
    std::string sha256;
    std::string registration;
    std::string pageSha256;
    std::string previous;
    std::string kind, conclusion, findings;
    std::string told;
};

/// Looks at a stretch of records with a connection and keys of its own.
class Worker {
public:
    Worker(std::unique_ptr<Connection> its, const Verifying& which)
        : connection(std::move(its)), what(which) {}

    Result<void> look(std::int64_t from, std::int64_t to) {
        if (auto read = readSignatures(from, to); !read) return read;
        Statement select = connection->prepare(
            "SELECT record.key, record.sha256, file.registration, page.sha256, page.previous, page.kind,"
            " page.conclusion, page.findings, page.told, record.dictionary, record.content FROM record"
            " LEFT JOIN file ON file.id = record.file"
            " LEFT JOIN page ON page.file = record.file AND page.record = record.key"
            " WHERE record.key BETWEEN ?1 AND ?2 AND (?3 = '' OR file.registration = ?3) ORDER BY "
            "record.key");
        select.integer(from).integer(to).text(what.registration);
        int code = 0;
        while ((code = select.step()) == SQLITE_ROW) {
            const Row row{select.integerAt(0), select.textAt(1), select.textAt(2),
                          select.textAt(3),    select.textAt(4), select.textAt(5),
                          select.textAt(6),    select.textAt(7), select.textAt(8)};
            found.here.push_back(bytesOf(row.sha256));
            auto good = connection->content(select.integerAt(9), select.textAt(10), content);
            if (good) good = lookAt(row);
            if (!good) found.broken.push_back({hexOf(row.sha256), good.error()});
            for (std::size_t at = 0; at + 32 <= row.previous.size(); at += 32)
                found.named.push_back(
                    {bytesOf(std::string_view(row.previous).substr(at, 32)), bytesOf(row.sha256)});
        }
        return code == SQLITE_DONE ? Result<void>() : connection->failed("be read");
    }

    Found found;

private:
    struct Signature {
        std::int64_t record;
        record::SignatureText text;
    };

    Result<void> readSignatures(std::int64_t from, std::int64_t to) {
        signatures.clear();
        next = 0;
        Statement select = connection->prepare("SELECT record, header, value FROM signature"
                                               " WHERE record BETWEEN ? AND ? ORDER BY record, n");
        select.integer(from).integer(to);
        int code = 0;
        while ((code = select.step()) == SQLITE_ROW) {
            auto header = headerText(select.integerAt(1));
            if (!header) return tl::unexpected(header.error());
            signatures.push_back({select.integerAt(0), {std::move(*header), select.textAt(2)}});
        }
        return code == SQLITE_DONE ? Result<void>() : connection->failed("be read");
    }

    Result<std::string> headerText(std::int64_t id) {
        if (const auto known = headers.find(id); known != headers.end()) return known->second;
        Statement select = connection->prepare("SELECT text FROM header WHERE id = ?");
        const int code = select.integer(id).step();
        if (code != SQLITE_ROW && code != SQLITE_DONE) return connection->failed("be read");
        if (headers.size() > 4096) headers.clear();
        return headers[id] = code == SQLITE_ROW ? select.textAt(0) : std::string();
    }

    Result<void> lookAt(const Row& row) {
        std::vector<record::SignatureText> its;
        while (next < signatures.size() && signatures[next].record < row.key)
            ++next;
        for (std::size_t i = next; i < signatures.size() && signatures[i].record == row.key; ++i)
            its.push_back(signatures[i].text);
        if (its.empty()) return tl::unexpected(changed("Its signature is gone."));
        auto top = its.size() == 1 ? recheck(row.sha256, content, its) : lookAtAll(row);
        if (!top) return tl::unexpected(top.error());
        if (top->registration != jsonText(row.registration) || top->at != toText(timeOfKey(row.key)))
            return tl::unexpected(
                changed("It isn't in its place: it was moved to another aircraft or time."));
        if (row.pageSha256 != row.sha256 || top->previous != listed(row.previous))
            return tl::unexpected(changed("What the archive keeps beside it isn't what it says."));
        if (row.kind == "removal")
            if (auto read = readRemoval(row); !read) return read;
        return what.contents ? judge(row, its) : Result<void>();
    }

    /// Whoever can write the file can write into the table `gone`: only what a signed stub says counts. What
    /// went named others, and the stub names them in its place.
    Result<void> readRemoval(const Row& row) {
        const auto read = parseJson(content);
        if (!read) return tl::unexpected(read.error());
        if (auto good = record::checkEntry(*read); !good) return good;
        const record::ReadEntry entry = record::entryFrom(*read);
        const auto* removal = std::get_if<record::Removal>(&entry.entry);
        if (removal == nullptr)
            return tl::unexpected(changed("What the archive keeps beside it isn't what it says."));
        const Bytes by = bytesOf(row.sha256);
        for (const auto& one : removal->records) {
            found.gone.push_back(bytesOf(fromHex(one.record).value_or(std::string())));
            for (const std::string& earlier : one.previous)
                found.named.push_back({bytesOf(fromHex(earlier).value_or(std::string())), by});
        }
        return {};
    }

    /// Several signatures: each way through them must hold.
    Result<record::Top> lookAtAll(const Row& row) {
        const auto chains = connection->chains(row.key);
        if (!chains) return tl::unexpected(chains.error());
        Result<record::Top> top = tl::unexpected(changed("Its signature is gone."));
        for (const auto& chain : *chains) {
            top = recheck(row.sha256, content, chain);
            if (!top) return top;
        }
        return top;
    }

    Result<void> judge(const Row& row, const std::vector<record::SignatureText>& its) {
        const auto report = record::verifyRecord(record::assembled(content, {its.front()}));
        if (!report) return tl::unexpected(report.error());
        static const std::string sql =
            pagesWhere("page.file = (SELECT file FROM record WHERE key = ?1) AND page.record = ?1");
        Statement select = connection->prepare(sql.c_str());
        if (select.integer(row.key).step() != SQLITE_ROW) return connection->failed("be read");
        const auto kept = connection->toldIn(select);
        if (!kept) return tl::unexpected(kept.error());
        if (beside(file::toldBy(*report)) != beside(*kept, row))
            return tl::unexpected(changed("What the archive keeps beside it isn't what it says."));
        return {};
    }

    /// All that the archive keeps beside a record, so that lists and searches needn't read it.
    static std::vector<std::string> beside(const file::Told& told) {
        const file::RoundTold* round = told.round();
        return {told.kind(),
                round == nullptr ? ""
                : round->fit     ? "fit"
                                 : "not fit",
                std::to_string(told.findings()),
                told.signer.name,
                told.signer.role,
                told.signer.certificate,
                told.key,
                round == nullptr ? "" : file::toJson(*round->walked).dump(),
                file::packed(told)};
    }
    static std::vector<std::string> beside(const file::Told& kept, const Row& row) {
        std::vector<std::string> list = beside(kept);
        list[1] = row.conclusion;
        list[2] = row.findings;
        return list;
    }

    static std::string jsonText(const std::string& text) {
        const std::string quoted = Json(text).dump();
        return quoted.substr(1, quoted.size() - 2);
    }
    static std::string listed(const std::string& digests) {
        std::string list;
        for (std::size_t at = 0; at + 32 <= digests.size(); at += 32)
            list += (at == 0 ? "\"" : ",\"") + hexOf(std::string_view(digests).substr(at, 32)) + '"';
        return list;
    }

    std::unique_ptr<Connection> connection;
    const Verifying& what;
    record::Recheck recheck;
    std::string content;
    std::vector<Signature> signatures; ///< of the stretch in hand, by record
    std::size_t next = 0;
    std::unordered_map<std::int64_t, std::string> headers;
};

Result<std::vector<std::int64_t>> keysOf(Connection& connection, const std::string& registration) {
    std::vector<std::int64_t> keys;
    Statement select =
        registration.empty()
            ? connection.prepare("SELECT key FROM record ORDER BY key")
            : connection.prepare("SELECT page.record FROM page JOIN file ON file.id = page.file"
                                 " WHERE file.registration = ? ORDER BY page.record");
    if (!registration.empty()) select.text(registration);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        keys.push_back(select.integerAt(0));
    if (code != SQLITE_DONE) return connection.failed("be read");
    return keys;
}

/// Everything the workers found, once all are through.
Result<Found> lookAtRecords(Connection& connection, const std::vector<std::int64_t>& keys,
                            const Verifying& what) {
    constexpr std::size_t stretch = 256;
    const std::size_t stretches = (keys.size() + stretch - 1) / stretch;
    const std::size_t count =
        std::clamp<std::size_t>(std::thread::hardware_concurrency(), 1, std::max<std::size_t>(stretches, 1));
    std::vector<std::unique_ptr<Worker>> workers;
    for (std::size_t i = 0; i < count; ++i) {
        auto its = connection.beside();
        if (!its) return tl::unexpected(its.error());
        workers.push_back(std::make_unique<Worker>(std::move(*its), what));
    }
    std::atomic<std::size_t> taken{0};
    std::atomic<bool> stop{false};
    std::mutex guard;
    std::optional<Error> failed;
    const auto work = [&](Worker& worker, bool tells) {
        for (std::size_t i = taken++; i < stretches && !stop; i = taken++) {
            const std::size_t last = std::min(keys.size(), (i + 1) * stretch) - 1;
            if (auto done = worker.look(keys[i * stretch], keys[last]); !done) {
                const std::lock_guard lock(guard);
                failed = done.error();
                stop = true;
            }
            if (tells && what.progress && !what.progress(std::min(taken * stretch, keys.size()), keys.size()))
                stop = true;
        }
    };
    std::vector<std::thread> threads;
    for (std::size_t i = 1; i < count; ++i)
        threads.emplace_back(work, std::ref(*workers[i]), false);
    work(*workers.front(), true);
    for (std::thread& thread : threads)
        thread.join();
    if (failed) return tl::unexpected(*failed);
    if (stop) return fail(ErrorCode::refused, "The check was stopped.");
    Found all;
    for (const auto& worker : workers) {
        all.here.insert(all.here.end(), worker->found.here.begin(), worker->found.here.end());
        all.named.insert(all.named.end(), worker->found.named.begin(), worker->found.named.end());
        all.gone.insert(all.gone.end(), worker->found.gone.begin(), worker->found.gone.end());
        all.broken.insert(all.broken.end(), worker->found.broken.begin(), worker->found.broken.end());
        worker->found = {};
    }
    std::sort(all.here.begin(), all.here.end());
    std::sort(all.named.begin(), all.named.end());
    std::sort(all.gone.begin(), all.gone.end());
    return all;
}

Result<std::vector<Bytes>> digests(Connection& connection, const char* sql, const std::string& registration) {
    std::vector<Bytes> list;
    Statement select = connection.prepare(sql);
    select.text(registration);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        list.push_back(bytesOf(select.textAt(0)));
    if (code != SQLITE_DONE) return connection.failed("be read");
    std::sort(list.begin(), list.end());
    return list;
}

Result<std::vector<Bytes>> headsOf(Connection& connection, const std::string& registration) {
    return digests(connection,
                   "SELECT head.sha256 FROM head LEFT JOIN file ON file.id = head.file"
                   " WHERE ?1 = '' OR file.registration = ?1",
                   registration);
}

/// What records name and nobody has; what the archive remembers as latest and hasn't; and the reverse. Others
/// may go on keeping records meanwhile: what has come in since isn't missing.
Result<void> lookForHoles(Connection& connection, const Found& found, const std::vector<Bytes>& heads,
                          const std::string& registration, Verification& verification) {
    const auto has = [](const std::vector<Bytes>& list, const Bytes& one) {
        return std::binary_search(list.begin(), list.end(), one);
    };
    const auto missing = [&](const Bytes& one) {
        return !has(found.here, one) && !has(found.gone, one) &&
               connection.recordKey(hexOf(one)).value_or(0) == 0;
    };
    for (const Named& named : found.named) {
        const std::string hole = hexOf(named.what);
        const bool again = !verification.holes.empty() && verification.holes.back().sha256 == hole;
        if (!again && !missing(named.what)) continue;
        if (!again) verification.holes.push_back({hole, {}});
        verification.holes.back().namedBy.push_back(hexOf(named.by));
    }
    for (const Bytes& head : heads)
        if (missing(head)) verification.holes.push_back({hexOf(head), {}});
    const auto now = headsOf(connection, registration);
    if (!now) return tl::unexpected(now.error());
    for (const Bytes& one : found.here) {
        const auto named = std::lower_bound(found.named.begin(), found.named.end(), Named{one, {}});
        const bool isNamed = named != found.named.end() && named->what == one;
        if (!isNamed && !has(heads, one) && !has(*now, one) && !has(found.gone, one))
            verification.broken.push_back(
                {hexOf(one), changed("A record that came after it is gone, and nothing says which.")});
    }
    return {};
}

Result<void> lookAtBlobs(const Archive& archive, const Verifying& what, Verification& verification) {
    Connection& connection = archive.inside();
    std::set<std::string> wanted; // of one aircraft
    if (!what.registration.empty()) {
        const auto all = archive.told(what.registration);
        if (!all) return tl::unexpected(all.error());
        for (const file::Told& one : *all)
            if (one.round() != nullptr) wanted.insert(one.round()->photos.begin(), one.round()->photos.end());
    }
    const auto isWanted = [&](const std::string& hash) {
        return what.registration.empty() || wanted.contains(hash);
    };
    {
        Statement select = connection.prepare("SELECT sha256, bytes FROM photo");
        int code = 0;
        while ((code = select.step()) == SQLITE_ROW) {
            const std::string hash = select.textAt(0);
            if (!isWanted(hash)) continue;
            ++verification.photos;
            if (sha256Hex(select.textAt(1)) != hash)
                verification.broken.push_back({hash, changed("This photo is not what was stored.")});
        }
        if (code != SQLITE_DONE) return connection.failed("be read");
    }
    Statement select = connection.prepare("SELECT sha256 FROM photo_hole ORDER BY sha256");
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        if (isWanted(select.textAt(0))) verification.missingPhotos.push_back(select.textAt(0));
    return code == SQLITE_DONE ? Result<void>() : connection.failed("be read");
}

Result<void> lookAtPdfs(const Archive& archive, const Verifying& what, Verification& verification) {
    std::vector<std::string> records;
    Connection& connection = archive.inside();
    {
        Statement select =
            connection.prepare("SELECT DISTINCT record.sha256 FROM pdf JOIN record ON record.key = pdf.record"
                               " JOIN file ON file.id = record.file WHERE ?1 = '' OR file.registration = ?1");
        select.text(what.registration);
        int code = 0;
        while ((code = select.step()) == SQLITE_ROW)
            records.push_back(hexOf(select.textAt(0)));
        if (code != SQLITE_DONE) return connection.failed("be read");
    }
    for (const std::string& sha256 : records) {
        const auto pdfs = archive.recordPdfs(sha256);
        if (!pdfs) {
            verification.broken.push_back({sha256, pdfs.error()});
            continue;
        }
        for (const std::string& pdf : *pdfs) {
            ++verification.pdfs;
            if (!what.contents) continue;
            if (const auto report = record::verifyPdf(pdf); !report)
                verification.broken.push_back({sha256, report.error()});
        }
    }
    return {};
}

/// Where no record stands, a search or a list may still stumble.
Result<void> lookAtPages(Connection& connection) {
    Statement select = connection.prepare("PRAGMA quick_check(1)");
    if (select.step() != SQLITE_ROW) return connection.failed("be read");
    const std::string said = select.textAt(0);
    if (said == "ok") return {};
    return fail(ErrorCode::storage, "The records hold, but the archive around them is damaged: " + said + '.',
                connection.file, "Keep the file, copy it away, and go on with a backup.");
}

/// Records of the first schema that didn't hold when it was left behind.
Result<void> lookAtFirst(Connection& connection, Verification& verification) {
    Statement select = connection.prepare("SELECT sha256 FROM record_1 ORDER BY sha256");
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        verification.broken.push_back(
            {select.textAt(0), changed("It doesn't hold as it was kept by an older Ambit.")});
    return code == SQLITE_DONE ? Result<void>() : connection.failed("be read");
}

} // namespace

Result<Verification> verify(const Archive& archive, const Verifying& what) {
    Connection& connection = archive.inside();
    const auto heads = headsOf(connection, what.registration);
    if (!heads) return tl::unexpected(heads.error());
    const auto keys = keysOf(connection, what.registration);
    if (!keys) return tl::unexpected(keys.error());
    auto found = lookAtRecords(connection, *keys, what);
    if (!found) return tl::unexpected(found.error());
    Verification verification;
    verification.records = found->here.size();
    verification.broken = std::move(found->broken);
    if (auto done = lookForHoles(connection, *found, *heads, what.registration, verification); !done)
        return tl::unexpected(done.error());
    if (auto done = lookAtBlobs(archive, what, verification); !done) return tl::unexpected(done.error());
    if (auto done = lookAtPdfs(archive, what, verification); !done) return tl::unexpected(done.error());
    if (what.registration.empty())
        if (auto done = lookAtFirst(connection, verification); !done) return tl::unexpected(done.error());
    if (what.contents && verification.broken.empty())
        if (auto done = lookAtPages(connection); !done) return tl::unexpected(done.error());
    std::sort(verification.broken.begin(), verification.broken.end(),
              [](const Broken& a, const Broken& b) { return a.sha256 < b.sha256; });
    return verification;
}

} // namespace ambit::archive
