#include "record/cms.hpp"

#include "base/hash.hpp"
#include "record/der.hpp"
#include "record/es256.hpp"
#include "record/openssl.hpp"

namespace ambit::record {

namespace {

using std::string_view_literals::operator""sv;
using der::item;

// Object identifiers, whole.
constexpr auto signedData = "\x06\x09\x2a\x86\x48\x86\xf7\x0d\x01\x07\x02"sv;
constexpr auto data = "\x06\x09\x2a\x86\x48\x86\xf7\x0d\x01\x07\x01"sv;
constexpr auto contentType = "\x06\x09\x2a\x86\x48\x86\xf7\x0d\x01\x09\x03"sv;
constexpr auto messageDigest = "\x06\x09\x2a\x86\x48\x86\xf7\x0d\x01\x09\x04"sv;
constexpr auto signingCertificateV2 = "\x06\x0b\x2a\x86\x48\x86\xf7\x0d\x01\x09\x10\x02\x2f"sv;
constexpr auto idSha256 = "\x06\x09\x60\x86\x48\x01\x65\x03\x04\x02\x01"sv;
constexpr auto ecdsaWithSha256 = "\x06\x08\x2a\x86\x48\xce\x3d\x04\x03\x02"sv;
constexpr auto versionOne = "\x02\x01\x01"sv;

std::string joined(std::initializer_list<std::string_view> parts) {
    std::string all;
    for (const std::string_view part : parts)
        all += part;
    return all;
}

std::string sequenceOf(std::initializer_list<std::string_view> parts) {
    return item(der::sequence, joined(parts));
}

std::string attribute(std::string_view id, std::string_view value) {
    return sequenceOf({id, item(der::set, value)});
}

std::string digestText(std::string_view bytes) {
    const Digest digest = sha256(bytes);
    return {reinterpret_cast<const char*>(digest.data()), digest.size()};
}

/// The content of the SET of signed attributes, in DER's order, which is that of their lengths.
std::string attributesOf(std::string_view digest, std::string_view certificate) {
    const std::string essCertificate = sequenceOf({item(der::octets, digestText(certificate))});
    return attribute(contentType, data) + attribute(messageDigest, item(der::octets, digest)) +
           attribute(signingCertificateV2, sequenceOf({sequenceOf({essCertificate})}));
}

/// Names the certificate: its issuer and serial number.
std::string identifierOf(std::string_view certificate) {
    const unsigned char* at = bytesOf(certificate);
    const OwnedCertificate read(d2i_X509(nullptr, &at, static_cast<long>(certificate.size())));
    if (!read) return {};
    return sequenceOf({derOf(X509_get_issuer_name(read.get()), i2d_X509_NAME),
                       derOf(X509_get0_serialNumber(read.get()), i2d_ASN1_INTEGER)});
}

/// Digest of what the signature is over: the attributes as a SET.
std::string signedDigest(std::string_view digest, std::string_view certificate) {
    return digestText(item(der::set, attributesOf(digest, certificate)));
}

/// Walks through DER. Once something isn't there, every later step gives nothing.
struct Walker {
    std::string_view rest;

    /// The whole next item.
    std::string_view skip() {
        const std::size_t size = der::sizeOfFirst(rest);
        const std::string_view whole = rest.substr(0, size);
        rest.remove_prefix(size == 0 ? rest.size() : size);
        return whole;
    }
    /// Into the next item: what is in it is next.
    void enter() {
        const std::string_view whole = skip();
        if (whole.empty()) return;
        const auto length = static_cast<unsigned char>(whole[1]);
        rest = whole.substr(length < 0x80 ? 2 : 2 + (length & 0x7FU));
    }
    void pass(int count) {
        for (int i = 0; i < count; ++i)
            skip();
    }
    std::string_view content() {
        enter();
        return rest;
    }
};

struct Parts {
    std::string_view certificate;
    std::string_view signature; ///< DER
};

/// Where the two parts that can't be computed stand. Whatever else is wrong comes out when all is rebuilt.
Parts partsOf(std::string_view cms) {
    Walker walker{cms};
    walker.enter(); // ContentInfo
    walker.pass(1);
    walker.enter();
    walker.enter(); // SignedData
    walker.pass(3);
    Walker certificates{walker.skip()};
    certificates.enter();
    walker.enter();
    walker.enter(); // SignerInfo
    walker.pass(5);
    return {certificates.skip(), walker.content()};
}

tl::unexpected<Error> refuse(Sentence what) {
    return fail(ErrorCode::signature, std::move(what), "CMS");
}

} // namespace

std::string cmsOf(std::string_view digest, std::string_view certificate, std::string_view signature) {
    const std::string digestAlgorithm = sequenceOf({idSha256});
    const std::string signer =
        sequenceOf({versionOne, identifierOf(certificate), digestAlgorithm,
                    item(der::context0, attributesOf(digest, certificate)), sequenceOf({ecdsaWithSha256}),
                    item(der::octets, toDerSignature(signature))});
    const std::string all = sequenceOf({versionOne, item(der::set, digestAlgorithm), sequenceOf({data}),
                                        item(der::context0, certificate), item(der::set, signer)});
    return sequenceOf({signedData, item(der::context0, all)});
}

std::size_t longestCms(const Certificate& certificate) {
    return cmsOf(std::string(32, '\0'), certificate.der, std::string(64, '\xFF')).size();
}

Result<std::string> signCms(std::string_view digest, const Signer& signer) {
    const std::string& certificate = signer.certificate().der;
    auto signature = signer.signDigest(signedDigest(digest, certificate));
    if (!signature) return signature;
    if (signature->size() != 64) return refuse(say("The signer gave no ES256 signature."));
    return cmsOf(digest, certificate, withLowS(*signature));
}

Result<Certificate> verifyCms(std::string_view der, std::string_view digest) {
    const Parts parts = partsOf(der);
    const auto signature = fromDerSignature(parts.signature);
    if (parts.certificate.empty() || !signature)
        return refuse(say("The PDF's signature is not one that Ambit makes."));
    if (cmsOf(digest, parts.certificate, *signature) != der)
        return refuse(
            say("The PDF was changed after signing, or its signature is not in the one form Ambit makes."));
    if (!isLowS(*signature)) return refuse(say("The PDF's signature has high S."));
    auto certificate = Certificate::fromDer(parts.certificate);
    if (!certificate) return certificate;
    if (!verifyEs256(certificate->point, signedDigest(digest, parts.certificate), *signature))
        return refuse(say("The PDF's signature by %1 doesn't hold.", certificate->name));
    return certificate;
}

} // namespace ambit::record
