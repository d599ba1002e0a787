#include "judge/due.hpp"

#include <algorithm>
#include <numeric>

namespace ambit::judge {

namespace {

const Decimal none;
const std::string days = "days"; ///< the unit by the calendar

/// What a span counts from, and the latest reading or day before now.
template<class T> struct From {
    T from;
    T last;
    std::optional<Late> late;
};

tl::unexpected<Error> unknown(Sentence what, Sentence remedy) {
    return fail(ErrorCode::invalid, std::move(what), {}, std::move(remedy));
}

std::optional<Decimal> find(const std::map<std::string, Decimal>& counts, const std::string& id) {
    const auto found = counts.find(id);
    return found == counts.end() ? std::nullopt : std::optional(found->second);
}

Sentence nameOf(const airframe::Airframe& airframe, const std::string& counter) {
    const airframe::Counter* found = airframe.counter(counter);
    return quoted(found == nullptr ? counter : found->name);
}

Sentence amount(const std::string& count, const std::string& unit) {
    if (unit != days) return say("%1 %2", figure(count), unit);
    return count == "1" ? say("1 day") : say("%1 %2", figure(count), say("days"));
}

Sentence amount(const Decimal& count, const std::string& unit) {
    return amount(count.text(), unit);
}

tl::unexpected<Error> backwards(const Sentence& name, const Sentence& earlier, const Sentence& later) {
    return unknown(say("%1 runs backwards, from %2 to %3.", name, earlier, later),
                   say("Correct what is wrong; where a counter was replaced, give the past from then on."));
}

Result<void> mustGoOn(const airframe::Airframe& airframe, const airframe::Units& units,
                      const std::optional<Decimal>& earlier, const Decimal& later) {
    if (!earlier || *earlier <= later) return {};
    return backwards(say("The counter %1", nameOf(airframe, units.counter)), amount(*earlier, units.unit),
                     amount(later, units.unit));
}

Result<void> mustGoOn(const std::optional<Date>& earlier, Date later) {
    if (!earlier || *earlier <= later) return {};
    return backwards(say("The calendar"), onDay(toText(*earlier)), onDay(toText(later)));
}

bool isAllowed(const airframe::Units& units, const Decimal& over) {
    return units.allowance && over <= units.allowance->most;
}

/// How late, and what counts from then on.
Result<void> redo(const airframe::Units& units, From<Decimal>& base, const Decimal& reading) {
    const auto due = plus(base.from, units.count);
    if (!due) return tl::unexpected(due.error());
    const auto over = minus(reading, *due);
    if (!over) return tl::unexpected(over.error());
    base.late.reset();
    if (*over > none) base.late = Late{*over, isAllowed(units, *over)};
    base.from = *over > none && *over < units.count ? *due : reading;
    return {};
}

Result<From<Decimal>> fromPast(const airframe::Airframe& airframe, const airframe::Units& units,
                               const std::vector<Moment>& past) {
    std::optional<From<Decimal>> base;
    std::optional<Decimal> last;
    for (const Moment& moment : past) {
        const auto reading = find(moment.counters, units.counter);
        if (!reading) {
            base.reset();
            continue;
        }
        if (const auto good = mustGoOn(airframe, units, last, *reading); !good)
            return tl::unexpected(good.error());
        last = reading;
        if (!base)
            base = From<Decimal>{*reading, {}, {}};
        else if (const auto good = redo(units, *base, *reading); !good)
            return tl::unexpected(good.error());
    }
    if (!base) {
        return unknown(say("What the counter %1 read when this was last done is not known.",
                           nameOf(airframe, units.counter)),
                       say("Enter it from the logbook."));
    }
    base->last = *last;
    return *base;
}

Result<From<Date>> fromPast(const airframe::Months& months, const std::vector<Moment>& past) {
    std::optional<From<Date>> base;
    std::optional<Date> last;
    for (const Moment& moment : past) {
        if (!moment.on) {
            base.reset();
            continue;
        }
        if (const auto good = mustGoOn(last, *moment.on); !good) return tl::unexpected(good.error());
        last = moment.on;
        std::optional<Late> late;
        if (base) {
            const auto due = base->from.endOfMonthAfter(months.count);
            if (!due) return tl::unexpected(due.error());
            if (*moment.on > *due) late = Late{Decimal::whole(daysBetween(*due, *moment.on)), false};
        }
        base = From<Date>{*moment.on, *moment.on, late};
    }
    if (base) return *base;
    return unknown(say("The day when this was last done is not known."), say("Enter it from the logbook."));
}

/// A part's life began where the aircraft's counter stood less what the part had run.
Result<From<Decimal>> fromFitted(const airframe::Airframe& airframe, const airframe::Units& units,
                                 const Fitted& fitted) {
    const auto reading = find(fitted.at.counters, units.counter);
    const auto had = find(fitted.had, units.counter);
    const Sentence counter = nameOf(airframe, units.counter);
    if (!reading) {
        return unknown(say("What the counter %1 read when this part was fitted is not known.", counter),
                       say("Enter it from the logbook."));
    }
    if (!had || *had < none) {
        return unknown(say("What this part had run by %1 when it was fitted is not known.", counter),
                       say("Enter it from the part's papers; a new part had run 0."));
    }
    const auto from = minus(*reading, *had);
    if (!from) return tl::unexpected(from.error());
    return From<Decimal>{*from, *reading, {}};
}

Result<From<Date>> fromFitted(const Fitted& fitted) {
    if (!fitted.newOn) {
        return unknown(say("The day when this part's life began is not known."),
                       say("Enter it from the part's papers."));
    }
    if (fitted.at.on) {
        if (const auto good = mustGoOn(fitted.newOn, *fitted.at.on); !good)
            return tl::unexpected(good.error());
    }
    return From<Date>{*fitted.newOn, fitted.at.on.value_or(*fitted.newOn), {}};
}

DueVerdict verdictOf(const Decimal& left, const Decimal& ahead) {
    if (left < none) return DueVerdict::passed;
    return left <= ahead ? DueVerdict::soon : DueVerdict::fine;
}

Result<SpanDue> judged(const airframe::Airframe& airframe, const airframe::Units& units,
                       const Result<From<Decimal>>& base, const Moment& now) {
    if (!base) return tl::unexpected(base.error());
    const auto reading = find(now.counters, units.counter);
    if (!reading) {
        return unknown(say("The counter %1 has no reading now.", nameOf(airframe, units.counter)),
                       say("Read it."));
    }
    if (const auto good = mustGoOn(airframe, units, base->last, *reading); !good)
        return tl::unexpected(good.error());
    const auto at = plus(base->from, units.count);
    if (!at) return tl::unexpected(at.error());
    const auto left = minus(*at, *reading);
    if (!left) return tl::unexpected(left.error());
    const auto over = minus(none, *left);
    if (!over) return tl::unexpected(over.error());
    DueVerdict verdict = verdictOf(*left, units.ahead);
    if (verdict == DueVerdict::passed && isAllowed(units, *over)) verdict = DueVerdict::withinAllowance;
    return SpanDue{verdict, {}, {}, units.count, *at, {}, *left, base->late, {}};
}

Result<SpanDue> judged(const airframe::Months& months, const Result<From<Date>>& base, const Moment& now) {
    if (!base) return tl::unexpected(base.error());
    if (!now.on) return unknown(say("Today's date is not known."), say("Set the clock, or enter it."));
    if (const auto good = mustGoOn(base->last, *now.on); !good) return tl::unexpected(good.error());
    const auto on = base->from.endOfMonthAfter(months.count);
    if (!on) return tl::unexpected(on.error());
    const Decimal left = Decimal::whole(daysBetween(*now.on, *on));
    return SpanDue{verdictOf(left, Decimal::whole(months.aheadDays)),
                   {},
                   {},
                   Decimal::whole(daysBetween(base->from, *on)),
                   {},
                   *on,
                   left,
                   base->late,
                   {}};
}

/// The reader lets no empty span through; a caller's own might be.
bool isEmpty(const airframe::Span& span) {
    const auto* units = std::get_if<airframe::Units>(&span);
    return units ? units->count <= none : std::get<airframe::Months>(span).count < 1;
}

/// `judge` gives the SpanDue of one span, or why there is none.
template<class Judge> Due judgedAll(const std::vector<airframe::Span>& spans, Judge judge) {
    Due due;
    for (const airframe::Span& span : spans) {
        const auto result =
            isEmpty(span) ? Result<SpanDue>(unknown(say("This span is empty."), say("Give its length.")))
                          : std::visit(judge, span);
        SpanDue one = result.value_or(SpanDue{});
        const auto* units = std::get_if<airframe::Units>(&span);
        one.counter = units ? units->counter : std::string();
        one.unit = units ? units->unit : days;
        if (!result) {
            one.verdict = DueVerdict::unknown;
            one.why = joined(result.error().what, result.error().remedy);
        }
        due.verdict = std::max(due.verdict, one.verdict);
        due.spans.push_back(std::move(one));
    }
    return due;
}

template<class... F> struct Cases : F... { using F::operator()...; };
template<class... F> Cases(F...) -> Cases<F...>;

/// What is left as a quotient: days, or the share of the span.
struct Rest {
    Decimal over;
    Decimal under; ///< above zero
};

bool isLess(const Rest& a, const Rest& b) {
    return std::is_lt(compareQuotients(a.over, a.under, b.over, b.under));
}

/// Compares spans of different kinds: all of them by days, or all by share, else nothing would be in order.
class Scale {
public:
    Scale(const std::vector<Due>& items, const Rates& perDay) : rates(perDay) {
        for (const Due& item : items) {
            for (const SpanDue& span : item.spans)
                inDays = inDays && (!span.left || rate(span));
        }
    }

