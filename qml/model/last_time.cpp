#include "model/last_time.hpp"

#include "model/story.hpp"
#include "model/unshown.hpp"
#include "model/words.hpp"

#include <QCoreApplication>

namespace ambit::view {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(LastTime)
};

/// Hours between two readings of the first counter in hours that both have.
QString hoursBetween(const airframe::Airframe& airframe, const std::vector<round::CounterReading>& then,
                     const std::vector<round::CounterReading>& now) {
    const auto read = [](const std::vector<round::CounterReading>& readings, const std::string& id) {
        const auto found =
            std::find_if(readings.begin(), readings.end(), [&](const auto& one) { return one.id == id; });
        return found == readings.end() ? std::optional<double>()
                                       : Decimal::parse(found->value).map(&Decimal::approximate).value_or(-1);
    };
    for (const auto& counter : airframe.counters) {
        if (counter.unit != "h") continue;
        const auto before = read(then, counter.id);
        const auto after = read(now, counter.id);
        if (before && after && *before >= 0 && *after >= *before)
            return QString::number(*after - *before, 'f', 1);
    }
    return {};
}

} // namespace

Result<LastTime> LastTime::before(const archive::Archive& archive, const airframe::Airframe& airframe,
                                  const round::State& state) {
    LastTime last;
    const auto records = archive.records(state.opened.registration);
    if (!records) return tl::unexpected(records.error());
    const auto unshown = Unshown::of(state);
    const auto newest = std::find_if(records->begin(), records->end(), [&](const auto& record) {
        return record.kind == "round" && record.concludedAt.ms < state.openedAt.ms &&
               !(unshown && unshown->hides(record.signer, record.concludedAt));
    });
    if (newest == records->end()) return last;
    const auto text = archive.recordJson(newest->sha256);
    if (!text) return tl::unexpected(text.error());
    const auto events = eventsOf(*text);
    if (!events) return tl::unexpected(events.error());
    bool sameAirframe = false; // else a limit may have been in another unit then
    for (const auto& event : *events) {
        if (const auto* opened = std::get_if<round::Opened>(&event.what)) {
            last.hoursAgo = hoursBetween(airframe, opened->counters, state.opened.counters);
            sameAirframe = opened->airframeSha256 == state.opened.airframeSha256;
        }
        if (const auto* settled = std::get_if<round::Settled>(&event.what)) {
            Entry entry{*settled, event.at};
            const auto* point = airframe.point(settled->point);
            if (entry.what.unit.empty() && sameAirframe && point != nullptr && point->limit)
                entry.what.unit = point->limit->unit;
            last.points.insert_or_assign(settled->point, std::move(entry));
        }
    }
    return last;
}

QString LastTime::at(const std::string& point, Instant now) const {
    const auto found = points.find(point);
    if (found == points.end()) return {};
    const auto& [what, when] = found->second;
    QString words = outcomeText(what.outcome);
    if (what.value)
        words += QStringLiteral("\u00a0· ") +
                 (what.unit.empty() ? figureText(*what.value) : measureText(*what.value, what.unit));
    if (what.outcome == round::Outcome::finding) words = saidOf(words, text(what.words));
    if (what.outcome == round::Outcome::notInspected) words = saidOf(words, text(what.why));
    words += QStringLiteral("\u00a0· ") + agoText(when, now);
    if (!hoursAgo.isEmpty())
        words += QStringLiteral(", ") + Words::tr("%1 flight hours").arg(figureText(hoursAgo.toStdString()));
    return words;
}

} // namespace ambit::view
