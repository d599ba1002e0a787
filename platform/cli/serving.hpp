// A round that is walked from a script, served to those who watch.
#pragma once

#include "archive/open_round.hpp"
#include "link/walker_link.hpp"

#include <QElapsedTimer>
#include <QObject>
#include <functional>
#include <map>
#include <memory>
#include <vector>

namespace ambit::cli {

struct ServeOptions {
    bool serve = false;
    std::string address;        ///< to listen on; empty: all
    std::uint16_t port = 52810; ///< 0: any free one
    std::string shown;          ///< address in the codes; empty: this machine's own
    std::string invitation;     ///< file to write the QR code's text into; empty: none
    std::string known;          ///< file of those who may watch; empty: watchers.json in the round's folder
    int await = 0;              ///< begin when so many watch
    std::string decline;        ///< words with which whatever is asked is declined; empty: it stays open
    int paceMs = 0;             ///< real time after each event
    int lingerSeconds = 10;     ///< at the end, until everything has been taken, at most
};

class Serving : public QObject {
public:
    /// Listens, and prints the codes on stderr. An application must be there.
    [[nodiscard]] static Result<std::unique_ptr<Serving>>
    open(const ServeOptions& options, const std::string& folder, const record::Signer& me);

    /// Until so many watch as are awaited; forever, if they don't come.
    void awaitWatchers();
    /// An event is on disk.
    void committed(const round::Event& event);
    /// Real time passes.
    void rest();
    /// What watchers have said goes into the log; `committed` is told of each event.
    [[nodiscard]] Result<void> hear(archive::OpenRound& round,
                                    const std::function<void(const round::Event&)>& committed);
    /// The script's end: stays until all who watch have everything, and their signatures are here.
    void linger(archive::Archive& archive);

private:
    explicit Serving(const ServeOptions& its) : options(its) {}
    void listen();
    void spin(int ms);
    void keepOffered(archive::Archive& archive);

    struct Offered {
        std::uint64_t connection;
        std::string id, recordSha256;
        std::vector<std::string> files;
    };

    const ServeOptions& options;
    std::unique_ptr<link::WalkerLink> link;
    std::vector<watch::Watcher> watching;
    std::map<std::string, std::int64_t> kept; ///< events, by certificate, of all who watched
    QElapsedTimer quiet;                      ///< since something was last taken
    struct Said {
        std::uint64_t connection;
        watch::Say what;
        record::Certificate by;
    };
    std::vector<Said> said;
    std::vector<Offered> offers;
    std::int64_t events = 0;
};

} // namespace ambit::cli
