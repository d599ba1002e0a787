#include "round/moved.hpp"

#include "round/moved_words.hpp"

#include <algorithm>

namespace ambit::round {

namespace {

using airframe::Airframe;
using Names = std::vector<std::string>; ///< ids
using Told = std::vector<Sentence>;

constexpr std::size_t mostClauses = 2;

Sentence standName(const Airframe& airframe, const std::string& id) {
    const airframe::Stand* stand = airframe.stand(id);
    return quoted(stand == nullptr ? id : stand->name);
}

Sentence pointName(const Airframe& airframe, const std::string& id) {
    const airframe::Point* point = airframe.point(id);
    return quoted(point == nullptr ? id : point->name);
}

/// "“A”", "“A” and “B”", "“A”, “B” and 3 more".
Sentence listed(const Told& names) {
    if (names.size() == 1) return names.front();
    if (names.size() == 2) return say(moved::two, names[0], names[1]);
    return say(moved::twoAndMore, names[0], names[1], figure(names.size() - 2));
}

/// What stands in the way by its words, as far as they make a name: "Wall." is Wall.
Sentence areaName(const std::string& why) {
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
    Sentence words;
    std::size_t count = 1; ///< things told of in it
};

class Teller {
public:
    Teller(const Sentence& because, const State& now, const Airframe& described)
        : cause(because), state(now), airframe(described) {}

    std::vector<Clause> clauses;

    void tellPoints(const std::vector<walk::Step>& known, const std::vector<walk::Step>& anew) {
        const auto before = placesOf(known);
        const auto after = placesOf(anew);
        Told lost;
        for (const std::string& point : pointsOf(known))
            if (!after.contains(point)) lost.push_back(pointName(airframe, point));
        add(lost, [](const Sentence& them, bool /*one*/) { return say(moved::cannotBeSettled, them); });
        Told found, came;
        for (const std::string& point : pointsOf(anew))
            if (!before.contains(point)) (isNew(point) ? came : found).push_back(pointName(airframe, point));
        add(came, [](const Sentence& them, bool one) {
            return one ? say(moved::isAdded, them) : say(moved::areAdded, them);
        });
        add(found, [](const Sentence& them, bool /*one*/) { return say(moved::canBeSettled, them); });
        std::vector<std::pair<std::string, Told>> elsewhere; // stand, points
        for (const std::string& point : pointsOf(anew)) {
            const auto was = before.find(point);
            const std::string& is = after.at(point);
            if (was == before.end() || was->second == is || !isBlocked(was->second)) continue;
            if (elsewhere.empty() || elsewhere.back().first != is) elsewhere.push_back({is, {}});
            elsewhere.back().second.push_back(pointName(airframe, point));
        }
        for (const auto& [stand, points] : elsewhere)
            add(points, [&, its = stand](const Sentence& them, bool one) {
                if (its.empty())
                    return one ? say(moved::isSettledHere, them) : say(moved::areSettledHere, them);
                const Sentence from = standName(airframe, its);
                return one ? say(moved::isSettledFrom, them, from) : say(moved::areSettledFrom, them, from);
            });
    }

    void tellVisits(const std::vector<walk::Step>& known, const std::vector<walk::Step>& anew) {
        const auto was = visitsOf(known);
        const auto after = visitsOf(anew);
        const Kept kept = keptVisits(was, after);
        std::vector<std::string> loose; // visits that lost their place
        for (std::size_t i = 0; i < was.size(); ++i)
            if (!kept.known[i]) loose.push_back(was[i]);
        // Neighbours that moved together, or came in together, are told together.
        for (std::size_t k = 0; k < after.size();) {
            if (kept.anew[k]) {
                ++k;
                continue;
            }
            const std::string before = k == 0 ? "" : after[k - 1];
            const bool moved = takeFrom(loose, after[k]);
            Told run{standName(airframe, after[k])};
            for (++k; k < after.size() && !kept.anew[k] && isIn(loose, after[k]) == moved; ++k) {
                if (moved) takeFrom(loose, after[k]);
                run.push_back(standName(airframe, after[k]));
            }
            add(run, [&](const Sentence& them, bool one) {
                return moved ? comes(them, one, before) : added(them, one, before);
            });
        }
        Told out;
        for (const std::string& stand : loose)
            if (!isBlocked(stand)) out.push_back(standName(airframe, stand));
        add(out, [](const Sentence& them, bool one) {
            return one ? say(moved::isLeftOut, them) : say(moved::areLeftOut, them);
        });
    }

private:
    /// `before`: the stand it comes after; "" is the first.
    [[nodiscard]] Sentence comes(const Sentence& them, bool one, const std::string& before) const {
        if (before.empty()) return one ? say(moved::comesFirst, them) : say(moved::comeFirst, them);
        const Sentence place = standName(airframe, before);
        return one ? say(moved::comesAfter, them, place) : say(moved::comeAfter, them, place);
    }
    [[nodiscard]] Sentence added(const Sentence& them, bool one, const std::string& before) const {
        if (before.empty()) return one ? say(moved::isAddedFirst, them) : say(moved::areAddedFirst, them);
        const Sentence place = standName(airframe, before);
        return one ? say(moved::isAddedAfter, them, place) : say(moved::areAddedAfter, them, place);
    }
    /// `tell`: of the names and whether it is one of them.
    template<class Tell> void add(Told names, Tell tell) {
        names.erase(
            std::remove_if(names.begin(), names.end(),
                           [&](const Sentence& name) { return cause.find(name) != std::string::npos; }),
            names.end());
        if (!names.empty()) clauses.push_back({tell(listed(names), names.size() == 1), names.size()});
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

    const Sentence& cause;
    const State& state;
    const Airframe& airframe;
};

class Reason {
public:
    Reason(const State& before, const Airframe& described, bool afterPause)
        : state(before), airframe(described), resumed(afterPause) {}

