#include "record/key.hpp"

#include "base/parse.hpp"
#include "base/phrase.hpp"
#include "record/es256.hpp"
#include "record/issuing.hpp"
#include "record/openssl.hpp"

#include <chrono>
#include <openssl/pem.h>
#include <openssl/pkcs12.h>
#include <openssl/x509v3.h>

namespace ambit::record {

namespace {

constexpr std::size_t shortestPassphrase = 8;   ///< bytes
constexpr std::size_t longestPassphrase = 1024; ///< bytes
constexpr std::uint64_t scryptN = 16384;        ///< as much as OpenSSL 3.0 takes with r = 8
constexpr std::uint64_t scryptR = 8;
constexpr std::uint64_t scryptP = 8;
constexpr std::size_t longestName = 64; ///< characters (X.520, ub-common-name)
constexpr int lifeYears = 20;

using OwnedPrivateKeyInfo = Owned<PKCS8_PRIV_KEY_INFO, PKCS8_PRIV_KEY_INFO_free>;
using OwnedEncrypted = Owned<X509_SIG, X509_SIG_free>;
using OwnedAlgorithm = Owned<X509_ALGOR, X509_ALGOR_free>;

tl::unexpected<Error> broken(const char* step) {
    return fail(ErrorCode::signature, say("The cryptographic library failed: %1.", say(step)));
}

tl::unexpected<Error> notAKeyFile() {
    return fail(
        ErrorCode::syntax, say("This is not a key file."), {},
        say("A key file holds an ENCRYPTED PRIVATE KEY and a CERTIFICATE, as “ambit key new” writes them."));
}

/// Without this, OpenSSL would ask at the terminal.
int noPassphrase(char* /*buffer*/, int /*size*/, int /*writing*/, void* /*data*/) {
    return -1;
}

std::size_t characters(std::string_view utf8) {
    std::size_t count = 0;
    for (const char c : utf8)
        if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80) ++count;
    return count;
}

Result<void> checkName(const std::string& name) {
    if (!name.empty() && isPlainText(name) && name.find('\n') == std::string::npos &&
        characters(name) <= longestName)
        return {};
    return fail(ErrorCode::invalid, say("A key's name is one line of 1 to 64 characters."), "name");
}

Result<void> checkPassphrase(std::string_view passphrase) {
    if (passphrase.size() >= shortestPassphrase && passphrase.size() <= longestPassphrase) return {};
    return fail(ErrorCode::passphrase, say("A passphrase has 8 to 1024 bytes."), {},
                say("Choose another one."));
}

// --- a new certificate
// ----------------------------------------------------------------------------------------

bool setLife(X509* certificate, Instant at) {
    using namespace std::chrono;
    const auto start = sys_time<milliseconds>(milliseconds(at.ms));
    const auto day = floor<days>(start);
    year_month_day date{day};
    date += years(lifeYears);
    if (!date.ok()) date = date.year() / date.month() / last; // born on 29 February
    const auto end = sys_days(date) + (start - day);
    const auto seconds = [](auto time) {
        return static_cast<std::time_t>(floor<std::chrono::seconds>(time).time_since_epoch().count());
    };
    return ASN1_TIME_set(X509_getm_notBefore(certificate), seconds(start)) != nullptr &&
           ASN1_TIME_set(X509_getm_notAfter(certificate), seconds(end)) != nullptr;
}

bool setName(X509* certificate, const std::string& name) {
    X509_NAME* subject = X509_get_subject_name(certificate);
    return X509_NAME_add_entry_by_NID(subject, NID_commonName, MBSTRING_UTF8, bytesOf(name),
                                      static_cast<int>(name.size()), -1, 0) == 1 &&
           X509_set_issuer_name(certificate, subject) == 1;
}

OwnedCertificate selfSigned(EVP_PKEY* key, const std::string& name, Instant at) {
    OwnedCertificate certificate(X509_new());
    X509* it = certificate.get();
    const bool done = it != nullptr && X509_set_version(it, X509_VERSION_3) == 1 && setNumber(it) &&
                      setLife(it, at) && setName(it, name) && X509_set_pubkey(it, key) == 1 &&
                      addExtension(it, NID_basic_constraints, "critical,CA:FALSE") &&
                      addExtension(it, NID_key_usage, "critical,digitalSignature,nonRepudiation") &&
                      addExtension(it, NID_subject_key_identifier, "hash") &&
                      X509_sign(it, key, EVP_sha256()) > 0;
    return done ? std::move(certificate) : nullptr;
}

// --- the private key, locked and unlocked
// --------------------------------------------------------------------

bool writeLocked(BIO* out, EVP_PKEY* key, std::string_view passphrase) {
    const OwnedPrivateKeyInfo plain(EVP_PKEY2PKCS8(key));
    OwnedAlgorithm algorithm(
        PKCS5_pbe2_set_scrypt(EVP_aes_256_cbc(), nullptr, 16, nullptr, scryptN, scryptR, scryptP));
    if (!plain || !algorithm) return false;
    const OwnedEncrypted locked(
        PKCS8_set0_pbe(passphrase.data(), static_cast<int>(passphrase.size()), plain.get(), algorithm.get()));
    if (!locked) return false;
    algorithm.release(); // NOLINT(bugprone-unused-return-value): now the locked key's
    return PEM_write_bio_PKCS8(out, locked.get()) == 1;
}

Result<std::string> signWith(EVP_PKEY* key, std::string_view digest) {
    const CleanErrors clean;
    const OwnedKeyContext context(EVP_PKEY_CTX_new(key, nullptr));
    std::string der(80, '\0');
    std::size_t size = der.size();
    if (digest.size() != 32 || !context || EVP_PKEY_sign_init(context.get()) != 1 ||
        EVP_PKEY_sign(context.get(), reinterpret_cast<unsigned char*>(der.data()), &size, bytesOf(digest),
                      digest.size()) != 1)
        return broken(pattern("signing"));
    der.resize(size);
    return fromDerSignature(der).map(withLowS);
}

} // namespace

