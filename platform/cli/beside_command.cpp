// Two rounds laid side by side: records, or logs as `ambit round --json` prints them.
#include "cli/commands.hpp"

#include "cli/logs.hpp"
#include "cli/talk.hpp"
#include "round/beside.hpp"

#include <iomanip>
#include <iostream>
#include <nlohmann/json.hpp>
#include <sstream>

namespace ambit::cli {

namespace {

struct Given {
    round::Walked walked;
    PointNames names;
};

Result<Given> readOne(const std::string& file) {
    auto log = readLog(file);
    if (!log) return tl::unexpected(log.error());
    auto walked = round::walkedOf(log->events);
    if (!walked) return fail(walked.error().code, walked.error().what, file, walked.error().remedy);
    return Given{std::move(*walked), std::move(log->names)};
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

Json toJson(const round::Beside& both, const PointNames& names) {
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
void tellPoints(const char* head, const round::Beside& both, const PointNames& names, Wanted wanted) {
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
    PointNames names = std::move(first->names);
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
