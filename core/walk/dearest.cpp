// What each rule of an airframe costs: the best walk with it against the best without it.
#include "walk/plan.hpp"

#include <algorithm>
#include <map>

namespace ambit::walk {

namespace {

using airframe::Airframe;

/// A rule, and an airframe without it.
struct Without {
    std::string words;
    Airframe airframe;
};

std::string quoted(const std::string& name) {
    return "“" + name + "”";
}

/// A repeated point's rule is one rule, said once for all members: found by its base.
std::string nameOf(const Airframe& airframe, const std::string& base) {
    for (const auto& point : airframe.points)
        if (point.base == base) return point.name;
    return base;
}

std::string baseOf(const Airframe& airframe, const std::string& id) {
    const auto* point = airframe.point(id);
    return point == nullptr || point->base.empty() ? id : point->base;
}

class Rules {
public:
    explicit Rules(const Airframe& its) : airframe(its) {}

    std::vector<Without> all() {
        addAfter();
        addThrough();
        addNeeds();
        addOnlyFrom();
        addWhen();
        return std::move(rules);
    }

private:
    void add(std::string words, Airframe without) {
        without.sha256.clear(); // another airframe: nothing remembered of the first holds for it
        rules.push_back({std::move(words), std::move(without)});
    }

    void addAfter() {
        std::set<std::pair<std::string, std::string>> pairs;
        for (const auto& point : airframe.points)
            for (const auto& earlier : point.after)
                pairs.emplace(baseOf(airframe, point.id), baseOf(airframe, earlier));
        for (const auto& [base, earlier] : pairs) {
            Airframe without = airframe;
            for (auto& point : without.points)
                if (baseOf(airframe, point.id) == base)
                    std::erase_if(point.after, [&, e = earlier](const std::string& id) {
                        return baseOf(airframe, id) == e;
                    });
            add(quoted(nameOf(airframe, base)) + " comes after " + quoted(nameOf(airframe, earlier)),
                std::move(without));
        }
    }

    void addThrough() {
        std::set<std::pair<std::string, std::string>> pairs;
        for (const auto& point : airframe.points)
            for (const auto& opening : point.through)
                pairs.emplace(baseOf(airframe, point.id), opening);
        for (const auto& [base, opening] : pairs) {
            Airframe without = airframe;
            for (auto& point : without.points)
                if (baseOf(airframe, point.id) == base) std::erase(point.through, opening);
            add(quoted(nameOf(airframe, base)) + " is seen through " +
                    quoted(airframe.opening(opening)->name),
                std::move(without));
        }
    }

    void addNeeds() {
        for (std::size_t s = 0; s < airframe.settings.size(); ++s) {
            std::set<std::string> needs;
            for (const auto& change : airframe.settings[s].changes)
                needs.insert(change.needs.begin(), change.needs.end());
            for (const auto& need : needs) {
                Airframe without = airframe;
                for (auto& change : without.settings[s].changes)
                    std::erase(change.needs, need);
                add(quoted(airframe.settings[s].name) + " is changed after " +
                        quoted(nameOf(airframe, baseOf(airframe, need))),
                    std::move(without));
            }
        }
    }

    void addOnlyFrom() {
        for (std::size_t s = 0; s < airframe.stands.size(); ++s) {
            if (airframe.stands[s].onlyFrom.empty()) continue;
            Airframe without = airframe;
            without.stands[s].onlyFrom.clear();
            add(quoted(airframe.stands[s].name) + " is reached from certain stands only", std::move(without));
        }
    }

    void addWhen() {
        std::set<std::pair<std::string, std::string>> pairs;
        for (const auto& point : airframe.points)
            for (const auto& [setting, state] : point.when)
                pairs.emplace(baseOf(airframe, point.id), setting);
        for (const auto& [base, setting] : pairs) {
            Airframe without = airframe;
            for (auto& point : without.points)
                if (baseOf(airframe, point.id) == base) point.when.erase(setting);
            add(quoted(nameOf(airframe, base)) + " asks for a certain state of " +
                    quoted(airframe.setting(setting)->name),
                std::move(without));
        }
    }

    const Airframe& airframe;
    std::vector<Without> rules;
};

} // namespace

Result<std::vector<Constraint>> dearest(const Airframe& airframe, const std::string& walkId,
                                        std::size_t most) {
    const auto with = makePlan(airframe, walkId, startOf(airframe));
    if (!with) return tl::unexpected(with.error());
    std::vector<Constraint> constraints;
    for (const Without& rule : Rules(airframe).all()) {
        const auto without = makePlan(rule.airframe, walkId, startOf(rule.airframe));
        if (!without) return tl::unexpected(without.error());
        const double saved = with->cost.weighs - without->cost.weighs;
        if (saved > 0.0005 && without->unreachable.size() <= with->unreachable.size())
            constraints.push_back({rule.words, saved});
    }
    std::stable_sort(constraints.begin(), constraints.end(),
                     [](const Constraint& a, const Constraint& b) { return a.seconds > b.seconds; });
    if (constraints.size() > most) constraints.resize(most);
    return constraints;
}

} // namespace ambit::walk
