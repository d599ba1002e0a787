// New records of an aircraft's file, each signed by whoever says it.
#include "cli/commands.hpp"

#include "archive/aircraft_file.hpp"
#include "archive/export.hpp"
#include "archive/import.hpp"
#include "archive/remove.hpp"
#include "archive/sealing.hpp"
#include "base/files.hpp"
#include "cli/drawing.hpp"
#include "cli/talk.hpp"
#include "file/deferral.hpp"
#include "file/retention.hpp"
#include "record/record.hpp"

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <iostream>
#include <nlohmann/json.hpp>

namespace ambit::cli {

namespace {

using file::AircraftFile;
using file::Discrepancy;

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

/// Asked before anything is signed: afterwards it would be signed all the same.
Result<void> mayWriteOut(const std::string& out) {
    if (out.empty()) return {};
    std::error_code none;
    if (std::filesystem::exists(out, none))
        return fail(ErrorCode::storage, "There is a file already; a record is never overwritten.", out,
                    "Choose another name with --out.");
    const std::filesystem::path folder = std::filesystem::path(out).parent_path();
    if (!folder.empty() && !std::filesystem::is_directory(folder, none))
        return fail(ErrorCode::storage, "There is no such folder.", folder.string(),
                    "Make it, or choose another place with --out.");
    return {};
}

/// The archive and the file a new record goes to; the aircraft's serial number from there.
struct Place {
    archive::Archive archive;
    AircraftFile file;
    std::string serial;
};
Result<Place> placeOf(const EntryOptions& options) {
    if (auto may = mayWriteOut(options.out); !may) return tl::unexpected(may.error());
    auto archive = openExisting(options.archive);
    if (!archive) return tl::unexpected(archive.error());
    std::string serial;
    const auto machines = archive->aircraft();
    if (!machines) return tl::unexpected(machines.error());
    for (const auto& machine : *machines)
        if (machine.registration == options.aircraft) serial = machine.serial;
    auto told = archive->told(options.aircraft);
    if (!told) return tl::unexpected(told.error());
    if (serial.empty() && !told->empty()) serial = told->back().serial;
    if (!serial.empty() && !options.serial.empty() && options.serial != serial)
        return fail(ErrorCode::conflict, "The archive knows the aircraft with another serial number.",
                    options.aircraft + ": " + serial,
                    "Look at the data plate; leave --serial out if it is this one.");
    if (serial.empty()) serial = options.serial;
    if (serial.empty())
        return fail(ErrorCode::invalid, "The archive doesn't say which serial number this aircraft has.",
                    options.aircraft, "Give --serial.");
    return Place{std::move(*archive), file::fold(*told), std::move(serial)};
}

int printKept(const EntryOptions& options, const std::string& sha256, const std::string& kind) {
    if (options.json)
        std::cout << Json{{"record", sha256}, {"kind", kind}, {"aircraft", options.aircraft}}.dump() << '\n';
    else
        std::cout << kind << " of " << options.aircraft << " signed and kept: " << sha256 << '\n';
    return Exit::done;
}

/// The record where --out says, as well: its PDF if the name ends so.
Result<void> writeOut(const EntryOptions& options, const archive::Archive& archive,
                      const std::string& sha256) {
    if (options.out.empty()) return {};
    const bool pdf = std::filesystem::path(options.out).extension() == ".pdf";
    const auto bytes = pdf ? archive.recordPdf(sha256) : archive.recordJson(sha256);
    if (!bytes) return tl::unexpected(bytes.error());
    return writeFile(options.out, *bytes);
}

/// A field of the record that was to be made, as the command line calls it.
Error byOption(Error error) {
    static constexpr std::pair<std::string_view, const char*> names[] = {
        {"/deferral/determinedBy/name", "--determined-by"},
        {"/deferral/determinedBy/role", "--determined-role"},
        {"/deferral/determinedBy/certificate", "--determined-certificate"},
        {"/deferral/untilCounters", "--until-counter"},
        {"/deferral/until", "--until"},
        {"/deferral/basis", "--basis"},
        {"/deferral/reference", "--reference"},
        {"/deferral/answers", "--answers"},
        {"/deferral/placard", "--placard"},
        {"/deferral/limits", "--limits"},
        {"/aircraft/registration", "--aircraft"},
        {"/aircraft/serial", "--serial"},
        {"/signer/certificate", "--certificate"},
        {"/signer/role", "--role"},
        {"/certificateKind", "--certificate-kind"},
        {"/completedOn", "--completed"},
        {"/description", "--description"},
        {"/performedBy", "--performed-by"},
        {"/inspections", "--inspection"},
        {"/position", "--position"},
        {"/off/counters", "--off-counter"},
        {"/on/counters", "--on-counter"},
        {"/off", "--off"},
        {"/on", "--on"},
        {"/counters", "--counter"},
        {"/roles", "--for"},
        {"/name", "--name"},
        {"/key", "--fingerprint"},
        {"/why", "--why"},
        {"/words", "--words"},
        {"/to", "--to"}};
    for (const auto& [pointer, option] : names) {
        if (!error.where.starts_with(pointer)) continue;
        error.where = option;
        break;
    }
    return error;
}

/// Signs the entry, keeps it in the archive, and prints or writes it.
int say(const EntryOptions& options, Place& place, const record::Entry& entry) {
    const auto signer = signerOf(options.key, options.passphraseFile);
    if (!signer) return complain(signer.error());
    const record::Heading heading{options.aircraft,
                                  place.serial,
                                  now(),
                                  place.file.heads,
                                  {signer->certificate().name, options.role, options.certificate}};
    const Drawing drawing;
    const auto kept = archive::sealEntry(place.archive, heading, entry, *signer, drawing.pages());
    if (!kept) return complain(byOption(kept.error()));
    // What is signed is said first, whatever becomes of the file: nobody is to sign it again.
    const int code = printKept(options, *kept, record::kindOf(entry));
    if (auto written = writeOut(options, place.archive, *kept); !written) return complain(written.error());
    return code;
}

/// name, number, serial, as the command line takes them.
Result<std::optional<record::Part>> partOf(const std::vector<std::string>& given,
                                           const std::vector<std::string>& had, const AircraftFile& its) {
    if (given.empty()) return std::optional<record::Part>();
    const auto told = counters(had, its);
    if (!told) return tl::unexpected(told.error());
    return std::optional(record::Part{given[0], given[1], given[2], *told});
}

/// The start of that day, UTC; now if none is given.
Result<Instant> since(const std::string& day) {
    if (day.empty()) return now().at;
    const auto at = parseInstant(day + "T00:00:00.000Z");
    if (!at) return fail(ErrorCode::invalid, "This is not a date.", day, "Write it as 2026-06-20.");
    return *at;
}

/// As people copy it: without its spaces, in small letters.
std::string fingerprint(const std::string& given) {
    std::string hex;
    for (const char c : given)
        if (c != ' ' && c != ':') hex += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return hex;
}

} // namespace

int reading(const EntryOptions& options) {
    auto place = placeOf(options);
    if (!place) return complain(place.error());
    const auto told = counters(options.counters, place->file);
    if (!told) return complain(told.error());
    return say(options, *place, record::Reading{*told});
}

int rectify(const EntryOptions& options) {
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
    return say(options, *place, work);
}

int defer(const EntryOptions& options) {
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
    return say(options, *place, assessment);
}

int part(const EntryOptions& options) {
    auto place = placeOf(options);
    if (!place) return complain(place.error());
    record::PartChange change;
    change.position = options.position;
    auto off = partOf(options.off, options.offCounters, place->file);
    if (!off) return complain(off.error());
    change.off = std::move(*off);
    auto on = partOf(options.on, options.onCounters, place->file);
    if (!on) return complain(on.error());
    change.on = std::move(*on);
    const auto told = counters(options.counters, place->file);
    if (!told) return complain(told.error());
    change.counters = *told;
    change.description = options.words;
    change.completedOn = options.completedOn;
    change.certificateKind = options.certificateKind;
    return say(options, *place, change);
}

int handOver(const EntryOptions& options) {
    auto place = placeOf(options);
    if (!place) return complain(place.error());
    std::error_code none;
    if (!options.exportTo.empty() && std::filesystem::exists(options.exportTo, none)) // before it is signed
        return complain({ErrorCode::storage, "There is a file already; an export never overwrites one.",
                         options.exportTo, "Choose another name."});
    if (const int code = say(options, *place, record::HandOver{options.to, options.words});
        code != Exit::done)
        return code;
    if (options.exportTo.empty()) return Exit::done;
    const auto exported = archive::exportFile(place->archive, options.aircraft, options.exportTo, now().at);
    if (!exported) return complain(exported.error());
    if (!options.json) std::cout << options.exportTo << ": " << exported->records << " records\n";
    return Exit::done;
}

int renewed(const EntryOptions& options) {
    auto place = placeOf(options);
    if (!place) return complain(place.error());
    const auto told = place->archive.told(options.aircraft);
    if (!told) return complain(told.error());
    const file::Told* of = nullptr;
    for (const file::Told& one : *told) {
        if (!one.sha256.starts_with(options.records.front())) continue;
        const file::Seen* seen = one.round() == nullptr ? nullptr : one.round()->seenAt(options.point);
        if (seen == nullptr || seen->value.empty()) continue;
        if (of != nullptr)
            return complain({ErrorCode::notFound, "More than one record with a value there begins like that.",
                             options.records.front(), "Give more of its digits."});
        of = &one;
    }
    if (of == nullptr)
        return complain({ErrorCode::notFound, "No such record has a value of this point.",
                         options.records.front() + ":" + options.point,
                         "“ambit archive history --json” lists the point's values with their records."});
    return say(options, *place, record::Renewal{{of->sha256, options.point}, !options.isNot, options.words});
}

int trust(const EntryOptions& options) {
    auto place = placeOf(options);
    if (!place) return complain(place.error());
    const auto from = since(options.from);
    if (!from) return complain(from.error());
    return say(options, *place,
               record::Trust{options.to, fingerprint(options.fingerprint), options.roles, *from});
}

int revoke(const EntryOptions& options) {
    auto place = placeOf(options);
    if (!place) return complain(place.error());
    const auto from = since(options.from);
    if (!from) return complain(from.error());
    return say(options, *place, record::Revocation{fingerprint(options.fingerprint), *from, options.words});
}

int remove(const EntryOptions& options) {
    auto place = placeOf(options);
    if (!place) return complain(place.error());
    const auto told = place->archive.told(options.aircraft);
    if (!told) return complain(told.error());
    const auto today = Date::of(now());
    if (!today) return complain(today.error());
    for (const auto& one : file::retention(*told, place->file, *today)) {
        const bool named =
            std::find(options.records.begin(), options.records.end(), one.record) != options.records.end();
        if (named && !one.mayGo && !options.anyway)
            return complain({ErrorCode::refused, one.why, one.record,
                             "Where other rules allow it all the same, say --although-it-stays."});
    }
    const auto signer = signerOf(options.key, options.passphraseFile);
    if (!signer) return complain(signer.error());
    const Drawing drawing;
    const auto stub =
        archive::removeRecords(place->archive,
                               {options.aircraft,
                                options.records,
                                options.words,
                                now(),
                                {signer->certificate().name, options.role, options.certificate}},
                               *signer, drawing.pages());
    if (!stub) return complain(stub.error());
    return printKept(options, *stub, "removal");
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
