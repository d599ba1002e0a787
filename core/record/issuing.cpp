#include "record/issuing.hpp"

#include <array>
#include <openssl/rand.h>
#include <openssl/x509v3.h>

namespace ambit::record {

bool setNumber(X509* certificate) {
    std::array<unsigned char, 16> random{};
    if (RAND_bytes(random.data(), static_cast<int>(random.size())) != 1) return false;
    random[0] = static_cast<unsigned char>((random[0] & 0x7FU) | 0x40U); // positive, and always as long
    const OwnedNumber number(BN_bin2bn(random.data(), static_cast<int>(random.size()), nullptr));
    return number && BN_to_ASN1_INTEGER(number.get(), X509_get_serialNumber(certificate)) != nullptr;
}

bool addExtension(X509* certificate, int kind, const char* value) {
    X509V3_CTX context;
    X509V3_set_ctx(&context, certificate, certificate, nullptr, nullptr, 0);
    const Owned<X509_EXTENSION, X509_EXTENSION_free> extension(
        X509V3_EXT_conf_nid(nullptr, &context, kind, value));
    return extension && X509_add_ext(certificate, extension.get(), -1) == 1;
}

std::string textOf(BIO* memory) {
    char* data = nullptr;
    const long size = BIO_get_mem_data(memory, &data);
    return {data, static_cast<std::size_t>(size)};
}

} // namespace ambit::record
