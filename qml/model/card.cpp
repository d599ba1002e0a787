#include "model/card.hpp"

#include "model/words.hpp"

#include <QCoreApplication>

namespace ambit::view {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Card)
};

void add(QStringList& list, const std::vector<std::string>& texts) {
    for (const auto& one : texts)
        if (const QString words = text(one); !list.contains(words)) list << words;
}

const airframe::Stand* standOf(const round::State& state, const airframe::Airframe& airframe) {
    return state.stand ? airframe.stand(*state.stand) : nullptr;
}

QString outcomeWords(const round::Settled& settled, const airframe::Point& point) {
    QString words = outcomeText(settled.outcome);
    if (settled.value && point.limit) words += QStringLiteral("\u00a0· ") + valueText(settled, point);
    if (settled.outcome == round::Outcome::finding) words = saidOf(words, text(settled.words));
    if (settled.outcome == round::Outcome::notInspected) words = saidOf(words, text(settled.why));
    return words;
}

Card cardOf(const airframe::Point& point, const round::State& state, const airframe::Airframe& airframe) {
    Card card;
    card.kind = QStringLiteral("settle");
    card.point = &point;
    card.title = text(point.name);
    card.how = howText(point.how);
    card.setting = settingsText(airframe, point.when);
    if (const auto* stand = standOf(state, airframe)) add(card.cautions, stand->cautions);
    add(card.cautions, point.cautions);
    const auto& now = state.points.at(point.id);
    if (now.settled) {
        card.outcome = QString::fromLatin1(toText(lookOf(now)));
        card.outcomeText = outcomeWords(now.last()->what, point);
    }
    return card;
}

Card cardOf(const walk::Go& go, const airframe::Airframe& airframe) {
    Card card;
    card.kind = QStringLiteral("go");
    card.target = airframe.stand(go.stand);
    card.title = Words::tr("Go to %1").arg(quoted(text(card.target->name)));
    card.how = standText(*card.target);
    add(card.cautions, card.target->cautions);
    return card;
}

Card cardOf(const walk::Set& set, const round::State& state, const airframe::Airframe& airframe) {
    Card card;
    card.kind = QStringLiteral("set");
    card.settingId = text(set.setting);
    card.settingTo = text(set.to);
    const auto& setting = *airframe.setting(set.setting);
    card.title = saidOf(text(setting.name), text(setting.state(set.to)->name));
    if (const auto* stand = standOf(state, airframe)) add(card.cautions, stand->cautions);
    card.change = setting.change(state.settings.at(set.setting), set.to);
    if (card.change == nullptr) return card;
    card.how = text(card.change->how);
    add(card.cautions, card.change->cautions);
    return card;
}

} // namespace

Card makeCard(const round::State& state, const airframe::Airframe& airframe,
              const std::vector<walk::Step>& left, const airframe::Point* chosen) {
    if (chosen != nullptr) return cardOf(*chosen, state, airframe);
    if (left.empty()) {
        Card card;
        card.kind = QStringLiteral("done");
        card.title = Words::tr("Every point is settled");
        const int open = static_cast<int>(state.points.size()) - state.settledCount();
        if (open > 0) {
            card.title = open == 1 ? Words::tr("1 point can't be settled now")
                                   : Words::tr("%1 points can't be settled now").arg(open);
            card.how =
                Words::tr("No way leads on from here. Say what can be used again, or settle what is left as "
                          "not inspected.");
        }
        return card;
    }
    if (const auto* go = std::get_if<walk::Go>(&left.front())) return cardOf(*go, airframe);
    if (const auto* set = std::get_if<walk::Set>(&left.front())) return cardOf(*set, state, airframe);
    return cardOf(*airframe.point(std::get<walk::Settle>(left.front()).point), state, airframe);
}

} // namespace ambit::view
