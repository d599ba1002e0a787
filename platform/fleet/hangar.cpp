#include "fleet/hangar.hpp"

#include <algorithm>

namespace ambit::fleet {

namespace {

constexpr std::int64_t msOfDay = 86'400'000;
constexpr std::int64_t msOfMinute = 60'000;

} // namespace

Counters::Counters(const airframe::Airframe& its, Chance& chance) : airframe(&its) {
    const double hours = chance.between(80, 5200);
    for (const airframe::Counter& counter : its.counters) {
        const bool ofEngine = counter.id.starts_with("engine"); // which was overhauled since
        const double share = ofEngine ? chance.between(0.05, 0.4) : 1;
        const double perHour = counter.unit == "h" ? 1 : chance.between(1.1, 2.2);
        now[counter.id] = static_cast<std::int64_t>(hours * share * perHour) * scaleOf(counter.id) +
                          (counter.unit == "h" ? chance.whole(0, 9) : 0);
    }
}

std::int64_t Counters::scaleOf(const std::string& id) const {
    return airframe->counter(id)->unit == "h" ? 10 : 1;
}

void Counters::fly(int tenths, int landings, Chance& chance) {
    for (auto& [id, units] : now) {
        const std::string& unit = airframe->counter(id)->unit;
        if (unit == "h")
            units += id.starts_with("engine") && chance.happens(0.3) ? tenths + 1 : tenths;
        else
            units += unit == "landings" ? landings : 1;
    }
}

std::string Counters::text(const std::string& id, std::int64_t its) const {
    if (scaleOf(id) == 1) return std::to_string(its);
    return std::to_string(its / 10) + '.' + std::to_string(its % 10);
}

std::vector<round::CounterReading> Counters::readings() const {
    std::vector<round::CounterReading> all;
    for (const airframe::Counter& counter : airframe->counters)
        all.push_back({counter.id, text(counter.id, now.at(counter.id))});
    return all;
}

LocalInstant Hangar::at(double hour) {
    const Instant wanted{from.ms + today * msOfDay +
                         static_cast<std::int64_t>(hour * 60 - offsetMinutes) * msOfMinute};
    clock = std::max(wanted, Instant{clock.ms + 3 * msOfMinute});
    return {clock, offsetMinutes};
}

std::string Hangar::date(int day) const {
    return toText(Instant{from.ms + day * msOfDay}).substr(0, 10);
}

int Hangar::month() const {
    const std::string text = date(today);
    return (text[5] - '0') * 10 + (text[6] - '0');
}

Result<std::string> Hangar::say(double hour, const Pen::Signing& by, const record::Entry& entry) {
    if (isFull()) return std::string();
    return pen.entry(at(hour), by, entry);
}

} // namespace ambit::fleet
