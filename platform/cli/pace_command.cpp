// A round walked again: at the speed wanted, and its time at each stand.
#include "airframe/read.hpp"
#include "base/canonical.hpp"
#include "base/files.hpp"
#include "cli/commands.hpp"
#include "cli/logs.hpp"
#include "cli/talk.hpp"
#include "round/pace.hpp"
#include "round/state.hpp"

#include <chrono>
#include <iomanip>
#include <iostream>
#include <nlohmann/json.hpp>
#include <thread>

namespace ambit::cli {

namespace {

double secondsOf(std::int64_t ms) {
    return static_cast<double>(ms) / 1000;
}

/// Each event when it was due; pauses are left out.
void replay(const std::vector<round::Event>& events, double speed) {
    for (std::size_t i = 0; i < events.size(); ++i) {
        const bool paused = i > 0 && std::holds_alternative<round::Paused>(events[i - 1].what);
        const std::int64_t ms = i == 0 || paused ? 0 : events[i].at.ms - events[i - 1].at.ms;
        if (ms > 0) std::this_thread::sleep_for(std::chrono::duration<double>(secondsOf(ms) / speed));
        std::cout << canonicalJson(round::toJson(events[i])) << std::endl;
    }
}

Json toJson(const round::Pace& pace) {
    Json stands = Json::array(), quick = Json::array();
    for (const round::StandPace& one : pace.stands)
        stands.push_back({{"stand", one.stand},
                          {"seconds", secondsOf(one.ms)},
                          {"expected", secondsOf(one.expectedMs)},
                          {"settled", one.settled},
                          {"visits", one.visits}});
    for (const round::Quick& one : pace.quick)
        quick.push_back({{"first", one.firstSeq},
                         {"last", one.lastSeq},
                         {"stand", one.stand},
                         {"points", one.points},
                         {"seconds", secondsOf(one.ms)}});
    return {{"stands", std::move(stands)},
            {"quick", std::move(quick)},
            {"walking", secondsOf(pace.walkingMs)},
            {"paused", secondsOf(pace.pausedMs)}};
}

void print(const round::Pace& pace, const airframe::Airframe& airframe) {
    const auto name = [&](const std::string& id) {
        const auto* stand = airframe.stand(id);
        return stand == nullptr ? id : stand->name;
    };
    std::cout << std::fixed << std::setprecision(0) << "Seconds at each stand, of those the airframe's "
              << "description gives these points:\n";
    for (const round::StandPace& one : pace.stands)
        std::cout << std::setw(7) << secondsOf(one.ms) << " of " << std::setw(5) << secondsOf(one.expectedMs)
                  << "  " << name(one.stand) << '\n';
    std::cout << "Walking between them " << secondsOf(pace.walkingMs) << ", paused "
              << secondsOf(pace.pausedMs) << ".\n";
    std::cout << std::setprecision(1);
    for (const round::Quick& one : pace.quick)
        std::cout << one.points << " points in " << secondsOf(one.ms) << " s at " << name(one.stand)
                  << ", events " << one.firstSeq << " to " << one.lastSeq << ".\n";
}

} // namespace

int pace(const PaceOptions& options) {
    const auto log = readLog(options.log);
    if (!log) return complain(log.error());
    const auto text = readFile(options.airframe, std::size_t{2} << 20);
    if (!text) return complain(text.error());
    const auto airframe = airframe::read(*text);
    if (!airframe) return complain(airframe.error());
    if (const auto state = round::fold(*airframe, log->events); !state) return complain(state.error());
    if (options.replay > 0) replay(log->events, options.replay);
    const round::Pace its = round::paceOf(*airframe, log->events);
    if (options.json)
        std::cout << toJson(its) << '\n';
    else
        print(its, *airframe);
    return Exit::done;
}

} // namespace ambit::cli
