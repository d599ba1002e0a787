// A round being walked: its log in the archive, its state in memory. The one way by which anything gets into
// a round.
#pragma once

#include "archive/archive.hpp"
#include "round/rules.hpp"

namespace ambit::archive {

/// Checks, commits, then folds: when a call returns a value, the event is on disk and in `state()`. When it
/// returns an error, neither log nor state has changed. The archive and the airframe must outlive it.
class OpenRound {
public:
    /// A new round. `opened.plan` is made here if empty. `opened` names the airframe's id, hash and walk.
    [[nodiscard]] static Result<OpenRound> begin(Archive& archive, const airframe::Airframe& airframe,
                                                 round::Opened opened, Instant at);
    /// A round from its log, exactly as it was left.
    [[nodiscard]] static Result<OpenRound> resume(Archive& archive, const airframe::Airframe& airframe,
                                                  const std::string& roundId);

    [[nodiscard]] Result<void> act(round::What what, Instant at, const std::vector<PhotoBytes>& photos = {});

    /// The same; what was looked at too early for a last look is re-opened (round::lookedTooEarly), and what
    /// is left ordered anew where this event asks for it (round::causeOf) and it changes anything: more
    /// events then, Planned the last. An error after the first leaves what is there standing.
    [[nodiscard]] Result<void> actAndReplan(round::What what, Instant at,
                                            const std::vector<PhotoBytes>& photos = {});

    /// The person wants another zone next: orders what is left anew and commits Planned. Refused if nothing
    /// is left to settle there.
    [[nodiscard]] Result<void> goToZone(const std::string& zone, Instant at);
    /// Orders what is left anew if that changes anything. `cause`: the beginning of a sentence
    /// (round::reordered).
    [[nodiscard]] Result<void> replan(const Sentence& cause, Instant at);

    /// Seals the concluded round: one transaction for the record, its PDF and the Signed event
    /// (Archive::seal).
    [[nodiscard]] Result<void> seal(const round::Signed& signature, Instant at, const file::Told& told,
                                    std::string_view recordJson, std::string_view pdf);

    [[nodiscard]] const round::State& state() const { return current; }
    [[nodiscard]] const std::vector<round::Event>& events() const { return log; }
    [[nodiscard]] const airframe::Airframe& airframe() const { return *described; }
    [[nodiscard]] Archive& store() const { return *archive; }

private:
    OpenRound(Archive& store, const airframe::Airframe& description, round::State state,
              std::vector<round::Event> events)
        : archive(&store), described(&description), current(std::move(state)), log(std::move(events)) {}

    template<class Keep> [[nodiscard]] Result<void> commit(round::What what, Instant at, Keep keep);

    Archive* archive;
    const airframe::Airframe* described;
    round::State current;
    std::vector<round::Event> log;
};

} // namespace ambit::archive
