#include "base/tape.hpp"

#include "base/canonical.hpp"
#include "base/pointer.hpp"
#include "base/utf8.hpp"

#include <bit>
#include <charconv>
#include <cstring>
#include <nlohmann/json.hpp>

namespace ambit {

using Kind = JsonView::Kind;

namespace {

constexpr std::size_t mostKept = std::size_t{1} << 20; ///< nodes whose room is kept for the next text

/// The first byte from `at` on that isn't simply part of an ASCII text: a quote, a backslash, a control
/// character, or anything from 0x7F. Eight bytes at a time where the lowest comes first.
const char* firstSpecial(const char* at, const char* end) {
    if constexpr (std::endian::native == std::endian::little) {
        constexpr std::uint64_t ones = 0x0101010101010101U;
        constexpr std::uint64_t highs = 0x8080808080808080U;
        for (; end - at >= 8; at += 8) {
            std::uint64_t eight = 0;
            std::memcpy(&eight, at, sizeof eight);
            // A borrow or a carry only falsifies bytes above one that is found rightly.
            const auto isZero = [](std::uint64_t x) { return (x - ones) & ~x; };
            const std::uint64_t found = (eight | (eight + ones) | ((eight - ones * 0x20) & ~eight) |
                                         isZero(eight ^ (ones * '"')) | isZero(eight ^ (ones * '\\'))) &
                                        highs;
            if (found != 0) return at + std::countr_zero(found) / 8;
        }
    }
    for (; at != end; ++at) {
        const auto byte = static_cast<unsigned char>(*at);
        if (byte < 0x20 || byte >= 0x7F || byte == '"' || byte == '\\') return at;
    }
    return end;
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

} // namespace

/// Reads from left to right; once something isn't as canonical form has it, nothing more is read.
class TapeWriter {
public:
    TapeWriter(JsonTape& its, const ParseLimits& limits)
        : tape(its), first(its.bytes.data()), at(first), end(first + its.bytes.size()), most(limits.depth) {}

    bool all() { return value(0) && at == end; }

private:
    [[nodiscard]] std::uint32_t here() const { return static_cast<std::uint32_t>(at - first); }
    bool take(char c) {
        if (at == end || *at != c) return false;
        ++at;
        return true;
    }

    bool value(int depth) {
        if (at == end) return false;
        switch (*at) {
        case '{':
            return depth < most && object(depth + 1);
        case '[':
            return depth < most && list(depth + 1);
        case '"':
            return text();
        case 't':
            return literal("true", Kind::flag);
        case 'f':
            return literal("false", Kind::flag);
        case 'n':
            return literal("null", Kind::null);
        default:
            return number();
        }
    }

    std::uint32_t open(Kind kind) {
        tape.nodes.push_back({here(), 0, 0, 0, kind});
        ++at;
        return static_cast<std::uint32_t>(tape.nodes.size() - 1);
    }
    bool close(std::uint32_t node, std::uint32_t count) {
        JsonTape::Node& its = tape.nodes[node];
        its.end = here();
        its.next = static_cast<std::uint32_t>(tape.nodes.size());
        its.count = count;
        return true;
    }

    bool list(int depth) {
        const std::uint32_t node = open(Kind::list);
        if (take(']')) return close(node, 0);
        for (std::uint32_t count = 1;; ++count) {
            if (!value(depth)) return false;
            if (take(']')) return close(node, count);
            if (!take(',')) return false;
        }
    }

    bool object(int depth) {
        const std::uint32_t node = open(Kind::object);
        if (take('}')) return close(node, 0);
        std::uint32_t last = 0; // name; 0 is the object itself or one around it: none yet
        for (std::uint32_t count = 1;; ++count) {
            const auto name = static_cast<std::uint32_t>(tape.nodes.size());
            if (at == end || *at != '"' || !text()) return false;
            // Each name after the one before it: so none stands twice.
            if (last != 0 && !lessInUtf16(tape.textAt(last), tape.textAt(name))) return false;
            last = name;
            if (!take(':') || !value(depth)) return false;
            if (take('}')) return close(node, count);
            if (!take(',')) return false;
        }
    }

    bool literal(std::string_view word, Kind kind) {
        if (!std::string_view(at, static_cast<std::size_t>(end - at)).starts_with(word)) return false;
        const std::uint32_t begin = here();
        at += word.size();
        tape.nodes.push_back({begin, here(), 0, 0, kind});
        return true;
    }

    bool number() {
        const char* begin = at;
        if (*at == '-') ++at;
        const char* digits = at;
        while (at != end && isDigit(*at))
            ++at;
        const auto count = at - digits;
        const bool isWhole = at == end || (*at != '.' && *at != 'e' && *at != 'E');
        constexpr std::ptrdiff_t exact = 15; // so many digits are an integer's only form
        const bool simple =
            isWhole && count > 0 && count <= exact && (*digits != '0' || (count == 1 && digits == begin));
        if (!simple && !isCanonicalNumber(begin)) return false;
        tape.nodes.push_back({static_cast<std::uint32_t>(begin - first), here(), 0, 0, Kind::number});
        return true;
    }

