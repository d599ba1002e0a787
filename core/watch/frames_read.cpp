// Frames from the bytes of others. What is accepted here is written back exactly the same.
#include "base/encoding.hpp"
#include "base/fields.hpp"
#include "watch/frames.hpp"
#include "watch/letters.hpp"

#include <array>

namespace ambit::watch {

namespace {

constexpr int deepest = 8; ///< an event lies at most four deep, a frame around it

constexpr std::array codes{ErrorCode::syntax,     ErrorCode::invalid,  ErrorCode::refused,
                           ErrorCode::notFound,   ErrorCode::conflict, ErrorCode::signature,
                           ErrorCode::passphrase, ErrorCode::storage,  ErrorCode::unsupported};

/// A text whose bound isn't that of records.
std::string textUpTo(Fields& fields, const char* name, std::size_t most) {
    const JsonView its = fields.any(name);
    if (!its.isText() || !its.isPlain() || its.text().empty() || its.text().size() > most) {
        fields.fail(
            ambit::say("A plain text of 1 to %1 bytes is expected here.", figure(std::to_string(most))),
            name);
        return {};
    }
    return std::string(its.text());
}

std::string hexOf(Fields& fields, const char* name, std::size_t digits) {
    std::string text = textUpTo(fields, name, digits);
    if (text.size() != digits || text.find_first_not_of("0123456789abcdef") != std::string::npos)
        fields.fail(ambit::say("%1 lower-case hex digits are expected here.", figure(std::to_string(digits))),
                    name);
    return text;
}

std::string roundOf(Fields& fields) {
    return hexOf(fields, "round", 32);
}

void checkVersion(Fields& fields) {
    (void)fields.integer("version", version, version);
}

Hello helloFrom(Fields& fields) {
    checkVersion(fields);
    Hello hello{textUpTo(fields, "name", longestName), {}};
    if (!fields.has("word")) return hello;
    hello.word = textUpTo(fields, "word", wordLetters);
    if (hello.word.size() != wordLetters || !areLetters(hello.word))
        fields.fail(
            ambit::say("A one-time word is %1 letters and digits.", figure(std::to_string(wordLetters))),
            "word");
    return hello;
}

Welcome welcomeFrom(Fields& fields) {
    checkVersion(fields);
    return {textUpTo(fields, "name", longestName)};
}

Have haveFrom(Fields& fields) {
    Have have{roundOf(fields),
              fields.integer("upTo", 0, mostEvents),
              static_cast<int>(fields.integer("room", 1, mostRoom)),
              {}};
    if (!fields.has("last")) return have;
    have.last = fields.hash("last");
    if (have.upTo == 0) fields.fail(ambit::say("Where nothing is had there is no last event."), "last");
    return have;
}

Logged loggedFrom(Fields& fields, std::optional<Error>& error) {
    Logged logged{roundOf(fields), {}, {}};
    const JsonView event = fields.any("event");
    logged.json = event.source();
    if (error) return logged;
    auto read = round::eventFrom(event);
    if (read)
        logged.event = std::move(*read);
    else
        error = Error{read.error().code,
                      ambit::say("This Ambit can't read the walker's next event. %1", read.error().what),
                      "/event" + read.error().where,
                      ambit::say("The walker's device may be newer: bring both up to date.")};
    return logged;
}

Watching watchingFrom(Fields& fields) {
    Watching watching;
    const JsonView list = fields.any("names");
    if (!list.isList() || list.size() > mostWatching) {
        fields.fail(
            ambit::say("A list of at most %1 names is expected here.", figure(std::to_string(mostWatching))),
            "names");
        return watching;
    }
    for (const JsonView name : list.elements()) {
        if (!name.isPlain() || name.text().empty() || name.text().size() > longestName)
            fields.fail(
                ambit::say("A name is a plain text of 1 to %1 bytes.", figure(std::to_string(longestName))),
                "names");
        watching.names.emplace_back(name.text());
    }
    return watching;
}

Say sayFrom(Fields& fields) {
    Say say{hexOf(fields, "id", 32), textUpTo(fields, "statement", longestStatement),
            textUpTo(fields, "jws", longestJws)};
    JsonTape tape;
    if (!tape.read(say.statement, {longestStatement, deepest}).isObject())
        fields.fail(ambit::say("A statement is an object in canonical JSON."), "statement");
    return say;
}

Heard heardFrom(Fields& fields) {
    Heard heard{hexOf(fields, "id", 32), {}};
    if (fields.has("why")) heard.why = textUpTo(fields, "why", longestWhy);
    return heard;
}

std::vector<File> filesFrom(Fields& fields) {
    std::vector<File> files;
    for (Fields its : fields.list("files", 2)) {
        const bool isJson = its.word("kind", {"json", "pdf"}) == 0;
        if (isJson != files.empty())
            its.fail(ambit::say("record.json comes first, record.pdf second."), "kind");
        files.push_back({isJson ? FileKind::json : FileKind::pdf, its.hash("sha256"),
                         its.integer("size", 1, isJson ? largestRecord : largestPdf)});
        its.end();
    }
    if (files.empty()) fields.fail(ambit::say("A record has a file at least."), "files");
    return files;
}

Sealed sealedFrom(Fields& fields) {
    return {roundOf(fields), fields.hash("recordSha256"), filesFrom(fields)};
}

Offer offerFrom(Fields& fields) {
    return {hexOf(fields, "id", 32), fields.hash("recordSha256"), filesFrom(fields)};
}

Want wantFrom(Fields& fields) {
    return {fields.hash("sha256"), fields.integer("from", 0, largestPdf)};
}

Piece pieceFrom(Fields& fields) {
    Piece piece{fields.hash("sha256"),
                fields.integer("from", 0, largestPdf),
                fields.integer("size", 1, largestPdf),
                {}};
    const std::string text = textUpTo(fields, "bytes", (largestPiece * 8 + 5) / 6);
    if (auto bytes = fromBase64Url(text))
        piece.bytes = std::move(*bytes);
    else
        fields.fail(ambit::say("Base64url without padding is expected here."), "bytes");
    if (piece.from + static_cast<std::int64_t>(piece.bytes.size()) > piece.size)
        fields.fail(ambit::say("This piece reaches beyond its file's end."), "bytes");
    return piece;
}

Bye byeFrom(Fields& fields) {
    Bye bye{textUpTo(fields, "why", longestWhy), std::nullopt};
    if (!fields.has("code")) return bye;
    const std::string_view word = fields.view("code");
    for (const ErrorCode code : codes)
        if (word == toText(code)) bye.code = code;
    if (!bye.code) fields.fail(ambit::say("This code is not known."), "code");
    return bye;
}

struct Kind {
    std::string_view word;
    std::optional<Side> only; ///< who may send it; nothing: either
};
constexpr std::array kinds{Kind{"hello", Side::watcher},
                           Kind{"welcome", Side::walker},
                           Kind{"round", Side::walker},
                           Kind{"have", Side::watcher},
                           Kind{"event", Side::walker},
                           Kind{"watching", Side::walker},
                           Kind{"say", Side::watcher},
                           Kind{"heard", Side::walker},
                           Kind{"sealed", Side::walker},
                           Kind{"offer", Side::watcher},
                           Kind{"want", {}},
                           Kind{"piece", {}},
                           Kind{"gone", {}},
                           Kind{"bye", {}}};

Result<Kind> knownKind(std::string_view word, Side from) {
    for (const Kind& kind : kinds) {
        if (kind.word != word) continue;
        if (kind.only && *kind.only != from)
            return fail(ErrorCode::refused,
                        ambit::say("Only the %1 may send %2.",
                                   from == Side::walker ? ambit::say("watcher") : ambit::say("walker"),
                                   '"' + std::string(word) + '"'),
                        "/kind");
        return kind;
    }
    return fail(ErrorCode::unsupported,
                ambit::say("This kind of frame is not known: %1", std::string(word.substr(0, 40))), "/kind");
}

Frame bodyOf(std::string_view kind, Fields& fields, std::optional<Error>& error) {
    if (kind == "hello") return helloFrom(fields);
    if (kind == "welcome") return welcomeFrom(fields);
    if (kind == "round") return Round{roundOf(fields), fields.integer("events", 1, mostEvents)};
    if (kind == "have") return haveFrom(fields);
    if (kind == "event") return loggedFrom(fields, error);
    if (kind == "watching") return watchingFrom(fields);
    if (kind == "say") return sayFrom(fields);
    if (kind == "heard") return heardFrom(fields);
    if (kind == "sealed") return sealedFrom(fields);
    if (kind == "offer") return offerFrom(fields);
    if (kind == "want") return wantFrom(fields);
    if (kind == "piece") return pieceFrom(fields);
    if (kind == "gone") return Gone{fields.hash("sha256")};
    return byeFrom(fields);
}

/// Another version's greeting may have other fields: its number is looked at before them.
std::optional<Error> otherVersion(JsonView json, std::string_view kind) {
    if (kind != "hello" && kind != "welcome") return std::nullopt;
    const auto theirs = json["version"].integer();
    if (!theirs || *theirs == version) return std::nullopt;
    return Error{ErrorCode::unsupported,
                 ambit::say("The other device speaks version %1 of the watch protocol, this one version %2.",
                            figure(std::to_string(*theirs)), figure(std::to_string(version))),
                 "/version", ambit::say("Bring both devices to the same Ambit.")};
}

} // namespace

Result<Frame> frameFrom(std::string_view text, Side from) {
    JsonTape tape;
    return frameFrom(text, from, tape);
}

Result<Frame> frameFrom(std::string_view text, Side from, JsonTape& tape) {
    if (text.size() > largestFrame)
        return fail(ErrorCode::syntax,
                    ambit::say("A frame is at most %1 bytes; this one has %2.",
                               figure(std::to_string(largestFrame)), figure(std::to_string(text.size()))));
    const JsonView json = tape.read(text, {largestFrame, deepest});
    if (!json) return fail(ErrorCode::syntax, ambit::say("A frame is canonical JSON, whole; this is not."));
    std::optional<Error> error;
    Fields fields(json, Where(""), error);
    const std::string_view word = fields.view("kind");
    if (error) return tl::unexpected(*error);
    const auto kind = knownKind(word, from);
    if (!kind) return tl::unexpected(kind.error());
    if (const auto other = otherVersion(json, kind->word)) return tl::unexpected(*other);
    Frame frame = bodyOf(kind->word, fields, error);
    fields.end();
    if (error) return tl::unexpected(*error);
    return frame;
}

} // namespace ambit::watch
