#include "round/pace.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ambit::round {

namespace {

std::int64_t msOf(double seconds) {
    return std::llround(seconds * 1000);
}

/// One settling, as far as time is concerned.
struct Step {
    std::int64_t seq = 0;
    std::int64_t ms = 0; ///< since it could be begun
    std::int64_t expectedMs = 0;
};

std::int64_t between(Instant from, Instant to) {
    return std::max<std::int64_t>(0, to.ms - from.ms);
}

class Reader {
public:
    explicit Reader(const airframe::Airframe& its) : airframe(its) {}

    void read(const Event& event) {
        std::visit([&](const auto& what) { take(event, what); }, event.what);
        if (!std::holds_alternative<StandReached>(event.what) && doesSomething(event.what))
            lastDone = event.at;
    }
    Pace end() {
        endRun();
        return std::move(pace);
    }

private:
    /// Is it something done at the stand, so that whoever walks was still there?
    static bool doesSomething(const What& what) {
        return std::holds_alternative<Settled>(what) || std::holds_alternative<SettingChanged>(what) ||
               std::holds_alternative<OpeningMade>(what) || std::holds_alternative<OpeningClosed>(what);
    }

    void take(const Event& event, const Opened&) { pace.inHandSince = lastDone = event.at; }
    void take(const Event& event, const StandReached& reached) {
        endRun();
        portion.clear();
        pace.walkingMs += std::max<std::int64_t>(0, between(lastDone, event.at) - pausedMs);
        pausedMs = 0;
        const auto known = std::find_if(pace.stands.begin(), pace.stands.end(),
                                        [&](const StandPace& one) { return one.stand == reached.stand; });
        stand = static_cast<std::size_t>(known - pace.stands.begin());
        if (known == pace.stands.end()) pace.stands.push_back({reached.stand});
        ++pace.stands[*stand].visits;
        pace.inHandSince = lastDone = event.at;
    }
    void take(const Event& event, const Settled& settled) {
        const airframe::Point* point = airframe.point(settled.point);
        const bool looked = settled.outcome != Outcome::notInspected;
        const std::int64_t expected = point == nullptr || !looked ? 0 : msOf(point->seconds);
        spend(event.at, expected);
        if (looked && stand) ++pace.stands[*stand].settled;
        // Told down again: the looking was before.
        const bool wasSeen = std::find(portion.begin(), portion.end(), settled.point) != portion.end();
        if (looked && point != nullptr && !wasSeen)
            run.push_back({event.seq, between(pace.inHandSince, event.at), expected});
        pace.inHandSince = event.at;
    }
    void take(const Event&, const PortionBegun& begun) {
        endRun();
        portion = begun.points;
    }
    void take(const Event& event, const PortionEnded& ended) {
        if (!ended.looked) portion.clear();
        pace.inHandSince = event.at;
    }
    void take(const Event& event, const Interrupted&) {
        endRun();
        portion.clear();
        pace.inHandSince = event.at;
    }
    void take(const Event& event, const SettingChanged& changed) {
        endRun();
        portion.clear();
        const airframe::Setting* setting = airframe.setting(changed.setting);
        std::int64_t expected = 0;
        if (setting != nullptr)
            for (const auto& one : setting->changes)
                if (one.to == changed.to) expected = std::max(expected, msOf(one.seconds));
        spend(event.at, expected);
        pace.inHandSince = event.at;
    }
    void take(const Event& event, const OpeningMade&) { spend(event.at, 0); }
    void take(const Event& event, const OpeningClosed&) { spend(event.at, 0); }
    void take(const Event& event, const Paused&) {
        endRun();
        pausedAt = event.at;
    }
    void take(const Event& event, const Resumed&) {
        if (pausedAt) {
            const std::int64_t ms = between(*pausedAt, event.at);
            pausedMs += ms;
            pace.pausedMs += ms;
        }
        pausedAt.reset();
        pace.inHandSince = event.at;
    }
    void take(const Event&, const auto&) {}

    /// Time until now goes to the stand where one is.
    void spend(Instant at, std::int64_t expected) {
        const std::int64_t ms = std::max<std::int64_t>(0, between(lastDone, at) - pausedMs);
        pausedMs = 0;
        if (!stand) return;
        pace.stands[*stand].ms += ms;
        pace.stands[*stand].expectedMs += expected;
    }

    /// Finds what was quick in the settlings since the last thing that parts them: where quick ones overlap,
    /// they are one.
    void endRun() {
        std::optional<std::size_t> begin;
        std::size_t end = 0;
        for (std::size_t first = 0; first < run.size(); ++first) {
            if (begin && first >= end) tell(*std::exchange(begin, std::nullopt), end);
            const std::size_t to = quickFrom(first);
            if (to == first) continue;
            if (!begin) begin = first;
            end = std::max(end, to);
        }
        if (begin) tell(*begin, end);
        run.clear();
    }
    /// One past the last of the quick ones that begin with this one; itself if there are none.
    [[nodiscard]] std::size_t quickFrom(std::size_t first) const {
        std::size_t to = first;
        std::int64_t ms = 0, least = run[first].expectedMs;
        for (std::size_t last = first; last < run.size(); ++last) {
            ms += run[last].ms;
            least = std::min(least, run[last].expectedMs);
            if (ms >= least) break; // more points only take longer
            if (last + 1 - first >= fewestQuick) to = last + 1;
        }
        return to;
    }
    void tell(std::size_t first, std::size_t end) {
        Quick quick{run[first].seq, run[end - 1].seq, stand ? pace.stands[*stand].stand : std::string(),
                    static_cast<int>(end - first), 0};
        for (std::size_t i = first; i < end; ++i)
            quick.ms += run[i].ms;
        pace.quick.push_back(std::move(quick));
    }

    const airframe::Airframe& airframe;
    Pace pace;
    std::optional<std::size_t> stand; ///< in `pace`
    Instant lastDone;
    std::optional<Instant> pausedAt;
    std::int64_t pausedMs = 0; ///< since lastDone
    std::vector<Step> run;
    std::vector<std::string> portion; ///< points that were looked at in it, or are
};

} // namespace

QuickRun asking(const State& state, const Quick& quick, bool again) {
    QuickRun run{quick.firstSeq, quick.lastSeq, quick.points, quick.ms, {}};
    std::vector<std::pair<std::int64_t, std::string>> counting;
    for (const auto& [id, point] : state.points) {
        const auto* last = point.last();
        if (again && point.settled && last->looked() && last->seq >= run.first && last->seq <= run.last)
            counting.emplace_back(last->seq, id);
    }
    std::sort(counting.begin(), counting.end());
    for (auto& [seq, id] : counting)
        run.again.push_back(std::move(id));
    return run;
}

Pace paceOf(const airframe::Airframe& airframe, const std::vector<Event>& events) {
    Reader reader(airframe);
    for (const Event& event : events)
        reader.read(event);
    return reader.end();
}

} // namespace ambit::round
