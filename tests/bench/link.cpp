// A walk that is followed: how soon an event is seen elsewhere, by one, by fifty; how many walks one device
// follows; and that the walk takes no notice.
#include "base/canonical.hpp"
#include "bench.hpp"
#include "link/tls.hpp"
#include "link_sides.hpp"
#include "watch/frames.hpp"

#include <QDateTime>
#include <nlohmann/json.hpp>
#include <random>
#include <thread>

namespace ambit::bench {

namespace {

constexpr int many = 50;
constexpr int quickMs = 5; ///< from one event to the next: faster than any person
constexpr int calmMs = 50; ///< where fifty devices share this machine's processors
constexpr int patience = 60000;

bool said(const Error& error) {
    std::fprintf(stderr, "ambit-bench: %s\n", toText(error).c_str());
    return false;
}

/// On a thread of its own, while this one shows what comes: so many events, at a pace. Nothing: it failed.
template<class Next> std::optional<std::vector<Moment>> walk(std::size_t events, int paceMs, Next next) {
    std::vector<Moment> list;
    std::atomic<bool> isDone{false};
    std::optional<Error> error;
    std::thread walking([&] {
        auto at = std::chrono::steady_clock::now();
        for (std::size_t i = 0; i < events && !error; ++i) {
            std::this_thread::sleep_until(at += std::chrono::milliseconds(paceMs));
            if (auto moment = next(i))
                list.push_back(std::move(*moment));
            else
                error = moment.error();
        }
        isDone = true;
    });
    (void)spinUntil([&] { return isDone.load(); }, 100 * patience);
    walking.join();
    if (!error) return list;
    (void)said(*error);
    return std::nullopt;
}

/// One round, followed to its end by so many.
std::optional<std::vector<Moment>> walkRound(Walker& walker, int paceMs, Arrivals& arrivals, int watchers) {
    const std::size_t events = walker.eventsOfRound();
    const std::size_t before = arrivals.count();
    auto moments = walk(events, paceMs, [&](std::size_t) { return walker.step(); });
    const auto all = [&] { return arrivals.count() >= before + events * static_cast<std::size_t>(watchers); };
    if (!moments || spinUntil(all, patience)) return moments;
    std::fprintf(stderr, "ambit-bench: %zu events came of %zu\n", arrivals.count() - before,
                 events * static_cast<std::size_t>(watchers));
    return std::nullopt;
}

/// A walker and so many who watch it, all of them in.
struct Followed {
    std::unique_ptr<Walker> walker;
    Arrivals arrivals;
    std::vector<std::unique_ptr<Watcher>> watchers;

