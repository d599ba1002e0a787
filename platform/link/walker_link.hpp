// The walker's side of the network: takes in those who may watch and serves them the round in hand, on a
// thread and an archive connection of its own, so that the walk never waits for any of it. What is asked of
// it from outside returns at once, unless it says otherwise.
#pragma once

#include "archive/archive.hpp"
#include "link/tls.hpp"
#include "watch/door.hpp"
#include "watch/frames.hpp"
#include "watch/invitation.hpp"

#include <QHostAddress>
#include <QObject>
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

/// One who watches now.
struct Watcher {
    std::uint64_t connection = 0;
    std::string name; ///< as on the certificate
    std::string certificateSha256;
    std::int64_t kept = 0;   ///< events of the round in hand that the other device has stored
    std::int64_t served = 0; ///< bytes of files, by this connection
    friend bool operator==(const Watcher&, const Watcher&) = default;
};

class WalkerSide;

class WalkerLink : public QObject {
    Q_OBJECT
public:
    /// Listens from now on. `me` signs once, for the connections' certificate. Errors: storage (the port is
    /// taken, a file can't be read), those of tlsFor.
    [[nodiscard]] static Result<std::unique_ptr<WalkerLink>> open(const WalkerSettings& settings,
                                                                  const record::Signer& me, Instant now);
    ~WalkerLink() override; ///< says goodbye first

    [[nodiscard]] std::uint16_t port() const { return ownPort; }

    /// A round that is taken up again is the one in hand.
    void goOn(const std::string& roundId);
    /// An event is on disk; `opened` begins another round.
    void committed(const round::Event& event);
    /// The round in hand has its record, or one more signature under it.
    void sealed(const std::string& recordSha256);

    /// Lets one new device in within five minutes; the invitation before it is dead. Waits for the link's
    /// thread.
    [[nodiscard]] Result<watch::Invitation> invite();
    void closeInvitation();
    /// It is unknown from now on, and its connection ends.
    void takeBack(const std::string& certificateSha256);

    /// What became of something that was `said` or `offered`. `why` empty: it is in the log, or kept.
    void heard(std::uint64_t connection, const std::string& id, const std::string& why = {});

signals: // from the link's own thread
    void watchingChanged(const std::vector<ambit::link::Watcher>& watching);
    /// To be put into the log, if it is what its signer may say; then `heard`.
    void said(std::uint64_t connection, const ambit::watch::Say& what, const ambit::record::Certificate& by);
    /// The record in hand with another signature: JSON and, perhaps, PDF; then `heard`.
    void offered(std::uint64_t connection, const std::string& id, const std::string& recordSha256,
                 const std::vector<std::string>& files);
    /// Somebody was not let in, or broke a rule and is gone.
    void refused(const QString& who, const ambit::Error& why);
    /// Those who may watch have changed.
    void knownChanged(const std::vector<ambit::watch::Peer>& known);
    /// The invitation was used, has run out, or was guessed at too often.
    void invitationEnded();

private:
    WalkerLink() = default;
    template<class Do> void post(Do what);

    QThread thread;
    std::unique_ptr<WalkerSide> side; ///< lives in the thread
    std::uint16_t ownPort = 0;
};

} // namespace ambit::link
