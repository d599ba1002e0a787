// A record's content, read for drawing. All that is drawn comes from the record's own events, folded again by
// the round's rules: the pages can't say anything that the events don't.
#pragma once

#include "base/parse.hpp"
#include "record/key.hpp"
#include "round/state.hpp"

#include <set>

namespace ambit::paper {

/// One time a point was settled, or re-opened, or asked for again, or that was declined, or a rule wanted it
/// again.
struct Entry {
    enum class Kind { settled, reopened, asked, declined, back };
    Kind kind = Kind::settled;
    Instant at;
    std::string stand; ///< id; empty: none reached yet
    std::optional<round::Settled> settled;
    std::string words;        ///< why it was re-opened or declined; what was asked
    std::string by;           ///< who asked
    bool fromPortion = false; ///< looked at in one go, told down again
};

struct PointView {
    int number = 0; ///< in the walk's listed order, from 1
    const airframe::Point* point = nullptr;
    std::vector<Entry> entries; ///< as they happened; the last settled one counts

    [[nodiscard]] const Entry& counting() const;
    [[nodiscard]] round::Outcome outcome() const { return counting().settled->outcome; }
};

/// One time something stood open.
struct OpeningView {
    const airframe::Opening* opening = nullptr;
    Instant made;
    std::optional<Instant> closed;
    bool met = false; ///< found so at the start
};

/// A line of the timeline.
struct TimelineEntry {
    enum class Kind {
        opened,
        stand,
        settled,
        setting,
        opening,
        closing,
        reopened,
        paused,
        resumed,
        note,
        planned,
        blocked,
        usable,
        marked,
        cleared,
        light,
        alone,
        portion,
        down,
        interrupted,
        quick,
        clock,
        night,
        asked,
        answered,
        declined,
        withdrawn,
        concluded
    };
    Kind kind{};
    Instant at;
    std::string id;           ///< of stand, setting, opening or point; number of a marked area or an ask
    std::string words;        ///< state id of a setting; else what was said
    std::vector<int> numbers; ///< settled points, or those to be settled again
    bool fit = false;         ///< as concluded
    bool low = false;         ///< the light
};

/// Something the machine's description doesn't know: a stand that couldn't be used, something in the way, low
/// light.
struct DifferenceView {
    TimelineEntry::Kind kind{}; ///< blocked, marked or light
    std::string id;             ///< of the stand; number of the area
    std::string why;
    Instant since;
    std::optional<Instant> until; ///< none: to the end
    airframe::Outline outline;    ///< of an area
};

struct RecordView {
    const airframe::Airframe* airframe = nullptr;
    const airframe::Walk* walk = nullptr;
    std::string identity; ///< sha256 of the canonical content, hex
    std::vector<std::string> previous;
    round::State state; ///< at the end
    Instant concludedAt;
    std::vector<PointView> points; ///< listed order
    std::vector<OpeningView> openings;
    std::vector<DifferenceView> differences; ///< in the order told
    std::vector<std::string> askKeys;        ///< of each of the state's asks: its key's fingerprint
    std::vector<TimelineEntry> timeline;
    int pauses = 0;
    int reopenings = 0;

    [[nodiscard]] const round::Opened& opened() const { return state.opened; }
    [[nodiscard]] const round::Concluded& conclusion() const { return *state.conclusion; }
    [[nodiscard]] int count(round::Outcome outcome) const;
    [[nodiscard]] bool hasFindings() const; ///< also those that no longer count
};

/// Errors as of round::eventFrom and round::fold, with the JSON pointer; signature: something wasn't asked by
/// whom it says; refused if the round isn't concluded. The airframe must outlive the view.
[[nodiscard]] Result<RecordView> viewOf(const Json& content, const airframe::Airframe& airframe);

} // namespace ambit::paper
