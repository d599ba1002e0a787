// Where a device is reached: an IPv4 or IPv6 address, as bytes.
#pragma once

#include "base/result.hpp"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace ambit::watch {

class Address {
public:
    /// The highest byte first: 192.168.1.7 is {192, 168, 1, 7}.
    static Address v4(std::array<std::uint8_t, 4> bytes);
    static Address v6(std::array<std::uint8_t, 16> bytes);
    /// Four numbers from 0 to 255 without leading zeros.
    [[nodiscard]] static Result<Address> v4From(std::string_view text);

    [[nodiscard]] bool isV4() const { return four; }
    [[nodiscard]] const std::array<std::uint8_t, 16>& bytes() const { return its; } ///< of v4 the first four
    [[nodiscard]] std::uint32_t number() const;                                     ///< of v4

    /// Another device can reach something at it: not 0.0.0.0 or ::, no multicast, and of IPv6 no link-local
    /// one, which means nothing without the name that one device gives its network card.
    [[nodiscard]] bool isReachable() const;

    friend bool operator==(const Address&, const Address&) = default;

private:
    std::array<std::uint8_t, 16> its{};
    bool four = false;
};

/// 192.168.1.7, or eight groups of hex digits.
[[nodiscard]] std::string toText(const Address& address);

} // namespace ambit::watch