    [[nodiscard]] bool open(const DemoRound& demo, const QString& work, int number, int count, Told where) {
        const QString folder = work + QStringLiteral("/followed-%1").arg(number);
        QDir().mkpath(folder);
        auto walks = Walker::open(demo, folder, number);
        if (!walks) return said(walks.error());
        walker = std::move(*walks);
        if (count == 0) return true;
        const auto known = peers(count);
        if (!known) return said(known.error());
        if (auto shared = walker->share(*known); !shared) return said(shared.error());
        for (int i = 0; i < count; ++i) {
            auto one = Watcher::open(folder, i, arrivals, where);
            if (!one) return said(one.error());
            (*one)->follow(walker->address());
            watchers.push_back(std::move(*one));
        }
        const auto allIn = [&] {
            return std::all_of(watchers.begin(), watchers.end(), [](auto& one) { return one->in() > 0; });
        };
        return spinUntil(allIn, patience) || said({ErrorCode::notFound, "Not all came in.", "", ""});
    }
};

/// An event on disk at one device until it is on disk and told of at the other.
bool shown(const DemoRound& demo, const QString& work) {
    Followed one;
    if (!one.open(demo, work, 1, 1, Told::mainThread)) return false;
    auto key = Watcher::key(1000);
    if (!key) return said(key.error());
    const auto tls = link::tlsFor(*key, {QDateTime::currentMSecsSinceEpoch()});
    if (!tls) return said(tls.error());
    Echo echo;
    if (!echo.open(*tls)) return false;
    std::vector<std::string> texts;
    const std::string anyId(32, '0');
    for (const round::Event& event : demo.events)
        texts.push_back(watch::toText(watch::Logged{anyId, canonicalJson(toJson(event)), {}}));
    if (!walkRound(*one.walker, quickMs, one.arrivals, 1)) return false; // the airframe and the photos, once
    // In turns, so that both see the same of whatever else goes on here: an event, and half the pace later a
    // text of its size.
    std::size_t echoes = 0;
    const auto next = [&](std::size_t i) {
        auto moment = one.walker->step();
        std::this_thread::sleep_for(std::chrono::milliseconds(quickMs));
        echo.send(texts[i % texts.size()]);
        ++echoes;
        return moment;
    };
    const std::size_t before = one.arrivals.count(), events = 9 * demo.events.size();
    const auto committed = walk(events, 2 * quickMs, next);
    if (!committed || !spinUntil([&] { return one.arrivals.count() == before + events; }, patience))
        return false;
    const auto bare = echo.roundTrips(echoes);
    const auto ours = one.arrivals.since(*committed, 1);
    if (bare.size() != events || ours.size() != events) return false;
    char detail[200];
    std::snprintf(detail, sizeof detail,
                  "p99 of %zu events: %.2f ms of %.2f; medians %.2f ms of %.2f, worst %.1f of %.1f",
                  ours.size(), quantile(ours, 0.99), quantile(bare, 0.99), median(ours), median(bare),
                  quantile(ours, 1), quantile(bare, 1));
    return report("event shown / WebSocket echo", quantile(ours, 0.99) / quantile(bare, 0.99), "x", 2,
                  detail);
}

/// Fifty watch one; and what committing takes without a link, with one watcher, with fifty.
bool followedByMany(const DemoRound& demo, const QString& work) {
    Followed alone, single, all;
    if (!alone.open(demo, work, 2, 0, Told::itsOwn) || !single.open(demo, work, 3, 1, Told::itsOwn))
        return false;
    if (!walkRound(*alone.walker, quickMs, alone.arrivals, 0) ||
        !walkRound(*single.walker, quickMs, single.arrivals, 1))
        return false;
    const double before = residentMb();
    if (!all.open(demo, work, 4, many, Told::itsOwn)) return false;
    if (!walkRound(*all.walker, calmMs, all.arrivals, many)) return false;
    const double grown = (residentMb() - before) / many;

    struct Arm {
        Followed* its;
        int watchers;
        std::vector<double> acts, told;
    };
    std::vector<Arm> arms{{&alone, 0, {}, {}}, {&single, 1, {}, {}}, {&all, many, {}, {}}};
    std::vector<Moment> committed;
    // Event by event, in an order that chance makes of all of them: round by round, committing took half as
    // long with fifty watching as with none, which the link can't be the cause of; so what went before
    // matters, and must be as often the same for each.
    constexpr std::size_t rounds = 3;
    const std::size_t events = rounds * demo.events.size();
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < arms.size() * events; ++i)
        order.push_back(i % arms.size());
    std::shuffle(order.begin(), order.end(), std::mt19937(26));
    const auto next = [&](std::size_t i) {
        Arm& arm = arms[order[i]];
        auto moment = arm.its->walker->step();
        if (moment && moment->seq > 1) {
            arm.acts.push_back(moment->actMs);
            arm.told.push_back(moment->toldMs);
        }
        if (moment && arm.watchers == many) committed.push_back(*moment);
        return moment;
    };
    const std::size_t ones = single.arrivals.count() + events;
    const std::size_t alls = all.arrivals.count() + events * many;
    const double walkers = threadsMs("walker's link"), watchers = threadsMs("watcher's link");
    const auto came = [&] { return single.arrivals.count() >= ones && all.arrivals.count() >= alls; };
    if (!walk(order.size(), calmMs, next) || !spinUntil(came, patience)) return false;
    const double spent = threadsMs("walker's link") - walkers;
    const double spentThere = threadsMs("watcher's link") - watchers;
    const double without = median(arms[0].acts);
    bool holds = true;
    for (const Arm& arm : arms) {
        if (arm.watchers == 0) continue;
        char what[64], detail[200];
        std::snprintf(what, sizeof what, "commit with %d watching / none", arm.watchers);
        std::snprintf(detail, sizeof detail, "medians of %zu acts: %.3f ms of %.3f; p99 %.2f of %.2f",
                      arm.acts.size(), median(arm.acts), without, quantile(arm.acts, 0.99),
                      quantile(arms[0].acts, 0.99));
        holds = report(what, median(arm.acts) / without, "x", 1.1, detail) && holds;
        // The link's thread is woken by it, and may take the walk's processor at once.
        std::printf("%-34s %8.2f x   medians %.3f ms of %.3f; p99 %.2f of %.2f\n",
                    "the same, and the link told", median(arm.told) / median(arms[0].told), median(arm.told),
                    median(arms[0].told), quantile(arm.told, 0.99), quantile(arms[0].told, 0.99));
    }
    const auto last = all.arrivals.since(committed, many);
    if (last.size() != committed.size()) return false;
    const double each = 1000.0 / ((many + 1) * static_cast<double>(events)); // the single one's, too
    std::printf("%-34s %8.2f ms  p99 of %zu events, one each %d ms; median %.2f ms, worst %.1f\n",
                "until the last of 50 has it", quantile(last, 0.99), last.size(), calmMs, median(last),
                quantile(last, 1));
    std::printf("%-34s %8.0f us  of the walker's link, an event and watcher; of a watcher's %.0f us\n",
                "processor time", spent * each, spentThere * each);
    std::printf("%-34s %8.2f MB  resident, both sides and the watcher's archive\n", "memory a watcher",
                grown);
    std::fflush(stdout);
    return holds;
}

/// One device follows fifty walks.
bool followingMany(const DemoRound& demo, const QString& work) {
    const QString folder = work + QStringLiteral("/following");
    QDir().mkpath(folder);
    const auto known = peers(1);
    if (!known) return said(known.error());
    const double before = residentMb();
    std::vector<std::unique_ptr<Walker>> walkers;
    for (int i = 0; i < many; ++i) {
        auto one = Walker::open(demo, folder, i);
        if (!one) return said(one.error());
        if (auto shared = (*one)->share(*known); !shared) return said(shared.error());
        walkers.push_back(std::move(*one));
    }
    const double walking = residentMb();
    Arrivals arrivals;
    auto watcher = Watcher::open(folder, 0, arrivals, Told::mainThread);
    if (!watcher) return said(watcher.error());
    for (const auto& one : walkers)
        (*watcher)->follow(one->address());
    if (!spinUntil([&] { return (*watcher)->in() >= many; }, patience)) return false;
    const auto turn = [&](std::size_t events) {
        auto moments = walk(events, quickMs, [&](std::size_t i) { return walkers[i % many]->step(); });
        const bool came = moments && spinUntil([&] { return arrivals.count() >= events; }, patience);
        return came ? moments : std::nullopt;
    };
    if (!turn(std::size_t{4} * many)) return false; // the airframe's description, and each round begun
    arrivals.clear();
    const double spentBefore = threadsMs("watcher's link");
    const auto moments = turn(2000);
    if (!moments) return false;
    const double spent = threadsMs("watcher's link") - spentBefore;
    const auto ours = arrivals.since(*moments, 1);
    if (ours.size() != moments->size()) return false;
    std::printf("%-34s %8.2f ms  p99 of %zu events of 50 walks, one each %d ms; median %.2f ms, worst %.1f\n",
                "shown, of 50 walks followed", quantile(ours, 0.99), ours.size(), quickMs, median(ours),
                quantile(ours, 1));
    std::printf("%-34s %8.0f us  of the watcher's link, an event\n", "processor time",
                spent * 1000 / static_cast<double>(ours.size()));
    std::printf("%-34s %8.2f MB  resident, both sides; beside it %.2f MB for the walker's archive and link\n",
                "memory a walk followed", (residentMb() - walking) / many, (walking - before) / many);
    std::fflush(stdout);
    return true;
}

} // namespace

bool link(const QString& workFolder) {
    const auto demo = DemoRound::walked((demoFolder() + QStringLiteral("/helicopter")).toStdString());
    if (!demo) return said(demo.error());
    std::printf("a round of %zu events; %d processors, of which every device here takes its share\n",
                demo->events.size(), static_cast<int>(std::thread::hardware_concurrency()));
    std::fflush(stdout);
    bool holds = shown(*demo, workFolder);
    holds = followedByMany(*demo, workFolder) && holds;
    return followingMany(*demo, workFolder) && holds;
}

} // namespace ambit::bench
