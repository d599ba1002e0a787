#include "walk/problem.hpp"

#include "base/phrase.hpp"

#include <algorithm>
#include <map>
#include <queue>

namespace ambit::walk {

namespace {

using airframe::Airframe;
using sop::never;

constexpr std::size_t mostNodes = 6000;
constexpr std::size_t mostMoves = 8'000'000; ///< entries of all tables of moves

template<class List> std::optional<std::size_t> numberOf(const List& list, const std::string& id) {
    const auto found = std::find_if(list.begin(), list.end(), [&](const auto& one) { return one.id == id; });
    if (found == list.end()) return std::nullopt;
    return static_cast<std::size_t>(found - list.begin());
}

bool contains(const std::vector<std::size_t>& list, std::size_t number) {
    return std::find(list.begin(), list.end(), number) != list.end();
}

tl::unexpected<Error> unknown(const char* kind, const std::string& id) {
    return fail(ErrorCode::notFound, say("The airframe has no such %1.", say(kind)), id);
}

} // namespace

Result<Model> Model::of(const Airframe& airframe, const std::string& walkId, const Situation& now,
                        const std::vector<std::string>& order,
                        const std::function<bool(const airframe::Point&)>& among) {
    const airframe::Walk* walk = airframe.walk(walkId);
    if (walk == nullptr) return unknown(pattern("walk"), walkId);
    if (now.stand && airframe.stand(*now.stand) == nullptr) return unknown(pattern("stand"), *now.stand);
    if (now.firstZone && airframe.zone(*now.firstZone) == nullptr)
        return unknown(pattern("zone"), *now.firstZone);
    for (const std::string& id : airframe.pointsOf(*walk, now.night))
        if (airframe.point(id) == nullptr) return unknown(pattern("point"), id);
    Model model;
    model.airframe = &airframe;
    model.legs = Legs::of(airframe, *walk, now.marked);
    for (const auto& stand : airframe.stands)
        model.blocked.push_back(now.blocked.contains(stand.id));
    model.addTasks(*walk, now, order, among);
    if (auto added = model.addSettings(now); !added) return tl::unexpected(added.error());
    model.addTurns(*walk, now);
    const std::size_t stand = now.stand ? *numberOf(airframe.stands, *now.stand) : model.legs->start();
    std::size_t combination = 0;
    for (const Relevant& one : model.settings)
        combination += one.stride * one.now;
    model.start = model.nodeOf(stand, combination);
    model.dropUnreachable();
    model.addGates();
    if (auto done = model.makeProblem(); !done) return tl::unexpected(done.error());
    return model;
}

void Model::addTasks(const airframe::Walk& walk, const Situation& now, const std::vector<std::string>& order,
                     const std::function<bool(const airframe::Point&)>& among) {
    std::map<std::string, std::size_t> rank;
    for (const std::string& id : order)
        rank.try_emplace(id, rank.size());
    for (const std::string& id : airframe->pointsOf(walk, now.night)) {
        const airframe::Point* point = airframe->point(id);
        if (now.settled.contains(id) || (among && !among(*point))) continue;
        rank.try_emplace(id, rank.size());
        Task task{point, {}, {}, {}};
        for (const std::string& stand : point->stands) {
            const auto number = numberOf(airframe->stands, stand);
            if (number && !blocked[*number]) task.stands.push_back(*number);
        }
        all.push_back(std::move(task));
    }
    std::stable_sort(all.begin(), all.end(), [&](const Task& a, const Task& b) {
        return rank.at(a.point->id) < rank.at(b.point->id);
    });
    std::map<std::string, std::size_t> numbers;
    for (std::size_t t = 0; t < all.size(); ++t)
        numbers[all[t].point->id] = t;
    for (Task& task : all)
        for (const std::string& earlier : airframe->before(*task.point))
            if (const auto number = numbers.find(earlier); number != numbers.end())
                task.before.push_back(number->second);
}

Result<void> Model::addSettings(const Situation& now) {
    std::vector<std::optional<std::size_t>> number(airframe->settings.size());
    for (std::size_t s = 0; s < airframe->settings.size(); ++s) {
        const airframe::Setting& setting = airframe->settings[s];
        const auto told = now.settings.find(setting.id);
        const std::string& id = told == now.settings.end() ? setting.initial : told->second;
        const auto state = numberOf(setting.states, id);
        if (!state) return unknown(pattern("state of a setting"), id);
        const bool asked = std::any_of(
            all.begin(), all.end(), [&](const Task& task) { return task.point->when.contains(setting.id); });
        if (!asked) continue;
        number[s] = settings.size();
        settings.push_back({&setting, *state, combinations});
        combinations *= setting.states.size();
        if (combinations * (airframe->stands.size() + 1) > mostNodes)
            return fail(ErrorCode::unsupported,
                        say("There are too many combinations of settings to plan with."), setting.id,
                        say("Let fewer points ask for settings."));
    }
    for (Task& task : all) {
        for (const auto& [id, stateId] : task.point->when) {
            const auto setting = numberOf(airframe->settings, id);
            const auto state = setting ? numberOf(airframe->settings[*setting].states, stateId)
                                       : std::optional<std::size_t>();
            if (state) task.wanted.emplace_back(*number[*setting], *state);
        }
    }
    return {};
}

void Model::addTurns(const airframe::Walk& walk, const Situation& now) {
    std::map<std::string, std::size_t> numbers;
    for (std::size_t t = 0; t < all.size(); ++t)
        numbers[all[t].point->id] = t;
    for (std::size_t s = 0; s < settings.size(); ++s) {
        for (const airframe::SettingChange& change : settings[s].setting->changes) {
            const auto from = numberOf(settings[s].setting->states, change.from);
            const auto to = numberOf(settings[s].setting->states, change.to);
            if (!from || !to) continue;
            Turn turn{s, *from, *to, {}, milliseconds(change.seconds), {}, 0, &change};
            turn.weighsMs += milliseconds(airframe->costs.turnWeightSeconds);
            for (const std::string& stand : change.stands) {
                const auto number = numberOf(airframe->stands, stand);
                if (number && !blocked[*number]) turn.stands.push_back(*number);
            }
            bool ever = true;
            for (const std::string& need : change.needs) {
                if (!walk.has(need, now.night)) continue;
                if (now.soundPoints.contains(need)) continue;
                const auto task = numbers.find(need);
                ever = ever && task != numbers.end(); // settled, and not sound
                if (ever) turn.needs.push_back(task->second);
            }
            if (ever) turns.push_back(std::move(turn));
        }
    }
}

bool Model::offers(Node node, const Task& task) const {
    return contains(task.stands, standOf(node)) &&
           std::all_of(task.wanted.begin(), task.wanted.end(),
                       [&](const auto& one) { return stateOf(node, one.first) == one.second; });
}

Model::Tree Model::treeFrom(Node from, const std::function<bool(const Turn&)>& open) const {
    const std::size_t stands = airframe->stands.size();
    const std::size_t count = (stands + 1) * combinations;
    Tree tree{std::vector<sop::Cost>(count, never), std::vector<Node>(count, count)};
    using Entry = std::pair<sop::Cost, Node>;
    std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue;
    tree.cost[from] = 0;
    queue.emplace(0, from);
    const auto reach = [&](Node to, Node via, sop::Cost cost) {
        if (cost >= tree.cost[to]) return;
        tree.cost[to] = cost;
        tree.via[to] = via;
        queue.emplace(cost, to);
    };
    while (!queue.empty()) {
        const auto [cost, here] = queue.top();
        queue.pop();
        if (cost > tree.cost[here]) continue;
        const std::size_t stand = standOf(here);
        const std::size_t combination = here % combinations;
        // On foot only from where one can't just go on: a way over a stand on the ground is never shorter.
        const bool more = here == from || tree.via[here] == count || standOf(tree.via[here]) == stand ||
                          airframe->stands[stand].raised() || !airframe->stands[stand].stepTo.empty();
        for (std::size_t to = 0; to < stands && more; ++to) {
            const auto& leg = legs->leg(stand, to);
            if (leg && to != stand && !blocked[to])
                reach(nodeOf(to, combination), here, cost + leg->weighsMs);
        }
        for (const Turn& turn : turns) {
            if (stateOf(here, turn.setting) != turn.from || !contains(turn.stands, stand) || !open(turn))
                continue;
            const Node to =
                here + turn.to * settings[turn.setting].stride - turn.from * settings[turn.setting].stride;
            reach(to, here, cost + turn.weighsMs);
        }
    }
    return tree;
}

std::string Model::whyOut(const Task& task, const std::vector<bool>& reached,
                          const std::vector<bool>& done) const {
    for (const std::size_t earlier : task.before)
        if (!done[earlier])
            return "It comes after “" + all[earlier].point->name + "”, which can't be settled.";
    if (task.stands.empty()) return "Every stand it is settled from is blocked.";
    const bool near = std::any_of(task.stands.begin(), task.stands.end(), [&](std::size_t stand) {
        for (std::size_t c = 0; c < combinations; ++c)
            if (reached[nodeOf(stand, c)]) return true;
        return false;
    });
    if (!near) return "There is no way to a stand it is settled from.";
    for (const auto& [setting, state] : task.wanted) {
        const airframe::Setting& its = *settings[setting].setting;
        const std::string can = its.name + " can't be brought to “" + its.states[state].name + "”";
        bool ever = false;
        for (std::size_t s = 0; s < reached.size(); ++s)
            ever = ever || (reached[s] && stateOf(s, setting) == state);
        if (ever) continue;
        for (const auto& change : its.changes)
            for (const std::string& need : change.needs) {
                const auto at = std::find_if(turns.begin(), turns.end(),
                                             [&](const Turn& turn) { return turn.change == &change; });
                if (at == turns.end() || std::any_of(at->needs.begin(), at->needs.end(), [&](std::size_t n) {
                        return all[n].point->id == need && !done[n];
                    }))
                    return can + ": “" + airframe->point(need)->name + "” is not settled sound.";
            }
        return can + " from here.";
    }
    return "No order was found that comes to it.";
}

/// Leaves only the tasks that can be done if each is done as soon as it may.
void Model::dropUnreachable() {
    std::vector<bool> done(all.size(), false);
    std::vector<bool> reached;
    for (bool more = true; more;) {
        more = false;
        const Tree tree = treeFrom(start, [&](const Turn& turn) {
            return std::all_of(turn.needs.begin(), turn.needs.end(), [&](std::size_t n) { return done[n]; });
        });
        reached.assign(tree.cost.size(), false);
        for (Node s = 0; s < tree.cost.size(); ++s)
            reached[s] = tree.cost[s] < never;
        for (std::size_t t = 0; t < all.size(); ++t) {
            if (done[t] || !std::all_of(all[t].before.begin(), all[t].before.end(),
                                        [&](std::size_t b) { return done[b]; }))
                continue;
            for (const std::size_t stand : all[t].stands)
                for (std::size_t c = 0; c < combinations && !done[t]; ++c)
                    if (reached[nodeOf(stand, c)] && offers(nodeOf(stand, c), all[t])) done[t] = more = true;
        }
    }
    std::vector<std::size_t> number(all.size(), 0);
    std::vector<Task> left;
    for (std::size_t t = 0; t < all.size(); ++t) {
        number[t] = left.size();
        if (done[t])
            left.push_back(all[t]);
        else
            out.emplace_back(all[t].point->id, whyOut(all[t], reached, done));
    }
    std::erase_if(turns, [&](const Turn& turn) {
        return !std::all_of(turn.needs.begin(), turn.needs.end(), [&](std::size_t n) { return done[n]; });
    });
    for (Turn& turn : turns)
        for (std::size_t& need : turn.needs)
            need = number[need];
    for (Task& task : left)
        for (std::size_t& earlier : task.before)
            earlier = number[earlier];
    all = std::move(left);
}

void Model::addGates() {
    for (Turn& turn : turns) {
        if (turn.needs.empty()) continue;
        std::sort(turn.needs.begin(), turn.needs.end());
        const auto known = std::find(gates.begin(), gates.end(), turn.needs);
        turn.gate = static_cast<std::size_t>(known - gates.begin()) + 1;
        if (known == gates.end()) gates.push_back(turn.needs);
    }
}

Result<void> Model::makeProblem() {
    const std::size_t count = (airframe->stands.size() + 1) * combinations;
    std::vector<std::size_t> number(count, count);
    for (Node s = 0; s < count; ++s) {
        const bool used =
            std::any_of(all.begin(), all.end(), [&](const Task& task) { return offers(s, task); });
        if (!used || s == start) continue;
        number[s] = places.size();
        places.push_back(s);
    }
    number[start] = places.size();
    places.push_back(start);
    if (gates.size() > sop::mostGates || (places.size() * places.size() << gates.size()) > mostMoves)
        return fail(ErrorCode::unsupported,
                    say("There are too many conditions on changes of settings to plan with."));
    for (const Task& task : all) {
        sop::Task one;
        for (std::size_t p = 0; p < places.size(); ++p)
            if (offers(places[p], task)) one.places.push_back(static_cast<sop::Number>(p));
        for (const std::size_t earlier : task.before)
            one.before.push_back(static_cast<sop::Number>(earlier));
        made.tasks.push_back(std::move(one));
    }
    made.start = static_cast<sop::Number>(places.size() - 1);
    for (const auto& gate : gates)
        made.gates.emplace_back(gate.begin(), gate.end());
    for (std::size_t open = 0; open < std::size_t{1} << gates.size(); ++open) {
        sop::Moves& moves = made.moves.emplace_back();
        for (const Node from : places) {
            const Tree tree = treeFrom(
                from, [&](const Turn& turn) { return turn.gate == 0 || (open >> (turn.gate - 1) & 1) != 0; });
            auto& row = moves.emplace_back();
            for (const Node to : places)
                row.push_back(tree.cost[to]);
        }
    }
    for (const Node place : places)
        made.home.push_back(legs->home(standOf(place)).ms);
    return {};
}

std::int64_t Model::settlingMs() const {
    std::int64_t sum = 0;
    for (const Task& task : all)
        sum += milliseconds(task.point->seconds);
    return sum;
}

/// Takes steps one by one and settles what it comes by.
class Model::Walker {
public:
    explicit Walker(const Model& its) : model(its), here(its.start), done(its.all.size(), false) {
        settleHere();
    }

