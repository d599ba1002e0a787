// What somebody who follows asks: it comes in, is shown, and is answered, declined or settled.
#include "archive/hearing.hpp"
#include "model/round_view.hpp"
#include "model/words.hpp"
#include "round/order.hpp"

namespace ambit::view {

using Kind = round::Statement::Kind;

Result<void> RoundView::hear(std::string_view statement, std::string_view jws,
                             const record::Certificate& peer) {
    return heard([&] { return archive::hear(round, peer, statement, jws, now()); });
}

Result<void> RoundView::hear(round::Asked asked) {
    return heard([&] { return round.actAndReplan(std::move(asked), now()); });
}

/// Nobody looked away from the card for it: a point in hand stays there, so that a touch that is on its way
/// already settles what was read.
Result<void> RoundView::heard(const std::function<Result<void>()>& take) {
    const auto* inHand = card.point;
    const auto before = state().lastSeq;
    auto done = take();
    if (state().lastSeq > before && inHand != nullptr) chosen = inHand;
    refresh();
    if (done && services->feel) services->feel(Haptic::lookUp);
    return done;
}

bool RoundView::answer(int ask, const QString& words) {
    return committed(act(round::Answered{ask, words.trimmed().toStdString()}));
}

bool RoundView::decline(int ask, const QString& reason) {
    return committed(round.actAndReplan(round::Declined{ask, reason.trimmed().toStdString()}, now()));
}

void RoundView::readRemark(int ask) {
    remarksRead.insert(ask);
    refresh();
}

bool RoundView::isShown(std::int64_t number, const round::Ask& ask) const {
    if (ask.what.kind == Kind::remark) return !remarksRead.contains(number);
    return ask.isOpen();
}

QVariantList RoundView::asks() const {
    QVariantList list;
    std::int64_t number = 0;
    for (const round::Ask& ask : state().asks)
        if (isShown(++number, ask)) {
            const auto* point = airframe->point(ask.what.point);
            list << QVariantMap{
                {QStringLiteral("ask"), static_cast<int>(number)},
                {QStringLiteral("kind"), askKindName(ask.what.kind)},
                {QStringLiteral("title"),
                 askTitle(ask.what.kind, point == nullptr ? QString() : text(point->name))},
                {QStringLiteral("words"), text(ask.what.words)},
                {QStringLiteral("who"), text(ask.what.who.name)},
                {QStringLiteral("sinceText"), clockText(ask.at, state().opened.offsetMinutes)}};
        }
    return list;
}

QString RoundView::askedText() const {
    if (card.point == nullptr) return {};
    QStringList lines;
    for (const std::int64_t number : state().points.at(card.point->id).asked) {
        const round::Statement& said = state().ask(number)->what;
        const QString by = tr("%1 asks to look again").arg(text(said.who.name));
        lines << (said.words.empty() ? by + QStringLiteral(".") : saidOf(by, text(said.words)));
    }
    return lines.join(QStringLiteral("\n"));
}

} // namespace ambit::view
