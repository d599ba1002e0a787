// Archives: records in and out, searches, checks, copies.
#include "cli/commands.hpp"

#include "archive/aircraft_file.hpp"
#include "archive/export.hpp"
#include "archive/find.hpp"
#include "archive/merge.hpp"
#include "archive/offers.hpp"
#include "archive/verify.hpp"
#include "cli/talk.hpp"

#include <algorithm>
#include <iostream>
#include <nlohmann/json.hpp>

namespace ambit::cli {

namespace {

/// Local midnight at the start of the day, UTC.
Result<std::optional<Instant>> startOf(const std::string& day) {
    if (day.empty()) return std::optional<Instant>();
    const auto at = parseInstant(day + "T00:00:00.000Z");
    if (!at) return fail(ErrorCode::invalid, "This is not a date.", day, "Write it as 2026-06-20.");
    return std::optional(*at);
}

Result<std::optional<file::Discrepancy::State>> stateNamed(const std::string& name) {
    using State = file::Discrepancy::State;
    if (name.empty()) return std::optional<State>();
    for (const State state :
         {State::open, State::deferred, State::grounding, State::rectified, State::closed})
        if (name == file::toText(state)) return std::optional(state);
    return fail(ErrorCode::invalid, "There is no such state of a discrepancy.", name,
                "It is open, deferred, grounding, rectified or closed.");
}

Json toJson(const archive::Hit& hit) {
    Json json{{"record", hit.info.sha256}, {"aircraft", hit.info.registration},
              {"kind", hit.info.kind},     {"at", ambit::toText(hit.info.concludedAt)},
              {"signer", hit.info.signer}, {"says", hit.gloss}};
    if (!hit.info.conclusion.empty()) json["conclusion"] = hit.info.conclusion;
    if (hit.info.kind == "round") json["findings"] = hit.info.findings;
    return json;
}

Json toJson(const archive::Sighting& one) {
    Json json{{"record", one.record}, {"at", ambit::toText(one.at)}, {"by", one.by}, {"what", one.what}};
    if (!one.words.empty()) json["words"] = one.words;
    if (one.grounds) json["grounds"] = true;
    if (!one.value.empty()) {
        json["value"] = one.value;
        json["unit"] = one.unit;
        json["verdict"] = one.verdict;
        if (!one.from.empty()) json["from"] = one.from;
        if (!one.uncertainty.empty()) json["uncertainty"] = one.uncertainty;
        if (one.renewed) json["renewed"] = true;
    }
    return json;
}

/// "  4.8 ± 0.15 qt, read on the dipstick, within"; nothing if nothing was measured.
std::string valueOf(const archive::Sighting& one) {
    if (one.value.empty()) return {};
    std::string text = "  " + one.value;
    if (!one.uncertainty.empty()) text += " ± " + one.uncertainty;
    text += ' ' + one.unit;
    if (!one.from.empty()) text += ", " + round::fromText(one.from);
    return text + ", " + one.verdict + (one.renewed ? ", renewed before it" : "");
}

/// What became of one thing that was to be imported; its exit code.
int tell(const ArchiveOptions& options, const std::string& name, const Result<archive::Imported>& outcome) {
    if (!outcome) { // set aside with the reason; the rest goes in
        const Error error = inFile(outcome.error(), name);
        if (!options.json) return complain(error);
        Json out = cli::toJson(error);
        out["file"] = name;
        out["ok"] = false;
        std::cout << out.dump() << std::endl;
        return exitCodeOf(error);
    }
    const archive::Imported& one = *outcome;
    const bool isRecord = one.kind != "photo" && one.kind != "airframe";
    if (options.json) {
        Json out{{"file", name},
                 {"ok", true},
                 {isRecord ? "record" : "sha256", one.sha256},
                 {"kind", one.kind},
                 {"new", one.isNew}};
        if (isRecord) out["aircraft"] = one.registration;
        if (isRecord) out["newSignatures"] = one.signatures;
        std::cout << out.dump() << std::endl;
        return Exit::done;
    }
    std::cout << name << ": " << one.kind << (isRecord ? " of " + one.registration : "")
              << (one.isNew            ? " taken in"
                  : one.signatures > 0 ? " here already; a signature is new"
                                       : ", here already")
              << std::endl;
    return Exit::done;
}

void printHoles(const archive::Verification& checked) {
    for (const auto& one : checked.broken)
        std::cout << (one.error.code == ErrorCode::unsupported ? "newer    " : "broken   ") << one.sha256
                  << "  " << one.error.what << '\n';
    for (const auto& hole : checked.holes)
        std::cout << "missing  " << hole.sha256 << "  "
                  << (hole.namedBy.empty() ? "the archive remembers it as a latest record"
                                           : "named by " + hole.namedBy.front())
                  << '\n';
    for (const std::string& photo : checked.missingPhotos)
        std::cout << "missing  photo " << photo << '\n';
}

Json toJson(const archive::Verification& checked) {
    Json out{{"records", checked.records},
             {"photos", checked.photos},
             {"pdfs", checked.pdfs},
             {"rounds", checked.rounds},
             {"broken", Json::array()},
             {"holes", Json::array()},
             {"missingPhotos", checked.missingPhotos}};
    for (const auto& one : checked.broken) {
        Json error = cli::toJson(one.error);
        error["record"] = one.sha256;
        out["broken"].push_back(std::move(error));
    }
    for (const auto& hole : checked.holes)
        out["holes"].push_back({{"record", hole.sha256}, {"namedBy", hole.namedBy}});
    return out;
}

} // namespace

int archiveImport(const ArchiveOptions& options) {
    auto archive = archive::Archive::open(options.archive);
    if (!archive) return complain(archive.error());
    int code = Exit::done;
    archive::Offers offers({options.files.begin(), options.files.end()});
    const auto done = archive::importAll(
        *archive, [&] { return offers.next(); },
        [&](const std::string& name, const Result<archive::Imported>& outcome) {
            code = std::max(code, tell(options, name, outcome));
        });
    if (!done) return complain(done.error());
    if (auto added = archive::addAircraftOfRecords(*archive); !added) return complain(added.error());
    if (auto settled = archive::settle(*archive); !settled) return complain(settled.error());
    return code;
}

int archiveVerify(const ArchiveOptions& options) {
    const auto archive = openExisting(options.archive);
    if (!archive) return complain(archive.error());
    if (!options.aircraft.empty())
        if (auto known = mustKnow(*archive, options.aircraft); !known) return complain(known.error());
    const auto checked = archive::verify(*archive, {options.aircraft, options.contents, {}});
    if (!checked) return complain(checked.error());
    const bool good = checked->broken.empty() && checked->holes.empty() && checked->missingPhotos.empty();
    if (options.json) {
        Json out = toJson(*checked);
        out["ok"] = good;
        std::cout << out.dump() << '\n';
    } else {
        std::cout << checked->records << " records looked at, " << checked->photos << " photos, "
                  << checked->pdfs << " PDFs, " << checked->rounds << " rounds' logs\n";
        printHoles(*checked);
        if (good) std::cout << "everything holds, nothing is missing\n";
    }
    return good ? Exit::done : Exit::refused;
}

int archiveFind(const ArchiveOptions& options) {
    const auto archive = openExisting(options.archive);
    if (!archive) return complain(archive.error());
    const auto from = startOf(options.from);
    if (!from) return complain(from.error());
    const auto before = startOf(options.before);
    if (!before) return complain(before.error());
    const auto state = stateNamed(options.state);
    if (!state) return complain(state.error());
    if (!options.kind.empty() && options.kind != "round" && record::entryVersion(options.kind) == 0)
        return complain({ErrorCode::invalid, "There is no such kind of record.", options.kind,
                         "It is round, assessment, rectification, reading, part change, hand-over, trust, "
                         "revocation, renewal or removal."});
    const auto hits =
        archive::find(*archive, {options.aircraft, options.words, options.part, options.jasc, options.person,
                                 options.kind, *from, *before, *state, options.most, options.after});
    if (!hits) return complain(hits.error());
    for (const archive::Hit& hit : *hits) {
        if (options.json)
            std::cout << toJson(hit).dump() << '\n';
        else
            std::cout << dayOf(hit.info.concludedAt) << "  " << hit.info.registration << "  " << hit.info.kind
                      << (hit.info.conclusion.empty() ? "" : ", " + hit.info.conclusion) << "  "
                      << hit.info.signer << "\n            " << hit.gloss << "\n            "
                      << hit.info.sha256 << '\n';
    }
    if (!options.json && hits->empty()) std::cout << "nothing found\n";
    if (!options.json && hits->size() == options.most)
        std::cout << "there may be more: --after " << hits->back().info.sha256 << '\n';
    return Exit::done;
}

int archiveHistory(const ArchiveOptions& options) {
    const auto archive = openExisting(options.archive);
    if (!archive) return complain(archive.error());
    if (auto known = mustKnow(*archive, options.aircraft); !known) return complain(known.error());
    const auto sightings =
        archive::history(*archive, options.aircraft, options.point, options.most, options.after);
    if (!sightings) return complain(sightings.error());
    for (const archive::Sighting& one : *sightings) {
        if (options.json)
            std::cout << toJson(one).dump() << '\n';
        else
            std::cout << dayOf(one.at) << "  " << one.what << (one.grounds ? " (grounds)" : "")
                      << valueOf(one) << (one.words.empty() ? "" : "  " + one.words) << "  (" << one.by
                      << ")\n";
    }
    if (!options.json && sightings->empty()) std::cout << "no record says anything of this point\n";
    if (!options.json && sightings->size() == options.most)
        std::cout << "there may be more: --after " << sightings->back().record << '\n';
    return Exit::done;
}

int archiveMerge(const ArchiveOptions& options) {
    // A name mistyped is better known before half of them are in, and a new archive is made.
    for (const std::string& from : options.files)
        if (const auto opened = openExisting(from); !opened) return complain(opened.error());
    auto archive = archive::Archive::open(options.archive);
    if (!archive) return complain(archive.error());
    int code = Exit::done;
    for (const std::string& from : options.files) {
        const auto merged = archive::merge(*archive, from);
        if (!merged) {
            code = std::max(code, complain(merged.error()));
            break;
        }
        if (options.json) {
            Json out{{"archive", from},
                     {"newRecords", merged->records},
                     {"knownRecords", merged->known},
                     {"newSignatures", merged->signatures},
                     {"newPhotos", merged->photos},
                     {"rounds", merged->rounds},
                     {"setAside", Json::array()}};
            for (const Error& error : merged->setAside)
                out["setAside"].push_back(cli::toJson(error));
            std::cout << out.dump() << std::endl;
        } else {
            std::cout << from << ": " << merged->records << " new records, " << merged->known << " known, "
                      << merged->signatures << " new signatures, " << merged->photos << " new photos, "
                      << merged->rounds << " rounds" << std::endl;
        }
        for (const Error& error : merged->setAside)
            code = std::max(code, options.json ? exitCodeOf(error) : complain(error));
    }
    if (auto settled = archive::settle(*archive); !settled) return complain(settled.error());
    return code;
}

int archiveBackup(const ArchiveOptions& options) {
    const auto archive = openExisting(options.archive);
    if (!archive) return complain(archive.error());
    if (auto done = archive::backUp(*archive, options.to); !done) return complain(done.error());
    if (options.json)
        std::cout << Json{{"backup", options.to}}.dump() << '\n';
    else
        std::cout << "copied and looked through: " << options.to << '\n';
    return Exit::done;
}

int archiveExport(const ArchiveOptions& options) {
    const auto archive = openExisting(options.archive);
    if (!archive) return complain(archive.error());
    const auto exported = archive::exportFile(*archive, options.aircraft, options.to, now().at);
    if (!exported) return complain(exported.error());
    if (options.json) {
        std::cout << Json{{"export", options.to},
                          {"records", exported->records},
                          {"pdfs", exported->pdfs},
                          {"photos", exported->photos},
                          {"missingPhotos", exported->missingPhotos}}
                         .dump()
                  << '\n';
    } else {
        std::cout << options.to << ": " << exported->records << " records, " << exported->pdfs << " PDFs, "
                  << exported->photos << " photos\n";
        for (const std::string& photo : exported->missingPhotos)
            std::cout << "missing  photo " << photo << '\n';
    }
    return Exit::done;
}

} // namespace ambit::cli
