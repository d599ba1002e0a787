#include "cli/talk.hpp"

#include "base/files.hpp"
#include "cli/commands.hpp"

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <nlohmann/json.hpp>
#include <termios.h>
#include <unistd.h>

namespace ambit::cli {

int exitCodeOf(const Error& error) {
    // notFound with a path is a file that isn't there; with an id, a name in a file that was read.
    const bool file = error.code == ErrorCode::notFound && error.where.find('/') != std::string::npos;
    const bool storage = error.code == ErrorCode::storage || error.code == ErrorCode::passphrase || file;
    return storage ? Exit::storage : Exit::refused;
}

int complain(const Error& error) {
    std::cerr << "ambit: " << toText(error) << '\n';
    return exitCodeOf(error);
}

int complain(const std::vector<Error>& errors) {
    int code = Exit::refused;
    for (const Error& error : errors)
        code = complain(error);
    return code;
}

Json toJson(const Error& error) {
    return {
        {"code", toText(error.code)}, {"what", error.what}, {"where", error.where}, {"remedy", error.remedy}};
}

namespace {

Result<std::string> ask(const char* prompt) {
    termios before{};
    if (tcgetattr(STDIN_FILENO, &before) != 0)
        return fail(ErrorCode::passphrase, "There is no passphrase and no terminal to ask for one.", "",
                    "Give --passphrase-file FILE or set AMBIT_PASSPHRASE.");
    termios silent = before;
    silent.c_lflag &= ~static_cast<tcflag_t>(ECHO);
    std::cerr << prompt << std::flush;
    tcsetattr(STDIN_FILENO, TCSAFLUSH, &silent);
    std::string line;
    std::getline(std::cin, line);
    tcsetattr(STDIN_FILENO, TCSAFLUSH, &before);
    std::cerr << '\n';
    return line;
}

} // namespace

LocalInstant now() {
    using namespace std::chrono;
    return {{duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count()}, 0};
}

std::string dayOf(Instant at) {
    return ambit::toText(at).substr(0, 10);
}

Result<archive::Archive> openExisting(const std::string& path) {
    if (!std::filesystem::exists(path))
        return fail(ErrorCode::storage, "There is no such archive.", path, "Look at its name.");
    return archive::Archive::open(path);
}

Result<std::string> passphrase(const std::string& file, bool twice) {
    if (!file.empty()) {
        auto text = readFile(file, 4096);
        if (!text) return text;
        return text->substr(0, text->find_first_of("\r\n"));
    }
    if (const char* set = std::getenv("AMBIT_PASSPHRASE"); set != nullptr) return std::string(set);
    auto first = ask("Passphrase: ");
    if (!first || !twice) return first;
    auto second = ask("The same again: ");
    if (second && *second != *first)
        return fail(ErrorCode::passphrase, "The two passphrases differ.", "", "Try again.");
    return first;
}

} // namespace ambit::cli
