// A test machine and rounds on it.
#pragma once

#include "airframe/read.hpp"
#include "base/canonical.hpp"
#include "round/order.hpp"
#include "round/rules.hpp"

#include <QtGlobal>
#include <nlohmann/json.hpp>

namespace ambit::test {

inline airframe::Airframe machine() {
    auto read = airframe::readFrom(AMBIT_ROOT "/tests/airframe/good.json");
    if (!read) qFatal("%s", toText(read.error().front()).c_str());
    return std::move(*read);
}

inline round::Opened opening(const airframe::Airframe& airframe, const std::string& walk = "daily") {
    round::Opened opened;
    opened.registration = "OX-ABC";
    opened.serial = "0042";
    opened.airframe = airframe.id;
    opened.airframeSha256 = airframe.sha256;
    opened.walk = walk;
    opened.who = {"Robin Example", "pilot", "PPL 123"};
    opened.counters = {{"hours", "1234.5"}, {"landings", "77"}};
    opened.offsetMinutes = 120;
    opened.position = round::Position{"47.5", "-122.25"};
    opened.plan = round::firstPlan(airframe, walk).value();
    return opened;
}

inline round::Settled sound(const std::string& point) {
    round::Settled settled;
    settled.point = point;
    if (point == "oil") settled.value = "5";
    return settled;
}

inline round::Settled finding(const std::string& point, round::Severity severity = round::Severity::grounds) {
    round::Settled settled = sound(point);
    settled.outcome = round::Outcome::finding;
    settled.words = "Cracked.";
    settled.severity = severity;
    return settled;
}

inline round::Settled notInspected(const std::string& point, const std::string& basis = {}) {
    round::Settled settled;
    settled.point = point;
    settled.outcome = round::Outcome::notInspected;
    settled.why = "Ice on the tread.";
    settled.basis = basis;
    return settled;
}

/// A box with its lower left and upper right corner; metres.
inline round::AreaMarked area(std::int64_t number, double left, double low, double right, double high,
                              const std::string& why = "Wall") {
    round::AreaMarked marked{number, {}, why};
    for (const airframe::Place place :
         {airframe::Place{left, low}, {right, low}, {right, high}, {left, high}})
        marked.outline.push_back(round::cornerAt(place));
    return marked;
}

/// As somebody who follows the round would say it; unsigned, since core/round doesn't look at that.
inline round::Asked ask(std::int64_t number, const std::string& roundId, round::Statement::Kind kind,
                        const std::string& point, const std::string& words) {
    std::string id(32, 'a');
    id.replace(0, std::to_string(number).size(), std::to_string(number));
    return {number,
            {roundId, id, kind, point, words, {1750000000500}, {"Ines Example", "instructor", "FI 7"}},
            {"header", "signature"}};
}

/// A round in memory; time goes on by a second an event.
class Round {
public:
    explicit Round(const airframe::Airframe& its, const std::string& walk = "daily")
        : airframe(&its), events{{1, {1750000000000}, opening(its, walk)}},
          state(round::begin(its, events.front()).value()) {}

    Result<void> act(round::What what) {
        round::Event event{state.lastSeq + 1, {state.lastAt.ms + 1000}, std::move(what)};
        auto done = round::apply(state, *airframe, event);
        if (done) events.push_back(std::move(event));
        return done;
    }

    /// Does the next step of the plan, settling sound; false at its end.
    bool step() {
        const auto next = round::nextStep(state, *airframe);
        if (!next) return false;
        Result<void> done;
        if (const auto* go = std::get_if<walk::Go>(&*next)) done = act(round::StandReached{go->stand});
        if (const auto* set = std::get_if<walk::Set>(&*next))
            done = act(round::SettingChanged{set->setting, set->to});
        if (const auto* settle = std::get_if<walk::Settle>(&*next)) done = act(sound(settle->point));
        if (!done) qFatal("%s", toText(done.error()).c_str());
        return true;
    }
    /// Follows the plan up to but not including this point.
    void until(const std::string& point) {
        for (;;) {
            const auto next = round::nextStep(state, *airframe);
            if (!next) qFatal("the plan ends before %s", point.c_str());
            if (*next == walk::Step{walk::Settle{point}}) return;
            step();
        }
    }
    void toTheEnd() {
        while (step()) {
        }
    }

    const airframe::Airframe* airframe;
    std::vector<round::Event> events;
    round::State state;
};

/// All of a state as text, for comparing.
inline std::string described(const round::State& state) {
    Json json{{"id", state.id},
              {"opened", toJson(round::Event{1, state.openedAt, state.opened})},
              {"last", {state.lastSeq, state.lastAt.ms}},
              {"phase", static_cast<int>(state.phase)},
              {"stand", state.stand.value_or("-")},
              {"stands", state.standsReached},
              {"settings", state.settings},
              {"plan", toJson(round::Event{1, {}, round::Planned{"", state.plan}})},
              {"paused", {state.pausedMs, state.pausedSince ? state.pausedSince->ms : -1}}};
    for (const auto& [id, point] : state.points) {
        Json& its = json["points"][id] = {{"settled", point.settled},
                                          {"why", point.reopenedWhy},
                                          {"again", point.reopened},
                                          {"asked", point.asked}};
        for (const auto& one : point.settlings)
            its["settlings"].push_back(
                {toJson(round::Event{one.seq, one.at, one.what}), one.stand, one.settings, one.fromPortion});
    }
    for (const auto& [id, opening] : state.openings)
        json["openings"][id] = {opening.owed, opening.ever, opening.since ? opening.since->ms : -1,
                                opening.closedAt ? opening.closedAt->ms : -1};
    for (const auto& [id, blocked] : state.blocked)
        json["blocked"][id] = {blocked.why, blocked.since.ms};
    for (const auto& [number, area] : state.marked) {
        Json& its = json["marked"][std::to_string(number)] = {area.why, area.since.ms};
        for (const auto& corner : area.outline)
            its.push_back({round::cornerAt(corner).x, round::cornerAt(corner).y});
    }
    for (const auto& one : state.asks)
        json["asks"].push_back({toJson(one.what), one.at.ms, static_cast<int>(one.became),
                                one.until ? one.until->ms : -1, one.words});
    json["differs"] = {state.areasEver, state.lightLow, state.night};
    json["seqs"] = {state.standSeq, state.touchedSeq};
    if (state.portion) json["portion"] = {state.portion->points, state.portion->running};
    for (const auto& one : state.interruptions)
        json["interruptions"].push_back(toJson(round::Event{1, one.at, one.what}));
    if (state.quickRun) json["quickRun"] = toJson(round::Event{1, {}, *state.quickRun});
    if (state.clockAheadMs) json["clock"] = *state.clockAheadMs;
    if (state.conclusion) json["conclusion"] = toJson(round::Event{1, {}, *state.conclusion});
    if (state.signature) json["signature"] = toJson(round::Event{1, {}, *state.signature});
    return canonicalJson(json);
}

} // namespace ambit::test
