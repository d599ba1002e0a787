// Whole files in and out, with errors that name the file.
#pragma once

#include "base/result.hpp"

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

namespace ambit {

/// Reads a regular file of at most `most` bytes.
[[nodiscard]] Result<std::string> readFile(const std::filesystem::path& path,
                                           std::size_t most = std::size_t{64} << 20);

/// Writes beside, syncs, renames, syncs the folder: after a crash the old file or the new one is there,
/// whole. `secret` makes it readable by its owner only.
[[nodiscard]] Result<void> writeFile(const std::filesystem::path& path, std::string_view bytes,
                                     bool secret = false);

/// Gives a finished file its name, synced; nothing may bear that name yet. `part` is gone if it fails.
[[nodiscard]] Result<void> finishFile(const std::filesystem::path& part, const std::filesystem::path& path);

} // namespace ambit
