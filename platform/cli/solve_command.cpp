#include "base/files.hpp"
#include "cli/commands.hpp"
#include "cli/talk.hpp"
#include "sop/solve.hpp"
#include "sop/tsplib.hpp"

#include <chrono>
#include <cmath>
#include <iostream>
#include <nlohmann/json.hpp>

namespace ambit::cli {

namespace {

constexpr std::size_t mostBytes = 64U << 20U;

Error atFile(Error error, const std::string& file) {
    error.where = error.where.empty() ? file : file + ", " + error.where;
    return error;
}

} // namespace

int solve(const SolveOptions& options) {
    const auto text = readFile(options.file, mostBytes);
    if (!text) return complain(text.error());
    const auto problem = sop::readTsplib(*text);
    if (!problem) return complain(atFile(problem.error(), options.file));

    using Clock = std::chrono::steady_clock;
    const auto start = Clock::now();
    const auto seconds = [&] { return std::chrono::duration<double>(Clock::now() - start).count(); };
    sop::Work work(sop::Work::endless, [&] { return seconds() >= options.seconds; });
    const auto solution = sop::solve(*problem, work);
    const double taken = std::round(seconds() * 1000) / 1000;
    if (!solution) return complain(atFile(solution.error(), options.file));

    const auto order = sop::tsplibOrder(solution->walk);
    if (options.json) {
        std::cout << Json{{"cost", solution->cost}, {"bound", solution->bound}, {"proven", solution->proven},
                          {"order", order},         {"seconds", taken},         {"states", solution->states}}
                         .dump()
                  << '\n';
        return Exit::done;
    }
    std::cout << "cost " << solution->cost << "\nbound " << solution->bound << '\n'
              << (solution->proven ? "proven: there is none better"
                                   : "not proven: there may be one better by up to ");
    if (!solution->proven) std::cout << solution->cost - solution->bound;
    std::cout << "\norder";
    for (const auto node : order)
        std::cout << ' ' << node;
    std::cout << "\nseconds " << taken << '\n';
    return Exit::done;
}

} // namespace ambit::cli
