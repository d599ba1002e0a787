// A round's log out of a file: a record, or JSON Lines as `ambit round --json` and `ambit watch` print them.
#pragma once

#include "round/event.hpp"

#include <map>
#include <string>
#include <vector>

namespace ambit::cli {

using PointNames = std::map<std::string, std::string>; ///< as a record has them; a log has none

struct Log {
    std::vector<round::Event> events;
    PointNames names;
};

/// A record's signatures must hold; a log is taken as it is. Errors name the file, and the line or pointer.
[[nodiscard]] Result<Log> readLog(const std::string& file);

} // namespace ambit::cli
