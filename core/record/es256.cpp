#include "record/es256.hpp"

#include "record/der.hpp"
#include "record/openssl.hpp"

#include <array>
#include <openssl/core_names.h>
#include <openssl/params.h>
#include <unordered_map>

namespace ambit::record {

namespace {

using std::string_view_literals::operator""sv;

/// SubjectPublicKeyInfo up to the point: id-ecPublicKey, prime256v1 by name, uncompressed (RFC 5480).
constexpr std::string_view keyPrefix =
    "\x30\x59\x30\x13\x06\x07\x2a\x86\x48\xce\x3d\x02\x01\x06\x08\x2a\x86\x48\xce\x3d\x03\x01\x07\x03\x42\x00"sv;
constexpr std::size_t pointSize = 65;
constexpr std::size_t half = 32;

/// The group's order n and n/2 (FIPS 186-4, D.1.2.3), big-endian: compared and subtracted byte by byte.
constexpr std::string_view order =
    "\xff\xff\xff\xff\x00\x00\x00\x00\xff\xff\xff\xff\xff\xff\xff\xff\xbc\xe6\xfa\xad\xa7\x17\x9e\x84\xf3\xb9\xca\xc2\xfc\x63\x25\x51"sv;
constexpr std::string_view halfOrder =
    "\x7f\xff\xff\xff\x80\x00\x00\x00\x7f\xff\xff\xff\xff\xff\xff\xff\xde\x73\x7d\x56\xd3\x8b\xcf\x42\x79\xdc\xe5\x61\x7e\x31\x92\xa8"sv;
static_assert(order.size() == half && halfOrder.size() == half);

/// Empty where the point isn't on the curve.
OwnedKey keyOf(std::string_view point) {
    std::string group = "prime256v1";
    std::string bytes(point);
    std::array<OSSL_PARAM, 3> parameters{
        OSSL_PARAM_construct_utf8_string(OSSL_PKEY_PARAM_GROUP_NAME, group.data(), 0),
        OSSL_PARAM_construct_octet_string(OSSL_PKEY_PARAM_PUB_KEY, bytes.data(), bytes.size()),
        OSSL_PARAM_construct_end()};
    const OwnedKeyContext context(EVP_PKEY_CTX_new_from_name(nullptr, "EC", nullptr));
    EVP_PKEY* key = nullptr;
    if (context && EVP_PKEY_fromdata_init(context.get()) == 1)
        EVP_PKEY_fromdata(context.get(), &key, EVP_PKEY_PUBLIC_KEY, parameters.data());
    return OwnedKey(key);
}

std::string_view takeNumber(std::string_view& der) {
    const std::size_t size = der::sizeOfFirst(der);
    if (size < 3 || size > 35 || der[0] != static_cast<char>(der::integer)) return {};
    std::string_view number = der.substr(2, size - 2);
    der.remove_prefix(size);
    while (number.size() > half && number[0] == '\0')
        number.remove_prefix(1);
    return number.size() > half ? std::string_view() : number;
}

} // namespace

Result<std::string> pointOf(std::string_view info) {
    const bool p256 = info.size() == keyPrefix.size() + pointSize && info.starts_with(keyPrefix) &&
                      info[keyPrefix.size()] == '\x04' && keyOf(info.substr(keyPrefix.size())) != nullptr;
    const CleanErrors clean;
    if (!p256)
        return fail(ErrorCode::signature,
                    say("This is not a P-256 key with its curve named and its point written out."));
    return std::string(info.substr(keyPrefix.size()));
}

Es256Key::Es256Key(std::string_view point) {
    const CleanErrors clean;
    const OwnedKey key = point.size() == pointSize ? keyOf(point) : OwnedKey();
    context.reset(key ? EVP_PKEY_CTX_new(key.get(), nullptr) : nullptr);
    if (context && EVP_PKEY_verify_init(context.get()) != 1) context.reset();
}

bool Es256Key::verifies(std::string_view digest, std::string_view signature) const {
    const CleanErrors clean;
    if (!context || digest.size() != half || signature.size() != 2 * half) return false;
    const std::string der = toDerSignature(signature);
    return EVP_PKEY_verify(context.get(), bytesOf(der), der.size(), bytesOf(digest), digest.size()) == 1;
}

bool verifyEs256(std::string_view point, std::string_view digest, std::string_view signature) {
    constexpr std::size_t most = 2048; // some 4 MB: more people than a large fleet has
    thread_local std::unordered_map<std::string, Es256Key> seen; // the same few keys again and again
    std::string name(point);
    auto known = seen.find(name);
    if (known == seen.end()) {
        if (seen.size() >= most) seen.clear();
        known = seen.emplace(std::move(name), Es256Key(point)).first;
    }
    return known->second.verifies(digest, signature);
}

bool isLowS(std::string_view signature) {
    // char_traits compares chars as unsigned bytes.
    return signature.size() == 2 * half && signature.substr(half) <= halfOrder;
}

std::string withLowS(std::string_view signature) {
    std::string low(signature);
    if (signature.size() != 2 * half || isLowS(signature)) return low;
    int borrow = 0;
    for (std::size_t i = half; i-- > 0;) {
        const int difference =
            static_cast<unsigned char>(order[i]) - static_cast<unsigned char>(signature[half + i]) - borrow;
        borrow = difference < 0 ? 1 : 0;
        low[half + i] = static_cast<char>(difference & 0xFF);
    }
    return low;
}

Result<std::string> fromDerSignature(std::string_view der) {
    std::string_view rest = der;
    if (der::sizeOfFirst(der) == der.size() && der.size() > 8 && der[0] == static_cast<char>(der::sequence)) {
        rest.remove_prefix(2);
        const std::string_view r = takeNumber(rest);
        const std::string_view s = takeNumber(rest);
        std::string signature = std::string(half - r.size(), '\0').append(r);
        signature.append(half - s.size(), '\0').append(s);
        if (toDerSignature(signature) == der) return signature;
    }
    return fail(ErrorCode::signature, say("This is not a P-256 signature in DER."));
}

std::string toDerSignature(std::string_view signature) {
    const std::size_t middle = signature.size() / 2;
    return der::item(der::sequence,
                     der::number(signature.substr(0, middle)) + der::number(signature.substr(middle)));
}

} // namespace ambit::record
