#include "paper/record_view.hpp"

#include "base/pointer.hpp"
#include "record/asked.hpp"
#include "record/content.hpp"
#include "record/record.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::paper {

namespace {

using Kind = TimelineEntry::Kind;

/// Replays the round, event by event, and notes what each one changed.
class Replay {
public:
    Replay(RecordView& out, const airframe::Airframe& described) : view(out), airframe(described) {}

    Result<void> begin(const round::Event& first) {
        auto state = round::begin(airframe, first);
        if (!state) return tl::unexpected(state.error());
        view.state = std::move(*state);
        view.walk = airframe.walk(view.state.opened.walk);
        for (const std::string& id : view.walk->points) {
            index[id] = view.points.size();
            view.points.push_back({static_cast<int>(view.points.size()) + 1, airframe.point(id), {}});
        }
        add(Kind::opened, first.at, {}, {});
        noteOpenings(first.at, true);
        return {};
    }

    Result<void> next(const round::Event& event) {
        if (auto applied = round::apply(view.state, airframe, event); !applied) return applied;
        if (const auto* asked = std::get_if<round::Asked>(&event.what)) {
            const auto by = record::checkAsked(*asked);
            if (!by) return tl::unexpected(by.error());
            view.askKeys.push_back(by->sha256);
        }
        std::visit([&](const auto& what) { note(what, event.at); }, event.what);
        noteOpenings(event.at, false);
        return {};
    }

    /// What belonged to the walk for a while only, and was never settled, isn't told.
    void end() {
        std::erase_if(view.points,
                      [&](const PointView& point) { return !view.state.points.contains(point.point->id); });
    }

private:
    void add(Kind kind, Instant at, std::string id, std::string words) {
        view.timeline.push_back({kind, at, std::move(id), std::move(words), {}, false, false});
    }
    [[nodiscard]] std::string stand() const { return view.state.stand.value_or(""); }

