// What comes due: inspections and life limits, as they stand in the file.
#include "airframe/draft.hpp"

#include <nlohmann/json.hpp>

namespace ambit::airframe {

namespace {

constexpr auto optional = Presence::optional;
constexpr auto required = Presence::required;

constexpr std::size_t mostSpans = 10;

enum class Allowed { no, yes };

/// A decimal of at least zero, or above it; zero if there is none that can be used.
Decimal takeCount(Fields& fields, const char* field, bool mayBeZero, Presence presence) {
    const auto given = fields.decimal(field, presence);
    if (!given) return {};
    if (*given > Decimal() || (mayBeZero && *given == Decimal())) return *given;
    fields.errors().add(fields.at(field), say("This count is %1.", figure(given->text())),
                        mayBeZero ? say("Use zero or more.") : say("Use more than zero."));
    return {};
}

void mustBeLess(Fields& fields, const char* field, const Decimal& value, const Decimal& count) {
    if (count == Decimal() || value < count) return;
    fields.errors().add(fields.at(field),
                        say("This is as much as the count itself, %1, or more.", figure(count.text())),
                        say("Use less."));
}

std::optional<Allowance> takeAllowance(Fields& span, const Decimal& count) {
    const Json* given = span.get("allowance", optional);
    if (!given) return std::nullopt;
    Fields fields(*given, span.at("allowance"), span.errors());
    if (!given->is_object()) return std::nullopt;
    Allowance allowance{takeCount(fields, "most", false, required), fields.text("only")};
    mustBeLess(fields, "most", allowance.most, count);
    fields.finish();
    return allowance;
}

Units takeUnits(Fields& fields, Allowed allowed) {
    Units units;
    units.counter = fields.string("counter");
    units.unit = fields.name("unit");
    units.count = takeCount(fields, "count", false, required);
    units.ahead = takeCount(fields, "ahead", true, optional);
    mustBeLess(fields, "ahead", units.ahead, units.count);
    // A life has no allowance: there the field isn't known.
    if (allowed == Allowed::yes) units.allowance = takeAllowance(fields, units.count);
    return units;
}

Months takeMonths(Fields& fields) {
    constexpr int most = 1200;
    constexpr int mostDays = 365;
    constexpr int shortest = 28;
    const auto count = fields.integer("months", 1, most);
    const auto ahead = fields.integer("aheadDays", 0, mostDays, optional);
    if (count && ahead && *ahead >= *count * shortest) {
        fields.errors().add(fields.at("aheadDays"),
                            say("So many days before the end, it may not have begun yet."),
                            say("Use fewer."));
    }
    return {count.value_or(1), ahead.value_or(0)};
}

/// One of the two kinds, told apart by "counter" and "months".
Span takeSpan(Fields& fields, Allowed allowed) {
    const bool units = fields.get("counter", optional) != nullptr;
    const bool months = fields.get("months", optional) != nullptr;
    if (units && months) {
        fields.errors().add(fields.at("months"), say("This counts by a counter and by months at once."),
                            say("Make it two entries of the list."));
        (void)fields.get("aheadDays", optional);
    }
    if (!units && !months) {
        fields.errors().add(fields.at(), say("This has neither a counter nor months."),
                            say("Give one of them."));
        for (const char* field : {"count", "unit", "ahead", "allowance", "aheadDays"})
            (void)fields.get(field, optional);
        return Units();
    }
    return units ? Span(takeUnits(fields, allowed)) : Span(takeMonths(fields));
}

template<class T> DraftDue<T> takeDue(Fields& fields, const char* spans, Allowed allowed) {
    DraftDue<T> due;
    due.what.id = fields.id("id");
    due.what.name = fields.name("name");
    due.spans = fields.list(spans, 1, mostSpans, [&](Fields& span) { return takeSpan(span, allowed); });
    due.what.source = fields.text("source");
    return due;
}

} // namespace

DraftDue<Inspection> takeInspection(Fields& fields) {
    return takeDue<Inspection>(fields, "every", Allowed::yes);
}

DraftDue<LifeLimit> takeLifeLimit(Fields& fields) {
    return takeDue<LifeLimit>(fields, "life", Allowed::no);
}

} // namespace ambit::airframe
