#include "desktop/demo.hpp"

#include "airframe/read.hpp"
#include "base/files.hpp"
#include "script/script.hpp"

#include <algorithm>

namespace ambit::desktop {

namespace {

Result<void> addFrom(archive::Archive& archive, const std::filesystem::path& folder) {
    const auto text = readFile(folder / "airframe.json");
    if (!text) return tl::unexpected(text.error());
    const auto airframe = airframe::read(*text);
    if (!airframe) {
        Error error = airframe.error().front();
        error.where = (folder / "airframe.json").string() + ", " + error.where;
        return tl::unexpected(error);
    }
    const auto script = script::readScriptFrom(folder / "round.jsonl");
    if (!script) return tl::unexpected(script.error());
    return archive.addAircraft(
        {script->open.registration, script->open.serial, airframe->sha256, airframe->name}, *text);
}

} // namespace

Result<void> addDemoAircraft(archive::Archive& archive, const std::filesystem::path& folder) {
    std::error_code failed;
    std::vector<std::filesystem::path> folders;
    for (std::filesystem::directory_iterator entry(folder, failed), end; !failed && entry != end;
         entry.increment(failed))
        if (std::filesystem::exists(entry->path() / "airframe.json") &&
            std::filesystem::exists(entry->path() / "round.jsonl"))
            folders.push_back(entry->path());
    if (failed)
        return fail(ErrorCode::storage, "The demo folder can't be read: " + failed.message() + ".",
                    folder.string());
    if (folders.empty())
        return fail(ErrorCode::notFound, "There is no demo aircraft.", folder.string(),
                    "Name the folder whose folders hold airframe.json and round.jsonl each.");
    std::sort(folders.begin(), folders.end());
    for (const auto& one : folders)
        if (auto added = addFrom(archive, one); !added) return added;
    return {};
}

} // namespace ambit::desktop
