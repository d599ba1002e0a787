#include "model/daylight.hpp"

#include "base/decimal.hpp"
#include "model/words.hpp"

namespace ambit::view {

namespace {

constexpr int lookMs = 60'000;

} // namespace

std::optional<sky::Place> placeOf(const round::Position& position) {
    const auto latitude = Decimal::parse(position.latitude), longitude = Decimal::parse(position.longitude);
    if (!latitude || !longitude) return std::nullopt;
    const auto place = sky::Place::of(latitude->approximate(), longitude->approximate());
    return place ? std::optional(*place) : std::nullopt;
}

Daylight::Daylight(const Services& handedIn, QObject* parent) : QObject(parent), services(&handedIn) {
    connect(&timer, &QTimer::timeout, this, &Daylight::look);
    timer.start(lookMs);
    look();
}

void Daylight::look() {
    const std::optional<sky::Light> before = now;
    const auto position = services->position ? services->position() : std::nullopt;
    const auto place = position ? placeOf(*position) : std::nullopt;
    now.reset();
    dark = false;
    words.clear();
    if (place) {
        const LocalInstant local = services->now();
        const auto light = sky::at(*place, local.at).light;
        now = light;
        // The next thing the sun does, today or tomorrow.
        std::optional<sky::SunEvent> next, crossing;
        for (const int days : {0, 1}) {
            const LocalInstant day{{local.at.ms + std::int64_t{days} * 86'400'000}, local.offsetMinutes};
            const auto date = Date::of(day);
            if (!date) continue;
            const auto sun = sky::sunDay(*place, *date, local.offsetMinutes);
            for (const sky::SunEvent& event : sun.events) {
                if (event.at.ms <= local.at.ms) continue;
                if (!next) next = event;
                const bool isRim = event.what == sky::Change::rise || event.what == sky::Change::set;
                if (!crossing && isRim) crossing = event;
            }
        }
        dark = light == sky::Light::night ||
               (light == sky::Light::twilight && next && next->what == sky::Change::twilightEnds);
        const QString is = light == sky::Light::day        ? tr("Day")
                           : light == sky::Light::twilight ? tr("Twilight")
                                                           : tr("Night");
        const QString at = crossing ? clockText(crossing->at, local.offsetMinutes) : QString();
        if (!crossing)
            words = light == sky::Light::day ? tr("%1; the sun doesn't set today or tomorrow").arg(is)
                                             : tr("%1; the sun doesn't rise today or tomorrow").arg(is);
        else
            words = crossing->what == sky::Change::set ? tr("%1; the sun sets at %2").arg(is, at)
                                                       : tr("%1; the sun rises at %2").arg(is, at);
    }
    if (now && now != before && (before || *now != sky::Light::day)) emit lightChanged();
    emit changed();
}

} // namespace ambit::view
