// The command line's words for archives and for new records of an aircraft's file.
#pragma once

#include <CLI/CLI.hpp>
#include <functional>

namespace ambit::cli {

/// What was asked for on the command line, ready to be done; its exit code.
using Chosen = std::function<int()>;

/// One of the roles in which somebody signs.
[[nodiscard]] CLI::Validator isRole();

void addArchiveCommands(CLI::App& app, Chosen& chosen);
void addEntryCommands(CLI::App& app, Chosen& chosen);

} // namespace ambit::cli
