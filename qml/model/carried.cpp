#include "model/carried.hpp"

#include "model/file_words.hpp"
#include "model/words.hpp"

#include <QCoreApplication>

namespace ambit::view {

namespace {

using State = file::Discrepancy::State;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Carried)
};

QString deferredText(const file::Discrepancy& one, Instant now) {
    const record::Deferral& deferral = *one.deferral;
    QString words =
        Words::tr("Deferred %1 on %2, placard %3")
            .arg(agoText(one.assessed->at, now), basisText(deferral.basis), text(deferral.placard));
    if (!deferral.until.empty()) words += Words::tr(", until %1").arg(dayInWords(deferral.until));
    return words + Words::tr(": has it grown?");
}

} // namespace

Carried::Carried(const file::AircraftFile& file, const std::optional<Unshown>& unshown) {
    for (const file::Discrepancy& one : file.discrepancies) {
        if (one.state == State::closed) continue;
        if (unshown && unshown->hides(one.found.by, one.found.at)) continue;
        points.insert_or_assign(one.id.point, one);
        mark += one.id.record + one.id.point + file::toText(one.state);
        if (one.assessed) mark += one.assessed->record;
    }
}

QString Carried::at(const std::string& point, Instant now) const {
    const auto found = points.find(point);
    if (found == points.end()) return {};
    const file::Discrepancy& one = found->second;
    if (one.state == State::rectified)
        return Words::tr("Put right %1 by %2: %3 Is it sound now?")
            .arg(agoText(one.rectified->at, now), text(one.rectified->by), text(one.rectified->words));
    const QString words =
        Words::tr("Found %1: %2").arg(agoText(one.found.at, now), text(one.found.words)) + QLatin1Char('\n');
    switch (one.state) {
    case State::deferred:
        return words + deferredText(one, now);
    case State::grounding:
        return words + Words::tr("It grounds the aircraft until it is put right. Has it been?");
    default:
        return words + Words::tr("Nobody has assessed it yet: has it grown?");
    }
}

QString Carried::inAWord(const std::string& point) const {
    const auto found = points.find(point);
    if (found == points.end()) return {};
    switch (found->second.state) {
    case State::deferred:
        return Words::tr("deferred");
    case State::grounding:
        return Words::tr("grounds");
    case State::rectified:
        return Words::tr("put right");
    default:
        return Words::tr("open");
    }
}

} // namespace ambit::view
