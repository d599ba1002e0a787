#include "script/player.hpp"

#include "base/canonical.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"
#include "round/back.hpp"
#include "round/pace.hpp"
#include "round/portion.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::script {

namespace {

constexpr int otherSeconds = 4;

template<class... Ts> struct Overloaded : Ts... { using Ts::operator()...; };
template<class... Ts> Overloaded(Ts...) -> Overloaded<Ts...>;

Error atLine(Error error, int line) {
    error.where = "line " + std::to_string(line) + (error.where.empty() ? "" : ", " + error.where);
    return error;
}

} // namespace

Result<std::optional<Doing>> followStep(const Follow& follow, const round::State& state,
                                        const airframe::Airframe& airframe) {
    const auto next = round::nextStep(state, airframe);
    if (!next) {
        if (follow.until)
            return fail(ErrorCode::invalid, "The plan ends before '" + *follow.until + "' is reached.",
                        *follow.until, "It may be settled already, or not be in this walk.");
        return std::optional<Doing>{};
    }
    if (const auto* go = std::get_if<walk::Go>(&*next)) return std::optional<Doing>{Go{go->stand}};
    if (const auto* set = std::get_if<walk::Set>(&*next))
        return std::optional<Doing>{Change{set->setting, set->to}};
    const std::string& id = std::get<walk::Settle>(*next).point;
    if (follow.until == id) return std::optional<Doing>{};
    Settle settle;
    settle.what.point = id;
    settle.what.outcome = round::Outcome::sound;
    if (const auto value = follow.values.find(id); value != follow.values.end()) {
        settle.what.value = value->second;
        // As a screen does for whoever says nothing else.
        const airframe::Point* point = airframe.point(id);
        if (point != nullptr && point->limit) round::readAsUsual(settle.what, *point->limit);
    }
    return std::optional<Doing>{settle};
}

int secondsOf(const Action& action, const airframe::Airframe& airframe, const round::State& state) {
    if (action.after) return *action.after;
    if (const auto* settle = std::get_if<Settle>(&action.what))
        if (const auto* point = airframe.point(settle->what.point)) return static_cast<int>(point->seconds);
    if (const auto* change = std::get_if<Change>(&action.what))
        if (const auto* setting = airframe.setting(change->setting))
            if (const auto now = state.settings.find(change->setting); now != state.settings.end())
                if (const auto* known = setting->change(now->second, change->to))
                    return static_cast<int>(known->seconds);
    return otherSeconds;
}

Result<archive::PhotoBytes> readPhoto(const std::filesystem::path& path) {
    auto bytes = readFile(path, std::size_t{40} << 20);
    if (!bytes) return tl::unexpected(bytes.error());
    std::string type;
    if (bytes->starts_with("\xFF\xD8\xFF")) type = "image/jpeg";
    if (bytes->starts_with("\x89PNG\r\n\x1A\n")) type = "image/png";
    if (type.empty())
        return fail(ErrorCode::unsupported, "This is neither a JPEG nor a PNG picture.", path.string(),
                    "Save the photo as JPEG.");
    round::Photo photo{sha256Hex(*bytes), type, static_cast<std::int64_t>(bytes->size())};
    return archive::PhotoBytes{std::move(photo), std::move(*bytes)};
}

round::Opened openedBy(const Open& open, const airframe::Airframe& airframe) {
    round::Opened opened;
    opened.registration = open.registration;
    opened.serial = open.serial;
    opened.airframe = airframe.id;
    opened.airframeSha256 = airframe.sha256;
    opened.walk = open.walk;
    opened.who = open.who;
    opened.counters = open.counters;
    opened.offsetMinutes = open.at.offsetMinutes;
    opened.position = open.position;
    return opened;
}

