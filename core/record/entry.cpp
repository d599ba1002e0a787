#include "record/entry.hpp"

#include "base/pointer.hpp"
#include "record/shape.hpp"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

namespace ambit::record {

namespace {

using Is = Shape::Is;
using round::CounterReading;

const Shape text(Is::text);
const Shape hash(Is::hash);
const Shape instant(Is::instant);
const Shape date(Is::date);
constexpr bool optional = false;

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
const std::map<std::string_view, std::vector<Field>>& kinds() {
    static const std::map<std::string_view, std::vector<Field>> all{
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
          {"basis", text}}},
        {"renewal",
         {{"value", object({{"record", hash}, {"point", text}})},
          {"renewed", Shape(Is::flag)},
          {"words", text, optional}}}};
    return all;
}

Shape contentShape(std::string_view kind, std::vector<Field> own) {
    const int version = entryVersion(kind);
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
    own.insert(own.end(), fields.begin(), fields.end());
    return object(std::move(own));
}

/// One of each kind.
struct Shapes {
    explicit Shapes(Shape (*shapeOf)(std::string_view kind, std::vector<Field>)) {
        for (const auto& [kind, own] : kinds())
            of.emplace(kind, shapeOf(kind, own));
    }
    std::map<std::string_view, Shape> of;
};

tl::unexpected<Error> wrong(Sentence what, std::string pointer) {
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
void put(Json& json, const Renewal& one) {
    json["value"] = {{"record", one.of.record}, {"point", one.of.point}};
    json["renewed"] = one.renewed;
    putIfAny(json, "words", one.words);
}

// What was checked is there.
std::string textIn(JsonView json, std::string_view name) {
    return std::string(json[name].text());
}
Instant instantIn(JsonView json, std::string_view name) {
    return parseInstant(json[name].text()).value_or(Instant());
}
std::vector<std::string> textsIn(JsonView json, std::string_view name) {
    std::vector<std::string> texts;
    for (const JsonView one : json[name].elements())
        texts.emplace_back(one.text());
    return texts;
}
Person personIn(JsonView json) {
    return {textIn(json, "name"), textIn(json, "role"), textIn(json, "certificate")};
}
std::vector<CounterReading> countersIn(JsonView json, std::string_view name) {
    std::vector<CounterReading> counters;
    for (const JsonView one : json[name].elements())
        counters.push_back({textIn(one, "id"), textIn(one, "value")});
    return counters;
}
DiscrepancyId discrepancyIn(JsonView json) {
    return {textIn(json, "record"), textIn(json, "point")};
}
std::optional<Part> partIn(JsonView json, std::string_view name) {
    const JsonView part = json[name];
    if (!part) return std::nullopt;
    return Part{textIn(part, "name"), textIn(part, "number"), textIn(part, "serial"),
                countersIn(part, "counters")};
}

Entry assessmentFrom(JsonView json) {
    Assessment one{discrepancyIn(json["discrepancy"]), textIn(json, "words"), {}};
    const JsonView from = json["deferral"];
    if (!from) return one;
    Deferral& to = one.deferral.emplace();
    to.basis = textIn(from, "basis");
    to.reference = textIn(from, "reference");
    for (const JsonView answer : from["answers"].elements())
        to.answers.push_back({textIn(answer, "question"), answer["yes"].flag()});
    to.removed = from["removed"].flag();
    to.placard = textIn(from, "placard");
    to.limits = textIn(from, "limits");
    to.until = textIn(from, "until");
    to.untilCounters = countersIn(from, "untilCounters");
    to.determinedBy = personIn(from["determinedBy"]);
    return one;
}
Entry rectificationFrom(JsonView json) {
    Rectification one;
    for (const JsonView id : json["discrepancies"].elements())
        one.of.push_back(discrepancyIn(id));
    one.inspections = textsIn(json, "inspections");
    one.description = textIn(json, "description");
    one.completedOn = textIn(json, "completedOn");
    one.performedBy = textIn(json, "performedBy");
    one.certificateKind = textIn(json, "certificateKind");
    one.counters = countersIn(json, "counters");
    return one;
}
Entry readingFrom(JsonView json) {
    return Reading{countersIn(json, "counters")};
}
Entry partChangeFrom(JsonView json) {
    return PartChange{textIn(json, "position"),    partIn(json, "off"),
                      partIn(json, "on"),          textIn(json, "description"),
                      textIn(json, "completedOn"), textIn(json, "certificateKind"),
                      countersIn(json, "counters")};
}
Entry handOverFrom(JsonView json) {
    return HandOver{textIn(json, "to"), textIn(json, "words")};
}
Entry trustFrom(JsonView json) {
    return Trust{textIn(json, "name"), textIn(json, "key"), textsIn(json, "roles"), instantIn(json, "from")};
}
Entry revocationFrom(JsonView json) {
    return Revocation{textIn(json, "key"), instantIn(json, "from"), textIn(json, "why")};
}
Entry removalFrom(JsonView json) {
    Removal one;
    for (const JsonView gone : json["records"].elements())
        one.records.push_back(
            {textIn(gone, "record"), textsIn(gone, "previous"), textIn(gone, "kind"), instantIn(gone, "at")});
    one.basis = textIn(json, "basis");
    return one;
}
Entry renewalFrom(JsonView json) {
    const JsonView value = json["value"];
    return Renewal{
        {textIn(value, "record"), textIn(value, "point")}, json["renewed"].flag(), textIn(json, "words")};
}

Result<void> checkCounters(JsonView list, const std::string& pointer) {
    std::set<std::string_view> seen;
    std::size_t i = 0;
    for (const JsonView one : list.elements()) {
        const std::size_t at = i++;
        if (one["value"].text().starts_with('-'))
            return wrong(say("A counter doesn't count below 0."), pointerTo(pointer, at));
        if (!seen.insert(one["id"].text()).second)
            return wrong(say("This counter is there twice."), pointerTo(pointer, at));
    }
    return {};
}

/// What a shape can't say.
Result<void> checkSense(JsonView content) {
    const std::string_view kind = content["kind"].text();
    if (!sortedOnce(content["previous"]))
        return wrong(say("The earlier records must be sorted, each once."), "/previous");
    if (auto good = checkCounters(content["counters"], "/counters"); !good) return good;
    for (const char* part : {"off", "on"})
        if (auto good = checkCounters(content[part]["counters"], pointerTo("", part) + "/counters"); !good)
            return good;
    if (auto good = checkCounters(content["deferral"]["untilCounters"], "/deferral/untilCounters"); !good)
        return good;
    const bool signsWork = kind == "rectification" || kind == "part change";
    if (signsWork && content["signer"]["certificate"].text().empty())
        return wrong(say("Work is approved with the number of a certificate (14 CFR 43.9(a)(4))."),
                     "/signer/certificate");
    if (kind == "reading" && content["counters"].size() == 0)
        return wrong(say("A reading says at least one counter."), "/counters");
    if (kind == "part change" && !content["off"] && !content["on"])
        return wrong(say("A part change takes a part off, puts one on, or both."), "/off");
    if (kind == "trust" && content["roles"].size() == 0)
        return wrong(say("Nothing is said that the key is good for."), "/roles");
    const std::string_view role = content["signer"]["role"].text();
    if (kind == "renewal" && role != "owner" && role != "mechanic")
        return wrong(say("That a part was renewed is said afterwards by the owner or a mechanic."),
                     "/signer/role");
    if (kind == "removal") {
        if (content["records"].size() == 0)
            return wrong(say("No record is named that was let go."), "/records");
        std::size_t i = 0;
        for (const JsonView gone : content["records"].elements())
            if (const std::size_t at = i++; !sortedOnce(gone["previous"]))
                return wrong(say("The earlier records must be sorted, each once."),
                             pointerTo("/records", at) + "/previous");
    }
    const JsonView deferral = content["deferral"];
    if (kind != "assessment" || !deferral) return {};
    const std::string_view basis = deferral["basis"].text();
    if (basis == underRule && deferral["answers"].size() == 0)
        return wrong(say("A deferral under 91.213(d) answers its questions."), "/deferral/answers");
    if (basis != underRule && !deferral["reference"])
        return wrong(say("This basis needs a reference: which list, which item."), "/deferral/reference");
    return {};
}

} // namespace

