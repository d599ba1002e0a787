#include "base/hash.hpp"

#include "base/encoding.hpp"

#include <cstdlib>
#include <openssl/evp.h>

namespace ambit {

namespace {

// Without SHA-256 no record can be made or checked; a wrong digest would be worse than stopping.
void must(bool done) {
    if (!done) std::abort();
}

/// Looked for once: OpenSSL's short forms look for it each time.
const EVP_MD* algorithm() {
    static EVP_MD* const found = EVP_MD_fetch(nullptr, "SHA256", nullptr);
    return found;
}

EVP_MD_CTX* of(void* context) {
    return static_cast<EVP_MD_CTX*>(context);
}

} // namespace

Sha256::Sha256() : context(EVP_MD_CTX_new()) {
    must(context != nullptr && EVP_DigestInit_ex(of(context), algorithm(), nullptr) == 1);
}

Sha256::~Sha256() {
    EVP_MD_CTX_free(of(context));
}

void Sha256::add(std::string_view bytes) {
    must(EVP_DigestUpdate(of(context), bytes.data(), bytes.size()) == 1);
}

Digest Sha256::end() {
    Digest digest{};
    must(EVP_DigestFinal_ex(of(context), digest.data(), nullptr) == 1);
    return digest;
}

Digest sha256(std::string_view bytes) {
    Sha256 hash;
    hash.add(bytes);
    return hash.end();
}

std::string sha256Hex(std::string_view bytes) {
    return toHex(sha256(bytes));
}

} // namespace ambit