Result<void> Player::play(const Action& action) {
    const auto* follow = std::get_if<Follow>(&action.what);
    if (follow == nullptr)
        return playSingle(action).map_error(
            [&](Error error) { return atLine(std::move(error), action.line); });
    for (const auto& [point, value] : follow->values)
        if (round->airframe().point(point) == nullptr)
            return tl::unexpected(
                atLine({ErrorCode::notFound, "The airframe has no such point.", point, {}}, action.line));
    // What was done out of turn may have left a plan that can't be followed.
    if (auto fits = round->replan("Something was done out of turn", now); !fits)
        return tl::unexpected(atLine(fits.error(), action.line));
    while (true) {
        auto step = followStep(*follow, round->state(), round->airframe());
        if (!step) return tl::unexpected(atLine(step.error(), action.line));
        if (!*step) return {};
        if (auto done = playSingle({**step, action.after, action.line}); !done)
            return tl::unexpected(atLine(done.error(), action.line));
    }
}

Result<void> Player::playSingle(const Action& action) {
    const Instant at{now.ms + std::int64_t{1000} * secondsOf(action, round->airframe(), round->state())};
    const auto act = [&](round::What what, const std::vector<archive::PhotoBytes>& photos = {}) {
        return round->act(std::move(what), at, photos);
    };
    const auto settle = [&](const Settle& settling) -> Result<void> {
        round::Settled settled = settling.what;
        std::vector<archive::PhotoBytes> photos;
        for (const std::string& name : settling.photos) {
            auto photo = readPhoto(folder / name);
            if (!photo) return tl::unexpected(photo.error());
            settled.photos.push_back(photo->photo);
            photos.push_back(std::move(*photo));
        }
        return round->actAndReplan(std::move(settled), at, photos);
    };
    const auto anew = [&](round::What what) { return round->actAndReplan(std::move(what), at); };
    const auto mark = [&](const Mark& area) {
        return anew(round::AreaMarked{round->state().areasEver + 1, area.outline, area.why});
    };
    const auto hear = [&](const Ask& ask) -> Result<void> {
        auto asked = asker.say(ask, round->state(), at);
        if (!asked) return tl::unexpected(asked.error());
        return anew(std::move(*asked));
    };
    const auto portion = [&](const Portion& a) -> Result<void> {
        auto points = round::nextPortion(round->state(), round->airframe(), a.most);
        if (points.empty())
            return fail(ErrorCode::refused, "The plan has nothing to be looked at here next.", "",
                        "Go where it leads first.");
        return act(round::PortionBegun{std::move(points)});
    };
    const auto interrupt = [&](const Interrupt& a) {
        return anew(round::Interrupted{a.cause, a.seconds, a.rule,
                                       round::askedBack(round->state(), round->airframe(), a.rule)});
    };
    const auto quick = [&](const Quick& a) -> Result<void> {
        const auto pace = round::paceOf(round->airframe(), round->events());
        if (pace.quick.empty()) return fail(ErrorCode::refused, "Nothing was settled quickly.");
        return anew(round::asking(round->state(), pace.quick.front(), a.again));
    };
    const auto notHere = [](const auto&) -> Result<void> {
        return fail(ErrorCode::invalid, "This action has no place here.", "",
                    "A round is opened first and signed last.");
    };
    auto done = std::visit(
        Overloaded{[&](const Go& a) { return anew(round::StandReached{a.stand}); },
                   [&](const TapZone& a) { return round->goToZone(a.zone, at); },
                   [&](const Change& a) {
                       return anew(round::SettingChanged{a.setting, a.to});
                   },
                   [&](const Settle& a) { return settle(a); },
                   [&](const Reopen& a) {
                       return anew(round::Reopened{a.point, a.why});
                   },
                   [&](const Made& a) { return anew(round::OpeningMade{a.opening}); },
                   [&](const Closed& a) { return anew(round::OpeningClosed{a.opening}); },
                   [&](const Pause&) { return act(round::Paused{}); },
                   [&](const Resume&) { return anew(round::Resumed{}); },
                   [&](const Note& a) { return act(round::Note{a.words}); },
                   [&](const Block& a) {
                       return anew(round::StandBlocked{a.stand, a.why});
                   },
                   [&](const Free& a) { return anew(round::StandFree{a.stand}); },
                   [&](const Mark& a) { return mark(a); },
                   [&](const Clear& a) { return anew(round::AreaCleared{a.area}); },
                   [&](const Lighting& a) { return anew(round::Light{a.low}); },
                   [&](const Alone&) { return act(round::Alone{}); },
                   [&](const Ask& a) { return hear(a); },
                   [&](const Answer& a) {
                       return act(round::Answered{a.ask, a.words});
                   },
                   [&](const Decline& a) {
                       return anew(round::Declined{a.ask, a.why});
                   },
                   [&](const Portion& a) { return portion(a); },
                   [&](const Down& a) { return act(round::PortionEnded{a.looked}); },
                   [&](const Interrupt& a) { return interrupt(a); },
                   [&](const Quick& a) { return quick(a); },
                   [&](const Satellites& a) { return act(round::Clock{{at.ms + a.seconds * 1000}}); },
                   [&](const Dark& a) {
                       return anew(round::Night{a.expected, a.bySun});
                   },
                   [&](const Conclude& a) {
                       return act(round::Concluded{a.fit, a.reasons});
                   },
                   [&](const Follow& a) { return notHere(a); },
                   [&](const Open& a) { return notHere(a); },
                   [&](const Sign& a) { return notHere(a); }},
        action.what);
    if (done) now = at;
    return done;
}

