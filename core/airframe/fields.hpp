// Takes typed fields out of JSON and notes everything that is wrong with them, each at its pointer.
#pragma once

#include "airframe/airframe.hpp"
#include "base/parse.hpp"
#include "base/phrase.hpp"
#include "base/pointer.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <vector>

namespace ambit::airframe {

/// What was found wrong so far; the same thing at the same place is noted once.
class Errors {
public:
    void add(std::string where, Sentence what, Sentence remedy, ErrorCode code = ErrorCode::invalid);
    [[nodiscard]] bool empty() const { return list.empty(); }
    [[nodiscard]] std::vector<Error>& all() { return list; }

private:
    std::vector<Error> list;
    std::set<std::pair<std::string, std::string>> known;
};

/// `text` in quotes for a sentence, cut short if long.
[[nodiscard]] std::string inQuotes(const std::string& text);

/// One element of a list and the pointer to it.
template<class T> struct Item {
    T value;
    std::string at;
};

/// A list of the file. Unknown if the file has none that can be read: then nothing can be said about what
/// refers to it.
template<class T> struct List {
    std::vector<Item<T>> items;
    bool known = false;
};

enum class Presence { required, optional };

/// The fields of one object. What is missing or wrong is noted and comes back as an empty value (a place as
/// NaN, see isGiven), so that reading goes on. finish() notes the fields nobody asked for.
class Fields {
public:
    Fields(const Json& value, std::string pointer, Errors& sink);

    [[nodiscard]] const std::string& at() const { return pointer; }
    [[nodiscard]] std::string at(std::string_view field) const { return pointerTo(pointer, field); }
    [[nodiscard]] Errors& errors() const { return *sink; }

    /// Texts may hold {placeholder} from here on.
    void setPlaceholder(std::string id) { placeholder = std::move(id); }

    const Json* get(const std::string& field, Presence presence = Presence::required);
    std::string
    id(const std::string& field); ///< comes back even if ill-formed: what refers to it needs no second error
    std::string name(const std::string& field);
    std::string text(const std::string& field);
    std::string string(const std::string& field, ///< an id or a code, not empty
                       Presence presence = Presence::required);
    std::vector<std::string> texts(const std::string& field, Presence presence = Presence::required);
    /// Ids of other things, none twice; "" stands for one that can't be read, so that indices stay those of
    /// the file.
    std::vector<std::string> references(const std::string& field, Presence presence, std::size_t least);
    std::optional<double> number(const std::string& field, double least, double most,
                                 Presence presence = Presence::required);
    std::optional<int> integer(const std::string& field, int least, int most,
                               Presence presence = Presence::required);
    bool boolean(const std::string& field, Presence presence);
    Place place(const std::string& field);
    Outline outline(const std::string& field);
    Settings when();
    std::optional<Decimal> decimal(const std::string& field, Presence presence = Presence::optional);

    /// One of the words of `all`.
    template<class E> std::optional<E> word(const std::string& field, std::initializer_list<E> all) {
        const Json* value = get(field);
        return value ? wordOf(*value, at(field), all) : std::nullopt;
    }
    template<class E> std::vector<E> words(const std::string& field, std::initializer_list<E> all) {
        std::vector<E> list;
        for (const auto& [value, where] : elements(field, Presence::required, 1, all.size())) {
            const auto one = wordOf(*value, where, all);
            const bool twice = one && std::find(list.begin(), list.end(), *one) != list.end();
            if (twice) sink->add(where, say("This word stands in the list already."), say("Remove it."));
            if (one && !twice) list.push_back(*one);
        }
        return list;
    }

    /// A list of objects, each taken by `take(Fields&)`.
    template<class Take>
    auto list(const std::string& field, std::size_t least, std::size_t most, Take take,
              Presence presence = Presence::required) {
        List<decltype(take(std::declval<Fields&>()))> list;
        const Json* value = get(field, presence);
        list.known = value && value->is_array() && value->size() <= most;
        for (const auto& [element, where] : elements(field, presence, least, most)) {
            Fields fields(*element, where, *sink);
            if (!element->is_object()) continue;
            list.items.push_back({take(fields), where});
            fields.finish();
        }
        return list;
    }

    void finish();

private:
    struct Element {
        const Json* value;
        std::string where;
    };
    std::vector<Element> elements(const std::string& field, Presence presence, std::size_t least,
                                  std::size_t most);
    std::string stringOf(const Json& value, const std::string& where);
    std::string textOf(const Json& value, const std::string& where, std::size_t most, bool oneLine);
    Place placeOf(const Json& value, const std::string& where);
    std::optional<double> numberOf(const Json& value, const std::string& where, double least, double most);
    bool isType(const Json& value, const std::string& where, bool is, const char* wanted);

    template<class E>
    std::optional<E> wordOf(const Json& value, const std::string& where, std::initializer_list<E> all) {
        if (!isType(value, where, value.is_string(), pattern("a word"))) return std::nullopt;
        std::string choices;
        for (const E one : all) {
            if (value.get_ref<const std::string&>() == toText(one)) return one;
            choices += (choices.empty() ? "" : ", ") + std::string(toText(one));
        }
        sink->add(where, say("The word %1 is not known here.", inQuotes(value.get<std::string>())),
                  say("Use one of: %1.", choices));
        return std::nullopt;
    }

    const Json* object; ///< nullptr: what was to be an object isn't one
    std::string pointer;
    Errors* sink;
    std::set<std::string> asked;
    std::string placeholder;
};

/// False for the place that stands for one that couldn't be read.
[[nodiscard]] bool isGiven(const Place& place);

/// Characters (code points) in UTF-8 text.
[[nodiscard]] std::size_t lengthOf(std::string_view text);

constexpr std::size_t mostName = 60;
constexpr std::size_t mostText = 600;

} // namespace ambit::airframe
