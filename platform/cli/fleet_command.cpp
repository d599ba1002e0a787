// An invented fleet into an archive of its own.
#include "airframe/read.hpp"
#include "archive/aircraft_file.hpp"
#include "archive/import.hpp"
#include "base/date.hpp"
#include "base/files.hpp"
#include "cli/commands.hpp"
#include "cli/talk.hpp"
#include "fleet/fleet.hpp"

#include <filesystem>
#include <iostream>
#include <nlohmann/json.hpp>

namespace ambit::cli {

namespace {

constexpr std::size_t largestAirframe = std::size_t{4} << 20;

Results<fleet::Description> describe(const std::string& path) {
    auto text = readFile(path, largestAirframe);
    if (!text) return tl::unexpected(std::vector<Error>{text.error()});
    auto airframe = airframe::read(*text);
    if (!airframe) return tl::unexpected(airframe.error());
    return fleet::Description{std::move(*airframe), std::move(*text)};
}

/// Keeps records in stretches: what comes from the generator is verified like any other.
class Storing {
public:
    explicit Storing(archive::Archive& its) : archive(its) {}

    Result<void> take(std::string&& json) {
        constexpr std::size_t stretch = 512;
        constexpr std::size_t often = 10240;
        waiting.push_back(std::move(json));
        if (waiting.size() < stretch) return {};
        auto done = flush();
        if (done && kept % often == 0) std::cerr << kept << " records\n";
        return done;
    }
    Result<void> flush() {
        std::size_t next = 0;
        Result<void> bad;
        const auto done = archive::importAll(
            archive,
            [&]() -> std::optional<Result<archive::Offered>> {
                if (next == waiting.size()) return std::nullopt;
                const std::size_t i = next++;
                return archive::Offered{"record " + std::to_string(kept + i + 1), std::move(waiting[i])};
            },
            [&](const std::string& /*name*/, const Result<archive::Imported>& outcome) {
                if (!outcome) bad = tl::unexpected(outcome.error());
            });
        kept += waiting.size();
        waiting.clear();
        return done ? bad : done;
    }
    [[nodiscard]] std::size_t count() const { return kept; }

private:
    archive::Archive& archive;
    std::vector<std::string> waiting;
    std::size_t kept = 0;
};

Result<archive::Archive> newArchive(const std::string& path) {
    if (std::filesystem::exists(path))
        return fail(ErrorCode::storage, "There is a file of this name already.", path,
                    "An invented fleet gets an archive of its own: give another name.");
    return archive::Archive::open(path);
}

Result<void> addAircraft(archive::Archive& archive, const fleet::Fleet& fleet,
                         const std::vector<fleet::Description>& descriptions) {
    for (const fleet::Machine& machine : fleet.machines()) {
        const fleet::Description& kind = descriptions[machine.airframe];
        if (auto added = archive.addAircraft(
                {machine.registration, machine.serial, kind.airframe.sha256, kind.airframe.name}, kind.text);
            !added)
            return added;
    }
    return {};
}

} // namespace

int fleet(const FleetOptions& options) {
    std::vector<fleet::Description> descriptions;
    for (const std::string& path : options.airframes) {
        auto description = describe(path);
        if (!description) return complain(description.error());
        descriptions.push_back(std::move(*description));
    }
    fleet::Plan plan;
    plan.seed = options.seed;
    plan.aircraft = options.aircraft;
    plan.years = options.years;
    plan.records = options.records;
    if (!options.from.empty()) {
        const auto day = Date::parse(options.from);
        if (!day) return complain(day.error());
        const auto midnight = parseInstant(toText(*day) + "T00:00:00.000Z");
        if (!midnight) return complain(midnight.error());
        plan.from = *midnight;
    }
    const auto fleet = fleet::Fleet::of(plan, descriptions);
    if (!fleet) return complain(fleet.error());
    auto archive = newArchive(options.archive);
    if (!archive) return complain(archive.error());
    if (auto added = addAircraft(*archive, *fleet, descriptions); !added) return complain(added.error());
    Storing storing(*archive);
    const auto made = fleet::makeAll(*fleet, options.threads,
                                     [&](const fleet::Machine&, std::string&& json) -> Result<void> {
                                         return storing.take(std::move(json));
                                     });
    if (!made) return complain(made.error());
    if (auto done = storing.flush(); !done) return complain(done.error());
    if (auto settled = archive::settle(*archive); !settled) return complain(settled.error());
    const std::size_t count = storing.count();
    std::size_t forks = 0;
    std::size_t slips = 0;
    for (const fleet::Made& one : *made) {
        forks += one.forks;
        slips += one.slips.size();
    }
    if (options.json)
        std::cout << Json{{"invented", true}, {"aircraft", made->size()}, {"records", count},
                          {"forks", forks},   {"slips", slips},           {"archive", options.archive}}
                         .dump()
                  << '\n';
    else
        std::cout << options.archive << ": " << made->size() << " aircraft, " << count
                  << " signed records. All of it is invented: aircraft, people, keys, findings.\n"
                  << slips << " counters are written down wrongly in it, and " << forks
                  << " times two devices didn't know of each other, as happens.\n";
    return Exit::done;
}

} // namespace ambit::cli