    /// The span that comes first, if any is known.
    [[nodiscard]] std::optional<std::size_t> first(const Due& due) const {
        std::optional<std::size_t> best;
        for (std::size_t i = 0; i < due.spans.size(); ++i) {
            if (due.spans[i].left && (!best || isBefore(due.spans[i], due.spans[*best]))) best = i;
        }
        return best;
    }

    [[nodiscard]] std::optional<Rest> rest(const Due& due) const {
        const auto span = first(due);
        return span ? std::optional(rest(due.spans[*span])) : std::nullopt;
    }

private:
    [[nodiscard]] std::optional<Decimal> rate(const SpanDue& span) const {
        if (span.counter.empty()) return Decimal::whole(1);
        const auto found = find(rates, span.counter);
        return found && *found > none ? found : std::nullopt;
    }
    [[nodiscard]] Rest rest(const SpanDue& span) const {
        return {*span.left, inDays ? *rate(span) : span.length};
    }
    [[nodiscard]] bool isBefore(const SpanDue& a, const SpanDue& b) const {
        const bool passedA = a.verdict == DueVerdict::passed;
        const bool passedB = b.verdict == DueVerdict::passed;
        return passedA != passedB ? passedA : isLess(rest(a), rest(b));
    }

    const Rates& rates;
    bool inDays = true;
};

int rank(DueVerdict verdict) {
    return verdict == DueVerdict::passed ? 0 : verdict == DueVerdict::unknown ? 1 : 2;
}

Sentence withLate(Sentence text, const SpanDue& due) {
    if (!due.late) return text;
    const Sentence by = amount(due.late->by, due.unit);
    return due.late->allowed ? say("%1; last done %2 late, within its allowance", std::move(text), by)
                             : say("%1; last done %2 late", std::move(text), by);
}

} // namespace

Moment sinceNew(const airframe::Airframe& airframe, std::optional<Date> on) {
    Moment moment{on, {}};
    for (const airframe::Counter& counter : airframe.counters)
        moment.counters[counter.id] = none;
    return moment;
}

Fitted fittedNew(const airframe::Airframe& airframe, Moment at) {
    const auto on = at.on;
    return {std::move(at), sinceNew(airframe, on).counters, on};
}

Due due(const airframe::Airframe& airframe, const airframe::Inspection& inspection,
        const std::vector<Moment>& past, const Moment& now) {
    return judgedAll(
        inspection.every,
        Cases{[&](const airframe::Units& units) {
                  return judged(airframe, units, fromPast(airframe, units, past), now);
              },
              [&](const airframe::Months& months) { return judged(months, fromPast(months, past), now); }});
}

Due due(const airframe::Airframe& airframe, const airframe::LifeLimit& limit, const Fitted& fitted,
        const Moment& now) {
    return judgedAll(
        limit.life,
        Cases{[&](const airframe::Units& units) {
                  return judged(airframe, units, fromFitted(airframe, units, fitted), now);
              },
              [&](const airframe::Months& months) { return judged(months, fromFitted(fitted), now); }});
}

std::optional<std::size_t> first(const Due& due, const Rates& rates) {
    return Scale({due}, rates).first(due);
}

std::vector<std::size_t> inOrder(const std::vector<Due>& items, const Rates& rates) {
    const Scale scale(items, rates);
    std::vector<std::optional<Rest>> rests(items.size());
    std::transform(items.begin(), items.end(), rests.begin(),
                   [&](const Due& item) { return scale.rest(item); });
    std::vector<std::size_t> order(items.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const int rankA = rank(items[a].verdict);
        const int rankB = rank(items[b].verdict);
        if (rankA != rankB) return rankA < rankB;
        if (!rests[a] || !rests[b]) return !rests[a] && rests[b];
        return isLess(*rests[a], *rests[b]);
    });
    return order;
}

