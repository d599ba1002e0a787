#include "file/file.hpp"

#include "base/decimal.hpp"
#include "file/order.hpp"

#include <algorithm>
#include <set>

namespace ambit::file {

namespace {

using record::DiscrepancyId;
using round::CounterReading;
using State = Discrepancy::State;

std::string dayOf(Instant at) {
    return ambit::toText(at).substr(0, 10);
}

class Folding {
public:
    Folding(const std::vector<Told>& records, const Order& its) : order(its), all(records) {
        for (const std::size_t i : order.sequence()) {
            const Told& one = records[i];
            now = &one;
            at = one.at;
            who = one.signer;
            keys.sign(one.key, who);
            sameMachine(one);
            file.pages.push_back({one.sha256, one.kind(), at, who, one.key, {}});
            if (const record::Entry* entry = one.entry())
                std::visit([&](const auto& what) { take(what); }, *entry);
            else
                takeRound(*one.round());
        }
        // A revocation counts for what was signed after its date, however late it was told.
        for (Page& page : file.pages)
            page.standing = keys.of(page.key, page.signer.role, page.at);
        file.keys = keys.all();
        dropRemoved();
        findHolesAndHeads(records);
    }

    AircraftFile file;

private:
    [[nodiscard]] Word word(std::string words) const { return {now->sha256, at, who.name, std::move(words)}; }
    void conflict(Sentence what, std::vector<std::string> with = {}) {
        with.push_back(now->sha256);
        std::sort(with.begin(), with.end());
        with.erase(std::unique(with.begin(), with.end()), with.end());
        file.conflicts.push_back({std::move(what), std::move(with)});
    }
    /// Where the record that found it was let go on purpose, that isn't one.
    void unfound(const Sentence& what, const std::string& record) {
        conflict(what, {record});
        missing.emplace_back(record, file.conflicts.size() - 1);
    }
    /// A registration may go to another machine; their files are two.
    void sameMachine(const Told& one) {
        if (one.serial.empty()) return;
        if (serials.empty()) serials.emplace_back(one.serial, one.sha256);
        const bool isKnown = std::any_of(serials.begin(), serials.end(),
                                         [&](const auto& its) { return its.first == one.serial; });
        if (isKnown) return;
        conflict(say("The records bear two serial numbers: %1 and %2.", serials.front().first, one.serial),
                 {serials.front().second});
        serials.emplace_back(one.serial, one.sha256);
    }
    void dropRemoved() {
        for (std::size_t i = missing.size(); i-- > 0;)
            if (file.removed.contains(missing[i].first))
                file.conflicts.erase(file.conflicts.begin() + static_cast<std::ptrdiff_t>(missing[i].second));
    }
    /// Neither knew of the other.
    [[nodiscard]] bool apart(const std::string& earlier) const { return !order.knew(now->sha256, earlier); }

    void takeRound(const RoundTold& round) {
        for (const CounterReading& counter : round.counters)
            count(counter);
        takeSound(round);
        for (const Seen& seen : round.seen)
            if (seen.outcome == round::Outcome::finding) takeFinding(round, seen);
    }

    void takeFinding(const RoundTold& round, const Seen& seen) {
        const Word found = word(seen.words);
        const auto open = std::find_if(file.discrepancies.rbegin(), file.discrepancies.rend(),
                                       [&](const Discrepancy& one) { return one.id.point == seen.point; });
        if (open != file.discrepancies.rend() && open->isOpen()) {
            open->again.push_back(found);
            if (!seen.grounds) return;
            open->grounds = true; // it has grown: that it could wait was said of less
            open->state = State::grounding;
            open->deferral.reset();
            return;
        }
        Discrepancy one;
        one.id = {now->sha256, seen.point};
        if (const PointName* point = round.point(seen.point)) {
            one.name = point->name;
            one.zone = point->zone;
            one.jasc = point->jasc;
        }
        one.found = found;
        one.grounds = seen.grounds;
        if (one.grounds) one.state = State::grounding;
        live.push_back(file.discrepancies.size());
        file.discrepancies.push_back(std::move(one));
    }

    /// Of a point that is sound, all but what was closed long ago hears of it.
    void takeSound(const RoundTold& round) {
        std::erase_if(live, [&](std::size_t i) { return file.discrepancies[i].state == State::closed; });
        for (const std::size_t i : live) {
            Discrepancy& one = file.discrepancies[i];
            if (round.point(one.id.point) == nullptr) continue;
            const Seen* seen = round.seenAt(one.id.point);
            if (seen != nullptr && seen->outcome != round::Outcome::sound) continue;
            if (one.isOpen()) one.seenSound.push_back(word("sound"));
            // Only who knew that it was put right has looked whether it is.
            if (one.state == State::rectified && !apart(one.rectified->record)) {
                one.closed = word("sound");
                one.state = State::closed;
            }
        }
    }

