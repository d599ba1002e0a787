#include "base/parse.hpp"

#include "base/pointer.hpp"
#include "base/utf8.hpp"

#include <cstring>
#include <nlohmann/json.hpp>
#include <optional>

namespace ambit {

namespace {

/// Eight bytes at a time: most of a record is ASCII.
std::size_t skipAscii(std::string_view text, std::size_t at) {
    std::uint64_t eight = 0;
    for (; at + sizeof eight <= text.size(); at += sizeof eight) {
        std::memcpy(&eight, text.data() + at, sizeof eight);
        if ((eight & 0x8080808080808080U) != 0) break;
    }
    while (at < text.size() && static_cast<unsigned char>(text[at]) < 0x80)
        ++at;
    return at;
}

/// Offset of the first byte that isn't UTF-8; nullopt: all is.
std::optional<std::size_t> firstBadByte(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        at = skipAscii(text, at);
        if (at == text.size()) break;
        const std::size_t length = utf8::first(text.substr(at)).length;
        if (length == 0) return at;
        at += length;
    }
    return std::nullopt;
}

/// Builds the value, and stops at the first thing another reader could take differently. Knows where it is at
/// any time.
class Builder : public nlohmann::json_sax<Json> {
public:
    explicit Builder(int depth) : most(depth) {}

    bool null() override { return add(nullptr); }
    bool boolean(bool value) override { return add(value); }
    bool number_integer(number_integer_t value) override { return add(value); }
    bool number_unsigned(number_unsigned_t value) override { return add(value); }
    bool number_float(number_float_t value, const string_t& /*text*/) override { return add(value); }
    bool string(string_t& value) override { return add(std::move(value)); }
    bool binary(binary_t& /*value*/) override { return false; } // not in JSON texts

    bool start_object(std::size_t /*size*/) override { return open(Json::object()); }
    bool start_array(std::size_t /*size*/) override { return open(Json::array()); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }

    bool key(string_t& name) override {
        if (parents.back()->contains(name)) {
            return stop(say("The name %1 stands twice in one object.", '"' + name + '"'),
                        pointerTo(pointer(), name), say("Keep one of the two."));
        }
        names.back() = std::move(name);
        return true;
    }

    bool parse_error(std::size_t position, const std::string& /*token*/,
                     const Json::exception& problem) override {
        if (problem.id == 406) { // the parser's number for "overflows a double"
            return stop(say("A number is too large for any reader."), here(), say("Write a smaller number."));
        }
        const std::string at = std::to_string(position == 0 ? 0 : position - 1);
        return stop(say("The text is not JSON: it breaks off or goes wrong at byte %1.", at), "byte " + at,
                    say("Mend the text there."));
    }

    Json root;
    std::optional<Error> error;

private:
    /// Where the container in hand is.
    [[nodiscard]] std::string pointer() const {
        std::string text;
        for (std::size_t i = 0; i + 1 < parents.size(); ++i)
            text = step(text, i);
        return text;
    }

    /// Where the next value will be.
    [[nodiscard]] std::string here() const {
        return parents.empty() ? std::string{} : step(pointer(), parents.size() - 1);
    }

    [[nodiscard]] std::string step(const std::string& text, std::size_t level) const {
        const Json& parent = *parents[level];
        if (parent.is_object()) return pointerTo(text, names[level]);
        // The element in hand is in the array already if something is open in it.
        const bool inside = level + 1 < parents.size();
        return pointerTo(text, parent.size() - (inside ? 1 : 0));
    }

    Json* put(Json value) {
        if (parents.empty()) {
            root = std::move(value);
            return &root;
        }
        Json& parent = *parents.back();
        if (parent.is_object()) return &(parent[names.back()] = std::move(value));
        parent.push_back(std::move(value));
        return &parent.back();
    }

    bool add(Json value) {
        put(std::move(value));
        return true;
    }

    bool open(Json container) {
        if (parents.size() >= static_cast<std::size_t>(most)) {
            return stop(say("Arrays and objects are nested more than %1 deep.", figure(std::to_string(most))),
                        here(), say("Nest less deep."));
        }
        // Stays valid: a container grows only once what is open inside it is closed.
        parents.push_back(put(std::move(container)));
        names.emplace_back();
        return true;
    }

    bool close() {
        parents.pop_back();
        names.pop_back();
        return true;
    }

    bool stop(Sentence what, std::string where, Sentence remedy) {
        error = Error{ErrorCode::syntax, std::move(what), std::move(where), std::move(remedy)};
        return false;
    }

    int most;
    std::vector<Json*> parents;
    std::vector<std::string> names; ///< beside each parent: the member in hand
};

std::optional<Error> badText(std::string_view text, const ParseLimits& limits) {
    if (text.size() > limits.bytes) {
        return Error{ErrorCode::syntax,
                     say("The text is larger than %1 bytes.", figure(std::to_string(limits.bytes))), "",
                     say("Make it smaller.")};
    }
    if (text.starts_with("\xEF\xBB\xBF")) {
        return Error{ErrorCode::syntax, say("The text begins with a byte-order mark."), "byte 0",
                     say("Save it without one.")};
    }
    if (const auto bad = firstBadByte(text)) {
        const std::string at = std::to_string(*bad);
        return Error{ErrorCode::syntax, say("The text is not UTF-8 at byte %1.", at), "byte " + at,
                     say("Save it as UTF-8.")};
    }
    // The parser would take a NUL for the end and never see what follows.
    if (const auto nul = text.find('\0'); nul != std::string_view::npos) {
        const std::string at = std::to_string(nul);
        return Error{ErrorCode::syntax, say("The text has a NUL at byte %1.", at), "byte " + at,
                     say("Remove it.")};
    }
    return std::nullopt;
}

} // namespace

Result<Json> parseJson(std::string_view text, const ParseLimits& limits) {
    if (auto error = badText(text, limits)) return tl::unexpected(std::move(*error));
    Builder builder(limits.depth);
    const bool whole = Json::sax_parse(text.begin(), text.end(), &builder);
    if (builder.error) return tl::unexpected(std::move(*builder.error));
    if (!whole) return fail(ErrorCode::syntax, say("The text is not JSON."));
    return std::move(builder.root);
}

bool isUtf8(std::string_view text) {
    return !firstBadByte(text);
}

bool isPlainText(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const auto byte = static_cast<unsigned char>(text[at]);
        if (byte >= 0x20 && byte < 0x7F) {
            ++at;
            continue;
        }
        const auto [point, length] = utf8::first(text.substr(at));
        if (length == 0 || !utf8::isPlain(point)) return false;
        at += length;
    }
    return true;
}

} // namespace ambit