    [[nodiscard]] bool isDone(std::size_t task) const { return done[task]; }
    [[nodiscard]] bool ready(const Task& task) const {
        return std::all_of(task.before.begin(), task.before.end(), [&](std::size_t b) { return done[b]; });
    }
    [[nodiscard]] Tree tree() const {
        return model.treeFrom(here, [&](const Turn& turn) {
            return std::all_of(turn.needs.begin(), turn.needs.end(), [&](std::size_t n) { return done[n]; });
        });
    }
    /// Would anything be settled there?
    [[nodiscard]] bool useful(Node node) const {
        for (std::size_t t = 0; t < done.size(); ++t)
            if (!done[t] && ready(model.all[t]) && model.offers(node, model.all[t])) return true;
        return false;
    }

    void go(Node to) { go(to, tree()); }
    void go(Node to, const Tree& tree) {
        if (tree.cost[to] >= never) return;
        std::vector<Node> way;
        for (Node s = to; s != here; s = tree.via[s])
            way.push_back(s);
        for (auto s = way.rbegin(); s != way.rend(); ++s)
            step(*s);
    }
    [[nodiscard]] Node at() const { return here; }

    std::vector<Step> steps;

private:
    void step(Node to) {
        const airframe::Airframe& airframe = *model.airframe;
        if (model.standOf(to) != model.standOf(here)) {
            steps.emplace_back(Go{airframe.stands[model.standOf(to)].id});
        } else {
            for (std::size_t s = 0; s < model.settings.size(); ++s) {
                if (model.stateOf(to, s) == model.stateOf(here, s)) continue;
                const airframe::Setting& setting = *model.settings[s].setting;
                steps.emplace_back(Set{setting.id, setting.states[model.stateOf(to, s)].id});
            }
        }
        here = to;
        settleHere();
    }

