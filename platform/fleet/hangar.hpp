// What one aircraft's life is made with and what it has come to: its counters, its day, its pen.
#pragma once

#include "fleet/craft.hpp"
#include "fleet/pen.hpp"

namespace ambit::fleet {

/// Counters that go up by flights: hours in tenths, landings, starts.
class Counters {
public:
    Counters(const airframe::Airframe& its, Chance& chance);

    void fly(int tenths, int landings, Chance& chance);
    [[nodiscard]] std::int64_t units(const std::string& id) const { return now.at(id); }
    /// How many units of ours one of the airframe's is.
    [[nodiscard]] std::int64_t scaleOf(const std::string& id) const;
    [[nodiscard]] std::string text(const std::string& id, std::int64_t its) const;
    [[nodiscard]] std::vector<round::CounterReading> readings() const; ///< all of them, as they are

private:
    const airframe::Airframe* airframe;
    std::map<std::string, std::int64_t> now; ///< by counter
};

struct Hangar {
    Hangar(const Machine& its, const Craft& kind, Chance chances, const Take& take, Instant first)
        : machine(&its), craft(&kind), chance(chances), counters(*kind.airframe, chance), pen(its, take),
          from(first), clock(first) {}

    const Machine* machine;
    const Craft* craft;
    Chance chance;
    Counters counters;
    Pen pen;
    Instant from;
    int today = 0; ///< days since `from`
    Instant clock; ///< nothing is told before it

    static constexpr int offsetMinutes = 60; ///< invented airfields keep no summer time

    /// No more is wanted. While something will be let go, one record is kept for saying so.
    [[nodiscard]] bool isFull() const {
        return pen.written() + (pen.gone.empty() ? 0 : 1) >= machine->records;
    }
    /// So many hours into today, or shortly after what was told last; it becomes the last.
    [[nodiscard]] LocalInstant at(double hour);
    [[nodiscard]] std::string date(int day) const; ///< yyyy-mm-dd
    [[nodiscard]] int month() const;               ///< 1 to 12
    /// The record's identity; empty: full, nothing was written.
    [[nodiscard]] Result<std::string> say(double hour, const Pen::Signing& by, const record::Entry& entry);
};

} // namespace ambit::fleet
