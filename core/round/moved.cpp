#include "round/moved.hpp"

#include <algorithm>

namespace ambit::round {

namespace {

using airframe::Airframe;
using Names = std::vector<std::string>;

constexpr std::size_t mostClauses = 2;
constexpr std::size_t mostNames = 2;

std::string quoted(const std::string& name) {
    return "“" + name + "”";
}

std::string standName(const Airframe& airframe, const std::string& id) {
    const airframe::Stand* stand = airframe.stand(id);
    return quoted(stand == nullptr ? id : stand->name);
}

std::string pointName(const Airframe& airframe, const std::string& id) {
    const airframe::Point* point = airframe.point(id);
    return quoted(point == nullptr ? id : point->name);
}

/// "“A”", "“A” and “B”", "“A”, “B” and 3 more".
std::string listed(const Names& names) {
    std::string list = names.front();
    if (names.size() == mostNames) return list + " and " + names[1];
    for (std::size_t i = 1; i < std::min(names.size(), mostNames); ++i)
        list += ", " + names[i];
    if (names.size() > mostNames) list += " and " + std::to_string(names.size() - mostNames) + " more";
    return list;
}

/// What stands in the way by its words, as far as they make a name: "Wall." is Wall.
std::string areaName(const std::string& why) {
    return quoted(why.ends_with('.') ? why.substr(0, why.size() - 1) : why);
}

// --- the visits

std::vector<std::string> visitsOf(const std::vector<walk::Step>& steps) {
    std::vector<std::string> stands;
    for (const walk::Step& step : steps)
        if (const auto* go = std::get_if<walk::Go>(&step)) stands.push_back(go->stand);
    return stands;
}

/// Where each point is settled; "" is where one is already.
std::map<std::string, std::string> placesOf(const std::vector<walk::Step>& steps) {
    std::map<std::string, std::string> places;
    std::string stand;
    for (const walk::Step& step : steps) {
        if (const auto* go = std::get_if<walk::Go>(&step)) stand = go->stand;
        if (const auto* settle = std::get_if<walk::Settle>(&step)) places.emplace(settle->point, stand);
    }
    return places;
}

/// Points in the order in which they are settled.
Names pointsOf(const std::vector<walk::Step>& steps) {
    Names points;
    for (const walk::Step& step : steps)
        if (const auto* settle = std::get_if<walk::Settle>(&step)) points.push_back(settle->point);
    return points;
}

struct Kept {
    std::vector<bool> known; ///< by visit: it keeps its place among the others
    std::vector<bool> anew;
};

/// The visits that both have in the same order, as many as can be.
Kept keptVisits(const std::vector<std::string>& known, const std::vector<std::string>& anew) {
    std::vector<std::vector<std::size_t>> longest(known.size() + 1,
                                                  std::vector<std::size_t>(anew.size() + 1, 0));
    for (std::size_t i = known.size(); i-- > 0;)
        for (std::size_t k = anew.size(); k-- > 0;)
            longest[i][k] = known[i] == anew[k] ? longest[i + 1][k + 1] + 1
                                                : std::max(longest[i + 1][k], longest[i][k + 1]);
    Kept kept{std::vector<bool>(known.size()), std::vector<bool>(anew.size())};
    for (std::size_t i = 0, k = 0; i < known.size() && k < anew.size();) {
        if (known[i] == anew[k])
            kept.known[i++] = kept.anew[k++] = true;
        else if (longest[i + 1][k] >= longest[i][k + 1])
            ++i;
        else
            ++k;
    }
    return kept;
}

// --- the clauses

struct Clause {
    std::string words;
    std::size_t count = 1; ///< things told of in it
};

class Teller {
public:
    Teller(const std::string& because, const State& now, const Airframe& described)
        : cause(because), state(now), airframe(described) {}

    std::vector<Clause> clauses;

    void tellPoints(const std::vector<walk::Step>& known, const std::vector<walk::Step>& anew) {
        const auto before = placesOf(known);
        const auto after = placesOf(anew);
        Names lost;
        for (const std::string& point : pointsOf(known))
            if (!after.contains(point)) lost.push_back(pointName(airframe, point));
        add(lost, "can't be settled now");
        Names found, came;
        for (const std::string& point : pointsOf(anew))
            if (!before.contains(point)) (isNew(point) ? came : found).push_back(pointName(airframe, point));
        add(came, came.size() == 1 ? "is added" : "are added");
        add(found, "can be settled again");
        std::vector<std::pair<std::string, Names>> elsewhere; // stand, points
        for (const std::string& point : pointsOf(anew)) {
            const auto was = before.find(point);
            const std::string& is = after.at(point);
            if (was == before.end() || was->second == is || !isBlocked(was->second)) continue;
            if (elsewhere.empty() || elsewhere.back().first != is) elsewhere.push_back({is, {}});
            elsewhere.back().second.push_back(pointName(airframe, point));
        }
        for (const auto& [stand, points] : elsewhere)
            add(points, std::string(points.size() == 1 ? "is" : "are") + " now settled " +
                            (stand.empty() ? "here" : "from " + standName(airframe, stand)));
    }

