#include "archive/verify.hpp"

#include "archive/verify_worker.hpp"
#include "base/encoding.hpp"
#include "record/asked.hpp"
#include "record/pdf.hpp"

#include <algorithm>
#include <atomic>
#include <limits>
#include <mutex>
#include <optional>
#include <set>
#include <thread>

namespace ambit::archive {

namespace {

/// Deals out stretches of records in the order of their keys, to whoever asks.
class Stretches {
public:
    explicit Stretches(const Verifying& which) : what(which) {}

    /// How many records there are in all.
    [[nodiscard]] static Result<std::size_t> count(Connection& connection, const Verifying& what) {
        Statement select = connection.prepare(
            what.registration.empty()
                ? "SELECT count(*) FROM record"
                : "SELECT count(*) FROM page JOIN file ON file.id = page.file WHERE file.registration = ?1");
        if (!what.registration.empty()) select.text(what.registration);
        if (select.step() != SQLITE_ROW) return connection.failed(say("be read"));
        return static_cast<std::size_t>(select.integerAt(0));
    }

    struct Stretch {
        std::int64_t from, to;
    };
    /// The next, found with the asker's own connection, which so has its pages at hand; nothing at the end.
    [[nodiscard]] Result<std::optional<Stretch>> next(Connection& connection) {
        const std::lock_guard lock(guard);
        if (ended) return std::nullopt;
        Statement select =
            connection.prepare(what.registration.empty()
                                   ? "SELECT key FROM record WHERE key >= ?1 ORDER BY key LIMIT 1 OFFSET ?2"
                                   : "SELECT page.record FROM page JOIN file ON file.id = page.file"
                                     " WHERE file.registration = ?3 AND page.record >= ?1"
                                     " ORDER BY page.record LIMIT 1 OFFSET ?2");
        select.integer(begin).integer(stretch);
        if (!what.registration.empty()) select.text(what.registration);
        const int code = select.step();
        if (code != SQLITE_ROW && code != SQLITE_DONE) return connection.failed(say("be read"));
        ended = code == SQLITE_DONE;
        const Stretch its{begin, ended ? last : select.integerAt(0) - 1};
        begin = its.to + (ended ? 0 : 1);
        return its;
    }

private:
    static constexpr std::int64_t stretch = 256;
    static constexpr std::int64_t last = std::numeric_limits<std::int64_t>::max();

