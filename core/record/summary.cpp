#include "record/summary.hpp"

#include "record/telling.hpp"

#include <map>
#include <unordered_map>
#include <unordered_set>

namespace ambit::record {

using round::Event;
using round::Outcome;
using round::Settled;
using Became = round::Ask::Became;

namespace {

/// Fields beside which events say nothing: they come from the airframe or from Ambit.
bool isBeyondEvents(std::string_view name) {
    switch (name.size()) {
    case 3:
        return name == "how";
    case 4:
        return name == "name" || name == "zone" || name == "jasc" || name == "unit" || name == "kind";
    case 5:
        return name == "stand" || name == "limit";
    case 6:
        return name == "source" || name == "format" || name == "notice" || name == "events";
    case 7:
        return name == "verdict" || name == "version";
    case 8:
        return name == "settings" || name == "quantity" || name == "previous" || name == "openings" ||
               name == "cautions" || name == "software";
    case 9:
        return name == "statement";
    default:
        return false;
    }
}

const char* toText(Became became) {
    switch (became) {
    case Became::settled:
        return "settled";
    case Became::answered:
        return "answered";
    case Became::declined:
        return "declined";
    case Became::told:
    case Became::open: // a concluded round has none
        break;
    }
    return "told";
}

template<class Out> void sayPerson(Out& out, const round::Person& who) {
    out.text("name", who.name);
    out.text("role", who.role);
    out.text("certificate", who.certificate);
}

tl::unexpected<Error> refuse(const Event& event, Sentence what) {
    return fail(ErrorCode::invalid, std::move(what), "event " + std::to_string(event.seq));
}

} // namespace

/// Goes through the events once and keeps what the summary needs.
class Summary::Reader {
public:
    explicit Reader(Summary& its) : summary(its) {}

    Result<void> take(const Event& event) {
        if (event.seq != ++lastSeq)
            return refuse(event, ambit::say("The events' numbers don't follow each other."));
        if (summary.opened == nullptr && !std::holds_alternative<round::Opened>(event.what))
            return refuse(event, ambit::say("A round begins with the event “opened”."));
        if (summary.concluded != nullptr && !std::holds_alternative<round::Withdrawn>(event.what))
            return refuse(event, ambit::say("A concluded round takes nothing more."));
        return std::visit([&](const auto& what) { return see(event, what); }, event.what);
    }

    [[nodiscard]] Result<void> end() const {
        if (summary.concluded == nullptr || summary.opened == nullptr)
            return fail(ErrorCode::refused, ambit::say("The round is not concluded."), {},
                        ambit::say("Conclude it first."));
        for (const Point& point : summary.points)
            if (!point.settled())
                return fail(ErrorCode::refused, ambit::say("A re-opened point was not settled again."),
                            point.what == nullptr ? std::string() : point.what->point);
        return {};
    }

private:
    Result<void> see(const Event& event, const round::Opened& what) {
        if (summary.opened != nullptr) return refuse(event, ambit::say("A round is opened once."));
        summary.opened = &what;
        summary.openedAt = event.at;
        return {};
    }

    Result<void> see(const Event& event, const Settled& what) {
        const auto [place, isNew] = places.try_emplace(what.point, summary.points.size());
        if (isNew) summary.points.emplace_back();
        Point& point = summary.points[place->second];
        if (point.settled())
            return refuse(event, ambit::say("A settled point must be re-opened before it is settled again."));
        if (point.what != nullptr)
            point.earlier.push_back({point.what, point.at, point.fromPortion, point.again.front()});
        point.what = &what;
        point.at = event.at;
        point.trend = nullptr;
        point.fromPortion = what.outcome != Outcome::notInspected && portion.contains(what.point);
        point.again.clear();
        for (Ask& ask : summary.asks)
            if (ask.isOpen() && isLookAgain(ask) && ask.what->statement.point == what.point)
                end(ask, Became::settled, event.at, nullptr);
        for (const round::Photo& photo : what.photos)
            if (seen.insert(photo.sha256).second) summary.photos.push_back(&photo);
        return {};
    }

