#include "fleet/walker.hpp"

#include <array>

namespace ambit::fleet {

namespace {

using round::Outcome;

class Walker {
public:
    Walker(const Craft& its, const Wish& wanted, Chance& chances)
        : craft(its), wish(wanted), chance(chances), at(wanted.at.at) {}

    std::vector<round::Event> walk() {
        open();
        if (!wish.note.empty()) add(round::Note{wish.note}, 20);
        if (wish.lowLight) add(round::Light{true}, 5);
        if (wish.crowded) crowd();
        const std::size_t middle = wish.walk->plan.size() / 2;
        for (std::size_t i = 0; i < wish.walk->plan.size(); ++i) {
            const walk::Step& step = wish.walk->plan[i];
            if (const auto* go = std::get_if<walk::Go>(&step)) reach(go->stand, i > middle);
            if (const auto* set = std::get_if<walk::Set>(&step))
                add(round::SettingChanged{set->setting, set->to}, 20);
            if (const auto* settle = std::get_if<walk::Settle>(&step)) {
                this->settle(*craft.airframe->point(settle->point));
                if (i >= middle && wish.interrupted && !stopped) interrupt(settle->point);
            }
        }
        add(round::Concluded{fit, wish.reasons}, wish.reasons.empty() ? 12 : 60);
        return std::move(events);
    }

private:
    void add(round::What what, double seconds) {
        at.ms += static_cast<std::int64_t>(seconds * chance.between(600, 1500));
        events.push_back({static_cast<std::int64_t>(events.size()) + 1, at, std::move(what)});
    }

    void open() {
        const airframe::Airframe& airframe = *craft.airframe;
        round::Opened opened;
        opened.registration = wish.registration;
        opened.serial = wish.serial;
        opened.airframe = airframe.id;
        opened.airframeSha256 = airframe.sha256;
        opened.walk = wish.walk->walk->id;
        opened.who = wish.who;
        opened.counters = wish.counters;
        opened.offsetMinutes = wish.at.offsetMinutes;
        opened.position = wish.position;
        opened.plan = wish.walk->plan;
        add(std::move(opened), 0);
    }

    void reach(const std::string& stand, bool late) {
        if (late && wish.blocked && !wasBlocked) {
            wasBlocked = true;
            add(round::StandBlocked{stand, "A fuel truck stands there."}, 10);
            add(round::StandFree{stand}, 180);
        }
        add(round::StandReached{stand}, 8);
    }

    /// Far enough off not to be in anybody's way.
    void crowd() {
        const auto corner = [](const char* x, const char* y) { return round::Corner{x, y}; };
        add(round::AreaMarked{1,
                              {corner("12", "-3"), corner("19", "-3"), corner("19", "4"), corner("12", "4")},
                              "Another machine, parked beside this one"},
            12);
    }

    void settle(const airframe::Point& point) {
        round::Settled settled;
        settled.point = point.id;
        settled.outcome = Outcome::sound;
        if (const auto value = wish.values.find(point.id); value != wish.values.end()) {
            settled.value = value->second;
            round::readAsUsual(settled, *point.limit);
        }
        const auto other = wish.others.find(point.id);
        if (other == wish.others.end()) return add(std::move(settled), point.seconds);
        if (other->second.spot) return putRight(point, std::move(settled), other->second);
        settled.outcome = other->second.outcome;
        if (settled.outcome == Outcome::notInspected) {
            settled.value.reset();
            settled.from.reset();
            settled.uncertainty.clear();
            settled.why = other->second.words;
            settled.basis = other->second.basis;
            if (settled.basis.empty()) fit = false;
            return add(std::move(settled), 6);
        }
        settled.words = other->second.words;
        settled.severity = other->second.severity;
        if (settled.severity == round::Severity::grounds) fit = false;
        add(std::move(settled), point.seconds + 40);
        for (const std::string& opening : point.closes)
            add(round::OpeningClosed{opening}, 10);
    }

    void putRight(const airframe::Point& point, round::Settled settled, const Other& other) {
        round::Settled then = settled;
        settled.outcome = Outcome::finding;
        settled.words = other.spot->found;
        settled.severity = point.finding;
        if (other.then) then.value = other.then;
        add(std::move(settled), point.seconds);
        add(round::Reopened{point.id, other.spot->done}, 90);
        add(std::move(then), point.seconds);
    }

    /// Only where nothing but the point itself has to be seen again.
    void interrupt(const std::string& last) {
        static constexpr std::array<const char*, 5> why{
            "Telephone.", "Talked with the next crew.",
            "Waited for the fuel truck. Nobody touched the machine.", "Shower passing over.",
            "Passenger asked for; back after some minutes."};
        const airframe::Point& point = *craft.airframe->point(last);
        if (wish.others.contains(last) || !point.opens.empty() || !point.closes.empty() ||
            craft.needed.contains(last))
            return;
        stopped = true;
        add(round::Paused{}, 3);
        add(round::Note{chance.of(why)}, 10);
        add(round::Resumed{}, 300);
        add(round::Reopened{last, "Interrupted: one point back."}, 5);
        settle(point);
    }

    const Craft& craft;
    const Wish& wish;
    Chance& chance;
    Instant at;
    std::vector<round::Event> events;
    bool fit = true;
    bool stopped = false;
    bool wasBlocked = false;
};

} // namespace

std::vector<round::Event> walked(const Craft& craft, const Wish& wish, Chance& chance) {
    return Walker(craft, wish, chance).walk();
}

} // namespace ambit::fleet