    void tellVisits(const std::vector<walk::Step>& known, const std::vector<walk::Step>& anew) {
        const auto before = visitsOf(known);
        const auto after = visitsOf(anew);
        const Kept kept = keptVisits(before, after);
        std::vector<std::string> loose; // visits that lost their place
        for (std::size_t i = 0; i < before.size(); ++i)
            if (!kept.known[i]) loose.push_back(before[i]);
        // Neighbours that moved together, or came in together, are told together.
        for (std::size_t k = 0; k < after.size();) {
            if (kept.anew[k]) {
                ++k;
                continue;
            }
            const std::string place = k == 0 ? "first" : "after " + standName(airframe, after[k - 1]);
            const bool moved = takeFrom(loose, after[k]);
            Names run{standName(airframe, after[k])};
            for (++k; k < after.size() && !kept.anew[k] && isIn(loose, after[k]) == moved; ++k) {
                if (moved) takeFrom(loose, after[k]);
                run.push_back(standName(airframe, after[k]));
            }
            const bool one = run.size() == 1;
            add(run, moved ? (one ? "now comes " : "now come ") + place
                           : (one ? "is added " : "are added ") + place);
        }
        Names out;
        for (const std::string& stand : loose)
            if (!isBlocked(stand)) out.push_back(standName(airframe, stand));
        add(out, out.size() == 1 ? "is left out" : "are left out");
    }

private:
    void add(Names names, const std::string& predicate) {
        names.erase(
            std::remove_if(names.begin(), names.end(),
                           [&](const std::string& name) { return cause.find(name) != std::string::npos; }),
            names.end());
        if (!names.empty()) clauses.push_back({listed(names) + ' ' + predicate, names.size()});
    }
    [[nodiscard]] bool isBlocked(const std::string& stand) const {
        return state.blocked.contains(stand.empty() ? state.stand.value_or("") : stand);
    }
    /// It belongs to the walk only now.
    [[nodiscard]] bool isNew(const std::string& id) const {
        const airframe::Point* point = airframe.point(id);
        const auto its = state.points.find(id);
        return point != nullptr && point->night && its != state.points.end() && its->second.settlings.empty();
    }
    static bool isIn(const std::vector<std::string>& list, const std::string& one) {
        return std::find(list.begin(), list.end(), one) != list.end();
    }
    static bool takeFrom(std::vector<std::string>& list, const std::string& one) {
        const auto found = std::find(list.begin(), list.end(), one);
        if (found == list.end()) return false;
        list.erase(found);
        return true;
    }

    const std::string& cause;
    const State& state;
    const Airframe& airframe;
};

class Reason {
public:
    Reason(const State& before, const Airframe& described, bool afterPause)
        : state(before), airframe(described), resumed(afterPause) {}

    std::string operator()(const StandReached& what) const {
        const std::string stand = standName(airframe, what.stand);
        return resumed ? "The round goes on at " + stand : stand + " was reached out of turn";
    }
    std::string operator()(const Reopened& what) const {
        return pointName(airframe, what.point) + " is to be settled again";
    }
    std::string operator()(const Asked& what) const {
        const Statement& said = what.statement;
        if (said.kind != Statement::Kind::lookAgain) return {};
        return "Asked by " + said.who.name + ": look again at " + pointName(airframe, said.point);
    }
    std::string operator()(const Declined& what) const {
        const Ask* ask = state.ask(what.ask);
        if (ask == nullptr || ask->what.kind != Statement::Kind::lookAgain) return {};
        return "The second look at " + pointName(airframe, ask->what.point) + " is declined";
    }
    std::string operator()(const Settled& what) const {
        return pointName(airframe, what.point) + " is " + toText(what.outcome);
    }
    std::string operator()(const StandBlocked& what) const {
        return standName(airframe, what.stand) + " can't be used";
    }
    std::string operator()(const StandFree& what) const {
        return standName(airframe, what.stand) + " can be used again";
    }
    std::string operator()(const AreaMarked& what) const { return areaName(what.why) + " is in the way"; }
    std::string operator()(const AreaCleared& what) const {
        const auto area = state.marked.find(what.area);
        if (area == state.marked.end()) return {};
        return areaName(area->second.why) + " isn't in the way any more";
    }
    std::string operator()(const Light& what) const {
        return what.low ? "The light is low" : "The light is good again";
    }
    std::string operator()(const Interrupted& what) const {
        return what.again.empty() ? "" : "After an interruption";
    }
    std::string operator()(const QuickRun& what) const {
        return what.again.empty() ? "" : "What was settled quickly is looked at again";
    }
    std::string operator()(const Night& what) const {
        return what.expected ? "The flight goes into the dark" : "The flight doesn't go into the dark";
    }
    template<class Other> std::string operator()(const Other& /*what*/) const { return {}; }

private:
    const State& state;
    const Airframe& airframe;
    bool resumed;
};

} // namespace

std::string because(const State& before, const Airframe& airframe, const What& what, bool resumed) {
    return std::visit(Reason(before, airframe, resumed), what);
}

std::string whatMoved(const std::string& cause, const std::vector<walk::Step>& known,
                      const std::vector<walk::Step>& anew, const State& state, const Airframe& airframe) {
    Teller teller(cause, state, airframe);
    teller.tellPoints(known, anew);
    teller.tellVisits(known, anew);
    const auto& clauses = teller.clauses;
    if (clauses.empty()) return cause + (cause.ends_with('.') ? "" : ".");
    std::string words = cause + ": " + clauses[0].words;
    for (std::size_t i = 1; i < std::min(clauses.size(), mostClauses); ++i)
        words += ". " + clauses[i].words;
    std::size_t more = 0;
    for (std::size_t i = mostClauses; i < clauses.size(); ++i)
        more += clauses[i].count;
    return words + (more == 0 ? "." : ", and " + std::to_string(more) + " more.");
}

} // namespace ambit::round