    /// Rare: one that has a fraction, an exponent or many digits.
    bool isCanonicalNumber(const char* begin) {
        while (at != end && (isDigit(*at) || std::strchr("+-.eE", *at) != nullptr) && *at != '\0')
            ++at;
        const std::string_view written(begin, static_cast<std::size_t>(at - begin));
        const auto read = parseJson(written);
        return read && read->is_number() && canonicalJson(*read) == written;
    }

    bool text() {
        ++at;
        const std::uint32_t begin = here();
        JsonTape::Node node{begin, 0, 0, 0, Kind::text};
        const char* copied = nullptr; // up to here it is in `unescaped`; nullptr: there are no escapes yet
        for (;;) {
            at = firstSpecial(at, end);
            if (at == end) return false;
            const auto byte = static_cast<unsigned char>(*at);
            if (byte == '"') break;
            if (byte == 0x7F) {
                node.plain = false;
                ++at;
            } else if (byte > 0x7F) {
                const auto [point, length] =
                    utf8::first(std::string_view(at, static_cast<std::size_t>(end - at)));
                if (length == 0) return false;
                node.plain = node.plain && utf8::isPlain(point);
                at += length;
            } else if (byte == '\\') {
                if (copied == nullptr) {
                    node.count = static_cast<std::uint32_t>(tape.unescaped.size());
                    copied = first + begin;
                }
                tape.unescaped.append(copied, at);
                if (!escape(node)) return false;
                copied = at;
            } else {
                return false;
            }
        }
        node.end = here();
        if (copied != nullptr) {
            tape.unescaped.append(copied, at);
            node.next = static_cast<std::uint32_t>(tape.unescaped.size());
            node.escaped = true;
        }
        ++at;
        tape.nodes.push_back(node);
        return true;
    }

    /// Each character has one form: a letter where there is one, else \u00 and two digits, lower case.
    bool escape(JsonTape::Node& node) {
        if (end - at < 2) return false;
        static constexpr std::string_view letters = "\"\\btnfr";
        static constexpr std::string_view plain = "\"\\\b\t\n\f\r";
        if (const std::size_t known = letters.find(at[1]); known != std::string_view::npos) {
            node.plain = node.plain && utf8::isPlain(static_cast<unsigned char>(plain[known]));
            tape.unescaped += plain[known];
            at += 2;
            return true;
        }
        constexpr std::string_view begin = "\\u00";
        if (end - at < 6 || std::string_view(at, begin.size()) != begin) return false;
        static constexpr std::string_view hex = "0123456789abcdef";
        const std::size_t high = hex.find(at[4]);
        const std::size_t low = hex.find(at[5]);
        if (high > 1 || low == std::string_view::npos) return false;
        const char control = static_cast<char>(high * 16 + low);
        if (plain.find(control) != std::string_view::npos) return false;
        node.plain = false;
        tape.unescaped += control;
        at += 6;
        return true;
    }

    JsonTape& tape;
    const char* first;
    const char* at;
    const char* end;
    int most;
};

JsonView JsonTape::read(std::string_view text, const ParseLimits& limits) {
    if (nodes.capacity() > mostKept) nodes = {};
    nodes.clear();
    unescaped.clear();
    bytes = text;
    if (text.size() > limits.bytes || text.size() > UINT32_MAX / 2) return {};
    if (!TapeWriter(*this, limits).all()) return {};
    return {*this, 0};
}

namespace {

/// The pointer of a number that isn't written as an integer.
std::optional<std::string> fractionIn(const Json& value, const Where& where) {
    if (value.is_number_float()) return where.text();
    if (value.is_object()) {
        for (const auto& [name, inner] : value.items())
            if (auto found = fractionIn(inner, Where(where, std::string_view(name)))) return found;
    } else if (value.is_array()) {
        for (std::size_t i = 0; i < value.size(); ++i)
            if (auto found = fractionIn(value[i], Where(where, i))) return found;
    }
    return std::nullopt;
}

} // namespace

Result<JsonView> JsonTape::write(const Json& value) {
    if (auto at = fractionIn(value, Where("")))
        return fail(ErrorCode::invalid, say("A number here can only be an integer."), *at);
    written = canonicalJson(value);
    const JsonView its = read(written);
    if (!its)
        return fail(ErrorCode::syntax,
                    say("This is too large, nested too deep, or holds what is not UTF-8."));
    return its;
}

std::optional<std::int64_t> JsonView::integer() const {
    if (kind() != Kind::number) return std::nullopt;
    const std::string_view written = source();
    std::int64_t value = 0;
    const auto [stop, error] = std::from_chars(written.data(), written.data() + written.size(), value);
    if (error != std::errc() || stop != written.data() + written.size()) return std::nullopt;
    return value;
}

} // namespace ambit