namespace {

/// Hands the rehearsed events over to the real archive: compares where it has them already, acts where it
/// hasn't. `taken` counts what of the stored log was gone through, and all that was added since.
class Handover {
public:
    Handover(archive::Archive& from, archive::Archive& to, const airframe::Airframe& description,
             std::vector<round::Event> alreadyThere)
        : memory(&from), archive(&to), airframe(&description), stored(std::move(alreadyThere)) {}

    [[nodiscard]] Result<void> take(const round::Event& event, const Committed& committed,
                                    const Between& between) {
        const auto known = isStored(event);
        if (!known) return tl::unexpected(known.error());
        if (*known) return {};
        if (auto ready = ensureRound(event); !ready) return ready;
        if (taken > 0) {
            auto photos = photosOf(event);
            if (!photos) return tl::unexpected(photos.error());
            if (auto done = real->act(event.what, event.at, *photos); !done) return done;
        }
        ++taken;
        if (committed) committed(real->events().back());
        return between ? between(*real) : Result<void>();
    }

    /// The round as it stands in the archive, once all is taken.
    [[nodiscard]] Result<archive::OpenRound> finish(const std::string& roundId) {
        if (real) return std::move(*real);
        return archive::OpenRound::resume(*archive, *airframe, roundId);
    }

private:
    /// Whether it is the next in the archive, once passed over what others asked in an earlier run and what
    /// came of it. False: the log ends before it.
    Result<bool> isStored(const round::Event& event) {
        for (bool others = false; taken < stored.size(); ++taken) {
            const round::Event& known = stored[taken];
            if (isSame(event, known)) {
                ++taken;
                return true;
            }
            others = isOthers(event.what, known.what, others);
            if (!others)
                return fail(ErrorCode::conflict, "The archive holds this round with another event here.",
                            "event " + std::to_string(known.seq),
                            "The script has changed since; use another folder for it.");
        }
        return false;
    }
    /// But for its number, which others' events before it moved on.
    static bool isSame(round::Event event, const round::Event& other) {
        event.seq = other.seq;
        // The same words are signed otherwise each time; what is stored was checked when it was.
        auto* asked = std::get_if<round::Asked>(&event.what);
        const auto* known = std::get_if<round::Asked>(&other.what);
        if (asked != nullptr && known != nullptr) asked->jws = known->jws;
        return canonicalJson(toJson(other)) == canonicalJson(toJson(event));
    }
    /// An ask and its declining come anywhere, but not in place of one of the script's own; that something is
    /// looked at again, or ordered anew, comes right after them.
    static bool isOthers(const round::What& scripted, const round::What& known, bool afterOthers) {
        if (const auto* asked = std::get_if<round::Asked>(&known)) {
            const auto* own = std::get_if<round::Asked>(&scripted);
            return own == nullptr || own->statement.id != asked->statement.id;
        }
        if (std::holds_alternative<round::Declined>(known)) return true;
        return afterOthers && (std::holds_alternative<round::Reopened>(known) ||
                               std::holds_alternative<round::Planned>(known));
    }
    Result<void> ensureRound(const round::Event& event) {
        if (real) return {};
        auto round = stored.empty()
                         ? archive::OpenRound::begin(*archive, *airframe, std::get<round::Opened>(event.what),
                                                     event.at)
                         : archive::OpenRound::resume(*archive, *airframe, roundId(stored.front()));
        if (!round) return tl::unexpected(round.error());
        real = std::move(*round);
        return {};
    }
    Result<std::vector<archive::PhotoBytes>> photosOf(const round::Event& event) const {
        std::vector<archive::PhotoBytes> photos;
        if (const auto* settled = std::get_if<round::Settled>(&event.what))
            for (const round::Photo& photo : settled->photos) {
                auto bytes = memory->photo(photo.sha256);
                if (!bytes) return tl::unexpected(bytes.error());
                photos.push_back({photo, std::move(*bytes)});
            }
        return photos;
    }

