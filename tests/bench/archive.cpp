// An archive of an invented fleet: taking it in, checking it, asking it. The limit that checking and taking
// in are held against is what OpenSSL alone needs for the same records on all cores: one P-256 verification
// of each signature and one SHA-256 over the bytes of each record.
#include "airframe/read.hpp"
#include "archive/aircraft_file.hpp"
#include "archive/find.hpp"
#include "archive/import.hpp"
#include "archive/verify.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"
#include "bench.hpp"
#include "file/comes_due.hpp"
#include "fleet/fleet.hpp"
#include "record/parts.hpp"

#include <cstring>
#include <fstream>
#include <openssl/ec.h>
#include <openssl/evp.h>
#include <random>
#include <thread>

namespace ambit::bench {

namespace {

/// All records, one after another, each behind its length: they needn't fit into memory.
class Spool {
public:
    explicit Spool(std::string its) : path(std::move(its)), out(path, std::ios::binary) {}

    void add(std::string_view record) {
        const auto size = static_cast<std::uint32_t>(record.size());
        out.write(reinterpret_cast<const char*>(&size), sizeof size);
        out.write(record.data(), static_cast<std::streamsize>(record.size()));
        ++count;
        bytes += record.size();
    }
    void rewind() {
        out.close();
        in.close();
        in.open(path, std::ios::binary);
    }
    std::optional<std::string> next() {
        std::uint32_t size = 0;
        if (!in.read(reinterpret_cast<char*>(&size), sizeof size)) return std::nullopt;
        std::string record(size, '\0');
        in.read(record.data(), size);
        return record;
    }

