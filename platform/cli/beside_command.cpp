// Two rounds laid side by side: records, or logs as `ambit round --json` prints them.
#include "cli/commands.hpp"

#include "base/files.hpp"
#include "cli/talk.hpp"
#include "record/record.hpp"
#include "round/beside.hpp"

#include <iomanip>
#include <iostream>
#include <nlohmann/json.hpp>
#include <sstream>

namespace ambit::cli {

namespace {

constexpr std::size_t largestFile = std::size_t{64} << 20;

using Names = std::map<std::string, std::string>;

struct Given {
    round::Walked walked;
    Names names; ///< of points, as a record has them; a log has none
};

Result<Given> fromRecord(std::string_view bytes) {
    const auto report = record::verifyRecord(bytes);
    if (!report) return tl::unexpected(report.error());
    const Json& content = report->content;
    if (content["kind"] != "round")
        return fail(ErrorCode::invalid, "This record holds no round.", "/content/kind",
                    "Give a round's record.");
    std::vector<round::Event> events;
    for (const Json& one : content["events"]) {
        auto event = round::eventFrom(one);
        if (!event) return tl::unexpected(event.error());
        events.push_back(std::move(*event));
    }
    auto walked = round::walkedOf(events);
    if (!walked) return tl::unexpected(walked.error());
    Given given{std::move(*walked), {}};
    for (const Json& point : content["points"])
        given.names.emplace(point["id"], point["name"]);
    return given;
}

Result<Given> fromLog(std::string_view text) {
    std::vector<round::Event> events;
    for (int number = 1; !text.empty(); ++number) {
        const auto end = std::min(text.find('\n'), text.size());
        const std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (line.find_first_not_of(" \t\r") == std::string_view::npos) continue;
        const std::string where = "line " + std::to_string(number);
        const auto json = parseJson(line);
        if (!json) return fail(json.error().code, json.error().what, where);
        if (json->is_object() && json->size() == 1 && json->contains("record")) break; // its last line
        auto event = round::eventFrom(*json);
        if (!event) return fail(event.error().code, event.error().what, where + ", " + event.error().where);
        events.push_back(std::move(*event));
    }
    auto walked = round::walkedOf(events);
    if (!walked) return tl::unexpected(walked.error());
    return Given{std::move(*walked), {}};
}

Result<Given> readOne(const std::string& file) {
    const auto bytes = readFile(file, largestFile);
    if (!bytes) return tl::unexpected(bytes.error());
    auto given = bytes->starts_with("{\"content\":") ? fromRecord(*bytes) : fromLog(*bytes);
    if (!given) given.error().where = file + (given.error().where.empty() ? "" : ", ") + given.error().where;
    return given;
}

// --- for programs
// -------------------------------------------------------------------------------------------

Json toJson(const round::Walked& walked) {
    const round::Person& who = walked.opened.who;
    Json json{{"round", walked.id},
              {"who", {{"name", who.name}, {"role", who.role}, {"certificate", who.certificate}}},
              {"openedAt", toText(walked.at)},
              {"alone", walked.alone}};
    if (walked.conclusion) json["fit"] = walked.conclusion->fit;
    return json;
}

Json toJson(const round::Settled& settled) {
    Json json{{"outcome", round::toText(settled.outcome)}};
    if (settled.value) json["value"] = *settled.value;
    if (settled.outcome == round::Outcome::finding) {
        json["words"] = settled.words;
        json["class"] = airframe::toText(settled.severity);
    }
    if (settled.outcome == round::Outcome::notInspected) {
        json["why"] = settled.why;
        if (!settled.basis.empty()) json["basis"] = settled.basis;
    }
    return json;
}

Json toJson(const round::Beside& both, const Names& names) {
    Json points = Json::array();
    for (const round::PointBeside& one : both.points) {
        Json point{{"id", one.point}, {"differs", one.differs()}};
        if (const auto name = names.find(one.point); name != names.end()) point["name"] = name->second;
        if (one.first) point["first"] = toJson(*one.first);
        if (one.second) point["second"] = toJson(*one.second);
        points.push_back(std::move(point));
    }
    Json agreement{{"outcomes", {"sound", "finding", "not inspected"}}, {"table", both.table}};
    if (both.agreement) {
        const round::Agreement& its = *both.agreement;
        agreement["points"] = its.count;
        agreement["same"] = its.same;
        agreement["share"] = its.observed;
        agreement["kappa"] = its.kappa;
        agreement["error"] = its.error;
        agreement["low"] = its.low;
        agreement["high"] = its.high;
    } else {
        agreement["why"] = both.agreement.error().what;
    }
    return {{"registration", both.first.opened.registration},
            {"walk", both.first.opened.walk},
            {"first", toJson(both.first)},
            {"second", toJson(both.second)},
            {"points", std::move(points)},
            {"agreement", std::move(agreement)}};
}

// --- for people
// ---------------------------------------------------------------------------------------------

std::string words(const std::optional<round::Settled>& settled) {
    if (!settled) return "not settled";
    std::string text = round::toText(settled->outcome);
    if (settled->value) text += ", " + *settled->value;
    if (settled->outcome == round::Outcome::finding)
        text += std::string(", ") + airframe::toText(settled->severity) + ": " + settled->words;
    if (settled->outcome == round::Outcome::notInspected) text += ": " + settled->why;
    return text;
}

void tell(const char* which, const round::Walked& walked) {
    std::cout << which << walked.opened.who.name << ", " << walked.opened.who.role << ", "
              << toText(walked.at);
    if (walked.conclusion) std::cout << ", " << (walked.conclusion->fit ? "fit" : "not fit");
    if (walked.alone) std::cout << ", on their own";
    std::cout << '\n';
}

template<class Wanted>
void tellPoints(const char* head, const round::Beside& both, const Names& names, Wanted wanted) {
    bool first = true;
    for (const round::PointBeside& one : both.points) {
        if (!wanted(one)) continue;
        if (std::exchange(first, false)) std::cout << '\n' << head << '\n';
        const auto name = names.find(one.point);
        std::cout << "  " << (name == names.end() ? one.point : name->second) << "\n    first   "
                  << words(one.first) << "\n    second  " << words(one.second) << '\n';
    }
}

void tellTable(const round::Contingency& table) {
    constexpr int first = 24;
    constexpr int column = 15;
    std::cout << '\n' << std::left << std::setw(first) << "Settled by both as" << std::right;
    for (const round::Outcome outcome : round::outcomes)
        std::cout << std::setw(column) << round::toText(outcome);
    std::cout << "  (second)\n";
    for (std::size_t i = 0; i < table.size(); ++i) {
        std::cout << std::left << std::setw(first)
                  << (std::string(round::toText(round::outcomes[i])) + " (first)") << std::right;
        for (const std::int64_t count : table[i])
            std::cout << std::setw(column) << count;
        std::cout << '\n';
    }
}

void tellAgreement(const round::Beside& both) {
    if (!both.agreement) {
        std::cout << '\n' << both.agreement.error().what << '\n';
        return;
    }
    const round::Agreement& its = *both.agreement;
    std::ostringstream text;
    text << std::fixed << std::setprecision(1) << "\nThe same outcome at " << its.same << " of " << its.count
         << " points (" << its.observed * 100 << " %).\n"
         << std::setprecision(2) << "Cohen's kappa " << its.kappa << ", 95 % interval " << its.low << " to "
         << its.high << ".\n";
    std::cout << text.str();
}

} // namespace

int beside(const BesideOptions& options) {
    auto first = readOne(options.first);
    if (!first) return complain(first.error());
    auto second = readOne(options.second);
    if (!second) return complain(second.error());
    Names names = std::move(first->names);
    names.merge(second->names);
    const auto both = round::beside(std::move(first->walked), std::move(second->walked));
    if (!both) return complain(both.error());
    if (options.json) {
        std::cout << toJson(*both, names).dump() << '\n';
        return Exit::done;
    }
    std::cout << both->first.opened.registration << ", " << both->first.opened.walk << '\n';
    tell("first   ", both->first);
    tell("second  ", both->second);
    tellPoints("Seen differently", *both, names, [](const auto& one) { return one.differs(); });
    tellPoints("Settled by one only", *both, names, [](const auto& one) { return !one.byBoth(); });
    tellTable(both->table);
    tellAgreement(*both);
    return Exit::done;
}

} // namespace ambit::cli
