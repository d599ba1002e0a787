// One walker that is followed: connections one after another, and what comes over them. Inside platform/link
// only.
#pragma once

#include "link/channel.hpp"
#include "link/watcher_link.hpp"
#include "watch/receiver.hpp"

#include <QSslConfiguration>
#include <QTimer>
#include <deque>
#include <set>

namespace ambit::link {

/// What all that are followed share.
struct Shared {
    WatcherLink& link;
    archive::Archive& archive;
    QSslConfiguration tls;
    std::string name; ///< mine
    std::function<void(watch::Walker)> remember;
};

class Following : public QObject {
public:
    Following(Shared& all, std::uint64_t itsNumber, watch::Invitation its, QObject* parent);
    ~Following() override;

    void begin() { tryNext(); }
    void leave();
    void say(const watch::Say& what);
    void offer(const std::string& id, const watch::RecordHere& record);
    /// It may be reached there.
    void maybeAt(const watch::Address& address, std::uint16_t port);
    [[nodiscard]] bool isAnnouncedBy(const std::string& certificateSha256) const {
        return watch::isAnnounced(where, certificateSha256);
    }

private:
    struct Wanted { ///< a file to be fetched
        enum class What { airframe, json, pdf, photo } what{};
        std::string sha256;
        std::int64_t size = 0; ///< of an airframe the most
    };

    void tryNext();
    void connected();
    [[nodiscard]] Result<record::Certificate> checkPeer();
    void lost(const QString& why);
    void over(const Error& why);
    void dropChannel();
    void setState(watch::LinkState state, const Error& why = {});

    void take(const std::string& text);
    void act(watch::FromWalker&& news);
    void storeSoon();
    void store();
    [[nodiscard]] Result<void> knowAircraft(const round::Event& opened);
    void want(Wanted one);
    void wantPhotos(const std::vector<round::Event>& events);
    void fetchNext();
    void takePart(watch::Part&& part);
    [[nodiscard]] Result<void> takeFile(const Wanted& one, std::string&& bytes);
    void sendWaiting();
    [[nodiscard]] watch::Held heldOf(const std::string& roundId) const;
    [[nodiscard]] std::optional<watch::Chunk> offeredBytes(const std::string& sha256, std::int64_t from,
                                                           std::size_t most) const;

    Shared& shared;
    std::uint64_t number;
    watch::Invitation where; ///< the fingerprint whole, once the certificate was seen
    std::size_t nextAddress = 0;
    int tries = 0; ///< since it was in last
    watch::LinkState state = watch::LinkState::connecting;
    QTimer again, patience, quiet;
    std::unique_ptr<Channel> channel;
    std::optional<watch::Receiver> receiver;

    std::string round;
    std::vector<round::Event> unsaved; ///< taken and not on disk yet
    std::size_t unsavedBytes = 0;
    bool isStoring = false; ///< asked for
    bool awaitsAirframe = false;
    std::pair<std::string, std::string> airframe; ///< hash and text of the last one that came

    std::deque<Wanted> wanted; ///< the first is being fetched
    bool isFetching = false;
    bool isOfOldRound = false; ///< what is being fetched: let come to its end, then nothing is made of it
    std::string partly;        ///< of the first
    std::optional<watch::Fetching> resumed;
    std::set<std::string> seen; ///< photos that were asked for
    std::optional<watch::Sealed> sealed;
    std::string sealedJson;

    std::deque<watch::Say> toSay; ///< the first may be said already
    struct Offering {
        watch::Offer what;
        watch::RecordHere record;
    };
    std::optional<Offering> offering;
};

} // namespace ambit::link
