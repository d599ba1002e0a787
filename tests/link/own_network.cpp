#include "own_network.hpp"

#include <arpa/inet.h>
#include <cstring>
#include <fcntl.h>
#include <linux/if_tun.h>
#include <net/if.h>
#include <net/if_arp.h>
#include <sched.h>
#include <string>
#include <sys/ioctl.h>
#include <sys/socket.h>
#include <unistd.h>

namespace {

constexpr const char* cardName = "air";

bool writeText(const char* path, const std::string& text) {
    const int file = open(path, O_WRONLY | O_CLOEXEC);
    if (file < 0) return false;
    const bool done = write(file, text.data(), text.size()) == static_cast<ssize_t>(text.size());
    close(file);
    return done;
}

bool bringUp(int socket, const char* name, const char* address) {
    ifreq request{};
    std::strncpy(request.ifr_name, name, IFNAMSIZ - 1);
    if (address != nullptr) {
        auto* its = reinterpret_cast<sockaddr_in*>(&request.ifr_addr);
        its->sin_family = AF_INET;
        inet_pton(AF_INET, address, &its->sin_addr);
        if (ioctl(socket, SIOCSIFADDR, &request) != 0) return false;
        inet_pton(AF_INET, "255.255.255.0", &its->sin_addr);
        if (ioctl(socket, SIOCSIFNETMASK, &request) != 0) return false;
    }
    if (ioctl(socket, SIOCGIFFLAGS, &request) != 0) return false;
    request.ifr_flags = static_cast<short>(request.ifr_flags | IFF_UP | IFF_RUNNING);
    return ioctl(socket, SIOCSIFFLAGS, &request) == 0;
}

} // namespace

bool moveOut() {
    if (unshare(CLONE_NEWNET) == 0) return true;
    const auto user = std::to_string(getuid());
    const auto group = std::to_string(getgid());
    if (unshare(CLONE_NEWUSER | CLONE_NEWNET) != 0) return false;
    return writeText("/proc/self/setgroups", "deny") &&
           writeText("/proc/self/uid_map", user + ' ' + user + " 1") &&
           writeText("/proc/self/gid_map", group + ' ' + group + " 1");
}

int newCard(const char* address, Card kind) {
    const int card = open("/dev/net/tun", O_RDWR | O_CLOEXEC);
    if (card < 0) return -1;
    ifreq request{};
    request.ifr_flags = static_cast<short>((kind == Card::plain ? IFF_TUN : IFF_TAP) | IFF_NO_PI);
    std::strncpy(request.ifr_name, cardName, IFNAMSIZ - 1);
    const int socket = ::socket(AF_INET, SOCK_DGRAM | SOCK_CLOEXEC, 0);
    const bool done = ioctl(card, TUNSETIFF, &request) == 0 && socket >= 0 &&
                      bringUp(socket, "lo", nullptr) && bringUp(socket, cardName, address);
    if (socket >= 0) close(socket);
    if (done) return card;
    close(card);
    return -1;
}

bool knowNeighbour(const char* address) {
    arpreq request{};
    auto* its = reinterpret_cast<sockaddr_in*>(&request.arp_pa);
    its->sin_family = AF_INET;
    inet_pton(AF_INET, address, &its->sin_addr);
    request.arp_ha.sa_family = ARPHRD_ETHER;
    request.arp_ha.sa_data[0] = 2; // one of those that anybody may use
    request.arp_flags = ATF_PERM | ATF_COM;
    std::strncpy(request.arp_dev, cardName, sizeof request.arp_dev - 1);
    const int socket = ::socket(AF_INET, SOCK_DGRAM | SOCK_CLOEXEC, 0);
    const bool done = socket >= 0 && ioctl(socket, SIOCSARP, &request) == 0;
    if (socket >= 0) close(socket);
    return done;
}
