// The watcher's side of the network: follows walkers, each on a connection of its own that is made again
// whenever it breaks, and keeps what comes in an archive of its own. On one thread for all of them.
#pragma once

#include "archive/archive.hpp"
#include "link/peers.hpp"
#include "link/tls.hpp"
#include "model/links.hpp"

#include <QThread>
#include <filesystem>
#include <memory>

namespace ambit::link {

struct WatcherSettings {
    std::filesystem::path archive; ///< of what is watched: not the one where records are kept
    std::filesystem::path walkers; ///< the file of those whom this device may watch (peers.hpp)
};

class WatcherSide;

class WatcherLink : public view::LinkToWalkers {
    Q_OBJECT
public:
    /// `me` signs once, for the connections' certificate. Errors: storage, those of tlsFor.
    [[nodiscard]] static Result<std::unique_ptr<WatcherLink>> open(const WatcherSettings& settings,
                                                                   const record::Signer& me, Instant now);
    ~WatcherLink() override;

    [[nodiscard]] std::vector<watch::Walker> knownAtFirst() const override { return walkers; }
    std::uint64_t join(const watch::Invitation& invitation) override;
    std::uint64_t join(const watch::Walker& walker) override;
    void leave(std::uint64_t walker) override;
    void forget(const std::string& certificateSha256) override;
    void say(std::uint64_t walker, const watch::Say& what) override;
    void offer(std::uint64_t walker, const std::string& id, const watch::RecordHere& record) override;

private:
    WatcherLink() = default;
    template<class Do> void post(Do what);

    QThread thread;
    std::unique_ptr<WatcherSide> side; ///< lives in the thread
    std::uint64_t lastNumber = 0;
    std::vector<watch::Walker> walkers; ///< when it was opened
};

} // namespace ambit::link
