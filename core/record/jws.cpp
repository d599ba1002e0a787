#include "record/jws.hpp"

#include "base/canonical.hpp"
#include "base/encoding.hpp"
#include "base/hash.hpp"
#include "record/es256.hpp"
#include "record/shape.hpp"

#include <array>
#include <mutex>
#include <nlohmann/json.hpp>
#include <optional>
#include <unordered_map>

namespace ambit::record {

namespace {

constexpr std::size_t mostCertificates = 8;
constexpr std::size_t mostSeen = 2048; ///< remembered a thread: some 4 MB, more people than a large fleet has

tl::unexpected<Error> refuse(Sentence what, const std::string& where) {
    return fail(ErrorCode::signature, std::move(what), where);
}

std::string_view asText(const Digest& digest) {
    return {reinterpret_cast<const char*>(digest.data()), digest.size()};
}

Result<std::string> certificateDer(const Json& text, const std::string& where) {
    if (!text.is_string()) return refuse(say("A certificate is base64 text."), where);
    auto der = fromBase64(text.get_ref<const std::string&>());
    if (!der) return refuse(say("This certificate is not strict base64."), where);
    return der;
}

/// Of a text seen before the certificate is known: the same few people sign again and again.
Result<Certificate> certificateOf(const std::string& text, const std::string& der) {
    static std::mutex guard; // for all threads: reading one takes as long as checking a record
    static std::unordered_map<std::string, Certificate> seen;
    {
        const std::lock_guard lock(guard);
        if (const auto known = seen.find(text); known != seen.end()) return known->second;
    }
    auto certificate = Certificate::fromDer(der);
    if (!certificate) return certificate;
    const std::lock_guard lock(guard);
    if (seen.size() >= mostSeen) seen.clear();
    return seen.emplace(text, std::move(*certificate)).first->second;
}

/// The first is the signer's; the others, if any, may vouch for it and are covered by the signature like it.
Result<Certificate> signerOf(const Json& header, const std::string& where) {
    const auto chain = header.find("x5c");
    if (chain == header.end() || !chain->is_array() || chain->empty() || chain->size() > mostCertificates)
        return refuse(say("The protected header doesn't name one to eight certificates in x5c."), where);
    std::optional<Certificate> first;
    for (const Json& text : *chain) {
        auto der = certificateDer(text, where);
        if (!der) return tl::unexpected(der.error());
        if (first) continue;
        auto certificate = certificateOf(text.get_ref<const std::string&>(), *der);
        if (!certificate) return refuse(certificate.error().what, where);
        first = std::move(*certificate);
    }
    return std::move(*first);
}

/// A record's own signer is named by its content. What a countersignature says stands in a first header only
/// where the signature before it was taken away.
Result<bool> checkFirst(const Json& header, std::string_view bytes, const std::string& where) {
    for (const char* member : {"after", "at", "signer"})
        if (header.contains(member))
            return refuse(say("This is a countersignature, and the signature before it is missing."), where);
    const auto declared = header.find("s");
    if (declared == header.end()) return false;
    if (*declared != "low") return refuse(say("The protected header's “s” can only be “low”."), where);
    // Whoever declares low S writes as Ambit does: the header too has one form only.
    if (canonicalJson(header) != bytes || header.size() != 3)
        return refuse(say("The protected header is not in canonical form, or says more than Ambit's."),
                      where);
    return true;
}

/// A countersignature's header has one form only, and names the signature before it.
Result<void> checkLater(const Json& header, std::string_view bytes, const std::string& after,
                        const std::string& where) {
    using Is = Shape::Is;
    static const Shape shape = object({{"after", Shape(Is::hash)},
                                       {"alg", word({"ES256"})},
                                       {"at", Shape(Is::instant)},
                                       {"s", word({"low"})},
                                       {"signer", person()},
                                       {"x5c", list(Shape(Is::text))}});
    if (auto good = checkShape(header, shape); !good)
        return refuse(good.error().what, where + good.error().where);
    if (canonicalJson(header) != bytes)
        return refuse(say("The protected header is not in canonical form."), where);
    if (header["after"] == after) return {};
    return refuse(say("This countersignature was given after another signature than the one before it: one "
                      "was exchanged, taken away or moved."),
                  where + "/after");
}

round::Person personOf(const Json& signer) {
    return {signer["name"].get<std::string>(), signer["role"].get<std::string>(),
            signer["certificate"].get<std::string>()};
}

Result<SignatureReport> reportOf(const Json& header, std::string_view bytes, const std::string& after,
                                 const std::string& where) {
    SignatureReport report;
    if (after.empty()) {
        const auto lowS = checkFirst(header, bytes, where);
        if (!lowS) return tl::unexpected(lowS.error());
        report.lowS = *lowS;
    } else {
        if (auto good = checkLater(header, bytes, after, where); !good) return tl::unexpected(good.error());
        report.lowS = true;
        report.who = personOf(header["signer"]);
        report.at = *parseInstant(header["at"].get_ref<const std::string&>());
    }
    auto certificate = signerOf(header, where);
    if (!certificate) return tl::unexpected(certificate.error());
    report.certificate = std::move(*certificate);
    if (report.at && report.who.name != report.certificate.name)
        return refuse(say("The countersigner is named %1, the certificate's holder %2.", report.who.name,
                          report.certificate.name),
                      where + "/signer/name");
    return report;
}

Result<SignatureReport> readHeader(std::string_view text, const std::string& after,
                                   const std::string& where) {
    const auto bytes = fromBase64Url(text);
    if (!bytes) return refuse(say("The protected header is not strict base64url."), where);
    const auto header = parseJson(*bytes, {.bytes = 65536, .depth = 4});
    if (!header || !header->is_object())
        return refuse(say("The protected header is not a JSON object."), where);
    if (header->contains("crit"))
        return refuse(say("The signature demands an extension (crit) that Ambit doesn't know."), where);
    const auto algorithm = header->find("alg");
    if (algorithm == header->end() || *algorithm != "ES256")
        return refuse(say("The signature's algorithm is not ES256."), where);
    return reportOf(*header, *bytes, after, where);
}

bool hasForm(JsonView entry) {
    return entry.isObject() && entry.size() == 2 && entry["protected"].isText() &&
           entry["signature"].isText();
}

/// First headers that held: the same person's is the same every time.
Result<SignatureReport> headerOf(std::string_view text, const std::string& after, const std::string& where) {
    thread_local std::unordered_map<std::string, SignatureReport> seen;
    const std::string name(text);
    if (after.empty())
        if (const auto known = seen.find(name); known != seen.end()) return known->second;
    auto report = readHeader(text, after, where);
    if (!report || !after.empty()) return report;
    if (seen.size() >= mostSeen) seen.clear();
    return seen.emplace(name, std::move(*report)).first->second;
}

} // namespace

Result<Json> signJws(std::string_view payload, const Signer& signer, const Json& more) {
    Json header{{"alg", "ES256"}, {"s", "low"}, {"x5c", Json::array({toBase64(signer.certificate().der)})}};
    header.update(more);
    const std::string text = toBase64Url(canonicalJson(header));
    auto signature = signer.signDigest(asText(signedDigest(text, payload)));
    if (!signature) return tl::unexpected(signature.error());
    if (signature->size() != 64)
        return refuse(say("The signer gave no ES256 signature."), signer.certificate().name);
    return Json{{"protected", text}, {"signature", toBase64Url(withLowS(*signature))}};
}

Digest signedDigest(std::string_view header, std::string_view payload) {
    Sha256 hash;
    hash.add(header);
    hash.add(".");
    // By pieces: the whole text would be made only to be hashed. Three bytes make four letters, so all but
    // the last piece end with a letter's end.
    constexpr std::size_t piece = 3072;
    std::array<char, piece / 3 * 4> letters; // NOLINT(*-member-init): written before it is read
    for (std::size_t at = 0; at < payload.size(); at += piece)
        hash.add({letters.data(), toBase64Url(payload.substr(at, piece), letters.data())});
    return hash.end();
}

Result<SignatureReport> firstHeader(std::string_view text) {
    return headerOf(text, {}, "/signatures/0/protected");
}

std::string hashOf(JsonView entry) {
    return sha256Hex(entry.source());
}

Json countersigning(const std::string& after, const round::Person& who, Instant at) {
    return {{"after", after},
            {"at", toText(at)},
            {"signer", {{"name", who.name}, {"role", who.role}, {"certificate", who.certificate}}}};
}

Result<SignatureReport> verifyJws(JsonView entry, std::string_view payload, const std::string& after,
                                  const std::string& where) {
    if (!hasForm(entry))
        return fail(ErrorCode::invalid,
                    say("A signature has exactly “protected” and “signature”, both texts."), where);
    const std::string_view header = entry["protected"].text();
    auto report = headerOf(header, after, where + "/protected");
    if (!report) return report;
    const std::string at = where + "/signature";
    const auto signature = fromBase64Url(entry["signature"].text());
    if (!signature || signature->size() != 64)
        return refuse(say("The signature is not 64 bytes in strict base64url."), at);
    if (report->lowS && !isLowS(*signature))
        return refuse(say("The signature declares low S but has high S."), at);
    if (!verifyEs256(report->certificate.point, asText(signedDigest(header, payload)), *signature)) {
        return refuse(say("The signature of %1 doesn't hold: something was changed after signing.",
                          report->certificate.name),
                      at);
    }
    return report;
}

} // namespace ambit::record