    std::size_t count = 0;
    std::size_t bytes = 0;

private:
    std::string path;
    std::ofstream out;
    std::ifstream in;
};

bool fill(Spool& spool, std::size_t records) {
    std::vector<fleet::Description> descriptions;
    for (const char* name : {"/helicopter/airframe.json", "/aeroplane/airframe.json"}) {
        const std::string path = demoFolder().toStdString() + name;
        auto text = readFile(path);
        auto airframe = airframe::readFrom(path);
        if (!text || !airframe) return false;
        descriptions.push_back({std::move(*airframe), std::move(*text)});
    }
    fleet::Plan plan;
    plan.records = records;
    if (records < 60000) plan.aircraft = 30; // enough records for each
    const auto fleet = fleet::Fleet::of(plan, descriptions);
    if (!fleet) return false;
    const auto made = fleet::makeAll(*fleet, static_cast<int>(std::thread::hardware_concurrency()),
                                     [&](const fleet::Machine&, std::string&& json) -> Result<void> {
                                         spool.add(json);
                                         return {};
                                     });
    if (!made) std::fprintf(stderr, "ambit-bench: %s\n", toText(made.error()).c_str());
    return made.has_value();
}

/// Records a second that OpenSSL alone could verify and hash, on all cores.
double openSslLimit(Spool& spool) {
    constexpr std::size_t sample = 2000; // of which each is taken ten times
    std::vector<std::string> records;
    std::vector<std::size_t> signatures; // beside them
    spool.rewind();
    // Spread over the whole, so that it is of its mixture.
    const std::size_t each = std::max<std::size_t>(1, spool.count / sample);
    for (std::size_t i = 0; i < spool.count; ++i) {
        auto one = spool.next();
        if (!one || i % each != 0) continue;
        const auto parts = record::partsOf(*one);
        signatures.push_back(parts ? parts->signatures.size() : 0);
        records.push_back(std::move(*one));
    }
    EVP_PKEY* key = EVP_EC_gen("P-256");
    const Digest digest = sha256("bench");
    std::vector<unsigned char> signature(128);
    std::size_t size = signature.size();
    EVP_PKEY_CTX* signing = EVP_PKEY_CTX_new(key, nullptr);
    EVP_PKEY_sign_init(signing);
    EVP_PKEY_sign(signing, signature.data(), &size, digest.data(), digest.size());
    EVP_PKEY_CTX_free(signing);
    const unsigned cores = std::thread::hardware_concurrency();
    QElapsedTimer timer;
    timer.start();
    std::vector<std::thread> threads;
    for (unsigned core = 0; core < cores; ++core)
        threads.emplace_back([&, core] {
            EVP_PKEY_CTX* context = EVP_PKEY_CTX_new(key, nullptr);
            EVP_PKEY_verify_init(context);
            for (std::size_t i = core; i < 10 * records.size(); i += cores) {
                (void)sha256(records[i % records.size()]);
                for (std::size_t n = 0; n < signatures[i % records.size()]; ++n)
                    if (EVP_PKEY_verify(context, signature.data(), size, digest.data(), digest.size()) != 1)
                        std::abort();
            }
            EVP_PKEY_CTX_free(context);
        });
    for (std::thread& thread : threads)
        thread.join();
    EVP_PKEY_free(key);
    return static_cast<double>(10 * records.size()) * 1000 / milliseconds(timer);
}

double residentMost() {
    std::ifstream status("/proc/self/status");
    std::string line;
    while (std::getline(status, line))
        if (line.starts_with("VmHWM:")) return std::atof(line.c_str() + 6) / 1024;
    return 0;
}

/// At least so many, in the limit's terms: reported as how far below it is.
bool atLeast(const char* what, double rate, double limit, double share, const char* detail) {
    const double ratio = rate / limit;
    std::printf("%-34s %8.1f %%   (at least %.0f %%) %s  %s\n", what, ratio * 100, share * 100,
                ratio >= share ? "holds" : "MISSED", detail);
    std::fflush(stdout);
    return ratio >= share;
}

template<class Ask> bool timed(const char* what, int times, Ask ask) {
    std::vector<double> spent;
    for (int i = 0; i < times; ++i) {
        QElapsedTimer timer;
        timer.start();
        if (!ask(i)) {
            std::fprintf(stderr, "ambit-bench: %s failed\n", what);
            return false;
        }
        spent.push_back(milliseconds(timer));
    }
    char detail[120];
    std::snprintf(detail, sizeof detail, "p95 of %d; median %.2f ms, worst %.1f", times, median(spent),
                  quantile(spent, 1));
    return report(what, quantile(spent, 0.95), "ms", 50, detail);
}

bool asked(const archive::Archive& archive, const std::vector<std::string>& aircraft) {
    std::mt19937 random(5);
    const auto anyAircraft = [&] { return aircraft[random() % aircraft.size()]; };
    const char* words[] = {"worn",          "crack", "oil",    "lamp flickers", "\"in the lower corner\"",
                           "replaced belt", "nut",   "chafed", "looked",        "fit",
                           "tyre pressure", "leak",  "corros", "nick",          "invented"};
    const char* people[] = {"Demo", "Jules Demo", "Fictive", "Sample", "Charlie"};
    using State = file::Discrepancy::State;
    bool holds = true;
    const auto search = [&](const char* what, const std::function<archive::Wanted(int)>& wanted) {
        holds =
            timed(what, 200, [&](int i) { return archive::find(archive, wanted(i)).has_value(); }) && holds;
    };
    search("find by words", [&](int i) {
        archive::Wanted one;
        one.words = words[static_cast<std::size_t>(i) % std::size(words)];
        return one;
    });
    search("find by words, one aircraft", [&](int i) {
        archive::Wanted one;
        one.words = words[static_cast<std::size_t>(i) % std::size(words)];
        one.registration = anyAircraft();
        return one;
    });
    search("find by person and kind", [&](int i) {
        archive::Wanted one;
        one.person = people[static_cast<std::size_t>(i) % std::size(people)];
        one.kind = i % 2 == 0 ? "rectification" : "part change";
        return one;
    });
    search("find by code and date", [&](int i) {
        archive::Wanted one;
        one.jasc = i % 2 == 0 ? "62" : "3340";
        one.before = parseInstant("20" + std::to_string(17 + i % 8) + "-01-01T00:00:00.000Z").value();
        return one;
    });
    search("find by state", [&](int i) {
        archive::Wanted one;
        const State states[] = {State::open, State::deferred, State::grounding, State::rectified,
                                State::closed};
        one.state = states[i % 5];
        if (i % 3 == 0) one.words = "worn";
        return one;
    });
    search("find by part", [&](int i) {
        archive::Wanted one;
        one.part = i % 2 == 0 ? "blade" : "INVENTED";
        return one;
    });
    const char* points[] = {"oil-level", "lamps", "windscreen", "no-such-point"};
    holds =
        timed("history of a point", 200,
              [&](int i) { return archive::history(archive, anyAircraft(), points[i % 4]).has_value(); }) &&
        holds;
    std::map<std::string, airframe::Airframe> airframes;
    const auto known = archive.aircraft();
    for (const char* name : {"/helicopter/airframe.json", "/aeroplane/airframe.json"}) {
        auto one = airframe::readFrom(demoFolder().toStdString() + name);
        if (one) airframes.emplace(one->sha256, std::move(*one));
    }
    const Date today = Date::parse("2026-01-01").value();
    return timed("aircraft page", 200,
                 [&](int) {
                     const auto its = archive::fileOf(archive, anyAircraft());
                     if (!its) return false;
                     const auto against = file::standsAgainst(*its, toText(today));
                     for (const auto& [hash, airframe] : airframes)
                         if (file::comesDue(*its, airframe, today).empty()) return false;
                     return !its->pages.empty();
                 }) &&
           holds;
}

} // namespace

bool archive(const QString& workFolder, std::size_t records) {
    Spool spool((workFolder + QStringLiteral("/fleet.records")).toStdString());
    QElapsedTimer timer;
    timer.start();
    if (!fill(spool, records)) return false;
    std::printf("%zu records of an invented fleet, %.1f kB each, made in %.0f s\n", spool.count,
                static_cast<double>(spool.bytes) / 1000 / static_cast<double>(spool.count),
                milliseconds(timer) / 1000);
    std::fflush(stdout);
    const double before = openSslLimit(spool);

    const std::string path = (workFolder + QStringLiteral("/fleet.sqlite")).toStdString();
    auto opened = archive::Archive::open(path);
    if (!opened) return false;
    spool.rewind();
    std::size_t bad = 0;
    timer.start();
    const auto done = archive::importAll(
        *opened,
        [&]() -> std::optional<Result<archive::Offered>> {
            auto one = spool.next();
            if (!one) return std::nullopt;
            return archive::Offered{"record", std::move(*one)};
        },
        [&](const std::string&, const Result<archive::Imported>& outcome) { bad += outcome ? 0 : 1; });
    const double importing = static_cast<double>(spool.count) * 1000 / milliseconds(timer);
    if (!done || bad > 0) return false;
    timer.start();
    if (!archive::settle(*opened)) return false;
    std::printf("files folded anew after it in %.1f s; archive %.2f kB a record\n",
                milliseconds(timer) / 1000,
                static_cast<double>(QFile(QString::fromStdString(path)).size()) / 1000 /
                    static_cast<double>(spool.count));
    timer.start();
    const auto verified = archive::verify(*opened);
    const double verifying = static_cast<double>(spool.count) * 1000 / milliseconds(timer);
    const double limit = std::max(before, openSslLimit(spool)); // the faster of two runs
    if (!verified || !verified->broken.empty() || !verified->holes.empty()) return false;
    char detail[160];
    std::snprintf(detail, sizeof detail, "%.0f records/s of %.0f", verifying, limit);
    bool holds = atLeast("verify all, of OpenSSL's limit", verifying, limit, 0.6, detail);
    std::snprintf(detail, sizeof detail, "%.0f records/s of %.0f", importing, limit);
    holds = atLeast("import, of OpenSSL's limit", importing, limit, 0.5, detail) && holds;
    const auto aircraft = opened->files();
    holds = aircraft && asked(*opened, *aircraft) && holds;
    std::snprintf(detail, sizeof detail, "the bench's own sample of records in it");
    return report("memory, resident at most", residentMost(), "MB", 300, detail) && holds;
}

} // namespace ambit::bench
