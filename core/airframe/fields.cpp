#include "airframe/fields.hpp"

#include "airframe/shape.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>

namespace ambit::airframe {

namespace {

constexpr std::size_t mostId = 48;
constexpr std::size_t mostReference = 2 * mostId + 32; // point.member, with a placeholder
constexpr double farthest = 100;

bool isId(const std::string& text) {
    return !text.empty() && text.size() <= mostId &&
           text.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
}

/// What is too long to be meant stays out of messages and further checks.
std::string clipped(const std::string& text) {
    return text.size() <= mostReference ? text : std::string();
}

/// A number for a sentence: 0.3, 100.
std::string written(double value) {
    std::string text = std::to_string(value);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
    return text;
}

/// Are all braces of `text` those of {placeholder}?
bool areBracesKnown(std::string_view text, const std::string& placeholder) {
    const std::string known = '{' + placeholder + '}';
    for (std::size_t at = 0; (at = text.find_first_of("{}", at)) != std::string_view::npos;
         at += known.size()) {
        if (placeholder.empty() || !text.substr(at).starts_with(known)) return false;
    }
    return true;
}

} // namespace

void Errors::add(std::string where, Sentence what, Sentence remedy, ErrorCode code) {
    if (!known.emplace(where, what).second) return;
    list.push_back({code, std::move(what), std::move(where), std::move(remedy)});
}

std::string inQuotes(const std::string& text) {
    constexpr std::size_t most = 60;
    if (text.size() <= most) return '"' + text + '"';
    std::size_t end = most;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80)
        --end; // not inside a character
    return '"' + text.substr(0, end) + "…\"";
}

bool isGiven(const Place& place) {
    return !std::isnan(place.x) && !std::isnan(place.y);
}

std::size_t lengthOf(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80; }));
}

Fields::Fields(const Json& value, std::string where, Errors& errors)
    : object(value.is_object() ? &value : nullptr), pointer(std::move(where)), sink(&errors) {
    isType(value, pointer, value.is_object(), pattern("an object"));
}

bool Fields::isType(const Json& value, const std::string& where, bool is, const char* wanted) {
    if (is) return true;
    sink->add(where, say("This is of the type %1; here belongs %2.", value.type_name(), say(wanted)),
              say("Put %1 here.", say(wanted)));
    return false;
}

const Json* Fields::get(const std::string& field, Presence presence) {
    asked.insert(field);
    if (!object) return nullptr;
    const auto found = object->find(field);
    if (found != object->end()) return &*found;
    if (presence == Presence::required)
        sink->add(at(field), say("The field %1 is missing.", inQuotes(field)), say("Add it."));
    return nullptr;
}

void Fields::finish() {
    if (!object) return;
    for (const auto& member : object->items()) {
        if (asked.contains(member.key())) continue;
        sink->add(at(member.key()), say("The field %1 is not known here.", inQuotes(member.key())),
                  say("Remove it, or correct its name."));
    }
}

std::string Fields::id(const std::string& field) {
    const Json* value = get(field);
    if (!value || !isType(*value, at(field), value->is_string(), pattern("an id"))) return {};
    std::string id = clipped(value->get<std::string>());
    if (!isId(id)) {
        sink->add(at(field), say("%1 is not an id.", inQuotes(id)),
                  say("Use 1 to 48 characters of a to z, 0 to 9 and the hyphen."));
    }
    return id;
}

std::string Fields::name(const std::string& field) {
    const Json* value = get(field);
    return value ? textOf(*value, at(field), mostName, true) : std::string();
}

std::string Fields::text(const std::string& field) {
    const Json* value = get(field);
    return value ? textOf(*value, at(field), mostText, false) : std::string();
}

std::string Fields::string(const std::string& field, Presence presence) {
    const Json* value = get(field, presence);
    if (!value || !isType(*value, at(field), value->is_string(), pattern("a word"))) return {};
    return stringOf(*value, at(field));
}

std::string Fields::stringOf(const Json& value, const std::string& where) {
    const auto& text = value.get_ref<const std::string&>();
    if (!text.empty() && text.size() <= mostReference) return text;
    sink->add(where, say("This word is empty or too long."), say("Name what is meant."));
    return {};
}

std::string Fields::textOf(const Json& value, const std::string& where, std::size_t most, bool oneLine) {
    if (!isType(value, where, value.is_string(), pattern("a text"))) return {};
    const auto& text = value.get_ref<const std::string&>();
    if (lengthOf(text) > most || text.find_first_not_of(" \n") == std::string::npos) {
        sink->add(where, say("This text is empty or too long."),
                  say("Use 1 to %1 characters.", figure(std::to_string(most))));
        return {};
    }
    if (!isPlainText(text) || (oneLine && text.find('\n') != std::string::npos)) {
        sink->add(where, say("This text holds a control character, or one that stands for none."),
                  oneLine ? say("Remove it; the text is one line.")
                          : say("Remove it; only line ends are allowed."));
    }
    if (!areBracesKnown(text, placeholder)) {
        sink->add(where, say("This text has a placeholder that nothing fills."),
                  placeholder.empty() ? say("Remove the braces; only a repeated point has a placeholder.")
                                      : say("The only one here is {%1}.", placeholder));
    }
    return text;
}

