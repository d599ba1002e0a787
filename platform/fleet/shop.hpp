// Those who look after one aircraft: what was found is deferred or put right, inspections are done, parts
// with a life replaced.
#pragma once

#include "fleet/hangar.hpp"

namespace ambit::fleet {

/// Something found and not put right yet.
struct Defect {
    record::DiscrepancyId id;
    const airframe::Point* point = nullptr;
    std::string words;
    int found = 0; ///< day
    bool grounds = false;
    int assessOn = 0; ///< day; below zero: nobody does
    bool defer = false;
    int deferredDays = 0;
    int repairOn = 0; ///< day
};

class Shop {
public:
    Shop(Hangar& its, const std::vector<Somebody>& who);

    /// What is known when the file is begun.
    [[nodiscard]] Result<void> begin();
    /// What falls due today, before anybody flies.
    [[nodiscard]] Result<void> morning();
    void take(Defect defect); ///< a round has found it; what becomes of it is settled here
    [[nodiscard]] bool grounds() const;
    [[nodiscard]] const std::vector<Defect>& defects() const { return open; }
    /// Points put right since this was last asked.
    [[nodiscard]] std::vector<std::string> repaired() { return std::exchange(done, {}); }

private:
    struct Inspecting {
        const airframe::Inspection* what = nullptr;
        std::map<std::string, std::int64_t> next; ///< by counter: when it reads so
        std::optional<int> nextDay;
    };
    struct Living {
        const airframe::LifeLimit* what = nullptr;
        record::Part part;
        std::map<std::string, std::int64_t> had;  ///< by counter, when fitted
        std::map<std::string, std::int64_t> then; ///< the aircraft's, when fitted
        std::map<std::string, std::int64_t> next;
        std::optional<int> nextDay;
    };

    void plan(Inspecting& one, double atLeast);
    void plan(Living& one);
    void fit(Living& one, double used);
    [[nodiscard]] bool isDue(const std::map<std::string, std::int64_t>& next, std::optional<int> day) const;
    [[nodiscard]] bool isNear(const Inspecting& one) const;
    [[nodiscard]] Result<void> assess(Defect& defect);
    [[nodiscard]] Result<void> repair();
    [[nodiscard]] Result<void> inspect();
    [[nodiscard]] Result<void> replace(Living& one);
    [[nodiscard]] Pen::Signing mechanic();

    Hangar& hangar;
    const std::vector<Somebody>& mechanics;
    std::vector<Defect> open;
    std::vector<std::string> done;
    std::vector<Inspecting> inspections;
    std::vector<Living> lives;
    std::vector<std::size_t> inShop; ///< inspections going on
    int shopUntil = 0;               ///< day
    int parts = 0;                   ///< fitted so far
};

} // namespace ambit::fleet
