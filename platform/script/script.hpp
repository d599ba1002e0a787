// A round as a script of what a person does, one action a line: SCRIPT.md in platform/cli.
#pragma once

#include "round/event.hpp"

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ambit::script {

struct Open {
    std::string registration;
    std::string serial;
    std::string walk;
    round::Person who;
    std::vector<round::CounterReading> counters;
    LocalInstant at;
    std::optional<round::Position> position;
};
struct Go {
    std::string stand;
};
struct TapZone {
    std::string zone;
};
struct Change {
    std::string setting;
    std::string to;
};
struct Settle {
    round::Settled what;             ///< without photos
    std::vector<std::string> photos; ///< paths beside the script
};
struct Reopen {
    std::string point;
    std::string why;
};
struct Made {
    std::string opening;
};
struct Closed {
    std::string opening;
};
struct Pause {};
struct Resume {};
struct Note {
    std::string words;
};
struct Block {
    std::string stand;
    std::string why;
};
struct Free {
    std::string stand;
};
struct Mark {
    std::vector<round::Corner> outline;
    std::string why;
};
struct Clear {
    std::int64_t area = 0; ///< its number, as marked in this script: 1, 2, 3 …
};
struct Lighting {
    bool low = false;
};
struct Ask { ///< what somebody who follows says
    round::Statement::Kind kind{};
    std::string point;
    std::string words;
    round::Person who;
    std::string key;        ///< path of who's key file beside the script; empty: one made for this walk
    std::string passphrase; ///< path of a file with the key's passphrase in its first line
};
struct Alone {};
struct Answer {
    std::int64_t ask = 0;
    std::string words;
};
struct Decline {
    std::int64_t ask = 0;
    std::string why;
};
struct Portion { ///< the next points, told and then looked at in one go
    int most = 5;
};
struct Down { ///< down again
    bool looked = true;
};
struct Interrupt {
    round::Interrupted::Cause cause{};
    std::int64_t seconds = 0;
    round::BackRule rule;
};
struct Quick { ///< what was settled quickly first is asked about
    bool again = false;
};
struct Satellites { ///< say that it is this much later or earlier than the device's clock has it
    std::int64_t seconds = 0;
};
struct Dark {
    bool expected = true;
    bool bySun = false;
};
struct Follow {
    std::optional<std::string> until;
    std::map<std::string, std::string> values; ///< point → measured value
};
struct Conclude {
    bool fit = false;
    std::string reasons;
};
struct Sign {};

using Doing = std::variant<Open, Go, TapZone, Change, Settle, Reopen, Made, Closed, Pause, Resume, Note,
                           Block, Free, Mark, Clear, Lighting, Alone, Ask, Answer, Decline, Portion, Down,
                           Interrupt, Quick, Satellites, Dark, Follow, Conclude, Sign>;

struct Action {
    Doing what;
    std::optional<int> after; ///< seconds it took; none: the airframe's own time
    int line = 0;
};

struct Script {
    Open open;
    std::vector<Action> actions;  ///< what follows the first line
    std::filesystem::path folder; ///< where its photos' paths start
};

/// Reads a script; the error's `where` is "line N" and the pointer in it.
[[nodiscard]] Result<Script> readScript(std::string_view text, std::filesystem::path folder);
[[nodiscard]] Result<Script> readScriptFrom(const std::filesystem::path& path);

} // namespace ambit::script
