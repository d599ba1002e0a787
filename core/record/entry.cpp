#include "record/entry.hpp"

#include "base/pointer.hpp"
#include "record/shape.hpp"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>

namespace ambit::record {

namespace {

using Is = Shape::Is;
using round::CounterReading;

const Shape text(Is::text);
const Shape hash(Is::hash);
const Shape instant(Is::instant);
const Shape date(Is::date);
constexpr bool optional = false;

constexpr int version = 3;
constexpr const char* underRule = "14 CFR 91.213(d)";
constexpr const char* statement =
    "This record says what one person found, decided or did for this aircraft's file. The operator and the "
    "pilot in command decide whether the aircraft is fit to fly; the manufacturer's handbook, the local "
    "rules "
    "and licensed people have the last word. Ambit records: it never says that an aircraft is airworthy.";

Shape roleShape() {
    return word({"pilot", "instructor", "owner", "mechanic"});
}
Shape countersShape() {
    return list(object({{"id", text}, {"value", Shape(Is::decimal)}}));
}
Shape discrepancyShape() {
    return object({{"record", hash}, {"point", text}});
}

Shape deferralShape() {
    return object({{"basis", word(deferralBases())},
                   {"reference", text, optional},
                   {"answers", list(object({{"question", text}, {"yes", Shape(Is::flag)}}))},
                   {"removed", Shape(Is::flag)},
                   {"placard", text},
                   {"limits", text, optional},
                   {"until", date, optional},
                   {"untilCounters", countersShape(), optional},
                   {"determinedBy", person()}});
}
Shape partShape() {
    return object({{"name", text}, {"number", text}, {"serial", text}, {"counters", countersShape()}});
}

/// The fields of each kind's own.
const std::map<std::string, std::vector<Field>>& kinds() {
    static const std::map<std::string, std::vector<Field>> all{
        {"assessment",
         {{"discrepancy", discrepancyShape()}, {"words", text}, {"deferral", deferralShape(), optional}}},
        {"rectification",
         {{"discrepancies", list(discrepancyShape())},
          {"inspections", list(text)},
          {"description", text},
          {"completedOn", date},
          {"performedBy", text, optional},
          {"certificateKind", text},
          {"counters", countersShape()}}},
        {"reading", {{"counters", countersShape()}}},
        {"part change",
         {{"position", text},
          {"off", partShape(), optional},
          {"on", partShape(), optional},
          {"description", text},
          {"completedOn", date},
          {"certificateKind", text},
          {"counters", countersShape()}}},
        {"hand-over", {{"to", text}, {"words", text, optional}}},
        {"trust", {{"name", text}, {"key", hash}, {"roles", list(roleShape())}, {"from", instant}}},
        {"revocation", {{"key", hash}, {"from", instant}, {"why", text}}},
        {"removal",
         {{"records",
           list(object({{"record", hash}, {"previous", list(hash)}, {"kind", text}, {"at", instant}}))},
          {"basis", text}}}};
    return all;
}

Shape contentShape(const std::vector<Field>& own) {
    std::vector<Field> fields{{"format", word({"ambit-record"})},
                              {"version", integer(version, version)},
                              {"kind", text},
                              {"aircraft", object({{"registration", text}, {"serial", text}})},
                              {"at", instant},
                              {"offsetMinutes", integer(-840, 840)},
                              {"previous", list(hash)},
                              {"signer", person()},
                              {"software", object({{"name", text}, {"version", text}})},
                              {"statement", text}};
    fields.insert(fields.end(), own.begin(), own.end());
    return object(std::move(fields));
}

tl::unexpected<Error> wrong(std::string what, std::string pointer) {
    return fail(ErrorCode::invalid, std::move(what), std::move(pointer));
}

Json toJson(const Person& person) {
    return {{"name", person.name}, {"role", person.role}, {"certificate", person.certificate}};
}
Json toJson(const std::vector<CounterReading>& counters) {
    Json json = Json::array();
    for (const CounterReading& one : counters)
        json.push_back({{"id", one.id}, {"value", one.value}});
    return json;
}
Json toJson(const DiscrepancyId& id) {
    return {{"record", id.record}, {"point", id.point}};
}
Json toJson(const Part& part) {
    return {{"name", part.name},
            {"number", part.number},
            {"serial", part.serial},
            {"counters", toJson(part.counters)}};
}
void putIfAny(Json& json, const char* name, const std::string& words) {
    if (!words.empty()) json[name] = words;
}

void put(Json& json, const Assessment& one) {
    json["discrepancy"] = toJson(one.of);
    json["words"] = one.words;
    if (!one.deferral) return;
    const Deferral& deferral = *one.deferral;
    Json& to = json["deferral"];
    to["basis"] = deferral.basis;
    putIfAny(to, "reference", deferral.reference);
    to["answers"] = Json::array();
    for (const Answer& answer : deferral.answers)
        to["answers"].push_back({{"question", answer.question}, {"yes", answer.yes}});
    to["removed"] = deferral.removed;
    to["placard"] = deferral.placard;
    putIfAny(to, "limits", deferral.limits);
    putIfAny(to, "until", deferral.until);
    if (!deferral.untilCounters.empty()) to["untilCounters"] = toJson(deferral.untilCounters);
    to["determinedBy"] = toJson(deferral.determinedBy);
}
void put(Json& json, const Rectification& one) {
    json["discrepancies"] = Json::array();
    for (const DiscrepancyId& id : one.of)
        json["discrepancies"].push_back(toJson(id));
    json["inspections"] = one.inspections;
    json["description"] = one.description;
    json["completedOn"] = one.completedOn;
    putIfAny(json, "performedBy", one.performedBy);
    json["certificateKind"] = one.certificateKind;
    json["counters"] = toJson(one.counters);
}
void put(Json& json, const Reading& one) {
    json["counters"] = toJson(one.counters);
}
void put(Json& json, const PartChange& one) {
    json["position"] = one.position;
    if (one.off) json["off"] = toJson(*one.off);
    if (one.on) json["on"] = toJson(*one.on);
    json["description"] = one.description;
    json["completedOn"] = one.completedOn;
    json["certificateKind"] = one.certificateKind;
    json["counters"] = toJson(one.counters);
}
void put(Json& json, const HandOver& one) {
    json["to"] = one.to;
    putIfAny(json, "words", one.words);
}
void put(Json& json, const Trust& one) {
    json["name"] = one.name;
    json["key"] = one.key;
    json["roles"] = one.roles;
    json["from"] = toText(one.from);
}
void put(Json& json, const Revocation& one) {
    json["key"] = one.key;
    json["from"] = toText(one.from);
    json["why"] = one.why;
}
void put(Json& json, const Removal& one) {
    json["records"] = Json::array();
    for (const Removal::Gone& gone : one.records)
        json["records"].push_back({{"record", gone.record},
                                   {"previous", gone.previous},
                                   {"kind", gone.kind},
                                   {"at", toText(gone.at)}});
    json["basis"] = one.basis;
}

// What was checked is there.
std::string textIn(const Json& json, const char* name) {
    return json.contains(name) ? json[name].get<std::string>() : std::string();
}
Instant instantIn(const Json& json, const char* name) {
    return *parseInstant(json[name].get<std::string>());
}
Person personIn(const Json& json) {
    return {textIn(json, "name"), textIn(json, "role"), textIn(json, "certificate")};
}
std::vector<CounterReading> countersIn(const Json& json, const char* name) {
    std::vector<CounterReading> counters;
    if (!json.contains(name)) return counters;
    for (const Json& one : json[name])
        counters.push_back({one["id"], one["value"]});
    return counters;
}
DiscrepancyId discrepancyIn(const Json& json) {
    return {json["record"], json["point"]};
}
std::optional<Part> partIn(const Json& json, const char* name) {
    if (!json.contains(name)) return std::nullopt;
    const Json& part = json[name];
    return Part{part["name"], part["number"], part["serial"], countersIn(part, "counters")};
}

Entry assessmentFrom(const Json& json) {
    Assessment one{discrepancyIn(json["discrepancy"]), json["words"], {}};
    if (!json.contains("deferral")) return one;
    const Json& from = json["deferral"];
    Deferral& to = one.deferral.emplace();
    to.basis = from["basis"];
    to.reference = textIn(from, "reference");
    for (const Json& answer : from["answers"])
        to.answers.push_back({answer["question"], answer["yes"].get<bool>()});
    to.removed = from["removed"].get<bool>();
    to.placard = from["placard"];
    to.limits = textIn(from, "limits");
    to.until = textIn(from, "until");
    to.untilCounters = countersIn(from, "untilCounters");
    to.determinedBy = personIn(from["determinedBy"]);
    return one;
}
Entry rectificationFrom(const Json& json) {
    Rectification one;
    for (const Json& id : json["discrepancies"])
        one.of.push_back(discrepancyIn(id));
    one.inspections = json["inspections"].get<std::vector<std::string>>();
    one.description = json["description"];
    one.completedOn = json["completedOn"];
    one.performedBy = textIn(json, "performedBy");
    one.certificateKind = json["certificateKind"];
    one.counters = countersIn(json, "counters");
    return one;
}
Entry readingFrom(const Json& json) {
    return Reading{countersIn(json, "counters")};
}
Entry partChangeFrom(const Json& json) {
    return PartChange{
        json["position"],    partIn(json, "off"),     partIn(json, "on"),          json["description"],
        json["completedOn"], json["certificateKind"], countersIn(json, "counters")};
}
Entry handOverFrom(const Json& json) {
    return HandOver{json["to"], textIn(json, "words")};
}
Entry trustFrom(const Json& json) {
    return Trust{json["name"], json["key"], json["roles"].get<std::vector<std::string>>(),
                 instantIn(json, "from")};
}
Entry revocationFrom(const Json& json) {
    return Revocation{json["key"], instantIn(json, "from"), json["why"]};
}
Entry removalFrom(const Json& json) {
    Removal one;
    for (const Json& gone : json["records"])
        one.records.push_back({gone["record"], gone["previous"].get<std::vector<std::string>>(), gone["kind"],
                               instantIn(gone, "at")});
    one.basis = json["basis"];
    return one;
}

bool sortedOnce(const Json& list) {
    return std::adjacent_find(list.begin(), list.end(),
                              [](const Json& a, const Json& b) { return a >= b; }) == list.end();
}

Result<void> checkCounters(const Json& list, const std::string& pointer) {
    for (std::size_t i = 0; i < list.size(); ++i) {
        if (list[i]["value"].get_ref<const std::string&>().front() == '-')
            return wrong("A counter doesn't count below 0.", pointerTo(pointer, i));
        for (std::size_t j = 0; j < i; ++j)
            if (list[i]["id"] == list[j]["id"])
                return wrong("This counter is there twice.", pointerTo(pointer, i));
    }
    return {};
}

/// What a shape can't say.
Result<void> checkSense(const Json& content) {
    const std::string kind = content["kind"];
    if (!sortedOnce(content["previous"]))
        return wrong("The earlier records must be sorted, each once.", "/previous");
    if (content.contains("counters"))
        if (auto good = checkCounters(content["counters"], "/counters"); !good) return good;
    for (const char* part : {"off", "on"})
        if (content.contains(part))
            if (auto good = checkCounters(content[part]["counters"], pointerTo("", part) + "/counters");
                !good)
                return good;
    if (content.contains("deferral") && content["deferral"].contains("untilCounters"))
        if (auto good = checkCounters(content["deferral"]["untilCounters"], "/deferral/untilCounters"); !good)
            return good;
    const bool signsWork = kind == "rectification" || kind == "part change";
    if (signsWork && content["signer"]["certificate"].get_ref<const std::string&>().empty())
        return wrong("Work is approved with the number of a certificate (14 CFR 43.9(a)(4)).",
                     "/signer/certificate");
    if (kind == "reading" && content["counters"].empty())
        return wrong("A reading says at least one counter.", "/counters");
    if (kind == "part change" && !content.contains("off") && !content.contains("on"))
        return wrong("A part change takes a part off, puts one on, or both.", "/off");
    if (kind == "trust" && content["roles"].empty())
        return wrong("Nothing is said that the key is good for.", "/roles");
    if (kind == "removal") {
        if (content["records"].empty()) return wrong("No record is named that was let go.", "/records");
        for (std::size_t i = 0; i < content["records"].size(); ++i)
            if (!sortedOnce(content["records"][i]["previous"]))
                return wrong("The earlier records must be sorted, each once.",
                             pointerTo("/records", i) + "/previous");
    }
    if (kind != "assessment" || !content.contains("deferral")) return {};
    const Json& deferral = content["deferral"];
    if (deferral["basis"] == underRule && deferral["answers"].empty())
        return wrong("A deferral under 91.213(d) answers its questions.", "/deferral/answers");
    if (deferral["basis"] != underRule && !deferral.contains("reference"))
        return wrong("This basis needs a reference: which list, which item.", "/deferral/reference");
    return {};
}

} // namespace

const std::vector<std::string_view>& deferralBases() {
    static const std::vector<std::string_view> all{underRule, "minimum equipment list", "other"};
    return all;
}

const char* kindOf(const Entry& entry) {
    static constexpr const char* names[] = {"assessment", "rectification", "reading",    "part change",
                                            "hand-over",  "trust",         "revocation", "removal"};
    static_assert(std::size(names) == std::variant_size_v<Entry>);
    return names[entry.index()];
}

bool isEntry(const Json& content) {
    return content.is_object() && content.value("kind", Json()).is_string() &&
           kinds().contains(content["kind"].get<std::string>());
}

Result<void> checkEntry(const Json& content) {
    static const std::map<std::string, Shape> shapes = [] {
        std::map<std::string, Shape> all;
        for (const auto& [kind, own] : kinds())
            all.emplace(kind, contentShape(own));
        return all;
    }();
    if (!isEntry(content)) return wrong("This is no kind of record.", "/kind");
    if (auto good = checkShape(content, shapes.at(content["kind"])); !good) return good;
    return checkSense(content);
}

Result<Json> entryContent(const Heading& heading, const Entry& entry) {
    Json content{{"format", "ambit-record"},
                 {"version", version},
                 {"kind", kindOf(entry)},
                 {"aircraft", {{"registration", heading.registration}, {"serial", heading.serial}}},
                 {"at", toText(heading.at.at)},
                 {"offsetMinutes", heading.at.offsetMinutes},
                 {"previous", heading.previous},
                 {"signer", toJson(heading.signer)},
                 {"software", {{"name", "Ambit"}, {"version", AMBIT_VERSION}}},
                 {"statement", statement}};
    content.update(toJson(entry));
    if (auto good = checkEntry(content); !good) return tl::unexpected(good.error());
    return content;
}

Json toJson(const Entry& entry) {
    Json own = Json::object();
    std::visit([&](const auto& one) { put(own, one); }, entry);
    return own;
}

Entry entryFrom(const std::string& kind, const Json& own) {
    using From = Entry (*)(const Json&);
    static const std::map<std::string, From> readers{
        {"assessment", assessmentFrom}, {"rectification", rectificationFrom},
        {"reading", readingFrom},       {"part change", partChangeFrom},
        {"hand-over", handOverFrom},    {"trust", trustFrom},
        {"revocation", revocationFrom}, {"removal", removalFrom}};
    return readers.at(kind)(own);
}

ReadEntry entryFrom(const Json& content) {
    return {{content["aircraft"]["registration"],
             content["aircraft"]["serial"],
             {instantIn(content, "at"), content["offsetMinutes"].get<int>()},
             content["previous"].get<std::vector<std::string>>(),
             personIn(content["signer"])},
            entryFrom(content["kind"].get_ref<const std::string&>(), content)};
}

} // namespace ambit::record
