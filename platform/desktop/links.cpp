#include "desktop/links.hpp"

#include "link/walker_link.hpp"
#include "link/watcher_link.hpp"

namespace ambit::desktop {

void addLinks(view::Services& services, const std::filesystem::path& folder, std::uint16_t port,
              std::vector<watch::Address> shown) {
    services.watchedFile = folder / "watched.sqlite";
    link::WalkerSettings walker;
    walker.archive = services.archiveFile;
    walker.watchers = folder / "watchers.json";
    walker.port = port;
    walker.shown = std::move(shown);
    services.linkToWatchers = [walker, now = services.now](
                                  const record::Signer& me) -> Result<std::unique_ptr<view::LinkToWatchers>> {
        auto link = link::WalkerLink::open(walker, me, now().at);
        if (!link) return tl::unexpected(link.error());
        return std::move(*link);
    };
    const link::WatcherSettings watcher{services.watchedFile, folder / "walkers.json"};
    services.linkToWalkers = [watcher, now = services.now](
                                 const record::Signer& me) -> Result<std::unique_ptr<view::LinkToWalkers>> {
        auto link = link::WatcherLink::open(watcher, me, now().at);
        if (!link) return tl::unexpected(link.error());
        return std::move(*link);
    };
}

} // namespace ambit::desktop
