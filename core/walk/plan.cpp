#include "sop/solve.hpp"
#include "walk/problem.hpp"

#include <algorithm>

namespace ambit::walk {

namespace {

using airframe::Airframe;
using PointIds = std::set<std::string>;

// Steps of work, about a nanosecond each.
constexpr std::uint64_t planWork = 300'000'000;
constexpr std::uint64_t stageWork = planWork / 8; // of a plan made of several
constexpr std::uint64_t keepWork = 3'000'000;
constexpr double habitWorth = 1.05; ///< what keeping to the known order may cost, times the best

std::vector<std::string> pointsOf(const std::vector<Step>& steps) {
    std::vector<std::string> points;
    for (const Step& step : steps)
        if (const auto* settle = std::get_if<Settle>(&step)) points.push_back(settle->point);
    return points;
}

double seconds(std::int64_t ms) {
    return static_cast<double>(ms) / 1000;
}

/// What of the walk is left.
std::vector<const airframe::Point*> left(const Airframe& airframe, const airframe::Walk& walk,
                                         const Situation& now) {
    std::vector<const airframe::Point*> points;
    for (const std::string& id : airframe.pointsOf(walk, now.night))
        if (const auto* point = airframe.point(id); point != nullptr && !now.settled.contains(id))
            points.push_back(point);
    return points;
}

/// The point and all unsettled that comes before it; what its settings need, too, if they are to be changed.
void addWithBefore(PointIds& chosen, const Airframe& airframe, const airframe::Walk& walk,
                   const Situation& now, const airframe::Point& point, bool withNeeds) {
    if (!walk.has(point.id, now.night) || now.settled.contains(point.id) || !chosen.insert(point.id).second)
        return;
    for (const std::string& earlier : airframe.before(point))
        if (const auto* its = airframe.point(earlier))
            addWithBefore(chosen, airframe, walk, now, *its, withNeeds);
    for (const auto& [id, state] : point.when) {
        const airframe::Setting* setting = airframe.setting(id);
        const auto told = now.settings.find(id);
        if (!withNeeds || setting == nullptr) continue;
        if ((told == now.settings.end() ? setting->initial : told->second) == state) continue;
        for (const auto& change : setting->changes)
            for (const std::string& need : change.needs)
                if (const auto* its = airframe.point(need))
                    addWithBefore(chosen, airframe, walk, now, *its, withNeeds);
    }
}

/// What comes first where some points are wanted first: they and what they wait for; if some of them can be
/// had with the settings as they are, only those.
PointIds wantedFirst(const Airframe& airframe, const airframe::Walk& walk, const Situation& now,
                     const std::function<bool(const airframe::Point&)>& wanted) {
    PointIds asSet;
    PointIds all;
    airframe::Settings settings = airframe.initialSettings();
    for (const auto& [id, state] : now.settings)
        settings[id] = state;
    for (const auto* point : left(airframe, walk, now)) {
        if (!wanted(*point)) continue;
        addWithBefore(all, airframe, walk, now, *point, true);
        PointIds its;
        addWithBefore(its, airframe, walk, now, *point, false);
        const bool holds = std::all_of(its.begin(), its.end(), [&](const std::string& id) {
            return airframe::holds(airframe.point(id)->when, settings);
        });
        if (holds) asSet.insert(its.begin(), its.end());
    }
    return asSet.empty() ? all : asSet;
}

/// One plan after another, each from where the last one ends.
class Stages {
public:
    Stages(const Airframe& described, const airframe::Walk& its, Situation from, std::uint64_t most)
        : now(std::move(from)), airframe(described), walk(its), work(most) {}

    Result<void> add(const PointIds& points) {
        auto model = Model::of(airframe, walk.id, now, {},
                               [&](const airframe::Point& point) { return points.contains(point.id); });
        if (!model) return tl::unexpected(model.error());
        take(*model);
        return {};
    }

    /// Point after point, where all together are too much.
    Result<void> addOneByOne() {
        PointIds tried;
        for (const std::string& id : airframe.pointsOf(walk, now.night)) {
            const auto* point = airframe.point(id);
            if (point == nullptr || now.settled.contains(id) || !tried.insert(id).second) continue;
            PointIds stage;
            addWithBefore(stage, airframe, walk, now, *point, true);
            if (auto added = add(stage); !added) return added;
        }
        return {};
    }

