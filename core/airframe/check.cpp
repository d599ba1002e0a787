#include "airframe/check.hpp"

#include "airframe/pocket.hpp"
#include "airframe/shape.hpp"

#include <algorithm>
#include <numeric>

namespace ambit::airframe {

namespace {

/// The ids of one list, to look references up in.
class Ids {
public:
    template<class T> Ids(const char* what, const List<T>& list) : kind(what), known(list.known) {
        for (const auto& item : list.items)
            ids.insert(item.value.id);
    }

    /// Notes a reference to nothing; says nothing where the list itself can't be read.
    void mustHave(const std::string& id, const std::string& where, Errors& errors) const {
        if (id.empty() || !known || ids.contains(id)) return;
        errors.add(where, say("There is no %1 %2.", say(kind), inQuotes(id)),
                   say("Name one that exists, or add it."));
    }
    void mustHaveAll(const std::vector<std::string>& list, const std::string& at, Errors& errors) const {
        for (std::size_t i = 0; i < list.size(); ++i)
            mustHave(list[i], pointerTo(at, i), errors);
    }

private:
    const char* kind;
    bool known;
    std::set<std::string> ids;
};

const DraftSetting* findSetting(const Draft& draft, const std::string& id) {
    const auto& items = draft.settings.items;
    const auto found =
        std::find_if(items.begin(), items.end(), [&](const auto& item) { return item.value.id == id; });
    return found == items.end() ? nullptr : &found->value;
}

/// Notes a setting or state that isn't there.
void checkState(const Draft& draft, const std::string& setting, const std::string& state,
                const std::string& where, Errors& errors) {
    Ids(pattern("setting"), draft.settings).mustHave(setting, where, errors);
    if (const DraftSetting* found = findSetting(draft, setting))
        Ids(pattern("state"), found->states).mustHave(state, where, errors);
}

void checkWhen(const Draft& draft, const Settings& when, const std::string& at, Errors& errors) {
    for (const auto& [setting, state] : when) {
        checkState(draft, setting, state, pointerTo(pointerTo(at, "when"), setting), errors);
    }
}

/// What one can't walk through, with its name for a sentence.
std::vector<std::pair<Sentence, Outline>> obstaclesOf(const Draft& draft) {
    std::vector<std::pair<Sentence, Outline>> obstacles;
    for (const auto& [part, at] : draft.parts.items) {
        if (part.solid) obstacles.emplace_back(say("the solid part %1", inQuotes(part.id)), part.outline);
    }
    for (const auto& [area, at] : draft.keepOut.items) {
        obstacles.emplace_back(say("the keep-out area %1", inQuotes(area.id)), area.outline);
    }
    return obstacles;
}

/// The ground one walks on.
class FreeGround {
public:
    FreeGround(const Draft& draft, Errors& sink)
        : obstacles(obstaclesOf(draft)), pockets(outlines()), errors(sink) {}

    /// Notes a place one can't stand on or, if it is to be walked to, can't walk to.
    void check(const Place& place, const std::string& where, bool walkedTo) const {
        if (!isGiven(place)) return;
        bool inside = false;
        for (const auto& [name, outline] : obstacles) {
            if (!isInside(place, outline)) continue;
            inside = true;
            errors.add(where, say("This place lies inside %1.", name), say("Move it to free ground."));
        }
        if (inside || !walkedTo || !pockets.isWalledIn(place)) return;
        errors.add(where, say("Solid parts and keep-out areas close a ring round this place."),
                   say("Move it, or leave a way between them."));
    }

private:
    [[nodiscard]] std::vector<Outline> outlines() const {
        std::vector<Outline> list;
        for (const auto& [name, outline] : obstacles)
            list.push_back(outline);
        const auto corners =
            std::accumulate(list.begin(), list.end(), std::size_t{0},
                            [](std::size_t sum, const Outline& one) { return sum + one.size(); });
        return corners <= mostObstacleCorners ? list : std::vector<Outline>(); // too many: noted
    }

