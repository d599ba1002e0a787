// What a round's events alone say, in the form RECORD.md gives it: built into each content, and held against
// each content that is checked. Inside core/record only.
#pragma once

#include "round/state.hpp"

#include <vector>

namespace ambit::record {

/// A round's events, and what they come to. Points to the events, which must outlive it.
class Summary {
public:
    /// Refused (`where`: the event) unless the log is whole: numbered without a gap, from opened to
    /// concluded, settled and re-opened by turns, what differs begun and ended by turns, what was asked ended
    /// once.
    [[nodiscard]] static Result<Summary> of(const std::vector<round::Event>& events);

    /// The fields of a content that come from events, without what only the airframe knows (names, units,
    /// limits, openings). `roundId`: of the first event.
    [[nodiscard]] Json json(const std::string& roundId) const;
    /// The pointer of the first thing in a content of the right shape that isn't what `json` says.
    [[nodiscard]] std::optional<std::string> differsIn(JsonView content, std::string_view roundId) const;

private:
    class Reader;

    /// Something after which a settled point was to be settled again.
    struct Again {
        Instant at;
        const round::Reopened* reopened; ///< by whoever walked; nullptr: asked, or a rule wanted it
        std::int64_t ask;                ///< 0: a rule wanted it
        std::int64_t event = 0;          ///< then: the interruption or the quick run, by its number
    };
    struct Earlier {
        const round::Settled* what;
        Instant at;
        bool fromPortion;
        Again again;
    };
    struct Point {
        const round::Settled* what = nullptr;
        Instant at;
        bool fromPortion = false;
        const round::Trended* trend = nullptr; ///< where the last value is going
        std::vector<Earlier> earlier;
        std::vector<Again> again; ///< what asks for it still, in the order it came
        [[nodiscard]] bool settled() const { return what != nullptr && again.empty(); }
    };
    struct Ask {
        const round::Asked* what;
        Instant at;
        round::Ask::Became became;
        Instant until;
        const std::string* words; ///< the answer, or why it was declined
        [[nodiscard]] bool isOpen() const { return became == round::Ask::Became::open; }
    };
    struct Difference {
        const round::What* what;
        Instant at;
        std::optional<Instant> until;
    };

    template<class Out> void say(Out& out, std::string_view roundId) const;
    template<class Out> static void sayOpened(Out& out, const round::Opened& what);
    template<class Out>
    static void saySettled(Out& out, const round::Settled& what, Instant at, bool fromPortion, bool counts);
    template<class Out> static void saySettling(Out& out, const Point& point);
    template<class Out> static void sayAsk(Out& out, const Ask& ask);
    template<class Out> static void sayDifference(Out& out, const Difference& difference);
    template<class Out> static void sayInterruption(Out& out, const round::Event& event);
    template<class Out> void sayConditions(Out& out) const;

    const round::Opened* opened = nullptr;
    Instant openedAt;
    const round::Concluded* concluded = nullptr;
    Instant concludedAt;
    std::vector<Point> points;               ///< in the order of first settling
    std::vector<const round::Photo*> photos; ///< each once
    std::vector<Difference> differences;
    std::vector<Ask> asks; ///< the first has number 1
    std::vector<const round::Event*> interruptions;
    const round::Event* quickRun = nullptr;
    const round::Event* clock = nullptr; ///< the last
    bool night = false;
};

/// The content's version: that of EVENT.md which brought the latest kind among the events.
[[nodiscard]] int versionOf(const std::vector<round::Event>& events);

} // namespace ambit::record