std::vector<std::string> Fields::texts(const std::string& field, Presence presence) {
    constexpr std::size_t mostTexts = 20;
    std::vector<std::string> list;
    for (const auto& [value, where] : elements(field, presence, 0, mostTexts)) {
        list.push_back(textOf(*value, where, mostText, false));
    }
    return list;
}

std::vector<std::string> Fields::references(const std::string& field, Presence presence, std::size_t least) {
    constexpr std::size_t mostReferences = 500;
    std::vector<std::string> list;
    std::set<std::string> seen;
    for (const auto& [value, where] : elements(field, presence, least, mostReferences)) {
        list.emplace_back();
        if (!isType(*value, where, value->is_string(), pattern("an id"))) continue;
        const auto& id = value->get_ref<const std::string&>();
        if (id.empty())
            sink->add(where, say("This id is empty."), say("Name what is meant."));
        else if (!seen.insert(id).second)
            sink->add(where, say("%1 stands in the list already.", inQuotes(id)), say("Remove it."));
        else
            list.back() = id;
    }
    return list;
}

std::optional<double> Fields::number(const std::string& field, double least, double most, Presence presence) {
    const Json* value = get(field, presence);
    return value ? numberOf(*value, at(field), least, most) : std::nullopt;
}

std::optional<double> Fields::numberOf(const Json& value, const std::string& where, double least,
                                       double most) {
    if (!isType(value, where, value.is_number(), pattern("a number"))) return std::nullopt;
    const double number = value.get<double>();
    if (number >= least && number <= most) return number;
    sink->add(where, say("This number is out of range."),
              say("Use %1 to %2.", figure(written(least)), figure(written(most))));
    return std::nullopt;
}

std::optional<int> Fields::integer(const std::string& field, int least, int most, Presence presence) {
    const auto value = number(field, least, most, presence);
    if (!value || *value == std::floor(*value))
        return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
    sink->add(at(field), say("This is not a whole number."),
              say("Use a whole number from %1 to %2.", figure(std::to_string(least)),
                  figure(std::to_string(most))));
    return std::nullopt;
}

bool Fields::boolean(const std::string& field, Presence presence) {
    const Json* value = get(field, presence);
    return value && isType(*value, at(field), value->is_boolean(), pattern("true or false")) &&
           value->get<bool>();
}

Place Fields::place(const std::string& field) {
    constexpr double none = std::numeric_limits<double>::quiet_NaN();
    const Json* value = get(field);
    return value ? placeOf(*value, at(field)) : Place{none, none};
}

Place Fields::placeOf(const Json& value, const std::string& where) {
    constexpr double none = std::numeric_limits<double>::quiet_NaN();
    if (!isType(value, where, value.is_array(), pattern("a place [x, y]"))) return {none, none};
    if (value.size() != 2) {
        sink->add(where, say("This place doesn't have two coordinates."),
                  say("Write it as [x, y], in metres."));
        return {none, none};
    }
    return {numberOf(value[0], pointerTo(where, std::size_t{0}), -farthest, farthest).value_or(none),
            numberOf(value[1], pointerTo(where, std::size_t{1}), -farthest, farthest).value_or(none)};
}

Outline Fields::outline(const std::string& field) {
    constexpr std::size_t mostCorners = 200;
    Outline outline;
    const auto corners = elements(field, Presence::required, 3, mostCorners);
    for (const auto& [value, where] : corners)
        outline.push_back(placeOf(*value, where));
    const bool given = std::all_of(outline.begin(), outline.end(), isGiven) && outline.size() >= 3;
    if (!given) return {};
    const auto fault = faultOf(outline);
    if (!fault) return outline;
    sink->add(at(field), *fault, say("Give the corners of a simple polygon in order, each once."));
    return {};
}

Settings Fields::when() {
    const Json* value = get("when", Presence::optional);
    Settings settings;
    if (!value || !isType(*value, at("when"), value->is_object(), pattern("an object"))) return settings;
    for (const auto& [setting, state] : value->items()) {
        const std::string where = pointerTo(at("when"), setting);
        if (isType(state, where, state.is_string(), pattern("a state's id")))
            settings[setting] = stringOf(state, where);
    }
    return settings;
}

std::optional<Decimal> Fields::decimal(const std::string& field, Presence presence) {
    const Json* value = get(field, presence);
    if (!value || !isType(*value, at(field), value->is_string(), pattern("a decimal number as a text")))
        return std::nullopt;
    const auto decimal = Decimal::parse(value->get_ref<const std::string&>());
    if (decimal) return *decimal;
    sink->add(at(field), say("%1 is not a decimal number.", inQuotes(value->get<std::string>())),
              decimal.error().remedy);
    return std::nullopt;
}

std::vector<Fields::Element> Fields::elements(const std::string& field, Presence presence, std::size_t least,
                                              std::size_t most) {
    std::vector<Element> list;
    const Json* value = get(field, presence);
    if (!value || !isType(*value, at(field), value->is_array(), pattern("a list"))) return list;
    if (value->size() < least || value->size() > most) {
        sink->add(at(field), say("This list has %1 entries.", figure(std::to_string(value->size()))),
                  say("Give %1 to %2.", figure(std::to_string(least)), figure(std::to_string(most))));
        if (value->size() > most) return list;
    }
    for (std::size_t i = 0; i < value->size(); ++i)
        list.push_back({&(*value)[i], pointerTo(at(field), i)});
    return list;
}

} // namespace ambit::airframe
