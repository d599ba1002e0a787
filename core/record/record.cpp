#include "record/record.hpp"

#include "base/canonical.hpp"
#include "base/hash.hpp"
#include "base/pointer.hpp"
#include "record/jws.hpp"
#include "record/shape.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::record {

namespace {

/// Where two texts part, for a person to find it.
std::string firstDifference(std::string_view a, std::string_view b) {
    const auto shorter = std::min(a.size(), b.size());
    const auto parted = std::mismatch(a.begin(), a.begin() + static_cast<std::ptrdiff_t>(shorter), b.begin());
    return "byte " + std::to_string(parted.first - a.begin());
}

Result<Json> readCanonical(std::string_view bytes) {
    auto record = parseJson(bytes);
    if (!record) return record;
    const std::string canonical = canonicalJson(*record);
    if (canonical == bytes) return record;
    return fail(ErrorCode::signature,
                "The file is not in canonical form (RFC 8785): bytes were changed or it was reformatted.",
                firstDifference(bytes, canonical), "Use the file as it was signed.");
}

Result<void> checkFrame(const Json& record) {
    const bool framed = record.is_object() && record.size() == 2 && record.contains("content") &&
                        record["content"].is_object() && record.contains("signatures") &&
                        record["signatures"].is_array();
    if (!framed)
        return fail(ErrorCode::invalid, "A record has exactly “content” and “signatures”.", "/",
                    "This is not a record.");
    const std::size_t count = record["signatures"].size();
    if (count == 0) return fail(ErrorCode::signature, "The record bears no signature.", "/signatures");
    if (count > mostSignatures)
        return fail(ErrorCode::invalid, "A record bears at most eight signatures.", "/signatures/8");
    return {};
}

/// Who signs twice adds nothing; a certificate made anew for the same key doesn't make it another's.
bool isAmong(const std::vector<SignatureReport>& signatures, const Certificate& certificate) {
    return std::any_of(signatures.begin(), signatures.end(), [&](const SignatureReport& signature) {
        return signature.certificate.point == certificate.point;
    });
}

/// Each signature by itself, and after the one before it.
Result<std::vector<SignatureReport>> checkSignatures(const Json& entries, std::string_view payload) {
    std::vector<SignatureReport> signatures;
    std::string after;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        const std::string where = pointerTo("/signatures", i);
        auto signature = verifyJws(entries[i], payload, after, where);
        if (!signature) return tl::unexpected(signature.error());
        if (isAmong(signatures, signature->certificate))
            return fail(ErrorCode::signature,
                        signature->certificate.name + " signed twice with the same key.",
                        where + "/protected");
        signatures.push_back(std::move(*signature));
        after = hashOf(entries[i]);
    }
    return signatures;
}

/// Of a record in canonical form: what was signed. In a text its end could only stand with escaped quotes.
std::string_view contentIn(std::string_view record) {
    constexpr std::string_view begin = R"({"content":)";
    return record.substr(begin.size(), record.rfind(R"(,"signatures":[)") - begin.size());
}

} // namespace

std::string identityOf(const Json& content) {
    return sha256Hex(canonicalJson(content));
}

Result<std::string> signRecord(const Json& content, const Signer& signer) {
    if (auto good = checkContent(content); !good) return tl::unexpected(good.error());
    const Certificate& certificate = signer.certificate();
    if (content["signer"]["name"] != certificate.name) {
        return fail(ErrorCode::signature,
                    "The content's signer is " + content["signer"]["name"].get<std::string>() +
                        ", the key's is " + certificate.name + '.',
                    "/content/signer/name", "Sign with the key of the person who walked the round.");
    }
    auto entry = signJws(canonicalJson(content), signer, Json::object());
    if (!entry) return tl::unexpected(entry.error());
    return canonicalJson(Json{{"content", content}, {"signatures", Json::array({std::move(*entry)})}});
}

Result<std::string> countersignRecord(std::string_view recordJson, const Signer& signer,
                                      const round::Person& who, Instant at) {
    const auto report = verifyRecord(recordJson);
    if (!report) return tl::unexpected(report.error());
    const Certificate& certificate = signer.certificate();
    if (isAmong(report->signatures, certificate))
        return fail(ErrorCode::signature, certificate.name + " has signed this record with this key already.",
                    certificate.sha256, "A countersignature is another person's, by a key of their own.");
    if (report->signatures.size() == mostSignatures)
        return fail(ErrorCode::invalid, "The record bears eight signatures already, and can't bear more.",
                    report->sha256);
    if (who.name != certificate.name)
        return fail(ErrorCode::signature,
                    "The countersigner is " + who.name + ", the key's holder is " + certificate.name + '.',
                    certificate.sha256, "Sign with the countersigner's own key.");
    Json record = *parseJson(recordJson);
    const Json about = countersigning(hashOf(record["signatures"].back()), who, at);
    if (auto good = checkShape(about["signer"], person(), "/signer"); !good)
        return tl::unexpected(good.error());
    auto entry = signJws(canonicalJson(record["content"]), signer, about);
    if (!entry) return tl::unexpected(entry.error());
    record["signatures"].push_back(std::move(*entry));
    return canonicalJson(record);
}

Result<RecordReport> verifyRecord(std::string_view bytes) {
    auto record = readCanonical(bytes);
    if (!record) return tl::unexpected(record.error());
    if (auto framed = checkFrame(*record); !framed) return tl::unexpected(framed.error());
    const std::string_view payload = contentIn(bytes);
    auto signatures = checkSignatures((*record)["signatures"], payload);
    if (!signatures) return tl::unexpected(signatures.error());
    RecordReport report;
    report.signatures = std::move(*signatures);
    report.content = std::move((*record)["content"]);
    if (auto good = checkContent(report.content); !good) {
        Error error = good.error();
        error.where = "/content" + error.where;
        return tl::unexpected(error);
    }
    const std::string& name = report.signatures.front().certificate.name;
    if (report.content["signer"]["name"] != name)
        return fail(ErrorCode::signature, "The record was signed by " + name + ", not by its signer.",
                    "/signatures/0/protected");
    const Json& signer = report.content["signer"];
    report.signatures.front().who = {name, signer["role"].get<std::string>(),
                                     signer["certificate"].get<std::string>()};
    report.sha256 = sha256Hex(payload);
    return report;
}

} // namespace ambit::record