const char* toText(DueVerdict verdict) {
    switch (verdict) {
    case DueVerdict::fine:
        return "fine";
    case DueVerdict::soon:
        return "soon";
    case DueVerdict::withinAllowance:
        return "within allowance";
    case DueVerdict::unknown:
        return "unknown";
    case DueVerdict::passed:
        return "passed";
    }
    return "";
}

Sentence toText(const airframe::Span& span, const SpanDue& due) {
    if (!due.left) return say("unknown: %1", due.why);
    const Sentence at = due.on   ? onDay(toText(*due.on))
                        : due.at ? amount(*due.at, due.unit)
                                 : Sentence(due.unit);
    if (*due.left >= none) {
        const Sentence left = amount(*due.left, due.unit);
        return withLate(due.on ? say("due on %1, %2 left", at, left) : say("due at %1, %2 left", at, left),
                        due);
    }
    const Sentence over = amount(due.left->text().substr(1), due.unit);
    Sentence text = withLate(due.on ? say("was due on %1, passed by %2", at, over)
                                    : say("was due at %1, passed by %2", at, over),
                             due);
    const auto* units = std::get_if<airframe::Units>(&span);
    if (due.verdict == DueVerdict::withinAllowance && units && units->allowance) {
        text = say("%1; allowed by at most %2, and only: %3", std::move(text),
                   amount(units->allowance->most, due.unit), units->allowance->only);
    }
    return text;
}

} // namespace ambit::judge
