// One walk as the planner works on it: everything by number, what can be got to from where, and the
// sequential ordering problem that comes of it.
#pragma once

#include "sop/problem.hpp"
#include "walk/legs.hpp"
#include "walk/plan.hpp"

#include <functional>

namespace ambit::walk {

/// A point that can still be settled.
struct Task {
    const airframe::Point* point = nullptr;
    std::vector<std::size_t> stands;                         ///< those that aren't blocked
    std::vector<std::pair<std::size_t, std::size_t>> wanted; ///< relevant setting, state
    std::vector<std::size_t> before;                         ///< tasks
};

/// Where one is and how things are set: a node of the graph of all that.
using Node = std::size_t;

/// Settings that no unsettled point asks for are left as they are. Spots are stand times combination of
/// states.
class Model {
public:
    /// `order`: ids of points, those first that are known to come first; the rest as listed. `among`: only
    /// points for which it says so. notFound: no such walk, stand, zone, setting or state; unsupported: more
    /// spots than can be planned with.
    static Result<Model> of(const airframe::Airframe& airframe, const std::string& walkId,
                            const Situation& now, const std::vector<std::string>& order = {},
                            const std::function<bool(const airframe::Point&)>& among = {});

    [[nodiscard]] const std::vector<Task>& tasks() const { return all; }
    /// Points that no order can settle from here, with the reason in words.
    [[nodiscard]] const std::vector<std::pair<std::string, std::string>>& unreachable() const { return out; }

    /// Of all tasks; places are the spots where something can be settled, and the start.
    [[nodiscard]] const sop::Problem& problem() const { return made; }
    /// The steps of a walk of that problem. Whatever may be settled where one comes by is settled.
    [[nodiscard]] std::vector<Step> steps(const sop::Walk& walk) const;
    /// The places of a walk that takes these steps, as far as they can be taken.
    [[nodiscard]] sop::Walk walkOf(const std::vector<Step>& steps) const;
    /// The walk down the list: walk::listedPlan.
    [[nodiscard]] std::vector<Step> listed() const;
    /// What settling all tasks takes.
    [[nodiscard]] std::int64_t settlingMs() const;

private:
    struct Turn {
        std::size_t setting = 0; ///< among the relevant ones
        std::size_t from = 0;
        std::size_t to = 0;
        std::vector<std::size_t> stands;
        std::int64_t weighsMs = 0;
        std::vector<std::size_t> needs; ///< tasks
        std::size_t gate = 0;           ///< number + 1; 0: always open
        const airframe::SettingChange* change = nullptr;
    };
    struct Relevant {
        const airframe::Setting* setting = nullptr;
        std::size_t now = 0;    ///< state
        std::size_t stride = 0; ///< of its states in a combination's number
    };
    /// From one node: the cheapest way to each, and the node before it.
    struct Tree {
        std::vector<sop::Cost> cost;
        std::vector<Node> via;
    };
    class Walker;

    void addTasks(const airframe::Walk& walk, const Situation& now, const std::vector<std::string>& order,
                  const std::function<bool(const airframe::Point&)>& among);
    Result<void> addSettings(const Situation& now);
    void addTurns(const airframe::Walk& walk, const Situation& now);
    void dropUnreachable();
    void addGates();
    Result<void> makeProblem();

    [[nodiscard]] Node nodeOf(std::size_t stand, std::size_t combination) const {
        return stand * combinations + combination;
    }
    [[nodiscard]] std::size_t standOf(Node node) const { return node / combinations; }
    [[nodiscard]] std::size_t stateOf(Node node, std::size_t relevant) const {
        return node % combinations / settings[relevant].stride % settings[relevant].setting->states.size();
    }
    [[nodiscard]] bool offers(Node node, const Task& task) const;
    [[nodiscard]] Tree treeFrom(Node from, const std::function<bool(const Turn&)>& open) const;
    [[nodiscard]] std::string whyOut(const Task& task, const std::vector<bool>& reached,
                                     const std::vector<bool>& done) const;

    const airframe::Airframe* airframe = nullptr;
    std::shared_ptr<const Legs> legs;
    std::vector<bool> blocked; ///< by stand
    std::vector<Task> all;
    std::vector<std::pair<std::string, std::string>> out;
    std::vector<Relevant> settings;
    std::size_t combinations = 1;
    std::vector<Turn> turns;
    std::vector<std::vector<std::size_t>> gates;
    Node start = 0;
    std::vector<Node> places; ///< of the problem, the start last
    sop::Problem made;
};

} // namespace ambit::walk
