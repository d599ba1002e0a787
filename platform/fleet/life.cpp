#include "fleet/life.hpp"

#include "fleet/crewing.hpp"
#include "fleet/gauge.hpp"
#include "fleet/walker.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::fleet {

namespace {

constexpr int daysOfYear = 365;
constexpr double latest = 19; ///< o'clock: nobody sets out later

class Life {
public:
    Life(const Setting& its, const Take& take)
        : setting(its),
          hangar(*its.machine, *its.craft, Chance{its.plan->seed, its.number}, take, its.plan->from),
          crewing(hangar, *its.crew, *its.guests, its.plan->seed), shop(hangar, crewing.mechanics),
          days(its.plan->years * daysOfYear), chance(hangar.chance) {
        const double perYear = static_cast<double>(its.machine->records) / its.plan->years;
        flightsADay = std::clamp(perYear / 120, 2.8, 7.0);
        for (const airframe::Point& point : its.craft->airframe->points) {
            if (point.limit) gauges.emplace(point.id, Gauge(*point.limit, chance));
            // Each machine has its own weak spots.
            often[point.id] =
                its.craft->often.at(point.id) * (chance.happens(0.05) ? 8 : chance.between(0.3, 1.7));
        }
    }

    Result<Made> run() {
        if (auto done = crewing.begin(); !done) return tl::unexpected(done.error());
        if (auto done = shop.begin(); !done) return tl::unexpected(done.error());
        begun = hangar.pen.written();
        for (; !hangar.isFull(); ++hangar.today)
            if (auto done = day(); !done) return tl::unexpected(done.error());
        hangar.pen.join();
        if (auto done = letGo(); !done) return tl::unexpected(done.error());
        made.forks = hangar.pen.forks();
        made.records = hangar.pen.written();
        return made;
    }

private:
    Result<void> day() {
        hangar.pen.join();
        if (auto done = rarely(); !done) return done;
        if (auto done = shop.morning(); !done) return done;
        for (const std::string& point : shop.repaired())
            if (const auto gauge = gauges.find(point); gauge != gauges.end()) gauge->second.renew(chance);
        if (!shop.grounds() && isFlown())
            if (auto done = fly(); !done) return done;
        if (hangar.today < nextReading) return {};
        nextReading = hangar.today + chance.whole(80, 150);
        return read();
    }

    /// So that the records asked for come out about when the years are over.
    bool isFlown() {
        const double daysLeft = std::max(1, days - hangar.today);
        const double left = static_cast<double>(setting.machine->records - hangar.pen.written());
        const double each =
            (static_cast<double>(hangar.pen.written() - begun) + 10 * flightsADay) / (flown + 10);
        const int month = hangar.month();
        const double season = month >= 4 && month <= 9 ? 1.25 : 0.75;
        const bool weekend = (hangar.today + 4) % 7 >= 5;
        const double probability = left / (each * daysLeft) * season * (weekend ? 1.5 : 0.8);
        return chance.happens(hangar.today >= days ? 0.7 : std::min(probability, 0.97));
    }

    Result<void> fly() {
        ++flown;
        const int most = std::max(1, static_cast<int>(std::lround(flightsADay * chance.between(0.4, 1.6))));
        if (most > 1 && chance.happens(0.02)) hangar.pen.part();
        double hour = chance.between(7.2, most > 4 ? 8.5 : 11);
        for (int i = 0; i < most && hour < latest && !hangar.isFull(); ++i) {
            const auto crew = crewing.next();
            const auto fit = round(i == 0 ? setting.craft->daily : setting.craft->turnaround, crew, hour,
                                   hangar.pen.isApart() ? i % 2 : 0);
            if (!fit) return tl::unexpected(fit.error());
            if (!*fit) return {};
            const int tenths = chance.whole(6, most > 4 ? 14 : 25);
            const int landings = crew.student != nullptr ? chance.whole(2, 8) : chance.whole(1, 2);
            hangar.counters.fly(tenths, landings, chance);
            for (auto& [point, gauge] : gauges)
                gauge.wear(tenths, chance);
            hour += (i == 0 ? 0.8 : 0.3) + tenths / 10.0 + chance.between(0.2, most > 4 ? 0.4 : 1.2);
        }
        return {};
    }

