#include "watch/invitation.hpp"

#include "base/encoding.hpp"
#include "watch/frames.hpp"
#include "watch/letters.hpp"

#include <algorithm>
#include <charconv>

namespace ambit::watch {

namespace {

constexpr std::string_view qrBegin = "AMBIT";
constexpr std::string_view qrVersion = "1";
constexpr std::size_t hashDigits = 64;
constexpr std::size_t hashLetters = 52;
constexpr unsigned wordBits = 40;

// The typed code's head: two bits of version, three of network, one of port.
constexpr unsigned typedVersion = 0;
constexpr unsigned headBits = 6;
constexpr unsigned fewestHashBits = 60;
constexpr std::size_t group = 4;
constexpr std::size_t checks = 2;

/// Networks that need not be written out (RFC 1918, RFC 3927).
struct Network {
    std::uint32_t base;
    unsigned hostBits;
};
constexpr std::array networks{Network{0xC0A80000, 16}, Network{0x0A000000, 24}, Network{0xAC100000, 20},
                              Network{0xA9FE0000, 16}, Network{0, 32}}; // the last: any
// The number of a network is stored: none may move.

std::size_t networkOf(std::uint32_t address) {
    std::size_t at = 0;
    while (networks[at].hostBits < 32 &&
           address >> networks[at].hostBits != networks[at].base >> networks[at].hostBits)
        ++at;
    return at;
}

/// How a typed code is laid out: letters without the checks, and bits of the fingerprint among them.
struct Layout {
    std::size_t letters;
    unsigned hashBits; ///< a multiple of four
};
constexpr Layout layoutFor(unsigned hostBits, bool usual) {
    const unsigned others = headBits + hostBits + (usual ? 0 : 16) + wordBits;
    std::size_t letters = (others + fewestHashBits + letterBits - 1) / letterBits;
    while ((letters + checks) % group != 0)
        ++letters;
    return {letters, static_cast<unsigned>(letters * letterBits) - others};
}
static_assert(layoutFor(16, true).letters == 26 && layoutFor(16, true).hashBits == 68);
static_assert(layoutFor(24, true).letters == 26 && layoutFor(24, true).hashBits == 60);
static_assert(layoutFor(20, true).letters == 26 && layoutFor(20, true).hashBits == 64);
static_assert(layoutFor(32, true).letters == 30 && layoutFor(32, true).hashBits == 72);
static_assert(layoutFor(24, false).letters == 30 && layoutFor(24, false).hashBits == 64);
static_assert(layoutFor(32, false).letters == 34 && layoutFor(32, false).hashBits == 76);

bool isHex(std::string_view text) {
    return text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

std::uint64_t hexValue(char digit) {
    return static_cast<std::uint64_t>(digit <= '9' ? digit - '0' : digit - 'a' + 10);
}

Result<void> check(const Invitation& invitation) {
    const auto refuse = [](Sentence what) { return fail(ErrorCode::invalid, std::move(what)); };
    if (invitation.addresses.empty() || invitation.addresses.size() > mostAddresses)
        return refuse(say("An invitation names one to eight addresses."));
    if (!std::all_of(invitation.addresses.begin(), invitation.addresses.end(),
                     [](const Address& address) { return address.isReachable(); }))
        return refuse(say("An invitation names an address that no other device can reach."));
    if (invitation.port == 0) return refuse(say("An invitation names a port from 1 to 65535."));
    if (invitation.fingerprint.size() != hashDigits || !isHex(invitation.fingerprint))
        return refuse(say("An invitation is made with the whole SHA-256 of a certificate, in hex."));
    if (invitation.word.size() != wordLetters || !areLetters(invitation.word))
        return refuse(say("An invitation's word has eight letters."));
    return {};
}

// --- the QR code's text
// ------------------------------------------------------------------------------------------------

tl::unexpected<Error> notOurs() {
    return fail(ErrorCode::syntax, say("This is no invitation to watch, or only a part of one."), {},
                say("Scan the code again, or type the letters under it."));
}

std::string upper(std::string text) {
    for (char& c : text)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    return text;
}

std::string qrTextOf(const Address& address) {
    return address.isV4() ? toText(address) : upper(toHex(address.bytes()));
}

Result<Address> qrAddress(std::string_view text) {
    Result<Address> address = notOurs();
    if (text.size() != 32) {
        address = Address::v4From(text);
    } else if (text.find_first_not_of("0123456789ABCDEF") == std::string_view::npos) {
        std::array<std::uint8_t, 16> bytes{};
        for (std::size_t i = 0; i < bytes.size(); ++i) {
            const auto value = [&](std::size_t at) {
                return static_cast<unsigned>(text[at] <= '9' ? text[at] - '0' : text[at] - 'A' + 10);
            };
            bytes[i] = static_cast<std::uint8_t>(value(2 * i) << 4U | value(2 * i + 1));
        }
        address = Address::v6(bytes);
    }
    if (!address || !address->isReachable()) return notOurs();
    return address;
}

std::vector<std::string_view> split(std::string_view text, char at) {
    std::vector<std::string_view> parts;
    for (;;) {
        const std::size_t end = text.find(at);
        parts.push_back(text.substr(0, end));
        if (end == std::string_view::npos) return parts;
        text.remove_prefix(end + 1);
    }
}

Result<std::string> wholeFingerprint(std::string_view text) {
    if (text.size() != hashLetters || !areLetters(text)) return notOurs();
    LetterReader letters(text);
    std::array<std::uint8_t, hashDigits / 2> bytes{};
    for (std::uint8_t& byte : bytes)
        byte = static_cast<std::uint8_t>(letters.take(8));
    if (letters.take(static_cast<unsigned>(letters.left())) != 0) return notOurs(); // one text for one value
    return toHex(bytes);
}

Result<Invitation> readQr(std::string_view text) {
    if (text.size() > 400) return notOurs();
    const auto parts = split(text, '/');
    const std::string_view its = parts[0].substr(qrBegin.size());
    if (its != qrVersion && !its.empty() && its.find_first_not_of("0123456789") == std::string_view::npos)
        return fail(ErrorCode::unsupported,
                    say("This invitation is of version %1; this Ambit reads version 1.",
                        std::string(its.substr(0, 9))),
                    {}, say("Bring both devices to the same Ambit."));
    if (its != qrVersion || parts.size() != 5) return notOurs();
    Invitation invitation;
    const std::string_view port = parts[1];
    const auto [stop, error] = std::from_chars(port.data(), port.data() + port.size(), invitation.port);
    if (error != std::errc() || stop != port.data() + port.size() || port.front() == '0') return notOurs();
    for (const std::string_view one : split(parts[2], '+')) {
        auto address = qrAddress(one);
        if (!address || invitation.addresses.size() == mostAddresses) return notOurs();
        invitation.addresses.push_back(*address);
    }
    auto fingerprint = wholeFingerprint(parts[3]);
    if (!fingerprint) return notOurs();
    invitation.fingerprint = std::move(*fingerprint);
    invitation.word = parts[4];
    if (invitation.word.size() != wordLetters || !areLetters(invitation.word)) return notOurs();
    return invitation;
}

// --- the typed code
// ----------------------------------------------------------------------------------------------------

/// The letters that were meant.
Result<std::string> meant(std::string_view text) {
    std::string letters;
    for (const char c : text) {
        if (c == ' ' || c == '-' || c == '\n' || c == '\t' || c == '\r') continue;
        const auto value = tolerantValueOf(c);
        if (!value || letters.size() > 64)
            return fail(ErrorCode::syntax,
                        say("This is no code to watch by: it has other letters, or too many."), {},
                        say("Type the letters as they stand on the walker's device."));
        letters += letterOf(*value);
    }
    return letters;
}

Result<Invitation> readTyped(std::string_view text) {
    const auto letters = meant(text);
    if (!letters) return tl::unexpected(letters.error());
    const auto wrong = [](Sentence what) {
        return fail(ErrorCode::invalid, std::move(what), {},
                    say("Compare it with the walker's device, group by group."));
    };
    // Few letters say how many there must be; what they say counts only once the check has held.
    LetterReader reader(*letters);
    const auto itsVersion = static_cast<unsigned>(reader.take(2));
    const auto network = static_cast<std::size_t>(reader.take(3));
    const bool usual = reader.take(1) == 0;
    const bool isKnown = itsVersion == typedVersion && network < networks.size();
    const Layout layout = layoutFor(networks[std::min(network, networks.size() - 1)].hostBits, usual);
    if (isKnown && letters->size() != layout.letters + checks)
        return wrong(say("This code has %1 letters where %2 are expected.", std::to_string(letters->size()),
                         std::to_string(layout.letters + checks)));
    if (letters->size() <= checks) return wrong(say("This code is too short."));
    const std::string_view body = std::string_view(*letters).substr(0, letters->size() - checks);
    if (checkLetters(body) != letters->substr(body.size()))
        return wrong(say("A letter of this code is wrong."));
    if (!isKnown)
        return fail(ErrorCode::unsupported, say("This code is of a later version."), {},
                    say("Bring both devices to the same Ambit."));

    Invitation invitation;
    const auto host = static_cast<std::uint32_t>(reader.take(networks[network].hostBits));
    const std::uint32_t number = networks[network].base | host;
    invitation.addresses = {
        Address::v4({static_cast<std::uint8_t>(number >> 24U), static_cast<std::uint8_t>(number >> 16U),
                     static_cast<std::uint8_t>(number >> 8U), static_cast<std::uint8_t>(number)})};
    if (!usual) invitation.port = static_cast<std::uint16_t>(reader.take(16));
    LetterWriter word;
    word.add(reader.take(wordBits), wordBits);
    invitation.word = word.end();
    for (unsigned bits = 0; bits < layout.hashBits; bits += 4)
        invitation.fingerprint += "0123456789abcdef"[reader.take(4)];
    // One code for one value.
    const bool isShortest = networkOf(number) == network && (usual || invitation.port != usualPort);
    if (!isShortest || invitation.port == 0 || !invitation.addresses.front().isReachable())
        return wrong(say("This code names an address that no device has."));
    return invitation;
}

} // namespace

Result<std::string> qrText(const Invitation& invitation) {
    if (auto good = check(invitation); !good) return tl::unexpected(good.error());
    std::string text =
        std::string(qrBegin) + std::string(qrVersion) + '/' + std::to_string(invitation.port) + '/';
    for (std::size_t i = 0; i < invitation.addresses.size(); ++i)
        text += (i > 0 ? "+" : "") + qrTextOf(invitation.addresses[i]);
    LetterWriter fingerprint;
    for (const char digit : invitation.fingerprint)
        fingerprint.add(hexValue(digit), 4);
    return text + '/' + fingerprint.end() + '/' + invitation.word;
}

Result<std::string> typedCode(const Invitation& invitation) {
    if (auto good = check(invitation); !good) return tl::unexpected(good.error());
    const auto address = std::find_if(invitation.addresses.begin(), invitation.addresses.end(),
                                      [](const Address& one) { return one.isV4(); });
    if (address == invitation.addresses.end())
        return fail(ErrorCode::invalid, say("There is no code to type for an IPv6 address."), {},
                    say("Scan the QR code instead."));
    const std::size_t network = networkOf(address->number());
    const bool usual = invitation.port == usualPort;
    const Layout layout = layoutFor(networks[network].hostBits, usual);
    LetterWriter bits;
    bits.add(typedVersion, 2);
    bits.add(network, 3);
    bits.add(usual ? 0 : 1, 1);
    bits.add(address->number(), networks[network].hostBits);
    if (!usual) bits.add(invitation.port, 16);
    LetterReader word(invitation.word);
    bits.add(word.take(wordBits), wordBits);
    for (unsigned i = 0; i < layout.hashBits / 4; ++i)
        bits.add(hexValue(invitation.fingerprint[i]), 4);
    const std::string body = bits.end();
    std::string code;
    for (const char letter : body + checkLetters(body)) {
        if (code.size() % (group + 1) == group) code += '-';
        code += letter;
    }
    return code;
}

Result<Invitation> readInvitation(std::string_view text) {
    return text.starts_with(qrBegin) && text.find('/') != std::string_view::npos ? readQr(text)
                                                                                 : readTyped(text);
}

bool isAnnounced(const Invitation& invitation, std::string_view certificateSha256) {
    return certificateSha256.size() == hashDigits && isHex(certificateSha256) &&
           invitation.fingerprint.size() * 4 >= fewestHashBits &&
           certificateSha256.starts_with(invitation.fingerprint);
}

} // namespace ambit::watch
