#include "round/rules.hpp"

#include "airframe/shape.hpp"
#include "judge/units.hpp"
#include "round/back.hpp"

#include <algorithm>

namespace ambit::round {

namespace {

using airframe::Airframe;
using airframe::Point;

constexpr std::size_t mostMarked = 20; ///< areas at a time: each makes every way longer to find
constexpr int mostOpenAsks = 20;       ///< at a time: nobody minds more

bool contains(const std::vector<std::string>& list, const std::string& id) {
    return std::find(list.begin(), list.end(), id) != list.end();
}

tl::unexpected<Error> refuse(Sentence what, std::string where = {}, Sentence remedy = {}) {
    return fail(ErrorCode::refused, std::move(what), std::move(where), std::move(remedy));
}

Sentence nameOf(const Airframe& airframe, const std::string& pointId) {
    const Point* point = airframe.point(pointId);
    return quoted(point == nullptr ? pointId : point->name);
}

Sentence standNames(const Airframe& airframe, const std::vector<std::string>& ids) {
    Sentence names;
    for (const std::string& id : ids) {
        const airframe::Stand* stand = airframe.stand(id);
        Sentence name = quoted(stand == nullptr ? id : stand->name);
        names = names.empty() ? std::move(name) : say("%1 or %2", std::move(names), std::move(name));
    }
    return names;
}

Sentence standName(const Airframe& airframe, const std::string& id) {
    return standNames(airframe, {id});
}

/// Who stands where one can't stand does nothing there but leave.
Result<void> isUsable(const State& state, const Airframe& airframe, const std::string& stand) {
    const auto blocked = state.blocked.find(stand);
    if (blocked == state.blocked.end()) return {};
    return refuse(say("%1 can't be used: %2", standName(airframe, stand), ended(blocked->second.why)), stand,
                  say("If it can be used again, say so first."));
}

bool standsAt(const State& state, const std::vector<std::string>& stands) {
    return state.stand && contains(stands, *state.stand);
}

/// The point of this walk, or why not.
Result<const Point*> pointOf(const State& state, const Airframe& airframe, const std::string& id) {
    const Point* point = airframe.point(id);
    if (point == nullptr || !state.points.contains(id))
        return refuse(say("This walk has no such point."), id);
    return point;
}

// --- settling
// --------------------------------------------------------------------------------------------------------

/// One of these points opens it.
bool opens(const Airframe& airframe, const std::vector<std::string>& points, const std::string& opening) {
    return std::any_of(points.begin(), points.end(),
                       [&](const std::string& id) { return contains(airframe.point(id)->opens, opening); });
}

/// In this walk: something opens it, or it was met open.
bool opensInWalk(const State& state, const Airframe& airframe, const std::string& opening) {
    if (state.openings.at(opening).ever) return true;
    return std::any_of(state.points.begin(), state.points.end(), [&](const auto& one) {
        const Point* point = airframe.point(one.first);
        return point != nullptr && contains(point->opens, opening);
    });
}

/// `told`: what is looked at before it in the same portion.
Result<void> mayBeLookedAt(const State& state, const Airframe& airframe, const Point& point,
                           const std::vector<std::string>& told = {}) {
    if (!standsAt(state, point.stands)) {
        return refuse(say("%1 is settled from %2.", quoted(point.name), standNames(airframe, point.stands)),
                      point.id, say("Go there first."));
    }
    if (auto usable = isUsable(state, airframe, *state.stand); !usable) return usable;
    for (const auto& [settingId, stateId] : point.when) {
        if (state.settings.at(settingId) == stateId) continue;
        const airframe::Setting& setting = *airframe.setting(settingId);
        return refuse(say("%1 needs %2: %3.", quoted(point.name), setting.name, setting.state(stateId)->name),
                      point.id, say("Change the setting first."));
    }
    for (const std::string& earlier : airframe.before(point)) {
        const auto found = state.points.find(earlier);
        if (found == state.points.end() || found->second.settled || contains(told, earlier)) continue;
        return refuse(say("%1 comes before %2.", nameOf(airframe, earlier), quoted(point.name)), point.id,
                      say("Settle it first."));
    }
    for (const std::string& id : point.through) {
        if (state.openings.at(id).owed || !opensInWalk(state, airframe, id) || opens(airframe, told, id))
            continue;
        return refuse(say("%1 is closed; %2 is seen through it.", quoted(airframe.opening(id)->name),
                          quoted(point.name)),
                      point.id, say("Open it, or settle the point as not inspected."));
    }
    return {};
}

Result<void> valueFits(const Point& point, const Settled& settled) {
    if (!point.limit) {
        if (!settled.value) return {};
        return refuse(say("%1 isn't measured.", quoted(point.name)), point.id, say("Leave the value out."));
    }
    if (!settled.value) {
        return refuse(say("%1 is measured and has no value.", quoted(point.name)), point.id,
                      say("Give its %1 in %2.", point.limit->quantity, point.limit->unit));
    }
    const auto value = Decimal::parse(*settled.value);
    if (!value) return tl::unexpected(value.error());
    const std::string& unit = settled.unit.empty() ? point.limit->unit : settled.unit;
    if (settled.unit == point.limit->unit)
        return refuse(say("The limit's own unit isn't named again."), point.id);
    const auto verdict = judge::against(*point.limit, *value, unit);
    if (!verdict) return tl::unexpected(verdict.error());
    if (settled.outcome != Outcome::sound || *verdict == judge::Verdict::within) return {};
    return refuse(say("%1 %2 is out of the limit (%3): that isn't sound.", figure(*settled.value), unit,
                      judge::toText(*point.limit)),
                  point.id, say("Measure again, or settle it as a finding."));
}

/// What was measured is in the settling's own photos, and its value is what was measured.
Result<void> measurementsFit(const Point& point, const Settled& settled) {
    for (const Measurement& one : settled.measurements)
        if (std::none_of(settled.photos.begin(), settled.photos.end(),
                         [&](const Photo& photo) { return photo.sha256 == one.photo; }))
            return refuse(say("What was measured in a photo needs that photo."), point.id);
    if (settled.byPhoto) {
        const std::string unit = !settled.unit.empty() ? settled.unit
                                 : point.limit         ? point.limit->unit
                                                       : std::string();
        if (settled.measurements.empty() || settled.measurements.front().value != settled.value ||
            settled.measurements.front().unit != unit)
            return refuse(say("The value isn't the one measured in the photo."), point.id);
    }
    if (settled.from && (settled.byPhoto || !settled.value))
        return refuse(say("A value is read from one thing, or measured in a photo."), point.id);
    if (!settled.uncertainty.empty()) {
        const auto uncertainty = Decimal::parse(settled.uncertainty);
        if (!settled.from || !uncertainty || *uncertainty < Decimal())
            return refuse(say("An uncertainty is zero or more, and goes with what the value was read from."),
                          point.id);
    }
    if (!settled.value && (!settled.unit.empty() || settled.renewed))
        return refuse(say("%1 isn't measured.", quoted(point.name)), point.id, say("Leave the unit out."));
    return {};
}

Result<void> may(const State& state, const Airframe& airframe, const Settled& settled) {
    const auto found = pointOf(state, airframe, settled.point);
    if (!found) return tl::unexpected(found.error());
    const Point& point = **found;
    if (state.points.at(point.id).settled) {
        return refuse(say("%1 is settled already.", quoted(point.name)), point.id, say("Re-open it first."));
    }
    if (settled.outcome == Outcome::notInspected) {
        if (settled.why.empty())
            return refuse(say("Not inspected needs a reason."), point.id, say("Say why."));
        return {};
    }
    if (auto looked = mayBeLookedAt(state, airframe, point); !looked) return looked;
    if (auto fits = valueFits(point, settled); !fits) return fits;
    if (auto fits = measurementsFit(point, settled); !fits) return fits;
    if (settled.outcome == Outcome::sound) return {};
    if (settled.words.empty())
        return refuse(say("A finding needs words."), point.id, say("Say what was found."));
    if (point.finding == Severity::grounds && settled.severity != Severity::grounds) {
        return refuse(say("A finding at %1 grounds the aircraft.", quoted(point.name)), point.id,
                      say("Give it the class “grounds”."));
    }
    return {};
}

// --- everything else
// -------------------------------------------------------------------------------------------------

Result<void> may(const State& /*state*/, const Airframe& /*airframe*/, const Opened& /*what*/) {
    return refuse(say("This round is opened already."));
}

Result<void> may(const State& state, const Airframe& airframe, const Planned& planned) {
    if (planned.why.empty()) return refuse(say("A new order needs a reason."));
    return checkPlan(airframe, state.opened.walk, planned.plan);
}

Result<void> may(const State& state, const Airframe& airframe, const StandReached& reached) {
    const airframe::Stand* stand = airframe.stand(reached.stand);
    if (stand == nullptr) return refuse(say("The airframe has no such stand."), reached.stand);
    if (auto usable = isUsable(state, airframe, stand->id); !usable) return usable;
    if (stand->onlyFrom.empty() || state.stand == reached.stand || standsAt(state, stand->onlyFrom))
        return {};
    return refuse(
        say("%1 is reached only from %2.", quoted(stand->name), standNames(airframe, stand->onlyFrom)),
        stand->id, say("Go there first."));
}

Result<void> may(const State& state, const Airframe& airframe, const SettingChanged& changed) {
    const airframe::Setting* setting = airframe.setting(changed.setting);
    if (setting == nullptr) return refuse(say("The airframe has no such setting."), changed.setting);
    const std::string& from = state.settings.at(setting->id);
    const airframe::SettingChange* change = setting->change(from, changed.to);
    if (change == nullptr) {
        const airframe::SettingState* to = setting->state(changed.to);
        return refuse(say("%1 can't be brought from “%2” to “%3”.", setting->name, setting->state(from)->name,
                          to == nullptr ? changed.to : to->name),
                      setting->id);
    }
    if (!standsAt(state, change->stands)) {
        return refuse(say("%1 is changed from %2.", setting->name, standNames(airframe, change->stands)),
                      setting->id, say("Go there first."));
    }
    if (auto usable = isUsable(state, airframe, *state.stand); !usable) return usable;
    for (const std::string& need : change->needs) {
        const auto point = state.points.find(need);
        if (point == state.points.end() || point->second.outcome() == Outcome::sound) continue;
        return refuse(
            say("%1 may be changed only when %2 is settled sound.", setting->name, nameOf(airframe, need)),
            setting->id, say("Settle it first."));
    }
    return {};
}

Result<void> may(const State& state, const Airframe& airframe, const Reopened& reopened) {
    const auto point = pointOf(state, airframe, reopened.point);
    if (!point) return tl::unexpected(point.error());
    if (reopened.why.empty())
        return refuse(say("Re-opening needs a reason."), reopened.point, say("Say why."));
    if (!state.points.at(reopened.point).settled)
        return refuse(say("%1 isn't settled; it can't be re-opened.", quoted((*point)->name)),
                      reopened.point);
    return {};
}

Result<void> mayOpening(const State& state, const Airframe& airframe, const std::string& id, bool owed) {
    const airframe::Opening* opening = airframe.opening(id);
    if (opening == nullptr) return refuse(say("The airframe has no such opening."), id);
    if (state.openings.at(id).owed == owed) return {};
    const Sentence name = quoted(opening->name);
    return refuse(owed ? say("%1 isn't open.", name) : say("%1 is open already.", name), id);
}

Result<void> may(const State& state, const Airframe& airframe, const OpeningMade& made) {
    return mayOpening(state, airframe, made.opening, false);
}

Result<void> may(const State& state, const Airframe& airframe, const OpeningClosed& closed) {
    return mayOpening(state, airframe, closed.opening, true);
}

Result<void> may(const State& /*state*/, const Airframe& /*airframe*/, const Paused& /*what*/) {
    return {};
}

Result<void> may(const State& state, const Airframe& /*airframe*/, const Resumed& /*what*/) {
    if (state.phase == Phase::paused) return {};
    return refuse(say("The round isn't paused."));
}

Result<void> may(const State& /*state*/, const Airframe& /*airframe*/, const Note& note) {
    if (note.words.empty()) return refuse(say("A note needs words."));
    return {};
}

// --- where reality differs
// ----------------------------------------------------------------------------------------------

Result<void> may(const State& state, const Airframe& airframe, const StandBlocked& blocked) {
    if (airframe.stand(blocked.stand) == nullptr)
        return refuse(say("The airframe has no such stand."), blocked.stand);
    if (blocked.why.empty())
        return refuse(say("A stand that can't be used needs a reason."), blocked.stand, say("Say why."));
    if (!state.blocked.contains(blocked.stand)) return {};
    return refuse(say("%1 is blocked already.", standName(airframe, blocked.stand)), blocked.stand);
}

Result<void> may(const State& state, const Airframe& airframe, const StandFree& usable) {
    if (airframe.stand(usable.stand) == nullptr)
        return refuse(say("The airframe has no such stand."), usable.stand);
    if (state.blocked.contains(usable.stand)) return {};
    return refuse(say("%1 isn't blocked.", standName(airframe, usable.stand)), usable.stand);
}

Result<void> may(const State& state, const Airframe& airframe, const AreaMarked& marked) {
    const std::string number = std::to_string(marked.area);
    if (marked.area != state.areasEver + 1) {
        return refuse(say("The next area to be marked is number %1.", std::to_string(state.areasEver + 1)),
                      number);
    }
    if (marked.why.empty())
        return refuse(say("A marked area needs a reason."), number, say("Say what is there."));
    if (state.marked.size() >= mostMarked) {
        return refuse(say("More than %1 areas can't be marked.", std::to_string(mostMarked)), number,
                      say("Clear one, or mark one larger area."));
    }
    const airframe::Outline outline = outlineOf(marked.outline);
    if (const auto fault = airframe::faultOf(outline)) return refuse(*fault, number, say("Mark it again."));
    const airframe::Place here =
        state.stand ? airframe.stand(*state.stand)->at : airframe.walk(state.opened.walk)->start;
    if (!airframe::isInside(here, outline)) return {};
    return refuse(say("The marked area covers where you stand."), number, say("Mark it beside you."));
}

Result<void> may(const State& state, const Airframe& /*airframe*/, const AreaCleared& cleared) {
    if (state.marked.contains(cleared.area)) return {};
    return refuse(say("There is no marked area number %1.", std::to_string(cleared.area)),
                  std::to_string(cleared.area));
}

Result<void> may(const State& state, const Airframe& /*airframe*/, const Light& light) {
    if (state.lightLow != light.low) return {};
    return refuse(light.low ? say("The light is low already.") : say("The light is good already."));
}

// --- what somebody who follows asks
// -----------------------------------------------------------------------------------

Result<void> may(const State& state, const Airframe& airframe, const Asked& asked) {
    const Statement& said = asked.statement;
    const auto next = static_cast<std::int64_t>(state.asks.size()) + 1;
    if (asked.ask != next)
        return refuse(say("What is asked next has number %1.", std::to_string(next)),
                      std::to_string(asked.ask));
    if (asked.ask > mostAsks)
        return refuse(say("More than %1 things can't be asked in a round.", std::to_string(mostAsks)));
    if (said.round != state.id) return refuse(say("This was said of another round."), said.round);
    const bool again = std::any_of(state.asks.begin(), state.asks.end(),
                                   [&](const Ask& ask) { return ask.what.id == said.id; });
    if (again)
        return refuse(say("This was said already."), said.id, say("Say it anew if it is meant again."));
    if (!said.point.empty())
        if (const auto point = pointOf(state, airframe, said.point); !point)
            return tl::unexpected(point.error());
    if (said.kind == Statement::Kind::lookAgain) {
        if (said.point.empty()) return refuse(say("A look again needs a point."), {}, say("Say where."));
    } else if (said.words.empty()) {
        return refuse(say("This needs words."));
    }
    if (said.kind == Statement::Kind::remark || state.openAskCount() < mostOpenAsks) return {};
    return refuse(say("%1 things are asked already that are still open.", std::to_string(mostOpenAsks)), {},
                  say("Wait until one is settled, answered or declined."));
}

Result<const Ask*> openAsk(const State& state, std::int64_t number) {
    const Ask* ask = state.ask(number);
    const std::string name = std::to_string(number);
    if (ask == nullptr) return refuse(say("Nothing was asked with number %1.", name), name);
    if (ask->isOpen()) return ask;
    return refuse(ask->became == Ask::Became::told ? say("A remark needs no answer.")
                                                   : say("What was asked with number %1 isn't open.", name),
                  name);
}

Result<void> may(const State& state, const Airframe& airframe, const Answered& answered) {
    const auto ask = openAsk(state, answered.ask);
    if (!ask) return tl::unexpected(ask.error());
    if (answered.words.empty()) return refuse(say("An answer needs words."), std::to_string(answered.ask));
    if ((*ask)->what.kind == Statement::Kind::question) return {};
    return refuse(say("To look again at %1 isn't answered with words.", nameOf(airframe, (*ask)->what.point)),
                  std::to_string(answered.ask), say("Settle the point again, or decline with a reason."));
}

Result<void> may(const State& state, const Airframe& /*airframe*/, const Declined& declined) {
    if (const auto ask = openAsk(state, declined.ask); !ask) return tl::unexpected(ask.error());
    if (declined.why.empty())
        return refuse(say("Declining needs a reason."), std::to_string(declined.ask), say("Say why."));
    return {};
}

Result<void> may(const State& state, const Airframe& /*airframe*/, const Alone& /*what*/) {
    if (state.lastSeq == 1) return {};
    return refuse(say("A round is walked on one's own from its beginning."), {},
                  say("Open a new round to walk it on your own."));
}

// --- no free hand, interrupted, in the dark
// ----------------------------------------------------------------------------------------------

Result<void> may(const State& state, const Airframe& airframe, const PortionBegun& begun) {
    if (begun.points.empty() || begun.points.size() > mostInPortion)
        return refuse(say("A portion has 1 to %1 points.", std::to_string(mostInPortion)));
    std::vector<std::string> told;
    for (const std::string& id : begun.points) {
        const auto point = pointOf(state, airframe, id);
        if (!point) return tl::unexpected(point.error());
        if (state.points.at(id).settled || contains(told, id))
            return refuse(contains(told, id) ? say("%1 stands in the portion twice.", quoted((*point)->name))
                                             : say("%1 is settled already.", quoted((*point)->name)),
                          id);
        if (auto looked = mayBeLookedAt(state, airframe, **point, told); !looked) return looked;
        told.push_back(id);
    }
    return {};
}

Result<void> may(const State& state, const Airframe& /*airframe*/, const PortionEnded& /*what*/) {
    if (state.portion && state.portion->running) return {};
    return refuse(say("Nothing is being looked at in a portion."));
}

Result<void> may(const State& state, const Airframe& airframe, const Interrupted& interrupted) {
    const BackRule& rule = interrupted.rule;
    if (rule.from == BackRule::From::points && (rule.points < 1 || rule.points > mostBack))
        return refuse(say("One goes back by 1 to %1 points.", std::to_string(mostBack)));
    if (interrupted.seconds < 0) return refuse(say("An interruption takes no less than no time."));
    if (interrupted.again == askedBack(state, airframe, rule)) return {};
    return refuse(say("That isn't what the rule asks for again."));
}

Result<void> may(const State& state, const Airframe& /*airframe*/, const QuickRun& run) {
    if (state.quickRun) return refuse(say("This was asked about once in this round."));
    std::vector<std::string> counting; // settled in it, and still
    std::int64_t looked = 0;
    for (const auto& [id, point] : state.points)
        for (const PointState::Settling& settling : point.settlings) {
            if (settling.seq < run.first || settling.seq > run.last || !settling.looked()) continue;
            ++looked;
            if (point.settled && &settling == point.last()) counting.push_back(id);
        }
    const bool isThere = std::all_of(run.again.begin(), run.again.end(),
                                     [&](const std::string& id) { return contains(counting, id); });
    const std::set<std::string> once(run.again.begin(), run.again.end());
    if (looked == run.points && run.last <= state.lastSeq && isThere && once.size() == run.again.size())
        return {};
    return refuse(say("These points were not settled there."));
}

Result<void> may(const State& /*state*/, const Airframe& /*airframe*/, const Clock& /*clock*/) {
    return {};
}

Result<void> may(const State& state, const Airframe& /*airframe*/, const Night& night) {
    if (state.night != night.expected) return {};
    return refuse(night.expected ? say("The flight goes into the dark already.")
                                 : say("The flight doesn't go into the dark."));
}

Result<void> may(const State& state, const Airframe& airframe, const Trended& trended) {
    const auto found = pointOf(state, airframe, trended.point);
    if (!found) return tl::unexpected(found.error());
    const auto& last = state.points.at(trended.point).last();
    if (!(*found)->limit || last == nullptr || !last->what.value)
        return refuse(say("%1 isn't measured.", quoted((*found)->name)), trended.point);
    if (trended.over != "days" && airframe.counter(trended.over) == nullptr)
        return refuse(say("The airframe has no such counter."), trended.over);
    if (trended.stands && !((*found)->limit->trend && (*found)->limit->trend->against))
        return refuse(say("The airframe doesn't say that this stands against the conclusion."),
                      trended.point);
    return {};
}

Result<void> may(const State& state, const Airframe& airframe, const Concluded& concluded) {
    const auto obstacles = against(state, airframe, concluded.fit);
    if (obstacles.empty()) return {};
    const Sentence first = toText(obstacles.front(), airframe);
    const std::size_t more = obstacles.size() - 1;
    const Sentence one = concluded.fit ? say("The round can't be concluded as fit: %1", first)
                                       : say("The round can't be concluded as not fit: %1", first);
    const Sentence others = more == 0   ? Sentence()
                            : more == 1 ? say("And one more stands against it.")
                                        : say("And %1 more stand against it.", figure(more));
    return refuse(joined(one, others), obstacles.front().id,
                  say("Settle what is left, close what is open, answer what is asked."));
}

Result<void> may(const State& state, const Airframe& /*airframe*/, const Withdrawn& withdrawn) {
    if (state.phase != Phase::concluded) return refuse(say("There is no conclusion to withdraw."));
    if (withdrawn.why.empty())
        return refuse(say("Withdrawing a conclusion needs a reason."), {}, say("Say why."));
    return {};
}

Result<void> may(const State& state, const Airframe& /*airframe*/, const Signed& signature) {
    if (state.phase != Phase::concluded)
        return refuse(say("Only a concluded round can be signed."), {}, say("Conclude it first."));
    if (signature.name == state.opened.who.name) return {};
    return refuse(say("The round is %1's; the key is %2's.", state.opened.who.name, signature.name), {},
                  say("Sign with the key of the person who walked it."));
}

/// May this kind of event happen in this phase of a round at all?
Result<void> fitsPhase(Phase phase, const What& what) {
    const auto is = [&]<class... Kinds>() { return (std::holds_alternative<Kinds>(what) || ...); };
    switch (phase) {
    case Phase::walking:
        return {};
    case Phase::paused:
        if (is.template operator()<Resumed, Note, Asked, Answered, Declined>()) return {};
        return refuse(say("The round is paused."), {}, say("Resume it first."));
    case Phase::concluded:
        if (is.template operator()<Withdrawn, Signed>()) return {};
        if (is.template operator()<Asked>())
            return refuse(say("The round is concluded: nothing more can be asked in it."), {},
                          say("Ask for the conclusion to be taken back first."));
        return refuse(say("The round is concluded."), {}, say("Withdraw the conclusion first."));
    case Phase::sealed:
        break;
    }
    return refuse(say("The round is signed and sealed; nothing can be added."), {}, say("Open a new round."));
}

/// Who is up there, or on the way, has no hand for it.
Result<void> fitsPortion(const State& state, const What& what) {
    if (!state.portion || !state.portion->running) return {};
    const auto is = [&]<class... Kinds>() { return (std::holds_alternative<Kinds>(what) || ...); };
    if (is.template
        operator()<PortionEnded, Paused, Resumed, Note, Asked, Answered, Declined, Light, Clock, Trended>())
        return {};
    return refuse(say("A portion is being looked at: nothing is settled meanwhile."), {},
                  say("Say first that you are down again."));
}

} // namespace

Result<void> checkPlan(const Airframe& airframe, const std::string& walkId,
                       const std::vector<walk::Step>& plan) {
    const airframe::Walk* walk = airframe.walk(walkId);
    if (walk == nullptr) return fail(ErrorCode::notFound, say("The airframe has no such walk."), walkId);
    for (std::size_t i = 0; i < plan.size(); ++i) {
        bool known = false;
        if (const auto* go = std::get_if<walk::Go>(&plan[i])) known = airframe.stand(go->stand) != nullptr;
        if (const auto* settle = std::get_if<walk::Settle>(&plan[i])) known = walk->has(settle->point, true);
        if (const auto* set = std::get_if<walk::Set>(&plan[i])) {
            const airframe::Setting* setting = airframe.setting(set->setting);
            known = setting != nullptr && setting->state(set->to) != nullptr;
        }
        if (!known) {
            return fail(ErrorCode::notFound, say("The plan names something that this walk doesn't have."),
                        "step " + std::to_string(i + 1));
        }
    }
    return {};
}

Result<void> allowed(const State& state, const Airframe& airframe, const What& what) {
    if (auto fits = fitsPhase(state.phase, what); !fits) return fits;
    if (auto fits = fitsPortion(state, what); !fits) return fits;
    return std::visit([&](const auto& one) { return may(state, airframe, one); }, what);
}

} // namespace ambit::round
