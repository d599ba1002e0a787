// What a walker's device shows so that another one finds and trusts it: a QR code's text, and a shorter code
// to type.
//
// The QR text carries the whole SHA-256 of the walker's certificate: nobody else can answer for it (128 bits
// against anybody who looks for two alike, 256 against one who wants this one). The typed code carries its
// first 60 to 76 bits, at least 60: whoever wants to stand between two devices must find a certificate whose
// hash begins alike, 2^60 tries, before the word is five minutes old or for a key that serves for years. The
// word (40 bits) protects the other way: it lets in whoever has read it. A stranger has five tries
// (door.hpp), 5 in 2^40. The check letters protect against hands and eyes, not against strangers.
#pragma once

#include "watch/address.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace ambit::watch {

inline constexpr std::uint16_t usualPort = 52810;
inline constexpr std::size_t mostAddresses = 8;

struct Invitation {
    std::vector<Address> addresses; ///< 1 to mostAddresses, to be tried in this order
    std::uint16_t port = usualPort; ///< not 0
    std::string fingerprint; ///< SHA-256 of the walker's DER certificate, hex; of a typed code its beginning
    std::string word;        ///< 8 letters (door.hpp)
    friend bool operator==(const Invitation&, const Invitation&) = default;
};

/// AMBIT1/port/address+address/fingerprint/word, in the QR code's alphanumeric letters: IPv4 with dots, IPv6
/// as 32 hex digits, the fingerprint as 52 letters of base 32. Refused (invalid): something of it can't be
/// shown, such as a fingerprint that isn't whole.
[[nodiscard]] Result<std::string> qrText(const Invitation& invitation);

/// For the first IPv4 address: 28 letters for private networks and the usual port, else 32 or 36, in groups
/// of four. Refused: no IPv4 address.
[[nodiscard]] Result<std::string> typedCode(const Invitation& invitation);

/// Either of them. Of a typed code, small letters, look-alikes, and spaces or strokes anywhere are accepted.
/// Error: syntax (not such a code), invalid (a letter of it is wrong), unsupported (a later version).
[[nodiscard]] Result<Invitation> readInvitation(std::string_view text);

/// Is this the certificate that was announced?
[[nodiscard]] bool isAnnounced(const Invitation& invitation, std::string_view certificateSha256);

} // namespace ambit::watch
