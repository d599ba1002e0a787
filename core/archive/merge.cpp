#include "archive/merge.hpp"

#include "archive/connection.hpp"
#include "base/canonical.hpp"
#include "base/encoding.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

namespace ambit::archive {

namespace {

std::string hexOf(const std::string& digest) {
    return toHex({reinterpret_cast<const std::uint8_t*>(digest.data()), digest.size()});
}

Result<std::vector<std::string>> column(Connection& connection, const char* sql) {
    std::vector<std::string> list;
    Statement select = connection.prepare(sql);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        list.push_back(select.textAt(0));
    if (code != SQLITE_DONE) return connection.failed(say("be read"));
    return list;
}

/// Gives everything that the other archive holds: records with all their signatures, PDFs, then photos and
/// airframes.
class Giving {
public:
    explicit Giving(const Archive& other) : from(other) {}

    Result<void> begin() {
        const auto keys = column(from.inside(), "SELECT sha256 FROM record ORDER BY key");
        if (!keys) return tl::unexpected(keys.error());
        records = *keys;
        for (const auto& [list, sql] :
             {std::pair{&photos, "SELECT sha256 FROM photo ORDER BY sha256"},
              std::pair{&airframes, "SELECT sha256 FROM airframe ORDER BY sha256"}}) {
            auto hashes = column(from.inside(), sql);
            if (!hashes) return tl::unexpected(hashes.error());
            *list = std::move(*hashes);
        }
        return {};
    }

    std::optional<Result<Offered>> next() {
        for (;;) {
            if (!waiting.empty()) {
                Result<Offered> one = std::move(waiting.back());
                waiting.pop_back();
                return one;
            }
            if (nextRecord < records.size()) {
                giveRecord(hexOf(records[nextRecord++]));
            } else if (nextPhoto < photos.size()) {
                const std::string& hash = photos[nextPhoto++];
                give("photo " + hash, from.photo(hash));
            } else if (nextAirframe < airframes.size()) {
                const std::string& hash = airframes[nextAirframe++];
                give("airframe " + hash, from.airframeText(hash));
            } else {
                return std::nullopt;
            }
        }
    }

private:
    void give(const std::string& name, Result<std::string> bytes) {
        if (bytes)
            waiting.emplace_back(Offered{name, std::move(*bytes)});
        else
            waiting.emplace_back(
                tl::unexpected(Error{bytes.error().code, bytes.error().what, name, bytes.error().remedy}));
    }
    void giveRecord(const std::string& sha256) {
        const std::string name = "record " + sha256;
        auto pdfs = from.recordPdfs(sha256);
        if (!pdfs)
            give(name, tl::unexpected(pdfs.error()));
        else
            for (std::string& pdf : *pdfs)
                give(name, std::move(pdf));
        auto copies = from.signedCopies(sha256);
        if (!copies) return give(name, tl::unexpected(copies.error()));
        for (std::string& copy : *copies) // the last given is the first taken
            give(name, std::move(copy));
    }

    const Archive& from;
    std::vector<std::string> records, photos, airframes;
    std::size_t nextRecord = 0, nextPhoto = 0, nextAirframe = 0;
    std::vector<Result<Offered>> waiting;
};

Result<void> mergeAircraft(Archive& into, const Archive& from, Merged& merged) {
    const auto theirs = from.aircraft();
    if (!theirs) return tl::unexpected(theirs.error());
    const auto ours = into.aircraft();
    if (!ours) return tl::unexpected(ours.error());
    for (const Aircraft& one : *theirs) {
        const auto known = std::find_if(ours->begin(), ours->end(), [&](const Aircraft& other) {
            return other.registration == one.registration;
        });
        if (known != ours->end() && known->serial == one.serial) continue; // walked by ours
        const auto text = from.airframeText(one.airframeSha256);
        auto added = text ? into.addAircraft(one, *text) : tl::unexpected(text.error());
        if (added) continue;
        if (added.error().code != ErrorCode::conflict) return added;
        merged.setAside.push_back(added.error());
    }
    return {};
}

/// The rest of a log that is the same as far as ours goes.
Result<void> mergeRound(Archive& into, const Archive& from, const RoundInfo& round, Merged& merged) {
    const auto theirs = from.events(round.id);
    if (!theirs) {
        merged.setAside.push_back(theirs.error());
        return {};
    }
    std::vector<round::Event> ours;
    auto known = into.events(round.id);
    if (known) ours = std::move(*known);
    if (!known && known.error().code == ErrorCode::unsupported) {
        merged.setAside.push_back(known.error());
        return {};
    }
    if (!known && known.error().code != ErrorCode::notFound) return tl::unexpected(known.error());
    for (std::size_t i = 0; i < std::min(ours.size(), theirs->size()); ++i)
        if (canonicalJson(toJson(ours[i])) != canonicalJson(toJson((*theirs)[i]))) {
            merged.setAside.push_back(
                {ErrorCode::conflict, say("Two logs of one round differ: it was walked on two devices."),
                 "round " + round.id + ", event " + std::to_string(i + 1),
                 say("Both archives keep theirs; conclude one of them and let the other be.")});
            return {};
        }
    if (ours.size() >= theirs->size()) return {};
    auto done = into.appendLog(round.id, std::span(*theirs).subspan(ours.size()));
    if (!done && done.error().code == ErrorCode::notFound) { // its aircraft was set aside, or a photo is lost
        merged.setAside.push_back(done.error());
        return {};
    }
    if (!done) return done;
    ++merged.rounds;
    return {};
}

} // namespace

Result<Merged> merge(Archive& into, const std::filesystem::path& path) {
    std::error_code none;
    if (!std::filesystem::exists(path, none))
        return fail(ErrorCode::storage, say("There is no such archive."), path.string(),
                    say("Look at its name."));
    if (std::filesystem::equivalent(path, into.inside().file, none))
        return fail(ErrorCode::invalid, say("This is the archive itself."), path.string(),
                    say("Give another."));
    const auto from = Archive::open(path);
    if (!from) return tl::unexpected(from.error());
    Giving giving(*from);
    if (auto begun = giving.begin(); !begun) return tl::unexpected(begun.error());
    Merged merged;
    std::set<std::string> counted;
    const auto told = [&](const std::string& name, const Result<Imported>& outcome) {
        if (!outcome) {
            Error error = outcome.error();
            error.where = name + (error.where.empty() ? "" : ": " + error.where);
            merged.setAside.push_back(std::move(error));
        } else if (outcome->kind == "photo") {
            merged.photos += outcome->isNew ? 1 : 0;
        } else if (outcome->kind != "airframe") {
            // Once each, though its PDFs and other copies of it come too.
            if (counted.insert(outcome->sha256).second) ++(outcome->isNew ? merged.records : merged.known);
            if (!outcome->isNew) merged.signatures += static_cast<std::size_t>(outcome->signatures);
        }
    };
    if (auto done = importAll(
            into, [&] { return giving.next(); }, told, true);
        !done)
        return tl::unexpected(done.error());
    if (auto done = mergeAircraft(into, *from, merged); !done) return tl::unexpected(done.error());
    const auto rounds = from->rounds();
    if (!rounds) return tl::unexpected(rounds.error());
    for (const RoundInfo& round : *rounds)
        if (auto done = mergeRound(into, *from, round, merged); !done) return tl::unexpected(done.error());
    return merged;
}

} // namespace ambit::archive
