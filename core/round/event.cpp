#include "round/event.hpp"

#include "base/canonical.hpp"
#include "base/decimal.hpp"
#include "base/hash.hpp"
#include "judge/limit.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <nlohmann/json.hpp>

namespace ambit::round {

namespace {

template<class... Cases> struct Overloaded : Cases... { using Cases::operator()...; };
template<class... Cases> Overloaded(Cases...) -> Overloaded<Cases...>; // clang 14 needs it

Json toJson(const walk::Step& step) {
    return std::visit(Overloaded{
                          [](const walk::Go& go) {
                              return Json{{"go", go.stand}};
                          },
                          [](const walk::Set& set) {
                              return Json{{"set", set.setting}, {"to", set.to}};
                          },
                          [](const walk::Settle& settle) {
                              return Json{{"settle", settle.point}};
                          },
                      },
                      step);
}

Json toJson(const std::vector<walk::Step>& plan) {
    Json list = Json::array();
    for (const walk::Step& step : plan)
        list.push_back(toJson(step));
    return list;
}

Json toJson(const Person& who) {
    return {{"name", who.name}, {"role", who.role}, {"certificate", who.certificate}};
}

void write(Json& json, const Opened& opened) {
    json["aircraft"] = {{"registration", opened.registration}, {"serial", opened.serial}};
    json["airframe"] = {{"id", opened.airframe}, {"sha256", opened.airframeSha256}};
    json["walk"] = opened.walk;
    json["who"] = toJson(opened.who);
    Json& counters = json["counters"] = Json::array();
    for (const CounterReading& reading : opened.counters)
        counters.push_back({{"id", reading.id}, {"value", reading.value}});
    json["offsetMinutes"] = opened.offsetMinutes;
    if (opened.position) {
        json["position"] = {{"latitude", opened.position->latitude},
                            {"longitude", opened.position->longitude}};
    }
    json["plan"] = toJson(opened.plan);
}

void write(Json& json, const Planned& planned) {
    json["why"] = planned.why;
    json["plan"] = toJson(planned.plan);
}

void write(Json& json, const StandReached& reached) {
    json["stand"] = reached.stand;
}

void write(Json& json, const SettingChanged& changed) {
    json["setting"] = changed.setting;
    json["to"] = changed.to;
}

void write(Json& json, const Settled& settled) {
    json["point"] = settled.point;
    json["outcome"] = toText(settled.outcome);
    if (settled.by == By::key) json["by"] = "key";
    if (settled.value) json["value"] = *settled.value;
    if (const std::string from = fromOf(settled); !from.empty()) json["valueFrom"] = from;
    if (!settled.uncertainty.empty()) json["uncertainty"] = settled.uncertainty;
    if (!settled.unit.empty()) json["unit"] = settled.unit;
    if (settled.renewed) json["renewed"] = true;
    if (settled.outcome == Outcome::finding) {
        json["words"] = settled.words;
        json["class"] = airframe::toText(settled.severity);
    }
    if (settled.outcome == Outcome::finding || !settled.photos.empty()) {
        Json& photos = json["photos"] = Json::array();
        for (const Photo& photo : settled.photos)
            photos.push_back({{"sha256", photo.sha256}, {"type", photo.type}, {"bytes", photo.bytes}});
    }
    if (!settled.measurements.empty()) {
        Json& measurements = json["measurements"] = Json::array();
        for (const Measurement& one : settled.measurements)
            measurements.push_back(toJson(one));
    }
    if (settled.outcome == Outcome::notInspected) {
        json["why"] = settled.why;
        if (!settled.basis.empty()) json["basis"] = settled.basis;
    }
}

void write(Json& json, const Reopened& reopened) {
    json["point"] = reopened.point;
    json["why"] = reopened.why;
}

void write(Json& json, const OpeningMade& made) {
    json["opening"] = made.opening;
}

void write(Json& json, const OpeningClosed& closed) {
    json["opening"] = closed.opening;
}

void write(Json& /*json*/, const Paused& /*nothing more*/) {}
void write(Json& /*json*/, const Resumed& /*nothing more*/) {}

void write(Json& /*json*/, const Alone& /*nothing more*/) {}

void write(Json& json, const Note& note) {
    json["words"] = note.words;
}

void write(Json& json, const StandBlocked& blocked) {
    json["stand"] = blocked.stand;
    json["why"] = blocked.why;
}

void write(Json& json, const StandFree& usable) {
    json["stand"] = usable.stand;
}

void write(Json& json, const AreaMarked& marked) {
    json["area"] = marked.area;
    Json& outline = json["outline"] = Json::array();
    for (const Corner& corner : marked.outline)
        outline.push_back(Json::array({corner.x, corner.y}));
    json["why"] = marked.why;
}

void write(Json& json, const AreaCleared& cleared) {
    json["area"] = cleared.area;
}

void write(Json& json, const Light& light) {
    json["is"] = light.low ? "low" : "good";
}

void write(Json& json, const Concluded& concluded) {
    json["result"] = concluded.fit ? "fit" : "not fit";
    if (!concluded.reasons.empty()) json["reasons"] = concluded.reasons;
}

void write(Json& json, const Withdrawn& withdrawn) {
    json["why"] = withdrawn.why;
}

void write(Json& json, const Signed& signature) {
    json["recordSha256"] = signature.recordSha256;
    json["certificateSha256"] = signature.certificateSha256;
    json["name"] = signature.name;
}

void write(Json& json, const Asked& asked) {
    json["ask"] = asked.ask;
    json["statement"] = round::toJson(asked.statement);
    json["jws"] = {{"protected", asked.jws.header}, {"signature", asked.jws.signature}};
}

void write(Json& json, const Answered& answered) {
    json["ask"] = answered.ask;
    json["words"] = answered.words;
}

void write(Json& json, const Declined& declined) {
    json["ask"] = declined.ask;
    json["why"] = declined.why;
}

void write(Json& json, const PortionBegun& portion) {
    json["points"] = portion.points;
}

void write(Json& json, const PortionEnded& portion) {
    json["is"] = portion.looked ? "looked at" : "given up";
}

void write(Json& json, const Interrupted& interrupted) {
    json["cause"] = toText(interrupted.cause);
    json["seconds"] = interrupted.seconds;
    json["rule"] = toText(interrupted.rule.from);
    if (interrupted.rule.from == BackRule::From::points) json["back"] = interrupted.rule.points;
    json["again"] = interrupted.again;
}

void write(Json& json, const QuickRun& run) {
    json["first"] = run.first;
    json["last"] = run.last;
    json["points"] = run.points;
    json["ms"] = run.ms;
    json["again"] = run.again;
}

void write(Json& json, const Clock& clock) {
    json["satellite"] = ambit::toText(clock.satellite);
}

void write(Json& json, const Night& night) {
    json["is"] = night.expected ? "expected" : "not expected";
    json["by"] = night.bySun ? "sun" : "pilot";
}

} // namespace

// Stored in every log and record: these words never change.
const char* kindOf(const What& what) {
    return std::visit(Overloaded{
                          [](const Opened&) { return "opened"; },
                          [](const Planned&) { return "planned"; },
                          [](const StandReached&) { return "stand"; },
                          [](const SettingChanged&) { return "setting"; },
                          [](const Settled&) { return "settled"; },
                          [](const Reopened&) { return "reopened"; },
                          [](const OpeningMade&) { return "opening made"; },
                          [](const OpeningClosed&) { return "opening closed"; },
                          [](const Paused&) { return "paused"; },
                          [](const Resumed&) { return "resumed"; },
                          [](const Note&) { return "note"; },
                          [](const StandBlocked&) { return "stand blocked"; },
                          [](const StandFree&) { return "stand free"; },
                          [](const AreaMarked&) { return "area marked"; },
                          [](const AreaCleared&) { return "area cleared"; },
                          [](const Light&) { return "light"; },
                          [](const Concluded&) { return "concluded"; },
                          [](const Withdrawn&) { return "withdrawn"; },
                          [](const Signed&) { return "signed"; },
                          [](const Asked&) { return "asked"; },
                          [](const Answered&) { return "answered"; },
                          [](const Declined&) { return "declined"; },
                          [](const Alone&) { return "alone"; },
                          [](const PortionBegun&) { return "portion begun"; },
                          [](const PortionEnded&) { return "portion ended"; },
                          [](const Interrupted&) { return "interrupted"; },
                          [](const QuickRun&) { return "quick run"; },
                          [](const Clock&) { return "clock"; },
                          [](const Night&) { return "night"; },
                          [](const Trended&) { return "trend"; },
                      },
                      what);
}

int versionOf(const What& what) {
    return std::visit(
        Overloaded{
            [](const StandBlocked&) { return 2; },
            [](const StandFree&) { return 2; },
            [](const AreaMarked&) { return 2; },
            [](const AreaCleared&) { return 2; },
            [](const Light&) { return 2; },
            [](const Asked&) { return 3; },
            [](const Answered&) { return 3; },
            [](const Declined&) { return 3; },
            [](const Alone&) { return 3; },
            [](const Settled& settled) {
                if (settled.from) return 6;
                const bool photographed = settled.outcome == Outcome::sound && !settled.photos.empty();
                if (photographed || !settled.unit.empty() || settled.renewed || !settled.measurements.empty())
                    return 5;
                return settled.by == By::touch ? 1 : 4;
            },
            [](const PortionBegun&) { return 4; },
            [](const PortionEnded&) { return 4; },
            [](const Interrupted&) { return 4; },
            [](const QuickRun&) { return 4; },
            [](const Clock&) { return 4; },
            [](const Night&) { return 4; },
            [](const Trended& told) {
                const bool said = std::any_of(told.values.begin(), told.values.end(),
                                              [](const TrendValue& one) { return !one.from.empty(); });
                return said ? 7 : 5;
            },
            [](const auto&) { return 1; },
        },
        what);
}

const std::string& uncertaintyOf(const Settled& settled) {
    return settled.byPhoto && !settled.measurements.empty() ? settled.measurements.front().uncertainty
                                                            : settled.uncertainty;
}

std::string fromOf(const Settled& settled) {
    if (settled.byPhoto) return "photo";
    return settled.from ? airframe::toText(*settled.from) : "";
}

Sentence fromText(std::string_view from) {
    if (from == "photo") return say("measured in a photo");
    const auto means = airframe::meansFrom(from);
    return means ? judge::toText(*means) : Sentence();
}

void readAsUsual(Settled& settled, const airframe::Limit& limit) {
    settled.from = limit.from;
    settled.uncertainty = limit.from && limit.uncertainty ? limit.uncertainty->text() : "";
}

const char* toText(Outcome outcome) {
    switch (outcome) {
    case Outcome::sound:
        return "sound";
    case Outcome::finding:
        return "finding";
    case Outcome::notInspected:
        return "not inspected";
    }
    return "";
}

const char* toText(Statement::Kind kind) {
    switch (kind) {
    case Statement::Kind::lookAgain:
        return "look again";
    case Statement::Kind::question:
        return "question";
    case Statement::Kind::remark:
        return "remark";
    }
    return "";
}

const char* toText(BackRule::From from) {
    switch (from) {
    case BackRule::From::points:
        return "points";
    case BackRule::From::stand:
        return "stand";
    case BackRule::From::start:
        return "start";
    }
    return "";
}

const char* toText(Interrupted::Cause cause) {
    switch (cause) {
    case Interrupted::Cause::paused:
        return "paused";
    case Interrupted::Cause::call:
        return "call";
    case Interrupted::Cause::locked:
        return "locked";
    case Interrupted::Cause::away:
        return "away";
    case Interrupted::Cause::silent:
        return "silent";
    case Interrupted::Cause::stopped:
        return "stopped";
    }
    return "";
}

Json toJson(const Statement& statement) {
    Json json{{"round", statement.round},
              {"id", statement.id},
              {"kind", toText(statement.kind)},
              {"at", ambit::toText(statement.at)},
              {"who", toJson(statement.who)}};
    if (!statement.point.empty()) json["point"] = statement.point;
    if (!statement.words.empty()) json["words"] = statement.words;
    return json;
}

Json toJson(const Event& event) {
    Json json{{"seq", event.seq}, {"at", toText(event.at)}, {"kind", kindOf(event.what)}};
    std::visit([&](const auto& what) { write(json, what); }, event.what);
    return json;
}

namespace {

/// Metres with two decimals, by whole centimetres: what a float would print may differ from machine to
/// machine.
std::string metres(double value) {
    const long long centimetres = std::llround(value * 100);
    const long long size = std::llabs(centimetres);
    const std::string fraction = std::to_string(size % 100);
    return (centimetres < 0 ? "-" : "") + std::to_string(size / 100) + '.' +
           (fraction.size() < 2 ? "0" : "") + fraction;
}

double metresOf(const std::string& written) {
    const auto value = Decimal::parse(written);
    return value ? value->approximate() : 0;
}

} // namespace

Corner cornerAt(airframe::Place place) {
    return {metres(place.x), metres(place.y)};
}

airframe::Outline outlineOf(const std::vector<Corner>& corners) {
    airframe::Outline outline;
    outline.reserve(corners.size());
    for (const Corner& corner : corners)
        outline.push_back({metresOf(corner.x), metresOf(corner.y)});
    return outline;
}

std::string roundId(const Event& opened) {
    return sha256Hex(canonicalJson(toJson(opened))).substr(0, 32);
}

std::string roundIdOf(JsonView opened) {
    return sha256Hex(opened.source()).substr(0, 32);
}

} // namespace ambit::round
