// How long a plan takes, how sure it is, and how both grow with the airframe; and the solver on published
// problems.
#include "bench.hpp"

#include "airframe/read.hpp"
#include "base/files.hpp"
#include "sop/solve.hpp"
#include "sop/tsplib.hpp"
#include "walk/plan.hpp"

#include <array>
#include <random>

namespace ambit::bench {

namespace {

using namespace walk;

constexpr const char* walkId = "daily";

/// At every step of the plan the next stand turns out blocked, the light goes, or a zone further on is wanted
/// first.
enum class Differs { blocked, light, zone };
std::vector<double> replanned(const airframe::Airframe& airframe, const Plan& plan, Differs how) {
    std::vector<double> times;
    Situation now = startOf(airframe);
    for (std::size_t s = 0; s < plan.steps.size(); ++s) {
        const std::vector<Step> known(plan.steps.begin() + static_cast<std::ptrdiff_t>(s), plan.steps.end());
        const auto next = std::find_if(known.begin(), known.end(),
                                       [](const Step& step) { return std::holds_alternative<Go>(step); });
        Situation then = now;
        const auto* last = std::get_if<Settle>(&known.back());
        if (how == Differs::blocked && next != known.end()) then.blocked.insert(std::get<Go>(*next).stand);
        if (how == Differs::light) then.lightGoes = true;
        if (how == Differs::zone && last != nullptr) then.firstZone = airframe.point(last->point)->zone;
        QElapsedTimer timer;
        timer.start();
        if (!keepingTo(known, airframe, walkId, then)) return {};
        times.push_back(milliseconds(timer));
        follow(now, {plan.steps[s]});
    }
    return times;
}

bool demo(const char* name) {
    const auto airframe =
        airframe::readFrom((demoFolder() + QStringLiteral("/%1/airframe.json").arg(name)).toStdString());
    if (!airframe) return false;
    std::vector<double> times;
    Plan plan;
    for (int run = 0; run < 9; ++run) {
        QElapsedTimer timer;
        timer.start();
        auto made = makePlan(*airframe, walkId, startOf(*airframe));
        times.push_back(milliseconds(timer));
        if (!made) return false;
        plan = std::move(*made);
    }
    const auto listed = listedPlan(*airframe, walkId, startOf(*airframe));
    if (!listed) return false;
    std::printf("%s: %.0f m, %d climbs, %d turns, %.0f s; as listed %.0f m, %d climbs, %d turns, %.0f s\n",
                name, plan.cost.metres, plan.cost.climbs, plan.cost.turns, plan.cost.seconds,
                listed->cost.metres, listed->cost.climbs, listed->cost.turns, listed->cost.seconds);
    const QByteArray detail = QByteArray::number(qulonglong{plan.states}) + " states";
    bool holds = report("  planned and proven, median", median(times), "ms", 100, detail.constData());
    if (!plan.proven) std::printf("  NOT PROVEN\n");
    const std::pair<Differs, const char*> all[] = {
        {Differs::blocked, "  re-planned, the stand ahead blocked"},
        {Differs::light, "  re-planned, the light goes"},
        {Differs::zone, "  re-planned, the last zone wanted first"}};
    for (const auto& [how, words] : all) {
        const auto again = replanned(*airframe, plan, how);
        if (again.empty()) return false;
        const QByteArray usual = "p50 " + QByteArray::number(median(again), 'f', 2);
        holds = report(words, quantile(again, 1), "ms", 16, usual.constData()) && holds;
    }
    return holds && plan.proven;
}

/// A long body with wings, stands all round it, five points a stand, one setting with two states; every tenth
/// point comes after another one anywhere, which is harder than an aircraft makes it.
airframe::Airframe generated(int stands, unsigned seed) {
    std::mt19937 random(static_cast<unsigned>(stands) + 1000 * seed);
    const auto number = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    using namespace airframe;
    Airframe made;
    made.id = "generated";
    made.parts.push_back({"body", PartKind::body, {{-1, -9}, {1, -9}, {1, 9}, {-1, 9}}, true, {}});
    made.parts.push_back({"wing", PartKind::wing, {{-8, 0}, {8, 0}, {8, 1.5}, {-8, 1.5}}, true, {}});
    made.zones = {{"all", "All", {}}};
    for (int s = 0; s < stands; ++s) {
        const bool left = s % 2 == 0;
        const double along = -9.5 + 19.0 * s / stands;
        const bool atWing = along > -0.8 && along < 2.3;
        Stand stand{"s" + std::to_string(s), "", {0, along}, 0, Access::ground, 2, {}, {}, {}};
        stand.at.x = (left ? -1 : 1) * (atWing ? 8.6 : 1.5 + number(0, 60) / 10.0);
        if (!atWing && along > -1.2 && along < 2.8) stand.at.x = (left ? -1 : 1) * 9.0;
        if (number(1, 100) <= 12) {
            stand.access = Access::step;
            stand.level = 0.5;
            stand.hands = 1;
        } else if (number(1, 100) <= 20) {
            stand.access = Access::kneel;
        }
        made.stands.push_back(stand);
    }
    Setting rotor{"rotor", "Rotor", {{"a", ""}, {"b", ""}}, "a", {}};
    const std::string turnsAt = made.stands[static_cast<std::size_t>(stands) / 3].id;
    rotor.changes = {{"a", "b", {turnsAt}, 35, "", {"p0"}, {}}, {"b", "a", {turnsAt}, 35, "", {"p0"}, {}}};
    made.settings.push_back(rotor);
    Walk walk{walkId, "Daily", "", {3, 12}, {3, 12}, {}};
    for (int p = 0; p < 5 * stands; ++p) {
        Point point;
        point.id = point.name = "p" + std::to_string(p);
        point.zone = "all";
        point.seconds = number(4, 25);
        const int stand = p / 5;
        point.stands = {"s" + std::to_string(stand)};
        if (stand + 2 < stands && number(1, 100) <= 10)
            point.stands.push_back("s" + std::to_string(stand + 2));
        if (p > 0 && number(1, 100) <= 12) point.when["rotor"] = number(0, 1) == 0 ? "a" : "b";
        if (p > 0 && number(1, 100) <= 10) point.after.push_back("p" + std::to_string(number(0, p - 1)));
        made.points.push_back(point);
        walk.points.push_back(point.id);
    }
    made.walks.push_back(walk);
    return made;
}

struct Grown {
    double ms = 0;
    double gap = 0; ///< %
};

std::optional<Grown> grown(int stands, unsigned seed) {
    const auto airframe = generated(stands, seed);
    QElapsedTimer timer;
    timer.start();
    const auto plan = makePlan(airframe, walkId, startOf(airframe));
    const double taken = milliseconds(timer);
    if (!plan) return std::nullopt;
    double settling = 0;
    for (const auto& point : airframe.points)
        settling += point.seconds;
    const Grown made{taken, 100 * (plan->cost.weighs / plan->bound - 1)};
    std::printf(
        "  %3d stands %4zu points: %7.0f ms, gap %5.2f %% (%5.1f %% of all but settling), %llu states\n",
        stands, airframe.points.size(), made.ms, made.gap,
        100 * (plan->cost.weighs - plan->bound) / (plan->cost.weighs - settling),
        static_cast<unsigned long long>(plan->states));
    return made;
}

bool growth() {
    std::printf("generated airframes: time and gap by stands (five points each)\n");
    for (const int stands : {10, 20, 30, 40, 50, 70, 80, 90, 100})
        if (!grown(stands, 0)) return false;
    std::printf("generated airframes of 60 stands\n");
    std::vector<double> times;
    std::vector<double> gaps;
    for (unsigned seed = 0; seed < 10; ++seed) {
        const auto made = grown(60, seed);
        if (!made) return false;
        times.push_back(made->ms);
        gaps.push_back(made->gap);
    }
    const QByteArray usual = "p50 " + QByteArray::number(median(gaps), 'f', 2);
    const QByteArray usually = "p50 " + QByteArray::number(median(times), 'f', 0);
    const bool near =
        report("  60 stands, 300 points: worst gap", quantile(gaps, 1), "%", 2, usual.constData());
    return report("  60 stands, 300 points: worst time", quantile(times, 1), "ms", 1000,
                  usually.constData()) &&
           near;
}

/// What the public methods reach on such a machine (2 cores, single runs, plus or minus a third): the
/// project's notes on figures; empty: not measured.
struct Rival {
    const char* instance;
    const char* linKernighan; ///< LKH-3, one run, at most 30 s
    const char* exact;        ///< a public branch and bound, one thread, at most 30 s
    const char* beam;         ///< iterative beam search, 12 s
};
constexpr std::array rivals{
    Rival{"ESC12", "0.01 s", "proven 0.004 s", "proven 0.05 s"},
    Rival{"ESC25", "0.03 s", "proven 0.03 s", "1.9 s"},
    Rival{"ESC47", "1291", "proven 0.3 s", "1452"},
    Rival{"ESC78", "2.2 s", "18290", "19325"},
    Rival{"ry48p.1", "0.04 s", "19523", "16872"},
    Rival{"ft53.1", "0.1 s", "", ""},
    Rival{"ft53.4", "0.06 s", "14427", "14427"},
    Rival{"kro124p.1", "0.55 s", "", ""},
};

} // namespace

bool plan() {
    bool holds = demo("helicopter");
    holds = demo("aeroplane") && holds;
    return growth() && holds;
}

bool published(double seconds) {
    const QDir folder(demoFolder() + QStringLiteral("/../tests/reference/sop"));
    bool holds = true;
    std::printf("Theirs: the time to the best known walk, or the cost reached.\n");
    std::printf("%-10s %9s %9s %9s %7s %7s   %-8s %-15s %-13s\n", "instance", "published", "cost", "bound",
                "proven", "s", "LKH-3", "exact", "beam");
    const auto csv = readFile(folder.filePath(QStringLiteral("optima.csv")).toStdString());
    if (!csv) return false;
    const auto lines = QString::fromStdString(*csv).split('\n', Qt::SkipEmptyParts);
    for (const QString& line : lines.mid(1)) {
        const auto fields = line.split(',');
        const auto text = readFile(folder.filePath(fields[0] + QStringLiteral(".sop")).toStdString());
        if (!text) return false;
        const auto problem = sop::readTsplib(*text);
        QElapsedTimer timer;
        timer.start();
        sop::Work work(sop::Work::endless, [&] { return milliseconds(timer) >= seconds * 1000; });
        const auto solution = problem ? sop::solve(*problem, work) : tl::unexpected(problem.error());
        if (!solution) return false;
        const double best = fields[2].trimmed().toDouble();
        const auto* rival = std::find_if(rivals.begin(), rivals.end(), [&](const Rival& one) {
            return fields[0] == QLatin1String(one.instance);
        });
        const Rival theirs = rival == rivals.end() ? Rival{"", "", "", ""} : *rival;
        std::printf("%-10s %9.0f %9lld %9lld %7s %7.2f   %-8s %-15s %-13s\n", qPrintable(fields[0]), best,
                    static_cast<long long>(solution->cost), static_cast<long long>(solution->bound),
                    solution->proven ? "yes" : "no", milliseconds(timer) / 1000, theirs.linKernighan,
                    theirs.exact, theirs.beam);
        std::fflush(stdout);
        holds = holds && static_cast<double>(solution->cost) <= best * 1.01;
    }
    return holds;
}

} // namespace ambit::bench
