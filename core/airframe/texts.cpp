#include "airframe/texts.hpp"

namespace ambit::airframe {

namespace {

/// Gathers the texts of whatever has some.
class Gather {
public:
    std::vector<Text> texts;

    void name(std::string& text, const Repeat* repeat = nullptr) {
        texts.push_back({&text, mostName, repeat});
    }
    void say(std::string& text, const Repeat* repeat = nullptr) {
        texts.push_back({&text, mostText, repeat});
    }
    void all(std::vector<std::string>& list, const Repeat* repeat = nullptr) {
        for (std::string& text : list)
            say(text, repeat);
    }

    void top(Airframe& airframe) {
        name(airframe.name);
        say(airframe.notice);
        all(airframe.cautions);
    }
    void of(Counter& counter) { name(counter.name); }
    void of(KeepOut& area) { say(area.why); }
    void of(Zone& zone) { name(zone.name); }
    void of(Stand& stand) {
        name(stand.name);
        all(stand.cautions);
    }
    void of(SettingState& state) { name(state.name); }
    void of(SettingChange& change) {
        say(change.how);
        all(change.cautions);
    }
    void of(Opening& opening) {
        name(opening.name);
        say(opening.owed);
    }
    void of(Point& point, const Repeat* repeat = nullptr) {
        name(point.name, repeat);
        say(point.sound, repeat);
        say(point.unsound, repeat);
        say(point.why, repeat);
        all(point.cautions, repeat);
        if (point.limit) name(point.limit->quantity, repeat);
    }
    void of(Walk& walk) {
        name(walk.name);
        say(walk.about);
    }
    void of(Span& span) {
        auto* units = std::get_if<Units>(&span);
        if (units != nullptr && units->allowance) say(units->allowance->only);
    }
    void of(Setting& setting) {
        name(setting.name);
        each(setting.states);
        each(setting.changes);
    }
    void of(Inspection& inspection) {
        name(inspection.name);
        each(inspection.every);
    }
    void of(LifeLimit& limit) { name(limit.name); }

    void of(DraftSetting& setting) {
        name(setting.name);
        each(setting.states);
        each(setting.changes);
    }
    void of(Repeat& repeat) {
        for (auto& member : repeat.over.items)
            name(member.value.name);
    }
    void of(DraftWalk& walk) { of(walk.walk); }
    void of(DraftDue<Inspection>& inspection) {
        name(inspection.what.name);
        each(inspection.spans);
    }
    void of(DraftDue<LifeLimit>& limit) { of(limit.what); }

    template<class T> void each(std::vector<T>& list) {
        for (T& one : list)
            of(one);
    }
    template<class T> void each(List<T>& list) {
        for (Item<T>& item : list.items)
            of(item.value);
    }
};

} // namespace

std::vector<Text> textsOf(Draft& draft) {
    Gather gather;
    gather.top(draft.top);
    gather.each(draft.counters);
    gather.each(draft.keepOut);
    gather.each(draft.zones);
    gather.each(draft.stands);
    gather.each(draft.settings);
    gather.each(draft.repeats);
    gather.each(draft.openings);
    for (auto& [point, at] : draft.points.items)
        gather.of(point.point, point.repeat ? draft.repeatOf(*point.repeat) : nullptr);
    gather.each(draft.walks);
    gather.each(draft.inspections);
    gather.each(draft.lifeLimits);
    return std::move(gather.texts);
}

std::vector<std::string*> textsOf(Airframe& airframe) {
    Gather gather;
    gather.top(airframe);
    gather.each(airframe.counters);
    gather.each(airframe.keepOut);
    gather.each(airframe.zones);
    gather.each(airframe.stands);
    gather.each(airframe.settings);
    gather.each(airframe.openings);
    gather.each(airframe.points);
    gather.each(airframe.walks);
    gather.each(airframe.inspections);
    gather.each(airframe.lifeLimits);
    std::vector<std::string*> texts;
    for (const Text& text : gather.texts)
        texts.push_back(text.text);
    return texts;
}

} // namespace ambit::airframe
