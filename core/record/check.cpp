// Checks a content: first its shape, then what it says against its own events.
#include "base/pointer.hpp"
#include "record/asked.hpp"
#include "record/content.hpp"
#include "record/entry.hpp"
#include "record/shape.hpp"
#include "record/summary.hpp"

namespace ambit::record {

namespace {

using Is = Shape::Is;

constexpr std::int64_t largestPhoto = std::int64_t{64} << 20;

tl::unexpected<Error> wrong(Sentence what, const std::string& pointer) {
    return fail(ErrorCode::invalid, std::move(what), pointer);
}

const Shape text(Is::text);
const Shape hash(Is::hash);
const Shape instant(Is::instant);
const Shape decimal(Is::decimal);
constexpr bool optional = false;
constexpr std::int64_t mostSeconds = std::int64_t{100} * 366 * 86400; ///< a hundred years
constexpr std::int64_t mostPoints = 500;                              ///< of an airframe

Shape settlingWith(std::vector<Field> more) {
    std::vector<Field> fields{
        {"outcome", word({"sound", "finding", "not inspected"})},
        {"at", instant},
        {"by", word({"key"}), optional},
        {"portion", Shape(Is::flag), optional},
        {"finding", object({{"words", text}, {"class", word({"assess", "grounds"})}, {"photos", list(hash)}}),
         optional},
        {"notInspected", object({{"why", text}, {"basis", text, optional}}), optional},
        {"photos", list(hash), optional},
        {"measurements",
         list(object({{"what", word({"distance", "margin", "area", "width", "slip", "offset"})},
                      {"value", decimal},
                      {"unit", word({"mm", "mm²", "°"})},
                      {"uncertainty", decimal},
                      {"photo", hash}})),
         optional}};
    fields.insert(fields.end(), more.begin(), more.end());
    return object(std::move(fields));
}

Shape eventNumber() {
    return integer(1, 1000000000);
}

Shape interruptionShape() {
    return object({{"event", eventNumber()},
                   {"at", instant},
                   {"cause", word({"paused", "call", "locked", "away", "silent", "stopped"})},
                   {"seconds", integer(0, mostSeconds)},
                   {"rule", word({"points", "stand", "start"})},
                   {"back", integer(1, round::mostBack), optional},
                   {"again", integer(0, mostPoints)}});
}

Shape quickRunShape() {
    return object({{"event", eventNumber()},
                   {"points", integer(2, mostPoints)},
                   {"ms", integer(0, mostSeconds * 1000)},
                   {"again", integer(0, mostPoints)}});
}

Shape askNumber() {
    return integer(1, round::mostAsks);
}

/// What was asked, and what came of it.
Shape askShape() {
    return object({{"ask", askNumber()},
                   {"kind", word({"look again", "question", "remark"})},
                   {"point", text, optional},
                   {"name", text, optional},
                   {"words", text, optional},
                   {"said", instant},
                   {"at", instant},
                   {"who", person()},
                   {"became", word({"settled", "answered", "declined", "told"})},
                   {"until", instant, optional},
                   {"answer", text, optional},
                   {"why", text, optional}});
}

std::vector<Field> valueWith(std::vector<Field> more) {
    std::vector<Field> fields{
        {"value", decimal},
        {"renewed", Shape(Is::flag), optional},
        {"from", word({"photo", "gauge", "ruler", "dipstick", "meter", "count", "eye"}), optional},
        {"uncertainty", decimal, optional}};
    fields.insert(fields.end(), more.begin(), more.end());
    return fields;
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
          object(valueWith({{"quantity", text},
                            {"unit", text},
                            {"limit", text},
                            {"source", text},
                            {"verdict", word({"within", "below", "above"})}})),
          optional},
         {"trend",
          object({{"is", word({"within", "near", "passed"})},
                  {"then", word({"against", "warns"}), optional},
                  {"words", list(text)}}),
          optional},
         {"earlier",
          list(settlingWith({{"measured", object(valueWith({{"unit", text, optional}})), optional},
                             {"reopened", object({{"at", instant}, {"why", text}}), optional},
                             {"asked", object({{"at", instant}, {"ask", askNumber()}}), optional},
                             {"back", object({{"at", instant}, {"event", eventNumber()}}), optional}})),
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
         {"version", integer(1, newestVersion)},
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
         {"asks", list(askShape()), optional},
         {"interruptions", list(interruptionShape()), optional},
         {"quickRun", quickRunShape(), optional},
         {"clock", object({{"at", instant}, {"satellite", instant}}), optional},
         {"night", Shape(Is::flag), optional},
         {"cautions", list(text)},
         {"photos", list(object({{"sha256", hash},
                                 {"type", word({"image/jpeg", "image/png"})},
                                 {"bytes", integer(1, largestPhoto)}}))},
         {"software", object({{"name", text}, {"version", text}})},
         {"statement", text},
         {"events", list(Shape(Is::anything))}});
}

