#include "file/comes_due.hpp"

namespace ambit::file {

namespace {

using judge::Moment;

Moment momentOf(const std::string& date, const std::vector<round::CounterReading>& counters) {
    Moment moment;
    if (const auto on = Date::parse(date)) moment.on = *on;
    for (const auto& one : counters)
        if (const auto value = Decimal::parse(one.value)) moment.counters.emplace(one.id, *value);
    return moment;
}

/// Words of the span that comes first, or of the one of which nothing is known.
Sentence wordsOf(const std::vector<airframe::Span>& spans, const judge::Due& due) {
    const auto which = judge::first(due);
    if (which) return judge::toText(spans[*which], due.spans[*which]);
    for (const judge::SpanDue& span : due.spans)
        if (!span.why.empty()) return span.why;
    return {};
}

} // namespace

std::vector<Item> comesDue(const AircraftFile& file, const airframe::Airframe& airframe, Date today) {
    Moment now;
    now.on = today;
    for (const auto& [id, count] : file.counters)
        if (const auto value = Decimal::parse(count.value)) now.counters.emplace(id, *value);
    std::vector<Item> items;
    for (const airframe::Inspection& inspection : airframe.inspections) {
        Item item{inspection.id, inspection.name, inspection.source, false, {}, {}};
        const auto known = file.inspections.find(inspection.id);
        if (known == file.inspections.end()) {
            item.due.verdict = judge::DueVerdict::unknown;
            item.words = say("No record says when it was last done.");
        } else {
            std::vector<Moment> past;
            for (const Done& done : known->second)
                past.push_back(momentOf(done.on, done.counters));
            item.due = judge::due(airframe, inspection, past, now);
            item.words = wordsOf(inspection.every, item.due);
        }
        items.push_back(std::move(item));
    }
    for (const airframe::LifeLimit& limit : airframe.lifeLimits) {
        Item item{limit.id, limit.name, limit.source, true, {}, {}};
        const auto known = file.parts.find(limit.id);
        if (known == file.parts.end()) {
            item.due.verdict = judge::DueVerdict::unknown;
            item.words = say("No record says when the part was fitted.");
        } else {
            const file::Fitted& part = known->second;
            judge::Fitted fitted = judge::fittedNew(airframe, momentOf(part.on, part.counters));
            for (const auto& had : part.part.counters)
                if (const auto value = Decimal::parse(had.value)) fitted.had.insert_or_assign(had.id, *value);
            item.due = judge::due(airframe, limit, fitted, now);
            item.words = wordsOf(limit.life, item.due);
        }
        items.push_back(std::move(item));
    }
    std::vector<judge::Due> dues;
    dues.reserve(items.size());
    for (const Item& item : items)
        dues.push_back(item.due);
    std::vector<Item> sorted;
    for (const std::size_t i : judge::inOrder(dues))
        sorted.push_back(std::move(items[i]));
    return sorted;
}

std::vector<Sentence> standsAgainst(const std::vector<Item>& items) {
    std::vector<Sentence> reasons;
    for (const Item& item : items)
        if (item.due.verdict == judge::DueVerdict::passed)
            reasons.push_back(say("%1 is past: %2.", quoted(item.name), item.words));
    return reasons;
}

} // namespace ambit::file