    Result<void> see(const Event& event, const round::Reopened& what) {
        const auto found = places.find(what.point);
        if (found == places.end() || !summary.points[found->second].settled())
            return refuse(event, ambit::say("Only a settled point can be re-opened."));
        summary.points[found->second].again.push_back({event.at, &what, 0});
        return {};
    }

    /// A rule wants these again.
    Result<void> goBack(const Event& event, const std::vector<std::string>& list) {
        for (const std::string& id : list) {
            const auto found = places.find(id);
            if (found == places.end() || !summary.points[found->second].settled())
                return refuse(event, ambit::say("Only a settled point is settled again."));
            summary.points[found->second].again.push_back({event.at, nullptr, 0, event.seq});
        }
        return {};
    }

    Result<void> see(const Event& event, const round::Interrupted& what) {
        portion.clear();
        summary.interruptions.push_back(&event);
        return goBack(event, what.again);
    }

    Result<void> see(const Event& event, const round::QuickRun& what) {
        if (summary.quickRun != nullptr) return refuse(event, ambit::say("A quick run is asked about once."));
        summary.quickRun = &event;
        return goBack(event, what.again);
    }

    Result<void> see(const Event& /*event*/, const round::PortionBegun& what) {
        portion = {what.points.begin(), what.points.end()};
        return {};
    }

    Result<void> see(const Event& /*event*/, const round::PortionEnded& what) {
        if (!what.looked) portion.clear();
        return {};
    }

    Result<void> see(const Event& /*event*/, const round::StandReached& /*what*/) {
        portion.clear();
        return {};
    }

    Result<void> see(const Event& /*event*/, const round::SettingChanged& /*what*/) {
        portion.clear();
        return {};
    }

    Result<void> see(const Event& event, const round::Clock& /*what*/) {
        summary.clock = &event;
        return {};
    }

    Result<void> see(const Event& /*event*/, const round::Night& what) {
        summary.night = what.expected;
        return {};
    }

    Result<void> see(const Event& event, const round::Trended& what) {
        const auto found = places.find(what.point);
        if (found == places.end())
            return refuse(event, ambit::say("Where a value is going is told of a settled point."));
        summary.points[found->second].trend = &what;
        return {};
    }

    Result<void> see(const Event& event, const round::Asked& what) {
        const round::Statement& said = what.statement;
        if (what.ask != static_cast<std::int64_t>(summary.asks.size()) + 1)
            return refuse(event, ambit::say("What is asked is numbered without a gap."));
        if (!statements.insert(said.id).second) return refuse(event, ambit::say("This was said already."));
        const bool remark = said.kind == round::Statement::Kind::remark;
        summary.asks.push_back({&what, event.at, remark ? Became::told : Became::open, {}, nullptr});
        if (said.kind != round::Statement::Kind::lookAgain) return {};
        // Of a point not settled yet there is nothing to settle again.
        if (const auto found = places.find(said.point); found != places.end())
            summary.points[found->second].again.push_back({event.at, nullptr, what.ask});
        return {};
    }

    Result<void> see(const Event& event, const round::Answered& what) {
        Ask* ask = openAsk(what.ask);
        if (ask == nullptr || isLookAgain(*ask))
            return refuse(event, ambit::say("Only an open question is answered."));
        end(*ask, Became::answered, event.at, &what.words);
        return {};
    }

    Result<void> see(const Event& event, const round::Declined& what) {
        Ask* ask = openAsk(what.ask);
        if (ask == nullptr) return refuse(event, ambit::say("Only what is open is declined."));
        end(*ask, Became::declined, event.at, &what.why);
        if (!isLookAgain(*ask)) return {};
        if (const auto found = places.find(ask->what->statement.point); found != places.end())
            std::erase_if(summary.points[found->second].again,
                          [&](const Again& again) { return again.ask == what.ask; });
        return {};
    }