    void settleHere() {
        for (bool more = true; more;) {
            more = false;
            for (std::size_t t = 0; t < done.size(); ++t) {
                if (done[t] || !ready(model.all[t]) || !model.offers(here, model.all[t])) continue;
                done[t] = more = true;
                steps.emplace_back(Settle{model.all[t].point->id});
            }
        }
    }

    const Model& model;
    Node here;
    std::vector<bool> done;
};

std::vector<Step> Model::steps(const sop::Walk& walk) const {
    Walker walker(*this);
    for (const sop::Number place : walk)
        if (walker.useful(places[place])) walker.go(places[place]);
    return std::move(walker.steps);
}

sop::Walk Model::walkOf(const std::vector<Step>& known) const {
    Walker walker(*this);
    sop::Walk walk;
    Node here = start;
    for (const Step& step : known) {
        if (const auto* go = std::get_if<Go>(&step)) {
            const auto stand = numberOf(airframe->stands, go->stand);
            if (!stand) break;
            here = nodeOf(*stand, here % combinations);
        } else if (const auto* set = std::get_if<Set>(&step)) {
            for (std::size_t s = 0; s < settings.size(); ++s) {
                if (settings[s].setting->id != set->setting) continue;
                const auto state = numberOf(settings[s].setting->states, set->to);
                if (!state) return walk;
                here = here + *state * settings[s].stride - stateOf(here, s) * settings[s].stride;
            }
        }
        const auto place = std::find(places.begin(), places.end(), here);
        if (here == walker.at() || place == places.end() || !walker.useful(here)) continue;
        walker.go(here);
        if (walker.at() != here) break;
        walk.push_back(static_cast<sop::Number>(place - places.begin()));
    }
    return walk;
}

std::vector<Step> Model::listed() const {
    Walker walker(*this);
    std::size_t at = 0; // where in the list one is
    for (;;) {
        const Tree tree = walker.tree();
        // Down the list from here, once round it: first what may be done as things are set, then anything.
        std::optional<Node> next;
        for (const bool asSet : {true, false}) {
            for (std::size_t i = 0; i < all.size() && !next; ++i) {
                const std::size_t t = (at + i) % all.size();
                if (walker.isDone(t) || !walker.ready(all[t])) continue;
                for (Node s = 0; s < tree.cost.size(); ++s) {
                    if (tree.cost[s] >= never || !offers(s, all[t])) continue;
                    if (asSet && s % combinations != walker.at() % combinations) continue;
                    if (!next || tree.cost[s] < tree.cost[*next]) next = s;
                }
                if (next) at = t;
            }
            if (next) break;
        }
        if (!next) return std::move(walker.steps);
        walker.go(*next, tree);
    }
}

} // namespace ambit::walk
