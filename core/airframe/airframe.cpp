#include "airframe/airframe.hpp"

#include <algorithm>
#include <set>

namespace ambit::airframe {

namespace {

template<class T> const T* find(const std::vector<T>& list, const std::string& id) {
    const auto found = std::find_if(list.begin(), list.end(), [&](const T& one) { return one.id == id; });
    return found == list.end() ? nullptr : &*found;
}

bool haveCommon(const std::vector<std::string>& a, const std::vector<std::string>& b) {
    return std::any_of(a.begin(), a.end(),
                       [&](const auto& one) { return std::find(b.begin(), b.end(), one) != b.end(); });
}

} // namespace

const SettingState* Setting::state(const std::string& stateId) const {
    return find(states, stateId);
}

const SettingChange* Setting::change(const std::string& from, const std::string& to) const {
    const auto found = std::find_if(changes.begin(), changes.end(), [&](const SettingChange& one) {
        return one.from == from && one.to == to;
    });
    return found == changes.end() ? nullptr : &*found;
}

const Zone* Airframe::zone(const std::string& wanted) const {
    return find(zones, wanted);
}
const Stand* Airframe::stand(const std::string& wanted) const {
    return find(stands, wanted);
}
const Setting* Airframe::setting(const std::string& wanted) const {
    return find(settings, wanted);
}
const Opening* Airframe::opening(const std::string& wanted) const {
    return find(openings, wanted);
}
const Point* Airframe::point(const std::string& wanted) const {
    return find(points, wanted);
}
const Walk* Airframe::walk(const std::string& wanted) const {
    return find(walks, wanted);
}
const Counter* Airframe::counter(const std::string& wanted) const {
    return find(counters, wanted);
}
const Inspection* Airframe::inspection(const std::string& wanted) const {
    return find(inspections, wanted);
}
const LifeLimit* Airframe::lifeLimit(const std::string& wanted) const {
    return find(lifeLimits, wanted);
}

Settings Airframe::initialSettings() const {
    Settings initial;
    for (const Setting& setting : settings)
        initial[setting.id] = setting.initial;
    return initial;
}

std::vector<std::string> Airframe::before(const Point& point) const {
    const std::set<std::string> after(point.after.begin(), point.after.end());
    std::vector<std::string> ids;
    for (const Point& other : points) {
        const bool opensForIt =
            haveCommon(other.opens, point.through) || haveCommon(other.opens, point.closes);
        const bool looksIn = haveCommon(other.through, point.closes);
        const bool itself = other.id == point.id;
        if (after.contains(other.id) || ((opensForIt || looksIn) && !itself)) ids.push_back(other.id);
    }
    return ids;
}

std::vector<std::string> Airframe::pointsOf(const Walk& walk, bool atNight) const {
    if (!atNight || walk.night.empty()) return walk.points;
    std::vector<std::string> ids;
    for (const Point& point : points)
        if (walk.has(point.id, true)) ids.push_back(point.id);
    return ids;
}

bool Walk::has(const std::string& point, bool atNight) const {
    const auto isIn = [&](const std::vector<std::string>& list) {
        return std::find(list.begin(), list.end(), point) != list.end();
    };
    return isIn(points) || (atNight && isIn(night));
}

const char* toText(Category category) {
    switch (category) {
    case Category::helicopter:
        return "helicopter";
    case Category::aeroplane:
        return "aeroplane";
    }
    return "";
}

const char* toText(PartKind kind) {
    switch (kind) {
    case PartKind::body:
        return "body";
    case PartKind::glass:
        return "glass";
    case PartKind::wing:
        return "wing";
    case PartKind::tail:
        return "tail";
    case PartKind::rotor:
        return "rotor";
    case PartKind::propeller:
        return "propeller";
    case PartKind::gear:
        return "gear";
    case PartKind::tread:
        return "tread";
    }
    return "";
}

const char* toText(Access access) {
    switch (access) {
    case Access::ground:
        return "ground";
    case Access::kneel:
        return "kneel";
    case Access::step:
        return "step";
    case Access::ladder:
        return "ladder";
    }
    return "";
}

const char* toText(How how) {
    switch (how) {
    case How::look:
        return "look";
    case How::feel:
        return "feel";
    case How::move:
        return "move";
    case How::turn:
        return "turn";
    case How::drain:
        return "drain";
    case How::measure:
        return "measure";
    case How::count:
        return "count";
    case How::listen:
        return "listen";
    }
    return "";
}

const char* toText(Severity severity) {
    switch (severity) {
    case Severity::assess:
        return "assess";
    case Severity::grounds:
        return "grounds";
    }
    return "";
}

const char* toText(Means means) {
    switch (means) {
    case Means::gauge:
        return "gauge";
    case Means::ruler:
        return "ruler";
    case Means::dipstick:
        return "dipstick";
    case Means::meter:
        return "meter";
    case Means::count:
        return "count";
    case Means::eye:
        return "eye";
    }
    return "";
}

std::optional<Means> meansFrom(std::string_view word) {
    for (const Means means :
         {Means::gauge, Means::ruler, Means::dipstick, Means::meter, Means::count, Means::eye})
        if (word == toText(means)) return means;
    return std::nullopt;
}

std::optional<Severity> severityFrom(std::string_view word) {
    for (const Severity severity : {Severity::assess, Severity::grounds}) {
        if (word == toText(severity)) return severity;
    }
    return std::nullopt;
}

bool holds(const Settings& when, const Settings& now) {
    return std::all_of(when.begin(), when.end(), [&](const auto& wanted) {
        const auto found = now.find(wanted.first);
        return found != now.end() && found->second == wanted.second;
    });
}

} // namespace ambit::airframe
