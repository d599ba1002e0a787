// The command that says what an aircraft's records together say.
#include "cli/commands.hpp"

#include "airframe/read.hpp"
#include "archive/aircraft_file.hpp"
#include "cli/talk.hpp"
#include "file/comes_due.hpp"
#include "file/retention.hpp"

#include <iostream>
#include <nlohmann/json.hpp>

namespace ambit::cli {

namespace {

using file::AircraftFile;
using file::Discrepancy;

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

Json toJson(const file::KnownKey& one) {
    Json json{{"fingerprint", one.key},  {"name", one.name},         {"owner", one.owner},
              {"roles", Json::object()}, {"signedAs", one.signedAs}, {"records", one.records}};
    for (const auto& [role, from] : one.roles)
        json["roles"][role] = toText(from);
    if (one.revoked) json["revoked"] = toText(*one.revoked);
    return json;
}

Json toJson(const AircraftFile& its, const std::vector<Sentence>& against,
            const std::vector<file::Item>& due) {
    Json json{{"against", against},       {"discrepancies", Json::array()}, {"counters", Json::object()},
              {"parts", Json::array()},   {"inspections", Json::object()},  {"heads", its.heads},
              {"holes", Json::array()},   {"conflicts", Json::array()},     {"keys", Json::array()},
              {"records", Json::array()}, {"removed", its.removed},         {"due", Json::array()}};
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
    for (const file::KnownKey& key : its.keys)
        json["keys"].push_back(toJson(key));
    for (const file::Page& page : its.pages)
        json["records"].push_back({{"record", page.sha256},
                                   {"kind", page.kind},
                                   {"at", toText(page.at)},
                                   {"signer", page.signer.name},
                                   {"role", page.signer.role},
                                   {"fingerprint", page.key},
                                   {"key", toText(page.standing)}});
    return json;
}

void print(const std::string& registration, const AircraftFile& its, const std::vector<Sentence>& against,
           const std::vector<file::Item>& due, bool isDescribed) {
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
    if (!isDescribed)
        std::cout
            << "  not known: the archive has no description of the airframe; import its airframe.json\n";
    else if (due.empty())
        std::cout << "  the airframe here names no inspections or lives\n";
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

Result<Date> dayGiven(const std::string& today) {
    return today.empty() ? Date::of(now()) : Date::parse(today);
}

} // namespace

int archiveState(const ArchiveOptions& options) {
    const auto archive = openExisting(options.archive);
    if (!archive) return complain(archive.error());
    const auto its = archive::fileOf(*archive, options.aircraft);
    if (!its) return complain(its.error());
    const auto date = dayGiven(options.today);
    if (!date) return complain(date.error());
    const auto described = airframeOf(*archive, options.aircraft);
    if (!described) return complain(described.error());
    const auto due = *described ? file::comesDue(*its, **described, *date) : std::vector<file::Item>();
    auto against = file::standsAgainst(*its, ambit::toText(*date));
    for (Sentence& reason : file::standsAgainst(due))
        against.push_back(std::move(reason));
    if (options.json) {
        Json out = toJson(*its, against, due);
        out["described"] = described->has_value(); // else nothing is known of what is due
        std::cout << out.dump() << '\n';
    }
    if (!options.json) print(options.aircraft, *its, against, due, described->has_value());
    return Exit::done;
}

int archiveRetention(const ArchiveOptions& options) {
    const auto archive = openExisting(options.archive);
    if (!archive) return complain(archive.error());
    if (auto known = mustKnow(*archive, options.aircraft); !known) return complain(known.error());
    const auto told = archive->told(options.aircraft);
    if (!told) return complain(told.error());
    const auto date = dayGiven(options.today);
    if (!date) return complain(date.error());
    Json list = Json::array();
    for (const auto& one : file::retention(*told, file::fold(*told), *date)) {
        if (options.json)
            list.push_back({{"record", one.record}, {"mayGo", one.mayGo}, {"why", one.why}});
        else
            std::cout << (one.mayGo ? "may go  " : "stays   ") << one.record << "  " << one.why << '\n';
    }
    if (options.json)
        std::cout << list.dump() << '\n';
    else
        std::cout << "Ambit deletes nothing by itself; local rules and the operator may ask for more.\n";
    return Exit::done;
}

} // namespace ambit::cli
