#include "record/parts.hpp"

#include "base/encoding.hpp"
#include "base/parse.hpp"

namespace ambit::record {

namespace {

constexpr std::string_view begin = R"({"content":)";
constexpr std::string_view middle = R"(,"signatures":[)";
constexpr std::string_view header = R"({"protected":")";
constexpr std::string_view value = R"(","signature":")";
constexpr std::string_view close = R"("})";
constexpr std::string_view end = "]}";

tl::unexpected<Error> notCanonical() {
    return fail(ErrorCode::invalid, say("This is not a record in canonical form."), "",
                say("Use the file as it was signed."));
}

} // namespace

Result<Parts> partsOf(std::string_view json) {
    const std::size_t at = json.rfind(middle); // in a text it could only stand with its quotes escaped
    if (!json.starts_with(begin) || !json.ends_with(end) || at == std::string_view::npos || at < begin.size())
        return notCanonical();
    Parts parts;
    parts.content = json.substr(begin.size(), at - begin.size());
    std::string_view rest = json.substr(at + middle.size(), json.size() - at - middle.size() - end.size());
    while (!rest.empty()) {
        const std::size_t split = rest.find(value);
        const std::size_t last =
            split == std::string_view::npos ? split : rest.find(close, split + value.size());
        if (!rest.starts_with(header) || last == std::string_view::npos) return notCanonical();
        auto bytes = fromBase64Url(rest.substr(split + value.size(), last - split - value.size()));
        if (!bytes) return notCanonical();
        parts.signatures.push_back(
            {std::string(rest.substr(header.size(), split - header.size())), std::move(*bytes)});
        rest.remove_prefix(last + close.size());
        if (rest.starts_with(',')) rest.remove_prefix(1);
    }
    if (assembled(parts.content, parts.signatures) != json) return notCanonical();
    return parts;
}

std::string assembled(std::string_view content, const std::vector<SignatureText>& signatures) {
    std::string json(begin);
    json.append(content).append(middle);
    for (const SignatureText& one : signatures) {
        if (&one != &signatures.front()) json += ',';
        json.append(header).append(one.header).append(value).append(toBase64Url(one.value)).append(close);
    }
    return json.append(end);
}

} // namespace ambit::record
