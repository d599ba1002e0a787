// How the commands talk: errors and passphrases.
#pragma once

#include "archive/archive.hpp"
#include "base/parse.hpp"
#include "base/result.hpp"
#include "record/key.hpp"

#include <string>

namespace ambit::cli {

/// Prints "ambit: what (where). remedy" on stderr and gives the exit code that belongs to the error.
int complain(const Error& error);
int complain(const std::vector<Error>& errors);

/// The exit code of an error, without a word.
[[nodiscard]] int exitCodeOf(const Error& error);

/// The error of something in a file, which it then names.
[[nodiscard]] Error inFile(Error error, const std::string& file);

/// {"code", "what", "where", "remedy"}
[[nodiscard]] Json toJson(const Error& error);

/// The device's time, in UTC.
[[nodiscard]] LocalInstant now();
/// "2026-06-20", in UTC
[[nodiscard]] std::string dayOf(Instant at);

/// An archive that must be there already.
[[nodiscard]] Result<archive::Archive> openExisting(const std::string& path);
/// Error notFound unless the archive has the aircraft, a record or a round's log of it: a name mistyped is
/// not an aircraft of which there is nothing to say.
[[nodiscard]] Result<void> mustKnow(const archive::Archive& archive, const std::string& registration);

/// From the file (its first line) if given, else from AMBIT_PASSPHRASE, else asked on the terminal without
/// echo (twice if `twice`).
[[nodiscard]] Result<std::string> passphrase(const std::string& file, bool twice);
/// Whoever unlocks the key file, by that passphrase asked for once.
[[nodiscard]] Result<record::Signer> signerOf(const std::string& keyFile, const std::string& passphraseFile);

} // namespace ambit::cli
