#include "bad_network.hpp"

#include "own_network.hpp"

#include <atomic>
#include <chrono>
#include <csignal>
#include <cstring>
#include <fcntl.h>
#include <poll.h>
#include <queue>
#include <random>
#include <string>
#include <sys/socket.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>
#include <vector>

namespace {

using Clock = std::chrono::steady_clock;

bool sendFile(int socket, int file) {
    char byte = file < 0 ? 'n' : 'y';
    iovec part{&byte, 1};
    std::array<char, CMSG_SPACE(sizeof(int))> room{};
    msghdr message{};
    message.msg_iov = &part;
    message.msg_iovlen = 1;
    if (file >= 0) {
        message.msg_control = room.data();
        message.msg_controllen = room.size();
        cmsghdr* header = CMSG_FIRSTHDR(&message);
        header->cmsg_level = SOL_SOCKET;
        header->cmsg_type = SCM_RIGHTS;
        header->cmsg_len = CMSG_LEN(sizeof(int));
        std::memcpy(CMSG_DATA(header), &file, sizeof file);
    }
    return sendmsg(socket, &message, 0) == 1;
}

int receiveFile(int socket) {
    char byte = 0;
    iovec part{&byte, 1};
    std::array<char, CMSG_SPACE(sizeof(int))> room{};
    msghdr message{};
    message.msg_iov = &part;
    message.msg_iovlen = 1;
    message.msg_control = room.data();
    message.msg_controllen = room.size();
    if (recvmsg(socket, &message, MSG_CMSG_CLOEXEC) != 1) return -1;
    const cmsghdr* header = CMSG_FIRSTHDR(&message);
    if (header == nullptr) return -1;
    int file = -1;
    std::memcpy(&file, CMSG_DATA(header), sizeof file);
    return file;
}

struct Packet {
    Clock::time_point at;
    std::uint64_t number;
    int to;
    std::vector<char> bytes;
    friend bool operator<(const Packet& a, const Packet& b) {
        return std::tie(b.at, b.number) < std::tie(a.at, a.number);
    }
};

} // namespace

struct BadNetwork::Inside {
    /// One host: a process that keeps the namespace and starts programs in it.
    struct Host {
        pid_t keeper = -1;
        int orders = -1; ///< socket to it
        int card = -1;
    };
    std::array<Host, 2> hosts;
    Weather weather;
    std::mt19937_64 random;
    std::atomic<bool> ended{false};
    std::atomic<std::int64_t> carried{0}, lost{0}, reordered{0}, cuts{0};
    std::thread carrier;

    void carry();
};

BadNetwork::BadNetwork() : inside(std::make_unique<Inside>()) {}

std::unique_ptr<BadNetwork> BadNetwork::make(const Weather& weather, std::uint64_t seed, QString& why) {
    std::unique_ptr<BadNetwork> network(new BadNetwork);
    network->inside->weather = weather;
    network->inside->random.seed(seed);
    for (std::size_t i = 0; i < 2; ++i) {
        std::array<int, 2> sockets{};
        if (socketpair(AF_UNIX, SOCK_SEQPACKET | SOCK_CLOEXEC, 0, sockets.data()) != 0) return nullptr;
        const pid_t keeper = fork();
        if (keeper == 0) { // from here on nothing of Qt's
            close(sockets[0]);
            const int card = moveOut() ? newCard(addresses[i], Card::plain) : -1;
            sendFile(sockets[1], card);
            if (card >= 0) close(card);
            signal(SIGCHLD, SIG_IGN); // its children vanish when they end
            // Orders are: program, arguments, two file names, each ended by a zero byte.
            std::vector<char> order(std::size_t{64} << 10);
            for (;;) {
                const ssize_t size = read(sockets[1], order.data(), order.size());
                if (size <= 0) _exit(0);
                pid_t child = fork();
                if (child == 0) {
                    setpgid(0, 0);
                    std::vector<char*> words;
                    for (char* at = order.data(); at < order.data() + size; at += std::strlen(at) + 1)
                        words.push_back(at);
                    const int err = open(words.back(), O_WRONLY | O_CREAT | O_APPEND, 0600);
                    words.pop_back();
                    const int out = open(words.back(), O_WRONLY | O_CREAT | O_APPEND, 0600);
                    words.back() = nullptr;
                    dup2(out, 1);
                    dup2(err, 2);
                    execv(words.front(), words.data());
                    _exit(127);
                }
                if (write(sockets[1], &child, sizeof child) != sizeof child) _exit(0);
            }
        }
        close(sockets[1]);
        Inside::Host& host = network->inside->hosts[i];
        host.keeper = keeper;
        host.orders = sockets[0];
        host.card = receiveFile(sockets[0]);
        if (host.card < 0) {
            why = QStringLiteral("This machine doesn't allow hosts of a test's own (network namespaces and "
                                 "/dev/net/tun).");
            return nullptr;
        }
    }
    network->inside->carrier = std::thread([its = network->inside.get()] { its->carry(); });
    return network;
}

