#include "record/content.hpp"

#include "judge/units.hpp"
#include "record/summary.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::record {

namespace {

using airframe::Airframe;

constexpr const char* statement = "This record says what one person looked at, found and decided in one "
                                  "inspection before flight. The pilot in command decides "
                                  "whether the aircraft is fit to fly; the manufacturer's handbook and the "
                                  "local rules have the last word. Ambit reminds, measures "
                                  "and records: it never says that an aircraft is airworthy.";

const char* toText(judge::Verdict verdict) {
    switch (verdict) {
    case judge::Verdict::within:
        return "within";
    case judge::Verdict::below:
        return "below";
    case judge::Verdict::above:
        return "above";
    }
    return "";
}

void nameAircraft(Json& content, const Airframe& airframe) {
    Json& described = content["aircraft"]["airframe"];
    described["name"] = airframe.name;
    if (!airframe.notice.empty()) described["notice"] = airframe.notice;
    for (Json& reading : content["aircraft"]["counters"]) {
        const airframe::Counter* counter = airframe.counter(reading["id"]);
        reading["name"] = counter->name;
        reading["unit"] = counter->unit;
    }
    content["walk"]["name"] = airframe.walk(content["walk"]["id"])->name;
}

/// Those states that this point needs, as they were.
Json settingsOf(const airframe::Point& point, const airframe::Settings& then, const Airframe& airframe) {
    Json list = Json::array();
    for (const auto& needed : point.when) {
        const airframe::Setting& setting = *airframe.setting(needed.first);
        list.push_back({{"name", setting.name}, {"state", setting.state(then.at(needed.first))->name}});
    }
    return list;
}

void judgeValue(Json& measured, const airframe::Limit& limit) {
    measured["quantity"] = limit.quantity;
    if (!measured.contains("unit")) measured["unit"] = limit.unit;
    measured["limit"] = judge::toText(limit);
    measured["source"] = limit.source;
    // The fold has let it pass: the units are known, and of one quantity.
    measured["verdict"] = toText(*judge::against(limit, *Decimal::parse(measured["value"].get<std::string>()),
                                                 measured["unit"].get<std::string>()));
}

void namePoint(Json& json, const round::State& state, const Airframe& airframe) {
    const airframe::Point& point = *airframe.point(json["id"]);
    const round::PointState::Settling& settling = *state.points.at(point.id).last();
    json["name"] = point.name;
    json["zone"] = airframe.zone(point.zone)->name;
    json["how"] = Json::array();
    for (const airframe::How how : point.how)
        json["how"].push_back(airframe::toText(how));
    if (!point.jasc.empty()) json["jasc"] = point.jasc;
    if (!settling.stand.empty()) json["stand"] = airframe.stand(settling.stand)->name;
    json["settings"] = settingsOf(point, settling.settings, airframe);
    if (json.contains("measured")) judgeValue(json["measured"], *point.limit);
}

void nameAsked(Json& asks, const Airframe& airframe) {
    for (Json& one : asks)
        if (one.contains("point")) one["name"] = airframe.point(one["point"])->name;
}

void nameStands(Json& differences, const Airframe& airframe) {
    for (Json& one : differences)
        if (one.contains("stand")) one["name"] = airframe.stand(one["stand"])->name;
}

Json openingsOf(const round::State& state, const Airframe& airframe) {
    Json list = Json::array();
    for (const airframe::Opening& opening : airframe.openings) {
        const round::OpeningState& its = state.openings.at(opening.id);
        if (!its.ever) continue;
        list.push_back({{"id", opening.id},
                        {"name", opening.name},
                        {"openedAt", ambit::toText(*its.since)},
                        {"closedAt", ambit::toText(*its.closedAt)}});
    }
    return list;
}

Json toJson(const std::vector<round::Event>& events) {
    Json list = Json::array();
    for (const round::Event& event : events)
        list.push_back(round::toJson(event));
    return list;
}

} // namespace

Result<Json> roundContent(const Airframe& airframe, const std::vector<round::Event>& events,
                          const std::vector<std::string>& previous) {
    const auto state = round::fold(airframe, events);
    if (!state) return tl::unexpected(state.error());
    if (state->phase != round::Phase::concluded)
        return fail(ErrorCode::refused, say("Only a concluded round becomes a record."), state->id,
                    say("Conclude it first."));
    const auto summary = Summary::of(events);
    if (!summary) return tl::unexpected(summary.error());
    Json json = summary->json(round::roundId(events.front()));
    json["format"] = "ambit-record";
    json["version"] = versionOf(events);
    json["kind"] = "round";
    nameAircraft(json, airframe);
    for (Json& point : json["points"])
        namePoint(point, *state, airframe);
    if (json.contains("differences")) nameStands(json["differences"], airframe);
    if (json.contains("asks")) nameAsked(json["asks"], airframe);
    json["openings"] = openingsOf(*state, airframe);
    json["cautions"] = airframe.cautions;
    json["previous"] = previous;
    json["software"] = {{"name", "Ambit"}, {"version", AMBIT_VERSION}};
    json["statement"] = statement;
    json["events"] = toJson(events);
    if (auto good = checkContent(json); !good) return tl::unexpected(good.error());
    return json;
}

} // namespace ambit::record
