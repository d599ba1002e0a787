// The fold. What may happen is asked in rules.cpp; here only what it does.
#include "round/state.hpp"

#include "round/rules.hpp"

#include <algorithm>

namespace ambit::round {

namespace {

using airframe::Airframe;

bool contains(const std::vector<std::string>& list, const std::string& id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

/// A met opening belongs to this walk if a point of it closes it.
bool closedInWalk(const Airframe& airframe, const airframe::Walk& walk, const std::string& opening) {
    return std::any_of(walk.points.begin(), walk.points.end(), [&](const std::string& id) {
        const airframe::Point* point = airframe.point(id);
        return point != nullptr && contains(point->closes, opening);
    });
}

void open(OpeningState& opening, Instant at) {
    if (opening.owed) return;
    opening.owed = opening.ever = true;
    opening.since = at;
    opening.closedAt.reset();
}

void close(OpeningState& opening, Instant at) {
    if (!opening.owed) return;
    opening.owed = false;
    opening.closedAt = at;
}

Ask& askOf(State& state, std::int64_t number) {
    return state.asks[static_cast<std::size_t>(number) - 1]; // the rules know it is there
}

void end(Ask& ask, Ask::Became became, Instant at, const std::string& words) {
    ask.became = became;
    ask.until = at;
    ask.words = words;
}

void enact(State& /*state*/, const Airframe& /*airframe*/, const Opened& /*first*/, Instant /*at*/) {}

void enact(State& state, const Airframe& /*airframe*/, const Planned& planned, Instant /*at*/) {
    state.plan = planned.plan;
}

void enact(State& state, const Airframe& /*airframe*/, const StandReached& reached, Instant /*at*/) {
    state.stand = reached.stand;
    state.standsReached.push_back(reached.stand);
    state.standSeq = state.lastSeq + 1;
    state.portion.reset();
}

void enact(State& state, const Airframe& /*airframe*/, const SettingChanged& changed, Instant /*at*/) {
    state.settings[changed.setting] = changed.to;
    state.touchedSeq = state.lastSeq + 1;
    state.portion.reset();
}

void enact(State& state, const Airframe& airframe, const Settled& settled, Instant at) {
    PointState& point = state.points[settled.point];
    const bool fromPortion = settled.outcome != Outcome::notInspected && state.portion &&
                             contains(state.portion->points, settled.point);
    point.settlings.push_back(
        {settled, at, state.stand.value_or(""), state.settings, state.lastSeq + 1, fromPortion});
    point.settled = true;
    point.reopened = false;
    point.trend.reset();
    for (const std::int64_t number : point.asked) // whatever was seen, it was looked at again, or can't be
        end(askOf(state, number), Ask::Became::settled, at, {});
    point.asked.clear();
    const airframe::Point& described = *airframe.point(settled.point);
    if (!described.lastLook && settled.outcome != Outcome::notInspected) state.touchedSeq = state.lastSeq + 1;
    // Looked at, it was opened, whatever was found; only sound puts something right.
    if (settled.outcome != Outcome::notInspected) {
        for (const std::string& id : described.opens)
            open(state.openings[id], at);
    }
    if (settled.outcome == Outcome::sound) {
        for (const std::string& id : described.closes)
            close(state.openings[id], at);
    }
}

void enact(State& state, const Airframe& /*airframe*/, const Reopened& reopened, Instant /*at*/) {
    PointState& point = state.points[reopened.point];
    point.settled = false;
    point.reopened = true;
    point.reopenedWhy = reopened.why;
}

void enact(State& state, const Airframe& /*airframe*/, const Asked& asked, Instant at) {
    const Statement& said = asked.statement;
    Ask& ask = state.asks.emplace_back(Ask{said, at, Ask::Became::open, {}, {}});
    if (said.kind == Statement::Kind::remark) ask.became = Ask::Became::told;
    if (said.kind != Statement::Kind::lookAgain) return;
    PointState& point = state.points[said.point];
    point.asked.push_back(asked.ask);
    point.settled = false;
}

void enact(State& state, const Airframe& /*airframe*/, const Answered& answered, Instant at) {
    end(askOf(state, answered.ask), Ask::Became::answered, at, answered.words);
}

void enact(State& state, const Airframe& /*airframe*/, const Declined& declined, Instant at) {
    Ask& ask = askOf(state, declined.ask);
    end(ask, Ask::Became::declined, at, declined.why);
    if (ask.what.kind != Statement::Kind::lookAgain) return;
    PointState& point = state.points[ask.what.point];
    std::erase(point.asked, declined.ask);
    // Nothing else asks for it: what it was settled as before counts again.
    point.settled = point.asked.empty() && !point.reopened && !point.settlings.empty();
}

void enact(State& state, const Airframe& /*airframe*/, const OpeningMade& made, Instant at) {
    open(state.openings[made.opening], at);
    state.touchedSeq = state.lastSeq + 1;
}

void enact(State& state, const Airframe& /*airframe*/, const OpeningClosed& closed, Instant at) {
    close(state.openings[closed.opening], at);
    state.touchedSeq = state.lastSeq + 1;
}

void enact(State& state, const Airframe& /*airframe*/, const Paused& /*what*/, Instant at) {
    state.phase = Phase::paused;
    state.pausedSince = at;
}

void enact(State& state, const Airframe& /*airframe*/, const Resumed& /*what*/, Instant at) {
    state.phase = Phase::walking;
    state.pausedMs +=
        std::max<std::int64_t>(0, at.ms - state.pausedSince->ms); // a clock set back took no time
    state.pausedSince.reset();
}

void enact(State& /*state*/, const Airframe& /*airframe*/, const Note& /*what*/, Instant /*at*/) {}

void enact(State& state, const Airframe& /*airframe*/, const StandBlocked& blocked, Instant at) {
    state.blocked[blocked.stand] = {blocked.why, at};
}

void enact(State& state, const Airframe& /*airframe*/, const StandFree& usable, Instant /*at*/) {
    state.blocked.erase(usable.stand);
}

void enact(State& state, const Airframe& /*airframe*/, const AreaMarked& marked, Instant at) {
    state.marked[marked.area] = {outlineOf(marked.outline), marked.why, at};
    state.areasEver = marked.area;
}

void enact(State& state, const Airframe& /*airframe*/, const AreaCleared& cleared, Instant /*at*/) {
    state.marked.erase(cleared.area);
}

void enact(State& state, const Airframe& /*airframe*/, const Light& light, Instant /*at*/) {
    state.lightLow = light.low;
}

void enact(State& state, const Airframe& /*airframe*/, const Alone& /*what*/, Instant /*at*/) {
    state.alone = true;
}

void enact(State& state, const Airframe& /*airframe*/, const PortionBegun& begun, Instant at) {
    state.portion = Portion{begun.points, true, at};
}

void enact(State& state, const Airframe& /*airframe*/, const PortionEnded& ended, Instant /*at*/) {
    state.portion->running = false;
    if (!ended.looked) state.portion.reset();
}

/// By a rule, not for a reason of one point.
void reopen(State& state, const std::vector<std::string>& points) {
    for (const std::string& id : points) {
        PointState& point = state.points[id];
        point.settled = false;
        point.reopened = true;
        point.reopenedWhy.clear();
    }
}

void enact(State& state, const Airframe& /*airframe*/, const Interrupted& interrupted, Instant at) {
    state.interruptions.push_back({interrupted, at});
    state.portion.reset(); // what was kept in mind is read again
    reopen(state, interrupted.again);
}

void enact(State& state, const Airframe& /*airframe*/, const QuickRun& run, Instant /*at*/) {
    state.quickRun = run;
    reopen(state, run.again);
}

void enact(State& state, const Airframe& /*airframe*/, const Clock& clock, Instant at) {
    state.clockAheadMs = at.ms - clock.satellite.ms;
}

void enact(State& state, const Airframe& airframe, const Night& night, Instant /*at*/) {
    state.night = night.expected;
    for (const std::string& id : airframe.walk(state.opened.walk)->night) {
        if (night.expected)
            state.points[id];
        else if (const auto point = state.points.find(id); point != state.points.end() &&
                                                           point->second.settlings.empty() &&
                                                           point->second.asked.empty())
            state.points.erase(point);
    }
}

void enact(State& state, const Airframe& /*airframe*/, const Trended& trended, Instant /*at*/) {
    state.points[trended.point].trend = trended;
}

void enact(State& state, const Airframe& /*airframe*/, const Concluded& concluded, Instant /*at*/) {
    state.phase = Phase::concluded;
    state.conclusion = concluded;
}

void enact(State& state, const Airframe& /*airframe*/, const Withdrawn& /*what*/, Instant /*at*/) {
    state.phase = Phase::walking;
    state.conclusion.reset();
}

void enact(State& state, const Airframe& /*airframe*/, const Signed& signature, Instant /*at*/) {
    state.phase = Phase::sealed;
    state.signature = signature;
}

/// What the opening event must agree with in the airframe.
Result<void> checkOpened(const Airframe& airframe, const Opened& opened) {
    if (opened.airframe != airframe.id || opened.airframeSha256 != airframe.sha256) {
        return fail(ErrorCode::conflict, say("This round was opened with another airframe description."),
                    opened.airframeSha256, say("Use the description it was opened with."));
    }
    if (airframe.walk(opened.walk) == nullptr)
        return fail(ErrorCode::notFound, say("The airframe has no such walk."), opened.walk);
    std::set<std::string> seen;
    for (const CounterReading& reading : opened.counters) {
        if (airframe.counter(reading.id) == nullptr)
            return fail(ErrorCode::notFound, say("The airframe has no such counter."), reading.id);
        if (!seen.insert(reading.id).second)
            return fail(ErrorCode::refused, say("This counter is read twice."), reading.id);
        const auto value = Decimal::parse(reading.value);
        if (!value || *value < Decimal())
            return fail(ErrorCode::refused, say("A counter reads zero or more, in digits."), reading.id);
    }
    return checkPlan(airframe, opened.walk, opened.plan);
}

} // namespace

std::optional<Outcome> PointState::outcome() const {
    if (!settled) return std::nullopt;
    return last()->what.outcome;
}

int State::settledCount() const {
    return static_cast<int>(
        std::count_if(points.begin(), points.end(), [](const auto& point) { return point.second.settled; }));
}

int State::findingCount() const {
    return static_cast<int>(std::count_if(points.begin(), points.end(), [](const auto& point) {
        return point.second.outcome() == Outcome::finding;
    }));
}

int State::openAskCount() const {
    return static_cast<int>(
        std::count_if(asks.begin(), asks.end(), [](const Ask& ask) { return ask.isOpen(); }));
}

const Ask* State::ask(std::int64_t number) const {
    if (number < 1 || number > static_cast<std::int64_t>(asks.size())) return nullptr;
    return &asks[static_cast<std::size_t>(number) - 1];
}

std::vector<std::string> State::owed() const {
    std::vector<std::string> ids;
    for (const auto& opening : openings)
        if (opening.second.owed) ids.push_back(opening.first);
    return ids;
}

Result<State> begin(const Airframe& airframe, const Event& first) {
    const auto* opened = std::get_if<Opened>(&first.what);
    if (opened == nullptr || first.seq != 1) {
        return fail(ErrorCode::invalid, say("A round begins with the event “opened”, number 1."),
                    "event " + std::to_string(first.seq));
    }
    if (auto checked = checkOpened(airframe, *opened); !checked) return tl::unexpected(checked.error());
    State state;
    state.id = roundId(first);
    state.opened = *opened;
    state.openedAt = state.lastAt = first.at;
    state.lastSeq = 1;
    state.settings = airframe.initialSettings();
    state.plan = opened->plan;
    const airframe::Walk& walk = *airframe.walk(opened->walk);
    for (const std::string& point : walk.points)
        state.points[point];
    for (const airframe::Opening& opening : airframe.openings) {
        OpeningState& its = state.openings[opening.id];
        if (opening.met && closedInWalk(airframe, walk, opening.id)) open(its, first.at);
    }
    return state;
}

Result<void> apply(State& state, const Airframe& airframe, const Event& event) {
    if (event.seq != state.lastSeq + 1) {
        return fail(ErrorCode::conflict,
                    say("The events' numbers don't follow each other: %1 is expected.",
                        figure(std::to_string(state.lastSeq + 1))),
                    "event " + std::to_string(event.seq));
    }
    if (auto may = allowed(state, airframe, event.what); !may) return may;
    std::visit([&](const auto& what) { enact(state, airframe, what, event.at); }, event.what);
    state.lastSeq = event.seq;
    state.lastAt = event.at;
    return {};
}

Result<State> fold(const Airframe& airframe, const std::vector<Event>& events) {
    if (events.empty()) return fail(ErrorCode::invalid, say("This round has no events."));
    auto state = begin(airframe, events.front());
    for (std::size_t i = 1; state && i < events.size(); ++i) {
        auto applied = apply(*state, airframe, events[i]);
        if (applied) continue;
        Error error = applied.error();
        const std::string where = "event " + std::to_string(events[i].seq);
        if (error.where != where) error.where = where + (error.where.empty() ? "" : ", " + error.where);
        return tl::unexpected(error);
    }
    return state;
}

walk::Situation situation(const State& state, const Airframe& /*airframe*/) {
    walk::Situation now;
    now.stand = state.stand;
    now.settings = state.settings;
    for (const auto& [id, point] : state.points) {
        if (point.settled) now.settled.insert(id);
        if (point.outcome() == Outcome::sound) now.soundPoints.insert(id);
    }
    for (const auto& one : state.blocked)
        now.blocked.insert(one.first);
    for (const auto& one : state.marked)
        now.marked.push_back(one.second.outline);
    now.lightGoes = state.lightLow;
    now.night = state.night;
    return now;
}

} // namespace ambit::round
