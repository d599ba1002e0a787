#include "cli/plan_svg.hpp"

#include "cli/plan_sheet.hpp"
#include "cli/svg.hpp"
#include "walk/ways.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace ambit::cli {

namespace {

using airframe::Outline;
using airframe::Place;
using airframe::Stand;
using svg::number;

struct Leg {
    std::vector<Place> places;
    bool across = false; ///< from one raised stand to another, not on foot
};

struct Change {
    std::string letter;
    std::string words;
    Place at;
};

/// What is drawn of a plan.
struct Tour {
    std::vector<Leg> legs;
    std::map<std::string, std::vector<int>> visits; ///< stand → the numbers of its visits
    std::vector<std::string> order;                 ///< stands as they are first visited
    std::vector<Change> changes;
};

bool contains(const std::vector<std::string>& list, const std::string& id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

/// a, b, … z, aa, ab, …
std::string letterOf(std::size_t index) {
    std::string letters(1, static_cast<char>('a' + index % 26));
    return index < 26 ? letters : letterOf(index / 26 - 1) + letters;
}

std::string join(const std::vector<int>& numbers) {
    std::string text;
    for (const int one : numbers)
        text += (text.empty() ? "" : ", ") + std::to_string(one);
    return text;
}

std::string counted(int count, const char* one) {
    return std::to_string(count) + ' ' + one + (count == 1 ? "" : "s");
}

class Walker {
public:
    Walker(const airframe::Airframe& machine, const airframe::Walk& aWalk, const walk::Situation& now)
        : airframe(machine), walk(aWalk), ground(machine, now.marked),
          stand(now.stand ? machine.stand(*now.stand) : nullptr), place(stand ? stand->at : aWalk.start) {}

    Tour follow(const walk::Plan& plan) {
        for (const walk::Step& step : plan.steps) {
            if (const auto* go = std::get_if<walk::Go>(&step)) visit(airframe.stand(go->stand));
            if (const auto* set = std::get_if<walk::Set>(&step)) change(*set);
        }
        if (!plan.steps.empty()) onFoot(walk.end);
        return std::move(tour);
    }

private:
    void onFoot(Place to) {
        if (const auto way = ground.way(place, to)) tour.legs.push_back({way->places, false});
        place = to;
    }

    void visit(const Stand* next) {
        if (next == nullptr) return;
        if (stand && stand->raised() && next->raised() && contains(stand->stepTo, next->id)) {
            tour.legs.push_back({{place, next->at}, true});
            place = next->at;
        } else {
            onFoot(next->at);
        }
        stand = next;
        auto& numbers = tour.visits[next->id];
        if (numbers.empty()) tour.order.push_back(next->id);
        numbers.push_back(++count);
    }

    void change(const walk::Set& set) {
        const auto* setting = airframe.setting(set.setting);
        const auto* state = setting ? setting->state(set.to) : nullptr;
        if (state == nullptr) return;
        const std::string letter = letterOf(tour.changes.size());
        const std::string where = count > 0 ? " at " + std::to_string(count) : "";
        tour.changes.push_back({letter, letter + where + ": " + setting->name + ": " + state->name, place});
    }

    const airframe::Airframe& airframe;
    const airframe::Walk& walk;
    walk::Ground ground;
    const Stand* stand;
    Place place;
    int count = 0;
    Tour tour;
};

std::vector<std::string> legendOf(const airframe::Airframe& airframe, const airframe::Walk& walk,
                                  const walk::Plan& plan, const Tour& tour, bool hasMarked) {
    const walk::Cost& cost = plan.cost;
    std::string costs = number(cost.metres, 0) + " m on foot, ";
    costs.append(counted(cost.climbs, "climb")).append(", ").append(counted(cost.turns, "turn"));
    costs.append(", about ").append(number(std::ceil(cost.seconds / 60), 0)).append(" min");
    std::vector<std::string> texts{airframe.name + ": " + walk.name, costs};
    for (const std::string& id : tour.order) {
        const Stand& stand = *airframe.stand(id);
        const bool plain = stand.access == airframe::Access::ground;
        texts.push_back(join(tour.visits.at(id)) + "  " + stand.name +
                        (plain ? "" : std::string(" (") + toText(stand.access) + ")"));
    }
    for (const Change& change : tour.changes)
        texts.push_back(change.words);
    for (const auto& [point, why] : plan.unreachable)
        texts.push_back(std::string("Not reached: ").append(point).append(": ").append(why));
    texts.push_back(
        std::string("Round: on the ground; heavy foot: kneeling; square: raised; diamond: a setting is "
                    "changed; hatched: keep out") +
        (hasMarked ? "; dotted: marked as in the way" : "") + "; dashed way: across, without stepping down.");
    std::vector<std::string> lines;
    for (const std::string& text : texts)
        for (std::string& line : svg::wrapped(text, Sheet::lettersALine))
            lines.push_back(std::move(line));
    return lines;
}

/// What is marked doesn't count: a wall may be long.
Bounds boundsOf(const airframe::Airframe& airframe, const airframe::Walk& walk, const walk::Situation& now,
                const Tour& tour) {
    Bounds bounds;
    for (const auto& part : airframe.parts)
        if (airframe::holds(part.when, now.settings)) bounds.take(part.outline);
    for (const auto& area : airframe.keepOut)
        bounds.take(area.outline);
    for (const Stand& stand : airframe.stands)
        bounds.take(stand.at);
    for (const Leg& leg : tour.legs)
        bounds.take(leg.places);
    bounds.take(walk.start);
    bounds.take(walk.end);
    return bounds;
}

void drawMachine(Sheet& sheet, const airframe::Airframe& airframe, const walk::Situation& now) {
    for (const Outline& outline : now.marked)
        sheet.area(outline, "url(#dots)", 0.5);
    for (const auto& area : airframe.keepOut)
        sheet.area(area.outline, "url(#hatch)", 0.3, true);
    for (const auto& part : airframe.parts) {
        if (!airframe::holds(part.when, now.settings)) continue;
        const bool turns =
            part.kind == airframe::PartKind::rotor || part.kind == airframe::PartKind::propeller;
        sheet.area(part.outline, turns ? "none" : "white", part.solid ? 0.4 : 0.25);
    }
}

Tag tagOf(const Stand& stand) {
    if (stand.raised()) return Tag::square;
    return stand.access == airframe::Access::kneel ? Tag::kneeling : Tag::round;
}

void drawTags(Sheet& sheet, const airframe::Airframe& airframe, const airframe::Walk& walk,
              const walk::Situation& now, const Tour& tour) {
    for (const Stand& stand : airframe.stands)
        if (!tour.visits.contains(stand.id)) sheet.dot(stand.at, 0.8, "white");
    for (const std::string& id : tour.order) {
        const Stand& stand = *airframe.stand(id);
        sheet.tag(stand.at, join(tour.visits.at(id)), tagOf(stand));
    }
    for (const Change& change : tour.changes)
        sheet.tag(change.at, change.letter, Tag::diamond);
    const Stand* here = now.stand ? airframe.stand(*now.stand) : nullptr;
    const Place start = here ? here->at : walk.start;
    sheet.tag(start, here ? "here" : start == walk.end ? "start, end" : "start", Tag::bare);
    if (here || start != walk.end) sheet.tag(walk.end, "end", Tag::bare);
}

} // namespace

std::string planSvg(const airframe::Airframe& airframe, const std::string& walkId, const walk::Situation& now,
                    const walk::Plan& plan) {
    const airframe::Walk& walk = *airframe.walk(walkId);
    const Tour tour = Walker(airframe, walk, now).follow(plan);
    const auto legend = legendOf(airframe, walk, plan, tour, !now.marked.empty());
    Sheet sheet(airframe.name + ": " + walk.name, boundsOf(airframe, walk, now, tour), legend.size());
    sheet.beginFigure();
    drawMachine(sheet, airframe, now);
    for (const Leg& leg : tour.legs)
        sheet.line(leg.places, 0.5, leg.across);
    for (const Leg& leg : tour.legs)
        sheet.arrow(leg.places);
    drawTags(sheet, airframe, walk, now, tour);
    sheet.endFigure();
    sheet.legend(legend);
    return sheet.close();
}

} // namespace ambit::cli
