// The watcher's side of the network: follows walkers, each on a connection of its own that is made again
// whenever it breaks, and keeps what comes in an archive of its own. On one thread for all of them.
#pragma once

#include "archive/archive.hpp"
#include "link/peers.hpp"
#include "link/tls.hpp"
#include "watch/frames.hpp"

#include <QObject>
#include <QThread>
#include <filesystem>
#include <memory>

namespace ambit::link {

struct WatcherSettings {
    std::filesystem::path archive; ///< of what is watched: not the one where records are kept
    std::filesystem::path walkers; ///< the file of those whom this device may watch (peers.hpp)
};

enum class LinkState {
    connecting, ///< for the first time, or again
    in,
    lost, ///< was in; tried again, for as long as it takes
    over  ///< ended by either side, or refused: not tried again
};

/// A record as the walker has it.
struct RecordHere {
    std::string sha256; ///< its identity
    std::string json;
    std::string pdf; ///< "": none
};

class WatcherSide;

class WatcherLink : public QObject {
    Q_OBJECT
public:
    /// `me` signs once, for the connections' certificate. Errors: storage, those of tlsFor.
    [[nodiscard]] static Result<std::unique_ptr<WatcherLink>> open(const WatcherSettings& settings,
                                                                   const record::Signer& me, Instant now);
    ~WatcherLink() override;

    /// Follows whoever made this invitation. Gives the number by which they are known here.
    std::uint64_t join(const watch::Invitation& invitation);
    /// Follows one who is known: where they were last, and where the network says they are now.
    std::uint64_t join(const Walker& walker);
    void leave(std::uint64_t walker);
    /// It is no longer joined without a code.
    void forget(const std::string& certificateSha256);

    /// Sent now, or when there is a connection again; `heard` tells what became of it. One at a time: another
    /// is sent when the one before was heard.
    void say(std::uint64_t walker, const watch::Say& what);
    /// The round's record with one more signature: the same with its files.
    void offer(std::uint64_t walker, const std::string& id, const RecordHere& record);

signals: // from the link's own thread
    /// `why` empty: nothing to say. Of `over` with a code, something is wrong.
    void stateChanged(std::uint64_t walker, ambit::link::LinkState state, const ambit::Error& why);
    /// Whose certificate it is; once it is known.
    void known(std::uint64_t walker, const ambit::watch::Peer& who);
    /// This is walked there now. What was kept of it earlier is in the archive.
    void roundChanged(std::uint64_t walker, const std::string& roundId, std::int64_t events);
    /// Stored, in order, once each: a killed program has them; what a power cut takes comes again.
    void logged(std::uint64_t walker, const std::string& roundId,
                const std::vector<ambit::round::Event>& events);
    void watching(std::uint64_t walker, const std::vector<std::string>& names);
    void photoHere(std::uint64_t walker, const std::string& sha256);
    void recordHere(std::uint64_t walker, const ambit::link::RecordHere& record);
    /// `why` empty: it is in the log, or kept.
    void heard(std::uint64_t walker, const std::string& id, const std::string& why);
    /// Those whom this device may watch have changed.
    void walkersChanged(const std::vector<ambit::link::Walker>& walkers);

private:
    WatcherLink() = default;
    template<class Do> void post(Do what);

    QThread thread;
    std::unique_ptr<WatcherSide> side; ///< lives in the thread
    std::uint64_t lastNumber = 0;
};

} // namespace ambit::link
