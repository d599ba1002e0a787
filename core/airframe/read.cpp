#include "airframe/read.hpp"

#include "airframe/check.hpp"
#include "airframe/texts.hpp"
#include "airframe/translate.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"

#include <algorithm>
#include <limits>
#include <nlohmann/json.hpp>

namespace ambit::airframe {

namespace {

constexpr std::size_t mostBytes = std::size_t{2} << 20;
constexpr int deepest = 12;
constexpr std::size_t mostErrors = 200;

/// Numbers every value of a JSON text in the order it stands there, by its pointer.
class Order : public nlohmann::json_sax<Json> {
public:
    /// A missing member stands where its object does.
    [[nodiscard]] std::size_t of(std::string pointer) const {
        while (true) {
            if (const auto found = numbers.find(pointer); found != numbers.end()) return found->second;
            const std::size_t slash = pointer.rfind('/');
            if (slash == std::string::npos) return 0;
            pointer.erase(slash);
        }
    }

    bool null() override { return note(); }
    bool boolean(bool /*value*/) override { return note(); }
    bool number_integer(number_integer_t /*value*/) override { return note(); }
    bool number_unsigned(number_unsigned_t /*value*/) override { return note(); }
    bool number_float(number_float_t /*value*/, const string_t& /*text*/) override { return note(); }
    bool string(string_t& /*value*/) override { return note(); }
    bool binary(binary_t& /*value*/) override { return note(); }
    bool start_object(std::size_t /*size*/) override { return open(false); }
    bool start_array(std::size_t /*size*/) override { return open(true); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool key(string_t& name) override {
        levels.back().next = pointerTo(levels.back().pointer, name);
        return true;
    }
    bool parse_error(std::size_t /*at*/, const std::string& /*token*/,
                     const Json::exception& /*why*/) override {
        return false;
    }

private:
    struct Level {
        std::string pointer;
        bool isArray = false;
        std::size_t index = 0;
        std::string next; ///< pointer to the member in hand
    };

    std::string here() {
        if (levels.empty()) return {};
        Level& level = levels.back();
        return level.isArray ? pointerTo(level.pointer, level.index++) : level.next;
    }
    bool note() {
        numbers.emplace(here(), numbers.size());
        return true;
    }
    bool open(bool isArray) {
        std::string pointer = here();
        numbers.emplace(pointer, numbers.size());
        levels.push_back({std::move(pointer), isArray, 0, {}});
        return true;
    }
    bool close() {
        levels.pop_back();
        return true;
    }

    std::vector<Level> levels;
    std::map<std::string, std::size_t> numbers;
};

std::vector<Error> sorted(std::vector<Error> errors, std::string_view text) {
    Order order;
    Json::sax_parse(text.begin(), text.end(), &order);
    std::vector<std::pair<std::size_t, Error>> numbered;
    for (Error& error : errors) {
        const std::size_t number = order.of(error.where);
        numbered.emplace_back(number, std::move(error));
    }
    std::stable_sort(numbered.begin(), numbered.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    numbered.resize(std::min(numbered.size(), mostErrors));
    errors.clear();
    for (auto& [number, error] : numbered)
        errors.push_back(std::move(error));
    return errors;
}

/// Another format or version: the rest can't be judged, so nothing else is said of it.
std::vector<Error> unknownKind(const Json& json) {
    std::vector<Error> errors;
    if (!json.is_object()) return errors;
    const auto format = json.find("format");
    const auto version = json.find("version");
    if (format != json.end() && format->is_string() && *format != "ambit-airframe") {
        errors.push_back({ErrorCode::unsupported,
                          say("%1 is not an airframe's format.", inQuotes(format->get<std::string>())),
                          "/format", say("Give a file with the format %1.", "\"ambit-airframe\"")});
    }
    if (version != json.end() && version->is_number() && *version != 1) {
        errors.push_back({ErrorCode::unsupported,
                          say("This version of the airframe format is not known here."), "/version",
                          say("Use version 1, or a newer Ambit.")});
    }
    return errors;
}

std::vector<std::string> given(const std::vector<std::string>& ids) {
    std::vector<std::string> list;
    std::copy_if(ids.begin(), ids.end(), std::back_inserter(list),
                 [](const auto& id) { return !id.empty(); });
    return list;
}

template<class T> std::vector<T> values(const List<T>& list) {
    std::vector<T> all;
    for (const auto& item : list.items)
        all.push_back(item.value);
    return all;
}

bool isIn(const std::vector<std::string>& list, const std::string& id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

Setting made(const DraftSetting& draft, const Expansion& expansion) {
    Setting setting{draft.id, draft.name, values(draft.states), draft.initial, values(draft.changes)};
    Errors noted; // by the checks, with their pointers
    for (SettingChange& change : setting.changes)
        change.needs = resolveAll(expansion, change.needs, "", noted);
    return setting;
}

Walk made(const DraftWalk& draft, const Expansion& expansion) {
    Walk walk = draft.walk;
    Errors noted;
    const auto ids = resolveAll(expansion, walk.points, "", noted);
    const std::set<std::string> wanted(ids.begin(), ids.end());
    walk.points.clear();
    for (const Expanded& expanded : expansion.points) {
        const std::string& id = expanded.point.id;
        if (draft.all || wanted.contains(id)) (expanded.point.night ? walk.night : walk.points).push_back(id);
    }
    return walk;
}

Airframe made(const Draft& draft, const Expansion& expansion) {
    Airframe airframe = draft.top;
    airframe.counters = values(draft.counters);
    airframe.parts = values(draft.parts);
    airframe.keepOut = values(draft.keepOut);
    airframe.zones = values(draft.zones);
    airframe.stands = values(draft.stands);
    airframe.openings = values(draft.openings);
    for (const auto& item : draft.settings.items)
        airframe.settings.push_back(made(item.value, expansion));
    for (const Expanded& expanded : expansion.points) {
        Point& point = airframe.points.emplace_back(expanded.point);
        for (auto* list : {&point.stands, &point.through, &point.opens, &point.closes})
            *list = given(*list);
    }
    for (Point& last : airframe.points)
        for (const Point& other : airframe.points)
            if (last.lastLook && !other.lastLook && !isIn(last.after, other.id))
                last.after.push_back(other.id);
    for (const auto& item : draft.walks.items)
        airframe.walks.push_back(made(item.value, expansion));
    for (const auto& item : draft.inspections.items)
        airframe.inspections.emplace_back(item.value.what).every = values(item.value.spans);
    for (const auto& item : draft.lifeLimits.items)
        airframe.lifeLimits.emplace_back(item.value.what).life = values(item.value.spans);
    return airframe;
}

Airframe check(const Draft& draft, Errors& errors) {
    const Expansion expansion = expand(draft, errors);
    checkFigure(draft, errors);
    checkStands(draft, errors);
    checkSettings(draft, expansion, errors);
    checkPoints(draft, expansion, errors);
    checkOpenings(draft, expansion, errors);
    checkWalks(draft, expansion, errors);
    checkDue(draft, errors);
    Airframe airframe = made(draft, expansion);
    std::vector<std::string> pointers;
    for (const Expanded& expanded : expansion.points)
        pointers.push_back(expanded.at);
    checkWaits(airframe, pointers, errors);
    return airframe;
}

struct File {
    Draft draft;
    Airframe airframe; ///< as written
};

Results<File> readWhole(std::string_view text) {
    const auto json = parseJson(text, {mostBytes, deepest});
    if (!json) {
        Error error = json.error();
        if (!error.where.starts_with('/')) error.where.clear(); // a byte offset; the sentence names it
        return tl::unexpected(std::vector{std::move(error)});
    }
    if (auto other = unknownKind(*json); !other.empty()) return tl::unexpected(std::move(other));
    Errors errors;
    File file;
    file.draft = take(*json, errors);
    file.airframe = check(file.draft, errors);
    if (!errors.empty()) return tl::unexpected(sorted(std::move(errors.all()), text));
    file.airframe.sha256 = sha256Hex(text);
    return file;
}

} // namespace

Results<Airframe> read(std::string_view text) {
    auto file = readWhole(text);
    if (!file) return tl::unexpected(std::move(file.error()));
    return std::move(file->airframe);
}

Results<Airframe> readIn(std::string_view text, const std::string& language) {
    auto file = readWhole(text);
    if (!file) return tl::unexpected(std::move(file.error()));
    if (!translate(file->draft, language)) return std::move(file->airframe);
    Errors none; // the translations are checked
    Airframe airframe = made(file->draft, expand(file->draft, none));
    airframe.sha256 = std::move(file->airframe.sha256);
    return airframe;
}

Results<Untranslated> untranslated(std::string_view text, const std::string& also) {
    auto file = readWhole(text);
    if (!file) return tl::unexpected(std::move(file.error()));
    Untranslated all;
    std::vector<std::string> languages;
    for (const auto& [language, texts] : file->draft.translations)
        languages.push_back(language);
    if (!also.empty()) languages.push_back(also);
    for (const std::string& language : languages)
        all[language] = missing(file->draft, language);
    return all;
}

void reword(Airframe& airframe, Airframe other) {
    const auto texts = textsOf(airframe);
    const auto others = textsOf(other);
    if (airframe.sha256 != other.sha256 || texts.size() != others.size()) return;
    for (std::size_t i = 0; i < texts.size(); ++i)
        *texts[i] = std::move(*others[i]);
}

Results<Untranslated> untranslatedFrom(const std::filesystem::path& path, const std::string& also) {
    const auto text = readFile(path, mostBytes);
    if (!text) return tl::unexpected(std::vector{text.error()});
    return untranslated(*text, also);
}

Results<Airframe> readFrom(const std::filesystem::path& path) {
    const auto text = readFile(path, mostBytes);
    if (!text) return tl::unexpected(std::vector{text.error()});
    return read(*text);
}

} // namespace ambit::airframe
