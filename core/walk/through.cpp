// The judge of plans: takes each step by the airframe's own words and shares nothing with the planner but the
// legs' costs.
#include "walk/legs.hpp"
#include "walk/plan.hpp"

#include <algorithm>

namespace ambit::walk {

namespace {

using airframe::Airframe;

bool contains(const std::vector<std::string>& list, const std::string& id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

class Walker {
public:
    Walker(const Airframe& described, const airframe::Walk& its, Situation from)
        : airframe(described), walk(its), now(std::move(from)), legs(Legs::of(described, its, now.marked)) {
        for (const auto& [setting, state] : airframe.initialSettings())
            now.settings.try_emplace(setting, state);
    }

    /// Empty if the step may be done; it is then done. Else why not.
    std::string take(const Step& step) {
        return std::visit([this](const auto& one) { return take(one); }, step);
    }

    Cost end() {
        const Leg& home = legs->home(here());
        cost.metres += home.metres;
        ms += home.ms;
        cost.seconds = static_cast<double>(ms) / 1000;
        cost.weighs = static_cast<double>(ms + riskMs) / 1000;
        return cost;
    }

private:
    std::string take(const Go& go) {
        const airframe::Stand* stand = airframe.stand(go.stand);
        if (stand == nullptr) return "there is no stand " + go.stand;
        if (now.blocked.contains(go.stand)) return go.stand + " is blocked";
        const auto& leg = legs->leg(here(), static_cast<std::size_t>(stand - airframe.stands.data()));
        if (!leg) return "one can't get to " + go.stand + " from " + now.stand.value_or("the start");
        cost.metres += leg->metres;
        ms += leg->ms;
        riskMs += leg->weighsMs - leg->ms;
        cost.climbs += leg->climb ? 1 : 0;
        now.stand = go.stand;
        return {};
    }

    std::string take(const Set& set) {
        const airframe::Setting* setting = airframe.setting(set.setting);
        if (setting == nullptr) return "there is no setting " + set.setting;
        const std::string& from = now.settings[set.setting];
        const airframe::SettingChange* change = setting->change(from, set.to);
        if (change == nullptr) return set.setting + " doesn't go from " + from + " to " + set.to;
        if (!standsAt(change->stands)) return set.setting + " isn't changed from this stand";
        for (const std::string& need : change->needs) {
            if (walk.has(need, now.night) && !now.soundPoints.contains(need))
                return need + " has to be sound before";
        }
        ms += milliseconds(change->seconds);
        riskMs += milliseconds(airframe.costs.turnWeightSeconds);
        ++cost.turns;
        now.settings[set.setting] = set.to;
        return {};
    }

    std::string take(const Settle& settle) {
        const airframe::Point* point = airframe.point(settle.point);
        if (point == nullptr || !walk.has(settle.point, now.night))
            return settle.point + " isn't a point of this walk";
        if (now.settled.contains(settle.point)) return settle.point + " is settled already";
        if (!standsAt(point->stands)) return settle.point + " isn't settled from this stand";
        if (!airframe::holds(point->when, now.settings)) return settle.point + " needs another setting";
        for (const std::string& earlier : airframe.before(*point)) {
            if (walk.has(earlier, now.night) && !now.settled.contains(earlier))
                return earlier + " comes before " + settle.point;
        }
        ms += milliseconds(point->seconds);
        now.settled.insert(settle.point);
        now.soundPoints.insert(settle.point);
        return {};
    }

    [[nodiscard]] bool standsAt(const std::vector<std::string>& stands) const {
        return now.stand && contains(stands, *now.stand) && !now.blocked.contains(*now.stand);
    }

    [[nodiscard]] std::size_t here() const {
        if (!now.stand) return legs->start();
        return static_cast<std::size_t>(airframe.stand(*now.stand) - airframe.stands.data());
    }

    const Airframe& airframe;
    const airframe::Walk& walk;
    Situation now;
    std::shared_ptr<const Legs> legs;
    Cost cost;
    std::int64_t ms = 0;     ///< in whole milliseconds: sums of them don't depend on their order
    std::int64_t riskMs = 0; ///< what climbs and turns weigh beyond their time
};

} // namespace

Situation startOf(const Airframe& airframe) {
    Situation situation;
    situation.settings = airframe.initialSettings();
    return situation;
}

void follow(Situation& now, const std::vector<Step>& steps) {
    for (const Step& step : steps) {
        if (const auto* go = std::get_if<Go>(&step)) {
            now.stand = go->stand;
        } else if (const auto* set = std::get_if<Set>(&step)) {
            now.settings[set->setting] = set->to;
        } else {
            now.settled.insert(std::get<Settle>(step).point);
            now.soundPoints.insert(std::get<Settle>(step).point);
        }
    }
}

Result<Cost> walkThrough(const Airframe& airframe, const std::string& walkId, const Situation& now,
                         const std::vector<Step>& steps) {
    const airframe::Walk* walk = airframe.walk(walkId);
    if (walk == nullptr) return fail(ErrorCode::notFound, say("The airframe has no such walk."), walkId);
    if (now.stand && airframe.stand(*now.stand) == nullptr)
        return fail(ErrorCode::notFound, say("The airframe has no such stand."), *now.stand);
    Walker walker(airframe, *walk, now);
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const std::string broken = walker.take(steps[i]);
        if (!broken.empty())
            return fail(ErrorCode::refused, say("This step can't be done: %1.", broken),
                        "step " + std::to_string(i + 1));
    }
    return walker.end();
}

} // namespace ambit::walk