BadNetwork::~BadNetwork() {
    inside->ended = true;
    if (inside->carrier.joinable()) inside->carrier.join();
    for (const Inside::Host& host : inside->hosts) {
        if (host.orders >= 0) close(host.orders);
        if (host.card >= 0) close(host.card);
        if (host.keeper <= 0) continue;
        kill(host.keeper, SIGKILL);
        waitpid(host.keeper, nullptr, 0);
    }
}

pid_t BadNetwork::start(int host, const QString& program, const QStringList& arguments, const QString& out,
                        const QString& err) {
    QByteArray order;
    for (const QString& word : QStringList{program} + arguments + QStringList{out, err})
        order += word.toUtf8() + '\0';
    const int orders = inside->hosts.at(static_cast<std::size_t>(host)).orders;
    pid_t child = -1;
    if (write(orders, order.constData(), static_cast<std::size_t>(order.size())) != order.size()) return -1;
    return read(orders, &child, sizeof child) == sizeof child ? child : -1;
}

BadNetwork::Counts BadNetwork::counts() const {
    return {inside->carried, inside->lost, inside->reordered, inside->cuts};
}

void BadNetwork::Inside::carry() {
    using std::chrono::milliseconds;
    std::priority_queue<Packet> underWay;
    std::uniform_real_distribution<double> chance(0, 1);
    std::uint64_t number = 0;
    std::array<std::uint64_t, 2> lastOut{};
    const auto nextCut = [&](Clock::time_point from) {
        if (weather.cutEvery == 0) return Clock::time_point::max();
        std::exponential_distribution<double> wait(1.0 / weather.cutEvery);
        return from + milliseconds(static_cast<int>(wait(random)));
    };
    Clock::time_point cutFrom = nextCut(Clock::now());
    Clock::time_point cutTo = Clock::time_point::min();
    while (!ended) {
        const auto now = Clock::now();
        if (now >= cutFrom) {
            cutTo = now + milliseconds(weather.cutLasts);
            cutFrom = nextCut(cutTo);
            ++cuts;
        }
        while (!underWay.empty() && underWay.top().at <= now) {
            const Packet& one = underWay.top();
            const auto to = static_cast<std::size_t>(one.to);
            if (write(hosts[to].card, one.bytes.data(), one.bytes.size()) > 0) ++carried;
            if (one.number < lastOut[to]) ++reordered;
            lastOut[to] = std::max(lastOut[to], one.number);
            underWay.pop();
        }
        std::array<pollfd, 2> ready{pollfd{hosts[0].card, POLLIN, 0}, pollfd{hosts[1].card, POLLIN, 0}};
        int wait = 20;
        if (!underWay.empty())
            wait = std::clamp<int>(
                static_cast<int>(std::chrono::ceil<milliseconds>(underWay.top().at - Clock::now()).count()),
                0, 20);
        if (poll(ready.data(), ready.size(), wait) <= 0) continue;
        for (std::size_t from = 0; from < 2; ++from) {
            if ((ready[from].revents & POLLIN) == 0) continue;
            std::vector<char> bytes(2048);
            const ssize_t size = read(hosts[from].card, bytes.data(), bytes.size());
            if (size <= 0) continue;
            bytes.resize(static_cast<std::size_t>(size));
            if (Clock::now() < cutTo || chance(random) < weather.loss) {
                ++lost;
                continue;
            }
            const double late = weather.delay + weather.jitter * chance(random);
            underWay.push({Clock::now() + std::chrono::microseconds(static_cast<std::int64_t>(1000 * late)),
                           ++number, 1 - static_cast<int>(from), std::move(bytes)});
        }
    }
}
