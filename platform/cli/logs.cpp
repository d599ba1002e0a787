#include "cli/logs.hpp"

#include "base/files.hpp"
#include "record/record.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::cli {

namespace {

constexpr std::size_t largestFile = std::size_t{64} << 20;

Result<Log> fromRecord(std::string_view bytes) {
    const auto report = record::verifyRecord(bytes);
    if (!report) return tl::unexpected(report.error());
    const Json& content = report->content;
    if (content["kind"] != "round")
        return fail(ErrorCode::invalid, "This record holds no round.", "/content/kind",
                    "Give a round's record.");
    Log log;
    for (const Json& one : content["events"]) {
        auto event = round::eventFrom(one);
        if (!event) return tl::unexpected(event.error());
        log.events.push_back(std::move(*event));
    }
    for (const Json& point : content["points"])
        log.names.emplace(point["id"], point["name"]);
    return log;
}

Result<Log> fromLines(std::string_view text) {
    Log log;
    for (int number = 1; !text.empty(); ++number) {
        const auto end = std::min(text.find('\n'), text.size());
        const std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (line.find_first_not_of(" \t\r") == std::string_view::npos) continue;
        const std::string where = "line " + std::to_string(number);
        const auto json = parseJson(line);
        if (!json) return fail(json.error().code, json.error().what, where);
        if (json->is_object() && json->size() == 1 && json->contains("record")) break; // its last line
        auto event = round::eventFrom(*json);
        if (!event) return fail(event.error().code, event.error().what, where + ", " + event.error().where);
        log.events.push_back(std::move(*event));
    }
    return log;
}

} // namespace

Result<Log> readLog(const std::string& file) {
    const auto bytes = readFile(file, largestFile);
    if (!bytes) return tl::unexpected(bytes.error());
    auto log = bytes->starts_with("{\"content\":") ? fromRecord(*bytes) : fromLines(*bytes);
    if (!log) log.error().where = file + (log.error().where.empty() ? "" : ", ") + log.error().where;
    return log;
}

} // namespace ambit::cli