    Situation now;
    std::vector<Step> steps;

private:
    void take(const Model& model) {
        if (model.tasks().empty()) return;
        sop::Problem problem = model.problem();
        std::fill(problem.home.begin(), problem.home.end(), 0); // it goes on from there
        sop::Work its(work);
        const auto solution = sop::solve(problem, its, model.walkOf(model.listed()));
        const auto more = solution ? model.steps(solution->walk) : model.listed();
        follow(now, more);
        steps.insert(steps.end(), more.begin(), more.end());
    }

    const Airframe& airframe;
    const airframe::Walk& walk;
    std::uint64_t work; ///< for each
};

Result<Plan> priced(const Airframe& airframe, const std::string& walkId, const Situation& now,
                    const Model& model, std::vector<Step> steps) {
    auto cost = walkThrough(airframe, walkId, now, steps);
    if (!cost) return tl::unexpected(cost.error());
    Plan plan{std::move(steps), *cost, model.unreachable(), 0, false, 0};
    plan.bound = std::min(seconds(model.settlingMs()), plan.cost.weighs);
    return plan;
}

/// What can't all be done in one walk after all (a setting can't be turned back before what still needs it):
/// the listed walk does what it can.
Result<Plan> asFarAsItGoes(const Airframe& airframe, const std::string& walkId, const Situation& now,
                           const Model& model) {
    auto plan = priced(airframe, walkId, now, model, model.listed());
    if (!plan) return plan;
    const auto points = pointsOf(plan->steps);
    for (const Task& task : model.tasks())
        if (std::find(points.begin(), points.end(), task.point->id) == points.end())
            plan->unreachable.emplace_back(task.point->id, "No order was found that comes to it.");
    return plan;
}

Result<Plan> best(const Airframe& airframe, const std::string& walkId, const Situation& now,
                  const Model& model, std::uint64_t most, const std::vector<Step>& known = {}) {
    const auto& problem = model.problem();
    auto first = model.walkOf(known.empty() ? model.listed() : known);
    sop::Work work(most);
    const auto solution = sop::solve(problem, work, first);
    if (!solution) return asFarAsItGoes(airframe, walkId, now, model);
    auto plan = priced(airframe, walkId, now, model, model.steps(solution->walk));
    if (!plan) return plan;
    plan->bound = std::min(seconds(solution->bound + model.settlingMs()), plan->cost.weighs);
    plan->proven = solution->proven;
    plan->states = solution->states;
    return plan;
}

/// The known steps without what is settled by now.
std::vector<Step> stillKnown(const std::vector<Step>& known, const Situation& now) {
    std::vector<Step> rest;
    for (const Step& step : known)
        if (const auto* settle = std::get_if<Settle>(&step);
            settle == nullptr || !now.settled.contains(settle->point))
            rest.push_back(step);
    return rest;
}

/// Zone or climbs first, then the rest, in the known order if there is one.
Result<Plan> inStages(const Airframe& airframe, const airframe::Walk& walk, const Situation& now,
                      const std::vector<Step>& known = {}) {
    Stages stages(airframe, walk, now, known.empty() ? stageWork : keepWork / 2);
    if (now.firstZone) {
        const auto zone = wantedFirst(airframe, walk, stages.now, [&](const airframe::Point& point) {
            return point.zone == *now.firstZone;
        });
        if (auto added = stages.add(zone); !added) return tl::unexpected(added.error());
    }
    if (now.lightGoes) {
        const auto climbs = wantedFirst(airframe, walk, stages.now, [&](const airframe::Point& point) {
            return std::all_of(point.stands.begin(), point.stands.end(), [&](const std::string& id) {
                const auto* stand = airframe.stand(id);
                return stand != nullptr && stand->raised();
            });
        });
        if (auto added = stages.add(climbs); !added) return tl::unexpected(added.error());
    }
    Situation then = stages.now;
    then.firstZone.reset();
    then.lightGoes = false;
    auto rest = known.empty() ? makePlan(airframe, walk.id, then)
                              : keepingTo(stillKnown(known, then), airframe, walk.id, then);
    if (!rest) return rest;
    stages.steps.insert(stages.steps.end(), rest->steps.begin(), rest->steps.end());
    const auto model = Model::of(airframe, walk.id, now);
    if (!model) return tl::unexpected(model.error());
    auto plan = priced(airframe, walk.id, now, *model, std::move(stages.steps));
    if (plan) plan->unreachable = rest->unreachable;
    return plan;
}

Result<Plan> oneByOne(const Airframe& airframe, const airframe::Walk& walk, const Situation& now) {
    Stages stages(airframe, walk, now, stageWork);
    if (auto added = stages.addOneByOne(); !added) return tl::unexpected(added.error());
    auto cost = walkThrough(airframe, walk.id, now, stages.steps);
    if (!cost) return tl::unexpected(cost.error());
    Plan plan{std::move(stages.steps), *cost, {}, 0, false, 0};
    for (const auto* point : left(airframe, walk, stages.now))
        plan.unreachable.emplace_back(point->id, "No order was found that comes to it.");
    return plan;
}

/// All that can be settled from here?
bool settlesAll(const std::vector<Step>& steps, const Model& model) {
    return pointsOf(steps).size() == model.tasks().size();
}

} // namespace

Result<Plan> makePlan(const Airframe& airframe, const std::string& walkId, const Situation& now) {
    const auto model = Model::of(airframe, walkId, now);
    const airframe::Walk* walk = airframe.walk(walkId);
    if (!model && model.error().code == ErrorCode::unsupported) return oneByOne(airframe, *walk, now);
    if (!model) return tl::unexpected(model.error());
    if (now.firstZone || now.lightGoes) return inStages(airframe, *walk, now);
    return best(airframe, walkId, now, *model, planWork);
}

Result<Plan> listedPlan(const Airframe& airframe, const std::string& walkId, const Situation& now) {
    const auto model = Model::of(airframe, walkId, now);
    if (!model && model.error().code == ErrorCode::unsupported)
        return oneByOne(airframe, *airframe.walk(walkId), now);
    if (!model) return tl::unexpected(model.error());
    return priced(airframe, walkId, now, *model, model->listed());
}

Result<Plan> keepingTo(const std::vector<Step>& known, const Airframe& airframe, const std::string& walkId,
                       const Situation& now) {
    const auto* walk = airframe.walk(walkId);
    const auto model = Model::of(airframe, walkId, now, pointsOf(known));
    if (!model && model.error().code == ErrorCode::unsupported) return makePlan(airframe, walkId, now);
    if (!model) return tl::unexpected(model.error());
    if (now.firstZone || now.lightGoes) return inStages(airframe, *walk, now, known);
    auto plan = best(airframe, walkId, now, *model, keepWork, known);
    if (!plan) return plan;
    if (plan->unreachable.size() > model->unreachable().size()) { // as far as the list goes, then
        const auto asListed = Model::of(airframe, walkId, now);
        if (!asListed) return tl::unexpected(asListed.error());
        return best(airframe, walkId, now, *asListed, keepWork);
    }
    // Against what the best can be at least: what was found in a frame's time need not be it.
    const double most = std::max(plan->cost.weighs, plan->bound * habitWorth);
    const auto asKnown = walkThrough(airframe, walkId, now, known);
    if (asKnown && settlesAll(known, *model) && asKnown->weighs <= most) {
        plan->steps = known;
        plan->cost = *asKnown;
        plan->proven = plan->bound >= plan->cost.weighs;
        return plan;
    }
    sop::Work work(keepWork);
    const auto near = sop::nearest(model->problem(), model->walkOf(plan->steps),
                                   milliseconds(most) - model->settlingMs(), work);
    auto kept = priced(airframe, walkId, now, *model, model->steps(near));
    if (!kept || kept->cost.weighs > most) return plan;
    kept->bound = plan->bound;
    kept->proven = kept->bound >= kept->cost.weighs;
    kept->states = plan->states;
    return kept;
}

} // namespace ambit::walk
