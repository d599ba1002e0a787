#include "base/hash.hpp"
#include "base/parse.hpp"
#include "record/es256.hpp"
#include "record/key.hpp"
#include "record/openssl.hpp"

#include <chrono>
#include <openssl/x509v3.h>
#include <optional>

namespace ambit::record {

namespace {

tl::unexpected<Error> refuse(Sentence what) {
    return fail(ErrorCode::signature, std::move(what), "certificate");
}

std::optional<Instant> instantOf(const ASN1_TIME* time) {
    using namespace std::chrono;
    std::tm read{};
    if (time == nullptr || ASN1_TIME_to_tm(time, &read) != 1) return std::nullopt;
    const sys_days day = year(read.tm_year + 1900) / (read.tm_mon + 1) / read.tm_mday;
    const auto at = day + hours(read.tm_hour) + minutes(read.tm_min) + seconds(read.tm_sec);
    return Instant{milliseconds(at.time_since_epoch()).count()};
}

/// The one common name of the subject; empty: none, several, or not plain text.
std::string commonName(const X509_NAME* subject) {
    const int at = X509_NAME_get_index_by_NID(subject, NID_commonName, -1);
    if (at < 0 || X509_NAME_get_index_by_NID(subject, NID_commonName, at) >= 0) return {};
    unsigned char* text = nullptr;
    const int size = ASN1_STRING_to_UTF8(&text, X509_NAME_ENTRY_get_data(X509_NAME_get_entry(subject, at)));
    if (size < 0) return {};
    std::string name(reinterpret_cast<const char*>(text), static_cast<std::size_t>(size));
    OPENSSL_free(text);
    return isPlainText(name) && name.find('\n') == std::string::npos ? name : std::string();
}

bool maySign(X509* certificate) {
    return (X509_get_key_usage(certificate) & (KU_DIGITAL_SIGNATURE | KU_NON_REPUDIATION)) != 0;
}

/// One who vouches for themselves must at least hold the key. Others are vouched for by somebody we don't
/// know.
bool vouchedFor(X509* certificate) {
    if (X509_NAME_cmp(X509_get_subject_name(certificate), X509_get_issuer_name(certificate)) != 0)
        return true;
    return X509_verify(certificate, X509_get0_pubkey(certificate)) == 1;
}

} // namespace

Result<Certificate> Certificate::fromDer(std::string_view der) {
    const CleanErrors clean;
    const unsigned char* at = bytesOf(der);
    const OwnedCertificate read(d2i_X509(nullptr, &at, static_cast<long>(der.size())));
    if (!read || at != bytesOf(der) + der.size())
        return refuse(say("This is not an X.509 certificate in DER."));
    auto point = pointOf(derOf(X509_get_X509_PUBKEY(read.get()), i2d_X509_PUBKEY));
    if (!point) return refuse(point.error().what);
    if (!maySign(read.get())) return refuse(say("This certificate's key is not meant for signing."));
    if (!vouchedFor(read.get())) return refuse(say("The certificate's own signature doesn't hold."));
    const auto from = instantOf(X509_get0_notBefore(read.get()));
    const auto to = instantOf(X509_get0_notAfter(read.get()));
    if (!from || !to || *to < *from) return refuse(say("The certificate's life has no beginning or no end."));
    std::string name = commonName(X509_get_subject_name(read.get()));
    if (name.empty()) return refuse(say("The certificate doesn't bear exactly one name."));
    return Certificate{std::string(der), std::move(name), std::move(*point), sha256Hex(der), *from, *to};
}

Signer::Signer(Certificate certificate, SignDigest signIt)
    : cert(std::move(certificate)), sign(std::move(signIt)) {}

} // namespace ambit::record