    /// Walked, and signed. False: not fit, nobody flies.
    Result<bool> round(const Walk& walk, const Crewing::Aboard& crew, double hour, int device) {
        Wish wish = wishFor(walk, crew, hour);
        std::vector<const airframe::Point*> news;
        decide(walk, wish, news);
        const bool slip = writeDown(wish);
        const auto events = walked(*setting.craft, wish, chance);
        const auto& conclusion = std::get<round::Concluded>(events.back().what);
        hangar.clock = events.back().at;
        std::optional<Pen::Second> second;
        const bool daily = &walk == &setting.craft->daily;
        if (crew.student != nullptr && crew.signs == crew.student && chance.happens(daily ? 0.7 : 0.15)) {
            hangar.clock.ms += std::int64_t{60'000} * chance.whole(2, 15);
            second = Pen::Second{crew.instructor, "instructor", hangar.clock};
        }
        auto identity = hangar.pen.round(*setting.craft->airframe, events, *crew.signs, device, second);
        if (!identity) return tl::unexpected(identity.error());
        if (slip) made.slips.push_back(*identity);
        for (const airframe::Point* point : news) {
            const Other& other = wish.others.at(point->id);
            Defect defect;
            defect.id = {*identity, point->id};
            defect.point = point;
            defect.words = other.words;
            defect.grounds = other.severity == round::Severity::grounds;
            shop.take(std::move(defect));
        }
        return conclusion.fit;
    }

    Wish wishFor(const Walk& walk, const Crewing::Aboard& crew, double hour) {
        Wish wish;
        wish.walk = &walk;
        wish.registration = setting.machine->registration;
        wish.serial = setting.machine->serial;
        wish.who = crew.signs->as(crew.role);
        wish.counters = hangar.counters.readings();
        wish.at = hangar.at(hour);
        if (chance.happens(0.6)) wish.position = setting.crew->position;
        if (crew.student != nullptr && crew.signs == crew.instructor)
            wish.note = "Walked together with " + crew.student->name + ", student.";
        else if (crew.student == nullptr && chance.happens(0.12))
            wish.note = noteOf(hangar.month());
        const bool daily = &walk == &setting.craft->daily;
        wish.interrupted = chance.happens(daily ? 0.05 : 0.02);
        wish.lowLight = (hangar.month() <= 2 || hangar.month() >= 11) && hour < 8 && chance.happens(0.3);
        wish.blocked = chance.happens(0.004);
        wish.crowded = chance.happens(0.006);
        return wish;
    }

    std::string noteOf(int month) {
        static const std::vector<std::string> any{
            "Dry, little wind. One aboard, one hour planned.", "Stood outside since yesterday.",
            "Two aboard, local flight planned.", "Washed yesterday.", "Hangared. Wind from the west, gusts."};
        static const std::vector<std::string> cold{"Two degrees below zero, engine preheated.",
                                                   "Wet after the night, no ice.",
                                                   "Hangar door frozen; started late."};
        return month <= 2 || month >= 12 ? chance.of(cold) : chance.of(any);
    }

    /// What comes out at the points of this walk.
    void decide(const Walk& walk, Wish& wish, std::vector<const airframe::Point*>& news) {
        for (const airframe::Point* point : walk.points)
            if (point->limit) measure(*point, wish, news);
        std::string names;
        for (const Defect& defect : shop.defects()) {
            const bool here =
                std::find(walk.points.begin(), walk.points.end(), defect.point) != walk.points.end();
            // A few don't see what others saw; what is measured tells itself.
            if (!here || wish.others.contains(defect.point->id) ||
                (!defect.point->limit && chance.happens(0.06)))
                continue;
            wish.others[defect.point->id] = {round::Outcome::finding,
                                             foundAgain(defect.words, hangar.today - defect.found, chance),
                                             defect.point->finding,
                                             {},
                                             {},
                                             {}};
        }
        const bool daily = &walk == &setting.craft->daily;
        if (chance.happens(daily ? 0.12 : 0.04)) findAnew(walk, wish, news);
        if (chance.happens(daily ? 0.07 : 0.03)) putRight(walk, wish);
        if (chance.happens(daily ? 0.03 : 0.005)) leaveOut(walk, wish);
        conclude(walk, wish);
    }

    void measure(const airframe::Point& point, Wish& wish, std::vector<const airframe::Point*>& news) {
        Gauge& gauge = gauges.at(point.id);
        wish.values[point.id] = gauge.value();
        if (gauge.isWithin()) return;
        const std::string is = gauge.value() + ' ' + point.limit->unit;
        if (gauge.isFilled()) {
            gauge.fill(chance);
            wish.others[point.id] = {round::Outcome::finding,
                                     {},
                                     point.finding,
                                     {},
                                     OnTheSpot{"Only " + is + ": too little.", "Filled up."},
                                     gauge.value()};
            return;
        }
        const auto& known = shop.defects();
        const auto its =
            std::find_if(known.begin(), known.end(), [&](const Defect& one) { return one.point == &point; });
        const std::string words = its == known.end() ? "Out of its limit: " + is + ". " +
                                                           filled(chance.of(troubleAt(point).found), chance)
                                                     : "Still out of its limit: " + is + '.';
        wish.others[point.id] = {round::Outcome::finding, words, point.finding, {}, {}, {}};
        if (its == known.end()) news.push_back(&point);
    }

    /// Something new, somewhere that nothing is the matter with yet.
    void findAnew(const Walk& walk, Wish& wish, std::vector<const airframe::Point*>& news) {
        std::vector<const airframe::Point*> points;
        double all = 0;
        for (const airframe::Point* point : walk.points) {
            const bool known = std::any_of(shop.defects().begin(), shop.defects().end(),
                                           [&](const Defect& one) { return one.point == point; });
            if (known || wish.others.contains(point->id) || setting.craft->needed.contains(point->id))
                continue;
            if (point->limit && !gauges.at(point->id).isFilled()) continue; // its value tells
            if (often.at(point->id) <= 0) continue;
            points.push_back(point);
            all += often.at(point->id);
        }
        double at = chance.share() * all;
        for (const airframe::Point* point : points) {
            at -= often.at(point->id);
            if (at > 0) continue;
            wish.others[point->id] = {
                round::Outcome::finding, foundAt(*point, chance), point->finding, {}, {}, {}};
            news.push_back(point);
            return;
        }
    }

    void putRight(const Walk& walk, Wish& wish) {
        const airframe::Point& point = *chance.of(walk.points);
        if (point.limit || wish.others.contains(point.id)) return;
        auto spot = onTheSpot(point, hangar.month(), chance);
        if (!spot) return;
        wish.others[point.id] = {round::Outcome::finding, {}, point.finding, {}, std::move(spot), {}};
    }

    /// Only what a flight by day does without, and nothing waits for.
    void leaveOut(const Walk& walk, Wish& wish) {
        std::vector<const airframe::Point*> points;
        for (const airframe::Point* point : walk.points)
            if (troubleAt(*point).equipment && !point->limit && point->opens.empty() &&
                point->closes.empty() && !setting.craft->needed.contains(point->id) &&
                !wish.others.contains(point->id))
                points.push_back(point);
        if (points.empty()) return;
        const airframe::Point& point = *chance.of(points);
        wish.others[point.id] = {round::Outcome::notInspected,
                                 "Battery kept for the start; not tried.",
                                 {},
                                 "Day flight under visual rules; not needed by day.",
                                 {},
                                 {}};
    }

    void conclude(const Walk& walk, Wish& wish) {
        std::string grounding;
        std::string rest;
        for (const airframe::Point* point : walk.points) {
            const auto other = wish.others.find(point->id);
            if (other == wish.others.end() || other->second.outcome != round::Outcome::finding ||
                other->second.spot)
                continue;
            std::string& names = other->second.severity == round::Severity::grounds ? grounding : rest;
            names += (names.empty() ? "" : "; ") + point->name;
        }
        if (!grounding.empty())
            wish.reasons = "Not to be flown: " + grounding + ". A mechanic is told.";
        else if (!rest.empty())
            wish.reasons =
                "Fit for day flight. " + rest + ": in the file, looked at again before each flight.";
    }

    /// Now and then a counter is written down wrongly: two digits changed places. True: so here.
    bool writeDown(Wish& wish) {
        // Not twice in a row: the second would be hidden behind the first.
        if (!chance.happens(0.003) || hangar.pen.isApart() || hangar.pen.written() < nextSlip) return false;
        for (round::CounterReading& counter : wish.counters) {
            const std::int64_t units = hangar.counters.units(counter.id);
            const std::int64_t less = std::int64_t{90} * chance.whole(2, 9);
            if (hangar.counters.scaleOf(counter.id) != 10 || units <= less) continue;
            counter.value = hangar.counters.text(counter.id, units - less);
            nextSlip = hangar.pen.written() + 5;
            return true;
        }
        return false;
    }

    Result<void> read() {
        const record::Reading reading{hangar.counters.readings()};
        const auto signer =
            chance.happens(0.7) ? crewing.owner() : Pen::Signing{&chance.of(crewing.mechanics), "mechanic"};
        // One in nine aircraft lets the first of its readings go once later ones stand.
        const bool goes = setting.number % 9 == 2 && hangar.today < days / 4 && hangar.pen.gone.size() < 6;
        if (goes && !hangar.isFull()) return hangar.pen.entryToLetGo(hangar.at(20.5), signer, reading);
        const auto done = hangar.say(20.5, signer, reading);
        if (!done) return tl::unexpected(done.error());
        return {};
    }

    Result<void> letGo() {
        if (hangar.pen.gone.empty()) return {};
        const record::Removal said{
            std::exchange(hangar.pen.gone, {}),
            "Readings of the counters, superseded by later ones (after 14 CFR 91.417(b)(1))."};
        const auto done = hangar.say(21, crewing.owner(), said);
        if (!done) return tl::unexpected(done.error());
        return {};
    }

    /// What an aircraft sees once in its life, or not at all.
    Result<void> rarely() {
        if (hangar.today % daysOfYear == daysOfYear / 2 && chance.happens(0.6))
            if (auto done = crewing.newcomer(); !done) return done;
        if (setting.number % 9 == 1 && hangar.today == days * 2 / 5)
            if (auto done = crewing.loseAKey(); !done) return done;
        if (setting.number % 9 == 0 && hangar.today == days * 11 / 20)
            if (auto done = crewing.handOver(); !done) return done;
        return hangar.today == days / 2 ? letGo() : Result<void>();
    }

    const Setting& setting;
    Hangar hangar;
    Crewing crewing;
    Shop shop;
    const int days;
    Chance& chance;
    double flightsADay = 2;
    std::map<std::string, Gauge> gauges; ///< by measured point
    std::map<std::string, double> often; ///< by point, of this very machine
    std::size_t begun = 0;               ///< records before the first day
    int flown = 0;                       ///< days
    int nextReading = 20;
    std::size_t nextSlip = 0; ///< how many records are written then, at least
    Made made;
};

} // namespace

Result<Made> live(const Setting& setting, const Take& take) {
    return Life(setting, take).run();
}

} // namespace ambit::fleet
