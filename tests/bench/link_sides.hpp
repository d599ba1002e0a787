// Devices for the measurements of the link, all of them in this process and over loopback: those who walk,
// those who watch, and the bare WebSocket they are held against.
#pragma once

#include "airframe/airframe.hpp"
#include "archive/open_round.hpp"
#include "link/walker_link.hpp"
#include "link/watcher_link.hpp"

#include <QString>
#include <QWebSocket>
#include <QWebSocketServer>
#include <atomic>
#include <deque>
#include <functional>
#include <map>
#include <mutex>

namespace ambit::bench {

/// Of a clock that never jumps.
[[nodiscard]] std::int64_t nanoseconds();

/// This process's resident memory now, in MB.
[[nodiscard]] double residentMb();
/// Processor time that this process's threads of this name have had so far, in ms.
[[nodiscard]] double threadsMs(const std::string& name);

/// Runs the main thread's event loop until then; false: it took too long.
[[nodiscard]] bool spinUntil(const std::function<bool()>& done, int mostMs);

/// The demo helicopter's round, as it was walked once, to be walked again and again.
struct DemoRound {
    airframe::Airframe airframe;
    std::string text; ///< the airframe's
    std::vector<round::Event> events;
    std::map<std::string, archive::PhotoBytes> photos; ///< by hash

    [[nodiscard]] static Result<DemoRound> walked(const std::string& folder);
};

/// Which event of which round; the moment is one of `nanoseconds`.
struct Moment {
    std::string round;
    std::int64_t seq = 0;
    std::int64_t at = 0;
    double actMs = 0;  ///< how long committing took
    double toldMs = 0; ///< and with the telling of the link
};

/// A device that walks, round after round, each a day later. Its archive is a file.
class Walker {
public:
    [[nodiscard]] static Result<std::unique_ptr<Walker>> open(const DemoRound& demo, const QString& folder,
                                                              int number);

    /// From now on these may watch, and nobody else.
    [[nodiscard]] Result<void> share(const std::vector<watch::Peer>& watchers);
    /// Where it is shared.
    [[nodiscard]] watch::Walker address() const;
    /// The round's next event, or the first of the next round. One thread at a time.
    [[nodiscard]] Result<Moment> step();
    [[nodiscard]] std::size_t eventsOfRound() const { return demo->events.size(); }

private:
    Walker(const DemoRound& its, archive::Archive store, record::Signer key, std::string path);
    [[nodiscard]] Result<void> begin();
    [[nodiscard]] Result<void> act(const round::Event& event);

    const DemoRound* demo;
    archive::Archive archive;
    record::Signer me;
    std::string base; ///< of its files' names
    std::string registration;
    std::unique_ptr<link::WalkerLink> link;
    std::optional<archive::OpenRound> round;
    std::int64_t days = 0;
};

/// When each event had come, by whichever of several watchers. Any thread tells.
class Arrivals {
public:
    void add(const std::string& round, const std::vector<round::Event>& events);
    [[nodiscard]] std::size_t count() const { return number; }
    /// Milliseconds from each to the last of so many that had it; fewer had it: left out.
    [[nodiscard]] std::vector<double> since(const std::vector<Moment>& committed, std::size_t all) const;
    void clear();

private:
    mutable std::mutex mutex;
    std::map<std::pair<std::string, std::int64_t>, std::vector<std::int64_t>> moments;
    std::atomic<std::size_t> number{0};
};

enum class Told { mainThread, itsOwn };

/// A device that watches.
class Watcher {
public:
    /// `number`: tells their keys and files apart. `where` its arrivals are noted.
    [[nodiscard]] static Result<std::unique_ptr<Watcher>> open(const QString& folder, int number,
                                                               Arrivals& arrivals, Told where);
    [[nodiscard]] static Result<record::Signer> key(int number);
    void follow(const watch::Walker& walker) { link->join(walker); }
    [[nodiscard]] int in() const { return ins; } ///< by so many walkers it was let in

private:
    std::unique_ptr<link::WatcherLink> link;
    std::atomic<int> ins{0};
};

[[nodiscard]] Result<std::vector<watch::Peer>> peers(int count);

/// Sends a text to itself and back: TLS as the link has it, and a WebSocket, nothing else. Client and server
/// have a thread each.
class Echo {
public:
    Echo();
    ~Echo();
    Echo(const Echo&) = delete;
    Echo& operator=(const Echo&) = delete;
    [[nodiscard]] bool open(const QSslConfiguration& tls);
    void send(const std::string& text); ///< any thread
    /// Round trips in ms of all that was sent, once they are back; nothing: they aren't.
    [[nodiscard]] std::vector<double> roundTrips(std::size_t all);

private:
    QThread serverThread, clientThread;
    std::unique_ptr<QWebSocketServer> server;
    std::unique_ptr<QWebSocket> client;
    std::deque<std::int64_t> underWay; ///< when they were sent; the client's thread's, as are:
    std::vector<double> list;
    std::atomic<std::size_t> back{0};
};

} // namespace ambit::bench
