// What of WalkerLink lives in its thread. Inside platform/link only.
#pragma once

#include "link/beacon.hpp"
#include "link/channel.hpp"
#include "link/files_served.hpp"
#include "link/peers.hpp"
#include "link/walker_link.hpp"
#include "watch/sender.hpp"

#include <QElapsedTimer>
#include <QSslServer>
#include <QWebSocketServer>
#include <deque>
#include <map>
#include <unordered_map>

namespace ambit::link {

class WalkerSide : public QObject {
public:
    /// Made, used and destroyed in the link's thread.
    WalkerSide(WalkerLink& outside, WalkerSettings itsSettings, record::Certificate its,
               const QSslConfiguration& itsTls);
    ~WalkerSide() override;

    Result<std::uint16_t> listen();
    [[nodiscard]] const std::vector<watch::Peer>& known() const { return door.known(); }
    void goOn(const std::string& roundId);
    void committed(const round::Event& event);
    void sealed(const std::string& recordSha256);
    Result<watch::Invitation> invite();
    void closeInvitation() { door.closeInvitation(); }
    void takeBack(const std::string& certificateSha256);
    void heard(std::uint64_t connection, const std::string& id, const std::string& why);

private:
    /// What a watcher offers, on its way in.
    struct Offered {
        watch::Offer what;
        std::vector<std::string> files; ///< the first so many of those named, the last one growing
        bool isFetching = false;
    };
    struct Connection {
        std::uint64_t number = 0;
        record::Certificate certificate;
        QString from;
        std::unique_ptr<Channel> channel;
        std::unique_ptr<watch::Sender> sender;
        bool hasGreeted = false;
        std::int64_t served = 0; ///< bytes of files
        std::optional<Offered> offered;
    };

    void takeEncrypted();
    void takeUpgraded();
    void serve(std::unique_ptr<QWebSocket> socket, record::Certificate certificate);
    void take(Connection& connection, const std::string& text);
    void act(Connection& connection, watch::FromWatcher&& news);
    void greet(Connection& connection, const watch::Hello& hello);
    void fetchOffered();
    void takePart(Connection& connection, watch::Part&& part);
    void drop(std::uint64_t number);
    void pumpAll();
    void tellWatching();
    void storeKnown();
    void tellRefused(const QString& who, const Error& why);
    [[nodiscard]] Connection* find(std::uint64_t number);
    [[nodiscard]] std::optional<std::string> eventText(const std::string& round, std::int64_t seq);
    [[nodiscard]] Result<std::string> fileBytes(const std::string& sha256);
    [[nodiscard]] watch::Tick now() const { return {clock.elapsed()}; }

    WalkerLink& link;
    WalkerSettings settings;
    record::Certificate me;
    std::optional<archive::Archive> archive;
    QElapsedTimer clock;
    watch::Door door;
    watch::InHand inHand;
    std::deque<std::string> recent; ///< canonical bytes of the round in hand's last events
    FilesServed files;
    /// By the peer's address and port. Before the servers: sockets that go with them take themselves out.
    std::map<std::pair<QString, quint16>, record::Certificate> upgrading;
    QSslServer tcp;
    QWebSocketServer upgrades;
    std::unordered_map<std::uint64_t, std::unique_ptr<Connection>> connections;
    std::uint64_t lastNumber = 0;
    std::unique_ptr<Beacon> beacon;
    std::vector<watch::Watcher> told;
    std::vector<watch::Peer> stored;
    QTimer progress; ///< tells of what watchers have kept, not at every event
};

} // namespace ambit::link