const std::vector<std::string_view>& deferralBases() {
    static const std::vector<std::string_view> all{underRule, "minimum equipment list", "other"};
    return all;
}

const char* kindOf(const Entry& entry) {
    static constexpr const char* names[] = {"assessment",  "rectification", "reading",
                                            "part change", "hand-over",     "trust",
                                            "revocation",  "removal",       "renewal"};
    static_assert(std::size(names) == std::variant_size_v<Entry>);
    return names[entry.index()];
}

int entryVersion(std::string_view kind) {
    if (!kinds().contains(kind)) return 0;
    return kind == "renewal" ? 7 : 3;
}

bool isEntry(JsonView content) {
    return kinds().contains(content["kind"].text());
}

bool isEntry(const Json& content) {
    if (!content.is_object()) return false;
    const auto kind = content.find("kind");
    return kind != content.end() && kind->is_string() &&
           kinds().contains(kind->get_ref<const std::string&>());
}

Result<void> checkEntry(JsonView content) {
    static const Shapes shapes(contentShape);
    const auto shape = shapes.of.find(content["kind"].text());
    if (shape == shapes.of.end()) return wrong(say("This is no kind of record."), "/kind");
    if (auto good = checkShape(content, shape->second); !good) return good;
    return checkSense(content);
}

Result<void> checkOwn(std::string_view kind, JsonView own) {
    static const Shapes shapes(
        [](std::string_view, std::vector<Field> fields) { return object(std::move(fields)); });
    const auto shape = shapes.of.find(kind);
    if (shape == shapes.of.end()) return wrong(say("This is no kind of record."), "/kind");
    return checkShape(own, shape->second);
}

Result<void> checkEntry(const Json& content) {
    JsonTape tape;
    const auto read = tape.write(content);
    if (!read) return tl::unexpected(read.error());
    return checkEntry(*read);
}

Result<Json> entryContent(const Heading& heading, const Entry& entry) {
    Json content{{"format", "ambit-record"},
                 {"version", entryVersion(kindOf(entry))},
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

Entry entryFrom(std::string_view kind, JsonView own) {
    using From = Entry (*)(JsonView);
    static const std::map<std::string_view, From> readers{
        {"assessment", assessmentFrom}, {"rectification", rectificationFrom},
        {"reading", readingFrom},       {"part change", partChangeFrom},
        {"hand-over", handOverFrom},    {"trust", trustFrom},
        {"revocation", revocationFrom}, {"removal", removalFrom},
        {"renewal", renewalFrom}};
    return readers.at(kind)(own);
}

ReadEntry entryFrom(JsonView content) {
    const JsonView aircraft = content["aircraft"];
    return {{textIn(aircraft, "registration"),
             textIn(aircraft, "serial"),
             {instantIn(content, "at"), static_cast<int>(content["offsetMinutes"].integer().value_or(0))},
             textsIn(content, "previous"),
             personIn(content["signer"])},
            entryFrom(content["kind"].text(), content)};
}

ReadEntry entryFrom(const Json& content) {
    JsonTape tape;
    return entryFrom(tape.write(content).value_or(JsonView()));
}

} // namespace ambit::record