    void note(const round::Opened& /*what*/, Instant /*at*/) {}
    void note(const round::Planned& what, Instant at) { add(Kind::planned, at, {}, what.why); }
    void note(const round::StandReached& what, Instant at) { add(Kind::stand, at, what.stand, {}); }
    void note(const round::SettingChanged& what, Instant at) {
        add(Kind::setting, at, what.setting, what.to);
    }
    void note(const round::Settled& what, Instant at) {
        PointView& point = view.points[index.at(what.point)];
        const bool fromPortion = view.state.points.at(what.point).last()->fromPortion;
        point.entries.push_back({Entry::Kind::settled, at, stand(), what, {}, {}, fromPortion});
        // One line tells a run of them.
        const auto& line = view.timeline;
        if (line.back().kind != Kind::settled) add(Kind::settled, at, {}, {});
        view.timeline.back().numbers.push_back(point.number);
    }
    void note(const round::Reopened& what, Instant at) {
        tell(what.point, {Entry::Kind::reopened, at, stand(), std::nullopt, what.why, {}});
        add(Kind::reopened, at, what.point, what.why);
        ++view.reopenings;
    }
    void note(const round::Alone& /*what*/, Instant at) { add(Kind::alone, at, {}, {}); }
    [[nodiscard]] std::vector<int> numbersOf(const std::vector<std::string>& points) const {
        std::vector<int> numbers;
        numbers.reserve(points.size());
        for (const std::string& id : points)
            numbers.push_back(view.points[index.at(id)].number);
        return numbers;
    }
    void note(const round::PortionBegun& what, Instant at) {
        add(Kind::portion, at, {}, {});
        view.timeline.back().numbers = numbersOf(what.points);
    }
    void note(const round::PortionEnded& what, Instant at) {
        add(Kind::down, at, {}, what.looked ? "" : "to be looked at once more");
    }
    void note(const round::Interrupted& what, Instant at) {
        add(Kind::interrupted, at, std::to_string(view.state.interruptions.size() - 1), {});
        goBack(what.again, at, "after an interruption");
    }
    void note(const round::QuickRun& what, Instant at) {
        add(Kind::quick, at, {}, {});
        goBack(what.again, at, "settled quickly");
    }
    void goBack(const std::vector<std::string>& points, Instant at, const std::string& why) {
        view.timeline.back().numbers = numbersOf(points);
        for (const std::string& id : points)
            tell(id, {Entry::Kind::back, at, stand(), std::nullopt, why, {}});
    }
    void note(const round::Clock& what, Instant at) { add(Kind::clock, at, {}, toText(what.satellite)); }
    void note(const round::Night& what, Instant at) {
        add(Kind::night, at, {}, what.bySun ? "sun" : "pilot");
        view.timeline.back().low = what.expected;
        // They come after all others, so that no number changes.
        for (const std::string& id : view.walk->night) {
            const bool isThere = view.state.points.contains(id);
            if (isThere && !index.contains(id)) {
                index[id] = view.points.size();
                view.points.push_back({static_cast<int>(view.points.size()) + 1, airframe.point(id), {}});
            }
        }
    }
    void note(const round::Trended& /*what*/, Instant /*at*/) {} // drawn with what was measured
    void note(const round::Asked& what, Instant at) {
        const round::Statement& said = what.statement;
        add(Kind::asked, at, std::to_string(what.ask), said.words);
        if (said.kind == round::Statement::Kind::lookAgain)
            tell(said.point, {Entry::Kind::asked, at, stand(), std::nullopt, said.words, said.who.name});
    }
    void note(const round::Answered& what, Instant at) {
        add(Kind::answered, at, std::to_string(what.ask), what.words);
    }
    void note(const round::Declined& what, Instant at) {
        add(Kind::declined, at, std::to_string(what.ask), what.why);
        const round::Statement& said = view.state.ask(what.ask)->what;
        if (said.kind == round::Statement::Kind::lookAgain)
            tell(said.point, {Entry::Kind::declined, at, stand(), std::nullopt, what.why, said.who.name});
    }
    void tell(const std::string& point, Entry entry) {
        view.points[index.at(point)].entries.push_back(std::move(entry));
    }
    void note(const round::OpeningMade& /*what*/, Instant /*at*/) {}
    void note(const round::OpeningClosed& /*what*/, Instant /*at*/) {}
    void note(const round::Paused& /*what*/, Instant at) {
        add(Kind::paused, at, {}, {});
        ++view.pauses;
    }
    void note(const round::Resumed& /*what*/, Instant at) { add(Kind::resumed, at, {}, {}); }
    void note(const round::Note& what, Instant at) { add(Kind::note, at, {}, what.words); }
    void note(const round::StandBlocked& what, Instant at) {
        differ(Kind::blocked, at, what.stand, what.why);
    }
    void note(const round::StandFree& what, Instant at) {
        add(Kind::usable, at, what.stand, {});
        end(Kind::blocked, at, what.stand);
    }
    void note(const round::AreaMarked& what, Instant at) {
        differ(Kind::marked, at, std::to_string(what.area), what.why);
        view.differences.back().outline = round::outlineOf(what.outline);
    }
    void note(const round::AreaCleared& what, Instant at) {
        add(Kind::cleared, at, std::to_string(what.area), {});
        end(Kind::marked, at, std::to_string(what.area));
    }
    void note(const round::Light& what, Instant at) {
        if (what.low) {
            differ(Kind::light, at, {}, {});
        } else {
            add(Kind::light, at, {}, {});
            end(Kind::light, at, {});
        }
        view.timeline.back().low = what.low;
    }
    void note(const round::Concluded& what, Instant at) {
        add(Kind::concluded, at, {}, what.reasons);
        view.timeline.back().fit = what.fit;
        view.concludedAt = at;
    }
    void note(const round::Withdrawn& what, Instant at) { add(Kind::withdrawn, at, {}, what.why); }
    void note(const round::Signed& /*what*/, Instant /*at*/) {}

    void differ(Kind kind, Instant at, const std::string& id, const std::string& why) {
        add(kind, at, id, why);
        view.differences.push_back({kind, id, why, at, std::nullopt, {}});
    }
    void end(Kind kind, Instant at, const std::string& id) {
        const auto found =
            std::find_if(view.differences.rbegin(), view.differences.rend(), [&](const DifferenceView& one) {
                return one.kind == kind && one.id == id && !one.until;
            });
        if (found != view.differences.rend()) found->until = at;
    }