/// Another version or kind is not wrong, only unknown here.
Result<void> checkKind(JsonView content) {
    if (content["format"].text() != "ambit-record")
        return wrong(say("This is not the content of a record: its format is not “ambit-record”."),
                     "/format");
    const auto version = content["version"].integer();
    if (version && *version > newestVersion)
        return fail(
            ErrorCode::unsupported,
            say("This record was made by a newer Ambit: its version is %1, and this one knows those up "
                "to %2.",
                figure(std::to_string(*version)), figure(std::to_string(newestVersion))),
            "/version", say("Update this Ambit."));
    if (!version || *version < 1 || content["kind"].text() != "round")
        return fail(ErrorCode::unsupported, say("This Ambit doesn't know records of this version and kind."),
                    "/version", say("Use a newer Ambit."));
    return {};
}

Result<std::vector<round::Event>> eventsOf(JsonView list) {
    std::vector<round::Event> events;
    events.reserve(list.size());
    for (const JsonView one : list.elements()) {
        auto event = round::eventFrom(one);
        if (!event) {
            Error error = event.error();
            error.where = pointerTo("/events", events.size()) + error.where;
            return tl::unexpected(error);
        }
        events.push_back(std::move(*event));
    }
    return events;
}

/// What others said in it was said by them, and of this round.
Result<void> checkAsks(const std::vector<round::Event>& events, const std::string& roundId) {
    std::size_t i = 0;
    for (const round::Event& event : events) {
        const std::size_t at = i++;
        const auto* asked = std::get_if<round::Asked>(&event.what);
        if (asked == nullptr) continue;
        if (asked->statement.round != roundId)
            return wrong(say("This was said of another round."),
                         pointerTo("/events", at) + "/statement/round");
        if (const auto good = checkAsked(*asked); !good) {
            Error error = good.error();
            error.where = pointerTo("/events", at) + error.where;
            return tl::unexpected(error);
        }
    }
    return {};
}

/// What `fit` can't stand beside, and what `sound` can't.
Result<void> checkConclusion(JsonView content) {
    const bool fit = content["conclusion"]["fit"].flag();
    std::size_t i = 0;
    for (const JsonView point : content["points"].elements()) {
        const std::size_t at = i++;
        const bool grounding = point["finding"]["class"].text() == "grounds";
        const JsonView notInspected = point["notInspected"];
        if (fit && (grounding || (notInspected && !notInspected["basis"])))
            return wrong(say("“fit” can't stand beside this point's outcome."), pointerTo("/points", at));
        if (fit && point["trend"]["then"].text() == "against")
            return wrong(say("“fit” can't stand beside where this point's value is going."),
                         pointerTo("/points", at));
        const JsonView measured = point["measured"];
        if (measured && point["outcome"].text() == "sound" && measured["verdict"].text() != "within")
            return wrong(say("A value out of its limit isn't sound."), pointerTo("/points", at));
    }
    return {};
}

} // namespace

Result<void> checkContent(JsonView content) {
    static const Shape shape = contentShape();
    if (isEntry(content) && content["version"].integer() == entryVersion(content["kind"].text()))
        return checkEntry(content);
    if (auto good = checkKind(content); !good) return good;
    if (auto good = checkShape(content, shape); !good) return good;
    if (!sortedOnce(content["previous"]))
        return wrong(say("The earlier records must be sorted, each once."), "/previous");
    const JsonView list = content["events"];
    const auto events = eventsOf(list);
    if (!events) return tl::unexpected(events.error());
    if (content["version"].integer() != versionOf(*events))
        return wrong(say("The version isn't the one that brought the latest kind among the events."),
                     "/version");
    const auto told = Summary::of(*events);
    if (!told) {
        return wrong(told.error().what,
                     "/events" + (told.error().where.empty() ? "" : " " + told.error().where));
    }
    const std::string roundId = round::roundIdOf(list.at(0));
    if (auto at = told->differsIn(content, roundId))
        return wrong(say("This isn't what the record's own events say."), *at);
    if (auto good = checkAsks(*events, roundId); !good) return good;
    return checkConclusion(content);
}

Result<void> checkContent(const Json& content) {
    JsonTape tape;
    const auto read = tape.write(content);
    if (!read) return tl::unexpected(read.error());
    return checkContent(*read);
}

} // namespace ambit::record
