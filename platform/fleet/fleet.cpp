#include "fleet/fleet.hpp"

#include "fleet/digits.hpp"
#include "fleet/life.hpp"

#include <algorithm>
#include <atomic>
#include <mutex>
#include <thread>

namespace ambit::fleet {

struct Fleet::Shared {
    Plan plan;
    std::vector<Craft> crafts; ///< one for each description
    std::vector<Crew> crews;
    std::vector<Machine> machines;
};

namespace {

constexpr int mostAircraft = 10000;
constexpr int mostYears = 15; // a certificate's life is 20
constexpr std::size_t mostAYear = 2000;
constexpr std::size_t fewestEach = 40;
constexpr std::size_t fewestOfOne = 25; ///< what the least flown one gets: the owner's words alone are ten
constexpr int atOneAirfield = 10;
constexpr Instant earliest{31536000000}; // 1971-01-01
constexpr Instant latest{4102444800000}; // 2100-01-01

tl::unexpected<Error> refuse(std::string what, std::string where) {
    return fail(ErrorCode::invalid, std::move(what), std::move(where), "Give another number.");
}

Result<void> check(const Plan& plan, const std::vector<Description>& descriptions) {
    if (descriptions.empty())
        return fail(ErrorCode::invalid, "A fleet needs an airframe.", "airframe", "Give one at least.");
    for (const Description& description : descriptions)
        if (description.airframe.notice.find("nvented") == std::string::npos)
            return fail(ErrorCode::invalid, "An invented fleet is made of invented aircraft.",
                        description.airframe.id, "Say in the airframe's notice that it is invented.");
    if (plan.aircraft < 1 || plan.aircraft > mostAircraft)
        return refuse("A fleet has 1 to 10,000 aircraft.", "aircraft");
    if (plan.years < 1 || plan.years > mostYears) return refuse("A fleet is 1 to 15 years old.", "years");
    if (plan.from < earliest || plan.from >= latest)
        return refuse("A fleet begins in the years 1971 to 2099.", "from");
    const auto aircraft = static_cast<std::size_t>(plan.aircraft);
    if (plan.records < fewestEach * aircraft)
        return refuse("An aircraft's file has 40 records at least, on average.", "records");
    if (plan.records > mostAYear * aircraft * static_cast<std::size_t>(plan.years))
        return refuse("An aircraft has at most 2,000 records a year, on average.", "records");
    return {};
}

/// Some are flown much, some little; together exactly what is wanted.
void share(std::vector<Machine>& machines, std::size_t records, Chance chance) {
    const std::size_t free = records - fewestOfOne * machines.size();
    std::vector<double> weights;
    double all = 0;
    for (std::size_t i = 0; i < machines.size(); ++i) {
        weights.push_back(chance.happens(0.3) ? chance.between(0.2, 0.7) : chance.between(0.7, 1.6));
        all += weights.back();
    }
    std::size_t given = 0;
    for (std::size_t i = 0; i < machines.size(); ++i) {
        const auto more = static_cast<std::size_t>(static_cast<double>(free) * weights[i] / all);
        machines[i].records = fewestOfOne + more;
        given += machines[i].records;
    }
    for (std::size_t i = 0; given < records; ++given, ++i) // what rounding left
        ++machines[i % machines.size()].records;
}

} // namespace

Result<Fleet> Fleet::of(const Plan& plan, const std::vector<Description>& descriptions) {
    if (auto good = check(plan, descriptions); !good) return tl::unexpected(good.error());
    auto all = std::make_shared<Shared>();
    all->plan = plan;
    for (const Description& description : descriptions) {
        auto craft = craftOf(description.airframe);
        if (!craft) return tl::unexpected(craft.error());
        all->crafts.push_back(std::move(*craft));
    }
    // One more than needed, so that there are always guests from elsewhere.
    const int airfields = (plan.aircraft + atOneAirfield - 1) / atOneAirfield + 1;
    auto crews = makeCrews(plan.seed, airfields, plan.from);
    if (!crews) return tl::unexpected(crews.error());
    all->crews = std::move(*crews);
    for (std::size_t i = 0; i < static_cast<std::size_t>(plan.aircraft); ++i)
        all->machines.push_back(
            {"OX-F" + fourDigits(i + 1), "INVENTED-" + fourDigits(i + 1), i % descriptions.size(), 0});
    share(all->machines, plan.records, Chance{plan.seed, 0x5EED});
    Fleet fleet;
    fleet.shared = std::move(all);
    return fleet;
}

const std::vector<Machine>& Fleet::machines() const {
    return shared->machines;
}

Result<Made> Fleet::make(std::size_t index, const Take& take) const {
    if (index >= shared->machines.size())
        return fail(ErrorCode::notFound, "The fleet has no such aircraft.", std::to_string(index));
    const Machine& machine = shared->machines[index];
    const std::size_t home = index / atOneAirfield;
    const Setting setting{&shared->plan,
                          &machine,
                          index,
                          &shared->crafts[machine.airframe],
                          &shared->crews[home],
                          &shared->crews[(home + 1) % shared->crews.size()]};
    return live(setting, take);
}

Result<std::vector<Made>> makeAll(const Fleet& fleet, int threads, const Take& take) {
    std::vector<Made> made(fleet.machines().size());
    std::atomic<std::size_t> next{0};
    std::mutex oneAtATime;
    std::optional<Error> failed; // under the mutex
    const Take guarded = [&](const Machine& machine, std::string&& json) -> Result<void> {
        const std::lock_guard lock(oneAtATime);
        if (failed) return tl::unexpected(*failed);
        auto taken = take(machine, std::move(json));
        if (!taken) failed = taken.error();
        return taken;
    };
    const auto work = [&] {
        for (std::size_t i = next++; i < made.size(); i = next++) {
            auto one = fleet.make(i, guarded);
            if (one) {
                made[i] = std::move(*one);
                continue;
            }
            const std::lock_guard lock(oneAtATime);
            if (!failed) failed = one.error();
            return;
        }
    };
    std::vector<std::thread> workers;
    for (int i = 1; i < threads; ++i)
        workers.emplace_back(work);
    work();
    for (std::thread& worker : workers)
        worker.join();
    if (failed) return tl::unexpected(*failed);
    return made;
}

} // namespace ambit::fleet
