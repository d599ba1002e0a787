// Events from JSON; EVENT.md is the format. What is accepted here is written back exactly the same.
#include "base/decimal.hpp"
#include "base/fields.hpp"
#include "round/event.hpp"

#include <algorithm>

namespace ambit::round {

namespace {

constexpr std::size_t mostSteps = 10000;
constexpr std::size_t mostPhotos = 100;
constexpr std::int64_t mostPhotoBytes = std::int64_t{64} << 20;
constexpr std::int64_t mostEvents = 1000000000;
constexpr int mostOffset = 14 * 60;
constexpr std::int64_t mostAreas = 1000;
constexpr std::size_t fewestCorners = 3;
constexpr std::size_t mostCorners = 20;
constexpr std::size_t mostDecimals = 3;
constexpr std::size_t idDigits = 32;
constexpr std::int64_t mostSeconds = std::int64_t{100} * 366 * 86400; ///< a hundred years
constexpr std::size_t mostPoints = 500;                               ///< of an airframe

std::vector<walk::Step> planFrom(Fields& fields) {
    std::vector<walk::Step> plan;
    for (Fields step : fields.list("plan", mostSteps)) {
        if (step.has("go"))
            plan.emplace_back(walk::Go{step.text("go")});
        else if (step.has("set"))
            plan.emplace_back(walk::Set{step.text("set"), step.text("to")});
        else
            plan.emplace_back(walk::Settle{step.text("settle")});
        step.end();
    }
    return plan;
}

std::string degrees(Fields& fields, const char* name, const char* most) {
    std::string written = fields.decimal(name);
    const auto value = Decimal::parse(written);
    const auto high = Decimal::parse(most);
    const auto low = Decimal::parse(std::string("-") + most);
    if (value && (*value < *low || *value > *high))
        fields.fail(say("Degrees from -%1 to %1 are expected here.", most), name);
    return written;
}

Position positionFrom(Fields&& fields) {
    Position position{degrees(fields, "latitude", "90"), degrees(fields, "longitude", "180")};
    fields.end();
    return position;
}

Person personFrom(Fields&& fields) {
    Person person;
    person.name = fields.text("name");
    (void)fields.word("role", {"pilot", "instructor", "owner", "mechanic"});
    person.role = fields.view("role");
    person.certificate = fields.textOrEmpty("certificate");
    fields.end();
    return person;
}

Opened openedFrom(Fields& fields) {
    Opened opened;
    Fields aircraft = fields.inner("aircraft");
    opened.registration = aircraft.text("registration");
    opened.serial = aircraft.text("serial");
    aircraft.end();
    Fields airframe = fields.inner("airframe");
    opened.airframe = airframe.text("id");
    opened.airframeSha256 = airframe.hash("sha256");
    airframe.end();
    opened.walk = fields.text("walk");
    opened.who = personFrom(fields.inner("who"));
    for (Fields reading : fields.list("counters", 100)) {
        opened.counters.push_back({reading.text("id"), reading.decimal("value")});
        reading.end();
    }
    opened.offsetMinutes = static_cast<int>(fields.integer("offsetMinutes", -mostOffset, mostOffset));
    if (fields.has("position")) opened.position = positionFrom(fields.inner("position"));
    opened.plan = planFrom(fields);
    return opened;
}

std::vector<Photo> photosFrom(Fields& fields) {
    std::vector<Photo> photos;
    for (Fields photo : fields.list("photos", mostPhotos)) {
        Photo& one = photos.emplace_back();
        one.sha256 = photo.hash("sha256");
        (void)photo.word("type", {"image/jpeg", "image/png"});
        one.type = photo.view("type");
        one.bytes = photo.integer("bytes", 1, mostPhotoBytes);
        photo.end();
    }
    return photos;
}

/// What a value is from: version 5 knew photos, version 6 brought the rest.
void valueFrom(Fields& fields, Settled& settled) {
    if (fields.has("valueFrom")) {
        settled.from = airframe::meansFrom(wordOfFrom(fields, "valueFrom"));
        settled.byPhoto = !settled.from;
    }
    if (fields.has("uncertainty")) {
        settled.uncertainty = zeroOrMore(fields, "uncertainty");
        // A photo's stands with its measurement.
        if (!settled.from)
            fields.fail(say("An uncertainty goes with what the value was read from."), "uncertainty");
    }
    if (settled.from && !settled.value)
        fields.fail(say("What was read from something has a value."), "valueFrom");
}

/// What version 5 brought.
void measuredFrom(Fields& fields, Settled& settled) {
    valueFrom(fields, settled);
    settled.unit = fields.textIfThere("unit");
    if (fields.has("renewed")) {
        const JsonView renewed = fields.any("renewed");
        settled.renewed = renewed.isFlag() && renewed.flag();
        if (!settled.renewed) fields.fail(say("true is expected here, or nothing."), "renewed");
    }
    // Whoever reads a record without its airframe has no rules to ask, and takes the first measurement.
    if (settled.byPhoto && !fields.has("measurements"))
        fields.fail(say("The value isn't the one measured in the photo."), "valueFrom");
    if (!fields.has("measurements")) return;
    for (Fields one : fields.list("measurements", mostMeasurements))
        settled.measurements.push_back(measurementFrom(std::move(one)));
    if (settled.measurements.empty())
        fields.fail(say("A list that isn't empty is expected here."), "measurements");
    else if (settled.byPhoto && settled.measurements.front().value != settled.value)
        fields.fail(say("The value isn't the one measured in the photo."), "valueFrom");
    for (const Measurement& one : settled.measurements)
        if (std::none_of(settled.photos.begin(), settled.photos.end(),
                         [&](const Photo& photo) { return photo.sha256 == one.photo; }))
            fields.fail(say("What was measured in a photo needs that photo."), "measurements");
}

Settled settledFrom(Fields& fields) {
    Settled settled;
    settled.point = fields.text("point");
    settled.outcome = static_cast<Outcome>(fields.word("outcome", {"sound", "finding", "not inspected"}));
    if (fields.has("by")) {
        (void)fields.word("by", {"key"});
        settled.by = By::key;
    }
    if (settled.outcome == Outcome::notInspected) {
        settled.why = fields.text("why");
        settled.basis = fields.textIfThere("basis");
        return settled;
    }
    if (fields.has("value")) settled.value = fields.decimal("value");
    if (settled.outcome == Outcome::finding) {
        settled.words = fields.text("words");
        settled.severity =
            fields.word("class", {"assess", "grounds"}) == 0 ? Severity::assess : Severity::grounds;
        settled.photos = photosFrom(fields);
    } else if (fields.has("photos")) {
        settled.photos = photosFrom(fields);
        if (settled.photos.empty()) fields.fail(say("A list that isn't empty is expected here."), "photos");
    }
    measuredFrom(fields, settled);
    return settled;
}

bool isMetres(JsonView json) {
    const std::string_view text = json.text();
    const auto value = Decimal::parse(text);
    const std::size_t dot = text.find('.');
    return value && *value >= *Decimal::parse("-100") && *value <= *Decimal::parse("100") &&
           (dot == std::string_view::npos || text.size() - dot - 1 <= mostDecimals);
}

std::vector<Corner> outlineFrom(Fields& fields) {
    std::vector<Corner> outline;
    const JsonView list = fields.any("outline");
    if (!list) {
        fields.fail(say("This field is missing."), "outline");
        return outline;
    }
    if (!list.isList() || list.size() < fewestCorners || list.size() > mostCorners) {
        fields.fail(say("A list of 3 to 20 corners is expected here."), "outline");
        return outline;
    }
    for (const JsonView corner : list.elements()) {
        const JsonView x = corner.at(0);
        const JsonView y = corner.at(1);
        if (!corner.isList() || corner.size() != 2 || !isMetres(x) || !isMetres(y)) {
            fields.fail(
                say("A corner is two decimal strings, metres from -100 to 100 with at most 3 decimals."),
                "outline");
            return outline;
        }
        outline.push_back({std::string(x.text()), std::string(y.text())});
    }
    return outline;
}

AreaMarked areaFrom(Fields& fields) {
    AreaMarked marked;
    marked.area = fields.integer("area", 1, mostAreas);
    marked.outline = outlineFrom(fields);
    marked.why = fields.text("why");
    return marked;
}

Instant instantFrom(Fields& fields, const char* name = "at") {
    if (const auto instant = parseInstant(fields.view(name))) return *instant;
    fields.fail(say("A time like 2026-06-20T05:30:00.000Z is expected here."), name);
    return {};
}

std::string idFrom(Fields& fields, const char* name) {
    std::string id = fields.text(name);
    if (id.size() != idDigits || id.find_first_not_of("0123456789abcdef") != std::string::npos)
        fields.fail(say("32 hex digits in lower case are expected here."), name);
    return id;
}

Statement statementOf(Fields&& fields) {
    Statement statement;
    statement.round = idFrom(fields, "round");
    statement.id = idFrom(fields, "id");
    statement.kind = static_cast<Statement::Kind>(fields.word("kind", {"look again", "question", "remark"}));
    const bool lookAgain = statement.kind == Statement::Kind::lookAgain;
    statement.point = lookAgain ? fields.text("point") : fields.textIfThere("point");
    statement.words = lookAgain ? fields.textIfThere("words") : fields.text("words");
    statement.at = instantFrom(fields);
    statement.who = personFrom(fields.inner("who"));
    fields.end();
    return statement;
}

Jws jwsOf(Fields&& fields) {
    Jws jws{fields.text("protected"), fields.text("signature")};
    fields.end();
    return jws;
}

Asked askedFrom(Fields& fields) {
    Asked asked;
    asked.ask = fields.integer("ask", 1, mostAsks);
    asked.statement = statementOf(fields.inner("statement"));
    asked.jws = jwsOf(fields.inner("jws"));
    return asked;
}

std::vector<std::string> idsFrom(Fields& fields, const char* name, std::size_t fewest, std::size_t most) {
    std::vector<std::string> ids;
    const JsonView list = fields.any(name);
    if (!list.isList() || list.size() < fewest || list.size() > most) {
        fields.fail(say("A list of %1 to %2 points is expected here.", figure(std::to_string(fewest)),
                        figure(std::to_string(most))),
                    name);
        return ids;
    }
    for (const JsonView one : list.elements()) {
        if (!one.isText() || !one.isPlain() || one.text().empty()) {
            fields.fail(say("A point is expected here."), name);
            return ids;
        }
        ids.emplace_back(one.text());
    }
    return ids;
}

Interrupted interruptedFrom(Fields& fields) {
    Interrupted interrupted;
    interrupted.cause = static_cast<Interrupted::Cause>(
        fields.word("cause", {"paused", "call", "locked", "away", "silent", "stopped"}));
    interrupted.seconds = fields.integer("seconds", 0, mostSeconds);
    interrupted.rule.from = static_cast<BackRule::From>(fields.word("rule", {"points", "stand", "start"}));
    if (interrupted.rule.from == BackRule::From::points)
        interrupted.rule.points = static_cast<int>(fields.integer("back", 1, mostBack));
    interrupted.again = idsFrom(fields, "again", 0, mostPoints);
    return interrupted;
}

QuickRun quickRunFrom(Fields& fields) {
    QuickRun run;
    run.first = fields.integer("first", 1, mostEvents);
    run.last = fields.integer("last", 1, mostEvents);
    run.points = fields.integer("points", 2, static_cast<std::int64_t>(mostPoints));
    run.ms = fields.integer("ms", 0, mostSeconds * 1000);
    run.again = idsFrom(fields, "again", 0, mostPoints);
    return run;
}

std::optional<What> whatFrom(std::string_view kind, Fields& fields) {
    if (kind == "opened") return openedFrom(fields);
    if (kind == "planned") return Planned{fields.text("why"), planFrom(fields)};
    if (kind == "stand") return StandReached{fields.text("stand")};
    if (kind == "setting") return SettingChanged{fields.text("setting"), fields.text("to")};
    if (kind == "settled") return settledFrom(fields);
    if (kind == "reopened") return Reopened{fields.text("point"), fields.text("why")};
    if (kind == "opening made") return OpeningMade{fields.text("opening")};
    if (kind == "opening closed") return OpeningClosed{fields.text("opening")};
    if (kind == "paused") return Paused{};
    if (kind == "resumed") return Resumed{};
    if (kind == "note") return Note{fields.text("words")};
    if (kind == "stand blocked") return StandBlocked{fields.text("stand"), fields.text("why")};
    if (kind == "stand free") return StandFree{fields.text("stand")};
    if (kind == "area marked") return areaFrom(fields);
    if (kind == "area cleared") return AreaCleared{fields.integer("area", 1, mostAreas)};
    if (kind == "light") return Light{fields.word("is", {"low", "good"}) == 0};
    if (kind == "concluded")
        return Concluded{fields.word("result", {"fit", "not fit"}) == 0, fields.textIfThere("reasons")};
    if (kind == "withdrawn") return Withdrawn{fields.text("why")};
    if (kind == "signed")
        return Signed{fields.hash("recordSha256"), fields.hash("certificateSha256"), fields.text("name")};
    if (kind == "asked") return askedFrom(fields);
    if (kind == "alone") return Alone{};
    if (kind == "answered") return Answered{fields.integer("ask", 1, mostAsks), fields.text("words")};
    if (kind == "declined") return Declined{fields.integer("ask", 1, mostAsks), fields.text("why")};
    if (kind == "portion begun") return PortionBegun{idsFrom(fields, "points", 1, mostInPortion)};
    if (kind == "portion ended") return PortionEnded{fields.word("is", {"looked at", "given up"}) == 0};
    if (kind == "interrupted") return interruptedFrom(fields);
    if (kind == "quick run") return quickRunFrom(fields);
    if (kind == "clock") return Clock{instantFrom(fields, "satellite")};
    if (kind == "night") {
        const bool expected = fields.word("is", {"expected", "not expected"}) == 0;
        return Night{expected, fields.word("by", {"sun", "pilot"}) == 0};
    }
    if (kind == "trend") return trendedFrom(fields);
    return std::nullopt;
}

} // namespace

Result<Event> eventFrom(const Json& json) {
    JsonTape tape;
    const auto read = tape.write(json);
    if (!read) return tl::unexpected(read.error());
    return eventFrom(*read);
}

Result<Statement> statementFrom(JsonView json) {
    std::optional<Error> error;
    Statement statement = statementOf(Fields(json, Where(""), error));
    if (error) return tl::unexpected(*error);
    return statement;
}

Result<Jws> jwsFrom(JsonView json) {
    std::optional<Error> error;
    Jws jws = jwsOf(Fields(json, Where(""), error));
    if (error) return tl::unexpected(*error);
    return jws;
}

Result<Event> eventFrom(JsonView json) {
    std::optional<Error> error;
    Fields fields(json, Where(""), error);
    Event event;
    event.seq = fields.integer("seq", 1, mostEvents);
    event.at = instantFrom(fields);
    const std::string_view kind = fields.view("kind");
    if (error) return tl::unexpected(*error);
    std::optional<What> what = whatFrom(kind, fields);
    if (!what)
        return fail(ErrorCode::unsupported, say("This kind of event is not known: %1.", std::string(kind)),
                    "/kind");
    fields.end();
    if (error) return tl::unexpected(*error);
    event.what = std::move(*what);
    return event;
}

} // namespace ambit::round
