#include "script/script.hpp"

#include "base/decimal.hpp"
#include "base/fields.hpp"
#include "base/files.hpp"

#include <algorithm>

namespace ambit::script {

namespace {

std::string decimal(Fields& fields, const char* name) {
    std::string text = fields.text(name, 32);
    if (!text.empty() && !Decimal::parse(text))
        fields.wrong(name, "This must be a decimal number as text, such as \"24.5\".");
    return text;
}

/// {name: decimal text, …}
std::map<std::string, std::string> decimals(Fields& fields, const char* name, bool required) {
    std::map<std::string, std::string> values;
    const Json* json = fields.value(name, required);
    if (json == nullptr) return values;
    if (!json->is_object()) {
        fields.wrong(name, "This must be an object of decimal numbers as text.");
        return values;
    }
    for (const auto& [key, value] : json->items()) {
        if (!value.is_string() || !Decimal::parse(value.get<std::string>()))
            fields.wrong(name,
                         "The value of '" + key + "' must be a decimal number as text, such as \"24.5\".");
        else
            values.emplace(key, value.get<std::string>());
    }
    return values;
}

bool isBeside(const std::filesystem::path& path) {
    return !path.empty() && path.is_relative() && std::find(path.begin(), path.end(), "..") == path.end();
}

std::vector<std::string> photoPaths(Fields& fields, const char* name) {
    std::vector<std::string> list;
    const Json* json = fields.value(name, false);
    if (json == nullptr) return list;
    if (!json->is_array()) {
        fields.wrong(name, "This must be a list of paths beside the script.");
        return list;
    }
    for (const Json& item : *json) {
        if (!item.is_string() || !isBeside(item.get<std::string>()))
            fields.wrong(name, "This must be a list of paths beside the script.");
        else
            list.push_back(item.get<std::string>());
    }
    return list;
}

/// A member object read with its own Fields; what is wrong in it is wrong here.
template<class Read> void within(Fields& fields, const char* name, bool required, Read read) {
    const Json* json = fields.value(name, required);
    if (json == nullptr) return;
    Fields inner(*json, fields.pointer(name));
    read(inner);
    if (auto done = inner.finish(); !done)
        fields.wrong(name, done.error().what + " (" + done.error().where + ")");
}

Open readOpen(Fields& fields) {
    Open open;
    within(fields, "aircraft", true, [&](Fields& aircraft) {
        open.registration = aircraft.text("registration", 20);
        open.serial = aircraft.text("serial", 40);
    });
    open.walk = fields.text("walk", 48);
    within(fields, "who", true, [&](Fields& who) {
        open.who = {who.text("name", 100), who.text("role", 20), who.textOrEmpty("certificate", 60)};
    });
    for (auto& [id, value] : decimals(fields, "counters", true))
        open.counters.push_back({id, value});
    const std::string at = fields.text("at", 40);
    if (auto time = parseLocalInstant(at))
        open.at = *time;
    else
        fields.wrong("at", "This must be a time with its offset, such as 2026-06-20T07:30:00+02:00.");
    within(fields, "place", false, [&](Fields& place) {
        open.position = {decimal(place, "latitude"), decimal(place, "longitude")};
    });
    return open;
}

Settle readSettle(Fields& fields, round::Outcome outcome) {
    Settle settle;
    settle.what.outcome = outcome;
    settle.what.point = fields.text("point", 100);
    if (outcome != round::Outcome::notInspected && fields.has("value"))
        settle.what.value = decimal(fields, "value");
    if (outcome == round::Outcome::finding) {
        settle.what.words = fields.text("words");
        const auto severity = airframe::severityFrom(fields.text("class", 20));
        if (!severity) fields.wrong("class", "This must be 'grounds' or 'assess'.");
        settle.what.severity = severity.value_or(airframe::Severity::assess);
        settle.photos = photoPaths(fields, "photos");
    }
    if (outcome == round::Outcome::notInspected) {
        settle.what.why = fields.text("why");
        settle.what.basis = fields.optionalText("basis").value_or("");
    }
    return settle;
}

Conclude readConclude(Fields& fields) {
    const std::string result = fields.text("result", 20);
    if (result != "fit" && result != "not fit") fields.wrong("result", "This must be 'fit' or 'not fit'.");
    return {result == "fit", fields.optionalText("reasons").value_or("")};
}

std::optional<Doing> readDoing(const std::string& word, Fields& fields) {
    using round::Outcome;
    if (word == "open") return readOpen(fields);
    if (word == "go") return Go{fields.text("stand", 48)};
    if (word == "zone") return TapZone{fields.text("zone", 48)};
    if (word == "set") return Change{fields.text("setting", 48), fields.text("to", 48)};
    if (word == "sound") return readSettle(fields, Outcome::sound);
    if (word == "finding") return readSettle(fields, Outcome::finding);
    if (word == "not-inspected") return readSettle(fields, Outcome::notInspected);
    if (word == "reopen") return Reopen{fields.text("point", 100), fields.text("why")};
    if (word == "made") return Made{fields.text("opening", 48)};
    if (word == "closed") return Closed{fields.text("opening", 48)};
    if (word == "pause") return Pause{};
    if (word == "resume") return Resume{};
    if (word == "note") return Note{fields.text("words")};
    if (word == "follow") return Follow{fields.optionalText("until", 100), decimals(fields, "values", false)};
    if (word == "conclude") return readConclude(fields);
    if (word == "sign") return Sign{};
    return std::nullopt;
}

Result<Action> readLine(std::string_view text, int number) {
    auto json = parseJson(text, {.bytes = 64 << 10, .depth = 6});
    if (!json) return tl::unexpected(json.error());
    Fields fields(*json);
    Action action;
    action.line = number;
    const std::string word = fields.text("do", 20);
    auto doing = readDoing(word, fields);
    if (!doing) {
        if (!word.empty()) fields.wrong("do", "There is no action '" + word + "'.");
    } else {
        action.what = std::move(*doing);
    }
    if (fields.has("after"))
        action.after = static_cast<int>(fields.integer("after", 0, std::int64_t{30} * 86400));
    if (auto done = fields.finish(); !done) return tl::unexpected(done.error());
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
