#include "file/retention.hpp"

#include <algorithm>
#include <set>

namespace ambit::file {

namespace {

Sentence aYear() {
    return say("14 CFR 91.417(b)(1): a year has passed since the work.");
}

class Judging {
public:
    Judging(const AircraftFile& its, Date day) : file(its), today(day) {
        for (const Discrepancy& one : file.discrepancies) {
            if (one.state == Discrepancy::State::closed) continue;
            // What is open, or put right and not yet seen sound, keeps its whole story.
            open.insert(one.id.record);
            notClosed.insert(one.id);
            for (const Word& word : one.again) {
                open.insert(word.record);
                notClosed.insert({word.record, one.id.point});
            }
            if (one.assessed) open.insert(one.assessed->record);
            if (one.rectified) open.insert(one.rectified->record);
        }
        for (const auto& [id, past] : file.inspections)
            if (!past.empty()) status.insert(past.back().record);
        for (const auto& [position, fitted] : file.parts)
            status.insert(fitted.record);
        for (const auto& [id, count] : file.counters)
            status.insert(count.record);
    }

    [[nodiscard]] Keeping of(const Told& one) const {
        const auto keep = [&](Sentence why) { return Keeping{one.sha256, false, std::move(why)}; };
        if (std::find(file.heads.begin(), file.heads.end(), one.sha256) != file.heads.end())
            return keep(say("It is the latest: the next record names it."));
        if (open.contains(one.sha256))
            return keep(say("14 CFR 91.417(b)(3): a discrepancy in it isn't put right and seen sound yet."));
        if (status.contains(one.sha256))
            return keep(
                say("14 CFR 91.417(b)(2): it says what the aircraft's times, parts or inspections are now."));
        if (one.round() != nullptr)
            return {one.sha256, true, say("14 CFR 91.417 doesn't ask for rounds; nothing in it is open.")};
        return std::visit([&](const auto& entry) { return of(one, entry); }, *one.entry());
    }

private:
    [[nodiscard]] Keeping work(const Told& one, const std::string& completedOn, bool superseded) const {
        if (superseded)
            return {one.sha256, true, say("14 CFR 91.417(b)(1): the work was repeated or superseded since.")};
        const auto done = Date::parse(completedOn);
        const auto since = done ? daysBetween(*done, today) : 0;
        // A leap year's 366 days are never too few.
        if (since > 366) return {one.sha256, true, aYear()};
        return {one.sha256, false,
                say("14 CFR 91.417(b)(1): records of work stay for a year, or until it is repeated or "
                    "superseded.")};
    }
    [[nodiscard]] Keeping of(const Told& one, const record::Rectification& entry) const {
        const bool repeated =
            entry.of.empty() && !entry.inspections.empty() &&
            std::all_of(entry.inspections.begin(), entry.inspections.end(), [&](const std::string& id) {
                const auto past = file.inspections.find(id);
                return past != file.inspections.end() && past->second.back().on > entry.completedOn;
            });
        return work(one, entry.completedOn, repeated);
    }
    [[nodiscard]] Keeping of(const Told& one, const record::PartChange& entry) const {
        return work(one, entry.completedOn, false);
    }
    [[nodiscard]] Keeping of(const Told& one, const record::Assessment& entry) const {
        // Also one that a later assessment has taken the place of.
        if (notClosed.contains(entry.of))
            return {one.sha256, false,
                    say("14 CFR 91.417(b)(3): a discrepancy in it isn't put right and seen sound yet.")};
        return {one.sha256, true, say("14 CFR 91.417(b)(3): what it is about was put right and seen sound.")};
    }
    [[nodiscard]] Keeping of(const Told& one, const record::Reading& /*entry*/) const {
        return {one.sha256, true, say("Later readings say what the counters are now.")};
    }
    [[nodiscard]] Keeping of(const Told& one, const record::Renewal& entry) const {
        if (file.removed.contains(entry.of.record))
            return {one.sha256, true, say("The value that it speaks of was let go.")};
        return {one.sha256, false, say("It says where a part's values begin anew.")};
    }
    template<class Other> [[nodiscard]] Keeping of(const Told& one, const Other& /*entry*/) const {
        return {one.sha256, false,
                say("It says who owns the aircraft, whose word counts, or what was let go.")};
    }

    const AircraftFile& file;
    Date today;
    std::set<std::string> open;                ///< records of discrepancies that aren't closed
    std::set<record::DiscrepancyId> notClosed; ///< by each round that found them
    std::set<std::string> status;              ///< records that say what is now
};

} // namespace

std::vector<Keeping> retention(const std::vector<Told>& records, const AircraftFile& file, Date today) {
    const Judging judging(file, today);
    std::map<std::string, Keeping> all;
    for (const Told& one : records)
        all.emplace(one.sha256, judging.of(one));
    std::vector<Keeping> sorted;
    for (const Page& page : file.pages)
        if (const auto found = all.find(page.sha256); found != all.end()) sorted.push_back(found->second);
    return sorted;
}

} // namespace ambit::file
