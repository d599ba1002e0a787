// What a round allows. Each rule has one place, here; the fold, the screens and the command line ask it.
#pragma once

#include "round/state.hpp"

namespace ambit::round {

/// May this happen now? The error (code refused) says why not and what to do. The rules:
/// - events' numbers follow each other; time may run backwards (clocks are set), it is kept as told;
/// - a sealed round takes nothing more; a concluded one only Withdrawn and Signed; a paused one only Resumed,
/// Note, and what is asked and said to that;
/// - a stand exists; an `onlyFrom` stand is reached from one of those; a blocked one is not reached, and
/// nothing is settled as sound or finding there and nothing set, also by who stands on it already;
/// - a stand is blocked with a reason, once, and freed when it is blocked;
/// - an area has the next number, a reason and an outline that is a simple polygon and doesn't cover where
/// the person is (the walk's start before any stand); twenty at a time at most; it is cleared when it is
/// marked;
/// - the light is said to be what it was not;
/// - a round is walked on one's own from its second event on or not at all: nothing was shown before;
/// - what is asked has the next number, is said of this round, at a point of this walk if at any, and for the
/// first time (its id); twenty can be open at a time at most;
/// - a question is answered with words; a look again or a question is declined with a reason; each once. A
/// look again also ends when its point is settled;
/// - a setting is changed at one of the change's stands, from the state it is in, its `needs` in this walk
/// settled sound;
/// - sound and finding: at one of the point's stands, in its settings, what comes before it in this walk
/// settled, what it looks through open;
///   a measured point has a value, within its limit if sound, in the limit's unit or one of its quantity;
/// what was measured in photos is in the settling's own, and a value from there is the first one's; an
/// uncertainty of another value goes with what it was read from;
/// - where a value is going is told of a point that was measured; it stands against `fit` only where the
/// airframe says so;
/// - a finding has words and is at least as severe as the airframe says; not inspected has a reason, and may
/// be said anywhere;
/// - an unsettled point can't be re-opened, a settled one must be re-opened before it is settled again;
/// - an opening is made when it is not owed and closed when it is;
/// - a portion is of points that may be looked at here, those before them in it taken as done; while it runs
/// nothing is settled, set, opened or closed, and nobody goes elsewhere;
/// - after an interruption exactly what the operator's rule wants is settled again (askedBack); it ends what
/// was kept in mind of a portion;
/// - a quick run is asked about once in a round, of points that were settled in it;
/// - night is said to be expected where it was not, or the other way;
/// - the points of the last look are looked at when everything else is settled; what is settled, opened or
/// closed after them asks for them again before a conclusion;
/// - a conclusion needs every point of the walk settled, nothing owed and nothing asked that is still open;
/// `fit` also no grounding finding and no not-inspected
///   point without a stated basis;
/// - a signature names the concluded round's signer.
[[nodiscard]] Result<void> allowed(const State& state, const airframe::Airframe& airframe, const What& what);

/// Does a plan name only what the airframe and this walk have? notFound, with the step's number, if not.
[[nodiscard]] Result<void> checkPlan(const airframe::Airframe& airframe, const std::string& walkId,
                                     const std::vector<walk::Step>& plan);

/// One thing that stands against a conclusion.
struct Obstacle {
    enum class Kind { unsettled, owed, grounding, noBasis, lookAgain, question, lastLook, trend };
    Kind kind{};
    std::string id;    ///< of the point or opening; a question's number
    std::string by;    ///< who asked: of lookAgain (a point that was settled before) and question
    std::string words; ///< of a question
};

/// Everything that stands against concluding `fit` (or not fit: unsettled, owed and asked only), in listed
/// order.
[[nodiscard]] std::vector<Obstacle> against(const State& state, const airframe::Airframe& airframe, bool fit);

/// Points of the last look that count, but after which something was settled, set, opened or closed.
[[nodiscard]] std::vector<std::string> lookedTooEarly(const State& state, const airframe::Airframe& airframe);

[[nodiscard]] Sentence toText(const Obstacle& obstacle, const airframe::Airframe& airframe);

} // namespace ambit::round