    archive::Archive* memory;
    archive::Archive* archive;
    const airframe::Airframe* airframe;
    std::vector<round::Event> stored;
    std::size_t taken = 0;
    std::optional<archive::OpenRound> real;
};

} // namespace

Result<archive::OpenRound> walkScript(archive::Archive& archive, const airframe::Airframe& airframe,
                                      std::string_view airframeText, const Script& script,
                                      const Committed& committed, const Between& between) {
    const archive::Aircraft aircraft{script.open.registration, script.open.serial, airframe.sha256,
                                     airframe.name};
    auto memory = archive::Archive::open(":memory:");
    if (!memory) return tl::unexpected(memory.error());
    for (archive::Archive* store : {&*memory, &archive})
        if (auto added = store->addAircraft(aircraft, airframeText); !added)
            return tl::unexpected(added.error());

    auto rehearsal =
        archive::OpenRound::begin(*memory, airframe, openedBy(script.open, airframe), script.open.at.at);
    if (!rehearsal) return tl::unexpected(atLine(rehearsal.error(), 1));
    const std::string id = rehearsal->state().id;
    std::vector<round::Event> stored;
    if (auto known = archive.rounds(script.open.registration); !known)
        return tl::unexpected(known.error());
    else if (std::any_of(known->begin(), known->end(), [&](const auto& info) { return info.id == id; })) {
        auto events = archive.events(id);
        if (!events) return tl::unexpected(events.error());
        stored = std::move(*events);
    }

    Handover handover(*memory, archive, airframe, std::move(stored));
    Player player(*rehearsal, script.folder, script.open.at.at);
    std::size_t handed = 0;
    const auto handOver = [&]() -> Result<void> {
        for (; handed < rehearsal->events().size(); ++handed)
            if (auto done = handover.take(rehearsal->events()[handed], committed, between); !done)
                return done;
        return {};
    };
    if (auto done = handOver(); !done) return tl::unexpected(done.error());
    for (const Action& action : script.actions) {
        if (std::holds_alternative<Sign>(action.what)) break;
        if (auto done = player.play(action); !done) return tl::unexpected(done.error());
        if (auto done = handOver(); !done) return tl::unexpected(done.error());
    }
    return handover.finish(id);
}

} // namespace ambit::script
