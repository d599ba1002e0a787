#include "file/told.hpp"

#include "base/canonical.hpp"

#include <algorithm>
#include <map>

namespace ambit::file {

namespace {

using round::Outcome;

std::string textIn(const Json& json, const char* name) {
    const auto found = json.find(name);
    return found == json.end() ? std::string() : found->get<std::string>();
}

std::vector<round::CounterReading> countersIn(const Json& list) {
    std::vector<round::CounterReading> counters;
    for (const Json& one : list)
        counters.push_back({one["id"], one["value"]});
    return counters;
}

record::Person personIn(const Json& json) {
    return {json["name"], json["role"], json["certificate"]};
}

Seen seenIn(const Json& point) {
    Seen seen;
    seen.point = point["id"];
    const auto& outcome = point["outcome"].get_ref<const std::string&>();
    if (outcome == "finding") {
        seen.outcome = Outcome::finding;
        seen.words = point["finding"]["words"];
        seen.grounds = point["finding"]["class"] == "grounds";
    } else if (outcome == "not inspected") {
        seen.outcome = Outcome::notInspected;
        seen.words = point["notInspected"]["why"];
        seen.basis = textIn(point["notInspected"], "basis");
    }
    if (const auto measured = point.find("measured"); measured != point.end()) {
        seen.value = (*measured)["value"];
        seen.unit = textIn(*measured, "unit");
        seen.verdict = textIn(*measured, "verdict");
    }
    return seen;
}

RoundTold roundIn(const Json& content) {
    RoundTold told;
    told.round = textIn(content, "round");
    if (content.contains("walk")) told.walk = content["walk"]["name"];
    if (const auto conclusion = content.find("conclusion"); conclusion != content.end()) {
        told.fit = (*conclusion)["fit"].get<bool>();
        told.reasons = textIn(*conclusion, "reasons");
    }
    const Json& aircraft = content["aircraft"];
    told.counters = countersIn(aircraft["counters"]);
    if (aircraft.contains("airframe")) told.airframe = aircraft["airframe"]["sha256"];
    Points points;
    for (const Json& point : content["points"]) {
        points.push_back({point["id"], point["name"], point["zone"], textIn(point, "jasc")});
        Seen seen = seenIn(point);
        if (seen.outcome != Outcome::sound || !seen.value.empty()) told.seen.push_back(std::move(seen));
    }
    std::sort(points.begin(), points.end(),
              [](const PointName& a, const PointName& b) { return a.id < b.id; });
    told.points = std::make_shared<const Points>(std::move(points));
    if (const auto photos = content.find("photos"); photos != content.end())
        for (const Json& photo : *photos)
            told.photos.push_back(photo["sha256"]);
    return told;
}

Json toJson(const std::vector<round::CounterReading>& counters) {
    Json list = Json::array();
    for (const auto& one : counters)
        list.push_back({{"id", one.id}, {"value", one.value}});
    return list;
}

void putIfAny(Json& json, const char* name, const std::string& text) {
    if (!text.empty()) json[name] = text;
}

Json toJson(const Seen& seen) {
    Json json{{"point", seen.point}, {"outcome", static_cast<int>(seen.outcome)}};
    putIfAny(json, "words", seen.words);
    putIfAny(json, "basis", seen.basis);
    putIfAny(json, "value", seen.value);
    putIfAny(json, "unit", seen.unit);
    putIfAny(json, "verdict", seen.verdict);
    if (seen.grounds) json["grounds"] = true;
    return json;
}

Seen seenFrom(const Json& json) {
    Seen seen;
    seen.point = json.at("point");
    seen.outcome = static_cast<Outcome>(json.at("outcome").get<int>());
    seen.words = textIn(json, "words");
    seen.basis = textIn(json, "basis");
    seen.value = textIn(json, "value");
    seen.unit = textIn(json, "unit");
    seen.verdict = textIn(json, "verdict");
    seen.grounds = json.contains("grounds");
    return seen;
}

RoundTold roundFrom(const Json& json) {
    RoundTold told;
    told.round = textIn(json, "round");
    told.walk = textIn(json, "walk");
    told.fit = json.at("fit").get<bool>();
    told.reasons = textIn(json, "reasons");
    told.airframe = textIn(json, "airframe");
    told.counters = countersIn(json.at("counters"));
    if (const auto list = json.find("seen"); list != json.end())
        for (const Json& one : *list)
            told.seen.push_back(seenFrom(one));
    if (const auto list = json.find("photos"); list != json.end())
        told.photos = list->get<std::vector<std::string>>();
    return told;
}

} // namespace

const Seen* RoundTold::seenAt(const std::string& id) const {
    const auto found = std::find_if(seen.begin(), seen.end(), [&](const Seen& one) { return one.point == id; });
    return found == seen.end() ? nullptr : &*found;
}

const PointName* RoundTold::point(const std::string& id) const {
    const auto found = std::lower_bound(points->begin(), points->end(), id,
                                        [](const PointName& one, const std::string& it) { return one.id < it; });
    return found == points->end() || found->id != id ? nullptr : &*found;
}

const char* Told::kind() const {
    return round() != nullptr ? "round" : record::kindOf(*entry());
}

int Told::findings() const {
    const RoundTold* its = round();
    if (its == nullptr) return 0;
    return static_cast<int>(std::count_if(its->seen.begin(), its->seen.end(), [](const Seen& one) {
        return one.outcome == Outcome::finding;
    }));
}

Told toldBy(std::string sha256, const Json& content, std::string key) {
    Told told;
    told.sha256 = std::move(sha256);
    told.key = std::move(key);
    const Json& aircraft = content["aircraft"];
    told.registration = textIn(aircraft, "registration");
    told.serial = textIn(aircraft, "serial");
    told.previous = content["previous"].get<std::vector<std::string>>();
    told.signer = personIn(content["signer"]);
    const bool isEntry = record::isEntry(content);
    told.at = *parseInstant(content[isEntry ? "at" : "concludedAt"].get_ref<const std::string&>());
    if (isEntry)
        told.what = record::entryFrom(content).entry;
    else
        told.what = roundIn(content);
    return told;
}

Told toldBy(const record::RecordReport& report) {
    return toldBy(report.sha256, report.content, report.signatures.front().certificate.sha256);
}

Json toJson(const Told& told) {
    Json json = Json::object();
    putIfAny(json, "serial", told.serial);
    if (const record::Entry* entry = told.entry()) {
        json["entry"] = record::toJson(*entry);
        return json;
    }
    const RoundTold& its = *told.round();
    putIfAny(json, "round", its.round);
    putIfAny(json, "walk", its.walk);
    json["fit"] = its.fit;
    putIfAny(json, "reasons", its.reasons);
    putIfAny(json, "airframe", its.airframe);
    json["counters"] = toJson(its.counters);
    if (!its.seen.empty()) {
        json["seen"] = Json::array();
        for (const Seen& one : its.seen)
            json["seen"].push_back(toJson(one));
    }
    if (!its.photos.empty()) json["photos"] = its.photos;
    return json;
}

Result<void> fill(Told& told, std::string_view kept, const std::string& kind,
                  std::shared_ptr<const Points> points) {
    try {
        const Json json = Json::parse(kept);
        told.serial = textIn(json, "serial");
        if (kind != "round") {
            told.what = record::entryFrom(kind, json.at("entry"));
            return {};
        }
        RoundTold its = roundFrom(json);
        its.points = points ? std::move(points) : std::make_shared<const Points>();
        told.what = std::move(its);
        return {};
    } catch (const std::exception&) { // it was written by toJson: a damaged page
        return fail(ErrorCode::storage, "The archive is damaged: what is kept about a record can't be read.",
                    told.sha256, "Keep the file, copy it away, and go on with a backup.");
    }
}

namespace {

struct Glossing {
    std::string operator()(const record::Assessment& one) const {
        return (one.deferral ? "Deferred: " : "Grounding: ") + one.words;
    }
    std::string operator()(const record::Rectification& one) const { return one.description; }
    std::string operator()(const record::Reading& one) const {
        std::string text;
        for (const auto& counter : one.counters)
            text += (text.empty() ? "" : ", ") + counter.id + ' ' + counter.value;
        return text;
    }
    std::string operator()(const record::PartChange& one) const { return one.position + ": " + one.description; }
    std::string operator()(const record::HandOver& one) const { return "To " + one.to; }
    std::string operator()(const record::Trust& one) const {
        std::string text = one.name + " as";
        for (const std::string& role : one.roles)
            text += (&role == &one.roles.front() ? " " : ", ") + role;
        return text;
    }
    std::string operator()(const record::Revocation& one) const { return one.why; }
    std::string operator()(const record::Removal& one) const {
        return std::to_string(one.records.size()) + " records let go: " + one.basis;
    }
};

} // namespace

std::string gloss(const Told& told) {
    if (const record::Entry* entry = told.entry()) return std::visit(Glossing{}, *entry);
    const RoundTold& its = *told.round();
    std::string text;
    for (const Seen& one : its.seen) {
        if (one.outcome != Outcome::finding) continue;
        const PointName* point = its.point(one.point);
        text += (text.empty() ? "" : "; ") + (point == nullptr ? one.point : point->name) + ": " + one.words;
    }
    return text.empty() ? its.walk : text;
}

} // namespace ambit::file
