#include "file/told.hpp"

#include "base/canonical.hpp"
#include "record/record.hpp"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>

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
    if (const auto conclusion = content.find("conclusion"); conclusion != content.end()) {
        told.fit = (*conclusion)["fit"].get<bool>();
        told.reasons = textIn(*conclusion, "reasons");
    }
    const Json& aircraft = content["aircraft"];
    told.counters = countersIn(aircraft["counters"]);
    Walked walked;
    if (content.contains("walk")) walked.walk = content["walk"]["name"];
    if (aircraft.contains("airframe")) walked.airframe = aircraft["airframe"]["sha256"];
    std::vector<PointName>& points = walked.points;
    for (const Json& point : content["points"]) {
        points.push_back({point["id"], point["name"], point["zone"], textIn(point, "jasc")});
        Seen seen = seenIn(point);
        if (seen.outcome != Outcome::sound || !seen.value.empty()) told.seen.push_back(std::move(seen));
    }
    std::sort(points.begin(), points.end(),
              [](const PointName& a, const PointName& b) { return a.id < b.id; });
    told.walked = std::make_shared<const Walked>(std::move(walked));
    if (const auto photos = content.find("photos"); photos != content.end())
        for (const Json& photo : *photos)
            told.photos.push_back(photo["sha256"]);
    return told;
}

class Writer {
public:
    void number(std::size_t value) {
        while (value >= 0x80) {
            bytes += static_cast<char>(0x80U | (value & 0x7FU));
            value >>= 7U;
        }
        bytes += static_cast<char>(value);
    }
    void text(std::string_view text) {
        number(text.size());
        bytes += text;
    }
    std::string bytes;
};

class Reader {
public:
    explicit Reader(std::string_view kept) : rest(kept) {}

    std::size_t number() {
        std::size_t value = 0;
        for (unsigned shift = 0; shift < 63; shift += 7) {
            if (rest.empty()) break;
            const auto byte = static_cast<unsigned char>(rest.front());
            rest.remove_prefix(1);
            value |= std::size_t{byte & 0x7FU} << shift;
            if (byte < 0x80) return value;
        }
        good = false;
        return 0;
    }
    /// How many things follow; each takes a byte at least.
    std::size_t count() {
        const std::size_t value = number();
        if (value <= rest.size()) return value;
        good = false;
        return 0;
    }
    std::string text() {
        const std::string_view text = rest.substr(0, count());
        rest.remove_prefix(text.size());
        return std::string(text);
    }
    [[nodiscard]] bool isWhole() const { return good && rest.empty(); }

private:
    std::string_view rest;
    bool good = true;
};

void put(Writer& to, const RoundTold& round) {
    to.text(round.round);
    to.number(round.fit ? 1 : 0);
    to.text(round.reasons);
    to.number(round.counters.size());
    for (const auto& one : round.counters) {
        to.text(one.id);
        to.text(one.value);
    }
    to.number(round.seen.size());
    for (const Seen& one : round.seen) {
        to.text(one.point);
        to.number(static_cast<std::size_t>(one.outcome) * 2 + (one.grounds ? 1 : 0));
        for (const std::string* text : {&one.words, &one.basis, &one.value, &one.unit, &one.verdict})
            to.text(*text);
    }
    to.number(round.photos.size());
    for (const std::string& photo : round.photos)
        to.text(photo);
}

RoundTold roundFrom(Reader& from) {
    RoundTold round;
    round.round = from.text();
    round.fit = from.number() == 1;
    round.reasons = from.text();
    round.counters.resize(from.count());
    for (auto& one : round.counters) {
        one.id = from.text();
        one.value = from.text();
    }
    round.seen.resize(from.count());
    for (Seen& one : round.seen) {
        one.point = from.text();
        const std::size_t how = from.number();
        one.outcome = static_cast<Outcome>(std::min<std::size_t>(how / 2, 2));
        one.grounds = how % 2 == 1;
        for (std::string* text : {&one.words, &one.basis, &one.value, &one.unit, &one.verdict})
            *text = from.text();
    }
    round.photos.resize(from.count());
    for (std::string& photo : round.photos)
        photo = from.text();
    return round;
}

tl::unexpected<Error> damaged(const std::string& where) {
    return fail(ErrorCode::storage, "The archive is damaged: what is kept about a record can't be read.",
                where, "Keep the file, copy it away, and go on with a backup.");
}

} // namespace

const Seen* RoundTold::seenAt(const std::string& id) const {
    const auto found =
        std::find_if(seen.begin(), seen.end(), [&](const Seen& one) { return one.point == id; });
    return found == seen.end() ? nullptr : &*found;
}

const PointName* RoundTold::point(const std::string& id) const {
    const auto& points = walked->points;
    const auto found =
        std::lower_bound(points.begin(), points.end(), id,
                         [](const PointName& one, const std::string& it) { return one.id < it; });
    return found == points.end() || found->id != id ? nullptr : &*found;
}

const char* Told::kind() const {
    return round() != nullptr ? "round" : record::kindOf(*entry());
}

int Told::findings() const {
    const RoundTold* its = round();
    if (its == nullptr) return 0;
    return static_cast<int>(std::count_if(its->seen.begin(), its->seen.end(),
                                          [](const Seen& one) { return one.outcome == Outcome::finding; }));
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

std::string packed(const Told& told) {
    Writer to;
    to.text(told.serial);
    if (const record::Entry* entry = told.entry())
        to.text(record::toJson(*entry).dump());
    else
        put(to, *told.round());
    return std::move(to.bytes);
}

Result<void> unpack(Told& told, std::string_view kept, const std::string& kind,
                    std::shared_ptr<const Walked> walked) {
    Reader from(kept);
    told.serial = from.text();
    if (kind == "round") {
        RoundTold round = roundFrom(from);
        if (walked) round.walked = std::move(walked);
        told.what = std::move(round);
    } else {
        try {
            told.what = record::entryFrom(kind, Json::parse(from.text()));
        } catch (const std::exception&) { // `packed` wrote what checkEntry had let pass
            return damaged(told.sha256);
        }
    }
    return from.isWhole() ? Result<void>() : damaged(told.sha256);
}

Json toJson(const Walked& walked) {
    Json json{{"airframe", walked.airframe}, {"walk", walked.walk}, {"points", Json::array()}};
    for (const PointName& point : walked.points)
        json["points"].push_back(Json::array({point.id, point.name, point.zone, point.jasc}));
    return json;
}

Result<Walked> walkedFrom(std::string_view kept) {
    try {
        const Json json = Json::parse(kept);
        Walked walked{json.at("airframe"), json.at("walk"), {}};
        for (const Json& one : json.at("points"))
            walked.points.push_back({one.at(0), one.at(1), one.at(2), one.at(3)});
        return walked;
    } catch (const std::exception&) {
        return damaged("a walk");
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
    std::string operator()(const record::PartChange& one) const {
        return one.position + ": " + one.description;
    }
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
    return text.empty() ? its.walked->walk : text;
}

} // namespace ambit::file
