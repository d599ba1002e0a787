// Plays a script on a round. Time is the script's own: the same script gives the same log, byte for byte.
#pragma once

#include "archive/open_round.hpp"
#include "script/asker.hpp"

#include <functional>

namespace ambit::script {

/// The next single thing `follow` does in this state: a go, a change or a settling; nullopt when it is
/// through.
[[nodiscard]] Result<std::optional<Doing>> followStep(const Follow& follow, const round::State& state,
                                                      const airframe::Airframe& airframe);

/// Seconds a single action takes: what its line says, else the airframe's time, else 4.
[[nodiscard]] int secondsOf(const Action& action, const airframe::Airframe& airframe,
                            const round::State& state);

/// A photo file's bytes with their hash and type (JPEG or PNG, told by the first bytes), at most 40 MB.
[[nodiscard]] Result<archive::PhotoBytes> readPhoto(const std::filesystem::path& path);

/// The round's first event as the script says it.
[[nodiscard]] round::Opened openedBy(const Open& open, const airframe::Airframe& airframe);

/// Plays actions one by one on a round that is walked; `sign` is not its job.
class Player {
public:
    /// `folder`: where the paths of photos and keys start.
    Player(archive::OpenRound& onRound, const std::filesystem::path& itsFolder, Instant openedAt)
        : round(&onRound), folder(itsFolder), asker(itsFolder), now(openedAt) {}

    /// One line's events. The error's `where` names the line.
    [[nodiscard]] Result<void> play(const Action& action);
    [[nodiscard]] Instant time() const { return now; }

private:
    [[nodiscard]] Result<void> playSingle(const Action& action);

    archive::OpenRound* round;
    std::filesystem::path folder;
    Asker asker;
    Instant now;
};

/// What `walkScript` calls after each event is on disk.
using Committed = std::function<void(const round::Event&)>;
/// And then: others may have something to say to the round meanwhile. An error stops the script.
using Between = std::function<Result<void>(archive::OpenRound&)>;

/// Walks the whole script but its `sign` on the archive. Where the archive holds a part of this very round
/// already, each event is compared with the stored one (a difference is a conflict, naming its number; an
/// ask's signature, made anew, may differ; what others asked in between, and what came of it, is passed over)
/// and the walk goes on where the log ends. The airframe and the archive must outlive the round given back.
[[nodiscard]] Result<archive::OpenRound> walkScript(archive::Archive& archive,
                                                    const airframe::Airframe& airframe,
                                                    std::string_view airframeText, const Script& script,
                                                    const Committed& committed, const Between& between = {});

} // namespace ambit::script
