// The one result type of the house: a value, or an error that tells a person what happened, where, and what
// to do.
#pragma once

#include "base/sentence.hpp"

#include <string>
#include <tl/expected.hpp>
#include <utility>
#include <vector>

namespace ambit {

/// Kinds of failure a caller may tell apart. Texts are for people, codes for programs.
enum class ErrorCode {
    syntax,      ///< not what the format's grammar allows (not UTF-8, not JSON, too deep, too large)
    invalid,     ///< well-formed, but against the format's or the trade's rules
    refused,     ///< the round's rules forbid it now
    notFound,    ///< names something that isn't there
    conflict,    ///< contradicts what is already stored
    signature,   ///< a signature, certificate or hash does not hold
    passphrase,  ///< a private key could not be unlocked
    storage,     ///< disk or database
    unsupported, ///< a version or kind this Ambit does not know
};

/// What went wrong. `what` is a full sentence; `where` a file, JSON pointer, byte range or id; `remedy` what
/// to do ("" if there is nothing to add).
struct Error {
    ErrorCode code{};
    Sentence what;
    std::string where;
    Sentence remedy;
};

template<class T> using Result = tl::expected<T, Error>;

/// For readers that report everything wrong at once.
template<class T> using Results = tl::expected<T, std::vector<Error>>;

[[nodiscard]] inline tl::unexpected<Error> fail(ErrorCode code, Sentence what, std::string where = {},
                                                Sentence remedy = {}) {
    return tl::unexpected<Error>(Error{code, std::move(what), std::move(where), std::move(remedy)});
}

/// "what (where). remedy" on one line, for a terminal.
[[nodiscard]] std::string toText(const Error& error);

/// The stored word of a code ("syntax", "not found", …), for --json output.
[[nodiscard]] const char* toText(ErrorCode code);

} // namespace ambit
