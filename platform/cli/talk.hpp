// How the commands talk: errors and passphrases.
#pragma once

#include "archive/archive.hpp"
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

/// The device's time, in UTC.
[[nodiscard]] LocalInstant now();
/// "2026-06-20", in UTC
[[nodiscard]] std::string dayOf(Instant at);

/// An archive that must be there already.
[[nodiscard]] Result<archive::Archive> openExisting(const std::string& path);

/// From the file (its first line) if given, else from AMBIT_PASSPHRASE, else asked on the terminal without
/// echo (twice if `twice`).
[[nodiscard]] Result<std::string> passphrase(const std::string& file, bool twice);

} // namespace ambit::cli
