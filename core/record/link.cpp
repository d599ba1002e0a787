#include "record/link.hpp"

#include "base/hash.hpp"
#include "record/der.hpp"
#include "record/es256.hpp"
#include "record/issuing.hpp"
#include "record/openssl.hpp"

#include <ctime>
#include <openssl/pem.h>
#include <openssl/x509v3.h>

namespace ambit::record {

namespace {

constexpr std::int64_t dayMs = 86'400'000;

tl::unexpected<Error> refuse(Sentence what) {
    return fail(ErrorCode::signature, std::move(what), "certificate");
}

OwnedCertificate readDer(std::string_view der) {
    const unsigned char* at = bytesOf(der);
    OwnedCertificate read(d2i_X509(nullptr, &at, static_cast<long>(der.size())));
    return at == bytesOf(der) + der.size() ? std::move(read) : nullptr;
}

/// All of it but the person's signature: it bears the new key's own in its place.
OwnedCertificate drafted(EVP_PKEY* key, X509* person, Instant at) {
    const auto seconds = [&](std::int64_t from) { return static_cast<std::time_t>((at.ms + from) / 1000); };
    OwnedCertificate certificate(X509_new());
    X509* it = certificate.get();
    const bool done =
        it != nullptr && X509_set_version(it, X509_VERSION_3) == 1 && setNumber(it) &&
        ASN1_TIME_set(X509_getm_notBefore(it), seconds(-dayMs)) != nullptr &&
        ASN1_TIME_set(X509_getm_notAfter(it), seconds(dayMs)) != nullptr &&
        X509_NAME_add_entry_by_NID(X509_get_subject_name(it), NID_commonName, MBSTRING_UTF8,
                                   bytesOf("Ambit link"), -1, -1, 0) == 1 &&
        X509_set_issuer_name(it, X509_get_subject_name(person)) == 1 && X509_set_pubkey(it, key) == 1 &&
        addExtension(it, NID_basic_constraints, "critical,CA:FALSE") &&
        addExtension(it, NID_key_usage, "critical,digitalSignature") &&
        addExtension(it, NID_ext_key_usage, "serverAuth,clientAuth") && X509_sign(it, key, EVP_sha256()) > 0;
    return done ? std::move(certificate) : nullptr;
}

std::string_view asText(const Digest& digest) {
    return {reinterpret_cast<const char*>(digest.data()), digest.size()};
}

std::string algorithmOf(const X509* certificate) {
    const X509_ALGOR* algorithm = nullptr;
    X509_get0_signature(nullptr, &algorithm, certificate);
    return derOf(algorithm, i2d_X509_ALGOR);
}

std::string pemOf(EVP_PKEY* key) {
    const OwnedBio out(BIO_new(BIO_s_mem()));
    if (!out || PEM_write_bio_PKCS8PrivateKey(out.get(), key, nullptr, nullptr, 0, nullptr, nullptr) != 1)
        return {};
    return textOf(out.get());
}

} // namespace

Result<LinkKey> newLinkKey(const Signer& person, Instant at) {
    const CleanErrors clean;
    const OwnedKey key(EVP_EC_gen("P-256"));
    const OwnedCertificate issuer = readDer(person.certificate().der);
    const OwnedCertificate draft = key && issuer ? drafted(key.get(), issuer.get(), at) : nullptr;
    const std::string signedPart = draft ? derOf(draft.get(), i2d_re_X509_tbs) : std::string();
    if (signedPart.empty())
        return refuse(say("The cryptographic library failed: %1.", say("making a certificate")));
    const auto signature = person.signDigest(asText(sha256(signedPart)));
    if (!signature) return tl::unexpected(signature.error());
    // RFC 5280, 4.1: what is signed, by which algorithm, the signature as a bit string without unused bits.
    constexpr auto bitString = static_cast<der::Tag>(0x03);
    LinkKey link{pemOf(key.get()),
                 der::item(der::sequence, signedPart + algorithmOf(draft.get()) +
                                              der::item(bitString, '\0' + toDerSignature(*signature)))};
    if (auto good = vouchedFor(link.certificateDer, person.certificate().der); !good)
        return tl::unexpected(good.error());
    return link;
}

Result<Certificate> vouchedFor(std::string_view linkDer, std::string_view personDer) {
    const CleanErrors clean;
    auto person = Certificate::fromDer(personDer);
    if (!person) return person;
    const OwnedCertificate link = readDer(linkDer);
    const OwnedCertificate issuer = readDer(personDer);
    if (!link || !issuer)
        return refuse(say("The connection's certificate is not an X.509 certificate in DER."));
    if (X509_NAME_cmp(X509_get_issuer_name(link.get()), X509_get_subject_name(issuer.get())) != 0 ||
        X509_get_signature_nid(link.get()) != NID_ecdsa_with_SHA256 ||
        X509_verify(link.get(), X509_get0_pubkey(issuer.get())) != 1)
        return refuse(say("The connection's certificate is not vouched for by %1.", person->name));
    return person;
}

} // namespace ambit::record
