// Where reality differs from the airframe's description: a stand that can't be used, something in the way,
// the light; and what that did to the order.
#include "model/round_view.hpp"
#include "model/words.hpp"
#include "round/order.hpp"

namespace ambit::view {

namespace {

bool isDifference(const round::What& what) {
    return std::holds_alternative<round::StandBlocked>(what) ||
           std::holds_alternative<round::StandFree>(what) ||
           std::holds_alternative<round::AreaMarked>(what) ||
           std::holds_alternative<round::AreaCleared>(what) || std::holds_alternative<round::Light>(what);
}

/// Nobody goes anywhere by it: what was told last still holds.
bool isAside(const round::What& what) {
    return std::holds_alternative<round::Note>(what) || std::holds_alternative<round::Paused>(what) ||
           std::holds_alternative<round::Resumed>(what) || std::holds_alternative<round::Asked>(what) ||
           std::holds_alternative<round::Answered>(what) || std::holds_alternative<round::Declined>(what);
}

} // namespace

bool RoundView::blockStand(const QString& standId, const QString& reason) {
    return differ(round::StandBlocked{standId.toStdString(), reason.trimmed().toStdString()});
}

bool RoundView::freeStand(const QString& standId) {
    return differ(round::StandFree{standId.toStdString()});
}

bool RoundView::markArea(const QVariantList& corners, const QString& reason) {
    round::AreaMarked marked;
    marked.area = state().areasEver + 1;
    marked.why = reason.trimmed().toStdString();
    for (const QVariant& corner : corners) {
        const QPointF place = corner.toPointF();
        marked.outline.push_back(round::cornerAt({place.x(), -place.y()}));
    }
    return differ(std::move(marked));
}

bool RoundView::clearArea(int area) {
    return differ(round::AreaCleared{area});
}

bool RoundView::tellLight(bool low) {
    return differ(round::Light{low});
}

/// Whether the order changed by it or not, the pilot is told.
bool RoundView::differ(round::What what) {
    const Sentence cause = round::causeOf(state(), *written, what, false);
    const auto before = state().lastSeq;
    const auto done = round.actAndReplan(std::move(what), now());
    if (state().lastSeq > before) {
        chosen = nullptr;
        keptAt = before + 1;
        keptBecause = cause;
    }
    return committed(done);
}

void RoundView::tellOrder() {
    orderWords.clear();
    const auto& log = round.events();
    const auto last = std::find_if(log.rbegin(), log.rend(),
                                   [](const round::Event& event) { return !isAside(event.what); });
    if (last != log.rend()) {
        if (const auto* planned = std::get_if<round::Planned>(&last->what))
            orderWords = text(round::whySaid(planned->why));
        if (last->seq == keptAt) orderWords = tr("%1. The order stays as it is.").arg(text(keptBecause));
    }
    const auto differs = std::find_if(log.rbegin(), log.rend(),
                                      [](const round::Event& event) { return isDifference(event.what); });
    differsSeq = differs == log.rend() ? 0 : differs->seq;
}

QVariantList RoundView::blockedStands() const {
    QVariantList list;
    for (const auto& stand : airframe->stands)
        if (const auto blocked = state().blocked.find(stand.id); blocked != state().blocked.end())
            list << QVariantMap{
                {QStringLiteral("id"), text(stand.id)},
                {QStringLiteral("name"), text(stand.name)},
                {QStringLiteral("why"), text(blocked->second.why)},
                {QStringLiteral("sinceText"),
                 tr("since %1").arg(clockText(blocked->second.since, state().opened.offsetMinutes))}};
    return list;
}

QVariantList RoundView::markedAreas() const {
    QVariantList list;
    for (const auto& [number, area] : state().marked)
        list << QVariantMap{{QStringLiteral("area"), static_cast<int>(number)},
                            {QStringLiteral("why"), text(area.why)},
                            {QStringLiteral("sinceText"),
                             tr("since %1").arg(clockText(area.since, state().opened.offsetMinutes))}};
    return list;
}

} // namespace ambit::view
