// What of the plan is still to do. The plan stays as it was made; what is done is seen in the state.
#include "round/state.hpp"

#include <algorithm>

namespace ambit::round {

namespace {

using airframe::Airframe;

bool contains(const std::vector<std::string>& list, const std::string& id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

/// Follows the plan from where the person is and leaves out what is done already.
class Remainder {
public:
    Remainder(const State& state, const Airframe& described)
        : airframe(described), stand(state.stand), settings(state.settings) {}

    void take(const walk::Step& step) {
        if (const auto* go = std::get_if<walk::Go>(&step)) stands.push_back(go->stand);
        if (const auto* set = std::get_if<walk::Set>(&step)) turns.push_back({*set, stands.size()});
    }

    void settle(const walk::Settle& step) {
        turnAll();
        goTo(stands.size());
        left.emplace_back(step);
        if (!stands.empty()) stands.erase(stands.begin(), stands.end() - 1);
    }

    std::vector<walk::Step> left;

private:
    struct Turn {
        walk::Set set;
        std::size_t after; ///< how many of `stands` the plan had reached
    };

    /// Emits the changes of settings that still have to be made.
    void turnAll() {
        for (std::size_t i = 0; i < turns.size(); ++i) {
            if (isDone(i)) continue;
            goTo(turns[i].after);
            left.emplace_back(turns[i].set);
            settings[turns[i].set.setting] = turns[i].set.to;
        }
        turns.clear();
    }

    /// The state that this change leads to, or that a later one of the same setting does, is there already.
    [[nodiscard]] bool isDone(std::size_t from) const {
        const std::string& setting = turns[from].set.setting;
        const auto now = settings.find(setting);
        return std::any_of(
            turns.begin() + static_cast<std::ptrdiff_t>(from), turns.end(), [&](const Turn& turn) {
                return turn.set.setting == setting && now != settings.end() && turn.set.to == now->second;
            });
    }

    /// Emits the way to the stand that the plan had reached after `count` stands; only the last one counts,
    /// but for those it is reached from.
    void goTo(std::size_t count) {
        if (count == 0 || stand == stands[count - 1]) return;
        const std::string& goal = stands[count - 1];
        const airframe::Stand* described = airframe.stand(goal);
        if (described != nullptr && !described->onlyFrom.empty() &&
            !(stand && contains(described->onlyFrom, *stand))) {
            goTo(count - 1);
        }
        left.emplace_back(walk::Go{goal});
        stand = goal;
    }

    const Airframe& airframe;
    std::optional<std::string> stand;
    airframe::Settings settings;
    std::vector<std::string> stands; ///< reached in the plan since the last step that was kept
    std::vector<Turn> turns;         ///< in the plan since then
};

} // namespace

std::vector<walk::Step> remaining(const State& state, const Airframe& airframe) {
    Remainder remainder(state, airframe);
    for (const walk::Step& step : state.plan) {
        remainder.take(step);
        const auto* settle = std::get_if<walk::Settle>(&step);
        const auto point = settle == nullptr ? state.points.end() : state.points.find(settle->point);
        if (point != state.points.end() && !point->second.settled) remainder.settle(*settle);
    }
    return std::move(remainder.left);
}

std::optional<walk::Step> nextStep(const State& state, const Airframe& airframe) {
    const auto left = remaining(state, airframe);
    if (left.empty()) return std::nullopt;
    return left.front();
}

} // namespace ambit::round
