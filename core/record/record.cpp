#include "record/record.hpp"

#include "base/canonical.hpp"
#include "base/hash.hpp"
#include "record/jws.hpp"

#include <algorithm>

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
    if (count > 1)
        return fail(ErrorCode::unsupported,
                    "The record bears countersignatures, which this Ambit can't check.", "/signatures/1",
                    "Use a newer Ambit.");
    return {};
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
    auto entry = signJws(canonicalJson(content), signer);
    if (!entry) return tl::unexpected(entry.error());
    return canonicalJson(Json{{"content", content}, {"signatures", Json::array({std::move(*entry)})}});
}

Result<RecordReport> verifyRecord(std::string_view bytes) {
    auto record = readCanonical(bytes);
    if (!record) return tl::unexpected(record.error());
    if (auto framed = checkFrame(*record); !framed) return tl::unexpected(framed.error());
    const std::string payload = canonicalJson((*record)["content"]);
    RecordReport report;
    for (std::size_t i = 0; i < (*record)["signatures"].size(); ++i) {
        auto signature = verifyJws((*record)["signatures"][i], payload, "/signatures/" + std::to_string(i));
        if (!signature) return tl::unexpected(signature.error());
        report.signatures.push_back(std::move(*signature));
    }
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
    report.sha256 = sha256Hex(payload);
    return report;
}

} // namespace ambit::record
