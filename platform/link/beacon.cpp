#include "link/beacon.hpp"

#include "base/canonical.hpp"
#include "base/fields.hpp"
#include "watch/invitation.hpp"

#include <QNetworkDatagram>
#include <QNetworkInterface>
#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::link {

namespace {

constexpr int everyMs = 2000;
constexpr int largest = 512;

} // namespace

std::optional<watch::Address> addressOf(const QHostAddress& address) {
    bool isV4 = false;
    const quint32 number = address.toIPv4Address(&isV4); // of an IPv4 address in IPv6's form, too
    if (isV4) {
        const auto byte = [&](unsigned shift) { return static_cast<std::uint8_t>(number >> shift & 0xFFU); };
        return watch::Address::v4({byte(24), byte(16), byte(8), byte(0)});
    }
    if (address.protocol() != QAbstractSocket::IPv6Protocol) return std::nullopt;
    const Q_IPV6ADDR its = address.toIPv6Address();
    std::array<std::uint8_t, 16> bytes{};
    std::copy(std::begin(its.c), std::end(its.c), bytes.begin());
    return watch::Address::v6(bytes);
}

QHostAddress hostOf(const watch::Address& address) {
    return address.isV4() ? QHostAddress(address.number()) : QHostAddress(address.bytes().data());
}

std::vector<watch::Address> ownAddresses() {
    std::vector<watch::Address> list;
    for (const QNetworkInterface& card : QNetworkInterface::allInterfaces()) {
        constexpr auto needed = QNetworkInterface::IsUp | QNetworkInterface::IsRunning;
        if ((card.flags() & needed) != needed || card.flags().testFlag(QNetworkInterface::IsLoopBack))
            continue;
        for (const QNetworkAddressEntry& entry : card.addressEntries()) {
            const auto address = addressOf(entry.ip());
            if (address && address->isReachable()) list.push_back(*address);
        }
    }
    std::stable_partition(list.begin(), list.end(), [](const watch::Address& one) { return one.isV4(); });
    if (list.size() > watch::mostAddresses) list.erase(list.begin() + watch::mostAddresses, list.end());
    return list;
}

Beacon::Beacon(const std::string& certificateSha256, std::uint16_t port, QObject* parent)
    : QObject(parent), what(QByteArray::fromStdString(canonicalJson(
                           Json{{"ambit", 1}, {"certificateSha256", certificateSha256}, {"port", port}}))),
      socket(this), timer(this) {
    connect(&timer, &QTimer::timeout, this, &Beacon::say);
    timer.start(everyMs);
    say();
}

void Beacon::say() {
    for (const QNetworkInterface& card : QNetworkInterface::allInterfaces())
        for (const QNetworkAddressEntry& entry : card.addressEntries())
            if (!entry.broadcast().isNull()) socket.writeDatagram(what, entry.broadcast(), watch::usualPort);
}

BeaconEar::BeaconEar(QObject* parent) : QObject(parent), socket(this) {
    connect(&socket, &QUdpSocket::readyRead, this, &BeaconEar::read);
    // Not heard where it can't be: known addresses are still tried.
    socket.bind(QHostAddress(QHostAddress::AnyIPv4), watch::usualPort,
                QUdpSocket::ShareAddress | QUdpSocket::ReuseAddressHint);
}

void BeaconEar::read() {
    while (socket.hasPendingDatagrams()) {
        const QNetworkDatagram one = socket.receiveDatagram(largest);
        const std::string text = one.data().toStdString();
        const auto from = addressOf(one.senderAddress());
        JsonTape tape;
        const JsonView json = tape.read(text);
        std::optional<Error> error;
        Fields fields(json, Where(""), error);
        (void)fields.integer("ambit", 1, 1);
        const std::string certificate = fields.hash("certificateSha256");
        const auto port = static_cast<std::uint16_t>(fields.integer("port", 1, 65535));
        fields.end();
        if (!error && from) emit heard(certificate, *from, port);
    }
}

} // namespace ambit::link