    Sentence operator()(const StandReached& what) const {
        const Sentence stand = standName(airframe, what.stand);
        return resumed ? say(moved::goesOnAt, stand) : say(moved::outOfTurn, stand);
    }
    Sentence operator()(const Reopened& what) const {
        return say(moved::settledAgain, pointName(airframe, what.point));
    }
    Sentence operator()(const Asked& what) const {
        const Statement& said = what.statement;
        if (said.kind != Statement::Kind::lookAgain) return {};
        return say(moved::askedBy, said.who.name, pointName(airframe, said.point));
    }
    Sentence operator()(const Declined& what) const {
        const Ask* ask = state.ask(what.ask);
        if (ask == nullptr || ask->what.kind != Statement::Kind::lookAgain) return {};
        return say(moved::lookDeclined, pointName(airframe, ask->what.point));
    }
    Sentence operator()(const Settled& what) const {
        const Sentence point = pointName(airframe, what.point);
        switch (what.outcome) {
        case Outcome::sound:
            return say(moved::isSound, point);
        case Outcome::finding:
            return say(moved::isFinding, point);
        case Outcome::notInspected:
            break;
        }
        return say(moved::isNotInspected, point);
    }
    Sentence operator()(const StandBlocked& what) const {
        return say(moved::cannotBeUsed, standName(airframe, what.stand));
    }
    Sentence operator()(const StandFree& what) const {
        return say(moved::canBeUsed, standName(airframe, what.stand));
    }
    Sentence operator()(const AreaMarked& what) const { return say(moved::inTheWay, areaName(what.why)); }
    Sentence operator()(const AreaCleared& what) const {
        const auto area = state.marked.find(what.area);
        if (area == state.marked.end()) return {};
        return say(moved::notInTheWay, areaName(area->second.why));
    }
    Sentence operator()(const Light& what) const {
        return what.low ? say(moved::lightLow) : say(moved::lightGood);
    }
    Sentence operator()(const Interrupted& what) const {
        return what.again.empty() ? Sentence() : say(moved::interrupted);
    }
    Sentence operator()(const QuickRun& what) const {
        return what.again.empty() ? Sentence() : say(moved::quickAgain);
    }
    Sentence operator()(const Night& what) const {
        return what.expected ? say(moved::intoDark) : say(moved::notIntoDark);
    }
    template<class Other> Sentence operator()(const Other& /*what*/) const { return {}; }

private:
    const State& state;
    const Airframe& airframe;
    bool resumed;
};

} // namespace

Sentence because(const State& before, const Airframe& airframe, const What& what, bool resumed) {
    return std::visit(Reason(before, airframe, resumed), what);
}

Sentence whatMoved(const Sentence& cause, const std::vector<walk::Step>& known,
                   const std::vector<walk::Step>& anew, const State& state, const Airframe& airframe) {
    Teller teller(cause, state, airframe);
    teller.tellPoints(known, anew);
    teller.tellVisits(known, anew);
    const auto& clauses = teller.clauses;
    if (clauses.empty()) return ended(cause);
    Sentence words = say(moved::causeAndFirst, cause, clauses[0].words);
    for (std::size_t i = 1; i < std::min(clauses.size(), mostClauses); ++i)
        words = say(moved::andThen, std::move(words), clauses[i].words);
    std::size_t more = 0;
    for (std::size_t i = mostClauses; i < clauses.size(); ++i)
        more += clauses[i].count;
    return more == 0 ? ended(std::move(words)) : say(moved::andMore, std::move(words), figure(more));
}

} // namespace ambit::round