    const Verifying& what;
    std::mutex guard;
    std::int64_t begin = std::numeric_limits<std::int64_t>::min();
    bool ended = false;
};

Found gathered(const std::vector<std::unique_ptr<Worker>>& workers) {
    Found all;
    const auto take = [](auto& into, auto& from) {
        if (into.empty())
            into = std::move(from);
        else
            into.insert(into.end(), from.begin(), from.end());
    };
    for (const auto& worker : workers) {
        take(all.here, worker->found.here);
        take(all.named, worker->found.named);
        take(all.gone, worker->found.gone);
        take(all.broken, worker->found.broken);
        worker->found = {};
    }
    std::sort(all.here.begin(), all.here.end());
    std::sort(all.named.begin(), all.named.end());
    std::sort(all.gone.begin(), all.gone.end());
    return all;
}

/// Everything the workers found, once all are through.
Result<Found> lookAtRecords(Connection& connection, const Verifying& what) {
    const auto all = Stretches::count(connection, what);
    if (!all) return tl::unexpected(all.error());
    const std::size_t count = std::max<std::size_t>(std::thread::hardware_concurrency(), 1);
    std::vector<std::unique_ptr<Worker>> workers;
    for (std::size_t i = 0; i < count; ++i) {
        auto its = connection.beside();
        if (!its) return tl::unexpected(its.error());
        workers.push_back(std::make_unique<Worker>(std::move(*its), what));
        // Room for all: what isn't written to takes no memory, what must be moved takes it twice.
        workers.back()->found.here.reserve(*all);
        workers.back()->found.named.reserve(*all + *all / 16);
    }
    Stretches stretches(what);
    std::atomic<std::size_t> done{0};
    std::atomic<bool> stop{false};
    std::mutex guard;
    std::optional<Error> failed;
    const auto fails = [&](const Error& error) {
        const std::lock_guard lock(guard);
        failed = error;
        stop = true;
    };
    const auto work = [&](Worker& worker, bool tells) {
        while (!stop) {
            const auto stretch = stretches.next(worker.its());
            if (!stretch) return fails(stretch.error());
            if (!*stretch) return;
            const std::size_t before = worker.found.here.size();
            if (auto looked = worker.look((*stretch)->from, (*stretch)->to); !looked)
                return fails(looked.error());
            done += worker.found.here.size() - before;
            // Others may add records meanwhile.
            if (tells && what.progress && !what.progress(std::min<std::size_t>(done, *all), *all))
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
    if (stop) return fail(ErrorCode::refused, say("The check was stopped."));
    return gathered(workers);
}
Result<std::vector<Bytes>> digests(Connection& connection, const char* sql, const std::string& registration) {
    std::vector<Bytes> list;
    Statement select = connection.prepare(sql);
    select.text(registration);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        list.push_back(bytesOf(select.textAt(0)));
    if (code != SQLITE_DONE) return connection.failed(say("be read"));
    std::sort(list.begin(), list.end());
    return list;
}

Result<std::vector<Bytes>> headsOf(Connection& connection, const std::string& registration) {
    return digests(connection,
                   "SELECT head.sha256 FROM head LEFT JOIN file ON file.id = head.file"
                   " WHERE ?1 = '' OR file.registration = ?1",
                   registration);
}

/// Those that were let go while the records were looked at: there is a stub that wasn't there then.
Result<std::vector<Bytes>> goneSince(Connection& connection, const Found& found,
                                     const std::string& registration) {
    const auto stubs = digests(connection,
                               "SELECT record.sha256 FROM page JOIN record ON record.key = page.record"
                               " JOIN file ON file.id = page.file"
                               " WHERE page.kind = 'removal' AND (?1 = '' OR file.registration = ?1)",
                               registration);
    if (!stubs) return tl::unexpected(stubs.error());
    if (std::includes(found.here.begin(), found.here.end(), stubs->begin(), stubs->end()))
        return std::vector<Bytes>();
    return digests(connection,
                   "SELECT gone.sha256 FROM gone JOIN file ON file.id = gone.file"
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
    std::optional<Result<std::vector<Bytes>>> since; // asked for only if something is missing
    const auto missing = [&](const Bytes& one) {
        if (has(found.here, one) || has(found.gone, one)) return false;
        if (connection.recordKey(hexOf(one)).value_or(0) != 0) return false;
        if (!since) since = goneSince(connection, found, registration);
        return !*since || !has(**since, one);
    };
    for (const Named& named : found.named) {
        const std::string hole = hexOf(named.what);
        const bool again = !verification.holes.empty() && verification.holes.back().sha256 == hole;
        if (!again && !missing(named.what)) continue;
        if (!again) verification.holes.push_back({hole, {}});
        Statement select = connection.prepare("SELECT sha256 FROM record WHERE key = ?1");
        const int code = select.integer(named.by).step();
        if (code == SQLITE_ROW)
            verification.holes.back().namedBy.push_back(hexOf(bytesOf(select.textAt(0))));
        else if (code != SQLITE_DONE) // one that was let go meanwhile has a stub that names the hole, too
            return connection.failed(say("be read"));
    }
    for (file::Hole& hole : verification.holes)
        std::sort(hole.namedBy.begin(), hole.namedBy.end());
    for (const Bytes& head : heads)
        if (missing(head)) verification.holes.push_back({hexOf(head), {}});
    const auto now = headsOf(connection, registration);
    if (!now) return tl::unexpected(now.error());
    for (const Bytes& one : found.here) {
        const auto named = std::lower_bound(found.named.begin(), found.named.end(),
                                            Named{one, std::numeric_limits<std::int64_t>::min()});
        const bool isNamed = named != found.named.end() && named->what == one;
        if (!isNamed && !has(heads, one) && !has(*now, one) && !has(found.gone, one))
            verification.broken.push_back(
                {hexOf(one), changed(say("A record that came after it is gone, and nothing says which."))});
    }
    if (since && !*since) return tl::unexpected(since->error());
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
                verification.broken.push_back({hash, changed(say("This photo is not what was stored."))});
        }
        if (code != SQLITE_DONE) return connection.failed(say("be read"));
    }
    Statement select = connection.prepare("SELECT sha256 FROM photo_hole ORDER BY sha256");
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        if (isWanted(select.textAt(0))) verification.missingPhotos.push_back(select.textAt(0));
    return code == SQLITE_DONE ? Result<void>() : connection.failed(say("be read"));
}

Result<void> lookAtPdfs(const Archive& archive, const Verifying& what, Verification& verification) {
    std::vector<std::string> records;
    Connection& connection = archive.inside();
    {
        // CROSS: from the PDFs, not from all records.
        Statement select = connection.prepare(
            "SELECT DISTINCT record.sha256 FROM pdf CROSS JOIN record ON record.key = pdf.record"
            " JOIN file ON file.id = record.file WHERE ?1 = '' OR file.registration = ?1");
        select.text(what.registration);
        int code = 0;
        while ((code = select.step()) == SQLITE_ROW)
            records.push_back(hexOf(bytesOf(select.textAt(0))));
        if (code != SQLITE_DONE) return connection.failed(say("be read"));
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

/// Here, or let go with a stub.
bool isKnown(Connection& connection, const std::string& sha256) {
    if (connection.recordKey(sha256).value_or(0) != 0) return true;
    Statement gone = connection.prepare("SELECT 1 FROM gone WHERE sha256 = ?");
    const std::string digest = fromHex(sha256).value_or("");
    return gone.blob(digest).step() == SQLITE_ROW;
}

/// Events that rotted, or are missing in between. Whether a log was cut off at its end nobody can tell: it
/// may have got no further.
Result<void> lookAtLogs(const Archive& archive, const Verifying& what, Verification& verification) {
    const auto rounds = archive.rounds(what.registration);
    if (!rounds) return tl::unexpected(rounds.error());
    for (const RoundInfo& one : *rounds) {
        ++verification.rounds;
        const auto events = archive.events(one.id);
        if (!events) {
            verification.broken.push_back({one.id, events.error()});
            continue;
        }
        for (const round::Event& event : *events) {
            const auto* sealed = std::get_if<round::Signed>(&event.what);
            if (sealed != nullptr && !isKnown(archive.inside(), sealed->recordSha256))
                verification.broken.push_back(
                    {one.id, changed(say("The record that sealed this round is not here."))});
            const auto* asked = std::get_if<round::Asked>(&event.what);
            if (asked == nullptr) continue;
            if (const auto good = record::checkAsked(*asked); !good)
                verification.broken.push_back({one.id, good.error()});
        }
    }
    return {};
}

/// Where no record stands, a search or a list may still stumble.
Result<void> lookAtPages(Connection& connection) {
    Statement select = connection.prepare("PRAGMA quick_check(1)");
    if (select.step() != SQLITE_ROW) return connection.failed(say("be read"));
    const std::string said = select.textAt(0);
    if (said == "ok") return {};
    return fail(ErrorCode::storage,
                say("The records hold, but the archive around them is damaged: %1.", said), connection.file,
                say("Keep the file, copy it away, and go on with a backup."));
}

/// Records of the first schema that didn't hold when it was left behind.
Result<void> lookAtFirst(Connection& connection, Verification& verification) {
    Statement select = connection.prepare("SELECT sha256 FROM record_1 ORDER BY sha256");
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        verification.broken.push_back(
            {select.textAt(0), changed(say("It doesn't hold as it was kept by an older Ambit."))});
    return code == SQLITE_DONE ? Result<void>() : connection.failed(say("be read"));
}

} // namespace

Result<Verification> verify(const Archive& archive, const Verifying& what) {
    Connection& connection = archive.inside();
    const auto heads = headsOf(connection, what.registration);
    if (!heads) return tl::unexpected(heads.error());
    auto found = lookAtRecords(connection, what);
    if (!found) return tl::unexpected(found.error());
    Verification verification;
    verification.records = found->here.size();
    verification.broken = std::move(found->broken);
    if (auto done = lookForHoles(connection, *found, *heads, what.registration, verification); !done)
        return tl::unexpected(done.error());
    if (auto done = lookAtBlobs(archive, what, verification); !done) return tl::unexpected(done.error());
    if (auto done = lookAtPdfs(archive, what, verification); !done) return tl::unexpected(done.error());
    if (auto done = lookAtLogs(archive, what, verification); !done) return tl::unexpected(done.error());
    if (what.registration.empty())
        if (auto done = lookAtFirst(connection, verification); !done) return tl::unexpected(done.error());
    if (what.contents && verification.broken.empty())
        if (auto done = lookAtPages(connection); !done) return tl::unexpected(done.error());
    std::sort(verification.broken.begin(), verification.broken.end(),
              [](const Broken& a, const Broken& b) { return a.sha256 < b.sha256; });
    return verification;
}

} // namespace ambit::archive
