// How the commands talk: errors and passphrases.
#pragma once

#include "base/parse.hpp"
#include "base/result.hpp"

#include <string>

namespace ambit::cli {

/// Prints "ambit: what (where). remedy" on stderr and gives the exit code that belongs to the error.
int complain(const Error& error);
int complain(const std::vector<Error>& errors);

/// The exit code of an error, without a word.
[[nodiscard]] int exitCodeOf(const Error& error);

/// {"code", "what", "where", "remedy"}
[[nodiscard]] Json toJson(const Error& error);

/// From the file (its first line) if given, else from AMBIT_PASSPHRASE, else asked on the terminal without
/// echo (twice if `twice`).
[[nodiscard]] Result<std::string> passphrase(const std::string& file, bool twice);

} // namespace ambit::cli
