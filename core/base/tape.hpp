// Canonical JSON read where it lies: one pass over the bytes checks all that canonical form (RFC 8785) asks
// for and notes on a tape where each value begins and ends. No tree is made and nothing is written anew.
#pragma once

#include "base/parse.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ambit {

class JsonTape;

/// One value on a tape; valid as long as tape and text stay as they are. A default one is “not there”, as is
/// a member that an object doesn't have: it is of no kind and has no members.
class JsonView {
public:
    enum class Kind : std::uint8_t { none, null, flag, number, text, list, object };

    JsonView() = default;

    explicit operator bool() const { return tape != nullptr; }
    [[nodiscard]] inline Kind kind() const;
    [[nodiscard]] bool isObject() const { return kind() == Kind::object; }
    [[nodiscard]] bool isList() const { return kind() == Kind::list; }
    [[nodiscard]] bool isText() const { return kind() == Kind::text; }
    [[nodiscard]] bool isFlag() const { return kind() == Kind::flag; }
    /// Of a list its elements, of an object its members; else 0.
    [[nodiscard]] inline std::size_t size() const;

    /// Of a text what it says; of anything else empty.
    [[nodiscard]] inline std::string_view text() const;
    /// Of a text: isPlainText.
    [[nodiscard]] inline bool isPlain() const;
    /// Of a number, if it is an integer of 64 bits.
    [[nodiscard]] std::optional<std::int64_t> integer() const;
    /// Of true; anything else is false.
    [[nodiscard]] inline bool flag() const;
    /// Its bytes as they stand: its canonical form.
    [[nodiscard]] inline std::string_view source() const;

    /// An object's member; not there: none of that name, or no object.
    [[nodiscard]] inline JsonView operator[](std::string_view name) const;
    /// A list's element, counted from 0: looked for from the first.
    [[nodiscard]] inline JsonView at(std::size_t element) const;

    struct Member;
    template<class Item> class Iterator;
    template<class Item> struct Range;
    /// A list's elements in order; empty for anything else.
    [[nodiscard]] inline Range<JsonView> elements() const;
    /// An object's members in order; empty for anything else.
    [[nodiscard]] inline Range<Member> members() const;

private:
    friend class JsonTape;
    JsonView(const JsonTape& its, std::uint32_t at) : tape(&its), index(at) {}

    const JsonTape* tape = nullptr;
    std::uint32_t index = 0;
};

struct JsonView::Member {
    std::string_view name;
    JsonView value;
};

class JsonTape {
public:
    JsonTape() = default;
    JsonTape(const JsonTape&) = delete;
    JsonTape& operator=(const JsonTape&) = delete;

    /// Reads one text, which must outlive what is asked of it; what was read before is forgotten, its room is
    /// used again. Not there: the text isn't JSON within the limits (parseJson refuses it), or isn't exactly
    /// its canonical form.
    [[nodiscard]] JsonView read(std::string_view text, const ParseLimits& limits = {});

    /// Reads a value's canonical form, and keeps it. Error invalid: a number in it isn't written as an
    /// integer (records have no others), at its pointer; syntax: nested too deep.
    [[nodiscard]] Result<JsonView> write(const Json& value);

private:
    friend class JsonView;
    friend class TapeWriter;
    template<class Item> friend class JsonView::Iterator;

    struct Node {
        std::uint32_t begin = 0; ///< in the text; of a text after its quote
        std::uint32_t end = 0;
        std::uint32_t next = 0;  ///< of lists and objects: the node after all that is in them;
                                 ///< of texts with escapes: what they say ends there in `unescaped`
        std::uint32_t count = 0; ///< of lists and objects; of texts with escapes: where that begins
        JsonView::Kind kind{};
        bool plain = true;
        bool escaped = false;
    };

    [[nodiscard]] std::uint32_t after(std::uint32_t index) const {
        const Node& node = nodes[index];
        return node.kind >= JsonView::Kind::list ? node.next : index + 1;
    }
    [[nodiscard]] std::string_view textAt(std::uint32_t index) const {
        const Node& node = nodes[index];
        return node.escaped ? std::string_view(unescaped).substr(node.count, node.next - node.count)
                            : bytes.substr(node.begin, node.end - node.begin);
    }

    std::string_view bytes;
    std::vector<Node> nodes; ///< in the text's order; before each member of an object its name
    std::string unescaped;   ///< texts that have escapes, without them
    std::string written;     ///< by `write`
};

template<class Item> class JsonView::Iterator {
public:
    Iterator(const JsonTape* its, std::uint32_t at) : tape(its), index(at) {}
    [[nodiscard]] Item operator*() const {
        if constexpr (std::is_same_v<Item, Member>)
            return {tape->textAt(index), JsonView(*tape, index + 1)};
        else
            return JsonView(*tape, index);
    }
    Iterator& operator++() {
        index = tape->after(std::is_same_v<Item, Member> ? index + 1 : index);
        return *this;
    }
    friend bool operator==(const Iterator& a, const Iterator& b) { return a.index == b.index; }

private:
    const JsonTape* tape;
    std::uint32_t index;
};

template<class Item> struct JsonView::Range {
    Iterator<Item> from, to;
    [[nodiscard]] Iterator<Item> begin() const { return from; }
    [[nodiscard]] Iterator<Item> end() const { return to; }
};

inline JsonView::Kind JsonView::kind() const {
    return tape == nullptr ? Kind::none : tape->nodes[index].kind;
}
inline std::size_t JsonView::size() const {
    return kind() >= Kind::list ? tape->nodes[index].count : 0;
}
inline std::string_view JsonView::text() const {
    return isText() ? tape->textAt(index) : std::string_view();
}
inline bool JsonView::isPlain() const {
    return isText() && tape->nodes[index].plain;
}
inline bool JsonView::flag() const {
    return isFlag() && tape->bytes[tape->nodes[index].begin] == 't';
}
inline std::string_view JsonView::source() const {
    if (tape == nullptr) return {};
    const JsonTape::Node& node = tape->nodes[index];
    const std::uint32_t quote = node.kind == Kind::text ? 1 : 0;
    return tape->bytes.substr(node.begin - quote, node.end - node.begin + 2 * quote);
}
inline JsonView::Range<JsonView> JsonView::elements() const {
    if (!isList()) return {{nullptr, 0}, {nullptr, 0}};
    return {{tape, index + 1}, {tape, tape->nodes[index].next}};
}
inline JsonView::Range<JsonView::Member> JsonView::members() const {
    if (!isObject()) return {{nullptr, 0}, {nullptr, 0}};
    return {{tape, index + 1}, {tape, tape->nodes[index].next}};
}
inline JsonView JsonView::operator[](std::string_view name) const {
    for (const Member member : members())
        if (member.name == name) return member.value;
    return {};
}
inline JsonView JsonView::at(std::size_t element) const {
    for (const JsonView one : elements())
        if (element-- == 0) return one;
    return {};
}

} // namespace ambit
