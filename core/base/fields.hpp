// Reads one JSON object field by field and refuses what isn't wanted. The first thing wrong is kept; reading
// goes on with empty values.
#pragma once

#include "base/pointer.hpp"
#include "base/result.hpp"
#include "base/tape.hpp"

#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

namespace ambit {

class FieldList;

class Fields {
public:
    /// `json` lies on a tape that must outlive this; `where` is its place, and what that stands on must too.
    Fields(JsonView json, const Where& where, std::optional<Error>& error);
    // What is inside points to it.
    Fields(const Fields&) = delete;
    Fields& operator=(const Fields&) = delete;

    [[nodiscard]] bool has(std::string_view name) const;
    std::string text(const char* name) { return std::string(view(name, false)); } ///< plain, 1 to 8192 bytes
    std::string textOrEmpty(const char* name) { return std::string(view(name, true)); } ///< may be empty
    std::string textIfThere(const char* name); ///< the same as `text` if there; "" if not
    std::string decimal(const char* name);     ///< a decimal string
    std::string hash(const char* name);        ///< 64 lower-case hex digits
    std::int64_t integer(const char* name, std::int64_t least, std::int64_t most);
    /// One of the words; gives its number.
    std::size_t word(const char* name, std::initializer_list<std::string_view> words);
    Fields inner(const char* name);
    /// The elements of an array of objects, at most `most`.
    FieldList list(const char* name, std::size_t most);
    /// Any value, for the caller to look into; not there if it isn't.
    [[nodiscard]] JsonView any(const char* name);
    /// Every field must have been read by now.
    void end();
    void fail(const Sentence& what, std::string_view name);

    /// As `text`, in the tape.
    std::string_view view(const char* name, bool mayBeEmpty = false);

private:
    JsonView find(std::string_view name);

    JsonView object; ///< not there: not an object
    Where where;
    std::optional<Error>* error;
    std::uint64_t read = 0; ///< by its place among the members: it was asked for
};

/// What Fields::list gives: each element is made when it is come to.
class FieldList {
public:
    FieldList(JsonView its, const Where& where, std::optional<Error>& first)
        : list(its), place(where), error(&first) {}
    FieldList(const FieldList&) = delete;
    FieldList& operator=(const FieldList&) = delete;

    class Iterator {
    public:
        Iterator(const FieldList& its, JsonView::Iterator<JsonView> first) : list(&its), at(first) {}
        [[nodiscard]] Fields operator*() const { return {*at, Where(list->place, index), *list->error}; }
        Iterator& operator++() {
            ++at;
            ++index;
            return *this;
        }
        friend bool operator!=(const Iterator& a, const Iterator& b) { return !(a.at == b.at); }

    private:
        const FieldList* list;
        JsonView::Iterator<JsonView> at;
        std::size_t index = 0;
    };
    [[nodiscard]] Iterator begin() const { return {*this, list.elements().begin()}; }
    [[nodiscard]] Iterator end() const { return {*this, list.elements().end()}; }
    [[nodiscard]] std::size_t size() const { return list.size(); }

private:
    JsonView list;
    Where place;
    std::optional<Error>* error;
};

} // namespace ambit
