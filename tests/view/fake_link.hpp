// The walker's end of a live watch without a network: what it was told is kept, and a test is the watchers.
#pragma once

#include "model/links.hpp"

#include <QStringList>
#include <functional>
#include <memory>

namespace ambit::test {

class FakeLink;

/// Outlives the links that are opened one after the other.
struct Network {
    QStringList
        calls; ///< "goOn <round>", "committed 4", "sealed <record>", "heard <connection> <id> <why>" …
    std::string openedBy;           ///< name on the certificate that opened the last link
    std::vector<watch::Peer> known; ///< as a device would store them
    watch::Invitation invitation;   ///< the last one
    bool isOnline = true;           ///< else an invitation has no address to name
    FakeLink* link = nullptr;       ///< while one is open

    /// For Services::linkToWatchers. The network must outlive what holds it.
    [[nodiscard]] std::function<Result<std::unique_ptr<view::LinkToWatchers>>(const record::Signer&)>
    opener();
    /// The calls that begin so, and forgets none of them.
    [[nodiscard]] QStringList callsOf(const QString& beginning) const;
};

class FakeLink : public view::LinkToWatchers {
public:
    explicit FakeLink(Network& of);
    ~FakeLink() override;

    [[nodiscard]] std::vector<watch::Peer> knownAtFirst() const override { return network->known; }
    void goOn(const std::string& roundId) override;
    void committed(const round::Event& event) override;
    void sealed(const std::string& recordSha256) override;
    [[nodiscard]] Result<watch::Invitation> invite() override;
    void closeInvitation() override;
    void takeBack(const std::string& certificateSha256) override;
    void heard(std::uint64_t connection, const std::string& id, const std::string& why) override;

    /// A device of this name connects; one that wasn't known uses the invitation up.
    void comes(const std::string& name, std::int64_t kept = 0);
    void leaves(const std::string& name);
    void keeps(const std::string& name, std::int64_t events);
    [[nodiscard]] static watch::Peer
    peer(const std::string& name); ///< its certificate's hash is that of its name

private:
    void tell();

    Network* network;
    std::vector<watch::Watcher> here;
    std::uint64_t lastConnection = 0;
    int invitations = 0;
};

} // namespace ambit::test
