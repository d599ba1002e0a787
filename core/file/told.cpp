#include "file/told.hpp"

#include "record/record.hpp"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <numeric>

namespace ambit::file {

namespace {

using round::Outcome;

std::string textIn(JsonView json, std::string_view name) {
    return std::string(json[name].text());
}

std::vector<round::CounterReading> countersIn(JsonView list) {
    std::vector<round::CounterReading> counters;
    for (const JsonView one : list.elements())
        counters.push_back({textIn(one, "id"), textIn(one, "value")});
    return counters;
}

Seen seenIn(JsonView point) {
    Seen seen;
    seen.point = textIn(point, "id");
    if (const JsonView finding = point["finding"]) {
        seen.outcome = Outcome::finding;
        seen.words = textIn(finding, "words");
        seen.grounds = finding["class"].text() == "grounds";
    } else if (const JsonView reason = point["notInspected"]) {
        seen.outcome = Outcome::notInspected;
        seen.words = textIn(reason, "why");
        seen.basis = textIn(reason, "basis");
    }
    if (const JsonView measured = point["measured"]) {
        seen.value = textIn(measured, "value");
        seen.unit = textIn(measured, "unit");
        seen.verdict = textIn(measured, "verdict");
        seen.uncertainty = textIn(measured, "uncertainty");
        seen.renewed = measured["renewed"].flag();
        seen.from = airframe::meansFrom(measured["from"].text());
    }
    return seen;
}

/// Rounds of one walk have their points in common: those met last are kept, so that a round only has to look
/// whether it is one of them.
class Walks {
public:
    std::shared_ptr<const Walked> of(JsonView content) {
        for (std::size_t i = 0; i < known.size(); ++i) {
            if (!isOf(known[i], content)) continue;
            auto walked = known[i].walked;
            if (i > 0) std::swap(known[i], known[i - 1]); // those met often come first
            return walked;
        }
        if (known.size() >= most) known.pop_back();
        known.insert(known.begin(), read(content));
        return known.front().walked;
    }

private:
    static constexpr std::size_t most = 32;
    struct Known {
        std::shared_ptr<const Walked> walked;
        std::vector<std::size_t> places; ///< of the points in the order of the content, in the sorted list
    };

    /// The same points in the same order.
    static bool isOf(const Known& one, JsonView content) {
        const Walked& walked = *one.walked;
        const JsonView points = content["points"];
        if (points.size() != one.places.size() || walked.walk != content["walk"]["name"].text() ||
            walked.airframe != content["aircraft"]["airframe"]["sha256"].text())
            return false;
        auto place = one.places.begin();
        for (const JsonView point : points.elements()) {
            const PointName& name = walked.points[*place++];
            if (name.id != point["id"].text() || name.name != point["name"].text() ||
                name.zone != point["zone"].text() || name.jasc != point["jasc"].text())
                return false;
        }
        return true;
    }
    static Known read(JsonView content) {
        Walked walked;
        walked.walk = textIn(content["walk"], "name");
        walked.airframe = textIn(content["aircraft"]["airframe"], "sha256");
        std::vector<PointName>& points = walked.points;
        for (const JsonView point : content["points"].elements())
            points.push_back(
                {textIn(point, "id"), textIn(point, "name"), textIn(point, "zone"), textIn(point, "jasc")});
        Known one;
        one.places.resize(points.size());
        std::vector<std::size_t> order(points.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return points[a].id < points[b].id; });
        std::vector<PointName> sorted;
        for (std::size_t i = 0; i < order.size(); ++i) {
            one.places[order[i]] = i;
            sorted.push_back(std::move(points[order[i]]));
        }
        points = std::move(sorted);
        one.walked = std::make_shared<const Walked>(std::move(walked));
        return one;
    }

    std::vector<Known> known;
};

RoundTold roundIn(JsonView content) {
    thread_local Walks walks;
    RoundTold told;
    told.round = textIn(content, "round");
    const JsonView conclusion = content["conclusion"];
    told.fit = conclusion["fit"].flag();
    told.reasons = textIn(conclusion, "reasons");
    told.counters = countersIn(content["aircraft"]["counters"]);
    told.walked = walks.of(content);
    for (const JsonView point : content["points"].elements())
        if (point["measured"] || point["outcome"].text() != "sound") told.seen.push_back(seenIn(point));
    for (const JsonView photo : content["photos"].elements())
        told.photos.push_back(textIn(photo, "sha256"));
    return told;
}

} // namespace

std::string Seen::fromWord() const {
    // Typed, none is stated without what it was read from.
    return from ? airframe::toText(*from) : uncertainty.empty() ? "" : "photo";
}

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

Told toldBy(std::string sha256, JsonView content, std::string key) {
    Told told;
    told.sha256 = std::move(sha256);
    told.key = std::move(key);
    const JsonView aircraft = content["aircraft"];
    told.registration = textIn(aircraft, "registration");
    told.serial = textIn(aircraft, "serial");
    for (const JsonView one : content["previous"].elements())
        told.previous.emplace_back(one.text());
    const JsonView signer = content["signer"];
    told.signer = {textIn(signer, "name"), textIn(signer, "role"), textIn(signer, "certificate")};
    const bool isEntry = record::isEntry(content);
    told.at = parseInstant(content[isEntry ? "at" : "concludedAt"].text()).value_or(Instant());
    if (isEntry)
        told.what = record::entryFrom(content).entry;
    else
        told.what = roundIn(content);
    return told;
}

Told toldBy(std::string sha256, const Json& content, std::string key) {
    JsonTape tape;
    return toldBy(std::move(sha256), tape.write(content).value_or(JsonView()), std::move(key));
}

Told toldBy(const record::Judged& judged) {
    return toldBy(judged.sha256, judged.content, judged.signatures.front().certificate.sha256);
}

Told toldBy(const record::RecordReport& report) {
    return toldBy(report.sha256, report.content, report.signatures.front().certificate.sha256);
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
    std::string operator()(const record::Renewal& one) const {
        const std::string what =
            one.renewed ? "Renewed before the value of record " : "Not renewed before the value of record ";
        return what + one.of.record.substr(0, 12) + (one.words.empty() ? "" : ": " + one.words);
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
