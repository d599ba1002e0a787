#include "archive/import.hpp"

#include "airframe/read.hpp"
#include "archive/connection.hpp"
#include "record/pdf.hpp"

#include <algorithm>
#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace ambit::archive {

namespace {

constexpr std::size_t stretchCount = 512;                   ///< things looked at together
constexpr std::size_t stretchBytes = std::size_t{24} << 20; ///< or so many bytes
/// Of stretches in one transaction: the more, the fewer pages are written again and again. Others who want to
/// write wait two seconds.
constexpr std::chrono::milliseconds transactionTime{500};
/// To read a stretch: nobody else waits until so slow a source has given more.
constexpr std::chrono::milliseconds slowReading{50};

bool isJpeg(std::string_view bytes) {
    return bytes.starts_with("\xFF\xD8\xFF");
}
bool isPng(std::string_view bytes) {
    return bytes.starts_with("\x89PNG\r\n\x1A\n");
}
PhotoBytes photoOf(std::string hash, std::string bytes) {
    const auto size = static_cast<std::int64_t>(bytes.size());
    return {{std::move(hash), isPng(bytes) ? "image/png" : "image/jpeg", size}, std::move(bytes)};
}

struct Airframe {
    std::string sha256, name, text;
};

/// A thing offered, looked at.
struct Looked {
    std::string name;
    Result<std::variant<Incoming, PhotoBytes, Airframe>> what;
};

/// A record's JSON, verified and ready to be kept.
Result<Incoming> judged(record::Judge& judge, std::string bytes) {
    const auto its = judge(bytes);
    if (!its) return tl::unexpected(its.error());
    Incoming incoming;
    incoming.told = file::toldBy(*its);
    incoming.json = std::move(bytes);
    return incoming;
}

Looked look(Result<Offered> offered, record::Judge& judge) {
    if (!offered) return {offered.error().where, tl::unexpected(offered.error())};
    Looked looked{std::move(offered->name), {}};
    std::string& bytes = offered->bytes;
    if (isJpeg(bytes) || isPng(bytes)) {
        std::string hash = sha256Hex(bytes); // before they go: arguments have no order
        looked.what = photoOf(std::move(hash), std::move(bytes));
    } else if (!bytes.starts_with("%PDF-") && !bytes.starts_with(R"({"content":)")) {
        auto airframe = airframe::read(bytes);
        if (airframe)
            looked.what = Airframe{airframe->sha256, airframe->name, std::move(bytes)};
        else
            looked.what =
                fail(ErrorCode::invalid, say("This is neither a record nor a photo nor an airframe."),
                     looked.name, say("Give record.json, record.pdf, or what “ambit archive export” wrote."));
    } else {
        auto record = bytes.starts_with("%PDF-") ? verified(bytes) : judged(judge, std::move(bytes));
        if (record)
            looked.what = std::move(*record);
        else
            looked.what = tl::unexpected(record.error());
    }
    return looked;
}

/// Threads that stay: what each has learned of keys and certificates serves the next stretch too.
class Crew {
public:
    Crew() {
        const unsigned count = std::max(std::thread::hardware_concurrency(), 1U);
        for (unsigned i = 0; i < count; ++i)
            threads.emplace_back([this] { work(); });
    }
    Crew(const Crew&) = delete;
    Crew& operator=(const Crew&) = delete;
    ~Crew() {
        {
            const std::lock_guard lock(guard);
            ended = true;
        }
        wake.notify_all();
        for (std::thread& thread : threads)
            thread.join();
    }

    /// Begins to look at a stretch; the one before must have been waited for.
    void begin(std::vector<Result<Offered>> stretch) {
        {
            const std::lock_guard lock(guard);
            offered = std::move(stretch);
            looked = std::vector<Looked>(offered.size());
            next = 0;
            left = offered.size();
        }
        wake.notify_all();
    }
    /// Waits until all of it is looked at.
    std::vector<Looked> wait() {
        std::unique_lock lock(guard);
        done.wait(lock, [this] { return left == 0; });
        return std::move(looked);
    }

private:
    void work() {
        record::Judge judge;
        std::unique_lock lock(guard);
        for (;;) {
            wake.wait(lock, [this] { return ended || next < offered.size(); });
            if (ended) return;
            const std::size_t i = next++;
            Result<Offered> one = std::move(offered[i]);
            lock.unlock();
            Looked seen = look(std::move(one), judge);
            lock.lock();
            looked[i] = std::move(seen);
            if (--left == 0) done.notify_all();
        }
    }

    std::vector<Result<Offered>> offered;
    std::vector<Looked> looked;
    std::size_t next = 0;
    std::size_t left = 0;
    bool ended = false;
    std::mutex guard;
    std::condition_variable wake, done;
    std::vector<std::thread> threads;
};

std::vector<Result<Offered>> takeStretch(const Next& next) {
    std::vector<Result<Offered>> stretch;
    std::size_t bytes = 0;
    while (stretch.size() < stretchCount && bytes < stretchBytes) {
        auto one = next();
        if (!one) break;
        if (*one) bytes += (*one)->bytes.size();
        stretch.push_back(std::move(*one));
    }
    return stretch;
}

bool has(Connection& connection, const char* sql, const std::string& key) {
    Statement select = connection.prepare(sql);
    return select.text(key).step() == SQLITE_ROW;
}

struct Keeping {
    Connection& connection;
    bool anyPhoto = false;

