#include "link/peers.hpp"

#include "base/canonical.hpp"
#include "base/fields.hpp"
#include "base/files.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::link {

namespace {

constexpr std::size_t mostWalkers = 64;

Json jsonOf(const watch::Peer& peer) {
    return {{"name", peer.name}, {"certificateSha256", peer.certificateSha256}};
}

watch::Peer peerFrom(Fields& fields) {
    watch::Peer peer;
    peer.certificateSha256 = fields.hash("certificateSha256");
    peer.name = fields.text("name");
    return peer;
}

/// `take` reads one of the list.
template<class Take>
Result<void> readList(const std::filesystem::path& file, std::size_t most, const Take& take) {
    std::error_code unknown;
    if (!std::filesystem::exists(file, unknown)) return {};
    const auto text = readFile(file, std::size_t{1} << 20);
    if (!text) return tl::unexpected(text.error());
    JsonTape tape;
    const JsonView json = tape.read(*text);
    std::optional<Error> error;
    {
        Fields top(json, Where(""), error);
        const FieldList list = top.list("known", most);
        for (Fields one : list) {
            take(one);
            one.end();
        }
        top.end();
    }
    if (!error) return {};
    error->where = file.string() + error->where;
    error->remedy = "Take it away: devices are then known anew by a code.";
    return tl::unexpected(*error);
}

Result<void> writeList(const std::filesystem::path& file, Json list) {
    return writeFile(file, canonicalJson(Json{{"known", std::move(list)}}), true);
}

} // namespace

Result<std::vector<watch::Peer>> readWatchers(const std::filesystem::path& file) {
    std::vector<watch::Peer> list;
    auto read =
        readList(file, watch::Door::mostPeers, [&](Fields& fields) { list.push_back(peerFrom(fields)); });
    if (!read) return tl::unexpected(read.error());
    return list;
}

Result<void> writeWatchers(const std::filesystem::path& file, const std::vector<watch::Peer>& watchers) {
    Json list = Json::array();
    for (const watch::Peer& one : watchers)
        list.push_back(jsonOf(one));
    return writeList(file, std::move(list));
}

Result<std::vector<watch::Walker>> readWalkers(const std::filesystem::path& file) {
    std::vector<watch::Walker> list;
    auto read = readList(file, mostWalkers, [&](Fields& fields) {
        watch::Walker walker;
        walker.who = peerFrom(fields);
        // As an invitation writes them: one way to write an address in all.
        const auto where = watch::readInvitation(fields.text("where"));
        if (!where || !watch::isAnnounced(*where, walker.who.certificateSha256))
            fields.fail(say("This is not where a device was."), "where");
        else
            std::tie(walker.addresses, walker.port) = std::tuple(where->addresses, where->port);
        list.push_back(std::move(walker));
    });
    if (!read) return tl::unexpected(read.error());
    return list;
}

Result<void> writeWalkers(const std::filesystem::path& file, const std::vector<watch::Walker>& walkers) {
    Json list = Json::array();
    for (const watch::Walker& one : walkers) {
        const auto where =
            watch::qrText({one.addresses, one.port, one.who.certificateSha256, std::string(8, '0')});
        if (!where) return tl::unexpected(where.error());
        Json json = jsonOf(one.who);
        json["where"] = *where;
        list.push_back(std::move(json));
    }
    return writeList(file, std::move(list));
}

void remember(std::vector<watch::Walker>& walkers, watch::Walker walker) {
    std::erase_if(walkers, [&](const watch::Walker& one) {
        return one.who.certificateSha256 == walker.who.certificateSha256;
    });
    walkers.insert(walkers.begin(), std::move(walker));
    if (walkers.size() > mostWalkers) walkers.resize(mostWalkers);
}

} // namespace ambit::link