    std::vector<std::pair<Sentence, Outline>> obstacles;
    Pockets pockets;
    Errors& errors;
};

const Stand* findStand(const Draft& draft, const std::string& id) {
    const auto& items = draft.stands.items;
    const auto found =
        std::find_if(items.begin(), items.end(), [&](const auto& item) { return item.value.id == id; });
    return found == items.end() ? nullptr : &found->value;
}

void checkSteps(const Draft& draft, const Item<Stand>& item, Errors& errors) {
    const Stand& stand = item.value;
    const Ids stands(pattern("stand"), draft.stands);
    stands.mustHaveAll(stand.stepTo, pointerTo(item.at, "stepTo"), errors);
    stands.mustHaveAll(stand.onlyFrom, pointerTo(item.at, "onlyFrom"), errors);
    for (std::size_t i = 0; i < stand.stepTo.size(); ++i) {
        if (stand.stepTo[i].empty() || stand.stepTo[i] != stand.id) continue;
        errors.add(pointerTo(pointerTo(item.at, "stepTo"), i), say("This stand steps to itself."),
                   say("Remove it."));
    }
    for (std::size_t i = 0; i < stand.onlyFrom.size(); ++i) {
        const Stand* from = findStand(draft, stand.onlyFrom[i]);
        if (!from || std::find(from->stepTo.begin(), from->stepTo.end(), stand.id) != from->stepTo.end())
            continue;
        errors.add(pointerTo(pointerTo(item.at, "onlyFrom"), i),
                   say("The stand %1 has no step to this one.", inQuotes(from->id)),
                   say("Add %1 to its stepTo, or take it out of here.", inQuotes(stand.id)));
    }
}

/// The ids of all stands that can be reached from the ground. A stand that can't be read counts, so as not to
/// accuse others.
std::set<std::string> reachedStands(const Draft& draft) {
    std::set<std::string> reached;
    for (bool more = true; more;) {
        more = false;
        for (const auto& item : draft.stands.items) {
            const auto isReached = [&](const std::string& id) {
                return reached.contains(id) || !findStand(draft, id);
            };
            const auto& from = item.value.onlyFrom;
            const bool open = from.empty() || std::any_of(from.begin(), from.end(), isReached);
            if (open) more = reached.insert(item.value.id).second || more;
        }
    }
    return reached;
}

std::set<std::string> reachedStates(const DraftSetting& setting) {
    std::set<std::string> reached{setting.initial};
    for (bool more = true; more;) {
        more = false;
        for (const auto& change : setting.changes.items) {
            if (reached.contains(change.value.from)) more = reached.insert(change.value.to).second || more;
        }
    }
    return reached;
}

void checkChange(const Draft& draft, const DraftSetting& setting, const Item<SettingChange>& item,
                 const Expansion& expansion, Errors& errors) {
    const SettingChange& change = item.value;
    const Ids states(pattern("state"), setting.states);
    states.mustHave(change.from, pointerTo(item.at, "from"), errors);
    states.mustHave(change.to, pointerTo(item.at, "to"), errors);
    if (!change.to.empty() && change.from == change.to) {
        errors.add(pointerTo(item.at, "to"), say("This change leads to where it starts."),
                   say("Name another state."));
    }
    Ids(pattern("stand"), draft.stands).mustHaveAll(change.stands, pointerTo(item.at, "stands"), errors);
    if (draft.points.known) (void)resolveAll(expansion, change.needs, pointerTo(item.at, "needs"), errors);
}

void checkSetting(const Draft& draft, const Item<DraftSetting>& item, const Expansion& expansion,
                  Errors& errors) {
    const DraftSetting& setting = item.value;
    Ids(pattern("state"), setting.states).mustHave(setting.initial, pointerTo(item.at, "initial"), errors);
    std::set<std::pair<std::string, std::string>> seen;
    for (const auto& change : setting.changes.items) {
        checkChange(draft, setting, change, expansion, errors);
        if (seen.emplace(change.value.from, change.value.to).second) continue;
        errors.add(change.at, say("There is a change between the same two states already."),
                   say("Merge the two."));
    }
}

/// Notes a state that a point wants and no change leads to.
void checkReached(const Draft& draft, const Expanded& expanded, Errors& errors) {
    for (const auto& [setting, state, where] : expanded.wanted) {
        const DraftSetting* found = findSetting(draft, setting);
        if (!found || !found->changes.known) continue;
        const auto& states = found->states.items;
        const auto isState = [&](const std::string& id) {
            return std::any_of(states.begin(), states.end(),
                               [&](const auto& one) { return one.value.id == id; });
        };
        // States and start that aren't there were noted.
        if (!isState(state) || !isState(found->initial) || reachedStates(*found).contains(state)) continue;
        errors.add(where, say("No change leads to the state %1 of %2.", inQuotes(state), inQuotes(setting)),
                   say("Add a change to it, or don't want it."));
    }
}

bool has(const std::vector<std::string>& list, const std::string& id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

/// What one point does with openings must fit together.
void checkOwnOpenings(const Draft& draft, const Expanded& expanded, Errors& errors) {
    const Point& point = expanded.point;
    const auto at = [&](const char* field, std::size_t i) {
        return pointerTo(pointerTo(expanded.at, field), i);
    };
    for (std::size_t i = 0; i < point.opens.size(); ++i) {
        const std::string& id = point.opens[i];
        const auto& items = draft.openings.items;
        const bool met = std::any_of(items.begin(), items.end(),
                                     [&](const auto& item) { return item.value.id == id && item.value.met; });
        if (met) {
            errors.add(at("opens", i), say("The opening %1 is met open at the start.", inQuotes(id)),
                       say("Don't open it, or take its %1 away.", "\"met\""));
        }
    }
    for (std::size_t i = 0; i < point.closes.size(); ++i) {
        if (point.closes[i].empty() || !has(point.opens, point.closes[i])) continue;
        errors.add(at("closes", i), say("One point opens and closes %1.", inQuotes(point.closes[i])),
                   say("Make it two points, or leave the opening away."));
    }
    for (std::size_t i = 0; i < point.through.size(); ++i) {
        if (point.through[i].empty() || !has(point.opens, point.through[i])) continue;
        errors.add(at("through", i),
                   say("The point looks through %1, which it opens itself.", inQuotes(point.through[i])),
                   say("Take it out of through."));
    }
}

/// `points` of the walk: those by day, or all.
bool checkWalkOpenings(const Draft& draft, const Expansion& expansion, const Item<DraftWalk>& item,
                       const std::set<std::string>& points, bool byDay, Errors& errors) {
    bool good = true;
    for (const auto& opening : draft.openings.items) {
        const std::string& id = opening.value.id;
        const Point* opens = nullptr;
        bool closed = false;
        bool closes = false; // somewhere in the airframe
        for (const Expanded& one : expansion.points) {
            const bool inWalk = points.contains(one.point.id);
            if (inWalk && !opens && has(one.point.opens, id)) opens = &one.point;
            closed = closed || (inWalk && has(one.point.closes, id));
            closes = closes || has(one.point.closes, id);
        }
        if (!opens || closed || !closes || id.empty()) continue;
        good = false;
        errors.add(
            pointerTo(item.at, "points"),
            byDay ? say("This walk opens %1 at %2 and doesn't close it by day.", inQuotes(id),
                        inQuotes(opens->id))
                  : say("This walk opens %1 at %2 and doesn't close it.", inQuotes(id), inQuotes(opens->id)),
            byDay ? say("Let a point close it that isn't for the night only.")
                  : say("Add the point that closes it."));
    }
    return good;
}

/// What a trend counts by is a counter, or days.
void checkTrends(const Draft& draft, Errors& errors) {
    const Ids counters("counter", draft.counters);
    for (const auto& item : draft.points.items) {
        const auto& limit = item.value.point.limit;
        if (!limit || !limit->trend || limit->trend->over.empty() || limit->trend->over == "days") continue;
        counters.mustHave(limit->trend->over, pointerTo(pointerTo(item.at, "limit"), "trend") + "/over",
                          errors);
    }
}

/// The counters of one item exist, each is meant in its own unit, and nothing is said twice.
void checkSpans(const Draft& draft, const List<Span>& spans, Errors& errors) {
    const Ids counters(pattern("counter"), draft.counters);
    std::set<std::string> seen;
    for (const auto& [span, at] : spans.items) {
        const auto* units = std::get_if<Units>(&span);
        const std::string where = pointerTo(at, units ? "counter" : "months");
        const std::string counter = units ? units->counter : std::string();
        const bool given = !units || !counter.empty();
        if (given && !seen.insert(counter).second)
            errors.add(where, say("This item counts by it already."), say("Keep the one that comes first."));
        if (!units) continue;
        counters.mustHave(counter, where, errors);
        for (const auto& item : draft.counters.items) {
            const Counter& meant = item.value;
            if (meant.id != counter || meant.unit == units->unit) continue;
            if (meant.unit.empty() || units->unit.empty()) continue; // noted
            errors.add(pointerTo(at, "unit"),
                       say("The counter %1 counts in %2.", inQuotes(counter), inQuotes(meant.unit)),
                       say("Give the count in that unit."));
        }
    }
}

} // namespace

void checkFigure(const Draft& draft, Errors& errors) {
    for (const auto& part : draft.parts.items)
        checkWhen(draft, part.value.when, part.at, errors);
    std::size_t corners = 0;
    for (const auto& [name, outline] : obstaclesOf(draft))
        corners += outline.size();
    if (corners <= mostObstacleCorners) return;
    errors.add("/figure",
               say("Solid parts and keep-out areas have %1 corners.", figure(std::to_string(corners))),
               say("Use at most %1 in all.", figure(std::to_string(mostObstacleCorners))));
}

void checkStands(const Draft& draft, Errors& errors) {
    const auto reached = reachedStands(draft);
    const FreeGround ground(draft, errors);
    for (const auto& item : draft.stands.items) {
        ground.check(item.value.at, pointerTo(item.at, "at"), item.value.onlyFrom.empty());
        checkSteps(draft, item, errors);
        if (reached.contains(item.value.id)) continue;
        errors.add(pointerTo(item.at, "onlyFrom"), say("No way leads from the ground to this stand."),
                   say("Let it be reached from a stand that is reached itself, or leave onlyFrom out."));
    }
}

void checkSettings(const Draft& draft, const Expansion& expansion, Errors& errors) {
    for (const auto& item : draft.settings.items)
        checkSetting(draft, item, expansion, errors);
    for (const auto& repeat : draft.repeats.items) {
        for (const auto& member : repeat.value.over.items)
            checkWhen(draft, member.value.when, member.at, errors);
    }
    for (const Expanded& expanded : expansion.points) {
        for (const auto& [setting, state, where] : expanded.wanted)
            checkState(draft, setting, state, where, errors);
        checkReached(draft, expanded, errors);
    }
}

void checkPoints(const Draft& draft, const Expansion& expansion, Errors& errors) {
    const Ids zones(pattern("zone"), draft.zones);
    const Ids stands(pattern("stand"), draft.stands);
    const Ids openings(pattern("opening"), draft.openings);
    for (const auto& [point, at, wanted] : expansion.points) {
        zones.mustHave(point.zone, pointerTo(at, "zone"), errors);
        stands.mustHaveAll(point.stands, pointerTo(at, "stands"), errors);
        openings.mustHaveAll(point.through, pointerTo(at, "through"), errors);
        openings.mustHaveAll(point.opens, pointerTo(at, "opens"), errors);
        openings.mustHaveAll(point.closes, pointerTo(at, "closes"), errors);
    }
}

void checkOpenings(const Draft& draft, const Expansion& expansion, Errors& errors) {
    for (const Expanded& expanded : expansion.points)
        checkOwnOpenings(draft, expanded, errors);
    if (!draft.points.known || !expansion.complete) return;
    for (const auto& [opening, at] : draft.openings.items) {
        bool opened = opening.met;
        bool closed = false;
        for (const auto& expanded : expansion.points) {
            opened = opened || has(expanded.point.opens, opening.id);
            closed = closed || has(expanded.point.closes, opening.id);
        }
        if (opening.id.empty()) continue;
        if (!opened)
            errors.add(at, say("No point opens this."), say("Let one open it, or say that it is met open."));
        if (!closed) errors.add(at, say("No point closes this."), say("Let one close it."));
    }
}

void checkWalks(const Draft& draft, const Expansion& expansion, Errors& errors) {
    const FreeGround ground(draft, errors);
    for (const auto& item : draft.walks.items) {
        const auto& [walk, all, hasEnd] = item.value;
        ground.check(walk.start, pointerTo(item.at, "start"), true);
        if (hasEnd) ground.check(walk.end, pointerTo(item.at, "end"), true);
        if (!draft.points.known) continue;
        std::set<std::string> points, byDay;
        if (!all)
            for (const std::string& id :
                 resolveAll(expansion, walk.points, pointerTo(item.at, "points"), errors))
                points.insert(id);
        for (const Expanded& one : expansion.points) {
            if (all) points.insert(one.point.id);
            if (!one.point.night && points.contains(one.point.id)) byDay.insert(one.point.id);
        }
        if (!expansion.complete) continue;
        const bool good = all || checkWalkOpenings(draft, expansion, item, points, false, errors);
        if (good && byDay != points) checkWalkOpenings(draft, expansion, item, byDay, true, errors);
    }
}

void checkDue(const Draft& draft, Errors& errors) {
    checkTrends(draft, errors);
    for (const auto& item : draft.inspections.items)
        checkSpans(draft, item.value.spans, errors);
    for (const auto& item : draft.lifeLimits.items)
        checkSpans(draft, item.value.spans, errors);
}

} // namespace ambit::airframe
