// What a link, whatever carries its frames, tells those who use it: values.
#pragma once

#include "watch/address.hpp"
#include "watch/door.hpp"
#include "watch/invitation.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace ambit::watch {

/// One who watches now, as the walker's device knows them.
struct Watcher {
    std::uint64_t connection = 0;
    std::string name; ///< as on the certificate
    std::string certificateSha256;
    std::int64_t kept = 0;   ///< events of the round in hand that the other device has stored
    std::int64_t served = 0; ///< bytes of files, by this connection
    friend bool operator==(const Watcher&, const Watcher&) = default;
};

/// A walker that took this device in once: it is joined again without a word.
struct Walker {
    Peer who;
    std::vector<Address> addresses; ///< where it was last
    std::uint16_t port = usualPort;
    friend bool operator==(const Walker&, const Walker&) = default;
};

/// Of a watcher's connection to one walker.
enum class LinkState {
    connecting, ///< for the first time, or again
    in,
    lost, ///< was in; tried again, for as long as it takes
    over  ///< ended by either side, or refused: not tried again
};

/// A record as the walker has it.
struct RecordHere {
    std::string sha256; ///< its identity
    std::string json;
    std::string pdf; ///< "": none
};

} // namespace ambit::watch
