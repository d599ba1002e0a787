// Checks a content: first its shape, then what it says against its own events.
#include "base/canonical.hpp"
#include "base/pointer.hpp"
#include "record/content.hpp"
#include "record/entry.hpp"
#include "record/shape.hpp"
#include "record/summary.hpp"

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>

namespace ambit::record {

namespace {

using Is = Shape::Is;

constexpr std::int64_t largestPhoto = std::int64_t{64} << 20;

tl::unexpected<Error> wrong(std::string what, const std::string& pointer) {
    return fail(ErrorCode::invalid, std::move(what), pointer);
}

const Shape text(Is::text);
const Shape hash(Is::hash);
const Shape instant(Is::instant);
const Shape decimal(Is::decimal);
constexpr bool optional = false;

Shape settlingWith(std::vector<Field> more) {
    std::vector<Field> fields{
        {"outcome", word({"sound", "finding", "not inspected"})},
        {"at", instant},
        {"finding", object({{"words", text}, {"class", word({"assess", "grounds"})}, {"photos", list(hash)}}),
         optional},
        {"notInspected", object({{"why", text}, {"basis", text, optional}}), optional}};
    fields.insert(fields.end(), more.begin(), more.end());
    return object(std::move(fields));
}

Shape pointShape() {
    return settlingWith(
        {{"id", text},
         {"name", text},
         {"zone", text},
         {"how", list(word({"look", "feel", "move", "turn", "drain", "measure", "count", "listen"}))},
         {"jasc", text, optional},
         {"stand", text, optional},
         {"settings", list(object({{"name", text}, {"state", text}}))},
         {"measured",
          object({{"value", decimal},
                  {"quantity", text},
                  {"unit", text},
                  {"limit", text},
                  {"source", text},
                  {"verdict", word({"within", "below", "above"})}}),
          optional},
         {"earlier",
          list(settlingWith({{"measured", object({{"value", decimal}}), optional},
                             {"reopened", object({{"at", instant}, {"why", text}})}})),
          optional}});
}

Shape aircraftShape() {
    return object(
        {{"registration", text},
         {"serial", text},
         {"airframe", object({{"id", text}, {"name", text}, {"sha256", hash}, {"notice", text, optional}})},
         {"counters", list(object({{"id", text}, {"name", text}, {"unit", text}, {"value", decimal}}))}});
}

Shape contentShape() {
    return object(
        {{"format", word({"ambit-record"})},
         {"version", integer(1, 2)},
         {"kind", word({"round"})},
         {"aircraft", aircraftShape()},
         {"walk", object({{"id", text}, {"name", text}})},
         {"round", text},
         {"openedAt", instant},
         {"concludedAt", instant},
         {"offsetMinutes", integer(-840, 840)},
         {"position", object({{"latitude", decimal}, {"longitude", decimal}}), optional},
         {"previous", list(hash)},
         {"conclusion", object({{"fit", Shape(Is::flag)}, {"reasons", text, optional}})},
         {"signer", person()},
         {"points", list(pointShape())},
         {"openings",
          list(object({{"id", text}, {"name", text}, {"openedAt", instant}, {"closedAt", instant}}))},
         {"differences",
          list(object({{"what", word({"stand blocked", "area marked", "light low"})},
                       {"at", instant},
                       {"until", instant, optional},
                       {"stand", text, optional},
                       {"name", text, optional},
                       {"area", integer(1, 1000), optional},
                       {"why", text, optional}})),
          optional},
         {"cautions", list(text)},
         {"photos", list(object({{"sha256", hash},
                                 {"type", word({"image/jpeg", "image/png"})},
                                 {"bytes", integer(1, largestPhoto)}}))},
         {"software", object({{"name", text}, {"version", text}})},
         {"statement", text},
         {"events", list(Shape(Is::anything))}});
}

/// Another version or kind is not wrong, only unknown here.
Result<void> checkKind(const Json& content) {
    if (!content.is_object() || content.value("format", Json()) != "ambit-record")
        return wrong("This is not the content of a record: its format is not “ambit-record”.", "/format");
    const Json version = content.value("version", Json());
    if ((version != 1 && version != 2) || content.value("kind", Json()) != "round")
        return fail(ErrorCode::unsupported, "This Ambit doesn't know records of this version and kind.",
                    "/version", "Use a newer Ambit.");
    return {};
}

Result<std::vector<round::Event>> eventsOf(const Json& list) {
    std::vector<round::Event> events;
    for (std::size_t i = 0; i < list.size(); ++i) {
        auto event = round::eventFrom(list[i]);
        if (!event) {
            Error error = event.error();
            error.where = pointerTo("/events", i) + error.where;
            return tl::unexpected(error);
        }
        events.push_back(std::move(*event));
    }
    return events;
}

/// Fields beside which events say nothing: they come from the airframe or from Ambit.
bool isBeyondEvents(std::string_view name) {
    static constexpr std::array<std::string_view, 20> names{
        "format",    "version", "kind",     "previous", "openings", "cautions", "software",
        "statement", "events",  "name",     "notice",   "unit",     "zone",     "how",
        "jasc",      "stand",   "settings", "quantity", "limit",    "source"};
    return name == "verdict" || std::find(names.begin(), names.end(), name) != names.end();
}

/// Pointer of the first thing in `content` that isn't what its events say.
std::optional<std::string> differs(const Json& content, const Json& told, const Where& where) {
    if (told.is_object()) {
        for (const auto& [name, value] : told.items()) {
            const Where at(where, std::string_view(name));
            if (!content.contains(name)) return at.text();
            if (auto found = differs(content[name], value, at)) return found;
        }
        for (const auto& [name, value] : content.items())
            if (!told.contains(name) && !isBeyondEvents(name)) return pointerTo(where.text(), name);
        return std::nullopt;
    }
    if (told.is_array() && content.size() == told.size()) {
        for (std::size_t i = 0; i < told.size(); ++i)
            if (auto found = differs(content[i], told[i], Where(where, i))) return found;
        return std::nullopt;
    }
    return content == told ? std::nullopt : std::optional(where.text());
}

/// What `fit` can't stand beside, and what `sound` can't.
Result<void> checkConclusion(const Json& content) {
    const bool fit = content["conclusion"]["fit"].get<bool>();
    for (std::size_t i = 0; i < content["points"].size(); ++i) {
        const Json& point = content["points"][i];
        const std::string at = pointerTo("/points", i);
        const bool grounding = point.contains("finding") && point["finding"]["class"] == "grounds";
        const bool noBasis = point.contains("notInspected") && !point["notInspected"].contains("basis");
        if (fit && (grounding || noBasis)) return wrong("“fit” can't stand beside this point's outcome.", at);
        if (point["outcome"] == "sound" && point.contains("measured") &&
            point["measured"]["verdict"] != "within")
            return wrong("A value out of its limit isn't sound.", at);
    }
    return {};
}

bool sortedOnce(const Json& hashes) {
    return std::adjacent_find(hashes.begin(), hashes.end(),
                              [](const Json& a, const Json& b) { return a >= b; }) == hashes.end();
}

} // namespace

Result<void> checkContent(const Json& content) {
    static const Shape shape = contentShape();
    if (content.is_object() && content.value("version", Json()) == 3 && isEntry(content))
        return checkEntry(content);
    if (auto good = checkKind(content); !good) return good;
    if (auto good = checkShape(content, shape); !good) return good;
    if (!sortedOnce(content["previous"]))
        return wrong("The earlier records must be sorted, each once.", "/previous");
    const auto events = eventsOf(content["events"]);
    if (!events) return tl::unexpected(events.error());
    if (content["version"] != versionOf(*events))
        return wrong("The version isn't the one that brought the latest kind among the events.", "/version");
    const auto told = summaryOf(*events);
    if (!told) {
        return wrong(told.error().what,
                     "/events" + (told.error().where.empty() ? "" : " " + told.error().where));
    }
    if (auto at = differs(content, *told, Where("")))
        return wrong("This isn't what the record's own events say.", *at);
    return checkConclusion(content);
}

} // namespace ambit::record
