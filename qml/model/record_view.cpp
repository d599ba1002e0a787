#include "model/record_view.hpp"

#include "model/entry_words.hpp"
#include "model/file_words.hpp"
#include "model/scene.hpp"
#include "model/story.hpp"
#include "model/words.hpp"
#include "record/record.hpp"

#include <nlohmann/json.hpp>

namespace ambit::view {

namespace {

QVariantMap finding(const airframe::Point& point, const round::PointState::Settling& last, int offset) {
    QStringList photos;
    for (const auto& photo : last.what.photos)
        photos << photoSource(photo.sha256);
    return {{QStringLiteral("id"), text(point.id)},
            {QStringLiteral("name"), text(point.name)},
            {QStringLiteral("words"), text(last.what.words)},
            {QStringLiteral("severity"), QString::fromLatin1(airframe::toText(last.what.severity))},
            {QStringLiteral("value"), valueText(last.what, point)},
            {QStringLiteral("atText"), clockText(last.at, offset)},
            {QStringLiteral("photos"), photos}};
}

QVariantMap omission(const airframe::Point& point, const round::Settled& settled) {
    return {{QStringLiteral("id"), text(point.id)},
            {QStringLiteral("name"), text(point.name)},
            {QStringLiteral("why"), text(settled.why)},
            {QStringLiteral("basis"), text(settled.basis)}};
}

QVariantMap row(const airframe::Point& point, const round::PointState& state, int offset) {
    const auto& last = *state.last();
    return {{QStringLiteral("id"), text(point.id)},
            {QStringLiteral("name"), text(point.name)},
            {QStringLiteral("outcome"), QString::fromLatin1(toText(lookOf(state)))},
            {QStringLiteral("outcomeText"), outcomeText(last.what.outcome)},
            {QStringLiteral("value"), valueText(last.what, point)},
            {QStringLiteral("atText"), clockText(last.at, offset)}};
}

} // namespace

Result<RecordView*> RecordView::make(const std::string& id, std::string_view recordJson,
                                     const airframe::Airframe& airframe, QObject* parent) {
    const auto events = eventsOf(recordJson);
    if (!events) return tl::unexpected(events.error());
    const auto state = round::fold(airframe, *events);
    if (!state) return tl::unexpected(state.error());
    auto* view = new RecordView(parent);
    view->recordId = text(id);
    view->tell(airframe, *events, *state);
    view->verify(id, recordJson);
    return view;
}

Result<RecordView*> RecordView::ofEntry(const std::string& id, std::string_view recordJson,
                                        const airframe::Airframe* airframe, QObject* parent) {
    const auto json = parseJson(recordJson);
    if (!json) return tl::unexpected(json.error());
    const Json content = json->is_object() ? json->value("content", Json()) : Json();
    if (auto good = record::checkEntry(content); !good) return tl::unexpected(good.error());
    const record::ReadEntry read = record::entryFrom(content);
    auto* view = new RecordView(parent);
    view->recordId = text(id);
    view->registration = text(read.heading.registration);
    view->kind = QString::fromLatin1(record::kindOf(read.entry));
    view->kindText = view::kindText(record::kindOf(read.entry));
    view->walkName = view->kindText;
    view->conclusionText = titleOf(read.entry);
    view->said = linesOf(read.entry, airframe);
    view->whenText = zonedText(read.heading.at.at, read.heading.at.offsetMinutes);
    view->signer = personText(read.heading.signer);
    view->verify(id, recordJson);
    return view;
}

void RecordView::tell(const airframe::Airframe& airframe, const std::vector<round::Event>& events,
                      const round::State& state) {
    const auto& opened = state.opened;
    const int offset = opened.offsetMinutes;
    registration = text(opened.registration);
    kind = QStringLiteral("round");
    kindText = view::kindText("round");
    walkName = text(airframe.walk(opened.walk)->name);
    if (state.conclusion) {
        conclusion = state.conclusion->fit ? QStringLiteral("fit") : QStringLiteral("not fit");
        conclusionText = view::conclusionText(state.conclusion->fit);
        reasons = text(state.conclusion->reasons);
    }
    whenText = zonedText(state.lastAt, offset);
    if (opened.position)
        placeText = figureText(opened.position->latitude) + QStringLiteral("°,\u00a0") +
                    figureText(opened.position->longitude) + QStringLiteral("°");
    signer = personText(opened.who);
    for (const auto& reading : opened.counters)
        if (const auto* counter = airframe.counter(reading.id))
            counters << QVariantMap{{QStringLiteral("name"), text(counter->name)},
                                    {QStringLiteral("value"), counterText(*counter, reading.value)}};
    for (const auto& point : airframe.points) {
        const auto found = state.points.find(point.id);
        const auto outcome = found == state.points.end() ? std::nullopt : found->second.outcome();
        if (!outcome) continue;
        points << row(point, found->second, offset);
        if (outcome == round::Outcome::finding) findings << finding(point, *found->second.last(), offset);
        if (outcome == round::Outcome::notInspected)
            notInspected << omission(point, found->second.last()->what);
    }
    for (const auto& event : events)
        timeline << QVariantMap{{QStringLiteral("atText"), clockText(event.at, offset)},
                                {QStringLiteral("text"), sentence(event.what, airframe)}};
}

void RecordView::verify(const std::string& id, std::string_view recordJson) {
    const auto report = record::verifyRecord(recordJson);
    verified = report.has_value() && report->sha256 == id;
    if (!report) {
        verifiedText = tr("This record does not hold: %1").arg(errorText(report.error()));
        return;
    }
    for (const auto& one : report->signatures)
        signatures << QVariantMap{{QStringLiteral("who"), personText(one.who)},
                                  {QStringLiteral("whenText"), one.at ? zonedText(*one.at, 0) : QString()},
                                  {QStringLiteral("key"), text(one.certificate.sha256)},
                                  {QStringLiteral("fingerprint"), fingerprintText(one.certificate.sha256)}};
    verifiedText =
        verified
            ? report->signatures.size() == 1
                  ? tr("The signature holds and nothing was changed since.")
                  : tr("All %1 signatures hold and nothing was changed since.").arg(report->signatures.size())
            : tr("This record does not hold: it is not the one that the archive names.");
}

} // namespace ambit::view
