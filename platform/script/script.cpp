#include "script/script.hpp"

#include "base/fields.hpp"
#include "base/files.hpp"

#include <algorithm>
#include <nlohmann/json.hpp> // Result<Json>

namespace ambit::script {

namespace {

constexpr std::int64_t mostSecondsOff = std::int64_t{366} * 86400;

/// {name: decimal text, …}; empty where it isn't there.
std::map<std::string, std::string> decimals(Fields& fields, const char* name) {
    std::map<std::string, std::string> values;
    if (!fields.has(name)) return values;
    Fields inner = fields.inner(name);
    for (const JsonView::Member member : fields.any(name).members()) {
        const std::string key(member.name);
        values.emplace(key, inner.decimal(key.c_str()));
    }
    return values;
}

bool isBeside(const std::filesystem::path& path) {
    return !path.empty() && path.is_relative() && std::find(path.begin(), path.end(), "..") == path.end();
}

std::vector<std::string> photoPaths(Fields& fields, const char* name) {
    std::vector<std::string> list;
    const JsonView json = fields.any(name);
    if (!json) return list;
    bool paths = json.isList();
    for (const JsonView item : json.elements()) {
        paths = paths && item.isText() && isBeside(item.text());
        list.emplace_back(item.text());
    }
    if (paths) return list;
    fields.fail("A list of paths beside the script is expected here.", name);
    return {};
}

round::Person readPerson(Fields&& who) {
    round::Person person{who.text("name"), who.text("role"), who.textOrEmpty("certificate")};
    who.end();
    return person;
}

round::Position readPlace(Fields&& place) {
    round::Position position{place.decimal("latitude"), place.decimal("longitude")};
    place.end();
    return position;
}

Open readOpen(Fields& fields) {
    Open open;
    Fields aircraft = fields.inner("aircraft");
    open.registration = aircraft.text("registration");
    open.serial = aircraft.text("serial");
    aircraft.end();
    open.walk = fields.text("walk");
    open.who = readPerson(fields.inner("who"));
    if (!fields.has("counters")) fields.fail("This field is missing.", "counters");
    for (auto& [id, value] : decimals(fields, "counters"))
        open.counters.push_back({id, value});
    if (auto time = parseLocalInstant(fields.text("at")))
        open.at = *time;
    else
        fields.fail("A time with its offset is expected here, such as 2026-06-20T07:30:00+02:00.", "at");
    if (fields.has("place")) open.position = readPlace(fields.inner("place"));
    return open;
}

/// Whether units, measurements and photos belong together, the round says.
void readMeasured(Fields& fields, Settle& settle) {
    round::Settled& what = settle.what;
    if (fields.has("value")) what.value = fields.decimal("value");
    what.unit = fields.textIfThere("unit");
    if (fields.has("renewed")) {
        what.renewed = fields.any("renewed").flag();
        if (!what.renewed) fields.fail("true is expected here, or nothing.", "renewed");
    }
    if (fields.has("valueFrom")) {
        (void)fields.word("valueFrom", {"photo", "gauge", "ruler", "dipstick", "meter", "count", "eye"});
        what.from = airframe::meansFrom(fields.view("valueFrom"));
        what.byPhoto = !what.from;
    }
    if (fields.has("uncertainty")) what.uncertainty = round::zeroOrMore(fields, "uncertainty");
    if (fields.has("measurements"))
        for (Fields one : fields.list("measurements", round::mostMeasurements))
            what.measurements.push_back(round::measurementFrom(std::move(one)));
    settle.photos = photoPaths(fields, "photos");
}

Settle readSettle(Fields& fields, round::Outcome outcome) {
    Settle settle;
    settle.what.outcome = outcome;
    settle.what.point = fields.text("point");
    if (fields.has("by")) {
        (void)fields.word("by", {"key"});
        settle.what.by = round::By::key;
    }
    if (outcome != round::Outcome::notInspected) readMeasured(fields, settle);
    if (outcome == round::Outcome::finding) {
        settle.what.words = fields.text("words");
        settle.what.severity = fields.word("class", {"assess", "grounds"}) == 1 ? airframe::Severity::grounds
                                                                                : airframe::Severity::assess;
    }
    if (outcome == round::Outcome::notInspected) {
        settle.what.why = fields.text("why");
        settle.what.basis = fields.textIfThere("basis");
    }
    return settle;
}

/// Written as in an event, EVENT.md; whether it is an outline that can be marked, the round says.
Mark readMark(Fields& fields) {
    Mark mark;
    mark.why = fields.text("why");
    const JsonView json = fields.any("outline");
    bool corners = json.isList();
    for (const JsonView one : json.elements()) {
        corners = corners && one.size() == 2 && one.at(0).isText() && one.at(1).isText();
        mark.outline.push_back({std::string(one.at(0).text()), std::string(one.at(1).text())});
    }
    if (corners) return mark;
    fields.fail("A list of corners such as [\"1.5\", \"-2\"], in metres, is expected here.", "outline");
    mark.outline.clear();
    return mark;
}

std::string pathBeside(Fields& fields, const char* name) {
    std::string path = fields.textIfThere(name);
    if (!path.empty() && !isBeside(path)) fields.fail("A path beside the script is expected here.", name);
    return path;
}

Ask readAsk(Fields& fields) {
    Ask ask;
    ask.kind = static_cast<round::Statement::Kind>(fields.word("kind", {"look again", "question", "remark"}));
    const bool lookAgain = ask.kind == round::Statement::Kind::lookAgain;
    ask.point = lookAgain ? fields.text("point") : fields.textIfThere("point");
    ask.words = lookAgain ? fields.textIfThere("words") : fields.text("words");
    ask.who = readPerson(fields.inner("who"));
    ask.key = pathBeside(fields, "key");
    if (!ask.key.empty() && !fields.has("passphrase")) fields.fail("This field is missing.", "passphrase");
    ask.passphrase = pathBeside(fields, "passphrase");
    if (ask.key.empty() && !ask.passphrase.empty())
        fields.fail("There is no key to open with it.", "passphrase");
    return ask;
}

Interrupt readInterrupt(Fields& fields) {
    Interrupt interrupt;
    interrupt.cause = static_cast<round::Interrupted::Cause>(
        fields.word("cause", {"paused", "call", "locked", "away", "silent", "stopped"}));
    interrupt.seconds = fields.integer("seconds", 0, mostSecondsOff);
    interrupt.rule.from =
        static_cast<round::BackRule::From>(fields.word("rule", {"points", "stand", "start"}));
    if (interrupt.rule.from == round::BackRule::From::points)
        interrupt.rule.points = static_cast<int>(fields.integer("back", 1, round::mostBack));
    return interrupt;
}

Conclude readConclude(Fields& fields) {
    return {fields.word("result", {"fit", "not fit"}) == 0, fields.textIfThere("reasons")};
}

Follow readFollow(Fields& fields) {
    Follow follow;
    if (fields.has("until")) follow.until = fields.text("until");
    follow.values = decimals(fields, "values");
    return follow;
}

std::optional<Doing> readDoing(const std::string& word, Fields& fields) {
    using round::Outcome;
    if (word == "open") return readOpen(fields);
    if (word == "go") return Go{fields.text("stand")};
    if (word == "zone") return TapZone{fields.text("zone")};
    if (word == "set") return Change{fields.text("setting"), fields.text("to")};
    if (word == "sound") return readSettle(fields, Outcome::sound);
    if (word == "finding") return readSettle(fields, Outcome::finding);
    if (word == "not-inspected") return readSettle(fields, Outcome::notInspected);
    if (word == "reopen") return Reopen{fields.text("point"), fields.text("why")};
    if (word == "made") return Made{fields.text("opening")};
    if (word == "closed") return Closed{fields.text("opening")};
    if (word == "pause") return Pause{};
    if (word == "resume") return Resume{};
    if (word == "note") return Note{fields.text("words")};
    if (word == "blocked") return Block{fields.text("stand"), fields.text("why")};
    if (word == "free") return Free{fields.text("stand")};
    if (word == "marked") return readMark(fields);
    if (word == "cleared") return Clear{fields.integer("area", 1, 1000)};
    if (word == "light") return Lighting{fields.word("is", {"low", "good"}) == 0};
    if (word == "alone") return Alone{};
    if (word == "asked") return readAsk(fields);
    if (word == "answer") return Answer{fields.integer("ask", 1, round::mostAsks), fields.text("words")};
    if (word == "decline") return Decline{fields.integer("ask", 1, round::mostAsks), fields.text("why")};
    if (word == "portion")
        return Portion{fields.has("most") ? static_cast<int>(fields.integer(
                                                "most", 1, static_cast<std::int64_t>(round::mostInPortion)))
                                          : Portion{}.most};
    if (word == "down") return Down{fields.word("is", {"looked at", "given up"}) == 0};
    if (word == "interrupted") return readInterrupt(fields);
    if (word == "quick") return Quick{fields.word("answer", {"again", "meant"}) == 0};
    if (word == "satellites") return Satellites{fields.integer("seconds", -mostSecondsOff, mostSecondsOff)};
    if (word == "night") {
        const bool expected = fields.word("is", {"expected", "not expected"}) == 0;
        return Dark{expected, fields.word("by", {"sun", "pilot"}) == 0};
    }
    if (word == "follow") return readFollow(fields);
    if (word == "conclude") return readConclude(fields);
    if (word == "sign") return Sign{};
    return std::nullopt;
}

Result<Action> readLine(std::string_view text, int number) {
    auto json = parseJson(text, {.bytes = 64 << 10, .depth = 6});
    if (!json) return tl::unexpected(json.error());
    JsonTape tape;
    const auto read = tape.write(*json);
    if (!read) return tl::unexpected(read.error());
    std::optional<Error> wrong;
    Fields fields(*read, Where(""), wrong);
    Action action;
    action.line = number;
    const std::string word = fields.text("do");
    auto doing = readDoing(word, fields);
    if (!doing) {
        if (!word.empty()) fields.fail("There is no action '" + word + "'.", "do");
    } else {
        action.what = std::move(*doing);
    }
    if (fields.has("after"))
        action.after = static_cast<int>(fields.integer("after", 0, std::int64_t{30} * 86400));
    fields.end();
    if (wrong) return tl::unexpected(*wrong);
    return action;
}

} // namespace

Result<Script> readScript(std::string_view text, std::filesystem::path folder) {
    Script script;
    script.folder = std::move(folder);
    bool opened = false;
    int number = 0;
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        ++number;
        if (line.find_first_not_of(" \t\r") == std::string_view::npos) continue;
        auto action = readLine(line, number);
        const std::string where = "line " + std::to_string(number);
        if (!action) {
            Error error = action.error();
            error.where = where + (error.where.empty() ? "" : ", " + error.where);
            return tl::unexpected(error);
        }
        if (!script.actions.empty() && std::holds_alternative<Sign>(script.actions.back().what))
            return fail(ErrorCode::invalid, "Nothing comes after the signature.", where,
                        "Put 'sign' into the last line.");
        const bool isOpen = std::holds_alternative<Open>(action->what);
        if (isOpen == opened)
            return fail(ErrorCode::invalid,
                        opened ? "A script opens one round only." : "A script's first line opens the round.",
                        where,
                        opened ? "Put the second round into a script of its own."
                               : "Begin with {\"do\":\"open\", …}.");
        if (isOpen) {
            if (action->after)
                return fail(ErrorCode::invalid, "The first line has a time, 'at', not 'after'.", where);
            script.open = std::get<Open>(action->what);
            opened = true;
        } else {
            script.actions.push_back(std::move(*action));
        }
    }
    if (!opened)
        return fail(ErrorCode::invalid, "The script is empty.", "line 1", "Begin with {\"do\":\"open\", …}.");
    return script;
}

Result<Script> readScriptFrom(const std::filesystem::path& path) {
    auto text = readFile(path, std::size_t{8} << 20);
    if (!text) return tl::unexpected(text.error());
    auto script = readScript(*text, path.parent_path());
    if (script) return script;
    Error error = script.error();
    error.where = path.string() + ", " + error.where;
    return tl::unexpected(error);
}

} // namespace ambit::script
