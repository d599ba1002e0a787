// What waits for what, as a graph over points: every cycle in it is a round that nobody could finish.
#include "airframe/check.hpp"

#include <algorithm>
#include <deque>

namespace ambit::airframe {

namespace {

using Index = std::size_t;
using Names = std::set<std::string>;

/// What must be settled before each state of a setting can be reached, whatever the way: the needs common to
/// all ways to it. States that can't be reached are absent.
std::map<std::string, Names> needsOf(const Setting& setting) {
    std::map<std::string, Names> needs{{setting.initial, {}}};
    for (bool more = true; more;) {
        more = false;
        for (const SettingChange& change : setting.changes) {
            const auto from = needs.find(change.from);
            if (from == needs.end()) continue;
            Names way = from->second;
            way.insert(change.needs.begin(), change.needs.end());
            const auto [to, fresh] = needs.emplace(change.to, way);
            Names common;
            std::set_intersection(way.begin(), way.end(), to->second.begin(), to->second.end(),
                                  std::inserter(common, common.end()));
            more = more || fresh || common != to->second;
            to->second = std::move(common);
        }
    }
    return needs;
}

/// For each state, those that can be reached from it.
std::map<std::string, Names> waysOf(const Setting& setting) {
    std::map<std::string, Names> ways;
    for (const SettingState& state : setting.states)
        ways[state.id].insert(state.id);
    for (bool more = true; more;) {
        more = false;
        for (const SettingChange& change : setting.changes) {
            const auto further = ways.find(change.to);
            if (further == ways.end()) continue;
            for (auto& [state, reached] : ways) {
                if (!reached.contains(change.from)) continue;
                const std::size_t before = reached.size();
                reached.insert(further->second.begin(), further->second.end());
                more = more || reached.size() != before;
            }
        }
    }
    return ways;
}

class Waits {
public:
    explicit Waits(const Airframe& of) : airframe(of), before(of.points.size()) {
        for (Index i = 0; i < airframe.points.size(); ++i)
            indices.emplace(airframe.points[i].id, i);
        for (Index i = 0; i < airframe.points.size(); ++i) {
            for (const std::string& id : airframe.before(airframe.points[i]))
                add(i, id);
        }
        for (const Setting& setting : airframe.settings)
            addSetting(setting);
    }

    /// The shortest cycle through a point, each waiting for the next; empty: there is none.
    [[nodiscard]] std::vector<Index> cycleThrough(Index start) const {
        std::vector<std::optional<Index>> cameFrom(before.size());
        std::deque<Index> queue{start};
        while (!queue.empty()) {
            const Index at = queue.front();
            queue.pop_front();
            for (const Index next : before[at]) {
                if (next == start) return wayTo(at, start, cameFrom);
                if (cameFrom[next]) continue;
                cameFrom[next] = at;
                queue.push_back(next);
            }
        }
        return {};
    }

    /// All points that wait for `start` and for which it waits: one knot, whose cycles are told as one.
    [[nodiscard]] std::set<Index> knotOf(Index start) const {
        std::vector<std::set<Index>> behind(before.size());
        for (Index i = 0; i < before.size(); ++i) {
            for (const Index earlier : before[i])
                behind[earlier].insert(i);
        }
        const auto earlier = reach(start, before);
        const auto later = reach(start, behind);
        std::set<Index> knot;
        std::set_intersection(earlier.begin(), earlier.end(), later.begin(), later.end(),
                              std::inserter(knot, knot.end()));
        return knot;
    }

private:
    void add(Index waiting, const std::string& id) {
        if (const auto found = indices.find(id); found != indices.end())
            before[waiting].insert(found->second);
    }

    void addSetting(const Setting& setting) {
        const auto needs = needsOf(setting);
        const auto ways = waysOf(setting);
        std::map<std::string, std::vector<Index>> wanting;
        for (Index i = 0; i < airframe.points.size(); ++i) {
            const auto wanted = airframe.points[i].when.find(setting.id);
            if (wanted != airframe.points[i].when.end()) wanting[wanted->second].push_back(i);
        }
        // Of a state that can't be reached something else was said.
        std::erase_if(wanting, [&](const auto& one) {
            return !needs.contains(one.first) || !ways.contains(one.first);
        });
        for (const auto& [state, points] : wanting) {
            for (const Index point : points) {
                for (const std::string& id : needs.at(state))
                    add(point, id);
            }
            for (const auto& [other, earlier] : wanting) {
                // Where no way leads back, what wants the other state comes first.
                if (ways.at(state).contains(other)) continue;
                for (const Index point : points)
                    before[point].insert(earlier.begin(), earlier.end());
            }
        }
    }

    [[nodiscard]] static std::set<Index> reach(Index start, const std::vector<std::set<Index>>& edges) {
        std::set<Index> reached{start};
        std::deque<Index> queue{start};
        while (!queue.empty()) {
            for (const Index next : edges[queue.front()]) {
                if (reached.insert(next).second) queue.push_back(next);
            }
            queue.pop_front();
        }
        return reached;
    }

    static std::vector<Index> wayTo(Index end, Index start,
                                    const std::vector<std::optional<Index>>& cameFrom) {
        std::vector<Index> way{end};
        while (way.back() != start)
            way.push_back(*cameFrom[way.back()]);
        std::reverse(way.begin(), way.end());
        return way;
    }

    const Airframe& airframe;
    std::vector<std::set<Index>> before;
    std::map<std::string, Index> indices;
};

} // namespace

void checkWaits(const Airframe& airframe, const std::vector<std::string>& pointers, Errors& errors) {
    const Waits waits(airframe);
    std::set<Index> covered;
    Names told; // a repeated point's cycles are one and the same in the file
    for (Index i = 0; i < airframe.points.size(); ++i) {
        if (covered.contains(i)) continue;
        const auto cycle = waits.cycleThrough(i);
        if (cycle.empty()) continue;
        covered.merge(waits.knotOf(i));
        if (!told.insert(pointers[i]).second) continue;
        Sentence circle = airframe.points[i].id;
        for (auto at = cycle.rbegin(); at != cycle.rend(); ++at)
            circle = say("%1 waits for %2", airframe.points[*at].id, std::move(circle));
        errors.add(pointers[i], say("No order can settle these points: %1.", std::move(circle)),
                   say("Break the circle: look at their after, through, opens, closes and when, and at the "
                       "changes' needs."));
    }
}

} // namespace ambit::airframe
