#include "airframe/expand.hpp"

#include <algorithm>

namespace ambit::airframe {

namespace {

/// Fills a text's placeholders and sees that it hasn't grown too long.
class Filler {
public:
    Filler(const Repeat& repeating, const RepeatMember& one, Errors& sink)
        : repeat(repeating), member(one), errors(sink) {}

    void text(std::string& text, const std::string& where, std::size_t most) const {
        const std::size_t before = lengthOf(text);
        text = fill(text, repeat.id, member.name);
        if (before <= most && lengthOf(text) > most) {
            errors.add(where, say("With the name of %1 put in, this text is too long.", inQuotes(member.id)),
                       say("Use at most %1 characters.", figure(std::to_string(most))));
        }
    }
    void id(std::string& id) const { id = fill(id, repeat.id, member.id); }
    void ids(std::vector<std::string>& list) const {
        for (std::string& one : list)
            id(one);
    }

private:
    const Repeat& repeat;
    const RepeatMember& member;
    Errors& errors;
};

void addWanted(Expanded& expanded, const std::string& setting, const std::string& state,
               const std::string& where) {
    expanded.wanted.push_back({setting, state, where});
}

/// The point's own `when`, filled, and its member's beside it.
void repeatWhen(Expanded& expanded, const Filler& filler, const Item<RepeatMember>& member, Errors& errors) {
    Settings both = member.value.when;
    for (const auto& [setting, state] : member.value.when) {
        addWanted(expanded, setting, state, pointerTo(pointerTo(member.at, "when"), setting));
    }
    for (const auto& [writtenSetting, writtenState] : expanded.point.when) {
        const std::string where = pointerTo(pointerTo(expanded.at, "when"), writtenSetting);
        std::string setting = writtenSetting;
        std::string state = writtenState;
        filler.id(setting);
        filler.id(state);
        const auto [there, fresh] = both.emplace(setting, state);
        addWanted(expanded, setting, state, where);
        if (!fresh && there->second != state) {
            errors.add(where,
                       say("The point wants %1 to be %2, and its repeat's member %3 wants %4.", setting,
                           inQuotes(state), inQuotes(member.value.id), inQuotes(there->second)),
                       say("Take one of the two away."));
        }
    }
    expanded.point.when = std::move(both);
}

Expanded repeated(const Item<DraftPoint>& from, const Repeat& repeat, const Item<RepeatMember>& member,
                  Errors& errors) {
    Expanded expanded{from.value.point, from.at, {}};
    Point& point = expanded.point;
    const Filler filler(repeat, member.value, errors);
    point.member = member.value.id;
    point.id = point.base + '.' + point.member;
    filler.text(point.name, pointerTo(from.at, "name"), mostName);
    filler.text(point.sound, pointerTo(from.at, "sound"), mostText);
    filler.text(point.unsound, pointerTo(from.at, "unsound"), mostText);
    filler.text(point.why, pointerTo(from.at, "why"), mostText);
    for (std::size_t i = 0; i < point.cautions.size(); ++i) {
        filler.text(point.cautions[i], pointerTo(pointerTo(from.at, "cautions"), i), mostText);
    }
    if (point.limit) {
        const std::string limit = pointerTo(from.at, "limit");
        filler.text(point.limit->quantity, pointerTo(limit, "quantity"), mostName);
        filler.text(point.limit->unit, pointerTo(limit, "unit"), mostName);
        filler.text(point.limit->source, pointerTo(limit, "source"), mostText);
    }
    filler.id(point.zone);
    for (auto* list : {&point.stands, &point.after, &point.through, &point.opens, &point.closes})
        filler.ids(*list);
    repeatWhen(expanded, filler, member, errors);
    return expanded;
}

Expanded single(const Item<DraftPoint>& from) {
    Expanded expanded{from.value.point, from.at, {}};
    expanded.point.id = expanded.point.base;
    for (const auto& [setting, state] : expanded.point.when) {
        addWanted(expanded, setting, state, pointerTo(pointerTo(from.at, "when"), setting));
    }
    return expanded;
}

bool isTooMany(const Draft& draft) {
    std::size_t count = 0;
    for (const auto& item : draft.points.items) {
        const Repeat* repeat = item.value.repeat ? draft.repeatOf(*item.value.repeat) : nullptr;
        count += repeat ? repeat->over.items.size() : 1;
    }
    return count > mostPoints;
}

void expandOne(const Draft& draft, const Item<DraftPoint>& item, Expansion& expansion, Errors& errors) {
    auto& ids = expansion.ids[item.value.point.base];
    if (!item.value.repeat) {
        expansion.points.push_back(single(item));
        ids.push_back(expansion.points.back().point.id);
        return;
    }
    const Repeat* repeat = draft.repeatOf(*item.value.repeat);
    if (!repeat && draft.repeats.known && !item.value.repeat->empty()) {
        errors.add(pointerTo(item.at, "repeat"), say("There is no repeat %1.", inQuotes(*item.value.repeat)),
                   say("Name one that exists, or add it."));
    }
    if (!repeat || repeat->over.items.empty()) {
        expansion.complete = false;
        return;
    }
    for (const auto& member : repeat->over.items) {
        expansion.points.push_back(repeated(item, *repeat, member, errors));
        ids.push_back(expansion.points.back().point.id);
    }
}

} // namespace

std::string fill(const std::string& text, const std::string& repeat, const std::string& with) {
    const std::string placeholder = '{' + repeat + '}';
    std::string filled;
    std::size_t from = 0;
    for (std::size_t at = 0; (at = text.find(placeholder, from)) != std::string::npos;
         from = at + placeholder.size()) {
        filled.append(text, from, at - from).append(with);
    }
    return filled.append(text, from);
}

const Repeat* Draft::repeatOf(const std::string& id) const {
    const auto found = std::find_if(repeats.items.begin(), repeats.items.end(),
                                    [&](const auto& item) { return item.value.id == id; });
    return found == repeats.items.end() ? nullptr : &found->value;
}

std::vector<std::string> resolve(const Expansion& expansion, const std::string& reference,
                                 const std::string& where, Errors& errors) {
    if (reference.empty()) return {};
    if (const auto found = expansion.ids.find(reference); found != expansion.ids.end()) return found->second;
    const std::string base = reference.substr(0, reference.find('.'));
    if (const auto found = expansion.ids.find(base); found != expansion.ids.end()) {
        const auto& ids = found->second;
        if (ids.empty()) return {}; // its repeat is wrong and said so
        if (std::find(ids.begin(), ids.end(), reference) != ids.end()) return {reference};
    }
    errors.add(where, say("There is no point %1.", inQuotes(reference)),
               say("Name one that exists, or add it."));
    return {};
}

std::vector<std::string> resolveAll(const Expansion& expansion, const std::vector<std::string>& references,
                                    const std::string& at, Errors& errors) {
    std::vector<std::string> all;
    std::set<std::string> seen;
    for (std::size_t i = 0; i < references.size(); ++i) {
        for (std::string& id : resolve(expansion, references[i], pointerTo(at, i), errors)) {
            if (seen.insert(id).second) all.push_back(std::move(id));
        }
    }
    return all;
}

Expansion expand(const Draft& draft, Errors& errors) {
    Expansion expansion;
    if (isTooMany(draft)) {
        errors.add("/points",
                   say("There are more than %1 points after repetition.", figure(std::to_string(mostPoints))),
                   say("Use fewer points, or repeat fewer."));
        expansion.complete = false;
        for (const auto& item : draft.points.items)
            expansion.ids[item.value.point.base];
        return expansion;
    }
    for (const auto& item : draft.points.items)
        expandOne(draft, item, expansion, errors);
    for (Expanded& expanded : expansion.points) {
        Point& point = expanded.point;
        point.after = resolveAll(expansion, point.after, pointerTo(expanded.at, "after"), errors);
    }
    return expansion;
}

} // namespace ambit::airframe
