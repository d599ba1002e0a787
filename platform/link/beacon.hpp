// Says to the local network where a walker can be joined, and hears it: devices that know each other find
// each other again when addresses change. What it says is public; who may come in, the door decides.
#pragma once

#include "watch/address.hpp"

#include <QObject>
#include <QTimer>
#include <QUdpSocket>
#include <string>

namespace ambit::link {

/// Where invitations lead to: this machine's reachable addresses, IPv4 first.
[[nodiscard]] std::vector<watch::Address> ownAddresses();
[[nodiscard]] std::optional<watch::Address> addressOf(const QHostAddress& address);
[[nodiscard]] QHostAddress hostOf(const watch::Address& address);

/// Every two seconds, on UDP port `watch::usualPort`.
class Beacon : public QObject {
    Q_OBJECT
public:
    Beacon(const std::string& certificateSha256, std::uint16_t port, QObject* parent = nullptr);

private:
    void say();

    QByteArray what;
    QUdpSocket socket;
    QTimer timer;
};

class BeaconEar : public QObject {
    Q_OBJECT
public:
    explicit BeaconEar(QObject* parent = nullptr);

signals:
    void heard(const std::string& certificateSha256, const ambit::watch::Address& address,
               std::uint16_t port);

private:
    void read();

    QUdpSocket socket;
};

} // namespace ambit::link
