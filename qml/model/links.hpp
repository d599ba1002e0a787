// The two ends of a live watch, as the screens use them. A platform has the sockets behind them.
#pragma once

#include "record/key.hpp"
#include "watch/frames.hpp"
#include "watch/peers.hpp"

#include <QObject>

namespace ambit::view {

/// The walker's end: takes in those who may watch and serves them the round in hand. The walk never waits
/// for any of it: what is asked returns at once, unless it says otherwise. Ends with its destruction.
class LinkToWatchers : public QObject {
    Q_OBJECT
public:
    /// Who may watch, as it was known when this was opened; changes are told.
    [[nodiscard]] virtual std::vector<watch::Peer> knownAtFirst() const = 0;

    /// A round that is taken up again is the one in hand.
    virtual void goOn(const std::string& roundId) = 0;
    /// An event is on disk; `opened` begins another round.
    virtual void committed(const round::Event& event) = 0;
    /// The round in hand has its record, or one more signature under it.
    virtual void sealed(const std::string& recordSha256) = 0;

    /// Lets one new device in within five minutes; the invitation before it is dead. Waits for the link's
    /// thread.
    [[nodiscard]] virtual Result<watch::Invitation> invite() = 0;
    virtual void closeInvitation() = 0;
    /// It is unknown from now on, and its connection ends.
    virtual void takeBack(const std::string& certificateSha256) = 0;

    /// What became of something that was `said` or `offered`. `why` empty: it is in the log, or kept.
    virtual void heard(std::uint64_t connection, const std::string& id, const std::string& why) = 0;

signals: // from the link's own thread
    void watchingChanged(const std::vector<ambit::watch::Watcher>& watching);
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
};

/// The watcher's end: follows walkers, each by a connection that is made again whenever it breaks, and keeps
/// what comes.
class LinkToWalkers : public QObject {
    Q_OBJECT
public:
    /// Whom this device may watch, as it was known when this was opened; changes are told.
    [[nodiscard]] virtual std::vector<watch::Walker> knownAtFirst() const = 0;

    /// Follows whoever made this invitation. Gives the number by which they are known here.
    virtual std::uint64_t join(const watch::Invitation& invitation) = 0;
    /// Follows one who is known: where they were last, and where the network says they are now.
    virtual std::uint64_t join(const watch::Walker& walker) = 0;
    virtual void leave(std::uint64_t walker) = 0;
    /// It is no longer joined without a code.
    virtual void forget(const std::string& certificateSha256) = 0;

    /// Sent now, or when there is a connection again; `heard` tells what became of it. One at a time: another
    /// is sent when the one before was heard.
    virtual void say(std::uint64_t walker, const watch::Say& what) = 0;
    /// The round's record with one more signature: the same with its files.
    virtual void offer(std::uint64_t walker, const std::string& id, const watch::RecordHere& record) = 0;

signals: // from the link's own thread
    /// `why` empty: nothing to say. Of `over` with a code, something is wrong.
    void stateChanged(std::uint64_t walker, ambit::watch::LinkState state, const ambit::Error& why);
    /// Whose certificate it is; once it is known.
    void known(std::uint64_t walker, const ambit::watch::Peer& who);
    /// This is walked there now. What was kept of it earlier is in the archive.
    void roundChanged(std::uint64_t walker, const std::string& roundId, std::int64_t events);
    /// In order, once each while the program runs; the airframe of a round's first ones is in the archive.
    /// They are stored in the same moment: what a kill or a power cut takes comes again.
    void logged(std::uint64_t walker, const std::string& roundId,
                const std::vector<ambit::round::Event>& events);
    void watching(std::uint64_t walker, const std::vector<std::string>& names);
    void photoHere(std::uint64_t walker, const std::string& sha256);
    void recordHere(std::uint64_t walker, const ambit::watch::RecordHere& record);
    /// `why` empty: it is in the log, or kept.
    void heard(std::uint64_t walker, const std::string& id, const std::string& why);
    /// Those whom this device may watch have changed.
    void walkersChanged(const std::vector<ambit::watch::Walker>& walkers);
};

} // namespace ambit::view
