// Reads airframe.json (AIRFRAME.md): all of it or nothing, with every error at its JSON pointer.
#pragma once

#include "airframe/airframe.hpp"
#include "base/result.hpp"

#include <filesystem>
#include <string_view>

namespace ambit::airframe {

/// Errors' `where` is a JSON pointer (RFC 6901) into the text; "" for the whole text. Sorted as they stand in
/// the file, at most 200.
[[nodiscard]] Results<Airframe> read(std::string_view text);

/// The same from a file; a file that can't be read gives one error with the path in `where`.
[[nodiscard]] Results<Airframe> readFrom(const std::filesystem::path& path);

} // namespace ambit::airframe
