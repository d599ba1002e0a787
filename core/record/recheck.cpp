#include "record/recheck.hpp"

#include "base/canonical.hpp"
#include "base/encoding.hpp"
#include "base/hash.hpp"
#include "record/es256.hpp"
#include "record/jws.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <unordered_map>

namespace ambit::record {

namespace {

constexpr std::size_t mostKeys = 4096;

tl::unexpected<Error> refuse(Sentence what) {
    return fail(ErrorCode::signature, std::move(what), "", say("Go on with a backup."));
}

/// The text after `name` up to `close`; empty if it isn't there.
std::string_view after(std::string_view content, std::string_view name, char close) {
    const std::size_t at = content.find(name);
    if (at == std::string_view::npos) return {};
    const std::size_t begin = at + name.size();
    const std::size_t end = content.find(close, begin);
    return end == std::string_view::npos ? std::string_view() : content.substr(begin, end - begin);
}

/// The text that begins after `name`, up to the quote that ends it: one inside it is escaped.
std::string_view textAfter(std::string_view content, std::string_view name) {
    const std::size_t at = content.find(name);
    if (at == std::string_view::npos) return {};
    const std::size_t begin = at + name.size();
    for (std::size_t i = begin; i < content.size(); ++i) {
        if (content[i] == '\\')
            ++i;
        else if (content[i] == '"')
            return content.substr(begin, i - begin);
    }
    return {};
}

/// As rfind, which calls a comparison at every byte.
std::size_t lastAt(std::string_view content, std::string_view name, std::size_t before) {
    for (std::size_t i = std::min(before, content.size()); i-- > 0;)
        if (content[i] == name[0] && content.substr(i).starts_with(name)) return i;
    return std::string_view::npos;
}

Top topOf(std::string_view content) {
    Top top;
    // In canonical form a quote inside a text is escaped, so these can only be names.
    top.registration = textAfter(content, R"("registration":")");
    top.at = after(content, R"(},"at":")", '"');
    if (const auto concluded = after(content, R"(,"concludedAt":")", '"'); !concluded.empty())
        top.at = concluded;
    constexpr std::string_view name = R"(,"previous":[)";
    std::size_t at = lastAt(content, name, content.size());
    const auto list = [&] { return after(content.substr(at), name, ']'); };
    // A removal's records name theirs too, and come after its own.
    if (at != std::string_view::npos &&
        content.substr(at + name.size() + list().size()).starts_with(R"(],"record":)"))
        at = content.rfind(name, content.rfind(R"(,"records":[)"));
    if (at != std::string_view::npos) top.previous = list();
    return top;
}

/// The object that stands after `name`, from its brace to its last; empty if it isn't there.
std::string_view lastObject(std::string_view content, std::string_view name) {
    const std::size_t at = lastAt(content, name, content.size());
    if (at == std::string_view::npos) return {};
    const std::size_t begin = at + name.size();
    bool inText = false;
    for (std::size_t i = begin; i < content.size(); ++i) {
        if (inText && content[i] == '\\')
            ++i;
        else if (content[i] == '"')
            inText = !inText;
        else if (!inText && content[i] == '}')
            return content.substr(begin, i + 1 - begin);
    }
    return {};
}

/// `name` as canonical JSON writes it, quotes and all.
bool isSigner(std::string_view content, std::string_view name) {
    const std::string_view signer = lastObject(content, R"(,"signer":)");
    constexpr std::string_view field = R"(,"name":)"; // after "certificate", before "role"
    const std::size_t at = signer.find(field);
    return at != std::string_view::npos && signer.substr(at + field.size()).starts_with(name) &&
           signer.substr(at + field.size() + name.size()).starts_with(R"(,"role":)");
}

/// A row of countersignatures: each after the one before it, each by another key.
Result<void> checkAll(std::string_view content, std::span<const SignatureText> signatures) {
    std::vector<std::string> points;
    std::string after;
    for (const SignatureText& one : signatures) {
        JsonTape tape;
        const auto entry = tape.write({{"protected", one.header}, {"signature", toBase64Url(one.value)}});
        if (!entry) return tl::unexpected(entry.error());
        const auto report = verifyJws(*entry, content, after, "/signatures");
        if (!report) return tl::unexpected(report.error());
        const std::string& point = report->certificate.point;
        if (std::find(points.begin(), points.end(), point) != points.end())
            return refuse(say("%1 signed twice with the same key.", report->certificate.name));
        points.push_back(point);
        after = hashOf(*entry);
    }
    return {};
}

struct Known {
    Es256Key key;
    std::string name;
    std::string written; ///< the name in canonical JSON
    bool lowS = false;

    [[nodiscard]] bool signedIt(const SignatureText& signature, std::string_view content) const {
        const Digest said = signedDigest(signature.header, content);
        return key.verifies({reinterpret_cast<const char*>(said.data()), said.size()}, signature.value);
    }
};

} // namespace

struct Recheck::Keys {
    std::unordered_map<std::string, Known> of;
};

Recheck::Recheck() : keys(std::make_unique<Keys>()) {}
Recheck::~Recheck() = default;

Result<Top> Recheck::operator()(std::string_view identity, std::string_view content,
                                std::span<const SignatureText> signatures) {
    const Digest digest = sha256(content);
    if (identity != std::string_view(reinterpret_cast<const char*>(digest.data()), digest.size()))
        return refuse(say("This is not what was stored: its hash is another."));
    if (signatures.empty() || signatures.size() > mostSignatures)
        return refuse(say("It bears no signature, or too many."));
    const bool several = signatures.size() > 1;
    if (several)
        if (auto good = checkAll(content, signatures); !good) return tl::unexpected(good.error());
    const SignatureText& signature = signatures.front();
    auto known = keys->of.find(signature.header);
    if (known == keys->of.end()) {
        const auto first = firstHeader(signature.header);
        if (!first) return tl::unexpected(first.error());
        if (keys->of.size() >= mostKeys) keys->of.clear();
        known =
            keys->of
                .emplace(signature.header, Known{Es256Key(first->certificate.point), first->certificate.name,
                                                 canonicalJson(first->certificate.name), first->lowS})
                .first;
    }
    const Known& by = known->second;
    if (by.lowS && !isLowS(signature.value))
        return refuse(say("The signature declares low S but has high S."));
    if (!several && !by.signedIt(signature, content))
        return refuse(say("The signature of %1 doesn't hold: something was changed after signing.", by.name));
    if (!isSigner(content, by.written))
        return refuse(say("The record was signed by %1, not by its signer.", by.name));
    return topOf(content);
}

} // namespace ambit::record
