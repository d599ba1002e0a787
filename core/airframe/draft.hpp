// The file as read but not yet checked as a whole: lists with their pointers, repetitions still written once.
#pragma once

#include "airframe/fields.hpp"

namespace ambit::airframe {

struct DraftSetting {
    std::string id;
    std::string name;
    List<SettingState> states;
    std::string initial;
    List<SettingChange> changes; ///< `needs` as written
};

struct RepeatMember {
    std::string id;
    std::string name;
    Settings when;
};

struct Repeat {
    std::string id;
    List<RepeatMember> over;
};

struct DraftPoint {
    Point point; ///< texts and references as written, id in `base`
    std::optional<std::string> repeat;
};

struct DraftWalk {
    Walk walk; ///< points as written
    bool all = false;
    bool hasEnd = false;
};

/// An inspection or a life limit.
template<class T> struct DraftDue {
    T what; ///< its spans are those below
    List<Span> spans;
};

/// Language (ISO 639-1) → text as written → text in it.
using Translations = std::map<std::string, std::map<std::string, std::string>>;

struct Draft {
    Airframe top; ///< what stands at the top of the file; its lists are those below
    List<Counter> counters;
    List<Part> parts;
    List<KeepOut> keepOut;
    List<Zone> zones;
    List<Stand> stands;
    List<DraftSetting> settings;
    List<Repeat> repeats;
    List<Opening> openings;
    List<DraftPoint> points;
    List<DraftWalk> walks;
    List<DraftDue<Inspection>> inspections;
    List<DraftDue<LifeLimit>> lifeLimits;
    Translations translations;

    [[nodiscard]] const Repeat* repeatOf(const std::string& id) const; ///< nullptr: there is none
};

constexpr std::size_t mostPoints = 500;           ///< after repetition
constexpr std::size_t mostObstacleCorners = 1000; ///< of solid parts and keep-out areas together

/// An element of `inspections` or `lifeLimits` (take_due.cpp).
[[nodiscard]] DraftDue<Inspection> takeInspection(Fields& fields);
[[nodiscard]] DraftDue<LifeLimit> takeLifeLimit(Fields& fields);

/// Takes everything out of `json`; wrong types, words, numbers, texts and fields are noted in `errors`.
[[nodiscard]] Draft take(const Json& json, Errors& errors);

} // namespace ambit::airframe
