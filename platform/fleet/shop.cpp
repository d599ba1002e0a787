#include "fleet/shop.hpp"

#include "file/deferral.hpp"
#include "fleet/digits.hpp"

#include <algorithm>

namespace ambit::fleet {

namespace {

constexpr double daysOfMonth = 30; ///< never too late: calendar months count to their end
constexpr int never = -1;

} // namespace

Shop::Shop(Hangar& its, const std::vector<Somebody>& who) : hangar(its), mechanics(who) {
    const airframe::Airframe& airframe = *hangar.craft->airframe;
    for (const airframe::Inspection& inspection : airframe.inspections) {
        plan(inspections.emplace_back(Inspecting{&inspection, {}, {}}), 0.3);
    }
    for (const airframe::LifeLimit& limit : airframe.lifeLimits)
        fit(lives.emplace_back(Living{&limit, {}, {}, {}, {}, {}}), hangar.chance.between(0, 0.95));
}

Pen::Signing Shop::mechanic() {
    return {&hangar.chance.of(mechanics), "mechanic"};
}

/// When it is done next: some time before it is due, by a chance between `atLeast` and all of its span.
void Shop::plan(Inspecting& one, double atLeast) {
    one.next.clear();
    one.nextDay.reset();
    for (const airframe::Span& span : one.what->every) {
        if (const auto* units = std::get_if<airframe::Units>(&span)) {
            const auto scale = static_cast<double>(hangar.counters.scaleOf(units->counter));
            const double count = units->count.approximate();
            double after = count * hangar.chance.between(atLeast, 1) - 0.05 * count;
            // Some are flown late, mostly within what is allowed.
            if (units->allowance && hangar.chance.happens(0.05))
                after = count + 0.6 * units->allowance->most.approximate() * hangar.chance.share();
            one.next[units->counter] =
                hangar.counters.units(units->counter) + static_cast<std::int64_t>(after * scale);
        } else {
            const double days = std::get<airframe::Months>(span).count * daysOfMonth;
            one.nextDay = hangar.today + static_cast<int>(days * hangar.chance.between(atLeast, 1));
        }
    }
}

void Shop::plan(Living& one) {
    one.next.clear();
    one.nextDay.reset();
    for (const airframe::Span& span : one.what->life) {
        if (const auto* units = std::get_if<airframe::Units>(&span)) {
            const auto scale = static_cast<double>(hangar.counters.scaleOf(units->counter));
            const double end = units->count.approximate() * scale;
            const double ahead = std::max(units->ahead.approximate() * scale, end * 0.01);
            one.next[units->counter] =
                one.then[units->counter] +
                static_cast<std::int64_t>(end - ahead * hangar.chance.between(0.2, 1)) -
                one.had[units->counter];
        } else {
            const double days = std::get<airframe::Months>(span).count * daysOfMonth;
            one.nextDay = hangar.today + static_cast<int>(days * hangar.chance.between(0.97, 1));
        }
    }
}

/// Another part, of which so much of its life is used.
void Shop::fit(Living& one, double used) {
    const std::string number = std::to_string(1000 + one.what->id.size() * 37 + one.what->name.size());
    one.part = {one.what->name,
                "DEMO-" + number + "-1",
                "INVENTED-" + hangar.machine->serial.substr(hangar.machine->serial.find('-') + 1) + '-' +
                    fourDigits(static_cast<std::size_t>(++parts)),
                {}};
    one.had.clear();
    one.then.clear();
    for (const airframe::Span& span : one.what->life) {
        const auto* units = std::get_if<airframe::Units>(&span);
        if (units == nullptr) continue;
        const auto scale = static_cast<double>(hangar.counters.scaleOf(units->counter));
        // No part has run more than its aircraft, unless it came from another one.
        const std::int64_t had =
            std::min(static_cast<std::int64_t>(units->count.approximate() * scale * used),
                     hangar.counters.units(units->counter));
        one.had[units->counter] = had;
        one.then[units->counter] = hangar.counters.units(units->counter);
        one.part.counters.push_back({units->counter, hangar.counters.text(units->counter, had)});
    }
    plan(one);
}

Result<void> Shop::begin() {
    record::Rectification all;
    for (const Inspecting& one : inspections)
        all.inspections.push_back(one.what->id);
    all.description = "All inspections done together when this invented file was begun; nothing found.";
    all.completedOn = hangar.date(hangar.today);
    all.counters = hangar.counters.readings();
    const auto signer = mechanic();
    all.certificateKind = signer.who->kind;
    if (const auto said = hangar.say(6.1, signer, all); !said) return tl::unexpected(said.error());
    for (const Living& one : lives) {
        record::PartChange change;
        change.position = one.what->id;
        change.on = one.part;
        change.description =
            "On the aircraft when this invented file was begun; its earlier life as its card says.";
        change.completedOn = hangar.date(hangar.today);
        change.certificateKind = signer.who->kind;
        change.counters = hangar.counters.readings();
        if (const auto said = hangar.say(6.2, signer, change); !said) return tl::unexpected(said.error());
    }
    return {};
}

void Shop::take(Defect defect) {
    Chance& chance = hangar.chance;
    defect.found = hangar.today;
    defect.assessOn = never;
    if (defect.grounds) {
        defect.repairOn =
            hangar.today + (chance.happens(0.4) ? 1 : chance.whole(2, chance.happens(0.8) ? 6 : 20));
        if (defect.repairOn > hangar.today + 2 && chance.happens(0.3)) defect.assessOn = hangar.today + 1;
        open.push_back(std::move(defect));
        return;
    }
    const double fate = chance.share();
    if (fate < 0.45 && !defect.point->limit) { // deferred, and put right in time; a few too late
        defect.assessOn = hangar.today + chance.whole(1, 3);
        defect.defer = true;
        defect.deferredDays = chance.whole(3, 12) * 7;
        defect.repairOn = chance.happens(0.04) ? defect.assessOn + defect.deferredDays + chance.whole(1, 6)
                                               : defect.assessOn + chance.whole(defect.deferredDays / 3,
                                                                                defect.deferredDays - 1);
    } else if (fate < 0.52) { // more than it looked: it grounds
        defect.assessOn = hangar.today + 1;
        defect.repairOn = hangar.today + chance.whole(2, 8);
    } else {
        defect.repairOn = hangar.today + chance.whole(1, 25);
    }
    open.push_back(std::move(defect));
}

bool Shop::grounds() const {
    return !inShop.empty() || std::any_of(open.begin(), open.end(), [&](const Defect& one) {
        return one.grounds || (one.assessOn >= 0 && one.assessOn <= hangar.today && !one.defer);
    });
}

bool Shop::isDue(const std::map<std::string, std::int64_t>& next, std::optional<int> day) const {
    if (day && hangar.today >= *day) return true;
    return std::any_of(next.begin(), next.end(),
                       [&](const auto& one) { return hangar.counters.units(one.first) >= one.second; });
}

/// Done together with what is due, to go in once.
bool Shop::isNear(const Inspecting& one) const {
    constexpr int days = 40;
    constexpr std::int64_t units = 80; // eight hours
    return (one.nextDay && hangar.today + days >= *one.nextDay) ||
           std::any_of(one.next.begin(), one.next.end(), [&](const auto& its) {
               return hangar.counters.units(its.first) + units >= its.second;
           });
}

Result<void> Shop::assess(Defect& defect) {
    record::Assessment assessment{defect.id, "Looked at: more than it seemed. Not to be flown so.", {}};
    const auto signer = mechanic();
    if (defect.defer) {
        assessment.words = "Looked at: can wait, as said here.";
        record::Deferral& how = assessment.deferral.emplace();
        const Trouble& trouble = troubleAt(*defect.point);
        if (trouble.equipment) {
            how.basis = record::deferralBases().front();
            auto answers = file::answered({false, false, false, false, true, true});
            if (!answers) return tl::unexpected(answers.error());
            how.answers = std::move(*answers);
            how.removed = hangar.chance.happens(0.15);
        } else {
            how.basis = "other";
            how.reference = "Invented maintenance sheet " + std::to_string(hangar.chance.whole(1, 60)) +
                            ": within its limits, to be looked at before each flight";
        }
        how.placard =
            trouble.placard.empty() ? "“Look at it before each flight”, on the panel" : trouble.placard;
        how.limits = trouble.limits;
        how.until = hangar.date(hangar.today + defect.deferredDays);
        for (const round::CounterReading& now : hangar.counters.readings())
            if (hangar.counters.scaleOf(now.id) == 10 && how.untilCounters.empty() &&
                hangar.chance.happens(0.1))
                how.untilCounters = {
                    {now.id, hangar.counters.text(now.id, hangar.counters.units(now.id) + 500)}};
        how.determinedBy = signer.who->as("mechanic");
    }
    const auto said = hangar.say(6.2, signer, assessment);
    if (!said) return tl::unexpected(said.error());
    return {};
}

/// What is to be put right today, in one record.
Result<void> Shop::repair() {
    record::Rectification work;
    std::vector<Defect> left;
    for (Defect& one : open) {
        if (one.repairOn > hangar.today) {
            left.push_back(std::move(one));
            continue;
        }
        work.of.push_back(one.id);
        work.description += (work.description.empty() ? "" : "\n") + repairedAt(*one.point, hangar.chance);
        done.push_back(one.point->id);
    }
    open = std::move(left);
    if (work.of.empty()) return {};
    const auto signer = mechanic();
    if (hangar.chance.happens(0.2) && mechanics.size() > 1)
        work.performedBy = (signer.who == &mechanics[0] ? mechanics[1] : mechanics[0]).name;
    work.completedOn = hangar.date(hangar.today);
    work.certificateKind = signer.who->kind;
    work.counters = hangar.counters.readings();
    const auto said = hangar.say(6.4, signer, work);
    if (!said) return tl::unexpected(said.error());
    return {};
}

/// The aircraft goes in, and comes out some days later with what was open put right as well.
Result<void> Shop::inspect() {
    if (inShop.empty()) {
        const bool wanted = std::any_of(inspections.begin(), inspections.end(),
                                        [&](const Inspecting& one) { return isDue(one.next, one.nextDay); });
        int days = 0;
        for (std::size_t i = 0; i < inspections.size(); ++i) {
            const Inspecting& one = inspections[i];
            if (!isDue(one.next, one.nextDay) && !(wanted && isNear(one))) continue;
            inShop.push_back(i);
            days = std::max(days, inspections[i].what->id == "annual" ? hangar.chance.whole(2, 8)
                                                                      : hangar.chance.whole(0, 2));
        }
        if (inShop.empty()) return {};
        shopUntil = hangar.today + days;
    }
    if (hangar.today < shopUntil) return {};
    record::Rectification work;
    for (const std::size_t i : inShop) {
        Inspecting& one = inspections[i];
        work.inspections.push_back(one.what->id);
        work.description +=
            (work.description.empty() ? "" : "\n") + one.what->name + ": done by its list, " +
            (hangar.chance.happens(0.7) ? "nothing found." : "small things put right with it.");
        plan(one, 0.88);
    }
    inShop.clear();
    std::vector<Defect> left;
    for (Defect& one : open) {
        if (hangar.chance.happens(0.2)) { // its part hasn't come
            left.push_back(std::move(one));
            continue;
        }
        work.of.push_back(one.id);
        work.description += '\n' + repairedAt(*one.point, hangar.chance);
        done.push_back(one.point->id);
    }
    open = std::move(left);
    const auto signer = mechanic();
    work.completedOn = hangar.date(hangar.today);
    work.certificateKind = signer.who->kind;
    work.counters = hangar.counters.readings();
    const auto said = hangar.say(6.6, signer, work);
    if (!said) return tl::unexpected(said.error());
    return {};
}

Result<void> Shop::replace(Living& one) {
    record::PartChange change;
    change.position = one.what->id;
    change.off = one.part;
    for (round::CounterReading& counter : change.off->counters)
        counter.value = hangar.counters.text(
            counter.id, one.had.at(counter.id) + hangar.counters.units(counter.id) - one.then.at(counter.id));
    fit(one, 0);
    change.on = one.part;
    change.description =
        one.what->name + ": life used up but for a rest; a new one fitted by its invented sheet.";
    const auto signer = mechanic();
    change.completedOn = hangar.date(hangar.today);
    change.certificateKind = signer.who->kind;
    change.counters = hangar.counters.readings();
    const auto said = hangar.say(6.8, signer, change);
    if (!said) return tl::unexpected(said.error());
    return {};
}

Result<void> Shop::morning() {
    for (Defect& one : open)
        if (one.assessOn == hangar.today)
            if (auto said = assess(one); !said) return said;
    if (auto said = repair(); !said) return said;
    if (auto said = inspect(); !said) return said;
    for (Living& one : lives)
        if (isDue(one.next, one.nextDay))
            if (auto said = replace(one); !said) return said;
    return {};
}

} // namespace ambit::fleet