    Result<void> see(const Event& event, const round::Concluded& what) {
        for (const Ask& ask : summary.asks)
            if (ask.isOpen()) return refuse(event, ambit::say("Something that was asked is open still."));
        summary.concluded = &what;
        summary.concludedAt = event.at;
        return {};
    }

    Result<void> see(const Event& event, const round::Withdrawn& /*what*/) {
        if (summary.concluded == nullptr)
            return refuse(event, ambit::say("There is no conclusion to take back."));
        summary.concluded = nullptr;
        return {};
    }

    Result<void> see(const Event& event, const round::StandBlocked& what) {
        if (!begin(event, "stand " + what.stand))
            return refuse(event, ambit::say("A blocked stand is blocked once."));
        return {};
    }

    Result<void> see(const Event& event, const round::StandFree& what) {
        if (!end(event, "stand " + what.stand))
            return refuse(event, ambit::say("Only a blocked stand is freed."));
        return {};
    }

    Result<void> see(const Event& event, const round::AreaMarked& what) {
        if (!begin(event, "area " + std::to_string(what.area)))
            return refuse(event, ambit::say("A marked area is marked once."));
        return {};
    }

    Result<void> see(const Event& event, const round::AreaCleared& what) {
        if (!end(event, "area " + std::to_string(what.area)))
            return refuse(event, ambit::say("Only a marked area is cleared."));
        return {};
    }

    Result<void> see(const Event& event, const round::Light& what) {
        if (!(what.low ? begin(event, "light") : end(event, "light")))
            return refuse(event, ambit::say("The light is said to be what it was not."));
        return {};
    }

    static Result<void> see(const Event& event, const round::Signed& /*what*/) {
        return refuse(event, ambit::say("A round's own signature can't be part of what it signs."));
    }

    template<class Other> static Result<void> see(const Event& /*event*/, const Other& /*what*/) {
        return {};
    }

    static bool isLookAgain(const Ask& ask) {
        return ask.what->statement.kind == round::Statement::Kind::lookAgain;
    }
    Ask* openAsk(std::int64_t number) {
        if (number < 1 || number > static_cast<std::int64_t>(summary.asks.size())) return nullptr;
        Ask& ask = summary.asks[static_cast<std::size_t>(number) - 1];
        return ask.isOpen() ? &ask : nullptr;
    }
    static void end(Ask& ask, Became became, Instant at, const std::string* words) {
        ask.became = became;
        ask.until = at;
        ask.words = words;
    }

    /// What differs lasts until it is said that it doesn't any more. False: it did already.
    bool begin(const Event& event, const std::string& what) {
        if (!lasting.emplace(what, summary.differences.size()).second) return false;
        summary.differences.push_back({&event.what, event.at, {}});
        return true;
    }
    /// False: it didn't.
    bool end(const Event& event, const std::string& what) {
        const auto found = lasting.find(what);
        if (found == lasting.end()) return false;
        summary.differences[found->second].until = event.at;
        lasting.erase(found);
        return true;
    }

