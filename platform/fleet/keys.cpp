#include "fleet/keys.hpp"

#include "base/hash.hpp"

#include <array>
#include <memory>
#include <openssl/bn.h>
#include <openssl/ec.h>
#include <openssl/obj_mac.h>

namespace ambit::fleet {

namespace {

template<auto freeIt> struct Freeing {
    template<class T> void operator()(T* object) const { freeIt(object); }
};
using Number = std::unique_ptr<BIGNUM, Freeing<BN_free>>;
using Numbers = std::unique_ptr<BN_CTX, Freeing<BN_CTX_free>>;
using Point = std::unique_ptr<EC_POINT, Freeing<EC_POINT_free>>;
using Group = std::unique_ptr<EC_GROUP, Freeing<EC_GROUP_free>>;

constexpr int bytesOfNumber = 32; ///< on P-256

tl::unexpected<Error> broken(const char* step) {
    return fail(ErrorCode::signature, std::string("The cryptographic library failed: ") + step + '.');
}

const unsigned char* bytesOf(std::string_view text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}

std::string hashOf(std::string_view text) {
    const Digest digest = sha256(text);
    return {digest.begin(), digest.end()};
}

/// From 1 up to but not the group's order, by trying again what lies outside. Allocation failures give null.
Number below(const BIGNUM* order, const std::string& secret) {
    for (std::string text = hashOf(secret);; text = hashOf(text)) {
        Number number(BN_bin2bn(bytesOf(text), bytesOfNumber, nullptr));
        if (!number || (!BN_is_zero(number.get()) && BN_cmp(number.get(), order) < 0)) return number;
    }
}

std::string written(const BIGNUM* number) {
    std::string bytes(bytesOfNumber, '\0');
    BN_bn2binpad(number, reinterpret_cast<unsigned char*>(bytes.data()), bytesOfNumber);
    return bytes;
}

/// ECDSA (FIPS 186-4, 6.4) with a nonce worked out from the key and the digest.
class Key {
public:
    Key(std::uint64_t seed, const std::string& label)
        : group(EC_GROUP_new_by_curve_name(NID_X9_62_prime256v1)) {
        if (!group) return;
        order = EC_GROUP_get0_order(group.get());
        secret = below(order, "An invented person's key, " + std::to_string(seed) + ", " + label);
    }
    [[nodiscard]] bool works() const { return group && secret; }

    /// 65 bytes, uncompressed; empty if the library failed.
    [[nodiscard]] std::string point() const {
        const Numbers numbers(BN_CTX_new());
        const Point its(EC_POINT_new(group.get()));
        std::string bytes(1 + 2 * bytesOfNumber, '\0');
        const bool good =
            numbers && its &&
            EC_POINT_mul(group.get(), its.get(), secret.get(), nullptr, nullptr, numbers.get()) == 1 &&
            EC_POINT_point2oct(group.get(), its.get(), POINT_CONVERSION_UNCOMPRESSED,
                               reinterpret_cast<unsigned char*>(bytes.data()), bytes.size(),
                               numbers.get()) == bytes.size();
        return good ? bytes : std::string();
    }

