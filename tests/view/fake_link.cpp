#include "fake_link.hpp"

#include "base/hash.hpp"

#include <algorithm>

namespace ambit::test {

namespace {

template<class... Words> QString line(const char* what, const Words&... words) {
    QStringList all{QString::fromLatin1(what)};
    (all.append(QString::fromStdString(words)), ...);
    return all.join(u' ').trimmed();
}

} // namespace

std::function<Result<std::unique_ptr<view::LinkToWatchers>>(const record::Signer&)> Network::opener() {
    return [this](const record::Signer& me) -> Result<std::unique_ptr<view::LinkToWatchers>> {
        openedBy = me.certificate().name;
        return std::make_unique<FakeLink>(*this);
    };
}

QStringList Network::callsOf(const QString& beginning) const {
    QStringList found;
    for (const QString& call : calls)
        if (call.startsWith(beginning)) found << call;
    return found;
}

FakeLink::FakeLink(Network& of) : network(&of) {
    network->link = this;
    network->calls << line("open");
}

FakeLink::~FakeLink() {
    network->link = nullptr;
    network->calls << line("closed");
}

void FakeLink::goOn(const std::string& roundId) {
    network->calls << line("goOn", roundId);
}

void FakeLink::committed(const round::Event& event) {
    network->calls << line("committed", std::to_string(event.seq));
}

void FakeLink::sealed(const std::string& recordSha256) {
    network->calls << line("sealed", recordSha256);
}

Result<watch::Invitation> FakeLink::invite() {
    network->calls << line("invite");
    if (!network->isOnline)
        return fail(ErrorCode::notFound, "This device is on no network.", "", "Join a wireless network.");
    const std::string word = "ABCDEFG" + std::to_string(++invitations % 10);
    network->invitation = {{watch::Address::v4({192, 168, 43, 17})},
                           watch::usualPort,
                           sha256Hex("the walker's certificate"),
                           word};
    return network->invitation;
}

void FakeLink::closeInvitation() {
    network->calls << line("closeInvitation");
}

void FakeLink::takeBack(const std::string& certificateSha256) {
    network->calls << line("takeBack", certificateSha256);
    const auto isIt = [&](const auto& one) { return one.certificateSha256 == certificateSha256; };
    std::erase_if(network->known, isIt);
    std::erase_if(here, isIt);
    emit knownChanged(network->known);
    tell();
}

void FakeLink::heard(std::uint64_t connection, const std::string& id, const std::string& why) {
    network->calls << line("heard", std::to_string(connection), id, why);
}

watch::Peer FakeLink::peer(const std::string& name) {
    return {sha256Hex(name), name};
}

void FakeLink::comes(const std::string& name, std::int64_t kept) {
    const watch::Peer who = peer(name);
    if (std::find(network->known.begin(), network->known.end(), who) == network->known.end()) {
        network->known.push_back(who);
        emit knownChanged(network->known);
        emit invitationEnded();
    }
    here.push_back({++lastConnection, who.name, who.certificateSha256, kept, 0});
    tell();
}

void FakeLink::leaves(const std::string& name) {
    std::erase_if(here, [&](const auto& one) { return one.name == name; });
    tell();
}

void FakeLink::keeps(const std::string& name, std::int64_t events) {
    for (watch::Watcher& one : here)
        if (one.name == name) one.kept = events;
    tell();
}

void FakeLink::tell() {
    emit watchingChanged(here);
}

} // namespace ambit::test