    Discrepancy* find(const DiscrepancyId& id) {
        const auto found =
            std::find_if(file.discrepancies.begin(), file.discrepancies.end(), [&](const Discrepancy& one) {
                return one.id == id ||
                       (one.id.point == id.point &&
                        std::any_of(one.again.begin(), one.again.end(),
                                    [&](const Word& again) { return again.record == id.record; }));
            });
        return found == file.discrepancies.end() ? nullptr : &*found;
    }

    void take(const record::Assessment& one) {
        Discrepancy* its = find(one.of);
        if (its == nullptr) return unfound(say("An assessment of something nobody found."), one.of.record);
        if (!its->isOpen())
            return conflict(say("%1 was assessed though it had been put right.", quoted(its->name)),
                            {its->rectified->record});
        if (its->assessed && apart(its->assessed->record))
            conflict(say("%1 was assessed twice by people who didn't know of each other.", quoted(its->name)),
                     {its->assessed->record});
        its->assessed = word(one.words);
        its->deferral = one.deferral;
        its->state = one.deferral ? State::deferred : State::grounding;
    }

    void take(const record::Rectification& one) {
        for (const DiscrepancyId& id : one.of) {
            Discrepancy* its = find(id);
            if (its == nullptr) {
                unfound(say("A rectification of something nobody found."), id.record);
                continue;
            }
            if (!its->isOpen())
                conflict(say("%1 was put right twice.", quoted(its->name)), {its->rectified->record});
            if (its->state == State::closed)
                live.push_back(static_cast<std::size_t>(its - file.discrepancies.data()));
            its->rectified = word(one.description);
            if (!one.performedBy.empty()) its->rectified->by = one.performedBy + ", approved by " + who.name;
            its->state = State::rectified;
        }
        for (const std::string& id : one.inspections) {
            std::vector<Done>& past = file.inspections[id];
            const auto after = std::find_if(past.begin(), past.end(),
                                            [&](const Done& other) { return one.completedOn < other.on; });
            past.insert(after, {one.completedOn, one.counters, now->sha256});
        }
        for (const CounterReading& counter : one.counters)
            count(counter);
    }

    void take(const record::Reading& one) {
        for (const CounterReading& counter : one.counters)
            count(counter);
    }

    void take(const record::PartChange& one) {
        const auto fitted = file.parts.find(one.position);
        if (one.off && fitted != file.parts.end() && fitted->second.part.serial != one.off->serial)
            conflict(say("At %1 serial %2 was taken off, but %3 had been fitted.", quoted(one.position),
                         one.off->serial, fitted->second.part.serial),
                     {fitted->second.record});
        if (!one.off && one.on && fitted != file.parts.end())
            conflict(say("At %1 a part was fitted though one was there.", quoted(one.position)),
                     {fitted->second.record});
        if (one.on)
            file.parts[one.position] = {*one.on, one.completedOn, one.counters, now->sha256};
        else
            file.parts.erase(one.position);
        for (const CounterReading& counter : one.counters)
            count(counter);
    }

    void take(const record::HandOver& /*one*/) {}

    void take(const record::Trust& one) {
        if (!keys.trust(one, now->key, at)) conflict(say("Who says whose key is trusted isn't the owner."));
    }

    void take(const record::Revocation& one) {
        if (!keys.revoke(one, now->key, at))
            conflict(say("A key was revoked by somebody whose it isn't and who isn't the owner."));
    }

    void take(const record::Removal& one) {
        for (const auto& gone : one.records) {
            file.removed[gone.record] = now->sha256;
            named.insert(gone.previous.begin(), gone.previous.end());
        }
    }

    void take(const record::Renewal& one) {
        const auto page = std::find_if(file.pages.begin(), file.pages.end(),
                                       [&](const Page& its) { return its.sha256 == one.of.record; });
        if (page == file.pages.end())
            return unfound(say("Of a value that nobody measured it was said whether its part was renewed."),
                           one.of.record);
        const auto place = static_cast<std::size_t>(page - file.pages.begin());
        const RoundTold* round = all[order.sequence()[place]].round();
        const Seen* seen = round == nullptr ? nullptr : round->seenAt(one.of.point);
        if (seen == nullptr || seen->value.empty())
            return conflict(say("Of a value that nobody measured it was said whether its part was renewed."),
                            {one.of.record});
        const auto known = file.renewals.find(one.of);
        if (known != file.renewals.end() && known->second.renewed != one.renewed &&
            apart(known->second.word.record))
            conflict(say("Whether a part was renewed was said in two ways by people who didn't know of each "
                         "other."),
                     {known->second.word.record});
        file.renewals[one.of] = {one.renewed, word(one.words)};
    }

