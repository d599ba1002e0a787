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

/// Why the tape doesn't take it.
Error notCanonical(std::string_view bytes) {
    const auto record = parseJson(bytes);
    if (!record) return record.error();
    return {ErrorCode::signature,
            say("The file is not in canonical form (RFC 8785): bytes were changed or it was reformatted."),
            firstDifference(bytes, canonicalJson(*record)), say("Use the file as it was signed.")};
}

Result<void> checkFrame(JsonView record) {
    const bool framed = record.size() == 2 && record["content"].isObject() && record["signatures"].isList();
    if (!framed)
        return fail(ErrorCode::invalid, say("A record has exactly “content” and “signatures”."), "/",
                    say("This is not a record."));
    const std::size_t count = record["signatures"].size();
    if (count == 0) return fail(ErrorCode::signature, say("The record bears no signature."), "/signatures");
    if (count > mostSignatures)
        return fail(ErrorCode::invalid, say("A record bears at most eight signatures."), "/signatures/8");
    return {};
}

/// Who signs twice adds nothing; a certificate made anew for the same key doesn't make it another's.
bool isAmong(const std::vector<SignatureReport>& signatures, const Certificate& certificate) {
    return std::any_of(signatures.begin(), signatures.end(), [&](const SignatureReport& signature) {
        return signature.certificate.point == certificate.point;
    });
}

/// Each signature by itself, and after the one before it.
Result<std::vector<SignatureReport>> checkSignatures(JsonView entries, std::string_view payload) {
    std::vector<SignatureReport> signatures;
    std::string after;
    for (const JsonView entry : entries.elements()) {
        const std::string where = pointerTo("/signatures", signatures.size());
        auto signature = verifyJws(entry, payload, after, where);
        if (!signature) return tl::unexpected(signature.error());
        if (isAmong(signatures, signature->certificate))
            return fail(ErrorCode::signature,
                        say("%1 signed twice with the same key.", signature->certificate.name),
                        where + "/protected");
        signatures.push_back(std::move(*signature));
        if (signatures.size() < entries.size()) after = hashOf(entry);
    }
    return signatures;
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
                    say("The content's signer is %1, the key's is %2.",
                        content["signer"]["name"].get<std::string>(), certificate.name),
                    "/content/signer/name", say("Sign with the key of the person who walked the round."));
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
        return fail(
            ErrorCode::signature, say("%1 has signed this record with this key already.", certificate.name),
            certificate.sha256, say("A countersignature is another person's, by a key of their own."));
    if (report->signatures.size() == mostSignatures)
        return fail(ErrorCode::invalid,
                    say("The record bears eight signatures already, and can't bear more."), report->sha256);
    if (who.name != certificate.name)
        return fail(ErrorCode::signature,
                    say("The countersigner is %1, the key's holder is %2.", who.name, certificate.name),
                    certificate.sha256, say("Sign with the countersigner's own key."));
    Json record = *parseJson(recordJson);
    const std::string after = sha256Hex(canonicalJson(record["signatures"].back()));
    const Json about = countersigning(after, who, at);
    if (auto good = checkShape(about["signer"], person(), "/signer"); !good)
        return tl::unexpected(good.error());
    auto entry = signJws(canonicalJson(record["content"]), signer, about);
    if (!entry) return tl::unexpected(entry.error());
    record["signatures"].push_back(std::move(*entry));
    return canonicalJson(record);
}

Result<Judged> Judge::operator()(std::string_view bytes) {
    const JsonView record = tape.read(bytes);
    if (!record) return tl::unexpected(notCanonical(bytes));
    if (auto framed = checkFrame(record); !framed) return tl::unexpected(framed.error());
    Judged judged;
    judged.content = record["content"];
    judged.contentBytes = judged.content.source();
    auto signatures = checkSignatures(record["signatures"], judged.contentBytes);
    if (!signatures) return tl::unexpected(signatures.error());
    judged.signatures = std::move(*signatures);
    if (auto good = checkContent(judged.content); !good) {
        Error error = good.error();
        error.where = "/content" + error.where;
        return tl::unexpected(error);
    }
    SignatureReport& first = judged.signatures.front();
    const JsonView signer = judged.content["signer"];
    if (signer["name"].text() != first.certificate.name)
        return fail(ErrorCode::signature,
                    say("The record was signed by %1, not by its signer.", first.certificate.name),
                    "/signatures/0/protected");
    first.who = {first.certificate.name, std::string(signer["role"].text()),
                 std::string(signer["certificate"].text())};
    judged.sha256 = sha256Hex(judged.contentBytes);
    return judged;
}

Result<RecordReport> verifyRecord(std::string_view bytes) {
    Judge judge;
    auto judged = judge(bytes);
    if (!judged) return tl::unexpected(judged.error());
    auto content = parseJson(judged->contentBytes);
    if (!content) return tl::unexpected(content.error());
    return RecordReport{std::move(judged->sha256), std::move(*content), std::move(judged->signatures)};
}

} // namespace ambit::record