    /// R‖S, S at most half the order.
    [[nodiscard]] Result<std::string> sign(std::string_view digest) const {
        const Numbers numbers(BN_CTX_new());
        const Point point(EC_POINT_new(group.get()));
        const Number r(BN_new());
        const Number s(BN_new());
        const Number z(BN_bin2bn(bytesOf(digest), static_cast<int>(digest.size()), nullptr));
        const Number k = below(order, written(secret.get()) + std::string(digest));
        BN_CTX* with = numbers.get();
        if (digest.size() != bytesOfNumber || !numbers || !point || !r || !s || !z || !k ||
            EC_POINT_mul(group.get(), point.get(), k.get(), nullptr, nullptr, with) != 1 ||
            EC_POINT_get_affine_coordinates(group.get(), point.get(), r.get(), nullptr, with) != 1 ||
            BN_nnmod(r.get(), r.get(), order, with) != 1 ||
            BN_mod_mul(s.get(), r.get(), secret.get(), order, with) != 1 ||
            BN_mod_add(s.get(), s.get(), z.get(), order, with) != 1 ||
            BN_mod_inverse(k.get(), k.get(), order, with) == nullptr ||
            BN_mod_mul(s.get(), s.get(), k.get(), order, with) != 1 || BN_is_zero(r.get()) ||
            BN_is_zero(s.get()))
            return broken("signing");
        const Number other(BN_new());
        if (!other || BN_sub(other.get(), order, s.get()) != 1) return broken("signing");
        return written(r.get()) + written(BN_cmp(other.get(), s.get()) < 0 ? other.get() : s.get());
    }

private:
    Group group;
    const BIGNUM* order = nullptr; ///< the group's
    Number secret;
};

// --- the certificate, in DER
// ----------------------------------------------------------------------------------

constexpr char sequence = 0x30;
constexpr char setOf = 0x31;
constexpr char integer = 0x02;
constexpr char bitString = 0x03;
constexpr char octetString = 0x04;
constexpr char utf8 = 0x0C;
constexpr char utcTime = 0x17;
constexpr char generalTime = 0x18;

std::string der(char tag, const std::string& content) {
    std::string out(1, tag);
    if (content.size() >= 0x100) out += "\x82" + std::string(1, static_cast<char>(content.size() >> 8U));
    if (content.size() >= 0x80 && content.size() < 0x100) out += "\x81";
    return out + static_cast<char>(content.size() & 0xFFU) + content;
}

template<std::size_t size> std::string raw(const char (&bytes)[size]) {
    return {bytes, size - 1};
}

/// As X.509 wants it: two digits of the year up to 2049 (RFC 5280, 4.1.2.5).
std::string timeOf(Instant at) {
    std::string digits;
    for (const char c : toText(at).substr(0, 19))
        if (c >= '0' && c <= '9') digits += c;
    return digits < "2050" ? der(utcTime, digits.substr(2) + 'Z') : der(generalTime, digits + 'Z');
}

Instant yearsAfter(Instant at, int years) {
    constexpr std::int64_t msOfYear = std::int64_t{365} * 24 * 3600 * 1000;
    return {at.ms + years * msOfYear};
}

std::string withSignature(const std::string& derInteger) {
    std::string number = derInteger;
    number.erase(0, std::min(number.find_first_not_of('\0'), number.size() - 1));
    if ((static_cast<unsigned char>(number[0]) & 0x80U) != 0) number.insert(0, 1, '\0');
    return der(integer, number);
}

Result<std::string> certificateOf(const Key& key, const std::string& name, Instant from) {
    static const std::string ecdsaWithSha256 = der(sequence, raw("\x06\x08\x2A\x86\x48\xCE\x3D\x04\x03\x02"));
    static const std::string p256 =
        der(sequence, raw("\x06\x07\x2A\x86\x48\xCE\x3D\x02\x01\x06\x08\x2A\x86\x48\xCE\x3D\x03\x01\x07"));
    static const std::string commonName = raw("\x06\x03\x55\x04\x03");
    static const std::string isCritical = raw("\x01\x01\xFF");
    static const std::string noAuthority =
        der(sequence, raw("\x06\x03\x55\x1D\x13") + isCritical + der(octetString, der(sequence, "")));
    static const std::string forSigning =
        der(sequence,
            raw("\x06\x03\x55\x1D\x0F") + isCritical + der(octetString, der(bitString, raw("\x06\xC0"))));
    constexpr int lifeYears = 20;
    constexpr char version = '\x02';

    const std::string point = key.point();
    if (point.empty()) return broken("making a key");
    std::string number = hashOf(point + name + toText(from)).substr(0, 16);
    number[0] = static_cast<char>((static_cast<unsigned char>(number[0]) & 0x7FU) | 0x40U);
    const std::string subject = der(sequence, der(setOf, der(sequence, commonName + der(utf8, name))));
    const std::string told =
        der(sequence, der('\xA0', der(integer, std::string(1, version))) + der(integer, number) +
                          ecdsaWithSha256 + subject +
                          der(sequence, timeOf(from) + timeOf(yearsAfter(from, lifeYears))) + subject +
                          der(sequence, p256 + der(bitString, std::string(1, '\0') + point)) +
                          der('\xA3', der(sequence, noAuthority + forSigning)));
    auto signature = key.sign(hashOf(told));
    if (!signature) return signature;
    const std::string pair = der(sequence, withSignature(signature->substr(0, bytesOfNumber)) +
                                               withSignature(signature->substr(bytesOfNumber)));
    return der(sequence, told + ecdsaWithSha256 + der(bitString, std::string(1, '\0') + pair));
}

} // namespace

Result<record::Signer> derivedKey(std::uint64_t seed, const std::string& label, const std::string& name,
                                  Instant from) {
    const auto key = std::make_shared<const Key>(seed, label);
    if (!key->works()) return broken("making a key");
    const auto bytes = certificateOf(*key, name, from);
    if (!bytes) return tl::unexpected(bytes.error());
    auto certificate = record::Certificate::fromDer(*bytes);
    if (!certificate) return tl::unexpected(certificate.error());
    return record::Signer(std::move(*certificate),
                          [key](std::string_view digest) { return key->sign(digest); });
}

} // namespace ambit::fleet