    void count(const CounterReading& reading) {
        const auto value = Decimal::parse(reading.value);
        const auto known = file.counters.find(reading.id);
        if (known != file.counters.end()) {
            const auto last = Decimal::parse(known->second.value);
            const bool later = at >= known->second.at;
            if (later ? *value < *last : *last < *value)
                conflict(say("The counter %1 runs backwards: %2, then %3.", quoted(reading.id),
                             figure(later ? known->second.value : reading.value),
                             figure(later ? reading.value : known->second.value)),
                         {known->second.record});
            if (!later) return;
        }
        file.counters[reading.id] = {reading.value, at, now->sha256};
    }

    void findHolesAndHeads(const std::vector<Told>& records) {
        std::map<std::string, std::vector<std::string>> namedBy;
        std::set<std::string> here;
        for (const std::size_t i : order.sequence()) {
            const Told& one = records[i];
            here.insert(one.sha256);
            for (const std::string& earlier : one.previous)
                namedBy[earlier].push_back(one.sha256);
        }
        for (auto& [sha256, by] : namedBy) {
            if (here.contains(sha256) || file.removed.contains(sha256)) continue;
            std::sort(by.begin(), by.end());
            file.holes.push_back({sha256, std::move(by)});
        }
        for (const std::string& sha256 : here)
            if (!namedBy.contains(sha256) && !named.contains(sha256)) file.heads.push_back(sha256);
    }

    const Order& order;
    const std::vector<Told>& all;
    const Told* now = nullptr;
    Instant at;
    record::Person who;
    Keys keys;
    std::set<std::string> named;                              ///< by records that were let go
    std::vector<std::pair<std::string, std::size_t>> missing; ///< who found it; the conflict that says so
    std::vector<std::pair<std::string, std::string>> serials; ///< each with the first record that bears it
    std::vector<std::size_t> live;                            ///< discrepancies that may not be closed yet
};

} // namespace

bool isRenewed(const Renewals& said, const std::string& record, const Seen& value) {
    const auto found = said.find({record, value.point});
    return found == said.end() ? value.renewed : found->second.renewed;
}

const Discrepancy* AircraftFile::discrepancy(const DiscrepancyId& id) const {
    const auto found = std::find_if(discrepancies.begin(), discrepancies.end(),
                                    [&](const Discrepancy& one) { return one.id == id; });
    return found == discrepancies.end() ? nullptr : &*found;
}

AircraftFile fold(const std::vector<Told>& records) {
    std::vector<Link> links;
    links.reserve(records.size());
    for (const Told& one : records)
        links.push_back({one.sha256, one.at, one.previous});
    const Order order(links);
    return Folding(records, order).file;
}

std::vector<Sentence> standsAgainst(const AircraftFile& file, const std::string& today) {
    std::vector<Sentence> reasons;
    const auto found = [](const Discrepancy& one) {
        return say("%1, found on %2 by %3 (%4)", quoted(one.name), onDay(dayOf(one.found.at)), one.found.by,
                   one.found.words);
    };
    for (const Discrepancy& one : file.discrepancies) {
        if (one.state == State::grounding)
            reasons.push_back(say("%1 grounds the aircraft until it is put right.", found(one)));
        if (one.state == State::open)
            reasons.push_back(
                say("%1 was not assessed: put it right, or defer it on a stated basis.", found(one)));
        if (one.state != State::deferred) continue;
        if (!one.deferral->until.empty() && one.deferral->until < today)
            reasons.push_back(
                say("%1 was deferred until %2, which is past.", found(one), onDay(one.deferral->until)));
        for (const CounterReading& until : one.deferral->untilCounters) {
            const auto now = file.counters.find(until.id);
            if (now != file.counters.end() &&
                *Decimal::parse(until.value) < *Decimal::parse(now->second.value))
                reasons.push_back(say("%1 was deferred until %2 says %3; it says %4.", found(one),
                                      quoted(until.id), figure(until.value), figure(now->second.value)));
        }
    }
    return reasons;
}

const char* toText(State state) {
    switch (state) {
    case State::open:
        return "open";
    case State::deferred:
        return "deferred";
    case State::grounding:
        return "grounding";
    case State::rectified:
        return "rectified";
    case State::closed:
        return "closed";
    }
    return "";
}

} // namespace ambit::file
