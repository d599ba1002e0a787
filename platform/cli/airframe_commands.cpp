#include "cli/commands.hpp"

#include "airframe/read.hpp"
#include "base/files.hpp"
#include "cli/plan_svg.hpp"
#include "cli/talk.hpp"
#include "walk/plan.hpp"

#include <cmath>
#include <iomanip>
#include <iostream>
#include <nlohmann/json.hpp>

namespace ambit::cli {

namespace {

/// Costs as decimal text with a fixed number of places, so that programs get the same everywhere.
std::string fixed(double value, int places) {
    std::ostringstream out;
    out << std::fixed << std::setprecision(places) << value;
    return out.str();
}

Json toJson(const walk::Cost& cost) {
    return {{"metres", fixed(cost.metres, 1)},
            {"seconds", fixed(cost.seconds, 0)},
            {"climbs", cost.climbs},
            {"turns", cost.turns},
            {"weighs", fixed(cost.weighs, 3)}};
}

Json toJson(const walk::Step& step) {
    if (const auto* go = std::get_if<walk::Go>(&step)) return {{"go", go->stand}};
    if (const auto* set = std::get_if<walk::Set>(&step)) return {{"set", set->setting}, {"to", set->to}};
    return {{"settle", std::get<walk::Settle>(step).point}};
}

std::string counted(int count, const char* what) {
    return std::to_string(count) + ' ' + what + (count == 1 ? "" : "s");
}

std::string costText(const walk::Cost& cost) {
    return fixed(cost.metres, 0) + " m on foot, " + counted(cost.climbs, "climb") + ", " +
           counted(cost.turns, "turn") + ", about " + fixed(std::ceil(cost.seconds / 60), 0) + " min";
}

void printSteps(const airframe::Airframe& airframe, const walk::Plan& plan) {
    int number = 0;
    for (const walk::Step& step : plan.steps) {
        if (const auto* go = std::get_if<walk::Go>(&step)) {
            const auto* stand = airframe.stand(go->stand);
            std::cout << std::setw(3) << ++number << "  " << stand->name << " (" << toText(stand->access)
                      << ", hands free: " << stand->hands << ")\n";
            for (const std::string& caution : stand->cautions)
                std::cout << "     ! " << caution << '\n';
        } else if (const auto* set = std::get_if<walk::Set>(&step)) {
            const auto* setting = airframe.setting(set->setting);
            std::cout << "     > " << setting->name << ": " << setting->state(set->to)->name << '\n';
        } else {
            std::cout << "     - " << airframe.point(std::get<walk::Settle>(step).point)->name << '\n';
        }
    }
}

std::string proofText(const walk::Plan& plan) {
    const std::string states = " (" + std::to_string(plan.states) + " states looked at)";
    if (plan.proven) return "No better walk exists" + states + '.';
    // Rounded up: never less than it may be.
    const double percent = std::ceil((plan.cost.weighs / std::max(plan.bound, 0.001) - 1) * 1000) / 10;
    return "At most " + fixed(percent, 1) + " % above the best there can be" + states + '.';
}

void print(const std::vector<walk::Constraint>& dearest) {
    std::cout << "\nWhat the order costs most, in seconds as the airframe weighs them:\n";
    if (dearest.empty()) std::cout << "  No rule of it costs anything.\n";
    for (const walk::Constraint& one : dearest)
        std::cout << std::setw(7) << fixed(one.seconds, 1) << "  " << one.words << '\n';
}

Json toJson(const std::string& walkId, const walk::Plan& plan, const walk::Plan& listed,
            const std::vector<walk::Constraint>* dearest) {
    Json out{{"walk", walkId},        {"cost", toJson(plan.cost)}, {"bound", fixed(plan.bound, 3)},
             {"proven", plan.proven}, {"states", plan.states},     {"listed", toJson(listed.cost)},
             {"steps", Json::array()}};
    for (const walk::Step& step : plan.steps)
        out["steps"].push_back(toJson(step));
    if (dearest == nullptr) return out;
    out["explain"] = Json::array();
    for (const walk::Constraint& one : *dearest)
        out["explain"].push_back({{"rule", one.words}, {"seconds", fixed(one.seconds, 3)}});
    return out;
}

/// Every walk's plan; points that no order can settle become errors.
std::vector<Error> planAll(const airframe::Airframe& airframe, Json& walks) {
    std::vector<Error> errors;
    for (const airframe::Walk& walk : airframe.walks) {
        auto plan = walk::makePlan(airframe, walk.id, walk::startOf(airframe));
        if (!plan) {
            errors.push_back(plan.error());
            continue;
        }
        for (const auto& [point, why] : plan->unreachable)
            errors.push_back({ErrorCode::invalid,
                              std::string("No order of the walk '")
                                  .append(walk.id)
                                  .append("' can settle the point '")
                                  .append(point)
                                  .append("': ")
                                  .append(why),
                              point, "Look at its stands, its 'when' and what comes before it."});
        walks.push_back({{"id", walk.id}, {"points", walk.points.size()}, {"cost", toJson(plan->cost)}});
    }
    return errors;
}

/// As the airframe's `translations` want it: each text as written, and nothing yet in the other language.
int printUntranslated(const CheckOptions& options) {
    const auto all = airframe::untranslatedFrom(options.airframe, options.untranslated);
    if (!all) return complain(all.error());
    auto out = nlohmann::ordered_json::object(); // in the file's order
    for (const std::string& text : all->at(options.untranslated))
        out[text] = "";
    std::cout << out.dump(2) << '\n';
    return Exit::done;
}

} // namespace

int check(const CheckOptions& options) {
    if (!options.untranslated.empty()) return printUntranslated(options);
    const auto airframe = airframe::readFrom(options.airframe);
    const auto untranslated = airframe::untranslatedFrom(options.airframe);
    std::vector<Error> errors;
    Json walks = Json::array();
    if (airframe)
        errors = planAll(*airframe, walks);
    else
        errors = airframe.error();
    if (options.json) {
        Json out{{"ok", errors.empty()}, {"errors", Json::array()}, {"walks", walks}};
        for (const Error& error : errors)
            out["errors"].push_back(toJson(error));
        if (airframe) out["sha256"] = airframe->sha256;
        if (untranslated) {
            out["untranslated"] = Json::object();
            for (const auto& [language, texts] : *untranslated)
                out["untranslated"][language] = texts.size();
        }
        std::cout << out.dump() << '\n';
    }
    if (!errors.empty()) return options.json ? exitCodeOf(errors.front()) : complain(errors);
    if (options.json) return Exit::done;
    std::cout << airframe->name << "\n"
              << airframe->notice << "\n"
              << airframe->points.size() << " points, " << airframe->stands.size() << " stands, "
              << airframe->zones.size() << " zones\nsha256 " << airframe->sha256 << '\n';
    for (const airframe::Walk& walk : airframe->walks)
        std::cout << "walk " << walk.id << ": " << walk.points.size() << " points\n";
    if (untranslated)
        for (const auto& [language, texts] : *untranslated)
            std::cout << "language " << language << ": "
                      << (texts.empty() ? "complete"
                                        : counted(static_cast<int>(texts.size()), "text") + " not translated")
                      << '\n';
    return Exit::done;
}

int plan(const PlanOptions& options) {
    const auto airframe = airframe::readFrom(options.airframe);
    if (!airframe) return complain(airframe.error());
    const std::string walkId = options.walk.empty() ? airframe->walks.front().id : options.walk;
    const walk::Situation now = walk::startOf(*airframe);
    const auto plan = walk::makePlan(*airframe, walkId, now);
    if (!plan) return complain(plan.error());
    if (!options.svg.empty()) {
        auto written = writeFile(options.svg, planSvg(*airframe, walkId, now, *plan));
        if (!written) {
            written.error().remedy = "Name a file in a folder that is there and may be written to.";
            return complain(written.error());
        }
    }
    const auto listed = walk::listedPlan(*airframe, walkId, now);
    if (!listed) return complain(listed.error());
    std::vector<walk::Constraint> dearest;
    if (options.explain) {
        auto found = walk::dearest(*airframe, walkId);
        if (!found) return complain(found.error());
        dearest = std::move(*found);
    }
    if (options.json) {
        std::cout << toJson(walkId, *plan, *listed, options.explain ? &dearest : nullptr).dump() << '\n';
    } else {
        std::cout << airframe->name << ": " << airframe->walk(walkId)->name << '\n'
                  << costText(plan->cost) << '\n'
                  << "As listed: " << costText(listed->cost) << '\n'
                  << proofText(*plan) << "\n\n";
        printSteps(*airframe, *plan);
        if (options.explain) print(dearest);
    }
    for (const auto& [point, why] : plan->unreachable)
        std::cerr << "ambit: can't be reached: " << point << ": " << why << '\n';
    return plan->unreachable.empty() ? Exit::done : Exit::refused;
}

} // namespace ambit::cli