    Result<Imported> operator()(const Incoming& one) {
        auto kept = connection.keepRecord(one.told, one.json);
        if (!kept) return tl::unexpected(kept.error());
        for (const PhotoBytes& photo : one.photos)
            if (auto in = connection.keepPhoto(photo); !in) return tl::unexpected(in.error());
        for (const std::string& pdf : one.pdfs)
            if (auto in = connection.keepPdf(one.told, pdf); !in) return tl::unexpected(in.error());
        return Imported{one.told.sha256, one.told.registration, one.told.kind(), kept->isNew,
                        kept->signatures};
    }
    Result<Imported> operator()(const PhotoBytes& photo) {
        const std::string& hash = photo.photo.sha256;
        const bool known = has(connection, "SELECT 1 FROM photo WHERE sha256 = ?", hash);
        if (!known && !anyPhoto && !has(connection, "SELECT 1 FROM photo_hole WHERE sha256 = ?", hash))
            return fail(ErrorCode::notFound, say("No record here names this photo."), hash,
                        say("Import the record it belongs to with it."));
        if (auto kept = connection.keepPhoto(photo); !kept) return tl::unexpected(kept.error());
        return Imported{hash, "", "photo", !known, 0};
    }
    Result<Imported> operator()(const Airframe& airframe) {
        Statement insert = connection.prepare("INSERT OR IGNORE INTO airframe VALUES(?, ?)");
        if (insert.text(airframe.sha256).blob(airframe.text).step() != SQLITE_DONE)
            return connection.failed(say("keep the airframe"));
        return Imported{airframe.sha256, airframe.name, "airframe", sqlite3_changes(connection.db) > 0, 0};
    }
};

/// What became of each thing, by its name.
using Outcomes = std::vector<std::pair<std::string, Result<Imported>>>;

Result<void> keepStretch(Connection& connection, std::vector<Looked> stretch, bool anyPhoto,
                         Outcomes& outcomes) {
    for (Looked& one : stretch) {
        Result<Imported> outcome = one.what ? std::visit(Keeping{connection, anyPhoto}, *one.what)
                                            : Result<Imported>(tl::unexpected(one.what.error()));
        if (!outcome && outcome.error().code == ErrorCode::storage && one.what)
            return tl::unexpected(outcome.error());
        outcomes.emplace_back(std::move(one.name), std::move(outcome));
    }
    return {};
}

} // namespace

Result<Incoming> verified(std::string_view bytes) {
    if (!bytes.starts_with("%PDF-")) {
        record::Judge judge;
        return judged(judge, std::string(bytes));
    }
    auto report = record::verifyPdf(bytes);
    if (!report) return tl::unexpected(report.error());
    auto photos = record::photosIn(bytes, report->record.content);
    if (!photos) return tl::unexpected(photos.error());
    Incoming incoming;
    incoming.told = file::toldBy(report->record);
    incoming.json = std::move(report->recordJson);
    incoming.pdfs.emplace_back(bytes);
    for (auto& [hash, image] : *photos)
        incoming.photos.push_back(photoOf(hash, std::move(image)));
    return incoming;
}

Result<Imported> importRecord(Archive& archive, std::string_view recordJson) {
    const auto incoming = verified(recordJson);
    if (!incoming) return tl::unexpected(incoming.error());
    Result<Imported> outcome;
    const auto done = archive.inside().transaction([&]() -> Result<void> {
        outcome = Keeping{archive.inside()}(*incoming);
        return outcome ? Result<void>() : tl::unexpected(outcome.error());
    });
    if (!done) return tl::unexpected(done.error());
    return outcome;
}

Result<void> takeRecord(Archive& archive, const std::string& sha256, const std::vector<std::string>& files) {
    std::vector<Incoming> records;
    for (const std::string& bytes : files) {
        auto one = verified(bytes);
        if (!one) return tl::unexpected(one.error());
        if (one->told.sha256 != sha256)
            return fail(ErrorCode::conflict, say("This is another record than was announced."),
                        one->told.sha256, say("Nothing of it was kept."));
        records.push_back(std::move(*one));
    }
    return archive.keep(records).map([](const std::vector<Kept>&) {});
}

Result<void> importAll(Archive& archive, const Next& next, const Told& told, bool anyPhoto) {
    Connection& connection = archive.inside();
    Crew crew;
    crew.begin(takeStretch(next));
    std::vector<Looked> stretch = crew.wait();
    while (!stretch.empty()) {
        Outcomes outcomes;
        const auto asked = std::chrono::steady_clock::now();
        crew.begin(takeStretch(next)); // while the one before is kept
        const auto begun = std::chrono::steady_clock::now();
        const bool slow = begun - asked > slowReading;
        auto done = connection.transaction([&]() -> Result<void> {
            for (;;) {
                if (auto kept = keepStretch(connection, std::move(stretch), anyPhoto, outcomes); !kept)
                    return kept;
                stretch = crew.wait();
                if (slow || stretch.empty() || std::chrono::steady_clock::now() - begun > transactionTime)
                    return {};
                crew.begin(takeStretch(next));
            }
        });
        if (!done) return done;
        for (const auto& [name, outcome] : outcomes)
            told(name, outcome);
    }
    return {};
}

Result<void> addAircraftOfRecords(Archive& archive) {
    const auto files = archive.files();
    if (!files) return tl::unexpected(files.error());
    for (const std::string& registration : *files) {
        if (has(archive.inside(), "SELECT 1 FROM aircraft WHERE registration = ?", registration)) continue;
        const auto told = archive.told(registration);
        if (!told) return tl::unexpected(told.error());
        const auto latest = std::find_if(told->rbegin(), told->rend(),
                                         [](const file::Told& one) { return one.round() != nullptr; });
        if (latest == told->rend()) continue;
        const auto text = archive.airframeText(latest->round()->walked->airframe);
        if (!text) continue;
        const auto airframe = airframe::read(*text);
        if (!airframe) continue;
        if (auto added =
                archive.addAircraft({registration, latest->serial, airframe->sha256, airframe->name}, *text);
            !added)
            return added;
    }
    return {};
}

} // namespace ambit::archive
