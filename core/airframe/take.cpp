#include "airframe/draft.hpp"
#include "airframe/translate.hpp"

#include <nlohmann/json.hpp>

namespace ambit::airframe {

namespace {

constexpr auto optional = Presence::optional;
constexpr auto required = Presence::required;

Part takePart(Fields& fields) {
    Part part;
    part.id = fields.id("id");
    part.kind = fields
                    .word("kind", {PartKind::body, PartKind::glass, PartKind::wing, PartKind::tail,
                                   PartKind::rotor, PartKind::propeller, PartKind::gear, PartKind::tread})
                    .value_or(PartKind::body);
    part.outline = fields.outline("outline");
    part.solid = fields.boolean("solid", required);
    part.when = fields.when();
    return part;
}

KeepOut takeKeepOut(Fields& fields) {
    return {fields.id("id"), fields.outline("outline"), fields.text("why")};
}

Zone takeZone(Fields& fields) {
    return {fields.id("id"), fields.name("name"), fields.outline("outline")};
}

Counter takeCounter(Fields& fields) {
    return {fields.id("id"), fields.name("name"), fields.name("unit")};
}

/// What access, level and cautions must say together.
void checkAccess(Fields& fields, std::optional<Access> access, std::optional<double> level,
                 std::size_t cautions) {
    if (!access) return;
    const bool raised = *access == Access::step || *access == Access::ladder;
    const std::string word = toText(*access);
    if (level && !raised && *level != 0) {
        fields.errors().add(fields.at("level"),
                            say("A stand with access %1 has its feet on the ground.", inQuotes(word)),
                            say("Make its level 0, or its access step or ladder."));
    }
    if (level && raised && *level == 0) {
        fields.errors().add(fields.at("level"),
                            say("A stand with access %1 has its feet above the ground.", inQuotes(word)),
                            say("Give its level in metres, or make its access ground or kneel."));
    }
    if (raised && cautions == 0) {
        fields.errors().add(fields.at("cautions"),
                            say("A stand with access %1 has no caution.", inQuotes(word)),
                            say("Say what to mind up there."));
    }
}

Stand takeStand(Fields& fields) {
    constexpr double highest = 4;
    Stand stand;
    stand.id = fields.id("id");
    stand.name = fields.name("name");
    stand.at = fields.place("at");
    const auto level = fields.number("level", 0, highest);
    const auto access = fields.word("access", {Access::ground, Access::kneel, Access::step, Access::ladder});
    stand.hands = fields.integer("hands", 0, 2).value_or(0);
    const Json* cautions = fields.get("cautions");
    stand.cautions = fields.texts("cautions");
    stand.stepTo = fields.references("stepTo", optional, 0);
    stand.onlyFrom = fields.references("onlyFrom", optional, 1);
    stand.level = level.value_or(0);
    stand.access = access.value_or(Access::ground);
    if (cautions && cautions->is_array()) checkAccess(fields, access, level, cautions->size());
    return stand;
}

SettingState takeState(Fields& fields) {
    return {fields.id("id"), fields.name("name")};
}

SettingChange takeChange(Fields& fields) {
    constexpr double longest = 3600;
    SettingChange change;
    change.from = fields.string("from");
    change.to = fields.string("to");
    change.stands = fields.references("stands", required, 1);
    change.seconds = fields.number("seconds", 0, longest).value_or(0);
    change.how = fields.text("how");
    change.needs = fields.references("needs", optional, 0);
    change.cautions = fields.texts("cautions", optional);
    return change;
}

DraftSetting takeSetting(Fields& fields) {
    DraftSetting setting;
    setting.id = fields.id("id");
    setting.name = fields.name("name");
    setting.states = fields.list("states", 1, 12, takeState);
    setting.initial = fields.string("initial");
    setting.changes = fields.list("changes", 0, 132, takeChange);
    return setting;
}

RepeatMember takeMember(Fields& fields) {
    return {fields.id("id"), fields.name("name"), fields.when()};
}

Repeat takeRepeat(Fields& fields) {
    return {fields.id("id"), fields.list("over", 1, 24, takeMember)};
}

Opening takeOpening(Fields& fields) {
    return {fields.id("id"), fields.name("name"), fields.text("owed"), fields.boolean("met", optional)};
}

enum class Then { warns, against };

const char* toText(Then then) {
    return then == Then::against ? "against" : "warns";
}

std::optional<Trend> takeTrend(Fields& limit) {
    const Json* given = limit.get("trend", optional);
    if (!given) return std::nullopt;
    Fields fields(*given, limit.at("trend"), limit.errors());
    if (!given->is_object()) return std::nullopt;
    Trend trend;
    trend.over = fields.string("over");
    if (const auto ahead = fields.decimal("ahead", Presence::required); ahead && *ahead < Decimal())
        fields.errors().add(fields.at("ahead"),
                            say("Nobody looks ahead by less than zero: this is %1.", figure(ahead->text())),
                            say("Use zero or more."));
    else if (ahead)
        trend.ahead = *ahead;
    trend.against = fields.word("then", {Then::warns, Then::against}) == Then::against;
    fields.finish();
    return trend;
}

/// What values are usually read from, and how well that tells them.
void takeReading(Fields& fields, Limit& limit) {
    if (fields.get("from", optional))
        limit.from = fields.word(
            "from", {Means::gauge, Means::ruler, Means::dipstick, Means::meter, Means::count, Means::eye});
    limit.uncertainty = fields.decimal("uncertainty");
    if (limit.uncertainty && *limit.uncertainty < Decimal())
        fields.errors().add(fields.at("uncertainty"), say("An uncertainty can't be below zero."),
                            say("Use zero or more."));
    if (fields.get("uncertainty", optional) && !fields.get("from", optional))
        fields.errors().add(fields.at("uncertainty"),
                            say("It isn't said what the value with this uncertainty is read from."),
                            say("Add %1, or take the uncertainty out.", "\"from\""));
}

Limit takeLimit(Fields& fields) {
    Limit limit;
    limit.quantity = fields.name("quantity");
    limit.unit = fields.name("unit");
    limit.min = fields.decimal("min");
    limit.max = fields.decimal("max");
    limit.source = fields.text("source");
    limit.trend = takeTrend(fields);
    takeReading(fields, limit);
    const bool none = !fields.get("min", optional) && !fields.get("max", optional);
    if (none)
        fields.errors().add(fields.at(), say("This limit has neither min nor max."),
                            say("Give at least one of them."));
    if (limit.min && limit.max && *limit.min > *limit.max) {
        fields.errors().add(fields.at("min"),
                            say("The least allowed value, %1, is above the greatest, %2.", limit.min->text(),
                                limit.max->text()),
                            say("Correct min or max."));
    }
    return limit;
}

std::optional<Limit> takeLimitOf(Fields& point, const std::string& repeat) {
    const Json* given = point.get("limit", optional);
    // Judged by the list in the file: if "measure" stands beside a misspelt word, only that word is wrong.
    const Json* how = point.get("how", optional);
    const bool measured =
        how && how->is_array() && std::find(how->begin(), how->end(), "measure") != how->end();
    if (how && how->is_array() && measured && !given) {
        point.errors().add(point.at("limit"), say("The point is measured and has no limit."),
                           say("Add the limit, or take %1 out of how.", "\"measure\""));
    }
    if (how && how->is_array() && !measured && given) {
        point.errors().add(point.at("limit"), say("The point has a limit and is not measured."),
                           say("Remove the limit, or add %1 to how.", "\"measure\""));
    }
    if (!given) return std::nullopt;
    Fields fields(*given, point.at("limit"), point.errors());
    if (!given->is_object()) return std::nullopt;
    fields.setPlaceholder(repeat);
    Limit limit = takeLimit(fields);
    fields.finish();
    return limit;
}

void takeWords(Fields& fields, Point& point) {
    point.name = fields.name("name");
    point.sound = fields.text("sound");
    point.unsound = fields.text("unsound");
    point.why = fields.text("why");
    point.cautions = fields.texts("cautions", optional);
}

void takeJasc(Fields& fields, Point& point) {
    point.jasc = fields.string("jasc");
    const Json* given = fields.get("jasc", optional);
    const bool digits =
        point.jasc.size() == 4 && point.jasc.find_first_not_of("0123456789") == std::string::npos;
    if (given && given->is_string() && !digits) {
        fields.errors().add(fields.at("jasc"), say("%1 is not a JASC code.", inQuotes(point.jasc)),
                            say("Give its four digits."));
    }
}

DraftPoint takePoint(Fields& fields) {
    constexpr double longest = 600;
    DraftPoint draft;
    Point& point = draft.point;
    if (fields.get("repeat", optional)) {
        draft.repeat = fields.string("repeat", optional);
        fields.setPlaceholder(*draft.repeat);
    }
    point.base = fields.id("id");
    takeWords(fields, point);
    point.zone = fields.string("zone");
    point.stands = fields.references("stands", required, 1);
    point.when = fields.when();
    point.how = fields.words("how", {How::look, How::feel, How::move, How::turn, How::drain, How::measure,
                                     How::count, How::listen});
    point.finding = fields.word("finding", {Severity::assess, Severity::grounds}).value_or(Severity::assess);
    takeJasc(fields, point);
    point.seconds = fields.number("seconds", 1, longest).value_or(1);
    point.after = fields.references("after", optional, 0);
    point.through = fields.references("through", optional, 0);
    point.opens = fields.references("opens", optional, 0);
    point.closes = fields.references("closes", optional, 0);
    point.night = fields.boolean("night", optional);
    point.lastLook = fields.boolean("lastLook", optional);
    point.limit = takeLimitOf(fields, draft.repeat.value_or(""));
    return draft;
}

DraftWalk takeWalk(Fields& fields) {
    DraftWalk draft;
    Walk& walk = draft.walk;
    walk.id = fields.id("id");
    walk.name = fields.name("name");
    walk.about = fields.text("about");
    walk.start = fields.place("start");
    draft.hasEnd = fields.get("end", optional) != nullptr;
    walk.end = draft.hasEnd ? fields.place("end") : walk.start;
    const Json* points = fields.get("points");
    draft.all = points && *points == "all";
    if (points && points->is_string() && !draft.all) {
        fields.errors().add(fields.at("points"),
                            say("%1 is not a list of points.", inQuotes(points->get<std::string>())),
                            say("Write %1, or list points.", "\"all\""));
    } else if (points && !draft.all) {
        walk.points = fields.references("points", required, 1);
    }
    return draft;
}

Costs takeCosts(Fields& fields) {
    Costs costs;
    costs.paceMetresPerSecond =
        fields.number("paceMetresPerSecond", 0.3, 3).value_or(costs.paceMetresPerSecond);
    costs.climbSeconds = fields.number("climbSeconds", 0, 300).value_or(costs.climbSeconds);
    costs.kneelSeconds = fields.number("kneelSeconds", 0, 60).value_or(costs.kneelSeconds);
    const auto maybe = [&](const char* field, double most, double otherwise) {
        return fields.number(field, 0, most, Presence::optional).value_or(otherwise);
    };
    costs.clearanceMetres = maybe("clearanceMetres", 1, costs.clearanceMetres);
    costs.climbWeightSeconds = maybe("climbWeightSeconds", 3600, costs.climbWeightSeconds);
    costs.turnWeightSeconds = maybe("turnWeightSeconds", 3600, costs.turnWeightSeconds);
    return costs;
}

void checkUnique(const auto& list, Errors& errors, auto idOf) {
    std::set<std::string> seen;
    for (const auto& item : list.items) {
        const std::string& id = idOf(item.value);
        if (id.empty() || seen.insert(id).second) continue;
        errors.add(pointerTo(item.at, "id"),
                   say("The id %1 is taken by another entry of this list.", inQuotes(id)),
                   say("Give each its own."));
    }
}

void checkUnique(const auto& list, Errors& errors) {
    checkUnique(list, errors, [](const auto& value) -> const std::string& { return value.id; });
}

void checkAllUnique(const Draft& draft, Errors& errors) {
    checkUnique(draft.counters, errors);
    checkUnique(draft.parts, errors);
    checkUnique(draft.keepOut, errors);
    checkUnique(draft.zones, errors);
    checkUnique(draft.stands, errors);
    checkUnique(draft.settings, errors);
    for (const auto& setting : draft.settings.items)
        checkUnique(setting.value.states, errors);
    checkUnique(draft.repeats, errors);
    for (const auto& repeat : draft.repeats.items)
        checkUnique(repeat.value.over, errors);
    checkUnique(draft.openings, errors);
    checkUnique(draft.points, errors,
                [](const DraftPoint& one) -> const std::string& { return one.point.base; });
    checkUnique(draft.walks, errors, [](const DraftWalk& one) -> const std::string& { return one.walk.id; });
    const auto idOf = [](const auto& one) -> const std::string& { return one.what.id; };
    checkUnique(draft.inspections, errors, idOf);
    checkUnique(draft.lifeLimits, errors, idOf);
}

/// Format and version: a text wrong in value is the reader's business, here only its type.
void takeHead(Fields& fields, Airframe& top) {
    (void)fields.string("format");
    (void)fields.number("version", 1, 1);
    top.id = fields.id("id");
    top.name = fields.name("name");
    top.category =
        fields.word("category", {Category::helicopter, Category::aeroplane}).value_or(Category::helicopter);
    top.notice = fields.text("notice");
    top.cautions = fields.texts("cautions");
}

} // namespace

Draft take(const Json& json, Errors& errors) {
    Draft draft;
    Fields fields(json, "", errors);
    if (!json.is_object()) return draft;
    takeHead(fields, draft.top);
    draft.counters = fields.list("counters", 0, 20, takeCounter);
    const auto inside = [&](const std::string& field, auto read) {
        const Json* value = fields.get(field);
        if (!value) return;
        Fields inner(*value, fields.at(field), errors);
        if (!value->is_object()) return;
        read(inner);
        inner.finish();
    };
    inside("costs", [&](Fields& costs) { draft.top.costs = takeCosts(costs); });
    inside("figure", [&](Fields& figure) {
        draft.parts = figure.list("parts", 1, 200, takePart);
        draft.keepOut = figure.list("keepOut", 0, 50, takeKeepOut);
    });
    draft.zones = fields.list("zones", 1, 64, takeZone);
    draft.stands = fields.list("stands", 1, 100, takeStand);
    draft.settings = fields.list("settings", 0, 20, takeSetting);
    draft.repeats = fields.list("repeats", 0, 20, takeRepeat);
    draft.openings = fields.list("openings", 0, 100, takeOpening);
    draft.points = fields.list("points", 1, mostPoints, takePoint);
    draft.walks = fields.list("walks", 1, 20, takeWalk);
    draft.inspections = fields.list("inspections", 0, 100, takeInspection, optional);
    draft.lifeLimits = fields.list("lifeLimits", 0, 100, takeLifeLimit, optional);
    draft.translations = takeTranslations(fields, draft);
    fields.finish();
    checkAllUnique(draft, errors);
    return draft;
}

} // namespace ambit::airframe
