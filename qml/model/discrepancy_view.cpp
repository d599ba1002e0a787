#include "model/discrepancy_view.hpp"

#include "model/entry_words.hpp"
#include "model/file_words.hpp"
#include "model/words.hpp"

#include <algorithm>

namespace ambit::view {

namespace {

struct Step {
    const file::Word* word;
    QString what;
    const char* look;
    QVariantList details = {};
    bool wordless = false; ///< its words say no more than what it is
};

std::vector<Step> stepsOf(const file::Discrepancy& one, const airframe::Airframe* airframe) {
    std::vector<Step> steps{{&one.found, DiscrepancyView::tr("Found"), "finding"}};
    for (const file::Word& word : one.again)
        steps.push_back({&word, DiscrepancyView::tr("Seen again"), "finding"});
    for (const file::Word& word : one.seenSound)
        steps.push_back({&word,
                         DiscrepancyView::tr("Said to be sound, though nobody had put it right"),
                         "sound",
                         {},
                         true});
    if (one.assessed) {
        Step step{&*one.assessed, DiscrepancyView::tr("Assessed: it grounds the aircraft"), "next"};
        if (one.deferral) {
            step.what = DiscrepancyView::tr("Deferred");
            step.details = deferralWords(*one.deferral, airframe);
        }
        steps.push_back(std::move(step));
    }
    if (one.rectified) steps.push_back({&*one.rectified, DiscrepancyView::tr("Put right"), "next"});
    if (one.closed)
        steps.push_back({&*one.closed, DiscrepancyView::tr("Seen sound after that"), "sound", {}, true});
    std::stable_sort(steps.begin(), steps.end(),
                     [](const Step& a, const Step& b) { return a.word->at < b.word->at; });
    return steps;
}

} // namespace

QString keyOf(const record::DiscrepancyId& id) {
    return text(id.record + ':' + id.point);
}

record::DiscrepancyId idOf(const QString& key) {
    const qsizetype colon = key.indexOf(QLatin1Char(':'));
    if (colon < 0) return {};
    return {key.left(colon).toStdString(), key.mid(colon + 1).toStdString()};
}

DiscrepancyView::DiscrepancyView(const file::Discrepancy& one, const AircraftReading& reading,
                                 LocalInstant now, QObject* parent)
    : QObject(parent), itsKey(keyOf(one.id)), pointId(text(one.id.point)), name(text(nameOf(reading, one))),
      where(text(zoneNameOf(reading, one))), words(text(one.found.words)),
      state(QString::fromLatin1(toText(one.state))), stateText(view::stateText(one, reading.airframe.get())),
      sinceText(view::sinceText(one, now.at)), isOpen(one.isOpen()) {
    if (!one.jasc.empty()) where += QStringLiteral("\u00a0· JASC\u00a0") + text(one.jasc);
    for (const Step& step : stepsOf(one, reading.airframe.get()))
        life << QVariantMap{{QStringLiteral("what"), step.what},
                            {QStringLiteral("look"), QString::fromLatin1(step.look)},
                            {QStringLiteral("whenText"), dayText(step.word->at, now.offsetMinutes)},
                            {QStringLiteral("agoText"), agoText(step.word->at, now.at)},
                            {QStringLiteral("by"), text(step.word->by)},
                            {QStringLiteral("words"), step.wordless ? QString() : text(step.word->words)},
                            {QStringLiteral("details"), step.details},
                            {QStringLiteral("recordId"), text(step.word->record)}};
}

} // namespace ambit::view
