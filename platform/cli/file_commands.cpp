// The aircraft's file: records in, what they say together, and new ones.
#include "cli/commands.hpp"

#include "airframe/read.hpp"
#include "archive/aircraft_file.hpp"
#include "archive/import.hpp"
#include "archive/verify.hpp"
#include "base/files.hpp"
#include "cli/talk.hpp"
#include "file/comes_due.hpp"
#include "file/deferral.hpp"
#include "record/record.hpp"

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <iostream>

namespace ambit::cli {

namespace {

using file::AircraftFile;
using file::Discrepancy;

LocalInstant now() {
    using namespace std::chrono;
    return {{duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count()}, 0};
}

Result<archive::Archive> openExisting(const std::string& path) {
    if (!std::filesystem::exists(path))
        return fail(ErrorCode::storage, "There is no such archive.", path, "Look at its name.");
    return archive::Archive::open(path);
}

Json toJson(const std::vector<round::CounterReading>& counters) {
    Json json = Json::array();
    for (const auto& one : counters)
        json.push_back({{"id", one.id}, {"value", one.value}});
    return json;
}

Json toJson(const file::Word& word) {
    return {{"record", word.record}, {"at", toText(word.at)}, {"by", word.by}, {"words", word.words}};
}

Json toJson(const Discrepancy& one) {
    Json json{{"record", one.id.record}, {"point", one.id.point},      {"name", one.name},
              {"zone", one.zone},        {"state", toText(one.state)}, {"found", toJson(one.found)},
              {"again", Json::array()}};
    for (const file::Word& word : one.again)
        json["again"].push_back(toJson(word));
    if (one.assessed) json["assessed"] = toJson(*one.assessed);
    if (one.deferral)
        json["deferral"] = {{"basis", one.deferral->basis},
                            {"placard", one.deferral->placard},
                            {"limits", one.deferral->limits},
                            {"until", one.deferral->until},
                            {"untilCounters", toJson(one.deferral->untilCounters)}};
    if (one.rectified) json["rectified"] = toJson(*one.rectified);
    if (one.closed) json["closed"] = toJson(*one.closed);
    return json;
}

Json toJson(const AircraftFile& its, const std::vector<std::string>& against,
            const std::vector<file::Item>& due) {
    Json json{{"against", against},
              {"discrepancies", Json::array()},
              {"counters", Json::object()},
              {"parts", Json::array()},
              {"inspections", Json::object()},
              {"heads", its.heads},
              {"holes", Json::array()},
              {"conflicts", Json::array()},
              {"records", Json::array()},
              {"removed", its.removed},
              {"due", Json::array()}};
    for (const Discrepancy& one : its.discrepancies)
        json["discrepancies"].push_back(toJson(one));
    for (const auto& [id, count] : its.counters)
        json["counters"][id] = {{"value", count.value}, {"at", toText(count.at)}, {"record", count.record}};
    for (const auto& [position, fitted] : its.parts)
        json["parts"].push_back({{"position", position},
                                 {"name", fitted.part.name},
                                 {"number", fitted.part.number},
                                 {"serial", fitted.part.serial},
                                 {"on", fitted.on},
                                 {"record", fitted.record}});
    for (const auto& [id, past] : its.inspections)
        for (const file::Done& done : past)
            json["inspections"][id].push_back(
                {{"on", done.on}, {"counters", toJson(done.counters)}, {"record", done.record}});
    for (const file::Item& item : due)
        json["due"].push_back({{"id", item.id},
                               {"name", item.name},
                               {"life", item.isLife},
                               {"verdict", toText(item.due.verdict)},
                               {"words", item.words},
                               {"source", item.source}});
    for (const file::Hole& hole : its.holes)
        json["holes"].push_back({{"record", hole.sha256}, {"namedBy", hole.namedBy}});
    for (const file::Conflict& conflict : its.conflicts)
        json["conflicts"].push_back({{"what", conflict.what}, {"records", conflict.records}});
    for (const file::Page& page : its.pages)
        json["records"].push_back({{"record", page.sha256},
                                   {"kind", page.kind},
                                   {"at", toText(page.at)},
                                   {"signer", page.signer.name},
                                   {"role", page.signer.role},
                                   {"key", toText(page.standing)}});
    return json;
}

std::string dayOf(Instant at) {
    return toText(at).substr(0, 10);
}

void print(const std::string& registration, const AircraftFile& its, const std::vector<std::string>& against,
           const std::vector<file::Item>& due) {
    std::cout << registration << ": " << its.pages.size() << " records\n\nStands against fit\n";
    if (against.empty()) std::cout << "  nothing in the file; the pilot in command looks and decides\n";
    for (const std::string& reason : against)
        std::cout << "  " << reason << '\n';
    std::cout << "\nDiscrepancies\n";
    for (const Discrepancy& one : its.discrepancies) {
        if (one.state == Discrepancy::State::closed) continue;
        std::cout << "  " << toText(one.state) << "  " << one.name << ": " << one.found.words
                  << "\n      found " << dayOf(one.found.at) << " by " << one.found.by;
        if (!one.again.empty()) std::cout << ", seen again " << one.again.size() << " times";
        std::cout << "; " << one.id.record.substr(0, 12) << ':' << one.id.point << '\n';
        if (one.deferral && one.isOpen())
            std::cout << "      deferred: " << one.deferral->basis << ", placard " << one.deferral->placard
                      << (one.deferral->until.empty() ? "" : ", until " + one.deferral->until) << '\n';
    }
    std::cout << "\nDue\n";
    for (const file::Item& item : due)
        std::cout << "  " << toText(item.due.verdict) << "  " << item.name << ": " << item.words << '\n';
    if (due.empty()) std::cout << "  the airframe here names no inspections or lives\n";
    std::cout << "\nCounters\n";
    for (const auto& [id, count] : its.counters)
        std::cout << "  " << id << "  " << count.value << "  (" << dayOf(count.at) << ")\n";
    for (const file::Conflict& conflict : its.conflicts)
        std::cout << "\nRecords say against each other: " << conflict.what << '\n';
    for (const file::Hole& hole : its.holes)
        std::cout << "\nMissing: record " << hole.sha256 << ", named by " << hole.namedBy.front() << '\n';
}

/// The airframe that the archive has for the aircraft, if it has one: not where only records came in.
Result<std::optional<airframe::Airframe>> airframeOf(const archive::Archive& archive,
                                                     const std::string& registration) {
    const auto machines = archive.aircraft();
    if (!machines) return tl::unexpected(machines.error());
    for (const auto& machine : *machines) {
        if (machine.registration != registration) continue;
        const auto text = archive.airframeText(machine.airframeSha256);
        if (!text) return tl::unexpected(text.error());
        auto airframe = airframe::read(*text);
        if (!airframe) return tl::unexpected(airframe.error().front());
        return std::optional(std::move(*airframe));
    }
    return std::optional<airframe::Airframe>();
}

/// id=value, of counters the aircraft's file knows, if it knows any.
Result<std::vector<round::CounterReading>> counters(const std::vector<std::string>& given,
                                                    const AircraftFile& its) {
    std::vector<round::CounterReading> list;
    for (const std::string& one : given) {
        const std::size_t equals = one.find('=');
        if (equals == std::string::npos || equals == 0)
            return fail(ErrorCode::invalid, "A counter is given as id=value.", one,
                        "For example hours=1284.6.");
        const std::string id = one.substr(0, equals);
        if (!its.counters.empty() && !its.counters.contains(id)) {
            std::string known;
            for (const auto& [other, count] : its.counters)
                known += (known.empty() ? "" : ", ") + other;
            return fail(ErrorCode::notFound, "The aircraft has no such counter.", id,
                        "It has " + known + '.');
        }
        list.push_back({id, one.substr(equals + 1)});
    }
    return list;
}

/// RECORD:POINT, where the first digits of the record's identity will do.
Result<record::DiscrepancyId> discrepancy(const AircraftFile& its, const std::string& given) {
    const std::size_t colon = given.find(':');
    const std::string hash = given.substr(0, colon);
    std::vector<record::DiscrepancyId> fitting;
    for (const Discrepancy& one : its.discrepancies)
        if (colon != std::string::npos && one.id.point == given.substr(colon + 1) &&
            one.id.record.starts_with(hash))
            fitting.push_back(one.id);
    if (fitting.size() == 1) return fitting.front();
    return fail(ErrorCode::notFound,
                fitting.empty() ? "The aircraft's file has no such discrepancy."
                                : "More than one discrepancy begins like that.",
                given, "“ambit archive state” lists them as RECORD:POINT.");
}

/// Signs the entry, keeps it in the archive, and prints or writes it.
int say(const EntryOptions& options, archive::Archive& archive, const AircraftFile& its,
        const record::Entry& entry) {
    auto keyText = readFile(options.key, 65536);
    if (!keyText) return complain(keyText.error());
    auto word = passphrase(options.passphraseFile, false);
    if (!word) return complain(word.error());
    const auto signer = record::unlock(*keyText, *word);
    if (!signer) return complain(signer.error());
    const auto content =
        record::entryContent({options.aircraft,
                              options.serial,
                              now(),
                              its.heads,
                              {signer->certificate().name, options.role, options.certificate}},
                             entry);
    if (!content) return complain(content.error());
    const auto bytes = record::signRecord(*content, *signer);
    if (!bytes) return complain(bytes.error());
    if (!options.out.empty())
        if (auto written = writeFile(options.out, *bytes); !written) return complain(written.error());
    const auto kept = archive::importRecord(archive, *bytes);
    if (!kept) return complain(kept.error());
    if (options.json)
        std::cout
            << Json{{"record", kept->sha256}, {"kind", kept->kind}, {"aircraft", kept->registration}}.dump()
            << '\n';
    else
        std::cout << kept->kind << " of " << kept->registration << " signed and kept: " << kept->sha256
                  << '\n';
    return Exit::done;
}

/// The archive and the file a new record goes to; the aircraft's serial number from there.
struct Place {
    archive::Archive archive;
    AircraftFile file;
};
Result<Place> placeOf(EntryOptions& options) {
    auto archive = openExisting(options.archive);
    if (!archive) return tl::unexpected(archive.error());
    const auto machines = archive->aircraft();
    if (!machines) return tl::unexpected(machines.error());
    for (const auto& machine : *machines)
        if (machine.registration == options.aircraft && options.serial.empty())
            options.serial = machine.serial;
    auto its = archive::fileOf(*archive, options.aircraft);
    if (!its && its.error().code == ErrorCode::notFound && !options.serial.empty()) its = AircraftFile{};
    if (!its) return tl::unexpected(its.error());
    if (options.serial.empty())
        return fail(ErrorCode::invalid, "The archive doesn't say which serial number this aircraft has.",
                    options.aircraft, "Give --serial.");
    return Place{std::move(*archive), std::move(*its)};
}

} // namespace

int archiveImport(const ArchiveOptions& options) {
    auto archive = archive::Archive::open(options.archive);
    if (!archive) return complain(archive.error());
    int code = Exit::done;
    for (const std::string& file : options.files) {
        const auto bytes = readFile(file);
        const auto imported = bytes ? archive::importRecord(*archive, *bytes) : tl::unexpected(bytes.error());
        if (!imported) { // set aside with the reason; the rest goes in
            Error error = imported.error();
            error.where = file + (error.where.empty() || error.where == file ? "" : ": " + error.where);
            if (options.json) {
                Json out = toJson(error);
                out["file"] = file;
                out["ok"] = false;
                std::cout << out.dump() << '\n';
                code = std::max(code, exitCodeOf(error));
            } else {
                code = std::max(code, complain(error));
            }
            continue;
        }
        if (options.json)
            std::cout << Json{{"file", file},
                              {"ok", true},
                              {"record", imported->sha256},
                              {"kind", imported->kind},
                              {"aircraft", imported->registration},
                              {"new", imported->isNew}}
                             .dump()
                      << '\n';
        else
            std::cout << file << ": " << imported->kind << " of " << imported->registration
                      << (imported->isNew ? " taken in\n" : ", here already\n");
    }
    return code;
}

int archiveState(const ArchiveOptions& options) {
    const auto archive = openExisting(options.archive);
    if (!archive) return complain(archive.error());
    const auto its = archive::fileOf(*archive, options.aircraft);
    if (!its) return complain(its.error());
    const std::string today = options.today.empty() ? dayOf(now().at) : options.today;
    const auto date = Date::parse(today);
    if (!date) return complain(date.error());
    const auto described = airframeOf(*archive, options.aircraft);
    if (!described) return complain(described.error());
    const auto due = *described ? file::comesDue(*its, **described, *date) : std::vector<file::Item>();
    auto against = file::standsAgainst(*its, today);
    for (std::string& reason : file::standsAgainst(due))
        against.push_back(std::move(reason));
    if (options.json)
        std::cout << toJson(*its, against, due).dump() << '\n';
    else
        print(options.aircraft, *its, against, due);
    return Exit::done;
}

int archiveVerify(const ArchiveOptions& options) {
    const auto archive = openExisting(options.archive);
    if (!archive) return complain(archive.error());
    const auto checked = archive::verify(*archive, {options.aircraft, false, {}});
    if (!checked) return complain(checked.error());
    const bool good = checked->broken.empty() && checked->holes.empty();
    if (options.json) {
        Json out{
            {"ok", good}, {"records", checked->records}, {"broken", Json::array()}, {"holes", Json::array()}};
        for (const auto& one : checked->broken) {
            Json error = toJson(one.error);
            error["record"] = one.sha256;
            out["broken"].push_back(std::move(error));
        }
        for (const auto& hole : checked->holes)
            out["holes"].push_back({{"record", hole.sha256}, {"namedBy", hole.namedBy}});
        std::cout << out.dump() << '\n';
    } else {
        std::cout << checked->records << " records looked at\n";
        for (const auto& one : checked->broken)
            std::cout << "broken   " << one.sha256 << "  " << one.error.what << '\n';
        for (const auto& hole : checked->holes)
            std::cout << "missing  " << hole.sha256 << "  named by " << hole.namedBy.front() << '\n';
        if (good) std::cout << "everything holds, nothing is missing\n";
    }
    return good ? Exit::done : Exit::refused;
}

int reading(EntryOptions options) {
    auto place = placeOf(options);
    if (!place) return complain(place.error());
    const auto told = counters(options.counters, place->file);
    if (!told) return complain(told.error());
    return say(options, place->archive, place->file, record::Reading{*told});
}

int rectify(EntryOptions options) {
    auto place = placeOf(options);
    if (!place) return complain(place.error());
    record::Rectification work;
    for (const std::string& given : options.discrepancies) {
        const auto id = discrepancy(place->file, given);
        if (!id) return complain(id.error());
        work.of.push_back(*id);
    }
    const auto told = counters(options.counters, place->file);
    if (!told) return complain(told.error());
    work.counters = *told;
    work.inspections = options.inspections;
    work.description = options.words;
    work.completedOn = options.completedOn;
    work.performedBy = options.performedBy;
    work.certificateKind = options.certificateKind;
    return say(options, place->archive, place->file, work);
}

int defer(EntryOptions options) {
    auto place = placeOf(options);
    if (!place) return complain(place.error());
    const auto id =
        discrepancy(place->file, options.discrepancies.empty() ? "" : options.discrepancies.front());
    if (!id) return complain(id.error());
    record::Assessment assessment{*id, options.words, {}};
    if (!options.grounding) {
        record::Deferral& deferral = assessment.deferral.emplace();
        deferral.basis = options.basis;
        deferral.reference = options.reference;
        deferral.removed = options.removed;
        deferral.placard = options.placard;
        deferral.limits = options.limits;
        deferral.until = options.until;
        const auto until = counters(options.untilCounters, place->file);
        if (!until) return complain(until.error());
        deferral.untilCounters = *until;
        deferral.determinedBy = {options.determinedBy, options.determinedRole, options.determinedCertificate};
        if (options.basis == record::deferralBases().front()) {
            std::vector<bool> yes;
            for (const std::string& answer : options.answers) {
                if (answer != "yes" && answer != "no")
                    return complain({ErrorCode::invalid, "An answer is “yes” or “no”.", answer, ""});
                yes.push_back(answer == "yes");
            }
            const auto answers = file::answered(yes);
            if (!answers) return complain(answers.error());
            deferral.answers = *answers;
        }
    }
    return say(options, place->archive, place->file, assessment);
}

int deferQuestions(bool json) {
    Json list = Json::array();
    for (const auto& question : file::questions()) {
        if (json)
            list.push_back(
                {{"id", question.id}, {"question", question.text}, {"mayDefer", question.mayDefer}});
        else
            std::cout << question.text << "  (" << (question.mayDefer ? "yes" : "no")
                      << ", or it can't wait)\n";
    }
    if (json) std::cout << list.dump() << '\n';
    return Exit::done;
}

} // namespace ambit::cli
