// The walker's side of the network: takes in those who may watch and serves them the round in hand, on a
// thread and an archive connection of its own, so that the walk never waits for any of it. What is asked of
// it from outside returns at once, unless it says otherwise.
#pragma once

#include "archive/archive.hpp"
#include "link/tls.hpp"
#include "model/links.hpp"

#include <QHostAddress>
#include <QThread>
#include <filesystem>
#include <memory>

namespace ambit::link {

struct WalkerSettings {
    std::filesystem::path archive;  ///< where the round is walked
    std::filesystem::path watchers; ///< the file of those who may watch (peers.hpp)
    QHostAddress address = QHostAddress(QHostAddress::Any);
    std::uint16_t port = watch::usualPort; ///< 0: any free one
    std::vector<watch::Address> shown;     ///< in invitations; empty: this machine's own
};

class WalkerSide;

class WalkerLink : public view::LinkToWatchers {
    Q_OBJECT
public:
    /// Listens from now on. `me` signs once, for the connections' certificate. Errors: storage (the port is
    /// taken, a file can't be read), those of tlsFor.
    [[nodiscard]] static Result<std::unique_ptr<WalkerLink>> open(const WalkerSettings& settings,
                                                                  const record::Signer& me, Instant now);
    ~WalkerLink() override; ///< says goodbye first

    [[nodiscard]] std::uint16_t port() const { return ownPort; }

    [[nodiscard]] std::vector<watch::Peer> knownAtFirst() const override { return known; }
    void goOn(const std::string& roundId) override;
    void committed(const round::Event& event) override;
    void sealed(const std::string& recordSha256) override;
    [[nodiscard]] Result<watch::Invitation> invite() override;
    void closeInvitation() override;
    void takeBack(const std::string& certificateSha256) override;
    void heard(std::uint64_t connection, const std::string& id, const std::string& why) override;

private:
    WalkerLink() = default;
    template<class Do> void post(Do what);

    QThread thread;
    std::unique_ptr<WalkerSide> side; ///< lives in the thread
    std::uint16_t ownPort = 0;
    std::vector<watch::Peer> known; ///< when it was opened
};

} // namespace ambit::link
