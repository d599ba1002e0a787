// The card in hand as a value: what to do now, in words. Made anew after each event; core says what is next.
#pragma once

#include "model/scene.hpp"

#include <QString>
#include <QStringList>

namespace ambit::view {

struct Card {
    QString kind;                                    ///< "go" "set" "settle" "done"
    const airframe::Point* point = nullptr;          ///< settle
    const airframe::Stand* target = nullptr;         ///< go
    const airframe::SettingChange* change = nullptr; ///< set
    QString settingId, settingTo;                    ///< set
    QString title;
    QString how;
    QString setting;
    QStringList cautions;
    QString outcome;     ///< of a chosen point that is settled already; else ""
    QString outcomeText; ///< in words
};

/// `chosen`: the point a person picked; nullptr: what core says is next.
[[nodiscard]] Card makeCard(const round::State& state, const airframe::Airframe& airframe,
                            const std::vector<walk::Step>& left, const airframe::Point* chosen);

} // namespace ambit::view
