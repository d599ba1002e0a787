#include "round/back.hpp"

#include <algorithm>

namespace ambit::round {

namespace {

using airframe::Airframe;

bool contains(const std::vector<std::string>& list, const std::string& id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

/// Can the setting be brought from one state to the other, by whatever changes?
bool canBeBrought(const airframe::Setting& setting, const std::string& from, const std::string& to) {
    std::vector<std::string> reached{from};
    for (std::size_t i = 0; i < reached.size() && !contains(reached, to); ++i)
        for (const airframe::SettingChange& change : setting.changes)
            if (change.from == reached[i] && !contains(reached, change.to)) reached.push_back(change.to);
    return contains(reached, to);
}

class Back {
public:
    Back(const State& its, const Airframe& described) : state(its), airframe(described) {
        for (const auto& [id, point] : state.points)
            if (point.settled && point.last()->looked() && canBeSeen(*airframe.point(id)))
                order.push_back(id);
        std::sort(order.begin(), order.end(), [&](const std::string& a, const std::string& b) {
            return state.points.at(a).last()->seq < state.points.at(b).last()->seq;
        });
    }

    std::vector<std::string> by(const BackRule& rule) {
        auto first = order.begin();
        if (rule.from == BackRule::From::points && order.size() > static_cast<std::size_t>(rule.points))
            first = order.end() - rule.points;
        if (rule.from == BackRule::From::stand)
            first = std::find_if(order.begin(), order.end(), [&](const std::string& id) {
                return state.points.at(id).last()->seq > state.standSeq;
            });
        wanted.insert(first, order.end());
        while (addWhatOpens()) {
        }
        std::vector<std::string> list;
        std::copy_if(order.begin(), order.end(), std::back_inserter(list),
                     [&](const std::string& id) { return wanted.contains(id); });
        return list;
    }

private:
    [[nodiscard]] bool canBeSeen(const airframe::Point& point) const {
        return std::all_of(point.when.begin(), point.when.end(), [&](const auto& needed) {
            return canBeBrought(*airframe.setting(needed.first), state.settings.at(needed.first),
                                needed.second);
        });
    }
    /// What was looked through is closed by now: who looks again opens it first, and closes it after.
    bool addWhatOpens() {
        const std::size_t before = wanted.size();
        const std::set<std::string> now = wanted;
        for (const std::string& id : now) {
            const airframe::Point& point = *airframe.point(id);
            for (const std::string& opening : point.through)
                if (!state.openings.at(opening).owed) add(opening, &airframe::Point::opens);
            for (const std::string& opening : point.opens)
                add(opening, &airframe::Point::closes);
        }
        return wanted.size() != before;
    }
    void add(const std::string& opening, std::vector<std::string> airframe::Point::*does) {
        for (const std::string& id : order)
            if (contains(airframe.point(id)->*does, opening)) wanted.insert(id);
    }

    const State& state;
    const Airframe& airframe;
    std::vector<std::string> order; ///< all that could be looked at again, as settled
    std::set<std::string> wanted;
};

} // namespace

std::vector<std::string> askedBack(const State& state, const Airframe& airframe, const BackRule& rule) {
    return Back(state, airframe).by(rule);
}

} // namespace ambit::round
