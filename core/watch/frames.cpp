#include "watch/frames.hpp"

#include "base/canonical.hpp"
#include "base/encoding.hpp"

#include <nlohmann/json.hpp>

namespace ambit::watch {

namespace {

template<class... Cases> struct Overloaded : Cases... { using Cases::operator()...; };
template<class... Cases> Overloaded(Cases...) -> Overloaded<Cases...>; // clang 14 needs it

/// Reasons quote what others sent.
std::string fitForPeople(const std::string& text) {
    std::string fit;
    for (std::size_t at = 0; at < text.size();) {
        std::size_t length = 1;
        while (at + length < text.size() && (static_cast<unsigned char>(text[at + length]) & 0xC0U) == 0x80)
            ++length;
        const std::string_view one = std::string_view(text).substr(at, length);
        if (fit.size() + length > longestWhy) break;
        if (isPlainText(one)) fit += one;
        at += length;
    }
    return fit.empty() ? say("No reason given.") : fit;
}

Json toJson(const std::vector<File>& files) {
    Json list = Json::array();
    for (const File& file : files)
        list.push_back({{"kind", file.kind == FileKind::json ? "json" : "pdf"},
                        {"sha256", file.sha256},
                        {"size", file.size}});
    return list;
}

void write(Json& json, const Hello& hello) {
    json["version"] = version;
    json["name"] = hello.name;
    if (!hello.word.empty()) json["word"] = hello.word;
}

void write(Json& json, const Welcome& welcome) {
    json["version"] = version;
    json["name"] = welcome.name;
}

void write(Json& json, const Round& round) {
    json["round"] = round.round;
    json["events"] = round.events;
}

void write(Json& json, const Have& have) {
    json["round"] = have.round;
    json["upTo"] = have.upTo;
    json["room"] = have.room;
    if (!have.last.empty()) json["last"] = have.last;
}

void write(Json& json, const Watching& watching) {
    json["names"] = watching.names;
}

void write(Json& json, const Say& say) {
    json["id"] = say.id;
    json["statement"] = say.statement;
    json["jws"] = say.jws;
}

void write(Json& json, const Heard& heard) {
    json["id"] = heard.id;
    if (!heard.why.empty()) json["why"] = fitForPeople(heard.why);
}

void write(Json& json, const Sealed& sealed) {
    json["round"] = sealed.round;
    json["recordSha256"] = sealed.recordSha256;
    json["files"] = toJson(sealed.files);
}

void write(Json& json, const Offer& offer) {
    json["id"] = offer.id;
    json["recordSha256"] = offer.recordSha256;
    json["files"] = toJson(offer.files);
}

void write(Json& json, const Want& want) {
    json["sha256"] = want.sha256;
    json["from"] = want.from;
}

void write(Json& json, const Piece& piece) {
    json["sha256"] = piece.sha256;
    json["from"] = piece.from;
    json["size"] = piece.size;
    json["bytes"] = toBase64Url(piece.bytes);
}

void write(Json& json, const Gone& gone) {
    json["sha256"] = gone.sha256;
}

void write(Json& json, const Bye& bye) {
    json["why"] = fitForPeople(bye.why);
    if (bye.code) json["code"] = toText(*bye.code);
}

} // namespace

const char* kindOf(const Frame& frame) {
    return std::visit(Overloaded{
                          [](const Hello&) { return "hello"; },
                          [](const Welcome&) { return "welcome"; },
                          [](const Round&) { return "round"; },
                          [](const Have&) { return "have"; },
                          [](const Logged&) { return "event"; },
                          [](const Watching&) { return "watching"; },
                          [](const Say&) { return "say"; },
                          [](const Heard&) { return "heard"; },
                          [](const Sealed&) { return "sealed"; },
                          [](const Offer&) { return "offer"; },
                          [](const Want&) { return "want"; },
                          [](const Piece&) { return "piece"; },
                          [](const Gone&) { return "gone"; },
                          [](const Bye&) { return "bye"; },
                      },
                      frame);
}

std::string toText(const Frame& frame) {
    return std::visit(Overloaded{
                          // The log's bytes as they are: not read, not written anew.
                          [](const Logged& logged) {
                              return R"({"event":)" + logged.json + R"(,"kind":"event","round":")" +
                                     logged.round + "\"}";
                          },
                          [&](const auto& its) {
                              Json json{{"kind", kindOf(frame)}};
                              write(json, its);
                              return canonicalJson(json);
                          },
                      },
                      frame);
}

Bye byeFor(const Error& error) {
    return {toText(error), error.code};
}

} // namespace ambit::watch
