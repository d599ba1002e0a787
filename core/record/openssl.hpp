// Ownership of OpenSSL's objects. Inside core/record only.
#pragma once

#include <memory>
#include <openssl/bio.h>
#include <openssl/bn.h>
#include <openssl/ec.h>
#include <openssl/err.h>
#include <openssl/evp.h>
#include <openssl/x509.h>
#include <string>
#include <string_view>

namespace ambit::record {

template<auto freeIt> struct Freeing {
    template<class T> void operator()(T* object) const { freeIt(object); }
};
template<class T, auto freeIt> using Owned = std::unique_ptr<T, Freeing<freeIt>>;

using OwnedBio = Owned<BIO, BIO_free_all>;
using OwnedNumber = Owned<BIGNUM, BN_free>;
using OwnedKey = Owned<EVP_PKEY, EVP_PKEY_free>;
using OwnedKeyContext = Owned<EVP_PKEY_CTX, EVP_PKEY_CTX_free>;
using OwnedCertificate = Owned<X509, X509_free>;

/// Failed calls leave their reasons in a queue of the thread; whoever reports a failure in words of our own
/// empties it.
struct CleanErrors {
    CleanErrors() = default;
    CleanErrors(const CleanErrors&) = delete;
    CleanErrors& operator=(const CleanErrors&) = delete;
    ~CleanErrors() { ERR_clear_error(); }
};

inline const unsigned char* bytesOf(std::string_view text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}

/// What an i2d function writes.
template<class T, class Write> std::string derOf(T* object, Write write) {
    unsigned char* out = nullptr;
    const int size = write(object, &out);
    if (size <= 0) return {};
    std::string der(reinterpret_cast<const char*>(out), static_cast<std::size_t>(size));
    OPENSSL_free(out);
    return der;
}

} // namespace ambit::record
