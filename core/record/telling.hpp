// Two who listen while something is said member by member: one writes it down as JSON, the other holds it
// against a JSON that should say the same. Inside core/record only.
#pragma once

#include "base/pointer.hpp"
#include "base/tape.hpp"
#include "base/time.hpp"

#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace ambit::record {

class Writing {
public:
    void text(std::string_view name, std::string_view text) { member(name) = text; }
    void textIfAny(std::string_view name, std::string_view text) {
        if (!text.empty()) member(name) = text;
    }
    void nothing(std::string_view /*name*/) {}
    void instant(std::string_view name, Instant at) { member(name) = toText(at); }
    void integer(std::string_view name, std::int64_t value) { member(name) = value; }
    void flag(std::string_view name, bool value) { member(name) = value; }
    template<class Say> void object(std::string_view name, Say say) {
        within(member(name) = Json::object(), say);
    }
    template<class Items, class Say> void list(std::string_view name, const Items& items, Say say) {
        Json& list = member(name) = Json::array();
        for (const auto& item : items)
            within(list.emplace_back(Json::object()), [&] { say(item); });
    }
    template<class Items, class Say> void texts(std::string_view name, const Items& items, Say say) {
        Json& list = member(name) = Json::array();
        for (const auto& item : items)
            list.push_back(say(item));
    }

    Json json = Json::object();

private:
    Json& member(std::string_view name) { return (*in)[std::string(name)]; }
    template<class Say> void within(Json& object, Say say) {
        Json* around = std::exchange(in, &object);
        say();
        in = around;
    }

    Json* in = &json;
};

/// Of fields that the speaker doesn't speak of: do they come from elsewhere, so that they may be there?
using MayBeThere = bool (*)(std::string_view name);

/// Keeps the pointer of the first thing that differs.
class Comparing {
public:
    Comparing(JsonView content, MayBeThere mayBeThere) : in(content), beyond(mayBeThere) {}
    Comparing(const Comparing&) = delete;
    Comparing& operator=(const Comparing&) = delete;

    void text(std::string_view name, std::string_view text) {
        const JsonView its = member(name);
        if (!its.isText() || its.text() != text) differs(name);
    }
    void textIfAny(std::string_view name, std::string_view text) {
        if (!text.empty()) this->text(name, text);
    }
    /// It isn't there, though a field of this name may be elsewhere.
    void nothing(std::string_view name) {
        if (member(name)) differs(name);
    }
    void instant(std::string_view name, Instant at) {
        const auto its = parseInstant(member(name).text()); // a time has one form only
        if (!its || *its != at) differs(name);
    }
    void integer(std::string_view name, std::int64_t value) {
        if (member(name).integer() != value) differs(name);
    }
    void flag(std::string_view name, bool value) {
        const JsonView its = member(name);
        if (!its.isFlag() || its.flag() != value) differs(name);
    }
    template<class Say> void object(std::string_view name, Say say) {
        within(member(name), Where(*where, name), say);
    }
    template<class Items, class Say> void list(std::string_view name, const Items& items, Say say) {
        const JsonView list = member(name);
        if (!list.isList() || list.size() != items.size()) return differs(name);
        const Where at(*where, name);
        std::size_t i = 0;
        auto element = list.elements().begin();
        for (const auto& item : items) {
            within(*element, Where(at, i++), [&] { say(item); });
            ++element;
        }
    }
    template<class Items, class Say> void texts(std::string_view name, const Items& items, Say say) {
        const JsonView list = member(name);
        if (!list.isList() || list.size() != items.size()) return differs(name);
        const Where at(*where, name);
        std::size_t i = 0;
        auto element = list.elements().begin();
        for (const auto& item : items) {
            if ((*element).text() != say(item) && !found) found = Where(at, i).text();
            ++element;
            ++i;
        }
    }

    /// All was said.
    [[nodiscard]] std::optional<std::string> end() {
        lookForMore();
        return found;
    }

private:
    JsonView member(std::string_view name) {
        std::size_t place = 0;
        for (const JsonView::Member member : in.members()) {
            if (member.name == name) {
                spoken |= bit(place);
                return member.value;
            }
            ++place;
        }
        return {};
    }
    /// No shape has so many fields that their places would run out.
    static std::uint64_t bit(std::size_t place) { return place < 64 ? std::uint64_t{1} << place : 0; }
    void differs(std::string_view name) {
        if (!found) found = Where(*where, name).text();
    }
    template<class Say> void within(JsonView object, const Where& at, Say say) {
        const JsonView aroundIt = std::exchange(in, object);
        const Where* const whereAround = std::exchange(where, &at);
        const std::uint64_t spokenAround = std::exchange(spoken, 0);
        if (!object.isObject() && !found) found = at.text();
        say();
        lookForMore();
        in = aroundIt;
        where = whereAround;
        spoken = spokenAround;
    }
    void lookForMore() {
        std::size_t place = 0;
        for (const JsonView::Member member : in.members())
            if ((spoken & bit(place++)) == 0 && !beyond(member.name)) differs(member.name);
    }

    JsonView in;
    MayBeThere beyond;
    Where root{""};
    const Where* where = &root;
    std::uint64_t spoken = 0; ///< by place among the members
    std::optional<std::string> found;
};

} // namespace ambit::record
