// What of WatcherLink lives in its thread. Inside platform/link only.
#pragma once

#include "link/beacon.hpp"
#include "link/following.hpp"

#include <map>

namespace ambit::link {

class WatcherSide : public QObject {
public:
    WatcherSide(WatcherLink& outside, WatcherSettings itsSettings, std::string itsName,
                const QSslConfiguration& its);

    Result<void> open();
    [[nodiscard]] const std::vector<watch::Walker>& known() const { return walkers; }
    void join(std::uint64_t number, const watch::Invitation& invitation);
    void leave(std::uint64_t number);
    void forget(const std::string& certificateSha256);
    [[nodiscard]] Following* find(std::uint64_t number);

private:
    void remember(watch::Walker walker);
    void store();

    WatcherLink& link;
    WatcherSettings settings;
    std::string name;
    QSslConfiguration tls;
    std::optional<archive::Archive> archive;
    std::optional<Shared> shared;
    std::vector<watch::Walker> walkers;
    BeaconEar ear;
    std::map<std::uint64_t, std::unique_ptr<Following>> followed;
};

} // namespace ambit::link
