#include "base/hash.hpp"

#include "base/encoding.hpp"

#include <cstdlib>
#include <openssl/sha.h>

namespace ambit {

Digest sha256(std::string_view bytes) {
    Digest digest{};
    const auto* data = reinterpret_cast<const unsigned char*>(bytes.data());
    // Without SHA-256 no record can be made or checked; a wrong digest would be worse than stopping.
    if (SHA256(data, bytes.size(), digest.data()) == nullptr) std::abort();
    return digest;
}

std::string sha256Hex(std::string_view bytes) {
    return toHex(sha256(bytes));
}

} // namespace ambit
