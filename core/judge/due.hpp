// What comes due, and when: inspections and lives against counters and calendar, in exact decimals and whole
// days. It says what the airframe's own spans say and no more: whether an aircraft may fly is for people to
// decide, by the rules in force and the handbook.
//
// Where the rules come from:
// - 14 CFR 91.409(b): what was used of an allowance counts towards the next span.
// - 14 CFR 91.409(a), 91.413(a): "within the preceding" so many calendar months: months count from the day
//   when it was done, early or late.
// - A calendar month ends on its last day, and what is due by months is due on that day. No rule's own
//   definition was found; common practice.
#pragma once

#include "airframe/airframe.hpp"
#include "base/date.hpp"

namespace ambit::judge {

/// What is known of one day, as it was where the aircraft was. What isn't known is left out, never guessed.
struct Moment {
    std::optional<Date> on;
    std::map<std::string, Decimal> counters; ///< counter id → reading, in the counter's unit
};

/// Where an inspection that was never done counts from: every counter at zero, that day if it is known.
[[nodiscard]] Moment sinceNew(const airframe::Airframe& airframe, std::optional<Date> on);

/// A part on the aircraft now.
struct Fitted {
    Moment at;                          ///< when it was fitted: the day, the aircraft's counters
    std::map<std::string, Decimal> had; ///< its own counts then, 0 or more; counter id → units
    std::optional<Date> newOn;          ///< the day its life in months began
};

/// A part that had run nothing when it was fitted, its months counting from that day.
[[nodiscard]] Fitted fittedNew(const airframe::Airframe& airframe, Moment at);

/// From the least to the most urgent.
enum class DueVerdict {
    fine,
    soon,            ///< no more left than one wants to be told ahead
    withinAllowance, ///< beyond it, and only on the allowance's condition, which a person must judge
    unknown,         ///< something is missing or contradicts itself; `why` says what
    passed,
};

/// How late something was done.
struct Late {
    Decimal by;           ///< above zero; the counter's units, or days
    bool allowed = false; ///< no more than the allowance, whose condition a person must judge
};

/// One span of an item. At the count itself, and on the last day, it is still within.
struct SpanDue {
    DueVerdict verdict{};
    std::string counter;         ///< id; empty: by the calendar
    std::string unit;            ///< of `length`, `left` and `late`; "days" by the calendar
    Decimal length;              ///< of the whole span
    std::optional<Decimal> at;   ///< due when the aircraft's counter reads this
    std::optional<Date> on;      ///< due by the end of this day
    std::optional<Decimal> left; ///< below zero: beyond; none if unknown
    std::optional<Late> late;    ///< of the last time it was done; none also where that can't be told
    Sentence why;                ///< if unknown: a sentence, and what to do
};

struct Due {
    DueVerdict verdict{};       ///< the most urgent of the spans'
    std::vector<SpanDue> spans; ///< as the airframe lists them
};

/// `past`: when it was done, oldest first; the first moment may be sinceNew. Give the one before the last
/// too: only then can be told whether the last was late. Each span then counts
/// - from when it was done, if that was no later than due;
/// - by a counter and late, with or without an allowance: from when it had been due, so that the excess is
///   included; late by a whole span or more, when nothing of the next would be left: from when it was done;
/// - by the calendar: from when it was done.
/// Unknown: a reading or day that is missing, counters or days that run backwards (where a counter was
/// replaced, give the past from then on, in its readings), figures of more than 15 digits.
[[nodiscard]] Due due(const airframe::Airframe& airframe, const airframe::Inspection& inspection,
                      const std::vector<Moment>& past, const Moment& now);

/// A life counts the part's own hours, landings or starts: what it had when fitted and what the aircraft's
/// counter counted since. It has no allowance.
[[nodiscard]] Due due(const airframe::Airframe& airframe, const airframe::LifeLimit& limit,
                      const Fitted& fitted, const Moment& now);

/// How much an aircraft is used: counter id → units a day (hours, landings), above zero.
using Rates = std::map<std::string, Decimal>;

/// The span that comes first: a passed one before others, then by days left if `rates` tell the days of all
/// its counters, else by the share of the span that is left. None if nothing is known.
[[nodiscard]] std::optional<std::size_t> first(const Due& due, const Rates& rates = {});

/// Indices of `items`, what comes first in front: what has passed, what is unknown, then the rest, each by
/// its first span. By days if `rates` tell those of every counter among all items, else by the share that is
/// left; as listed where that is equal.
[[nodiscard]] std::vector<std::size_t> inOrder(const std::vector<Due>& items, const Rates& rates = {});

[[nodiscard]] const char* toText(DueVerdict verdict); ///< "fine", "soon", "within allowance", …

/// "due at 1100.0 h, 12.4 h left; last done 4.6 h late, within its allowance", "due on 2027-04-30, 24 days
/// left". `span` is the airframe's.
[[nodiscard]] Sentence toText(const airframe::Span& span, const SpanDue& due);

} // namespace ambit::judge