    /// Openings are made by points and by hand alike: compare what is owed before and after.
    void noteOpenings(Instant at, bool atStart) {
        for (const airframe::Opening& opening : airframe.openings) {
            const bool now = view.state.openings.at(opening.id).owed;
            const bool before = owed.contains(opening.id);
            if (now == before) continue;
            if (now) {
                owed.insert(opening.id);
                view.openings.push_back({&opening, at, std::nullopt, atStart});
                if (!atStart) add(Kind::opening, at, opening.id, {});
            } else {
                owed.erase(opening.id);
                close(opening.id, at);
                add(Kind::closing, at, opening.id, {});
            }
        }
    }

    void close(const std::string& id, Instant at) {
        const auto open = std::find_if(view.openings.rbegin(), view.openings.rend(),
                                       [&](const OpeningView& opening) { return opening.opening->id == id; });
        if (open != view.openings.rend()) open->closed = at;
    }

    RecordView& view;
    const airframe::Airframe& airframe;
    std::map<std::string, std::size_t> index; // of points, by id
    std::set<std::string> owed;
};

Result<void> replay(RecordView& view, const airframe::Airframe& airframe, const Json& events) {
    Replay replay(view, airframe);
    for (std::size_t i = 0; i < events.size(); ++i) {
        const std::string pointer = pointerTo("/events", i);
        const auto event = round::eventFrom(events[i]);
        if (!event)
            return fail(event.error().code, event.error().what, pointer + event.error().where,
                        event.error().remedy);
        auto told = i == 0 ? replay.begin(*event) : replay.next(*event);
        if (!told)
            return fail(told.error().code, told.error().what, pointer + " " + told.error().where,
                        told.error().remedy);
    }
    replay.end();
    return {};
}

Result<const Json*> arrayIn(const Json& content, const char* name, bool mayBeEmpty) {
    const auto found = content.is_object() ? content.find(name) : content.end();
    if (!content.is_object() || found == content.end() || !found->is_array() ||
        (!mayBeEmpty && found->empty()))
        return fail(ErrorCode::invalid, "A record has this list.", pointerTo("", name));
    return &*found;
}

Result<void> checkKind(const Json& content) {
    const auto is = [&](const char* name, const Json& value) {
        const auto found = content.find(name);
        return found != content.end() && *found == value;
    };
    const auto isKnown = [&] {
        const auto version = content.find("version");
        return version != content.end() && version->is_number_integer() && *version >= 1 &&
               *version <= record::newestVersion;
    };
    if (content.is_object() && is("format", "ambit-record") && is("kind", "round") && isKnown()) return {};
    return fail(ErrorCode::unsupported,
                "Pages can be drawn of a round's record, version 1 to " +
                    std::to_string(record::newestVersion) + ".",
                "/format", "A newer Ambit may know this one.");
}

} // namespace

const Entry& PointView::counting() const {
    // A concluded round has settled every point: there is one.
    return *std::find_if(entries.rbegin(), entries.rend(),
                         [](const Entry& entry) { return entry.settled.has_value(); });
}

int RecordView::count(round::Outcome outcome) const {
    return static_cast<int>(std::count_if(
        points.begin(), points.end(), [&](const PointView& point) { return point.outcome() == outcome; }));
}

bool RecordView::hasFindings() const {
    return std::any_of(points.begin(), points.end(), [](const PointView& point) {
        return std::any_of(point.entries.begin(), point.entries.end(), [](const Entry& entry) {
            return entry.settled && entry.settled->outcome == round::Outcome::finding;
        });
    });
}

Result<RecordView> viewOf(const Json& content, const airframe::Airframe& airframe) {
    if (auto known = checkKind(content); !known) return tl::unexpected(known.error());
    const auto events = arrayIn(content, "events", false);
    if (!events) return tl::unexpected(events.error());
    const auto previous = arrayIn(content, "previous", true);
    if (!previous) return tl::unexpected(previous.error());

    RecordView view;
    view.airframe = &airframe;
    view.identity = record::identityOf(content);
    for (const Json& hash : **previous) {
        if (!hash.is_string()) return fail(ErrorCode::invalid, "These are identities in hex.", "/previous");
        view.previous.push_back(hash.get<std::string>());
    }
    if (auto told = replay(view, airframe, **events); !told) return tl::unexpected(told.error());
    if (!view.state.conclusion)
        return fail(ErrorCode::refused, "Pages are drawn of a concluded round only.", "/events",
                    "Conclude the round first.");
    return view;
}

} // namespace ambit::paper
