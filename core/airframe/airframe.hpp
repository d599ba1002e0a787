// A kind of aircraft, as values: what AIRFRAME.md describes, after reading, checking and repeating. Immutable
// once read.
#pragma once

#include "base/decimal.hpp"

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ambit::airframe {

/// Metres on the figure: x to the right, y forward.
struct Place {
    double x = 0;
    double y = 0;
    friend bool operator==(const Place&, const Place&) = default;
};

using Outline = std::vector<Place>; ///< simple polygon, not closed twice

using Settings = std::map<std::string, std::string>; ///< setting id → state id

enum class Category { helicopter, aeroplane };
enum class PartKind { body, glass, wing, tail, rotor, propeller, gear, tread };
enum class Access { ground, kneel, step, ladder };
enum class How { look, feel, move, turn, drain, measure, count, listen };
/// What a value is read from, where no photo gives it: a gauge or feeler, a ruler or caliper, a dipstick, a
/// meter's figures; counted; judged by eye.
enum class Means { gauge, ruler, dipstick, meter, count, eye };
/// What a finding at a point means at least.
enum class Severity { assess, grounds };

struct Part {
    std::string id;
    PartKind kind{};
    Outline outline;
    bool solid = false; ///< one walks round it
    Settings when;      ///< drawn in these settings only; empty: always
};

struct KeepOut {
    std::string id;
    Outline outline;
    std::string why;
};

struct Zone {
    std::string id;
    std::string name;
    Outline outline;
};

struct Stand {
    std::string id;
    std::string name;
    Place at;         ///< on the ground: where one stands, or the foot of the step
    double level = 0; ///< feet above ground, m
    Access access{};
    int hands = 2; ///< left free
    std::vector<std::string> cautions;
    std::vector<std::string> stepTo;   ///< reached from here without stepping down
    std::vector<std::string> onlyFrom; ///< empty: from the ground

    [[nodiscard]] bool raised() const { return access == Access::step || access == Access::ladder; }
};

struct SettingState {
    std::string id;
    std::string name;
};

struct SettingChange {
    std::string from;
    std::string to;
    std::vector<std::string> stands; ///< any one of them
    double seconds = 0;
    std::string how;
    std::vector<std::string> needs; ///< points settled sound before; repetitions expanded
    std::vector<std::string> cautions;
};

struct Setting {
    std::string id;
    std::string name;
    std::vector<SettingState> states;
    std::string initial;
    std::vector<SettingChange> changes;

    [[nodiscard]] const SettingState* state(const std::string& stateId) const;
    [[nodiscard]] const SettingChange* change(const std::string& from, const std::string& to) const;
};

/// How it counts when measured values come to their limit.
struct Trend {
    std::string over;     ///< a counter's id, or "days"
    Decimal ahead;        ///< of it, until the end of the next flight; zero or more
    bool against = false; ///< coming there by then stands against `fit`; else it warns
};

/// What is measured and its limits, in the limit's own unit; at least one of min and max.
struct Limit {
    std::string quantity;
    std::string unit;
    std::optional<Decimal> min;
    std::optional<Decimal> max;
    std::string source;
    std::optional<Trend> trend = {};         ///< none: a trend is shown and warns of nothing
    std::optional<Means> from = {};          ///< what its values are usually read from
    std::optional<Decimal> uncertainty = {}; ///< of such a reading, standard, in `unit`; zero or more
};

struct Opening {
    std::string id;
    std::string name;
    std::string owed; ///< what is still to do, in words
    bool met = false; ///< owed from the start
};

/// One thing to settle. Repetitions are expanded: ids, names, texts and references are this member's own.
struct Point {
    std::string id;     ///< "pitch-link.a"
    std::string base;   ///< as written in the file: "pitch-link"
    std::string member; ///< of its repeat: "a"; empty if not repeated
    std::string name;
    std::string zone;
    std::vector<std::string> stands;
    Settings when;
    std::vector<How> how;
    std::string sound;
    std::string unsound;
    std::string why;
    Severity finding{};
    std::string jasc;
    double seconds = 0;
    std::vector<std::string> after;   ///< direct `after` only; of the last look: all that is none
    std::vector<std::string> through; ///< openings
    std::vector<std::string> opens;
    std::vector<std::string> closes;
    std::optional<Limit> limit;
    std::vector<std::string> cautions;
    bool night = false;    ///< belongs to a walk only when the flight goes into the dark
    bool lastLook = false; ///< comes after all that is none: once round with empty hands
};

struct Walk {
    std::string id;
    std::string name;
    std::string about;
    Place start;
    Place end;                           ///< the start if the file gives none
    std::vector<std::string> points;     ///< expanded, in listed order, without those for the night
    std::vector<std::string> night = {}; ///< those

    /// Of a flight by day, or one that goes into the dark.
    [[nodiscard]] bool has(const std::string& point, bool atNight) const;
};

struct Counter {
    std::string id;
    std::string name;
    std::string unit;
};

/// Beyond what is due, on a condition that only a person can know ("only while en route to …").
struct Allowance {
    Decimal most; ///< in the counter's unit; above zero, less than what it is added to
    std::string only;
};

/// So many units of a counter.
struct Units {
    std::string counter;
    std::string unit;                   ///< the counter's
    Decimal count;                      ///< above zero
    Decimal ahead;                      ///< to be told when so much is left; 0 or more, less than `count`
    std::optional<Allowance> allowance; ///< of an inspection only
};

/// So many calendar months: until the last day of the month so many months later.
struct Months {
    int count = 0;     ///< 1 to 1200
    int aheadDays = 0; ///< to be told when so many are left; 0 to 365
};

using Span = std::variant<Units, Months>;

/// What is done again and again: an inspection, a test, a change of oil.
struct Inspection {
    std::string id;
    std::string name;
    std::vector<Span> every; ///< whichever comes first; a counter once, months once
    std::string source;
};

/// A part that has a life, and is replaced when that ends.
struct LifeLimit {
    std::string id;
    std::string name;
    std::vector<Span> life; ///< whichever comes first, by the part's own count; a counter once, months once
    std::string source;
};

struct Costs {
    double paceMetresPerSecond = 1.1;
    double climbSeconds = 15; ///< up and down again
    double kneelSeconds = 4;
    double clearanceMetres = 0.25;  ///< room a body needs beside what it walks round
    double climbWeightSeconds = 30; ///< what a climb weighs as a risk, beyond its time
    double turnWeightSeconds = 60;  ///< the same for a change of a setting
};

struct Airframe {
    std::string id;
    std::string name;
    Category category{};
    std::string notice;
    std::vector<std::string> cautions;
    std::vector<Counter> counters;
    Costs costs;
    std::vector<Part> parts;
    std::vector<KeepOut> keepOut;
    std::vector<Zone> zones;
    std::vector<Stand> stands;
    std::vector<Setting> settings;
    std::vector<Opening> openings;
    std::vector<Point> points; ///< repetitions expanded, listed order
    std::vector<Walk> walks;
    std::vector<Inspection> inspections;
    std::vector<LifeLimit> lifeLimits;
    std::string sha256; ///< of the file's bytes, hex: the airframe's identity

    // Each gives nullptr if there is no such id. Pointers live as long as the airframe.
    [[nodiscard]] const Zone* zone(const std::string& id) const;
    [[nodiscard]] const Stand* stand(const std::string& id) const;
    [[nodiscard]] const Setting* setting(const std::string& id) const;
    [[nodiscard]] const Opening* opening(const std::string& id) const;
    [[nodiscard]] const Point* point(const std::string& id) const;
    [[nodiscard]] const Walk* walk(const std::string& id) const;
    [[nodiscard]] const Counter* counter(const std::string& id) const;
    [[nodiscard]] const Inspection* inspection(const std::string& id) const;
    [[nodiscard]] const LifeLimit* lifeLimit(const std::string& id) const;

    [[nodiscard]] Settings initialSettings() const;

    /// Everything that must be settled before `point`: its `after`, what opens what it looks `through` or
    /// `closes`, and, for a closing point, what looks through what it closes. Direct ones only, no
    /// duplicates, listed order.
    [[nodiscard]] std::vector<std::string> before(const Point& point) const;

    /// The points of a walk of this airframe by day, or those for the night among them; listed order.
    [[nodiscard]] std::vector<std::string> pointsOf(const Walk& walk, bool atNight) const;
};

// The formats' own words for each value, and back (nullopt: no such word).
[[nodiscard]] const char* toText(Category);
[[nodiscard]] const char* toText(PartKind);
[[nodiscard]] const char* toText(Access);
[[nodiscard]] const char* toText(How);
[[nodiscard]] const char* toText(Means);
[[nodiscard]] const char* toText(Severity);
[[nodiscard]] std::optional<Means> meansFrom(std::string_view word);
[[nodiscard]] std::optional<Severity> severityFrom(std::string_view word);

/// True if every setting that `when` names has that state.
[[nodiscard]] bool holds(const Settings& when, const Settings& now);

} // namespace ambit::airframe
