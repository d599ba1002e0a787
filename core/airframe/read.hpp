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

/// The same airframe with its texts for people in a language (ISO 639-1: "de"). What the file doesn't
/// translate stays as written; all of it, in a language that it doesn't have. Ids, order and sha256 are those
/// of read(): what is recorded and sent is what read() gives.
[[nodiscard]] Results<Airframe> readIn(std::string_view text, const std::string& language);

/// Takes over the texts for people of the same airframe in another language, in place: pointers into
/// `airframe` stay good. Another airframe (by its sha256) changes nothing.
void reword(Airframe& airframe, Airframe other);

/// Language → the texts that it has nothing for, as written, in the file's order, each once.
using Untranslated = std::map<std::string, std::vector<std::string>>;

/// Of every language of the file, and of one that it need not have.
[[nodiscard]] Results<Untranslated> untranslated(std::string_view text, const std::string& also = {});
[[nodiscard]] Results<Untranslated> untranslatedFrom(const std::filesystem::path& path,
                                                     const std::string& also = {});

} // namespace ambit::airframe
