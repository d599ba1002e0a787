#include "watch/address.hpp"

#include <algorithm>
#include <charconv>

namespace ambit::watch {

Address Address::v4(std::array<std::uint8_t, 4> bytes) {
    Address address;
    address.four = true;
    std::copy(bytes.begin(), bytes.end(), address.its.begin());
    return address;
}

Address Address::v6(std::array<std::uint8_t, 16> bytes) {
    Address address;
    address.its = bytes;
    return address;
}

Result<Address> Address::v4From(std::string_view text) {
    std::array<std::uint8_t, 4> bytes{};
    const char* at = text.data();
    const char* const end = at + text.size();
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        const bool leadingZero = end - at > 1 && *at == '0' && at[1] >= '0' && at[1] <= '9';
        const auto [stop, error] = std::from_chars(at, end, bytes[i]);
        const bool isLast = i + 1 == bytes.size();
        if (leadingZero || error != std::errc() || (isLast ? stop != end : stop == end || *stop != '.'))
            return fail(ErrorCode::syntax, say("An address like 192.168.1.7 is expected here."));
        at = stop + (isLast ? 0 : 1);
    }
    return v4(bytes);
}

std::uint32_t Address::number() const {
    std::uint32_t number = 0;
    for (std::size_t i = 0; i < 4; ++i)
        number = (number << 8U) | its[i];
    return number;
}

bool Address::isReachable() const {
    if (four) return its[0] != 0 && its[0] < 224;
    const bool isLinkLocal = its[0] == 0xFE && (its[1] & 0xC0U) == 0x80;
    const bool isNothing = std::all_of(its.begin(), its.end(), [](std::uint8_t byte) { return byte == 0; });
    return !isNothing && !isLinkLocal && its[0] != 0xFF;
}

std::string toText(const Address& address) {
    std::string text;
    if (address.isV4()) {
        for (std::size_t i = 0; i < 4; ++i)
            text += (i > 0 ? "." : "") + std::to_string(address.bytes()[i]);
        return text;
    }
    static constexpr std::string_view hex = "0123456789abcdef";
    for (std::size_t i = 0; i < address.bytes().size(); ++i) {
        if (i > 0 && i % 2 == 0) text += ':';
        text += hex[address.bytes()[i] >> 4U];
        text += hex[address.bytes()[i] & 0xFU];
    }
    return text;
}

} // namespace ambit::watch