    Summary& summary;
    std::int64_t lastSeq = 0;
    std::unordered_map<std::string_view, std::size_t> places; ///< of points
    std::unordered_set<std::string_view> seen;                ///< photos
    std::unordered_set<std::string_view> portion;             ///< points, of the one that is in mind
    std::unordered_set<std::string_view> statements;          ///< ids of what was asked
    std::map<std::string, std::size_t> lasting;               ///< what differs still: its place among them
};

template<class Out>
void Summary::saySettled(Out& out, const Settled& what, Instant at, bool fromPortion, bool counts) {
    out.text("outcome", round::toText(what.outcome));
    out.instant("at", at);
    if (what.by == round::By::key) out.text("by", "key");
    if (fromPortion) out.flag("portion", true);
    if (what.value) {
        out.object("measured", [&] {
            out.text("value", *what.value);
            // Of the value that counts it may be the limit's own, which no event names.
            const std::string& unit = counts && what.byPhoto ? what.measurements.front().unit : what.unit;
            if (unit.empty() && !counts) out.nothing("unit");
            out.textIfAny("unit", unit);
            if (what.renewed) out.flag("renewed", true);
            out.textIfAny("from", round::fromOf(what));
            if (what.byPhoto)
                out.text("uncertainty", what.measurements.front().uncertainty);
            else
                out.textIfAny("uncertainty", what.uncertainty);
        });
    }
    if (!what.measurements.empty()) {
        out.list("measurements", what.measurements, [&](const round::Measurement& one) {
            out.text("what", round::toText(one.what));
            out.text("value", one.value);
            out.text("unit", one.unit);
            out.text("uncertainty", one.uncertainty);
            out.text("photo", one.photo);
        });
    }
    if (what.outcome == Outcome::sound && !what.photos.empty())
        out.texts("photos", what.photos,
                  [](const round::Photo& photo) -> const std::string& { return photo.sha256; });
    if (what.outcome == Outcome::finding) {
        out.object("finding", [&] {
            out.text("words", what.words);
            out.text("class", airframe::toText(what.severity));
            out.texts("photos", what.photos,
                      [](const round::Photo& photo) -> const std::string& { return photo.sha256; });
        });
    }
    if (what.outcome == Outcome::notInspected) {
        out.object("notInspected", [&] {
            out.text("why", what.why);
            out.textIfAny("basis", what.basis);
        });
    }
}

template<class Out> void Summary::saySettling(Out& out, const Point& point) {
    saySettled(out, *point.what, point.at, point.fromPortion, true);
    out.text("id", point.what->point);
    if (point.trend != nullptr) {
        out.object("trend", [&] {
            out.text("is", judge::toText(point.trend->is));
            if (point.trend->is != judge::Standing::within)
                out.text("then", point.trend->stands ? "against" : "warns");
            out.texts("words", point.trend->words,
                      [](const std::string& words) -> const std::string& { return words; });
        });
    }
    if (point.earlier.empty()) return;
    out.list("earlier", point.earlier, [&](const Earlier& one) {
        saySettled(out, *one.what, one.at, one.fromPortion, false);
        const Again& again = one.again;
        if (again.event != 0) {
            out.object("back", [&] {
                out.instant("at", again.at);
                out.integer("event", again.event);
            });
            return;
        }
        if (again.reopened == nullptr) {
            out.object("asked", [&] {
                out.instant("at", again.at);
                out.integer("ask", again.ask);
            });
            return;
        }
        out.object("reopened", [&] {
            out.instant("at", again.at);
            out.text("why", again.reopened->why);
        });
    });
}

template<class Out> void Summary::sayAsk(Out& out, const Ask& ask) {
    const round::Statement& said = ask.what->statement;
    out.integer("ask", ask.what->ask);
    out.text("kind", round::toText(said.kind));
    out.textIfAny("point", said.point);
    out.textIfAny("words", said.words);
    out.instant("said", said.at);
    out.instant("at", ask.at);
    out.object("who", [&] { sayPerson(out, said.who); });
    out.text("became", toText(ask.became));
    if (ask.became == Became::told) return;
    out.instant("until", ask.until);
    if (ask.words != nullptr) out.text(ask.became == Became::answered ? "answer" : "why", *ask.words);
}

template<class Out> void Summary::sayDifference(Out& out, const Difference& difference) {
    const auto* blocked = std::get_if<round::StandBlocked>(difference.what);
    const auto* marked = std::get_if<round::AreaMarked>(difference.what);
    out.text("what", blocked != nullptr ? "stand blocked" : marked != nullptr ? "area marked" : "light low");
    out.instant("at", difference.at);
    if (blocked != nullptr) {
        out.text("stand", blocked->stand);
        out.text("why", blocked->why);
    }
    if (marked != nullptr) {
        out.integer("area", marked->area);
        out.text("why", marked->why);
    }
    if (difference.until) out.instant("until", *difference.until);
}

template<class Out> void Summary::sayInterruption(Out& out, const round::Event& event) {
    const auto& what = std::get<round::Interrupted>(event.what);
    out.integer("event", event.seq);
    out.instant("at", event.at);
    out.text("cause", round::toText(what.cause));
    out.integer("seconds", what.seconds);
    out.text("rule", round::toText(what.rule.from));
    if (what.rule.from == round::BackRule::From::points) out.integer("back", what.rule.points);
    out.integer("again", static_cast<std::int64_t>(what.again.size()));
}

template<class Out> void Summary::sayConditions(Out& out) const {
    if (!interruptions.empty())
        out.list("interruptions", interruptions, [&](const Event* one) { sayInterruption(out, *one); });
    if (quickRun != nullptr)
        out.object("quickRun", [&] {
            const auto& what = std::get<round::QuickRun>(quickRun->what);
            out.integer("event", quickRun->seq);
            out.integer("points", what.points);
            out.integer("ms", what.ms);
            out.integer("again", static_cast<std::int64_t>(what.again.size()));
        });
    if (clock != nullptr)
        out.object("clock", [&] {
            out.instant("at", clock->at);
            out.instant("satellite", std::get<round::Clock>(clock->what).satellite);
        });
    if (night) out.flag("night", true);
}

template<class Out> void Summary::sayOpened(Out& out, const round::Opened& what) {
    out.object("aircraft", [&] {
        out.text("registration", what.registration);
        out.text("serial", what.serial);
        out.object("airframe", [&] {
            out.text("id", what.airframe);
            out.text("sha256", what.airframeSha256);
        });
        out.list("counters", what.counters, [&](const round::CounterReading& reading) {
            out.text("id", reading.id);
            out.text("value", reading.value);
        });
    });
    out.object("walk", [&] { out.text("id", what.walk); });
    out.integer("offsetMinutes", what.offsetMinutes);
    out.object("signer", [&] { sayPerson(out, what.who); });
    if (what.position) {
        out.object("position", [&] {
            out.text("latitude", what.position->latitude);
            out.text("longitude", what.position->longitude);
        });
    }
}

template<class Out> void Summary::say(Out& out, std::string_view roundId) const {
    sayOpened(out, *opened);
    out.text("round", roundId);
    out.instant("openedAt", openedAt);
    out.instant("concludedAt", concludedAt);
    out.object("conclusion", [&] {
        out.flag("fit", concluded->fit);
        out.textIfAny("reasons", concluded->reasons);
    });
    out.list("photos", photos, [&](const round::Photo* photo) {
        out.text("sha256", photo->sha256);
        out.text("type", photo->type);
        out.integer("bytes", photo->bytes);
    });
    if (!differences.empty())
        out.list("differences", differences, [&](const Difference& one) { sayDifference(out, one); });
    sayConditions(out);
    if (!asks.empty()) out.list("asks", asks, [&](const Ask& one) { sayAsk(out, one); });
    out.list("points", points, [&](const Point& point) { saySettling(out, point); });
}

Result<Summary> Summary::of(const std::vector<Event>& events) {
    Summary summary;
    Reader reader(summary);
    for (const Event& event : events)
        if (auto taken = reader.take(event); !taken) return tl::unexpected(taken.error());
    if (auto whole = reader.end(); !whole) return tl::unexpected(whole.error());
    return summary;
}

Json Summary::json(const std::string& roundId) const {
    Writing out;
    say(out, roundId);
    return std::move(out.json);
}

std::optional<std::string> Summary::differsIn(JsonView content, std::string_view roundId) const {
    Comparing out(content, isBeyondEvents);
    say(out, roundId);
    return out.end();
}

int versionOf(const std::vector<Event>& events) {
    int version = 1;
    for (const Event& event : events)
        version = std::max(version, round::versionOf(event.what));
    return version;
}

} // namespace ambit::record