Result<std::string> newKeyFile(const std::string& name, std::string_view passphrase, Instant at) {
    const CleanErrors clean;
    if (auto good = checkName(name); !good) return tl::unexpected(good.error());
    if (auto good = checkPassphrase(passphrase); !good) return tl::unexpected(good.error());
    const OwnedKey key(EVP_EC_gen("P-256"));
    if (!key) return broken(pattern("making a key"));
    const OwnedCertificate certificate = selfSigned(key.get(), name, at);
    if (!certificate) return broken(pattern("making a certificate"));
    const OwnedBio out(BIO_new(BIO_s_mem()));
    if (!out || !writeLocked(out.get(), key.get(), passphrase)) return broken(pattern("locking the key"));
    if (PEM_write_bio_X509(out.get(), certificate.get()) != 1)
        return broken(pattern("writing the certificate"));
    return textOf(out.get());
}

Result<Signer> unlock(std::string_view keyFile, std::string_view passphrase) {
    const CleanErrors clean;
    auto certificate = certificateOf(keyFile);
    if (!certificate) return tl::unexpected(certificate.error());
    const OwnedBio in(BIO_new_mem_buf(keyFile.data(), static_cast<int>(keyFile.size())));
    const OwnedEncrypted locked(PEM_read_bio_PKCS8(in.get(), nullptr, noPassphrase, nullptr));
    if (!locked) return notAKeyFile();
    const OwnedPrivateKeyInfo plain(
        checkPassphrase(passphrase)
            ? PKCS8_decrypt(locked.get(), passphrase.data(), static_cast<int>(passphrase.size()))
            : nullptr);
    if (!plain)
        return fail(ErrorCode::passphrase, say("This passphrase doesn't unlock the key."), {},
                    say("Try again."));
    const std::shared_ptr<EVP_PKEY> key(EVP_PKCS82PKEY(plain.get()), EVP_PKEY_free);
    const unsigned char* at = bytesOf(certificate->der);
    const OwnedCertificate x509(d2i_X509(nullptr, &at, static_cast<long>(certificate->der.size())));
    if (!key || X509_check_private_key(x509.get(), key.get()) != 1)
        return fail(ErrorCode::signature, say("The key file's certificate belongs to another key."));
    return Signer(std::move(*certificate),
                  [key](std::string_view digest) { return signWith(key.get(), digest); });
}

Result<Certificate> certificateOf(std::string_view keyFile) {
    const CleanErrors clean;
    constexpr std::size_t largest = 65536;
    if (keyFile.size() > largest) return notAKeyFile();
    const OwnedBio in(BIO_new_mem_buf(keyFile.data(), static_cast<int>(keyFile.size())));
    const OwnedCertificate read(in ? PEM_read_bio_X509(in.get(), nullptr, noPassphrase, nullptr) : nullptr);
    if (!read) return notAKeyFile();
    return Certificate::fromDer(derOf(read.get(), i2d_X509));
}

} // namespace ambit::record
