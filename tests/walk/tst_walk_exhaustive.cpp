// The plan against trying everything one can do, step by step, by the airframe's own words: nothing here
// knows that settling is done on arrival, that a way is made of legs, or what a combination of settings is.
#include "random_airframe.hpp"
#include "walk/legs.hpp"
#include "walk/plan.hpp"

#include <QTest>
#include <map>
#include <queue>

using namespace ambit;

namespace {

struct State {
    std::string stand; ///< empty: the start
    airframe::Settings settings;
    std::set<std::string> settled;
    friend auto operator<=>(const State&, const State&) = default;
};

class Exhaustive {
public:
    explicit Exhaustive(const airframe::Airframe& described)
        : airframe(described), walk(described.walks.front()), legs(described, walk, {}) {}

    /// The least that settling everything can weigh, ms; -1: it can't be done.
    std::int64_t best() {
        offer({{}, airframe.initialSettings(), {}}, 0);
        std::int64_t least = -1;
        while (!queue.empty()) {
            const auto [cost, state] = queue.top();
            queue.pop();
            if (known.at(state) < cost) continue;
            if (least >= 0 && cost >= least) break;
            if (state.settled.size() == walk.points.size()) {
                const std::int64_t whole = cost + legs.home(number(state.stand)).ms;
                if (least < 0 || whole < least) least = whole;
                continue;
            }
            go(state, cost);
            set(state, cost);
            settle(state, cost);
        }
        return least;
    }

private:
    void offer(State state, std::int64_t cost) {
        const auto at = known.try_emplace(state, cost + 1).first;
        if (at->second <= cost) return;
        at->second = cost;
        queue.emplace(cost, std::move(state));
    }
    [[nodiscard]] std::size_t number(const std::string& stand) const {
        for (std::size_t s = 0; s < airframe.stands.size(); ++s)
            if (airframe.stands[s].id == stand) return s;
        return legs.start();
    }
    void go(const State& state, std::int64_t cost) {
        for (const auto& stand : airframe.stands) {
            const auto& leg = legs.leg(number(state.stand), number(stand.id));
            if (!leg || stand.id == state.stand) continue;
            State next = state;
            next.stand = stand.id;
            offer(std::move(next), cost + leg->weighsMs);
        }
    }
    void set(const State& state, std::int64_t cost) {
        for (const auto& setting : airframe.settings) {
            for (const auto& change : setting.changes) {
                const auto& stands = change.stands;
                if (change.from != state.settings.at(setting.id) ||
                    std::find(stands.begin(), stands.end(), state.stand) == stands.end() ||
                    !std::all_of(change.needs.begin(), change.needs.end(),
                                 [&](const std::string& need) { return state.settled.contains(need); }))
                    continue;
                State next = state;
                next.settings[setting.id] = change.to;
                offer(std::move(next), cost + walk::milliseconds(change.seconds) +
                                           walk::milliseconds(airframe.costs.turnWeightSeconds));
            }
        }
    }
    void settle(const State& state, std::int64_t cost) {
        for (const auto& point : airframe.points) {
            const auto before = airframe.before(point);
            if (state.settled.contains(point.id) ||
                std::find(point.stands.begin(), point.stands.end(), state.stand) == point.stands.end() ||
                !airframe::holds(point.when, state.settings) ||
                !std::all_of(before.begin(), before.end(),
                             [&](const std::string& earlier) { return state.settled.contains(earlier); }))
                continue;
            State next = state;
            next.settled.insert(point.id);
            offer(std::move(next), cost + walk::milliseconds(point.seconds));
        }
    }

    const airframe::Airframe& airframe;
    const airframe::Walk& walk;
    walk::Legs legs;
    std::map<State, std::int64_t> known;
    using Entry = std::pair<std::int64_t, State>;
    std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue;
};

} // namespace

class TestWalkExhaustive : public QObject {
    Q_OBJECT

private slots:
    void noPlanIsBetter() {
        std::mt19937 random(5);
        for (int i = 0; i < 1000; ++i) {
            const auto airframe = test::randomAirframe(random, test::Size::small);
            const auto plan = walk::makePlan(airframe, "all", walk::startOf(airframe));
            QVERIFY(plan);
            const std::int64_t best = Exhaustive(airframe).best();
            QVERIFY(best >= 0);
            QVERIFY2(
                walk::milliseconds(plan->cost.weighs) == best,
                qPrintable(
                    QString("airframe %1: %2 ms for %3").arg(i).arg(plan->cost.weighs * 1000).arg(best)));
            QVERIFY(plan->proven);
            QCOMPARE(walk::milliseconds(plan->bound), best);
        }
    }
};

QTEST_APPLESS_MAIN(TestWalkExhaustive)
#include "tst_walk_exhaustive.moc"
